import type { Course, CourseItem, CourseRest } from "../../models/course.ts";
import type { EarlyTrouble } from "../../models/early-trouble.ts";
import type { EarlyPerformance } from "../../models/workout.ts";

/** What was seen of a performance: seconds of work and changes of station of each round seen whole, rests left out. */
type ReadRounds =
  | { readonly ok: true; readonly seconds: ReadonlyMap<number, number> }
  | { readonly ok: false; readonly trouble: EarlyTrouble };

/** From one clock read to the next: the items between, the efforts of one line or one round at the end. */
type Stretch = { readonly round: number; readonly items: readonly CourseItem[] };

/**
 * The seconds of each round from the clocks of a performance. A rest whose length cannot be known (at least so long, or one that
 * began at an unknown moment) makes its round unknown; so does a clock not read. Tells the performance whose clocks are more than the
 * course has lines or rounds, or which are earlier than the work could have begun.
 */
export function readRounds(performance: EarlyPerformance, course: Course): ReadRounds {
  const stretches = stretchesOf(course, performance.after);
  const { splits } = performance;
  if (splits.length > stretches.length) {
    return { ok: false, trouble: { kind: "too-many-splits", performance, most: stretches.length } };
  }
  const seconds = new Map<number, number>();
  const whole = new Map<number, number>();
  for (const { round } of stretches) whole.set(round, (whole.get(round) ?? 0) + 1);
  let before = 0;
  let worked: number | undefined = 0;
  for (const [index, split] of splits.entries()) {
    const stretch = stretches[index] as Stretch;
    const start = startOf(stretch, before, worked);
    const time = start === undefined ? undefined : workedIn(stretch, start, split, course.pauses ?? []);
    if (time !== undefined && time <= 0) {
      const begins = start ?? before;
      return { ok: false, trouble: { kind: "clock-too-soon", performance, clock: split, start: begins } };
    }
    worked = workSinceRest(stretch, time, worked);
    before = split;
    seconds.set(stretch.round, (seconds.get(stretch.round) ?? 0) + (time ?? Number.NaN));
    whole.set(stretch.round, (whole.get(stretch.round) ?? 0) - 1);
  }
  return {
    ok: true,
    seconds: new Map([...seconds].filter(([round, time]) => whole.get(round) === 0 && Number.isFinite(time))),
  };
}

/** Seconds of work since the last rest, at the end of a stretch. */
function workSinceRest(
  { items }: Stretch,
  time: number | undefined,
  before: number | undefined,
): number | undefined {
  const first = items.findIndex((item) => item.kind === "effort");
  if (time === undefined || items.slice(first).some((item) => item.kind === "rest")) return undefined;
  if (first > 0) return time;
  return before === undefined ? undefined : before + time;
}

/** Cuts a course after each line or each round; rests go with the work after them. */
function stretchesOf({ items }: Course, after: EarlyPerformance["after"]): readonly Stretch[] {
  const stretches: { readonly key: number; readonly round: number; readonly items: CourseItem[] }[] = [];
  let waiting: CourseItem[] = [];
  for (const item of items) {
    if (item.kind === "rest") {
      waiting.push(item);
      continue;
    }
    const key = after === "line" ? item.line : item.pass.round;
    const open = stretches.at(-1);
    if (open?.key === key) open.items.push(...waiting, item);
    else stretches.push({ key, round: item.pass.round, items: [...waiting, item] });
    waiting = [];
  }
  return stretches;
}

/** Clock at which the work of a stretch begins, after the rests before it. `worked`: seconds of work since the rest before. */
function startOf({ items }: Stretch, before: number, worked: number | undefined): number | undefined {
  const first = items.findIndex((item) => item.kind === "effort");
  return items
    .slice(0, first)
    .reduce<number | undefined>(
      (clock, item) =>
        clock === undefined || item.kind === "effort" ? clock : afterRest(item.rest, clock, worked),
      before,
    );
}

function afterRest(rest: CourseRest["rest"], clock: number, worked: number | undefined): number | undefined {
  switch (rest.kind) {
    case "exactly":
      return clock + rest.time;
    case "until":
      return Math.max(clock, rest.clock);
    case "as-long-as-work":
      return worked === undefined ? undefined : clock + rest.times * worked;
    case "at-least":
      return undefined;
  }
}

/** Seconds of a stretch from its start to its clock without the rests and pauses inside; undefined where these are not known. */
function workedIn(
  { items }: Stretch,
  start: number,
  split: number,
  pauses: NonNullable<Course["pauses"]>,
): number | undefined {
  const first = items.findIndex((item) => item.kind === "effort");
  let time = split - start;
  for (const item of items.slice(first)) {
    if (item.kind !== "rest") continue;
    if (item.rest.kind !== "exactly") return undefined;
    time -= item.rest.time;
  }
  for (const { from, to } of pauses) time -= Math.max(0, Math.min(to, split) - Math.max(from, start));
  return time;
}
