import type { Checked, Place } from "../models/fault.ts";
import { movementByName, namesOfMovements } from "./names/movement-names.ts";
import type { Movement } from "../models/movement.ts";
import { divisionWords } from "./notation/division-words.ts";
import { type Faults, placedFault } from "./notation/notation-fault.ts";
import { readAttemptBounds } from "./notation/attempts-phrase.ts";
import { readFieldEntry } from "./notation/field-phrase.ts";
import { readPlannedAs } from "./notation/planned-as.ts";
import { readObjective } from "./notation/objective-phrase.ts";
import type { ReadPart } from "./notation/read-part.ts";
import { sourceOf } from "./notation/written-part.ts";
import type { WorkReading } from "./notation/work-reading.ts";
import { readTieBreakPart } from "./notation/tie-break-phrase.ts";
import { readTotal } from "./notation/total-phrase.ts";
import type { TextSource } from "./notation/token.ts";
import type { SourceFile } from "./files/source-file.ts";
import { checkOpened } from "./yaml/read.ts";
import { readCoachWords } from "./athlete-file/coach-words-of-workout.ts";
import { checkEarly, earlyPerformances } from "./notation/early.ts";
import { type ShapedPart, workoutSchema } from "./notation/workout-schema.ts";
import type { Part, Workout } from "../models/workout.ts";
import { splitFrontMatter } from "./yaml/front-matter.ts";
import { type OpenedYaml, openYaml } from "./yaml/open-yaml.ts";
import { inTradeWords, withMissingColon } from "./workout-troubles.ts";
import { workoutOf } from "./workout-of.ts";
import { type Entries, readParts } from "./read-parts.ts";
import { isGroup } from "./yaml/is-group.ts";

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

const textAt = (entries: Entries, name: string): TextSource | undefined => {
  const written = entries[name];
  const isList = Array.isArray(written) && written.every((each) => typeof each === "string");
  const text = isList ? written.join(" + ") : written;
  return typeof text === "string" ? { text, path: [name], isName: false } : undefined;
};

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
