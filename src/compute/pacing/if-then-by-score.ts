import { PACING_FIXED } from "./fixed-constants.ts";
import { type IfThen, type Lookout, SAME_RESULT } from "./lookout.ts";

/** Thresholds on what is done. `share`: of what is planned, at which to act. */
export function byScore(lookout: Lookout, share: number): IfThen[] {
  const { row, round, left, late, smallerSets, resultAt, target, counting } = lookout;
  const { doneAt, counted } = counting;
  const planned = doneAt(round.lastRow);
  if (!(planned > 0)) return [];
  const difference = Math.max(1, Math.round(share * planned));
  const at = (by: number) => ({
    row: row.index,
    round: row.round,
    planned: row.end,
    clock: row.end,
    score: planned + by,
    plannedScore: planned,
    ...(counted ? { counted } : {}),
    projected: resultAt((planned + by) / planned),
  });
  const perRound = usualDone([planned, ...left.map(({ lastRow }) => doneAt(lastRow))]);
  const aimAt = (by: number): IfThen["action"] | undefined =>
    perRound === undefined
      ? undefined
      : { kind: "aim-at", scorePerRound: Math.round((perRound * (planned + by)) / planned) };
  const [behind, ahead] = [at(-difference), at(difference)];
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  const [less, more] = [smallerSets ?? aimAt(-difference), late ? aimAt(difference) : HOLD];
  return [
    ...(less ? [{ ...behind, when: "fewer-than" as const, action: less }] : []),
    ...(more
      ? [
          {
            ...ahead,
            when: "more-than" as const,
            action: more,
            ...(late ? {} : { projected: target + difference }),
          },
        ]
      : []),
  ];
}

const HOLD = { kind: "hold" } as const;

/** Rounds whose amounts differ by more than this share are not to be aimed at with one number. Judgement. */
const ALIKE = PACING_FIXED.alikeRounds.value;

/**
 * What is usually done in a round, from what is done by the end of each: without rounds of rest, and without a last one that ends the
 * work early. Nothing where rounds are unlike each other, and where none is left.
 */
function usualDone(ends: readonly number[]): number | undefined {
  const each = ends.slice(1).flatMap((end, at) => (end > (ends[at] ?? 0) ? [end - (ends[at] ?? 0)] : []));
  const whole = each.length > 1 ? each.slice(0, -1) : each;
  if (whole.length === 0 || Math.max(...whole) > (1 + ALIKE) * Math.min(...whole)) return undefined;
  const last = each.at(-1) ?? 0;
  const counted = last >= Math.min(...whole) ? each : whole;
  return counted.reduce((sum, done) => sum + done, 0) / counted.length;
}
