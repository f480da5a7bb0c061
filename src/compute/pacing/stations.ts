import type { PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** Share of the work after which a start is over, where work of one round has no first round: about a third, by stations. Judgement. */
const START = PACING_FIXED.startByStations.value;
/** Share of the time by which one knows how it goes, and can still change something. Judgement. */
const LOOK = PACING_FIXED.lookByStations.value;

type Window = { readonly least: number; readonly most: number; readonly about: number };

const workOf = (rows: readonly PacingRow[]): readonly PacingRow[] =>
  rows.filter((row) => row.kind === "work");

/** The row of work that ends nearest to a share, inside its window; never the last one. */
function nearest(
  rows: readonly PacingRow[],
  share: (row: PacingRow) => number,
  { least, most, about }: Window,
): PacingRow | undefined {
  const inside = workOf(rows)
    .slice(0, -1)
    .filter((row) => share(row) >= least && share(row) <= most);
  const distance = (row: PacingRow): number => Math.abs(share(row) - about);
  return inside.toSorted((one, other) => distance(one) - distance(other))[0];
}

/** In work of one round: the station that ends the start, about a third of the work in. */
export const startStation = (rows: readonly PacingRow[]): PacingRow | undefined =>
  nearest(rows, (row) => row.shareOfWork, START);

/** In work of one round: the station after which to look at the clock, late enough to know and early enough to act. */
export const lookStation = (rows: readonly PacingRow[]): PacingRow | undefined =>
  nearest(rows, (row) => row.shareOfTime, LOOK);

/** The last stretch that is over when a row ends. */
export function stretchAtEnd({ bench: { track }, log, state }: Solved, row: PacingRow): number {
  let last = -1;
  for (let i = 0; i < track.length && i <= state.at; i += 1) {
    if ((log.ended[i] as number) <= row.end + 1e-6) last = i;
  }
  return last;
}
