/**
 * A clock that neither a sleeping device nor a changed clock of the device can upset. It goes by the device's own count of
 * milliseconds while the page lives, and by its time of day while it does not.
 */
export type SteadyClock = {
  /** Milliseconds to add to the time of day of the device. */
  readonly offset: number;
  /** The last reading, from which the next one goes on; absent in a page just opened. */
  readonly last?: Reading;
  /** The steady time of the last reading, or of the last one of the page before. */
  readonly now: number;
};

/** What a device tells at one moment: its time of day, its count since the page was opened, and whether it was hidden since. */
export type Reading = {
  readonly wall: number;
  readonly count: number;
  /** Whether the page was out of sight at any moment since the last reading, so that the device may have slept. */
  readonly hidden: boolean;
};

/** Time of day and count may drift apart by so many milliseconds before anybody takes it for more. */
const DRIFT = 1500;

/** A clock for a page just opened; `kept` is what a page before left behind. */
export const openClock = (
  kept: Pick<SteadyClock, "offset" | "now"> = { offset: 0, now: 0 },
): SteadyClock => ({
  offset: kept.offset,
  now: kept.now,
});

/**
 * The clock after a reading.
 *
 * - The time of day goes back, or forward before everybody's eyes: somebody changed it, and the count holds.
 * - It goes forward while the page was out of sight: the device slept, the count with it, and the time of day holds.
 * - After a reload only the time of day is left. Where even so it lies before the last steady time, it was set back meanwhile, and
 *   time goes on from there.
 */
export function readClock({ offset, last, now }: SteadyClock, reading: Reading): SteadyClock {
  const byWall = reading.wall + offset;
  if (last === undefined) {
    const steady = Math.max(byWall, now);
    return { offset: steady - reading.wall, last: reading, now: steady };
  }
  const byCount = now + Math.max(0, reading.count - last.count);
  const slept = byWall - byCount > DRIFT && reading.hidden;
  const agree = Math.abs(byWall - byCount) <= DRIFT;
  const steady = slept || agree ? Math.max(byWall, now) : byCount;
  return { offset: steady - reading.wall, last: reading, now: steady };
}
