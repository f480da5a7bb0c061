import type { PacingRow } from "../../models/plan/pacing.ts";
import { EXPECTED_DAY, keepAsPlan, runDay } from "../search/day.ts";
import type { Solved } from "../search/solve-part.ts";

/**
 * Clock at the end of each row on an expected day on which the beginning is done faster than planned by a share, and the rest as
 * planned as far as the body allows: an emptied reserve forces a slow stretch, as on any simulated day.
 *
 * Rows the day does not reach keep the planned clock moved by as much as the last one reached.
 *
 * @param rows the rows printed for the plan
 * @param faster share by which the beginning is faster, 0.1 for a tenth
 * @param lasting share of the planned time that counts as the beginning
 */
export function hastyDay(
  solved: Solved,
  rows: readonly PacingRow[],
  faster: number,
  lasting: number,
): readonly number[] {
  const { bench, choice, log, state } = solved;
  const { track, opening, closing, dayLog } = bench;
  const ends = (share: number): readonly number[] => {
    keepAsPlan(bench, log, state.at);
    const until = lasting * state.clock;
    for (let i = 0; i < track.length; i += 1) {
      if ((log.started[i] as number) >= until || i > state.at) break;
      opening[i] = (opening[i] as number) / (1 + share);
      closing[i] = (closing[i] as number) / (1 + share);
    }
    const day = runDay(bench, choice.plan, EXPECTED_DAY, bench.coarse);
    return endsOf(rows, log.ended, dayLog.ended, day.at);
  };
  // Against the same day begun as planned: stepping coarsely moves both alike.
  const asPlanned = ends(0);
  const hasty = ends(faster);
  keepAsPlan(bench, log, state.at);
  return rows.map(({ end }, r) => end + (hasty[r] ?? 0) - (asPlanned[r] ?? 0));
}

/** Clock of a day at the end of each row; a row is found by the planned clock at its end. */
function endsOf(
  rows: readonly PacingRow[],
  planned: Float64Array,
  done: Float64Array,
  last: number,
): readonly number[] {
  let at = 0;
  let late = 0;
  return rows.map(({ end }) => {
    while (at < planned.length - 1 && Math.abs((planned[at] as number) - end) > 1e-9) at += 1;
    if (at <= last && Math.abs((planned[at] as number) - end) <= 1e-9) {
      late = (done[at] as number) - end;
    }
    return end + late;
  });
}
