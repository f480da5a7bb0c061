import type { Range } from "../../models/plan/basics.ts";
import type { PartPlan, Plan } from "../../models/plan/plan.ts";

type Percentile = Exclude<keyof Range, "cautiousDone">;

/**
 * The total of parts whose scores are added: target and percentiles add up, as one day's form carries through all of
 * them. Absent where a part has no result of its own.
 */
export function planTotal(names: readonly string[] | undefined, parts: readonly PartPlan[]): Plan["total"] {
  if (names === undefined) return undefined;
  const results = names.map((name) => resultOf(parts.find((part) => part.name === name)));
  if (!results.every((result) => result !== undefined)) return undefined;
  const sum = (of: Percentile): number => results.reduce((total, result) => total + result[of], 0);
  return {
    parts: names,
    result: {
      target: sum("target"),
      cautious: sum("cautious"),
      middle: sum("middle"),
      hopeful: sum("hopeful"),
    },
  };
}

/**
 * The result of a part in the unit of its score; of several lifts, their sum. Where loads are lifted for reps in rounds, the
 * loads make the score and each counts once for every rep.
 */
export function resultOf(part: PartPlan | undefined): Range | undefined {
  const lifts = part?.lifting?.lifts;
  const [first] = lifts ?? [];
  if (part === undefined || lifts === undefined || first === undefined) return part?.pacing?.result;
  const [heaviest] = [...lifts].sort((a, b) => b.expected.target - a.expected.target);
  if (part.lifting?.sum === false && lifts.length > 1 && heaviest) return heaviest.expected;
  const times = (reps: number): number => (part.score === "load-times-reps" ? reps : 1);
  const sum = (of: Percentile): number =>
    lifts.reduce((total, { expected, reps }) => total + times(reps) * expected[of], 0);
  return {
    target: sum("target"),
    cautious: sum("cautious"),
    middle: sum("middle"),
    hopeful: sum("hopeful"),
  };
}
