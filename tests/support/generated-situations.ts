import { createRandom } from "../../src/numerics/random.ts";
import type { Movement } from "../../src/models/movement.ts";
import { inKilograms, inMetres } from "../../src/models/quantity.ts";
import { CONDITIONS, HABITS, JOINTS, LEVELS, SEXES, STRESSES } from "../../src/models/vocabulary.ts";
import type { AdviceSituation } from "./advice-situations.ts";
import { contentMovements } from "./content-movements.ts";

/** A draw of one of several, and of a whole number between two. */
type Draw = {
  readonly one: <T>(of: readonly T[]) => T;
  readonly whole: (from: number, to: number) => number;
  readonly chance: (share: number) => boolean;
};

function drawFrom(seed: number): Draw {
  const { uniform } = createRandom(seed);
  return {
    one: (of) => of[Math.floor(uniform() * of.length)] as (typeof of)[number],
    whole: (from, to) => from + Math.floor(uniform() * (to - from + 1)),
    chance: (share) => uniform() < share,
  };
}

/** Movements of a workout for load have a best lift; those of paced work are all the others but holds. */
const all = [...contentMovements.values()];
const LIFTED = [
  "clean and jerk",
  "snatch",
  "back squat",
  "front squat",
  "deadlift",
  "bench press",
  "jerk",
  "hang clean",
];
const PACED = all.filter((movement) => movement.counts[0] !== "seconds");

const rounded = (kilograms: number): number => Math.max(2, Math.round(kilograms / 2) * 2);

/** One line of work: an amount that suits the pace of the movement, a load about its reference, its height. */
function lineOf(movement: Movement, seconds: number, draw: Draw, withAmount: boolean): string {
  const { counts, pace, loading, height } = movement;
  const amount = Math.max(1, Math.round(seconds / pace.steady.competitor));
  const figure = counts[0] === "metres" && amount > 100 ? Math.round(amount / 50) * 50 : amount;
  const unit = counts[0] === "metres" ? " m" : counts[0] === "calories" ? " cal" : "";
  const factor = draw.one([0.7, 1, 1, 1.25]);
  const pieces = loading?.held === "pair" ? "2 x " : "";
  const load =
    loading === undefined
      ? ""
      : ` at ${pieces}${rounded(inKilograms(loading.reference.male) * factor)}/${rounded(inKilograms(loading.reference.female) * factor)} kg`;
  const to =
    height === undefined
      ? ""
      : ` to ${Math.round(inMetres(height.male) * 100)}/${Math.round(inMetres(height.female) * 100)} cm`;
  return `${withAmount || unit !== "" ? `${figure}${unit} ` : ""}${movement.name}${load}${to}`;
}

function someMovements(count: number, draw: Draw): readonly Movement[] {
  const chosen: Movement[] = [];
  while (chosen.length < count) {
    const next = draw.one(PACED);
    if (!chosen.includes(next)) chosen.push(next);
  }
  return chosen;
}

const list = (lines: readonly string[], indent: string): string =>
  lines.map((line) => `${indent}- ${line}`).join("\n");

type Format = (draw: Draw) => string;

const rounds: Format = (draw) => {
  const count = draw.whole(2, 6);
  const lines = someMovements(draw.whole(2, 3), draw).map((each) =>
    lineOf(each, draw.whole(15, 60), draw, true),
  );
  return `for time: cap ${draw.whole(8, 25)}:00\nwork:\n  - ${count} rounds:\n${list(lines, "      ")}`;
};
const ladder: Format = (draw) => {
  const figures = draw.one(["21-15-9", "26-20-14-8", "10-9-8-7-6-5-4-3-2-1", "30-20-10", "8-12-16"]);
  const counted = PACED.filter((each) => each.counts[0] === "reps");
  const lines = [draw.one(counted), draw.one(counted)].map((each) => lineOf(each, 40, draw, false));
  return `for time: cap ${draw.whole(7, 20)}:00\nwork:\n  - ${figures}${draw.chance(0.4) ? ", tie-break" : ""}:\n${list([...new Set(lines)], "      ")}`;
};
const chipper: Format = (draw) => {
  const lines = someMovements(draw.whole(3, 6), draw).map((each) =>
    lineOf(each, draw.whole(40, 200), draw, true),
  );
  const tie = draw.chance(0.4) ? draw.whole(0, lines.length - 2) : -1;
  const told = lines.map((line, at) => (at === tie ? `${line}, tie-break` : line));
  return `for time: cap ${draw.whole(10, 30)}:00\nwork:\n${list(told, "  ")}`;
};
const amrap: Format = (draw) => {
  const lines = someMovements(draw.whole(1, 4), draw).map((each) =>
    lineOf(each, draw.whole(10, 50), draw, true),
  );
  return `amrap: ${draw.whole(5, 20)}:00\nwork:\n${list(lines, "  ")}`;
};
const intervals: Format = (draw) => {
  const lines = someMovements(draw.whole(1, 3), draw).map((each) =>
    lineOf(each, draw.whole(20, 45), draw, true),
  );
  return `on the clock: as written\nwork:\n  - every ${draw.whole(2, 4)}:00, ${draw.whole(3, 6)} rounds:\n${list(lines, "      ")}\nscore: ${draw.one(["slowest interval", "reps"])}`;
};
const single: Format = (draw) => {
  const [only] = someMovements(1, draw);
  return `for time:\nwork:\n  - ${only ? lineOf(only, draw.whole(60, 900), draw, true) : ""}`;
};
const lift: Format = (draw) => `max load: ${draw.whole(6, 15)}:00\nwork: [1 ${draw.one(LIFTED)}]`;
const twoParts: Format = (draw) => {
  const lines = someMovements(2, draw).map((each) => lineOf(each, draw.whole(20, 50), draw, true));
  return `parts:\n  - name: a\n    for time: cap 9:00\n    work:\n      - ${draw.whole(2, 4)} rounds:\n${list(lines, "          ")}\n  - name: b\n    starts: ${draw.one(["1:30 after a", "at 12:00", "3:00 after a"])}\n    max load: until 20:00\n    work: [1 ${draw.one(LIFTED)}]`;
};
const FORMATS: readonly Format[] = [rounds, ladder, chipper, amrap, intervals, single, lift, twoParts];

const bodyMass = { female: [50, 78], male: [62, 105] } as const;
const LIFT_SHARE = { new: 0.6, regular: 0.9, competitor: 1.3, elite: 1.55 } as const;

/** What may be said of an athlete beside level, sex, age and mass; each with a chance. */
function someAthlete(draw: Draw): Readonly<Record<string, string>> {
  const level = draw.one(LEVELS);
  const sex = draw.one(SEXES);
  const [least, most] = bodyMass[sex];
  const mass = draw.whole(least, most);
  const best = Math.round(mass * LIFT_SHARE[level] * (sex === "female" ? 0.75 : 1));
  const avoid = draw.chance(0.5) ? draw.one(STRESSES).replaceAll("-", " ") : "";
  const joint = `{joint: ${draw.one(JOINTS)}, avoid: ${avoid === "" ? "none" : `[${avoid}]`}}`;
  const limit = draw.chance(0.6) ? joint : draw.one(CONDITIONS).replaceAll("-", " ");
  const gym = draw.one(["hall", "hall", "bare rack", "pounds", "unknown"]);
  return {
    gym,
    level,
    sex,
    division: sex === "female" ? "women" : "men",
    born: String(draw.whole(1955, 2011)),
    "body mass": `${mass} kg`,
    ...(draw.chance(0.3) && { units: "lb" }),
    ...(draw.chance(0.6) && {
      lifts: `{clean and jerk: ${best} kg, back squat: ${Math.round(best * 1.4)} kg}`,
    }),
    ...(draw.chance(0.4) && {
      unbroken: `{toes-to-bar: ${draw.whole(3, 40)}, double-under: ${draw.whole(10, 200)}}`,
    }),
    ...(draw.chance(0.35) && { limits: `[${limit}]` }),
    ...(draw.chance(0.3) && { habits: `[${draw.one(HABITS).replaceAll("-", " ")}]` }),
    ...(draw.chance(0.2) && {
      cannot: `[${draw.one(["ring muscle-up", "handstand push-up", "bar muscle-up", "pull-up"])}]`,
    }),
    ...(draw.chance(0.2) && { stiff: `[${draw.one(["hip", "shoulder", "ankle"])}]` }),
    ...(draw.chance(0.2) && { retry: draw.one(["planned", '"no"']) }),
    ...(draw.chance(0.3) && { "warm up": `${draw.whole(10, 60)} min` }),
  };
}

/**
 * Situations nobody thought of: athletes of all levels, ages, limits, habits and missing skills in workouts of every format made of
 * any movements of the library. The same seed gives the same ones.
 */
export function generatedSituations(count: number, seed: number): readonly AdviceSituation[] {
  const draw = drawFrom(seed);
  return Array.from({ length: count }, (_, at): AdviceSituation => {
    const { gym = "hall", ...athlete } = someAthlete(draw);
    const format = FORMATS[at % FORMATS.length] as Format;
    return {
      is: `situation ${at + 1}`,
      athlete: `athlete ${at + 1}`,
      workout: `Work ${at + 1}`,
      written: {
        athlete: `{${Object.entries(athlete)
          .map(([key, value]) => `${key}: ${value}`)
          .join(", ")}}`,
        workout: format(draw),
      },
      day: { gym, ...(draw.chance(0.6) && { at: `${draw.whole(8, 20)}:00`.padStart(5, "0") }) },
    };
  });
}
