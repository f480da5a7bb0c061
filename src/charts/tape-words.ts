import type { Plan } from "../models/plan/plan.ts";
import { sayList } from "../wording/number.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayClock } from "../wording/time.ts";
import { MOST_LANES } from "./tape-strip.ts";
import type { Timeline, TimelinePart } from "./timeline.ts";

/** What a tape shows, in words and in order. */
export const tapeInWords = (plan: Pick<Plan, "workout">, timeline: Timeline): string =>
  [
    `${plan.workout.title} to the scale of time, ${sayClock(0)} to ${sayClock(timeline.end)}.`,
    ...timeline.parts.map(partInWords),
  ].join(" ");

function partInWords(part: TimelinePart): string {
  const from = `Part ${sayPart(part.name)} from ${sayClock(part.from)} to ${sayClock(part.to)}`;
  if (part.kind === "lift") {
    const lifts = part.attempts.map(({ at, load }) => `${load} at ${sayClock(at)}`);
    return `${from}: ${sayList(lifts)}.`;
  }
  const cuts = part.pieces.slice(0, -1).map(({ to }) => sayClock(to));
  const cut = cuts.length > 0 ? `, cut at ${sayList(cuts)}` : "";
  const half = part.half === undefined ? "" : ` Half of the work is done at ${sayClock(part.half)}.`;
  return `${from}${cut}.${half}`;
}

/** How to read a tape: its scale, its rows by name, what is in colour, and its marks. Empty where there is no part. */
export function keyToTape({ parts }: Timeline): string {
  if (parts.length === 0) return "";
  const works = parts.filter(({ kind }) => kind === "work");
  const marks = [
    works.length > 0 && "a block is a set",
    works.some(({ half }) => half !== undefined) && "▼ marks half of the work",
    parts.some(({ kind }) => kind === "lift") && "a post is a lift",
  ].filter((mark) => mark !== false);
  return [
    "To the scale of time, cut where you look at the clock:",
    `${sayList(marks)}.`,
    ...works.map((part) => rowsInWords(part, works.length > 1)),
  ].join(" ");
}

function rowsInWords({ name, lanes }: TimelinePart, several: boolean): string {
  const limiter = lanes.find((lane) => lane.limiter);
  const where = several ? `Part ${sayPart(name)}` : "";
  if (lanes.length < 2 || lanes.length > MOST_LANES) return "";
  const rows = `${where ? `${where}, rows` : "Rows"} from the top: ${sayList(lanes.map((lane) => lane.name))}`;
  return limiter ? `${rows}; in colour what decides: ${limiter.name}.` : `${rows}.`;
}
