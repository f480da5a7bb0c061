import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import type { PartInput } from "../../src/compute/pacing/paced-part.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Level } from "../../src/models/vocabulary.ts";
import { problemOf } from "../experiments/fields/field-problem.ts";
import { demoData } from "./demo-data.ts";
import { soundWorkout } from "./workout-notation.ts";

/** Work for an athlete, and the sets and rests a coach would print for one movement of it. */
export type CoachSituation = {
  readonly who: `${Level} ${"man" | "woman"}`;
  readonly best?: Readonly<Record<string, number>>;
  readonly lifts?: Readonly<Record<string, number>>;
  readonly work: string;
  readonly movement: string;
  readonly visit?: number;
  readonly breaks?: number;
  readonly sets?: string;
  readonly rest: number;
  readonly why?: string;
};

/** The two lists of situations, each written down before the plans of it were looked at. */
export const coachSituations = (): Readonly<Record<"first" | "second", readonly CoachSituation[]>> =>
  parse(readFileSync(new URL("../cases/sets-of-a-coach.yaml", import.meta.url), "utf8")) as Readonly<
    Record<"first" | "second", readonly CoachSituation[]>
  >;

const data = demoData();

function athleteOf({ who, best = {}, lifts = {} }: CoachSituation): Athlete {
  const [level, sex] = who.split(" ") as [Level, "man" | "woman"];
  const band = data.bands.find(
    ({ profile }) => profile.level === level && profile.sex === (sex === "man" ? "male" : "female"),
  );
  if (band === undefined) throw new Error(`no band of ${who}`);
  return {
    ...band.profile,
    unbroken: Object.entries(best).map(([movement, reps]) => ({ movement, reps })),
    lifts: Object.entries(lifts).map(([movement, value]) => ({
      movement,
      load: { value, unit: "kg" },
      reps: 1,
      inReserve: 0,
      date: "2026-10-20",
      approximate: false,
    })),
  };
}

/** What the pacing of a situation is computed from. */
export const situationProblem = (situation: CoachSituation): PartInput =>
  problemOf(athleteOf(situation), soundWorkout(situation.work), data);

/** Sets as printed for a situation: `breaks` how often the movement is put down, `rest` the longest rest, breath or stand before it, seconds. */
type PrintedSets = { readonly said: string; readonly breaks: number; readonly rest: number };

export function printedSets(situation: CoachSituation): PrintedSets {
  const paced = pacePart(situationProblem(situation));
  if (paced.kind !== "paced") throw new Error(JSON.stringify(paced.missing));
  const { rows } = paced.pacing;
  const visits = rows.filter(({ movement }) => movement === situation.movement);
  const row = visits[(situation.visit ?? 1) - 1];
  if (row === undefined) throw new Error(`no ${situation.movement}`);
  const before = rows[row.index - 1];
  const stand = before?.why === "stand" ? before.end - before.start : 0;
  const rests = row.sets.slice(0, -1).map(({ restAfter }) => restAfter);
  return {
    said: `${row.sets.map(({ amount }) => amount).join("-")} / ${rests.join(" ")} / ${stand || (row.breath ?? 0)}`,
    breaks: row.sets.length - 1,
    rest: Math.max(stand, row.breath ?? 0, ...rests),
  };
}

/** How often a coach would put it down. */
export const wantedBreaks = ({ breaks, sets }: CoachSituation): number =>
  breaks ?? (sets ?? "").split("-").length - 1;

/** Within one break; of many singles within a tenth of them. */
export const isNear = (breaks: number, wanted: number): boolean =>
  Math.abs(breaks - wanted) <= Math.max(1, wanted / 10);
