import type { RecoveryOption } from "../../models/library.ts";
import { singlesOf } from "../../models/condition.ts";
import type { Muscle } from "../../models/vocabulary.ts";
import { allHold } from "../conditions/holds.ts";
import { type Situation, withMore } from "../conditions/situation.ts";
import { makableLoads } from "../lifting/makable-loads.ts";
import { nearestOf } from "../lifting/plates.ts";
import type { AFTER_CONSTANTS } from "./constants.ts";
import type { After, PlanAfterInput } from "./plan-after.ts";
import { CHECK_ANSWERS, type CheckAnswer } from "./self-check.ts";

type Option = After["options"][number];
type Work = Option["work"][number];
type Numbers = Readonly<Record<keyof typeof AFTER_CONSTANTS, number>>;

/** Breath recovers within the hour, so it does not keep an option from the same day. */
const QUICKLY_BACK: readonly Muscle[] = ["lungs"];

/**
 * What may be done on the same day, each with the worst answer of the self-check at which it is still offered. Left out
 * is what loads muscles that have just worked (unless it is easy), what does or lifts what the athlete keeps away from,
 * and a lift whose light load this gym cannot make. First comes what may still come in the competition. Rest is always
 * there, last; on a bad check it goes first.
 */
export function planOptions(input: PlanAfterInput, numbers: Numbers): readonly Option[] {
  const offered = input.library.recovery
    .filter((option) => option.kind === "same-day" && isKind(option, input))
    .flatMap((option) => {
      const check = worstAnswer(option, input.situation);
      const work = workOf(option, input, numbers);
      return check === undefined || work === undefined ? [] : [{ option, check, work }];
    })
    .sort(
      (one, other) =>
        Number(touchesWhatMayCome(other.option, input.situation)) -
          Number(touchesWhatMayCome(one.option, input.situation)) ||
        Number(other.work.length > 0) - Number(one.work.length > 0) ||
        (one.option.id < other.option.id ? -1 : 1),
    );
  const rest = input.library.recovery.filter((option) => option.kind === "rest");
  return [
    ...mixed(offered, numbers.mostOptions).map(({ option, check, work }) => optionFrom(option, check, work)),
    ...rest.map((option) => optionFrom(option, "bad", [])),
  ];
}

/** Of many options the first, but always one for each answer of the check that has one. */
function mixed<T extends { readonly check: CheckAnswer }>(offered: readonly T[], most: number): readonly T[] {
  const first = new Set(
    CHECK_ANSWERS.flatMap((answer) => offered.find((each) => each.check === answer) ?? []),
  );
  const room = most - first.size;
  const others = offered.filter((each) => !first.has(each)).slice(0, Math.max(0, room));
  return offered.filter((each) => first.has(each) || others.includes(each));
}

/** Whether an option is kind to what has just worked and to what is kept away from. */
function isKind(option: RecoveryOption, { situation, withholding }: PlanAfterInput): boolean {
  if (option.stresses.some((stress) => withholding.stresses.has(stress))) return false;
  if (option.easy) return true;
  const taxed = situation.facts.taxes ?? [];
  return !option.muscles.some((muscle) => !QUICKLY_BACK.includes(muscle) && taxed.includes(muscle));
}

/** The worst answer of the self-check at which the option and all better answers hold; undefined when none does. */
function worstAnswer(option: RecoveryOption, situation: Situation): CheckAnswer | undefined {
  const holdsAt = (answer: CheckAnswer): boolean =>
    allHold(option.when, withMore(situation, { facts: { "self-check": [answer] } })).holds;
  const firstThatFails = CHECK_ANSWERS.findIndex((answer) => !holdsAt(answer));
  return firstThatFails === -1 ? CHECK_ANSWERS.at(-1) : CHECK_ANSWERS[firstThatFails - 1];
}

/** The lifts of an option with loads from the athlete's own bests; undefined when one of them is not for them. */
function workOf(
  option: RecoveryOption,
  input: PlanAfterInput,
  numbers: Numbers,
): readonly Work[] | undefined {
  const work: Work[] = [];
  for (const { movement: id, sets, reps, share } of option.work ?? []) {
    const movement = input.library.movements.get(id);
    if (movement === undefined || input.withholding.forbids(id)) return undefined;
    const best = input.best(id);
    const meant = best === undefined ? undefined : share * best.kilograms;
    const isOwn = best !== undefined && best.basis !== "level" && best.basis !== "assumed";
    if (meant === undefined || !isOwn) {
      work.push({ movement: id, name: movement.name, sets, reps });
      continue;
    }
    const load = nearestOf(makableLoads(input.gym, input.bar), meant, "down");
    if (load.kilograms > meant * numbers.heavierThanMeant) return undefined;
    const shareOfBest = load.kilograms / best.kilograms;
    work.push({ movement: id, name: movement.name, sets, reps, load: { ...load, shareOfBest } });
  }
  return work;
}

/** An option that asks what may still come is for that, and so is one that lifts it. */
const touchesWhatMayCome = (option: RecoveryOption, { facts }: Situation): boolean =>
  option.when.flatMap(singlesOf).some((single) => single.kind === "fact" && single.fact === "may-come") ||
  (option.work ?? []).some((work) => facts["may-come"]?.includes(work.movement) === true);

function optionFrom(option: RecoveryOption, check: CheckAnswer, work: readonly Work[]): Option {
  const { id, title, say, less, minutes, source } = option;
  return {
    id,
    title,
    say,
    ...(less !== undefined && { less }),
    check,
    work,
    ...(minutes !== undefined && { minutes }),
    source,
  };
}
