import { gapsIn, type MovementChoice, REASON_GAPS, type ReasonGap } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Withheld, Withholding } from "../cautions/withhold.ts";
import { allHold, type Verdict } from "../conditions/holds.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { CHOICE_CONSTANTS } from "./constants.ts";
import { mergeChoices } from "./merge-choices.ts";
import {
  isClose,
  type OptionVerdict,
  type Reason,
  reasonFrom,
  weighOption,
  withoutLimits,
} from "./option-verdict.ts";
import { ownEntry } from "../../models/own-entry.ts";

type Choice = Plan["choices"][number];

export type ChooseInput = {
  /** The movements of the workout in order, each with the situation narrowed to it. */
  readonly movements: readonly AtMovement[];
  readonly withholding: Pick<Withholding, "stresses">;
  /** Preferred option by choice id. */
  readonly prefers: Readonly<Record<string, string>>;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Decides every choice the movements of a workout offer.
 *
 * An option that adds a stress the athlete keeps away from is out. Of the others the first is taken whose conditions
 * all hold. A stated preference settles a close call and whatever no number speaks on; a clear number outweighs it.
 * A choice that comes out the same in several parts, or for several movements, is told once.
 * The answer carries the numbers that decided, the runner-up, when to change over, and, when it was close or a number
 * is not known, what to try in the warm-up. An option the numbers favour and a limit rules out is told as withheld.
 */
export function chooseOptions(input: ChooseInput): {
  readonly choices: readonly Choice[];
  readonly withheld: readonly Withheld[];
} {
  const decided = input.movements.flatMap((at) =>
    at.movement.choices.flatMap((choice) => {
      const asked = whereAsked(choice, at);
      return asked === undefined ? [] : [decide(choice, asked, input)];
    }),
  );
  const withheld = decided.flatMap((each) => each.withheld ?? []);
  return {
    choices: mergeChoices(decided.flatMap(({ choice }) => choice ?? [])),
    withheld: withheld.filter(
      (each, at) => withheld.findIndex((other) => other.of === each.of && other.way === each.way) === at,
    ),
  };
}

/** A movement from the first of its rising loads on at which a choice is asked; nothing where none asks it. */
function whereAsked(choice: MovementChoice, at: AtMovement): AtMovement | undefined {
  if (allHold(choice.when ?? [], at.situation).holds) return at;
  const { heavier: [next, ...rest] = [], ...here } = at;
  return next && whereAsked(choice, { ...here, situation: next.situation, heavier: rest });
}

/** A choice with its options weighed: all of them, those no limit rules out, and the one favoured without limits. */
type Weighed = {
  readonly allowed: readonly OptionVerdict[];
  readonly favoured: OptionVerdict | undefined;
  readonly ruledOutBy: string | undefined;
  /** Whether a stated limit speaks against an option. */
  readonly barred: boolean;
};
type Picked = { readonly pick: OptionVerdict; readonly by: Choice["decidedBy"] };

function decide(
  choice: MovementChoice,
  at: AtMovement,
  input: ChooseInput,
): { readonly choice?: Choice; readonly withheld?: Withheld } {
  const { closeCall } = withOverrides(CHOICE_CONSTANTS, input.overrides);
  const weighed = weigh(choice, at, input);
  const picked = pickFrom(weighed, ownEntry(input.prefers, choice.id), closeCall);
  const withheld = withheldOption(weighed, at, picked?.pick, input);
  return {
    ...(picked !== undefined && {
      choice: byLoad(
        explain(choice, at, weighed, picked, closeCall),
        changeAt(choice, at, picked.pick.option.id, input),
      ),
    }),
    ...(withheld !== undefined && { withheld }),
  };
}

/** Where a heavier load of the part asks for another option, that load says when to change over, and nothing else does. */
function byLoad({ switchWhen, test, ...choice }: Choice, change: Pick<Choice, "changesAt">): Choice {
  return change.changesAt === undefined
    ? { ...choice, ...(switchWhen !== undefined && { switchWhen }), ...(test !== undefined && { test }) }
    : { ...choice, ...change };
}

/** The first of the heavier loads of the part at which another option suits: that option and the load. */
function changeAt(
  choice: MovementChoice,
  { heavier = [], ...at }: AtMovement,
  picked: string,
  input: ChooseInput,
): Pick<Choice, "changesAt"> {
  const { closeCall } = withOverrides(CHOICE_CONSTANTS, input.overrides);
  for (const { situation, load } of heavier) {
    const there = weigh(choice, { ...at, situation }, input);
    const pick = pickFrom(there, ownEntry(input.prefers, choice.id), closeCall)?.pick;
    if (pick !== undefined && pick.option.id !== picked) return { changesAt: { load, to: shown(pick) } };
  }
  return {};
}

function weigh(choice: MovementChoice, { situation }: AtMovement, { withholding }: ChooseInput): Weighed {
  const ruledOutBy = ({ option }: OptionVerdict): string | undefined =>
    option.adds.find((stress) => withholding.stresses.has(stress));
  const weighed = choice.options.map((option) => weighOption(option, situation));
  const free = choice.options.map((option) => weighOption(option, withoutLimits(situation)));
  const favouredId = firstThatHolds(free)?.option.id;
  const favoured = weighed.find((each) => each.option.id === favouredId);
  return {
    allowed: weighed.filter((each) => ruledOutBy(each) === undefined),
    favoured,
    ruledOutBy: favoured && ruledOutBy(favoured),
    barred: weighed.some(
      (each) =>
        ruledOutBy(each) !== undefined ||
        each.onLimits.some(({ condition, holds }) => !holds && isAgainst(condition)),
    ),
  };
}

/** A condition that asks for the absence of something stated. */
const isAgainst = (condition: Verdict["condition"]): boolean => condition.kind === "fact" && !condition.holds;

/** The first option whose conditions hold, else the first at all: the last one needs none, unless a limit took it. */
const firstThatHolds = (options: readonly OptionVerdict[]): OptionVerdict | undefined =>
  options.find((each) => each.holds) ?? options[0];

function pickFrom(weighed: Weighed, preferred: string | undefined, closeCall: number): Picked | undefined {
  const { allowed, favoured } = weighed;
  const byNumbers = firstThatHolds(allowed);
  if (byNumbers === undefined) return undefined;
  const wanted = allowed.find((each) => each.option.id === preferred);
  if (wanted !== undefined && wanted !== byNumbers && yieldsTo(wanted, byNumbers, allowed, closeCall)) {
    return { pick: wanted, by: "preference" };
  }
  if (byNumbers.option.id !== favoured?.option.id) return { pick: byNumbers, by: "limit" };
  if (byNumbers.telling.length > 0 || againstBefore(byNumbers, allowed).length > 0) {
    return { pick: byNumbers, by: "numbers" };
  }
  return { pick: byNumbers, by: wanted === byNumbers ? "preference" : "default" };
}

/** Whether what the numbers favour gives way to a wish: only where nothing known speaks clearly against the wish. */
function yieldsTo(
  wanted: OptionVerdict,
  byNumbers: OptionVerdict,
  allowed: readonly OptionVerdict[],
  closeCall: number,
): boolean {
  if (allowed.indexOf(wanted) < allowed.indexOf(byNumbers)) {
    const failing = wanted.verdicts.filter((each) => !each.holds);
    return failing.every((each) => !each.known || isClose(each, closeCall));
  }
  return byNumbers.telling.length === 0 || byNumbers.telling.some((each) => isClose(each, closeCall));
}

/** Of each option before the pick, the first verdict that kept it out. */
const againstBefore = (pick: OptionVerdict, allowed: readonly OptionVerdict[]): readonly Verdict[] =>
  allowed
    .slice(0, allowed.indexOf(pick))
    .flatMap((each) => each.telling.filter((verdict) => !verdict.holds).slice(0, 1));

function explain(
  choice: MovementChoice,
  at: AtMovement,
  weighed: Weighed,
  { pick, by }: Picked,
  closeCall: number,
): Choice {
  const { allowed } = weighed;
  const other = firstThatHolds(allowed.filter((each) => each !== pick));
  const deciding = pick.telling.length > 0 ? pick.telling : againstBefore(pick, allowed);
  const isUnsure =
    deciding.some((each) => isClose(each, closeCall) || !each.known) || restsOnGuess(at, deciding);
  const test = pick.option.test ?? other?.option.test;
  const known = oneOfEach(deciding.filter((each) => each.known).map(reasonFrom));
  return {
    id: choice.id,
    movement: at.movement.id,
    movementName: at.movement.counts[0] === "reps" ? at.movement.plural : at.movement.name,
    question: choice.question,
    parts: at.part === undefined ? [] : [at.part],
    pick: shown(pick),
    ...reasonOf(pick, at),
    because: by === "limit" ? limitReasons(weighed) : known,
    decidedBy: by,
    ...(other !== undefined && (isUnsure || by === "limit") && { other: shown(other) }),
    // Nobody changes over on the way to what a stated limit keeps out.
    ...(by !== "limit" &&
      !weighed.barred &&
      pick.option.switchWhen !== undefined && { switchWhen: pick.option.switchWhen }),
    ...(by !== "limit" && isUnsure && test !== undefined && { test }),
  };
}

/** The reason of the trade with the athlete's numbers in its gaps; none where a number is not known. */
function reasonOf({ option }: OptionVerdict, { situation, movement }: AtMovement): Pick<Choice, "reason"> {
  if (option.because === undefined) return {};
  const values = gapsIn(option.because).map((gap) => {
    const metric = REASON_GAPS[gap as ReasonGap];
    const isGuess =
      (metric === "unbroken" && situation.facts["set-known"]?.includes("yes") !== true) ||
      (metric === "load-share" && situation.facts["best-guessed"]?.includes("yes") === true);
    return { gap, value: situation.numbers[metric], guessed: isGuess && movement.counts[0] === "reps" };
  });
  const known = values.flatMap(({ value, ...rest }) => (value === undefined ? [] : [{ ...rest, value }]));
  return known.length < values.length ? {} : { reason: { say: option.because, values: known } };
}

/** Of several reasons on the same number, the one whose threshold lies nearest to it says the most. */
function oneOfEach(reasons: readonly Reason[]): readonly Reason[] {
  const distance = ({ value, threshold }: Reason): number =>
    typeof value === "number" && typeof threshold === "number" ? Math.abs(value - threshold) : 0;
  return reasons.filter(
    (reason) =>
      reasons.find(
        (other) =>
          other.what === reason.what &&
          typeof other.threshold === "number" &&
          (distance(other) < distance(reason) ||
            (distance(other) === distance(reason) && reasons.indexOf(other) < reasons.indexOf(reason))),
      ) === undefined,
  );
}

const shown = ({ option: { id, name, say } }: OptionVerdict): Choice["pick"] => ({ id, name, say });

/** The stated limits that keep the favoured option out. */
function limitReasons({ favoured, ruledOutBy }: Weighed): readonly Reason[] {
  const stated = (favoured?.onLimits ?? []).filter((each) => !each.holds).map(reasonFrom);
  const byStress: Reason | undefined =
    ruledOutBy === undefined ? undefined : { what: "limit-stress", value: ruledOutBy, is: "holds" };
  const isNew = byStress !== undefined && !stated.some((each) => each.value === byStress.value);
  return isNew ? [...stated, byStress] : stated;
}

/** A load held against a best lift that is not the athlete's own decides nothing surely. */
const restsOnGuess = ({ situation }: AtMovement, deciding: readonly Verdict[]): boolean =>
  situation.facts["best-known"]?.includes("no") === true &&
  deciding.some(({ condition }) => condition.kind === "number" && condition.metric === "load-share");

function withheldOption(
  { favoured, ruledOutBy }: Weighed,
  { movement }: AtMovement,
  instead: OptionVerdict | undefined,
  { withholding }: ChooseInput,
): Withheld | undefined {
  const reason = ruledOutBy === undefined ? undefined : withholding.stresses.get(ruledOutBy);
  if (favoured === undefined || reason === undefined) return undefined;
  return {
    what: "option",
    movement: movement.id,
    of: movement.plural,
    way: favoured.option.name,
    reason,
    ...(instead !== undefined && { instead: instead.option.name }),
  };
}
