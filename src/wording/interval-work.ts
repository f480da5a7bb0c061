import type { Plan } from "../models/plan/plan.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Row = Pacing["rows"][number];

/** The rows of work of each interval, in order: what stands between two prescribed rests. */
export function workOfIntervals({ rows }: Pick<Pacing, "rows">): readonly (readonly Row[])[] {
  const stretches: Row[][] = [[]];
  for (const row of rows) {
    if (row.kind === "rest") {
      if (row.why === undefined || row.why === "prescribed" || row.why === "skipped") stretches.push([]);
    } else stretches.at(-1)?.push(row);
  }
  return stretches.filter((stretch) => stretch.length > 0);
}

/** The movement of each interval, where each has one and they differ; nothing where a name would tell nothing. */
export function namesOfIntervals(pacing: Pick<Pacing, "rows">): readonly string[] {
  const work = workOfIntervals(pacing);
  const names = work.map((rows) => rows[0]?.short ?? "");
  const tells = work.every((rows) => rows.length === 1) && new Set(names).size > 1;
  return tells ? names : [];
}
