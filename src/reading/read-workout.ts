import type { Checked, Fault, Place } from "../models/fault.ts";
import { movementByName, namesOfMovements } from "./names/movement-names.ts";
import type { Movement } from "../models/movement.ts";
import { divisionWords } from "./notation/division-words.ts";
import { placedFault, tellText, type Faults } from "./notation/notation-fault.ts";
import { PART_KINDS } from "./notation/part-phrases.ts";
import { readAttemptBounds } from "./notation/attempts-phrase.ts";
import { readFieldEntry } from "./notation/field-phrase.ts";
import { readPlannedAs } from "./notation/planned-as.ts";
import { readObjective } from "./notation/objective-phrase.ts";
import { readPart, type ReadPart } from "./notation/read-part.ts";
import { sourceOf, type WrittenPart } from "./notation/written-part.ts";
import type { WorkReading } from "./notation/work-reading.ts";
import { readTieBreakPart } from "./notation/tie-break-phrase.ts";
import { readTotal } from "./notation/total-phrase.ts";
import { tradeWordRemedy } from "./notation/trade-words.ts";
import type { TextSource } from "./notation/token.ts";
import { seconds } from "../models/quantity.ts";
import type { SourceFile } from "./files/source-file.ts";
import { checkOpened } from "./yaml/read.ts";
import { readCoachWords } from "./athlete-file/coach-words-of-workout.ts";
import type { CoachWordFor } from "../models/coach-word.ts";
import { checkEarly, earlyPerformances } from "./notation/early.ts";
import { workoutSchema, type ShapedPart, type ShapedWorkout } from "./notation/workout-schema.ts";
import type { EarlyPerformance, NamedField, Part, PartStart, Workout } from "../models/workout.ts";
import { splitFrontMatter } from "./yaml/front-matter.ts";
import { openYaml, type OpenedYaml, type Path } from "./yaml/open-yaml.ts";

type Entries = Readonly<Record<string, unknown>>;

/**
 * Reads a workout: the front matter of a file of content/workouts, in the notation of the manual. The id is the
 * file's name without its ending. All faults are told at once: those of the entries and those of the notation inside
 * them. Never throws.
 */
export function readWorkout(file: SourceFile, movements: ReadonlyMap<string, Movement>): Checked<Workout> {
  const split = splitFrontMatter(file);
  if (!split.ok) return split;
  const opened = openYaml(file.path, split.value.yaml, "text");
  if (opened.faults.length > 0) {
    return { ok: false, faults: opened.faults.map((fault) => withMissingColon(fault, split.value.yaml)) };
  }
  const shaped = checkOpened(opened, workoutSchema);
  const entries = isGroup(opened.value) ? opened.value : {};
  const faults: Faults = [];
  const divisions = shaped.ok ? shaped.value.divisions : divisionsOf(entries);
  const reading = readingFor(divisions, entries, movements, opened, faults);
  const parts = readParts(entries, reading);
  const names = parts.map((part) => part.written.name);
  const total = readTotal(
    textAt(entries, "total"),
    parts.flatMap(({ read }) => (read ? [read] : [])),
    names,
    faults,
  );
  const objective = readObjective(textAt(entries, "objective"), faults);
  const fields = readFieldEntry(entries["field"], divisions, names, faults);
  const more = parts.map(({ written, read }): MoreOfPart => ({
    tieBreakPart: readTieBreakPart(written, faults),
    attempts: readAttemptBounds(sourceOf(written, "attempts"), divisions, isLifted(read), faults),
  }));
  const words = readCoachWords(opened, movements);
  if (shaped.ok) checkEarly(shaped.value.early, divisions, names, faults);
  const plannedAs = shaped.ok ? readPlannedAs(shaped.value["planned as"], divisions, faults) : [];
  const placed = faults.map((fault) => placedFault(fault, opened));
  const said = words.ok ? words.notices : words.faults;
  const all = [...(shaped.ok ? shaped.notices : shaped.faults.map(inTradeWords)), ...said, ...placed];
  const refused = !shaped.ok || !words.ok || all.some((fault) => fault.severity !== "notice");
  if (refused) return { ok: false, faults: all };
  const place = placeOfFile(file);
  const read = parts.flatMap((part, index) => {
    if (part.read === undefined) return [];
    const shape: Omit<ShapedPart, "name"> = shaped.value.parts?.[index] ?? shaped.value;
    const said = more[index] ?? NOTHING_MORE;
    return [mergedPart(part.read, shape, said, opened.placeAt(part.written.path))];
  });
  const early = earlyPerformances(shaped.value.early, divisions, names, opened);
  const value = workoutOf(file, shaped.value, {
    ...{ parts: read, total, fields, early, objective, place },
    words: words.value,
  });
  return {
    ok: true,
    value: plannedAs.length === 0 ? value : { ...value, plannedAs },
    notices: all,
  };
}

const isGroup = (value: unknown): value is Entries =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const placeOfFile = (file: SourceFile): Place => ({ file: file.path, line: 1, column: 1 });

/** Divisions as far as they can be told from a file that has other faults. */
function divisionsOf(entries: Entries): readonly string[] {
  const written = entries["divisions"];
  if (Array.isArray(written) && written.every((name) => typeof name === "string")) return written;
  return typeof written === "string" ? written.split(/\s*,\s*/) : ["men", "women"];
}

function readingFor(
  divisions: readonly string[],
  entries: Entries,
  movements: ReadonlyMap<string, Movement>,
  opened: OpenedYaml,
  faults: Faults,
): WorkReading {
  const byName = movementByName(movements);
  const words = divisionWords(entries["by division"], divisions, byName, faults);
  return {
    divisions,
    movements,
    byName,
    movementNames: namesOfMovements(movements),
    wordNames: [...new Set(words.flat().map(({ word }) => word))],
    faults,
    words,
    placeAt: (source) => (source.isName ? opened.placeOfName(source.path) : opened.placeAt(source.path)),
  };
}

/** Nobody scores more in one workout, and each takes a page of the brief. */
const MOST_PARTS = 12;

type PartInFile = { readonly written: WrittenPart; readonly read: ReadPart | undefined };

/** The parts in order; without `parts:` the entries at the top are the one part. */
function readParts(entries: Entries, reading: WorkReading): readonly PartInFile[] {
  const { faults } = reading;
  const listed = entries["parts"];
  const raw: readonly (readonly [Entries, Path])[] = Array.isArray(listed)
    ? listed.flatMap((part: unknown, index) => (isGroup(part) ? [[part, ["parts", index]] as const] : []))
    : [[entries, []]];
  if (Array.isArray(listed) && "work" in entries) {
    tellText(
      faults,
      { text: "work", path: ["work"], isName: true },
      {
        problem: "with `parts:` the work stands inside the parts",
        remedy: "Move it into the part it belongs to, or leave `parts:` out for a workout of one part.",
      },
    );
  }
  if (raw.length > MOST_PARTS) {
    tellText(
      faults,
      { text: "parts", path: ["parts"], isName: true },
      {
        problem: `a workout has at most ${MOST_PARTS} parts`,
        allowed: `from 1 to ${MOST_PARTS}`,
        remedy: "Write the others as a workout of their own.",
      },
    );
    return [];
  }
  const parts: PartInFile[] = [];
  const earlier: WrittenPart["earlier"][number][] = [];
  for (const [index, [part, path]] of raw.entries()) {
    // A rest written as a part of its own: its name is told as unknown.
    if (path.length > 0 && "rest" in part && !("work" in part)) continue;
    const named = part["name"];
    const name =
      path.length > 0 && typeof named === "string"
        ? named.trim()
        : String.fromCharCode("a".charCodeAt(0) + index);
    if (earlier.some((other) => other.name.toLowerCase() === name.toLowerCase())) {
      tellText(
        faults,
        { text: name, path: [...path, "name"], isName: false },
        {
          problem: "another part already has this name",
          remedy: "Give every part a name of its own; left out, they are called a, b, c.",
        },
      );
    }
    const written: WrittenPart = { entries: part, path, name, earlier: [...earlier] };
    const read = readPart(written, reading);
    parts.push({ written, read });
    earlier.push({ name, start: read?.start ?? unknownStart(name) });
  }
  return parts;
}

/** A part whose start could not be read still has a name for later parts to refer to. */
const unknownStart = (part: string): PartStart => ({
  kind: "after",
  part,
  rest: seconds(0),
  restIs: "exactly",
});

const textAt = (entries: Entries, name: string): TextSource | undefined => {
  const written = entries[name];
  const isList = Array.isArray(written) && written.every((each) => typeof each === "string");
  const text = isList ? written.join(" + ") : written;
  return typeof text === "string" ? { text, path: [name], isName: false } : undefined;
};

/** An unknown entry named by a trade's word is told how the notation says it. */
function inTradeWords(fault: Fault): Fault {
  const trouble = /^no entry\b/.test(fault.problem) ? tradeWordRemedy(fault.found) : undefined;
  if (trouble === undefined) return fault;
  const { place, found, severity } = fault;
  return { place, found, problem: trouble.problem, remedy: trouble.remedy, severity };
}

/** A kind of part without its colon breaks the file in a way that its own message hides. */
function withMissingColon(fault: Fault, yaml: string): Fault {
  const line = yaml.split("\n")[fault.place.line - 1] ?? "";
  const [, before = "", name] =
    new RegExp(`^(\\s*(?:-\\s+)?)(${PART_KINDS.join("|")}|work)\\b[^:]*$`).exec(line) ?? [];
  if (name === undefined) return fault;
  return {
    place: { ...fault.place, column: before.length + 1 },
    found: line.trim(),
    problem: "the colon behind the name of an entry is missing",
    allowed: `\`${name}:\`, with a space before what follows`,
    remedy: `Write \`${name}:\`.`,
    severity: "fault",
  };
}

/** Parts scored by loads, and those that could not be read. */
const isLifted = (part: ReadPart | undefined): boolean =>
  part === undefined || part.clock.kind === "max-load" || /load/.test(part.score.kind);

/** What is read of a part beside its clock and work. */
type MoreOfPart = {
  readonly tieBreakPart: string | undefined;
  readonly attempts: Part["attempts"] | undefined;
};
const NOTHING_MORE: MoreOfPart = { tieBreakPart: undefined, attempts: undefined };

function mergedPart(
  read: ReadPart,
  shape: Omit<ShapedPart, "name">,
  { tieBreakPart, attempts }: MoreOfPart,
  place: Place,
): Part {
  const note = shape["tie-break"];
  return {
    ...read,
    place,
    ...(note === undefined ? {} : { tieBreakNote: note }),
    ...(tieBreakPart === undefined ? {} : { tieBreakPart }),
    ...(attempts === undefined ? {} : { attempts }),
    ...(shape.loading === undefined ? {} : { loading: shape.loading }),
    openingBar: shape["opening bar"] ?? "loaded",
    lateLift: shape["late lift"] ?? "does-not-count",
  };
}

type Settled = {
  readonly parts: readonly Part[];
  readonly total: readonly string[] | undefined;
  readonly fields: readonly NamedField[];
  readonly early: readonly EarlyPerformance[];
  readonly words: readonly CoachWordFor[];
  readonly objective: Pick<Workout, "objective" | "objectiveLoad">;
  readonly place: Place;
};

function workoutOf(file: SourceFile, shape: ShapedWorkout, settled: Settled): Workout {
  const between = shape["between stations"];
  const { parts, total, fields, early, words, objective, place } = settled;
  return {
    id: file.path.replace(/^.*[/\\]/, "").replace(/\.\w+$/, ""),
    title: shape.title,
    place,
    ...(shape.summary === undefined ? {} : { summary: shape.summary }),
    divisions: shape.divisions,
    parts,
    ...(total === undefined ? {} : { total }),
    ...(shape.competition === undefined ? {} : { competition: shape.competition }),
    standards: shape.standards,
    equipment: shape.equipment,
    ...(between === undefined ? {} : { floor: { between } }),
    fields,
    early,
    ...(words.length === 0 ? {} : { words }),
    ...objective,
  };
}
