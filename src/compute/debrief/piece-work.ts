import type { Piece } from "../../models/plan/debrief.ts";
import type { PlannedRow } from "../../models/plan/plan.ts";

/** What the plan has in a piece of work, by what can go wrong in it. */
export type PieceWork = {
  /** Seconds of work by movement id, breaks and ways left out. */
  readonly work: ReadonlyMap<string, number>;
  /** Breaks in sets, by movement id, and ways between stations. */
  readonly breaks: ReadonlyMap<string, number>;
  readonly transitions: number;
};

/** Adds up the rows of each piece. A way under a second is none: the same bar goes on. */
export function pieceWork(pieces: readonly Piece[], rows: readonly PlannedRow[]): readonly PieceWork[] {
  let from = 0;
  return pieces.map(({ row: last }) => {
    const within = rows.filter(({ index }) => index >= from && index <= last);
    from = last + 1;
    return workOf(within);
  });
}

const LEAST_WAY = 1;

function workOf(rows: readonly PlannedRow[]): PieceWork {
  const work = new Map<string, number>();
  const breaks = new Map<string, number>();
  let transitions = 0;
  for (const row of rows) {
    if (row.kind !== "work") continue;
    const id = row.movement ?? row.name;
    const rests = row.sets.reduce((sum, { restAfter }) => sum + restAfter, 0);
    const seconds = Math.max(0, row.end - row.start - row.transition - rests);
    work.set(id, (work.get(id) ?? 0) + seconds);
    const count = row.sets.filter(({ restAfter }) => restAfter > 0).length;
    if (count > 0) breaks.set(id, (breaks.get(id) ?? 0) + count);
    if (row.transition >= LEAST_WAY) transitions += 1;
  }
  return { work, breaks, transitions };
}
