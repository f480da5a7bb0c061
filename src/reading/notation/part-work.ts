import type { EffortStep, PartLength, Step } from "../../models/workout.ts";
import type { ReadStep } from "./build-block.ts";
import { beyond, checkBounds, repsOf, visitsOf } from "./check-bounds.ts";
import { checkEnd } from "./check-end.ts";
import { checkWork, type CheckedWork, type ClockOfPart } from "./check-work.ts";
import { effortsOf } from "./default-score.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import type { PartKind, WrittenClock } from "./part-phrases.ts";
import { readSteps, type WorkReading } from "./read-steps.ts";
import { sourceOf, wholePart, type WrittenPart } from "./written-part.ts";

/** The work of a part for one division, and what the clock makes of it. */
export type Work = {
  readonly division: string;
  readonly steps: readonly Step[];
  readonly checked: CheckedWork;
};

/** Reads the work of a part for one division and walks through it by the clock. */
export function workOf(
  part: WrittenPart,
  kind: PartKind,
  clock: WrittenClock | undefined,
  starts: number | undefined,
  reading: WorkReading,
): Work {
  const division = reading.who.divisions[reading.who.index] ?? "";
  const source = sourceOf(part, "work");
  const before = reading.faults.length;
  const isThere = (part.entries["work"] ?? null) !== null;
  const steps = isThere ? stepsOf(part, kind, reading) : [];
  const untold = reading.faults.slice(before).every((fault) => fault.severity === "notice");
  if (untold && effortsOf(steps).length === 0)
    tellText(reading.faults, "work" in part.entries ? source : wholePart(part), NO_WORK);
  const isWithin = checkedLines(steps, reading);
  const tooLong = untold
    ? (beyond("visits", Math.max(1, visitsOf(steps))) ??
      (isWithin ? beyond("allReps", Math.max(1, repsOf(steps))) : undefined))
    : undefined;
  if (tooLong) {
    tellText(reading.faults, { text: "work", path: [...part.path, "work"], isName: true }, tooLong);
    return { division, steps: [], checked: { clock: undefined, filled: false, lastWork: undefined } };
  }
  const checked = checkWork(steps, clockOfPart(clock, starts), starts, (step, trouble) => {
    reading.tellStep(step, trouble);
  });
  if (untold) checkEnd(sourceOf(part, kind), { kind, clock, steps, checked }, reading);
  return { division, steps, checked };
}

/** Whether every line and block keeps within what a workout can hold; what does not is told. */
function checkedLines(steps: readonly Step[], reading: WorkReading): boolean {
  let isWithin = true;
  checkBounds(steps, (step, trouble) => {
    isWithin = false;
    reading.tellStep(step, trouble);
  });
  return isWithin;
}

const NO_WORK: Trouble = {
  problem: "there is no work in this part",
  allowed: "`work:` with a list of lines and blocks",
  remedy: "Write the work below `work:`, each line with a hyphen.",
};

/** The work of an AMRAP without anything endless in it is done again and again from the top, after a buy-in. */
function stepsOf(part: WrittenPart, kind: PartKind, reading: WorkReading): readonly Step[] {
  const written = part.entries["work"];
  const path = [...part.path, "work"];
  const alone = !Array.isArray(written) || written.length === 1;
  const setting = {
    inLadder: false,
    lifting: kind === "max load",
    bareIsMax: kind === "amrap" && alone,
    passes: kind === "amrap" ? [{ count: "endless", isLadder: false } as const] : [],
  };
  const faults: Faults = [];
  const steps = readSteps(written, path, setting, { ...reading, faults });
  if (kind !== "amrap" || !repeats(steps)) {
    if (kind !== "amrap") reading.faults.push(...faults);
    if (kind !== "amrap") return steps;
    const once = readSteps(written, path, { ...setting, passes: [] }, reading);
    const last = once.at(-1);
    if (once.length > 1 && last?.kind === "effort" && last.pieces.some(isMax))
      reading.tellStep(last, DONE_ONCE);
    return once;
  }
  reading.faults.push(...faults);
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
