import type { Plan } from "../../models/plan/plan.ts";
import type { PlannedRow } from "../conditions/situation-of.ts";

type Line = Extract<Plan["setUp"][number], { kind: "loading" }>;
type Change = NonNullable<Line["changes"]>[number];

/**
 * What helpers change on the bar while the athlete works elsewhere or rests: each load that stands there at a visit and was another one
 * at the visit before, with the work done in between. What is changed while the athlete waits is a row of the plan, and left out here.
 *
 * @param rows all rows of the parts in order, rests too
 * @param onBars ids of the movements done with the bar
 */
export function helperChanges(rows: readonly PlannedRow[], onBars: readonly string[]): readonly Change[] {
  const changes: Change[] = [];
  let before: PlannedRow["load"];
  let during: string | undefined;
  let waited = false;
  for (const row of rows) {
    if (row.kind === "rest") {
      waited ||= row.why === "plates";
      continue;
    }
    const isOnBar = row.movement !== undefined && onBars.includes(row.movement) && row.load !== undefined;
    if (!isOnBar) {
      during = row.plural ?? row.name;
      continue;
    }
    const { load } = row;
    if (load && before && load.kilograms !== before.kilograms && !waited)
      changes.push({ to: load, ...(during === undefined ? {} : { during }) });
    before = load;
    during = undefined;
    waited = false;
  }
  return changes;
}
