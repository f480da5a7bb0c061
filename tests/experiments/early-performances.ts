/**
 * What early performances are worth: workouts that are harder or easier than the model has them by a seeded 15 %, early performances of
 * people of known level or known results with a body and a day of their own, and the error of everybody else's plan.
 * `node tests/experiments/early-performances.ts [seeds]` prints the table of early-performances.md.
 */
import { fileURLToPath } from "node:url";
import { seenPerformances } from "../../src/compute/plan/seen-performances.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Data } from "../../src/models/data.ts";
import type { EarlyPerformance, Workout } from "../../src/models/workout.ts";
import { createRandom, type Random } from "../../src/numerics/random.ts";
import { loadData } from "../../src/site/load-data.ts";
import * as world from "../support/hard-world.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const COUNTS = [0, 1, 3, 10] as const;
const DIFFICULTY = 0.15;
const MOVEMENT = 0.06;
const DAY = 0.05;
const LINE = 0.04;

type Who = "level" | "athlete";
type Case = { readonly who: Who; readonly spoilt: "none" | "other" | "bad day" };
const CASES: readonly Case[] = [
  { who: "level", spoilt: "none" },
  { who: "athlete", spoilt: "none" },
  { who: "level", spoilt: "other" },
  { who: "level", spoilt: "bad day" },
];

function read(folder: string): Data {
  const data = loadData({ root, dataFolder: folder, audience: "everyone" });
  if (!data.ok) throw new Error(`${folder} cannot be read`);
  return data.value;
}

const demo = read(root);
const situations = read(`${root}tests/pinned/situations`);
const workouts = [...demo.workouts, ...situations.workouts].filter(
  ({ parts }) => parts[0]?.clock.kind !== "max-load",
);

/** People the plans are held against: of every level and sex of the bands, known by level only. */
const typical: readonly Athlete[] = demo.bands.map(({ profile }) => profile);

/** Somebody of a level in the division of their sex. */
const divisionOf = ({ divisions }: Workout, { sex }: Athlete): string =>
  (sex === "female" ? divisions.find((name) => /women/.test(name)) : undefined) ?? divisions[0] ?? "";

function performance(
  workout: Workout,
  truth: world.Truth,
  { who, spoilt }: Case,
  first: boolean,
  random: Random,
): EarlyPerformance | undefined {
  const bodies = who === "level" ? typical : demo.athletes;
  const body = bodies[Math.floor(random.uniform() * bodies.length)] as Athlete;
  const plain = world.trulyDone(body, workout, demo);
  if (!plain) return undefined;
  const doubt = who === "level" ? world.BY_LEVEL : world.BY_RESULTS;
  const own = world.person(world.movementsIn(plain), doubt, random);
  const done = world.trulyDone(body, workout, demo, truth, own);
  const bad = first && spoilt === "bad day" ? 0.35 : 0;
  const clocks = done && world.clocksOfLines(done, Math.exp(DAY * random.normal() + bad), LINE, random);
  if (!clocks || clocks.length === 0) return undefined;
  // Written down for somebody two levels off.
  const wrong = { new: "competitor", regular: "elite", competitor: "new", elite: "regular" } as const;
  const level = first && spoilt === "other" ? wrong[body.level] : body.level;
  const noted = who === "level" ? { level, division: divisionOf(workout, body) } : { athlete: body.id };
  return world.noted(clocks, noted, workout.parts[0]?.name ?? "a");
}

type Row = { readonly typical: number[]; readonly people: number[]; readonly signed: number[] };

function run(seeds: number): void {
  for (const one of CASES) {
    const rows = COUNTS.map((): Row => ({ typical: [], people: [], signed: [] }));
    for (let seed = 1; seed <= seeds; seed += 1) {
      for (const workout of workouts) {
        trial(one, workout, createRandom(1000 * seed + workouts.indexOf(workout)), rows);
      }
    }
    print(one, rows);
  }
}

function trial(one: Case, workout: Workout, random: Random, rows: readonly Row[]): void {
  const sample = world.trulyDone(typical[3] as Athlete, workout, demo);
  if (!sample) return;
  const truth: world.Truth = {
    all: DIFFICULTY * (random.uniform() < 0.5 ? -1 : 1),
    movements: new Map(world.movementsIn(sample).map((id) => [id, MOVEMENT * random.normal()])),
  };
  const all = Array.from({ length: 10 }, (_, at) =>
    performance(workout, truth, one, at === 0, random),
  ).flatMap((each) => each ?? []);
  const asked = [1, 2, 4, 5].flatMap((at) => typical[at] ?? []);
  COUNTS.forEach((count, at) => {
    const known = { ...workout, early: all.slice(0, count) };
    const seen = seenPerformances(known, demo, "2026-11-25");
    for (const athlete of asked) {
      const { pacing } = world.plannedSeeing(athlete, known, demo, seen);
      const even = world.off(pacing, world.trulyDone(athlete, workout, demo, truth));
      if (even === undefined) continue;
      rows[at]?.typical.push(Math.abs(even));
      rows[at]?.signed.push(even);
      rows[at]?.people.push(Math.abs(even - world.BY_LEVEL.shared * random.normal()));
    }
  });
}

const middle = (all: readonly number[], share = 0.5): number =>
  [...all].sort((a, b) => a - b)[Math.floor(all.length * share)] ?? Number.NaN;

function print({ who, spoilt }: Case, rows: readonly Row[]): void {
  const per = (value: number): string => (100 * value).toFixed(1);
  for (const [at, count] of COUNTS.entries()) {
    const { typical: even, people } = rows[at] as Row;
    console.log(
      `| ${who} | ${spoilt} | ${count} | ${per(middle(even))} | ${per(middle(even, 0.9))} | ${per(middle(people))} | ${even.length} |`,
    );
  }
}

run(Number(process.argv[2] ?? 3));
