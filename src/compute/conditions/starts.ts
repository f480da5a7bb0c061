import { Temporal } from "temporal-polyfill";
import type { Athlete, Start } from "../../models/athlete.ts";
import type { Metric } from "../../models/condition.ts";

/** A start on the clock of the day: the local date and time `2026-11-26T18:40`, and its zone where known. */
export type StartTime = Pick<Start, "at" | "zone">;

/**
 * What the starts of an athlete say about one of them: the hour of the day, how many starts that day, and the hours
 * since the one before (same day only) and to the one after. Times without a zone are compared as they stand.
 */
export function startNumbers(
  athlete: Athlete,
  start: StartTime | undefined,
): Readonly<Partial<Record<Metric, number>>> {
  if (start === undefined) return {};
  const here = Temporal.PlainDateTime.from(start.at);
  const others = athlete.starts.filter((each) => each.at !== start.at);
  const sameDay = others.filter((each) => each.at.slice(0, 10) === start.at.slice(0, 10));
  const before = sameDay.map((each) => hoursBetween(each, start)).filter((hours) => hours > 0);
  const after = others.map((each) => hoursBetween(start, each)).filter((hours) => hours > 0);
  return {
    "start-hour": here.hour + here.minute / 60,
    "starts-today": 1 + sameDay.length,
    ...(before.length > 0 && { "hours-since-start": Math.min(...before) }),
    ...(after.length > 0 && { "hours-to-next": Math.min(...after) }),
  };
}

/** Hours from one local time to another; each is read in its own zone, or both as they stand where a zone is not known. */
export function hoursBetween(from: StartTime, to: StartTime): number {
  const [begin, end] = [Temporal.PlainDateTime.from(from.at), Temporal.PlainDateTime.from(to.at)];
  if (from.zone === to.zone || from.zone === undefined || to.zone === undefined) {
    return begin.until(end, { largestUnit: "hours" }).total("hours");
  }
  const milliseconds =
    end.toZonedDateTime(to.zone).epochMilliseconds - begin.toZonedDateTime(from.zone).epochMilliseconds;
  return milliseconds / 3_600_000;
}
