import { gapsIn, type MovementChoice, REASON_GAPS, type ReasonGap } from "../../models/movement.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Verdict } from "../conditions/holds.ts";
import { isClose, type OptionVerdict, type Reason, reasonFrom } from "./option-verdict.ts";
import { againstBefore, type Choice, firstThatHolds, type Picked, type Weighed } from "./weigh-options.ts";

/** A choice as the plan tells it: the option taken with what decided, and what speaks for trying another. `closeCall`: share of a threshold. */
export function explainChoice(
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

export const shown = ({ option: { id, name, say } }: OptionVerdict): Choice["pick"] => ({ id, name, say });

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
