import type { DayPart } from "./day-plan.ts";

/** A lift as planned. */
export type PrintedLift = NonNullable<DayPart["lifting"]>["lifts"][number];
type Attempt = PrintedLift["attempts"][number];
type Load = Attempt["load"];

/** A lift that was tapped: which of the part, and when, in seconds from the true opening. */
export type PrintedTap = { readonly lift: number; readonly made: boolean; readonly start: number };

/** How the day came to a bar at which nothing is planned again. Seconds from the true opening. */
export type PrintedDay = {
  readonly taps: readonly PrintedTap[];
  readonly now: number;
  /** Last moment at which a lift may start; infinite where no clock runs. */
  readonly lastStart: number;
};

/** What comes next at the bar. `clock` in seconds from the true opening. */
export type PrintedStep =
  | {
      readonly kind: "lift";
      /** Which of the lifts of the part, from 0. */
      readonly lift: number;
      readonly load: Load;
      readonly clock: number;
    }
  | {
      readonly kind: "stop";
      readonly why: "all-done" | "two-misses" | "over-target" | "none-made" | "no-time";
    };

/** What the plan as printed has next, and after that lift. */
export type PrintedNow =
  | (Extract<PrintedStep, { kind: "lift" }> & {
      readonly ifMade: PrintedStep;
      readonly ifMissed: PrintedStep;
    })
  | Extract<PrintedStep, { kind: "stop" }>;

/**
 * What to lift next where several lifts or windows share the time and nothing is planned again: of all lifts the one whose clock
 * comes first.
 *
 * A miss is followed by what the plan says of it and never by the next load of the ladder. Made lighter, the missed load comes again; made as
 * it was, the ladder goes on up to the load aimed at. Two misses in a row end a lift, but for the one last try of the plan where
 * nothing is made, and so does one over the load aimed at. A window that went by
 * without a lift costs its lift and no load; a lift that takes longer than planned leaves the time of the next lift to it as soon as something
 * is made.
 */
export function printedNow(lifts: readonly PrintedLift[], day: PrintedDay): PrintedNow {
  const step = stepOf(lifts, day);
  if (step.kind === "stop") return step;
  const after = (made: boolean): PrintedStep => {
    const start = Math.max(step.clock, day.now);
    return stepOf(lifts, { ...day, now: start, taps: [...day.taps, { lift: step.lift, made, start }] });
  };
  return { ...step, ifMade: after(true), ifMissed: after(false) };
}

function stepOf(lifts: readonly PrintedLift[], day: PrintedDay): PrintedStep {
  const steps = lifts.map((lift, index): PrintedStep => {
    const taps = day.taps.filter((one) => one.lift === index);
    const next = nextOf(lift, taps, { ...day, until: untilOf(lifts, lift) });
    return next.kind === "lift" ? { ...next, lift: index } : next;
  });
  const [first] = steps
    .flatMap((step) => (step.kind === "lift" ? [step] : []))
    .sort((a, b) => a.clock - b.clock);
  if (first) return first;
  const why = steps.flatMap((step) => (step.kind === "stop" ? [step.why] : []));
  return { kind: "stop", why: why.find((each) => each !== "all-done") ?? "all-done" };
}

/** When the time of a lift that shares a window is over: the next lift begins then. */
function untilOf(lifts: readonly PrintedLift[], lift: PrintedLift): number {
  if (lift.windows !== undefined) return Infinity;
  const own = lift.attempts[0]?.clock ?? 0;
  return Math.min(
    ...lifts.flatMap(({ attempts }) => attempts[0]?.clock ?? []).filter((clock) => clock > own),
  );
}

type Limits = Pick<PrintedDay, "now" | "lastStart"> & { readonly until: number };
type NextOf = Omit<Extract<PrintedStep, { kind: "lift" }>, "lift"> | Extract<PrintedStep, { kind: "stop" }>;

/** Where one lift stands after its taps in their order. */
function nextOf(lift: PrintedLift, taps: readonly PrintedTap[], limits: Limits): NextOf {
  const ladder = loadAfter(
    lift,
    taps.map(({ made }) => made),
  );
  if ("kind" in ladder) return ladder;
  const { attempts } = lift;
  const slot = slotAfter(lift, taps, limits.now);
  const planned = attempts[slot]?.clock;
  if (planned === undefined) return { kind: "stop", why: slot > taps.length ? "no-time" : "all-done" };
  const last = taps.at(-1);
  const clock = last === undefined ? planned : Math.max(planned, last.start + leastRest(lift));
  const isMade = taps.some(({ made }) => made);
  const soonest = Math.max(clock, limits.now);
  if (soonest > limits.lastStart || (isMade && soonest > limits.until))
    return { kind: "stop", why: "no-time" };
  return { kind: "lift", load: ladder.load, clock };
}

/** The shortest rest the plan has between two attempts of a lift, seconds. */
const leastRest = ({ attempts }: PrintedLift): number =>
  attempts.length < 2 ? 0 : Math.min(...attempts.slice(1).map(({ restBefore }) => restBefore));

/** The attempt whose turn it is: each tap takes one, and so does each window that went by. */
function slotAfter({ attempts, windows }: PrintedLift, taps: readonly PrintedTap[], now: number): number {
  const open = (from: number, at: number): number => {
    const found = attempts.findIndex(
      ({ window }, slot) => slot >= from && at < (windows?.[(window ?? 0) - 1]?.closes ?? Infinity),
    );
    return found === -1 ? attempts.length : found;
  };
  return open(
    taps.reduce((from, { start }) => open(from, start) + 1, 0),
    now,
  );
}

/** The load that follows what was made and missed, or why none does. */
function loadAfter(
  { attempts, lastTry }: PrintedLift,
  done: readonly boolean[],
): { readonly load: Load } | Extract<PrintedStep, { kind: "stop" }> {
  const ended = { kind: "stop", why: done.includes(true) ? "two-misses" : "none-made" } as const;
  let rung = 0;
  let missed: { readonly load: Load; readonly isLast: boolean } | undefined;
  /** The load under the opener that was missed before the last try of the plan, which was made. */
  let owed: Load | undefined;
  for (const [at, made] of done.entries()) {
    if (missed && made) {
      owed = missed.isLast ? lowerOf(attempts) : undefined;
      rung = rungOnAfter(attempts, rung, missed.load);
      missed = undefined;
    } else if (owed) {
      if (!made) missed = { load: owed, isLast: false };
      owed = undefined;
    } else if (missed) {
      if (done.slice(0, at).includes(true) || missed.isLast || lastTry === undefined) return ended;
      missed = { load: lastTry.load, isLast: true };
    } else if (made) rung += 1;
    else {
      const then = attempts[rung]?.afterMiss;
      if (then?.kind !== "lift") return done.includes(true) ? endedAt(attempts, rung) : ended;
      missed = { load: then.load, isLast: false };
    }
  }
  const load = missed?.load ?? owed ?? attempts[rung]?.load;
  return load === undefined ? { kind: "stop", why: "all-done" } : { load };
}

/** Why a miss ends a lift after which the plan has nothing. */
const endedAt = (attempts: readonly Attempt[], rung: number): Extract<PrintedStep, { kind: "stop" }> => ({
  kind: "stop",
  why: attempts[rung]?.onlyIfWell === true && rung < attempts.length - 1 ? "over-target" : "all-done",
});

/** The load after a missed opener. */
const lowerOf = ([opener]: readonly Attempt[]): Load | undefined =>
  opener?.afterMiss.kind === "lift" ? opener.afterMiss.load : undefined;

/** The same where a second try was needed: over the load aimed at nothing is lifted then. */
function rungOnAfter(attempts: readonly Attempt[], rung: number, load: Load): number {
  const next = rungAfter(attempts, rung, load);
  return next > rung && attempts[next]?.onlyIfWell === true ? attempts.length : next;
}

/** The rung to go on with once the load taken after a miss at `rung` was made: a lighter one leaves it to be lifted. */
function rungAfter(attempts: readonly Attempt[], rung: number, { kilograms }: Load): number {
  const heavier = attempts.findIndex(
    (attempt, index) => index >= rung && attempt.load.kilograms > kilograms + SAME,
  );
  return heavier === -1 ? attempts.length : heavier;
}

/** Loads closer than this are one, kilograms. */
const SAME = 0.005;
