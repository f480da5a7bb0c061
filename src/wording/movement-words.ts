import type { Plan } from "../models/plan/plan.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Row = Pacing["rows"][number];

/** The name that goes with an amount: several reps have a plural, metres of a run do not. */
export const nameFor = (row: Pick<Row, "name" | "plural" | "unit">, amount: number): string =>
  row.unit === "reps" && amount !== 1 ? (row.plural ?? row.name) : row.name;

/** The plural of a movement of the part, where it is counted in reps; else its name. */
export function pluralOf(pacing: Pacing, name: string): string {
  const row = pacing.rows.find((candidate) => candidate.name === name);
  return row ? nameFor(row, 2) : name;
}
