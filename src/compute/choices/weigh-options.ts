import type { MovementChoice } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Withholding } from "../cautions/withholding.ts";
import type { Verdict } from "../conditions/holds.ts";
import { isClose, type OptionVerdict, weighOption, withoutLimits } from "./option-verdict.ts";

export type Choice = Plan["choices"][number];

/** A choice with its options weighed: all of them, those no limit rules out, and the one favoured without limits. */
export type Weighed = {
  readonly allowed: readonly OptionVerdict[];
  readonly favoured: OptionVerdict | undefined;
  readonly ruledOutBy: string | undefined;
  /** Whether a stated limit speaks against an option. */
  readonly barred: boolean;
};

export type Picked = { readonly pick: OptionVerdict; readonly by: Choice["decidedBy"] };

/** Weighs the options of a choice in a situation, without those that add a stress to keep away from. */
export function weighOptions(
  choice: MovementChoice,
  { situation }: AtMovement,
  { withholding }: { readonly withholding: Pick<Withholding, "stresses"> },
): Weighed {
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
export const firstThatHolds = (options: readonly OptionVerdict[]): OptionVerdict | undefined =>
  options.find((each) => each.holds) ?? options[0];

/** The option to take, and what decided; a stated preference settles a close call. `closeCall`: share of a threshold. */
export function pickFrom(
  weighed: Weighed,
  preferred: string | undefined,
  closeCall: number,
): Picked | undefined {
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
export const againstBefore = (pick: OptionVerdict, allowed: readonly OptionVerdict[]): readonly Verdict[] =>
  allowed
    .slice(0, allowed.indexOf(pick))
    .flatMap((each) => each.telling.filter((verdict) => !verdict.holds).slice(0, 1));
