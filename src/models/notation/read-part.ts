import type { Path } from "../yaml/open-yaml.ts";
import type { Load, MinimumWork, Part, PartClock, PartStart, Score, Step } from "../workout.ts";
import { seconds } from "../quantity.ts";
import type { ReadStep } from "./build-block.ts";
import { checkWork, type CheckedWork, type ClockOfPart } from "./check-work.ts";
import { checkScore } from "./check-score.ts";
import { defaultScore, effortsOf } from "./default-score.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import {
  PART_KINDS,
  readMinimumWork,
  readPartClock,
  readPartStart,
  type PartKind,
  type WrittenClock,
} from "./part-phrases.ts";
import { prescriptionOf } from "./prescription.ts";
import { readSteps, type WorkReading } from "./read-steps.ts";
import { readScore } from "./score-phrase.ts";
import type { TextSource } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";
import { readWearing } from "./wearing.ts";

/** The entries of a part as written, its place in the file, and the names of the parts before it. */
export type WrittenPart = {
  readonly entries: Readonly<Record<string, unknown>>;
  readonly path: Path;
  readonly name: string;
  readonly earlier: readonly { readonly name: string; readonly start: PartStart }[];
};

/** What the notation says of a part; the plain entries beside it are the schema's. */
export type ReadPart = Pick<
  Part,
  "name" | "start" | "clock" | "heading" | "work" | "prescription" | "score"
> & {
  readonly minimumWork?: MinimumWork;
  readonly wearing?: { readonly what: string; readonly load: Readonly<Record<string, Load>> };
};

/**
 * Reads a part for every division. The readings, one for each division, share their list of faults; what cannot be read is told
 * there, and the part is undefined then.
 */
export function readPart(
  part: WrittenPart,
  readings: readonly WorkReading[],
  faults: Faults,
): ReadPart | undefined {
  const before = faults.length;
  const start = startOf(part, faults);
  const kind = kindOf(part, faults);
  const clock = kind && readPartClock(kind, sourceOf(part, kind), faults);
  const starts = start?.kind === "clock" ? start.at : undefined;
  const works =
    kind === undefined ? [] : readings.map((reading) => workOf(part, kind, clock, starts, reading));
  const [first] = works;
  const written = part.entries["score"];
  const score = typeof written === "string" ? readScore(sourceOf(part, "score"), faults) : undefined;
  const minimum = part.entries["minimum work"];
  const minimumWork =
    typeof minimum === "string" ? readMinimumWork(sourceOf(part, "minimum work"), faults) : undefined;
  const wearing = readWearing(part.entries["wearing"], [...part.path, "wearing"], readings, faults);
  const refused = faults.slice(before).some((fault) => fault.severity !== "notice");
  if (refused || start === undefined || clock === undefined || kind === undefined || first === undefined)
    return undefined;
  const settled = settleClock(clock, works);
  const scored: Score = score ?? defaultScore(settled.kind, first.steps);
  checkScore(
    scored,
    settled,
    first.steps,
    typeof written === "string" ? sourceOf(part, "score") : sourceOf(part, kind),
    readings[0],
    faults,
  );
  return {
    name: part.name,
    start,
    clock: settled,
    heading: [kind, sourceOf(part, kind).text.trim()].filter((words) => words !== "").join(", "),
    work: Object.fromEntries(works.map((work) => [work.division, work.steps])),
    prescription: prescriptionOf(part.entries["work"]),
    score: scored,
    ...(minimumWork === undefined ? {} : { minimumWork }),
    ...(wearing === undefined ? {} : { wearing }),
  };
}

const sourceOf = (part: WrittenPart, name: string): TextSource => {
  const value = part.entries[name];
  return { text: typeof value === "string" ? value : "", path: [...part.path, name], isName: false };
};

/** The text of a part that has no entry to point at. */
const wholePart = (part: WrittenPart): TextSource => ({ text: "", path: part.path, isName: false });

function startOf(part: WrittenPart, faults: Faults): PartStart | undefined {
  const names = part.earlier.map((earlier) => earlier.name);
  const written = part.entries["starts"];
  const start =
    typeof written === "string" ? readPartStart(sourceOf(part, "starts"), names, faults) : undefined;
  if (names.length === 0) {
    if (start !== undefined && !(start.kind === "clock" && start.at === 0)) {
      tellText(faults, sourceOf(part, "starts"), FIRST_START);
    }
    return { kind: "clock", at: seconds(0) };
  }
  if (written === undefined || written === null) {
    tellText(faults, wholePart(part), missingStart(names));
    return undefined;
  }
  const last = part.earlier.findLast((earlier) => earlier.start.kind === "clock");
  if (start?.kind === "clock" && last?.start.kind === "clock" && start.at <= last.start.at) {
    tellText(faults, sourceOf(part, "starts"), {
      problem: `the part must start later than part ${last.name}`,
      allowed: "a clock after that of the part before: clocks run from the start of the workout",
      remedy: "Write the clock of the workout at which the part begins.",
    });
  }
  return start;
}

const FIRST_START: Trouble = {
  problem: "the clock of the workout begins with the first part",
  remedy: "Leave `starts:` out of the first part.",
};

const missingStart = (names: readonly string[]): Trouble => ({
  problem: "when this part begins is not said",
  allowed: "`starts: at 9:00`, `starts: after a`, `starts: 2:00 after a`, `starts: at least 2:00 after a`",
  remedy: `Add \`starts:\`, for example \`starts: after ${names.at(-1) ?? "a"}\`.`,
});

function kindOf(part: WrittenPart, faults: Faults): PartKind | undefined {
  const kinds = PART_KINDS.filter((kind) => kind in part.entries);
  const [kind, second] = kinds;
  if (second !== undefined) {
    tellText(
      faults,
      { text: second, path: [...part.path, second], isName: true },
      {
        problem: `a part is of one kind, and this one is said to be \`${kinds.join("` and `")}\``,
        allowed: PART_KINDS.join(", "),
        remedy:
          "Keep one of them; what is scored for itself is a part of its own, and rounds in a given time inside a part are a block `amrap 3:00:`.",
      },
    );
    return undefined;
  }
  if (kind !== undefined) return kind;
  const trade = Object.keys(part.entries).find((name) => tradeWordRemedy(name) !== undefined);
  if (trade === undefined) {
    tellText(faults, wholePart(part), {
      problem: "what kind of part this is stands nowhere",
      allowed: "`for time:`, `amrap: 9:00`, `on the clock: as written`, `max load: 6:00`",
      remedy: "Add one of these beside `work:`.",
    });
  }
  return undefined;
}

type Work = { readonly division: string; readonly steps: readonly Step[]; readonly checked: CheckedWork };

function workOf(
  part: WrittenPart,
  kind: PartKind,
  clock: WrittenClock | undefined,
  starts: number | undefined,
  reading: WorkReading,
): Work {
  const division = reading.who.divisions[reading.who.index] ?? "";
  const source = sourceOf(part, "work");
  const before = reading.faults.length;
  const steps = stepsOf(part, kind, reading);
  const untold = reading.faults.slice(before).every((fault) => fault.severity === "notice");
  if (untold && effortsOf(steps).length === 0)
    tellText(reading.faults, "work" in part.entries ? source : wholePart(part), NO_WORK);
  const checked = checkWork(steps, clockOfPart(clock, starts), starts, (step, trouble) => {
    reading.tellStep(step, trouble);
  });
  if (untold) checkEnd(part, kind, clock, steps, checked, reading);
  return { division, steps, checked };
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
    return kind === "amrap" ? readSteps(written, path, { ...setting, passes: [] }, reading) : steps;
  }
  reading.faults.push(...faults);
  const first = steps.filter((step) => step.once === "buy-in");
  const rounds = steps.filter((step) => step.once !== "buy-in");
  return rounds.length === 0 ? first : [...first, roundsOf(rounds, part, reading)];
}

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

/** Whether nothing in the work goes on without end by itself, and no clock of its own runs in it. */
function repeats(steps: readonly Step[]): boolean {
  return steps.every((step) => {
    if (step.kind === "rest") return true;
    if (step.kind === "effort") return step.pieces.every((piece) => piece.amount.kind !== "max");
    if (step.window !== undefined) return false;
    return step.passes.kind !== "open-rounds" && step.passes.kind !== "open-ladder" && repeats(step.steps);
  });
}

function clockOfPart(clock: WrittenClock | undefined, starts: number | undefined): ClockOfPart {
  if (clock === undefined) return { hasEnd: true, end: undefined };
  if (clock.kind === "for-time" || "asWritten" in clock) return { hasEnd: false, end: undefined };
  if (clock.kind === "on-the-clock") return { hasEnd: clock.length !== undefined, end: clock.length };
  const { length } = clock;
  if (length === undefined) return { hasEnd: false, end: undefined };
  if (length.kind === "for") return { hasEnd: true, end: length.time };
  return { hasEnd: true, end: starts === undefined ? undefined : length.time - starts };
}

function checkEnd(
  part: WrittenPart,
  kind: PartKind,
  clock: WrittenClock | undefined,
  steps: readonly Step[],
  checked: CheckedWork,
  reading: WorkReading,
): void {
  const source = sourceOf(part, kind);
  const tell = (trouble: Trouble): void => {
    tellText(reading.faults, source.text === "" ? { ...source, text: kind, isName: true } : source, trouble);
  };
  if (clock === undefined || clock.kind !== "on-the-clock") {
    if (kind === "max load" && !effortsOf(steps).some(isLift)) tell(NO_LIFT);
    return;
  }
  if ("asWritten" in clock) {
    if (checked.clock === undefined || checked.lastWork === undefined) tell(NO_LENGTH);
  } else if (clock.length === undefined) {
    if (!checked.filled && !hasElimination(steps)) tell(NOT_OPEN);
  } else if (checked.clock !== undefined && !checked.filled && checked.lastWork !== undefined) {
    if (clock.length < checked.lastWork || clock.length > checked.clock) {
      tell(wrongLength(checked.lastWork));
    }
  }
}

const isLift = (step: Step): boolean => step.kind === "effort" && step.load !== undefined;

const hasElimination = (steps: readonly Step[]): boolean =>
  steps.some((step) => step.kind === "block" && (step.elimination || hasElimination(step.steps)));

const NO_LIFT: Trouble = {
  problem: "no line of this part is lifted for load",
  allowed: "`max load: 6:00` with a line such as `1 clean and jerk`",
  remedy: "Write the lift as a line, or make it a part of another kind.",
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

function settleClock(clock: WrittenClock, works: readonly Work[]): PartClock {
  if (!("asWritten" in clock)) return clock;
  const ends = works.map((work) => work.checked.lastWork ?? 0);
  return { kind: "on-the-clock", length: seconds(Math.max(...ends)) };
}
