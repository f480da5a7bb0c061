import type { Athlete, IsoDate, LoggedResult } from "../../models/athlete.ts";
import { daysBetween } from "../capacity/age-of-result.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { SITUATION_CONSTANTS } from "./constants.ts";

/** What somebody has lately done of a movement in one session, and when last. */
export type UsualAmounts = ReadonlyMap<string, { readonly amount: number; readonly last?: IsoDate }>;

/** The work of a logged result in order: how much of which movement, and the score units of each stretch. */
export type WorkDone = readonly {
  readonly movement: string;
  readonly amount: number;
  readonly scores: number;
}[];

/**
 * The most of each movement an athlete has lately done in one session: from max efforts, unbroken sets and the
 * workouts logged within the last weeks, by the amounts of those workouts up to the score reached. Results without a
 * date count as lately, results made scaled are left out. An unbroken set is a lower bound, so it is used only where
 * nothing else is known.
 */
export function usualAmounts(
  athlete: Athlete,
  date: IsoDate,
  workOf: (result: LoggedResult) => WorkDone | undefined,
  overrides?: Readonly<Record<string, number>>,
): UsualAmounts {
  const { usualWithinDays } = withOverrides(SITUATION_CONSTANTS, overrides);
  const recent = (day: IsoDate | undefined): boolean =>
    day === undefined || (day <= date && daysBetween(day, date) <= usualWithinDays);
  const most = new Map<string, { amount: number; last?: IsoDate }>();
  const note = (movement: string, amount: number, day: IsoDate | undefined): void => {
    const before = most.get(movement);
    const last = [before?.last, day]
      .filter((each) => each !== undefined)
      .sort()
      .at(-1);
    most.set(movement, {
      amount: Math.max(amount, before?.amount ?? 0),
      ...(last !== undefined && { last }),
    });
  };
  for (const effort of athlete.efforts.filter((each) => recent(each.date))) {
    note(effort.movement, effort.amount, effort.date);
  }
  for (const result of athlete.results.filter((each) => each.version === "prescribed" && recent(each.date))) {
    for (const [movement, amount] of amountsUpTo(workOf(result) ?? [], result.reps)) {
      note(movement, amount, result.date);
    }
  }
  for (const set of athlete.unbroken) if (!most.has(set.movement)) note(set.movement, set.reps, undefined);
  return most;
}

/** Sums per movement of the work up to a score; all of it where none is given. */
function amountsUpTo(work: WorkDone, score: number | undefined): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  let left = score ?? Infinity;
  for (const stretch of work) {
    if (left <= 0) break;
    const share = stretch.scores > 0 ? Math.min(1, left / stretch.scores) : 1;
    sums.set(stretch.movement, (sums.get(stretch.movement) ?? 0) + stretch.amount * share);
    left -= stretch.scores;
  }
  return sums;
}
