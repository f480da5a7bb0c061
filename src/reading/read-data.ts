import type { AthleteContext, KnownCompetition, KnownScore, KnownWorkout } from "./athlete-file/context.ts";
import type { Competition } from "../models/competition.ts";
import { type AthleteOfFile, checkAthletes } from "./data-folder/check-athletes.ts";
import { checkCoachWords, checkOwnCoachWords } from "./data-folder/check-coach-words.ts";
import { checkEarlyAthletes } from "./data-folder/check-early-athletes.ts";
import { checkFields, checkNames } from "./data-folder/check-workout.ts";
import { type Collector, makeCollector } from "./data-folder/collect.ts";
import type { ReadFiles } from "./data-folder/leave-out.ts";
import { type SortedFiles, sortFiles } from "./data-folder/sort-files.ts";
import type { Data, DataRead } from "../models/data.ts";
import type { Checked, Fault } from "../models/fault.ts";
import type { SettableConstants } from "../models/model-constant.ts";
import type { Field } from "../models/field.ts";
import { idOfFile } from "./files/id-of-file.ts";
import { makeAnew, type Remember } from "./files/remember.ts";
import { choicesOf } from "./names/choices-of.ts";
import { liftFinder, movementFinder } from "./names/find-movement.ts";
import type { Movement } from "../models/movement.ts";
import { comparable } from "../models/nearest.ts";
import type { athleteReader } from "./read-athlete.ts";
import { readField } from "./read-field.ts";
import { readWorkout } from "./read-workout.ts";
import type { SourceFile } from "./files/source-file.ts";
import { readYaml } from "./yaml/read.ts";
import { inReadingOrder } from "./say-fault.ts";
import { competitionSchema } from "./schemas/competition-schema.ts";
import { gymSchema } from "./schemas/gym-schema.ts";
import { settingsSchema, USUAL_SETTINGS } from "./schemas/settings-schema.ts";
import type { Workout } from "../models/workout.ts";
import { rememberedBands, rememberedLibrary, rememberingReader } from "./remembered-files.ts";

/**
 * Reads everything people wrote, and takes it only where nothing at all is wrong. All faults of all files are told at once,
 * in the order of files and lines. Never throws.
 */
export function readData(
  builtIn: readonly SourceFile[],
  own: readonly SourceFile[],
  settable: SettableConstants = new Map(),
): Checked<Data> {
  const { read, faults } = readFiles(builtIn, own, settable);
  const { notices } = read;
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { ...read, unmade: [] }, notices };
}

/** What {@link readFiles} gives: what could be read, the faults people are told, and those that only follow from others. */
export type FilesRead = ReadFiles & {
  readonly consequences: readonly Fault[];
  /** The coach's own text of messages, as it stands. */
  readonly message?: SourceFile;
  /** What athlete files, and tables of athletes, may refer to. */
  readonly context: AthleteContext;
};

/**
 * Reads everything people wrote: the built-in library and the own data folder, whose files replace built-in ones of the
 * same name. References are checked: movements by any of their names, gyms, workouts, competitions, fields, options. What
 * can be read is there though other files have faults. `settable` are the numbers of the model that settings may name;
 * `remember` gives what was read of the same files before. Never throws.
 */
export function readFiles(
  builtIn: readonly SourceFile[],
  own: readonly SourceFile[],
  settable: SettableConstants = new Map(),
  remember: Remember = makeAnew,
): FilesRead {
  const files = sortFiles(builtIn, own);
  const collector = makeCollector();
  collector.faults.push(...files.faults);
  const { library, broken } = rememberedLibrary(files.of, collector, remember);
  const gymIds = files.of.gyms.map(({ path }) => idOfFile(path));
  const settings = readSettings(files, settingsSchema(gymIds, settable), collector) ?? USUAL_SETTINGS;
  const findMovement = movementFinder(library.movements);
  const gyms = readEach(files.of.gyms, (file) => readYaml(file, gymSchema, { scalars: "text" }), collector);
  const competitions = readEach(
    files.of.competitions,
    (file) => readYaml(file, competitionSchema(findMovement, settings.dates), { scalars: "text" }),
    collector,
  );
  const fields = readFields(files.of.fields, collector);
  const workouts = readWorkouts(files.of, library.movements, fields, collector);
  const context: AthleteContext = {
    findMovement,
    findLift: liftFinder(library.movements),
    choices: choicesOf(library.movements),
    gyms: gymIds,
    workouts: knownWorkouts(files.of.workouts, workouts, competitions),
    ...(settings.dates === undefined ? {} : { dates: settings.dates }),
    ...(settings.zone === undefined ? {} : { zone: settings.zone }),
  };
  const readAthlete = rememberingReader(files, context, remember);
  const athletes = readAthletes(files.of.athletes, workouts, library.movements, readAthlete, collector);
  const athleteIds = files.of.athletes.map(({ path }) => idOfFile(path).toLowerCase());
  const known = athleteIds.length > 0 ? athleteIds : undefined;
  for (const workout of workouts) {
    const file = files.of.workouts.find(({ path }) => path === workout.place.file);
    if (!file) continue;
    collector.faults.push(
      ...checkCoachWords(workout, file, known, library.movements),
      ...checkEarlyAthletes(workout, file, known),
    );
  }
  const bands = rememberedBands(files, context, collector, remember);
  const faults = withoutConsequences(collector.faults, broken);
  const read: DataRead = {
    settings,
    workouts,
    athletes,
    gyms,
    competitions,
    fields,
    bands: bands.toSorted((one, other) => one.order - other.order),
    library,
    notices: inReadingOrder(collector.notices),
  };
  const consequences = collector.faults.filter((fault) => !faults.includes(fault));
  const message = files.message === undefined ? {} : { message: files.message };
  return { read, files: files.of, ...message, faults: inReadingOrder(faults), consequences, context };
}

function readSettings(files: SortedFiles, schema: ReturnType<typeof settingsSchema>, collector: Collector) {
  if (!files.settings) return undefined;
  // An empty settings file is the same as none.
  if (files.settings.text.replace(/^\s*(?:#.*)?$/gm, "").trim() === "") return undefined;
  return collector.take(readYaml(files.settings, schema, { scalars: "text" }));
}

/** Values by id, the name of the file. */
function readEach<T extends object>(
  files: readonly SourceFile[],
  read: (file: SourceFile) => Checked<T>,
  collector: Collector,
): ReadonlyMap<string, T & { readonly id: string }> {
  return new Map(
    files.flatMap((file) => {
      const value = collector.take(read(file));
      const id = idOfFile(file.path);
      return value === undefined ? [] : [[id, { ...value, id }] as const];
    }),
  );
}

const readFields = (files: readonly SourceFile[], collector: Collector): ReadonlyMap<string, Field> =>
  new Map(
    files.flatMap((file) =>
      (collector.take(readField(file)) ?? []).map((field) => [field.id, field] as const),
    ),
  );

function readWorkouts(
  files: SortedFiles["of"],
  movements: ReadonlyMap<string, Movement>,
  fields: ReadonlyMap<string, Field>,
  collector: Collector,
): readonly Workout[] {
  const names = {
    competitions: files.competitions.map(({ path }) => idOfFile(path)),
    fields: files.fields.map(({ path }) => idOfFile(path)),
  };
  return files.workouts.flatMap((file) => {
    const workout = collector.take(readWorkout(file, movements));
    collector.faults.push(...checkNames(file, names));
    if (!workout) return [];
    collector.faults.push(...checkFields(workout, file, fields, movements));
    return [workout];
  });
}

function readAthletes(
  files: readonly SourceFile[],
  workouts: readonly Workout[],
  movements: ReadonlyMap<string, Movement>,
  read: ReturnType<typeof athleteReader>,
  collector: Collector,
) {
  const athletes = files.flatMap((file): readonly AthleteOfFile[] => {
    const athlete = collector.take(read(file));
    return athlete ? [{ athlete, file }] : [];
  });
  collector.faults.push(...checkOwnCoachWords(athletes, workouts, movements));
  for (const fault of checkAthletes(athletes, workouts, movements)) {
    (fault.severity === "notice" ? collector.notices : collector.faults).push(fault);
  }
  return athletes.map(({ athlete }) => athlete);
}

/** Workouts by id as athletes speak of them; one with faults in its file is known by its name alone. */
function knownWorkouts(
  files: readonly SourceFile[],
  workouts: readonly Workout[],
  competitions: ReadonlyMap<string, Competition>,
): ReadonlyMap<string, KnownWorkout> {
  return new Map(
    files.map((file) => {
      const id = idOfFile(file.path);
      const workout = workouts.find((each) => each.id === id);
      if (!workout) return [id, { id, title: id, ofCompetition: true }];
      const competition: KnownCompetition | undefined =
        workout.competition === undefined ? undefined : competitions.get(workout.competition);
      const known: KnownWorkout = {
        id,
        title: workout.title,
        parts: workout.parts.map((part) => part.name),
        scores: workout.parts.map(knownScore),
        ofCompetition: workout.competition !== undefined,
        ...(competition === undefined ? {} : { competition }),
      };
      return [id, known];
    }),
  );
}

/** A cap that runs from the part's own start; one that is a clock of the whole workout says nothing of the part's time. */
function knownScore({ score, clock }: Workout["parts"][number]): KnownScore {
  const cap = clock.kind === "for-time" && clock.secondsPerMissingRep === undefined ? clock.cap : undefined;
  return { kind: score.kind, ...(cap?.kind === "for" ? { cap: cap.time } : {}) };
}

/** A movement whose own file has faults is not told as missing wherever it is named. */
function withoutConsequences(faults: readonly Fault[], broken: readonly string[]): readonly Fault[] {
  const names = new Set(broken.flatMap((id) => [comparable(id), `${comparable(id)}s`]));
  return names.size === 0
    ? faults
    : faults.filter(
        ({ found, place }) => !names.has(comparable(found)) || place.file.includes("content/movements/"),
      );
}
