import type { EffortStep, PartLength, Step } from "../../models/workout.ts";
import type { ReadStep } from "./build-block.ts";
import { forEverybody, readByDivision, type ByDivision, type Read } from "./by-division.ts";
import { beyond, checkBounds, repsOf, visitsOf } from "./check-bounds.ts";
import { checkEnd } from "./check-end.ts";
import { checkWork, type CheckedWork, type ClockOfPart } from "./check-work.ts";
import { effortsOf } from "./default-score.ts";
import { tellStep, tellText, type Faults, type Trouble } from "./notation-fault.ts";
import type { PartKind, WrittenClock } from "./part-phrases.ts";
import type { LineSetting } from "./reading.ts";
import { readSteps } from "./read-steps.ts";
import type { WorkReading } from "./work-reading.ts";
import { sourceOf, wholePart, type WrittenPart } from "./written-part.ts";

/** The work of a part for one division, and what the clock makes of it. */
type Work = { readonly steps: readonly Step[]; readonly checked: CheckedWork };

/** Reads the work of a part for every division, and walks through it by the clock. */
export function worksOf(
  part: WrittenPart,
  kind: PartKind,
  clock: WrittenClock | undefined,
  starts: number | undefined,
  reading: WorkReading,
): ByDivision<Work> {
  const isThere = (part.entries["work"] ?? null) !== null;
  const steps = isThere
    ? stepsOf(part, kind, reading)
    : forEverybody(reading.divisions, { value: [], isWhole: true });
  const works = readByDivision(
    reading.divisions,
    (index) => [steps[index]],
    reading.faults,
    (index, faults) => {
      const own = steps[index] ?? { value: [], isWhole: false };
      return walkedWork(own, part, { kind, clock, starts }, { ...reading, faults });
    },
  );
  return works.map(({ value }) => value);
}

/** The kind of a part with its clock, and the clock of the workout at which it starts, in seconds. */
type ClockedPart = {
  readonly kind: PartKind;
  readonly clock: WrittenClock | undefined;
  readonly starts: number | undefined;
};

/** Steps walked through by the clock; of a part with too many of them, none. */
function walkedWork(
  { value: steps, isWhole }: Read<readonly Step[]>,
  part: WrittenPart,
  { kind, clock, starts }: ClockedPart,
  reading: WorkReading,
): Work {
  const { faults } = reading;
  if (isWhole && effortsOf(steps).length === 0)
    tellText(faults, "work" in part.entries ? sourceOf(part, "work") : wholePart(part), NO_WORK);
  const isWithin = checkedLines(steps, faults);
  const tooLong = isWhole
    ? (beyond("visits", Math.max(1, visitsOf(steps))) ??
      (isWithin ? beyond("allReps", Math.max(1, repsOf(steps))) : undefined))
    : undefined;
  if (tooLong) {
    tellText(faults, { text: "work", path: [...part.path, "work"], isName: true }, tooLong);
    return { steps: [], checked: { clock: undefined, filled: false, lastWork: undefined } };
  }
  const checked = checkWork(steps, clockOfPart(clock, starts), starts, (step, trouble) => {
    tellStep(faults, step, trouble);
  });
  if (isWhole) checkEnd(sourceOf(part, kind), { kind, clock, steps, checked }, reading);
  return { steps, checked };
}

/** Whether every line and block keeps within what a workout can hold; what does not is told. */
function checkedLines(steps: readonly Step[], faults: Faults): boolean {
  let isWithin = true;
  checkBounds(steps, (step, trouble) => {
    isWithin = false;
    tellStep(faults, step, trouble);
  });
  return isWithin;
}

const NO_WORK: Trouble = {
  problem: "there is no work in this part",
  allowed: "`work:` with a list of lines and blocks",
  remedy: "Write the work below `work:`, each line with a hyphen.",
};

/** The work of an AMRAP without anything endless in it is done again and again from the top, after a buy-in. */
function stepsOf(part: WrittenPart, kind: PartKind, reading: WorkReading): ByDivision<Read<readonly Step[]>> {
  const written = part.entries["work"];
  const path = [...part.path, "work"];
  const alone = !Array.isArray(written) || written.length === 1;
  const once: LineSetting = {
    inLadder: false,
    lifting: kind === "max load",
    bareIsMax: kind === "amrap" && alone,
    passes: [],
  };
  const { divisions } = reading;
  if (kind !== "amrap") return readSteps(written, path, forEverybody(divisions, once), reading);
  const again: LineSetting = { ...once, passes: [{ count: "endless", isLadder: false }] };
  const faults: Faults = [];
  // What a line means by round depends on whether there are rounds, which the lines tell.
  const inRounds = readSteps(written, path, forEverybody(divisions, again), { ...reading, faults });
  const goesOn = inRounds.map(({ value }) => repeats(value));
  if (goesOn.every(Boolean)) reading.faults.push(...faults);
  const steps = goesOn.every(Boolean)
    ? inRounds
    : readSteps(
        written,
        path,
        goesOn.map((isAgain) => (isAgain ? again : once)),
        reading,
      );
  return readByDivision(
    divisions,
    (index) => [steps[index], goesOn[index]],
    reading.faults,
    (index, own) => {
      const read = steps[index]?.value ?? [];
      return goesOn[index] === true ? repeated(read, part, reading) : doneOnce(read, own);
    },
  ).map(({ value }, index) => ({ value, isWhole: steps[index]?.isWhole === true }));
}

function doneOnce(steps: readonly ReadStep[], faults: Faults): readonly Step[] {
  const last = steps.at(-1);
  if (steps.length > 1 && last?.kind === "effort" && last.pieces.some(isMax))
    tellStep(faults, last, DONE_ONCE);
  return steps;
}

function repeated(steps: readonly ReadStep[], part: WrittenPart, reading: WorkReading): readonly Step[] {
  const first = steps.filter((step) => step.once === "buy-in");
  const rounds = steps.filter((step) => step.once !== "buy-in");
  return rounds.length === 0 ? first : [...first, roundsOf(rounds, part, reading)];
}

const isMax = ({ amount }: EffortStep["pieces"][number]): boolean => amount.kind === "max";

const DONE_ONCE: Trouble = {
  problem: "the list is gone through once, and this line takes all the time that is left",
  remedy:
    "If it is done again and again from the top, give this line an amount or a time, such as `max pull-up in 1:00`.",
  severity: "notice",
};

function roundsOf(steps: readonly ReadStep[], part: WrittenPart, reading: WorkReading): Step {
  return {
    kind: "block",
    place: reading.placeAt(sourceOf(part, "work")),
    written: "",
    passes: { kind: "open-rounds" },
    inTurn: false,
    elimination: false,
    anyOrder: false,
    unbroken: false,
    tieBreak: false,
    steps,
  };
}

/**
 * Whether nothing in the work goes on without end by itself, and no clock of its own runs in it: a door that shuts at a clock of the
 * workout is passed once.
 */
function repeats(steps: readonly Step[]): boolean {
  return steps.every((step) => {
    if (step.kind === "rest") return true;
    if (step.kind === "effort") return step.pieces.every((piece) => piece.amount.kind !== "max");
    if (step.window !== undefined || step.by?.kind === "clock") return false;
    return step.passes.kind !== "open-rounds" && step.passes.kind !== "open-ladder" && repeats(step.steps);
  });
}

function clockOfPart(clock: WrittenClock | undefined, starts: number | undefined): ClockOfPart {
  if (clock === undefined) return { hasEnd: true, end: undefined };
  if (clock.kind === "for-time") return { hasEnd: false, end: undefined, cap: capOf(clock.cap, starts) };
  if ("asWritten" in clock) return { hasEnd: false, end: undefined };
  if (clock.kind === "on-the-clock") return { hasEnd: clock.length !== undefined, end: clock.length };
  const { length } = clock;
  if (length === undefined) return { hasEnd: false, end: undefined };
  if (length.kind === "for") return { hasEnd: true, end: length.time };
  return { hasEnd: true, end: starts === undefined ? undefined : length.time - starts };
}

/** A cap as clock of the part; undefined without one, and where it hangs on the part before. */
function capOf(cap: PartLength | undefined, starts: number | undefined): number | undefined {
  if (cap === undefined || cap.kind === "for") return cap?.time;
  return starts === undefined ? undefined : cap.time - starts;
}
