import type { EffortStep, PartLength, Step } from "../../models/workout.ts";
import type { CheckedWork } from "./check-work.ts";
import { effortsOf } from "./default-score.ts";
import { tellStep, tellText, type Trouble } from "./notation-fault.ts";
import type { PartKind, WrittenClock } from "./part-phrases.ts";
import type { WorkReading } from "./work-reading.ts";
import type { TextSource } from "./token.ts";

/** The kind and clock of a part, and its work with what follows from it. */
type PartWork = {
  readonly kind: PartKind;
  readonly clock: WrittenClock | undefined;
  readonly steps: readonly Step[];
  readonly checked: CheckedWork;
};

/**
 * Tells where the end of a part does not fit its work: a length that the intervals do not have, a length that does not
 * follow, an open end that nothing ends, lifting without a lift. `source` is what stands behind the kind.
 */
export function checkEnd(
  source: TextSource,
  { kind, clock, steps, checked }: PartWork,
  reading: WorkReading,
): void {
  const tell = (trouble: Trouble): void => {
    tellText(reading.faults, source.text === "" ? { ...source, text: kind, isName: true } : source, trouble);
  };
  if (kind === "max load") checkLifts(steps, reading, tell);
  if (clock === undefined || (clock.kind !== "on-the-clock" && clock.kind !== "max-load")) return;
  if ("asWritten" in clock) {
    if (checked.clock === undefined || checked.lastWork === undefined) tell(NO_LENGTH);
    return;
  }
  const length = typeof clock.length === "object" ? lengthFor(clock.length) : clock.length;
  if (clock.kind === "on-the-clock" && length === undefined) {
    if (!checked.filled && !hasElimination(steps)) tell(NOT_OPEN);
  } else if (
    length !== undefined &&
    checked.clock !== undefined &&
    !checked.filled &&
    steps.some(holdsClock)
  ) {
    const last = checked.lastWork;
    if (last !== undefined && (length < last || length > checked.clock)) tell(wrongLength(last));
  }
}

/** How long a part lasts from its own start; undefined where that depends on the part before. */
const lengthFor = ({ kind, time }: PartLength): number | undefined => (kind === "for" ? time : undefined);

const holdsClock = (step: Step): boolean =>
  step.kind === "block" && (step.window !== undefined || step.steps.some(holdsClock));

/**
 * Something must be lifted for load, and its load is the athlete's. Other work stands only where a window of the clock holds it
 * and the lift after it.
 */
function checkLifts(steps: readonly Step[], reading: WorkReading, tell: (trouble: Trouble) => void): void {
  const efforts = effortsOf(steps);
  const isLift = (step: EffortStep): boolean =>
    step.pieces.every((piece) =>
      piece.movements.every((id) => reading.movements.get(id)?.loading?.lift === true),
    );
  const lifts = efforts.filter(isLift);
  const open = lifts.filter(
    (step) => step.load?.kind === "same" && step.load.value.kind === "athletes-choice",
  );
  const [set] = lifts.filter((step) => !open.includes(step));
  if (open.length > 0) {
    const clocked = effortsOf(steps.filter(holdsClock));
    const lifted = clocked.some((step) => open.includes(step));
    for (const step of efforts) {
      const inWindow = lifted && clocked.includes(step);
      if (!open.includes(step) && !inWindow) tellStep(reading.faults, step, OTHER_WORK);
    }
    for (const step of steps) tellLiftedOut(step, reading);
  } else if (set === undefined) tell(NO_LIFT);
  else tellStep(reading.faults, set, SET_LOAD);
}

/** A missed lift is no work left undone: whether it puts an athlete out is for the rules to say. */
function tellLiftedOut(step: Step, reading: WorkReading): void {
  if (step.kind !== "block") return;
  if (step.elimination) tellStep(reading.faults, step, LIFTED_OUT);
  else for (const inner of step.steps) tellLiftedOut(inner, reading);
}

const hasElimination = (steps: readonly Step[]): boolean =>
  steps.some((step) => step.kind === "block" && (step.elimination || hasElimination(step.steps)));

const NO_LIFT: Trouble = {
  problem: "no line of this part is lifted for load",
  allowed: "`max load: 6:00` with a line such as `1 clean and jerk`",
  remedy: "Write the lift as a line, or make it a part of another kind.",
};
const SET_LOAD: Trouble = {
  problem: "in a part `max load` the athlete chooses the load, and here it is set",
  allowed: "`1 clean and jerk`; for set loads that rise `on the clock: as written` with `every`",
  remedy: "Leave the load out, or make the part one `on the clock` with `score: intervals completed`.",
};
const OTHER_WORK: Trouble = {
  problem:
    "a part `max load` holds lifts and rests, and other work only in windows of the clock with the lift behind it",
  allowed:
    "`every 4:00, 4 rounds:` around the work and the lift; else a part `for time:` with this work, and a part with `starts: after a` and `max load: until 10:00` with the lift",
  remedy: "Make the work a part of its own before the lift.",
};
const LIFTED_OUT: Trouble = {
  problem: "a load of choice that is missed may be tried again, so `or out` says nothing of it",
  allowed: "the same block without `or out`; with set loads that rise `on the clock: as written`",
  remedy: "Leave `or out` away; if a miss ends it, say so under `standards:`.",
};
const NO_LENGTH: Trouble = {
  problem: "how long the part lasts does not follow from its work, since some of it has no fixed clock",
  allowed: "`on the clock: 16:00`, or blocks with `every`, with `on` and `off`, or with `amrap 3:00`",
  remedy: "Write the length of the part, or `for time:` if the work is done as fast as possible.",
};
const NOT_OPEN: Trouble = {
  problem: "nothing in this part goes on until an interval is missed",
  allowed: "`on the clock: open` with a block such as `every 1:00, 1 up by 1, or out`",
  remedy: "Write the length of the part, or add `or out` to the block that ends it.",
};
const wrongLength = (written: number): Trouble => ({
  problem: `the intervals of the work end at ${clockText(written)}`,
  allowed: `${clockText(written)}, or \`as written\``,
  remedy: "Correct the length or the intervals.",
});

const clockText = (time: number): string =>
  `${Math.floor(time / 60)}:${String(Math.round(time % 60)).padStart(2, "0")}`;
