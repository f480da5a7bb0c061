import type { Athlete } from "../models/athlete.ts";
import type { Band } from "../models/band.ts";
import type { Competition } from "../models/competition.ts";
import type { Data, Unmade } from "../models/data.ts";
import type { Field } from "../models/field.ts";
import type { NamedGym } from "../models/gym.ts";
import type { CautionEntry, RecoveryOption, WarmUpBlock } from "../models/library.ts";
import type { Movement } from "../models/movement.ts";
import type { Settings } from "../models/settings.ts";
import type { Workout } from "../models/workout.ts";

/** What people write, by kind; each is a collection. */
type ByKind = {
  readonly workouts: Workout;
  readonly athletes: Athlete;
  readonly movements: Movement;
  readonly warmUps: WarmUpBlock;
  readonly recovery: RecoveryOption;
  readonly cautions: CautionEntry;
  readonly gyms: NamedGym;
  readonly competitions: Competition;
  readonly fields: Field;
  readonly bands: Band;
  readonly settings: Settings;
  readonly unmade: Unmade;
};

export type Kind = keyof ByKind;

export const KINDS: readonly Kind[] = [
  "workouts",
  "athletes",
  "movements",
  "warmUps",
  "recovery",
  "cautions",
  "gyms",
  "competitions",
  "fields",
  "bands",
  "settings",
  "unmade",
];

/** One thing as it lies in the store: checked, with its place in the order of all. */
export type StoredEntry = { readonly id: string; readonly order: number; readonly value: unknown };

/** All checked things of a kind, in order. */
export function entriesOf(kind: Kind, data: Data): readonly StoredEntry[] {
  const { library } = data;
  const all: { readonly [K in Kind]: readonly ByKind[K][] } = {
    workouts: data.workouts,
    athletes: data.athletes,
    movements: [...library.movements.values()],
    warmUps: library.warmUps,
    recovery: library.recovery,
    cautions: library.cautions,
    gyms: [...data.gyms.values()],
    competitions: [...data.competitions.values()],
    fields: [...data.fields.values()],
    bands: data.bands,
    settings: [data.settings],
    unmade: data.unmade,
  };
  return all[kind].map((value, order) => ({ id: idOf(kind, value), order, value }));
}

/** Kinds that speak of people, and are locked in the store. Workouts hold the coach's words to athletes, and who did them early. */
export const PERSONAL: readonly Kind[] = ["workouts", "athletes", "unmade"];

function idOf(kind: Kind, value: ByKind[Kind]): string {
  // An athlete and a workout may have files of one name, and of an athlete several briefs may wait.
  if ("why" in value)
    return [value.kind, value.id, value.workout].filter((part) => part !== undefined).join("/");
  return "id" in value ? value.id : kind;
}

/** Puts together again what {@link entriesOf} took apart. Notices were told before and are not kept. */
export function dataOf(entries: (kind: Kind) => readonly StoredEntry[]): Data {
  const all = <K extends Kind>(kind: K): readonly ByKind[K][] =>
    entries(kind)
      .toSorted((one, other) => one.order - other.order)
      .map(({ value }) => value as ByKind[K]);
  const byId = <T extends { readonly id: string }>(values: readonly T[]): ReadonlyMap<string, T> =>
    new Map(values.map((value) => [value.id, value]));
  const [settings] = all("settings");
  if (!settings)
    throw new Error("There is nothing to show yet: the content has faults that must be mended first.");
  return {
    settings,
    workouts: all("workouts"),
    athletes: all("athletes"),
    gyms: byId(all("gyms")),
    competitions: byId(all("competitions")),
    fields: byId(all("fields")),
    bands: all("bands"),
    library: {
      movements: byId(all("movements")),
      warmUps: all("warmUps"),
      recovery: all("recovery"),
      cautions: all("cautions"),
    },
    unmade: all("unmade"),
    notices: [],
  };
}
