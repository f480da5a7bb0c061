import type { Plan } from "../models/plan/plan.ts";
import { sayList } from "../wording/number.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayClock } from "../wording/time.ts";
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
