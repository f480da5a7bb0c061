import type { Athlete } from "../../models/athlete.ts";
import type { Data, DataRead, Unmade } from "../../models/data.ts";
import type { Fault } from "../../models/fault.ts";
import type { Workout } from "../../models/workout.ts";
import { idOfFile } from "../files/id-of-file.ts";
import type { SourceFile } from "../files/source-file.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml } from "../yaml/open-yaml.ts";
import { type FileKind, FOLDERS, type SortedFiles } from "./sort-files.ts";

/** All files that were read, what could be read of them, and every fault, those that follow from another among them. */
export type ReadFiles = {
  readonly read: DataRead;
  readonly files: SortedFiles["of"];
  readonly faults: readonly Fault[];
};

/**
 * Leaves out what has faults and what needs something that has: an athlete without their gym, a workout without its
 * movement, competition or field. Nothing can be used where every brief needs what is broken: the settings, and cautions,
 * since one that cannot be read might hold back something on any brief. Without a block of the warm-up or an option of
 * recovery the others stand.
 */
export function leaveOut({ read, files, faults }: ReadFiles): Data | undefined {
  const broken = brokenFiles(faults);
  if (broken.has("content/settings") || [...broken.keys()].some((key) => key.startsWith("content/cautions/")))
    return undefined;
  const faultsOf = (kind: FileKind, id: string): readonly Fault[] => broken.get(keyOf(kind, id)) ?? [];
  const workouts = part("workouts", read.workouts, files, broken, (workout) =>
    needsOfWorkout(workout).flatMap(([kind, id]) => faultsOf(kind, id)),
  );
  const gyms = gymsNeeded(read, files.gyms, broken);
  const athletes = part("athletes", read.athletes, files, broken, gyms);
  return {
    ...read,
    workouts: workouts.made,
    athletes: athletes.made,
    bands: read.bands.filter(({ id }) => !broken.has(keyOf("bands", id))),
    unmade: [...workouts.unmade, ...athletes.unmade, ...briefsStopped(faults, workouts.made, athletes.made)],
  };
}

/** Single briefs that wait for an answer though athlete and workout can be read. */
const briefsStopped = (
  faults: readonly Fault[],
  workouts: readonly Workout[],
  athletes: readonly Athlete[],
): readonly Unmade[] =>
  faults.flatMap((fault) =>
    (fault.stops ?? []).flatMap(({ athlete: id, workout: of }): readonly Unmade[] => {
      const athlete = athletes.find((one) => one.id === id);
      const workout = workouts.find((one) => one.id === of);
      if (!athlete || !workout) return [];
      const name = `${athlete.name}, ${workout.title}`;
      return [{ kind: "brief", id, workout: of, file: athlete.place.file, name, why: [fault] }];
    }),
  );

type Broken = ReadonlyMap<string, readonly Fault[]>;

const keyOf = (kind: FileKind, id: string): string => `${FOLDERS[kind].folder}/${id.toLowerCase()}`;

/** Faults by the file's path without its ending; two files of one name are both in doubt. */
function brokenFiles(faults: readonly Fault[]): Broken {
  const broken = new Map<string, readonly Fault[]>();
  for (const fault of faults) {
    const path = pathInside(fault.place.file);
    if (fault.stops !== undefined) continue;
    if (!/\.(?:mdx|ya?ml|csv)$/i.test(path)) continue;
    const key = path.replace(/\.[^./]*$/, "").toLowerCase();
    broken.set(key, [...(broken.get(key) ?? []), fault]);
  }
  return broken;
}

/** The path from `content` or `athletes` on. */
function pathInside(path: string): string {
  const steps = path.split("/");
  const top = steps.findIndex((step) => step === "content" || step === "athletes");
  return steps.slice(Math.max(0, top)).join("/");
}

function needsOfWorkout({ competition, fields }: Workout): readonly (readonly [FileKind, string])[] {
  const named = [...new Set(fields.flatMap(({ files }) => Object.values(files)))];
  return [
    ...(competition === undefined ? [] : [["competitions", competition] as const]),
    ...named.map((id) => ["fields", id] as const),
  ];
}

/**
 * The faults of the gym an athlete is planned in. Who names none is planned in the only one there is, so that a broken
 * one beside it leaves open where.
 */
function gymsNeeded(
  { settings }: Pick<Data, "settings">,
  files: readonly SourceFile[],
  broken: Broken,
): (athlete: Athlete) => readonly Fault[] {
  const faulty = files.flatMap(({ path }) => broken.get(keyOf("gyms", idOfFile(path))) ?? []);
  const inDoubt = files.length <= 2 ? faulty : [];
  return ({ gym = settings.gym }) => (gym === undefined ? inDoubt : (broken.get(keyOf("gyms", gym)) ?? []));
}

/** Parts what can be made from what cannot. */
function part<K extends Unmade["kind"], T extends { readonly id: string }>(
  kind: `${K}s` & FileKind,
  read: readonly T[],
  files: SortedFiles["of"],
  broken: Broken,
  needs: (one: T) => readonly Fault[],
): { readonly made: readonly T[]; readonly unmade: readonly Unmade[] } {
  const why = (id: string): readonly Fault[] => {
    const own = broken.get(keyOf(kind, id)) ?? [];
    const one = read.find((each) => each.id === id);
    return own.length > 0 || !one ? own : needs(one);
  };
  const made = read.filter(({ id }) => why(id).length === 0);
  const known = files[kind].map((file) => ({ file: file.path, id: idOfFile(file.path), text: file }));
  const unreadable = [...broken.values()].flatMap((faults) => {
    const path = faults[0]?.place.file ?? "";
    const isOfKind = pathInside(path).startsWith(`${FOLDERS[kind].folder}/`);
    const id = idOfFile(path);
    return isOfKind && known.every((one) => one.id.toLowerCase() !== id.toLowerCase())
      ? [{ file: path, id, text: undefined }]
      : [];
  });
  const unmade = [...known, ...unreadable].flatMap(({ file, id, text }): readonly Unmade[] =>
    made.some((one) => one.id === id)
      ? []
      : [
          {
            kind: kind === "athletes" ? "athlete" : "workout",
            id,
            file,
            name: nameIn(text) ?? id,
            why: why(id),
          },
        ],
  );
  return { made, unmade };
}

/** The name or the title a file says, though something else in it be wrong. */
function nameIn(file: SourceFile | undefined): string | undefined {
  if (!file) return undefined;
  const split = file.path.endsWith(".mdx") ? splitFrontMatter(file) : undefined;
  if (split && !split.ok) return undefined;
  const { value } = openYaml(file.path, split ? split.value.yaml : file.text, "text");
  const entries = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
  const name = entries["name"] ?? entries["title"];
  return typeof name === "string" && name.trim() !== "" ? name.trim() : undefined;
}
