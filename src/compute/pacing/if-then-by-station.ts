import type { PacingRow } from "../../models/plan/pacing.ts";
import type { Rules } from "../motion/rules.ts";
import { displayedPace } from "./displayed-pace.ts";
import type { Solved } from "../search/solve-part.ts";
import { PACING_FIXED } from "./fixed-constants.ts";
import { differenceAt, type IfThen, type Lookout, SAME_RESULT } from "./lookout.ts";

/** Least change of a pace that is told: a tenth of a second a rep, or this share where a display shows it. Judgement. */
const LEAST_PACE = PACING_FIXED.leastPaceTold.value;

/**
 * Thresholds at a station, in work of one round. Behind, what is still to come in sets is cut into smaller ones, else the longest
 * station left goes at the pace of such a day; ahead, it goes that much quicker, or, early, at the pace planned.
 */
export function byStation(
  { row, late, smallerSets, resultAt, target, isTime }: Lookout,
  rows: readonly PacingRow[],
  { bench: { track } }: Pick<Solved, "bench" | "log">,
  { ahead }: Rules,
): IfThen[] {
  const difference = differenceAt(row, ahead);
  const next = longestAfter(row, rows);
  const movement = track.tasks.find(({ movement: { id } }) => id === next?.movement)?.movement;
  const paceAt = (by: number): IfThen["action"] | undefined => {
    if (next?.secondsPerUnit === undefined || movement === undefined) return undefined;
    const change = by / row.end;
    const secondsPerUnit = next.secondsPerUnit * (1 + change);
    const isTold =
      next.displayed === undefined
        ? Math.abs(secondsPerUnit - next.secondsPerUnit) >= LEAST_PACE.seconds
        : Math.abs(change) >= LEAST_PACE.share;
    if (!isTold) return undefined;
    const displayed = next.displayed && displayedPace(movement, next.unit, secondsPerUnit);
    return { kind: "pace-at", row: next.index, secondsPerUnit, ...(displayed && { displayed }) };
  };
  const at = (by: number, when: IfThen["when"], action: IfThen["action"] | undefined): IfThen[] =>
    action === undefined
      ? []
      : [
          {
            row: row.index,
            round: row.round,
            planned: row.end,
            clock: row.end + by,
            projected: isTime && action.kind === "hold" ? target + by : resultAt(row.end / (row.end + by)),
            action,
            when,
          },
        ];
  const told = [
    ...at(difference, "later-than", smallerSets ?? paceAt(difference)),
    ...at(-difference, "earlier-than", late ? paceAt(-difference) : { kind: "hold" }),
  ];
  // Where a wall or a cap ends the work the same either way, nothing is left to change.
  return told.filter(({ projected = target }) => Math.abs(projected - target) >= SAME_RESULT);
}

/** Of what is left, the station that takes longest and is told with a pace. */
const longestAfter = (row: PacingRow, rows: readonly PacingRow[]): PacingRow | undefined =>
  rows
    .filter(
      ({ kind, index, secondsPerUnit, amount }) =>
        kind === "work" && index > row.index && secondsPerUnit !== undefined && amount > 1,
    )
    .toSorted((one, other) => other.end - other.start - (one.end - one.start))[0];
