import { seconds } from "../../models/quantity.ts";
import type { Load, MinimumWork, Part, PartClock, PartStart, Score } from "../../models/workout.ts";
import { nearestName } from "../../models/nearest.ts";
import { checkScore } from "./check-score.ts";
import { defaultScore } from "./default-score.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import {
  PART_KINDS,
  readMinimumWork,
  readPartClock,
  readPartStart,
  type PartKind,
  type WrittenClock,
} from "./part-phrases.ts";
import { worksOf } from "./part-work.ts";
import { everybodysLines, ownLines } from "./own-lines.ts";
import { prescriptionOf } from "./prescription.ts";
import { readScore } from "./score-phrase.ts";
import { tradeWordRemedy } from "./trade-words.ts";
import { readWearing } from "./wearing.ts";
import type { WorkReading } from "./work-reading.ts";
import { sourceOf, wholePart, type WrittenPart } from "./written-part.ts";

/** What the notation says of a part; the plain entries beside it are the schema's. */
export type ReadPart = Pick<
  Part,
  "name" | "start" | "clock" | "heading" | "work" | "prescription" | "ownPrescription" | "score"
> & {
  readonly minimumWork?: MinimumWork;
  readonly wearing?: { readonly what: string; readonly load: Readonly<Record<string, Load>> };
};

/** Reads a part for every division. What cannot be read is told, and the part is undefined then. */
export function readPart(part: WrittenPart, reading: WorkReading): ReadPart | undefined {
  const { divisions, faults } = reading;
  const before = faults.length;
  const start = startOf(part, faults);
  const kind = kindOf(part, faults);
  const clock = kind && readPartClock(kind, sourceOf(part, kind), faults);
  const starts = start?.kind === "clock" ? start.at : undefined;
  // Where the kind is not known, its lines are read all the same, so that their faults are told with it.
  const works = worksOf(part, kind ?? likeliestKind(part), clock, starts, reading);
  const [first] = works;
  const written = part.entries["score"];
  const score = typeof written === "string" ? readScore(sourceOf(part, "score"), faults) : undefined;
  const minimum = part.entries["minimum work"];
  const minimumWork =
    typeof minimum === "string" ? readMinimumWork(sourceOf(part, "minimum work"), faults) : undefined;
  const wearing = readWearing(part.entries["wearing"], [...part.path, "wearing"], reading);
  const refused = faults.slice(before).some((fault) => fault.severity !== "notice");
  if (refused || start === undefined || clock === undefined || kind === undefined || first === undefined)
    return undefined;
  const settled = settleClock(clock, works);
  const scored: Score = score ?? defaultScore(settled.kind, first.steps);
  checkScore(
    { score: scored, clock: settled, steps: first.steps },
    typeof written === "string" ? sourceOf(part, "score") : sourceOf(part, kind),
    reading,
  );
  const lines = prescriptionOf(part.entries["work"]);
  const readers = divisions.map((_, index) => ({
    index,
    divisions: divisions.length,
    words: reading.words[index] ?? [],
    byName: reading.byName,
  }));
  return {
    name: part.name,
    start,
    clock: settled,
    heading: [kind, sourceOf(part, kind).text.trim()].filter((words) => words !== "").join(", "),
    work: Object.fromEntries(works.map((work, index) => [divisions[index] ?? "", work.steps])),
    prescription: everybodysLines(lines, readers),
    ownPrescription: Object.fromEntries(
      readers.map((reader) => [divisions[reader.index] ?? "", ownLines(lines, reader)]),
    ),
    score: scored,
    ...(minimumWork === undefined ? {} : { minimumWork }),
    ...(wearing === undefined ? {} : { wearing }),
  };
}

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

/** What a misspelled kind most likely is. */
function likeliestKind(part: WrittenPart): PartKind {
  const meant = Object.keys(part.entries).map((name) => nearestName(name, PART_KINDS));
  return PART_KINDS.find((kind) => meant.includes(kind)) ?? "for time";
}

function settleClock(clock: WrittenClock, works: ReturnType<typeof worksOf>): PartClock {
  if (!("asWritten" in clock)) return clock;
  const length = seconds(Math.max(...works.map((work) => work.checked.lastWork ?? 0)));
  return clock.kind === "on-the-clock"
    ? { kind: "on-the-clock", length }
    : { kind: "max-load", length: { kind: "for", time: length }, order: "as-written" };
}
