import type { Schedule, Stretch, WarmUpStep } from "./warm-up-schedule.ts";

type BuildSet = WarmUpStep["sets"][number];

/** Where the warm-up stands at a moment. */
export type WarmUpNow = {
  /** Seconds to the start; below nought after it. */
  readonly startsIn: number;
  readonly now?: Stretch;
  /** Seconds left of what is done now, or until the first thing to do. */
  readonly left: number;
  readonly next?: Stretch;
  /** The set of the build at hand, by the clock, and what comes after it. */
  readonly set?: { readonly set: BuildSet; readonly left: number; readonly after?: BuildSet };
  /** The next set to be loaded, wherever it stands. */
  readonly nextSet?: BuildSet;
};

/** What of a schedule is on now and what comes next. */
export function warmUpNow({ start, stretches }: Schedule, at: number): WarmUpNow {
  const index = stretches.findIndex(({ from, to }) => from <= at && at < to);
  const now = stretches[index];
  const next = stretches.find(({ from, kind }) => from > at && kind !== "wait");
  const set = now?.step && setNow(now, at);
  const nextSet =
    set?.after ??
    next?.step?.sets[0] ??
    stretches.find(({ from, step }) => from > at && step && step.sets.length > 0)?.step?.sets[0];
  return {
    startsIn: (start - at) / 1000,
    ...(now !== undefined && { now }),
    left: ((now?.to ?? next?.from ?? start) - at) / 1000,
    ...(next !== undefined && { next }),
    ...(set !== undefined && { set }),
    ...(nextSet !== undefined && { nextSet }),
  };
}

/** The set of a build by the clock: lifting and rest of each take their time, spread over that of the step. */
function setNow({ step, from, to }: Stretch, at: number): WarmUpNow["set"] {
  const sets = step?.sets ?? [];
  if (sets.length === 0) return undefined;
  const rests = sets.reduce((sum, { restAfter }) => sum + restAfter, 0);
  const length = (to - from) / 1000;
  const lifting = Math.max(0, length - rests) / sets.length;
  const scale = length / (lifting * sets.length + rests);
  let end = from;
  for (const [index, set] of sets.entries()) {
    end += (lifting + set.restAfter) * scale * 1000;
    const after = sets[index + 1];
    if (at < end || after === undefined)
      return { set, left: Math.max(0, (end - at) / 1000), ...(after !== undefined && { after }) };
  }
  return undefined;
}
