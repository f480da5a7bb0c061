import { type Fact, type Metric, singlesOf } from "../../models/condition.ts";
import type { CautionEntry } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import { allHold } from "../conditions/holds.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Situation } from "../conditions/situation.ts";
import { sayCause } from "./say-cause.ts";

type Caution = Plan["cautions"][number];

/** What is only known of one movement at hand; an entry that asks for it is weighed movement by movement. */
const OF_A_MOVEMENT: readonly (Metric | Fact)[] = [
  "load-share",
  "ratio-to-parent",
  "unbroken",
  "set-share",
  "amount",
  "total-amount",
  "usual-amount",
  "times-usual",
  "seconds-per-unit",
  "days-unaccustomed",
  "movement-kind",
  "taxes",
  "stress",
  "lifted",
  "needs-catching",
  "best-known",
  "limiter",
];

const WEIGHTS: readonly Caution["weight"][] = ["stop", "care", "rule"];

/**
 * The cautions a brief carries: every entry whose conditions hold for the workout or, where they speak of a movement,
 * for one of its movements. Stop signs first, then what to mind, then what goes before the brief; within each, what
 * is always there comes first, then by id. Each says what brought it up.
 */
export function cautionsOf(
  entries: readonly CautionEntry[],
  situation: Situation,
  movements: readonly AtMovement[],
): readonly Caution[] {
  return [...entries].sort(byWeight).flatMap((entry) => {
    const cause = causeOf(entry, situation, movements);
    return cause === undefined ? [] : [cautionFrom(entry, cause)];
  });
}

/** What brought an entry up, empty for one that always holds; undefined when it does not hold. */
function causeOf(
  entry: CautionEntry,
  situation: Situation,
  movements: readonly AtMovement[],
): string | undefined {
  if (!speaksOfMovement(entry)) {
    const { holds, verdicts } = allHold(entry.when, situation);
    return holds ? sayCause(verdicts) : undefined;
  }
  for (const each of movements) {
    const { holds, verdicts } = allHold(entry.when, each.situation);
    if (holds) return sayCause(verdicts, each.movement);
  }
  return undefined;
}

const speaksOfMovement = (entry: CautionEntry): boolean =>
  entry.when
    .flatMap(singlesOf)
    .some((single) => OF_A_MOVEMENT.includes(single.kind === "number" ? single.metric : single.fact));

const cautionFrom = ({ id, title, say, weight, onSheet }: CautionEntry, because: string): Caution => ({
  id,
  title,
  say,
  weight,
  onSheet,
  ...(because !== "" && { because }),
});

function byWeight(one: CautionEntry, other: CautionEntry): number {
  const weights = WEIGHTS.indexOf(one.weight) - WEIGHTS.indexOf(other.weight);
  const always = Number(other.when.length === 0) - Number(one.when.length === 0);
  return weights || always || (one.id < other.id ? -1 : Number(one.id > other.id));
}
