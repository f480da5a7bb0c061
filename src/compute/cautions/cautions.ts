import { type Fact, type Metric, singlesOf } from "../../models/condition.ts";
import type { CautionEntry } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import { allHold } from "../conditions/holds.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Situation } from "../conditions/situation.ts";
import { type Cause, causesOf } from "./causes-of.ts";

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
 * is always there comes first, then by id. Each says what brought it up, and `{joints}` names the joints a limit is stated for.
 */
export function cautionsOf(
  entries: readonly CautionEntry[],
  situation: Situation,
  movements: readonly AtMovement[],
): readonly Caution[] {
  return [...entries].sort(byWeight).flatMap((entry) => {
    const cause = causeOf(entry, situation, movements);
    return cause === undefined ? [] : [cautionFrom(entry, cause, situation)];
  });
}

/** What brought an entry up, nothing for one that always holds; undefined when it does not hold. */
function causeOf(
  entry: CautionEntry,
  situation: Situation,
  movements: readonly AtMovement[],
): Cause[] | undefined {
  if (!speaksOfMovement(entry)) {
    const { holds, verdicts } = allHold(entry.when, situation);
    return holds ? causesOf(verdicts) : undefined;
  }
  for (const each of movements) {
    const { holds, verdicts } = allHold(entry.when, each.situation);
    if (holds) return causesOf(verdicts, each.movement);
  }
  return undefined;
}

const speaksOfMovement = (entry: CautionEntry): boolean =>
  entry.when
    .flatMap(singlesOf)
    .some((single) => OF_A_MOVEMENT.includes(single.kind === "number" ? single.metric : single.fact));

function cautionFrom(entry: CautionEntry, because: Cause[], situation: Situation): Caution {
  const { id, title, say, weight, onSheet } = entry;
  const joints = statedJoints(entry, situation).join(" and ");
  const named = (text: string): string => text.replaceAll("{joints}", joints);
  return {
    id,
    title: named(title),
    say: named(say),
    weight,
    onSheet,
    ...(because.length > 0 && { because }),
  };
}

/** The joints an entry asks about for which a limit is stated. */
function statedJoints({ when }: CautionEntry, { facts }: Situation): readonly string[] {
  const asked = when.flatMap(singlesOf).flatMap((single) => ("fact" in single && single.fact === "limit-joint" ? single.word : [])); // prettier-ignore
  return (facts["limit-joint"] ?? []).filter((joint) => asked.includes(joint));
}

function byWeight(one: CautionEntry, other: CautionEntry): number {
  const weights = WEIGHTS.indexOf(one.weight) - WEIGHTS.indexOf(other.weight);
  const always = Number(other.when.length === 0) - Number(one.when.length === 0);
  return weights || always || (one.id < other.id ? -1 : Number(one.id > other.id));
}
