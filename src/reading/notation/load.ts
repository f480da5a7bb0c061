import type { Movement } from "../../models/movement.ts";
import { inKilograms, massIn, type Mass } from "../../models/quantity.ts";
import type { ByRound, Load } from "../../models/workout.ts";
import { skip, skipOneOf, type Cursor } from "./cursor.ts";
import { takeMovements } from "./movement-phrase.ts";
import { tell, type Trouble } from "./notation-fault.ts";
import type { Entry } from "./number-series.ts";
import type { LineSetting, Reading } from "./reading.ts";
import type { RoundValues } from "./round-values.ts";
import { byRound } from "./rounds.ts";
import { writtenBy, type Token } from "./token.ts";

const CHOICE = [
  "any load",
  "any weight",
  "own choice",
  "own load",
  "athlete's choice",
  "athletes choice",
  "a load of choice",
] as const;

/** Takes `any load`: the athlete chooses. */
export const takeChosenLoad = (cursor: Cursor): Load | undefined =>
  skipOneOf(cursor, CHOICE) === undefined ? undefined : { kind: "athletes-choice" };

/** Takes `body mass` without a number before it: all of it. */
export const takeBodyMass = (cursor: Cursor): Load | undefined =>
  skipOneOf(cursor, ["body mass", "body weight", "bodyweight", "bw"]) === undefined
    ? undefined
    : { kind: "share-of-body-mass", share: 1 };

/** Takes `1RM`: the best of what is lifted. */
function skipBest(cursor: Cursor): boolean {
  const [number, word] = cursor.tokens.slice(cursor.index, cursor.index + 2);
  if (number?.text !== "1" || word?.text !== "rm") return false;
  cursor.index += 2;
  return true;
}

/** What a share refers to: `of clean and jerk`, `of best`, or nothing for the movement itself. */
export function takeShareOf(
  cursor: Cursor,
  reading: Reading,
): { readonly ok: boolean; readonly of?: string } {
  if (skipBest(cursor)) return { ok: true };
  if (!skip(cursor, "of")) return { ok: true };
  if (skipBest(cursor) && cursor.index >= cursor.tokens.length) return { ok: true };
  skipOneOf(cursor, ["the best", "the", "your", "best", "max"]);
  if (skipOneOf(cursor, ["1 rm", "1rm", "rm", "best", "it"]) !== undefined) return { ok: true };
  const before = cursor.index;
  if (cursor.index >= cursor.tokens.length) return { ok: true };
  const movements = takeMovements(cursor, reading);
  const [movement] = movements ?? [];
  if (movement === undefined) return { ok: false };
  skipOneOf(cursor, ["1rm", "rm", "best"]);
  if (movement.loading?.lift === true) return { ok: true, of: movement.id };
  tell(reading.faults, cursor.tokens.slice(before, cursor.index), cursor.tokens, {
    problem: `${movement.name} has no best lift of which this could be a share`,
    remedy: "Name a lift, such as `of clean and jerk`, or write the load in kg or lb.",
  });
  return { ok: false };
}

/** The loads of a line by round from numbers with units. Undefined with a fault noted. */
export function settleLoad(
  values: RoundValues,
  of: string | undefined,
  setting: Pick<LineSetting, "passes" | "by">,
  reading: Reading,
): ByRound<Load> | undefined {
  const loads: Load[] = [];
  const [first] = values.entries;
  for (const entry of [...values.entries, ...(values.step ? [values.step.entry] : [])]) {
    const load = loadOf(
      { ...entry, ...(entry.unit === undefined && first?.unit ? { unit: first.unit } : {}) },
      of,
      reading,
    );
    if (load === undefined) return undefined;
    loads.push(load);
  }
  const step = values.step && loads.at(-1);
  if (step !== undefined && step.kind !== loads[0]?.kind) {
    tell(reading.faults, values.tokens, values.tokens, {
      problem: "the step is not in the unit of the start",
      remedy: "Write both in the same unit, for example `60 kg up by 5 kg`.",
    });
    return undefined;
  }
  return byRound(loads, values, setting, reading, (load) => signedLoad(load, values.step?.sign ?? 1));
}

function signedLoad(load: Load, sign: 1 | -1): Load {
  if (load.kind === "mass") return { ...load, mass: { ...load.mass, value: load.mass.value * sign } };
  return load.kind === "athletes-choice" ? load : { ...load, share: load.share * sign };
}

function loadOf(entry: Entry, of: string | undefined, reading: Reading): Load | undefined {
  const { unit, value, tokens } = entry;
  const wrong = (problem: string, remedy: string): Load | undefined => {
    tell(reading.faults, tokens, tokens, {
      problem,
      allowed: "kg, lb, % of a lift, body mass",
      remedy,
    });
    return undefined;
  };
  if (unit === undefined) {
    return wrong(
      "a load needs its unit",
      `Write \`${plain(tokens)} kg\` or \`${plain(tokens)} lb\`, whichever is meant.`,
    );
  }
  if (value <= 0) return wrong("a load must be over 0", "Correct the number.");
  switch (unit.kind) {
    case "mass":
      return massOf(entry, { value, unit: unit.unit }, reading);
    case "share":
      if (value < 5 || value > 150) {
        return wrong(
          `${value} % of a lift is no load anybody uses`,
          "Write the share in per cent, such as `at 70%`.",
        );
      }
      return { kind: "share-of-best", share: value / 100, ...(of === undefined ? {} : { of }) };
    case "body-mass": {
      const share = value / unit.per;
      if (share > 5)
        return wrong(
          `${share} times body mass is no load`,
          "Write `at 0.75 body mass` or `at 75% body mass`.",
        );
      return { kind: "share-of-body-mass", share };
    }
    default:
      return wrong("this is not a unit of a load", "Write the load in kg or lb.");
  }
}

/** A mass, with the same in another unit where that stands beside it; asked about where the two differ. */
function massOf({ alternative, pieces = 1, tokens }: Entry, mass: Mass, reading: Reading): Load | undefined {
  const other =
    alternative?.unit.kind === "mass" ? { value: alternative.value, unit: alternative.unit.unit } : undefined;
  if (other !== undefined && contradicts(mass, other)) {
    tell(reading.faults, tokens, tokens, {
      problem: `${mass.value} ${mass.unit} is ${asRead(massIn(other.unit, inKilograms(mass)))}, and ${asRead(other)} stands beside it`,
      allowed: "the same load in another unit, rounded to plates",
      remedy: `Keep the one that is meant: \`${asRead(mass)}\` or \`${asRead(other)}\`.`,
      severity: "question",
    });
    return undefined;
  }
  return { kind: "mass", pieces, mass, ...(other === undefined ? {} : { alternative: other }) };
}

/** Two masses that no rounding to plates and bells makes one: a twelfth apart, and over a kilo. */
const APART = 1 / 12;
const ROUNDED = 1;

function contradicts(one: Mass, other: Mass): boolean {
  const [first, second] = [inKilograms(one), inKilograms(other)];
  return Math.abs(first - second) > Math.max(ROUNDED, APART * first);
}

const asRead = ({ value, unit }: Mass): string => `${Math.round(value * 10) / 10} ${unit}`;

const plain = (tokens: readonly Token[]): string => tokens.map((token) => token.text).join("");

/**
 * The load checked against how the movement is held: one object or bar, or two pieces. What is held in each hand must
 * say how many pieces it is (`saysPieces`), since one mass may be that of one or of both. False with a fault noted.
 */
export function fitsLoad(
  load: ByRound<Load>,
  saysPieces: boolean,
  movements: readonly Movement[],
  tokens: readonly Token[],
  reading: Reading,
): boolean {
  const loads = load.kind === "listed" ? load.values : [load.kind === "same" ? load.value : load.start];
  const masses = loads.filter((one) => one.kind === "mass");
  const trouble = misfit(
    movements,
    masses,
    saysPieces,
    writtenBy(tokens),
    loads.some((one) => one.kind === "share-of-best" && one.of === undefined),
  );
  if (trouble !== undefined) {
    const nearest = trouble.severity === "question" ? undefined : heldBy(movements[0], masses, reading);
    const remedy = nearest === undefined ? trouble.remedy : `Write \`${nearest}\` if that is done.`;
    tell(reading.faults, tokens, tokens, { ...trouble, nearest, remedy, atUse: true });
  }
  return trouble === undefined;
}

/** The movement of the same name that is done with as many pieces as stand there: `dumbbell walking lunge`. */
function heldBy(
  movement: Movement | undefined,
  masses: readonly (Load & { readonly kind: "mass" })[],
  reading: Reading,
): string | undefined {
  if (movement === undefined) return undefined;
  const held = masses.some(({ pieces }) => pieces > 1) ? "pair" : "single";
  return ["double", "dumbbell", "kettlebell"]
    .map((word) => reading.byName(`${word} ${movement.name}`))
    .find((found) => found?.loading?.held === held)?.name;
}

function misfit(
  movements: readonly Movement[],
  masses: readonly (Load & { readonly kind: "mass" })[],
  saysPieces: boolean,
  mass: string,
  isShareOfItself: boolean,
): Trouble | undefined {
  const unloaded = movements.find((movement) => movement.loading === undefined);
  if (unloaded !== undefined) {
    return {
      problem: `${unloaded.name} is not described as done with a load`,
      remedy:
        "Name the movement that is done with it (see content/movements), or leave the load out; what is worn for the whole part stands under `wearing:`.",
    };
  }
  const name = movements[0]?.name ?? "it";
  if (isShareOfItself && movements[0]?.loading?.lift !== true) {
    return {
      problem: `${name} has no best lift of which this could be a share`,
      remedy: "Name a lift, such as `at 70% of clean and jerk`, or write the load in kg or lb.",
    };
  }
  const held = movements[0]?.loading?.held;
  if (held !== "pair" && masses.some((one) => one.pieces > 1)) {
    return {
      problem: `${name} is done with one ${held === "bar" ? "bar" : "load"}, not with several pieces`,
      remedy: /dumbbell|kettlebell/.test(name)
        ? "Write the load of the one that is held, or describe the movement with two in a file of its own in content/movements."
        : "Write the whole load, or name the movement done with two, such as a dumbbell one.",
    };
  }
  if (held !== "pair" || saysPieces || masses.length === 0) return undefined;
  return {
    problem: `${name} is mostly done with one in each hand, and whether this is the load of one of two, or of one alone, is not said`,
    allowed: `\`2 x ${mass}\` for one in each hand, \`1 x ${mass}\` for one alone`,
    remedy: `Write \`2 x ${mass}\` if there is one in each hand.`,
    severity: "question",
  };
}
