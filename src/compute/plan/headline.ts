import type { Plan } from "../../models/plan/plan.ts";
import { resultOf } from "./plan-total.ts";

/** What stands at the top: the total where there is one, else the result of the first part; and the first load lifted. */
export function headlineOf(parts: Plan["parts"], total: Plan["total"]): Plan["headline"] {
  const [first] = parts;
  if (first === undefined) throw new RangeError("a workout has at least one part");
  const of = total === undefined ? first : (parts.find(({ name }) => name === total.parts[0]) ?? first);
  const result = total?.result ?? resultOf(first);
  const firstLoad = parts.flatMap(({ lifting }) => lifting?.lifts[0]?.attempts[0]?.load ?? [])[0];
  return {
    // Work that a cap stops is scored in what was done, whatever its part is scored in; what is lifted, in loads.
    score: total === undefined && of.lifting === undefined ? (of.pacing?.score ?? of.score) : of.score,
    ...(result !== undefined && { result }),
    ...(firstLoad !== undefined && { firstLoad }),
  };
}
