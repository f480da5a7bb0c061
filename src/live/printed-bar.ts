import type { TappedLift } from "./day-event.ts";
import type { DayPart } from "./day-plan.ts";

/** A lift as planned. */
export type PrintedLift = NonNullable<DayPart["lifting"]>["lifts"][number];
type Attempt = PrintedLift["attempts"][number];
type AfterMiss = Attempt["afterMiss"];

/** What the plan as printed has next at the bar. Clocks of the part, seconds. */
type PrintedNow =
  | {
      readonly kind: "lift";
      /** Which of the lifts of the part, from 0. */
      readonly lift: number;
      readonly load: Attempt["load"];
      readonly clock: number;
      readonly afterMiss: AfterMiss;
    }
  | { readonly kind: "stop"; readonly why: "all-done" | "two-misses" | "none-made" };

/**
 * What to lift next where several lifts share the time and nothing is planned again: of all lifts the one whose clock comes first.
 *
 * A miss is followed by what the plan says of it and never by the next load of the ladder. Made lighter, the missed load comes again; made as
 * it was, the ladder goes on. Two misses in a row end a lift.
 */
export function printedNow(lifts: readonly PrintedLift[], tapped: readonly TappedLift[]): PrintedNow {
  const ahead = lifts.map((lift, index) => ({
    index,
    next: nextOf(
      lift,
      tapped.filter((one) => one.lift === index).map(({ made }) => made),
    ),
  }));
  const [first] = ahead
    .flatMap(({ index, next }) => (next.kind === "lift" ? [{ ...next, lift: index }] : []))
    .sort((a, b) => a.clock - b.clock);
  if (first) return first;
  const why = ahead.flatMap(({ next }) => (next.kind === "stop" ? [next.why] : []));
  return { kind: "stop", why: why.find((each) => each !== "all-done") ?? "all-done" };
}

type NextOf =
  Omit<Extract<PrintedNow, { kind: "lift" }>, "lift"> | Extract<PrintedNow, { readonly kind: "stop" }>;

/** Where one lift stands after its attempts in their order; each attempt takes the next of the printed clocks. */
function nextOf({ attempts }: PrintedLift, done: readonly boolean[]): NextOf {
  const ended = { kind: "stop", why: done.includes(true) ? "two-misses" : "none-made" } as const;
  let rung = 0;
  let missed: Extract<AfterMiss, { kind: "lift" }> | undefined;
  for (const made of done) {
    if (missed) {
      if (!made) return ended;
      rung = rungAfter(attempts, rung, missed);
      missed = undefined;
    } else if (made) rung += 1;
    else {
      const then = attempts[rung]?.afterMiss;
      if (then?.kind !== "lift") return { kind: "stop", why: done.includes(true) ? "all-done" : "none-made" };
      missed = then;
    }
  }
  const clock = attempts[done.length]?.clock;
  const load = missed?.load ?? attempts[rung]?.load;
  if (clock === undefined || load === undefined) return { kind: "stop", why: "all-done" };
  const afterMiss = missed ? STOP : at(attempts[done.length + 1]?.clock, attempts[rung]?.afterMiss);
  return { kind: "lift", load, clock, afterMiss };
}

const STOP: AfterMiss = { kind: "stop" };

/** What follows a miss, at the clock that is next now. */
const at = (clock: number | undefined, afterMiss: AfterMiss = STOP): AfterMiss =>
  afterMiss.kind === "stop" || clock === undefined ? STOP : { ...afterMiss, clock };

/** The rung to go on with once the load taken after a miss at `rung` was made. */
function rungAfter(
  attempts: readonly Attempt[],
  rung: number,
  { direction, load }: Extract<AfterMiss, { kind: "lift" }>,
): number {
  if (direction === "lower") return rung;
  if (direction === "same") return rung + 1;
  const heavier = attempts.findIndex(
    (attempt, index) => index > rung && attempt.load.kilograms > load.kilograms,
  );
  return heavier === -1 ? attempts.length : heavier;
}
