import { differenceAt, type IfThen, type Lookout, meanOf, SAME_RESULT } from "./lookout.ts";

/**
 * Thresholds on the clock. `least`: seconds off the plan at which to act. What to expect adds up: what one is off by, and what is
 * changed in every round left; where sets are cut, what the form of such a day brings.
 */
export function byClock(lookout: Lookout, least: number): IfThen[] {
  const { row, left, late, smallerSets, resultAt, target, isTime } = lookout;
  const difference = differenceAt(row, least);
  const secondsPerRound = (meanOf(left, ({ seconds }) => seconds) * difference) / row.end;
  const at = (by: number, action: IfThen["action"]) => {
    const ofForm = resultAt(row.end / (row.end + by));
    const kept = target + by + (action.kind === "hold" ? 0 : Math.sign(by) * secondsPerRound * left.length);
    return {
      row: row.index,
      round: row.round,
      planned: row.end,
      clock: row.end + by,
      projected: isTime && action.kind !== "smaller-sets" ? kept : ofForm,
      action,
    };
  };
  const behind = at(difference, smallerSets ?? { kind: "slow-down", secondsPerRound });
  const ahead = at(-difference, late ? { kind: "push", secondsPerRound } : { kind: "hold" });
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  return [
    { ...behind, when: "later-than" },
    { ...ahead, when: "earlier-than" },
  ];
}
