import type { Plan } from "../models/plan/plan.ts";
import { kilograms, massIn, type MassUnit } from "../models/quantity.ts";
import type { ScoreKind } from "../models/vocabulary.ts";
import { NO_BREAK_SPACE, sayCount, sayNumber } from "./number.ts";
import { sayClock, sayTimeFrom, sayTimeRange } from "./time.ts";

type Range = NonNullable<Plan["headline"]["result"]>;

/** A score in two pieces, so that the figure can be set large and the unit small. The unit may be empty. */
export type SaidScore = { readonly figure: string; readonly unit: string };

/** What a score needs besides its number: the reader's unit, and the score of one round where it is constant. */
export type ScoreContext = { readonly units: MassUnit; readonly perRound?: number | undefined };

const TIMES: readonly ScoreKind[] = ["time", "slowest-interval"];
const LOADS: readonly ScoreKind[] = ["load", "sum-of-loads"];

const UNITS: Readonly<Record<ScoreKind, string>> = {
  time: "",
  reps: "reps",
  "rounds-and-reps": "reps",
  load: "",
  "sum-of-loads": "in all",
  "load-times-reps": "kg × reps",
  calories: "calories",
  metres: "m",
  "lowest-interval": "in the lowest interval",
  "highest-interval": "in the highest interval",
  "sum-of-lowest": "in the lowest intervals, added",
  "slowest-interval": "in the slowest interval",
  "intervals-completed": "intervals",
};

const SINGULARS: Readonly<Record<string, string>> = {
  reps: "rep",
  calories: "calorie",
  intervals: "interval",
};

/** Says whether less is better: of times, less is. */
export const isTime = (kind: ScoreKind): boolean => TIMES.includes(kind);

type Rounding = (value: number) => number;

function figureOf(
  kind: ScoreKind,
  value: number,
  { units, perRound }: ScoreContext,
  round: Rounding,
): string {
  if (isTime(kind)) return sayClock(value);
  // To the hundredth first, so that a load turned into kilograms and back is that load.
  if (LOADS.includes(kind))
    return sayNumber(round(Math.round(massIn(units, kilograms(value)).value * 200) / 100) / 2, 1);
  const whole = round(value);
  if (kind !== "rounds-and-reps" || perRound === undefined) return sayNumber(whole, 0);
  return `${Math.floor(whole / perRound)}${NO_BREAK_SPACE}+${NO_BREAK_SPACE}${sayNumber(whole % perRound, 0)}`;
}

function unitOf(kind: ScoreKind, { units, perRound }: ScoreContext): string {
  if (kind === "rounds-and-reps" && perRound !== undefined) return "rounds + reps";
  if (kind === "load") return units;
  return kind === "sum-of-loads" ? `${units} ${UNITS[kind]}` : UNITS[kind];
}

/**
 * A score as its kind is read: a time as a clock, loads (given in kilograms) in the reader's unit to the half, rounds
 * and reps apart where a round's score is constant, everything else as a whole number; ties up.
 *
 * @example sayScore("rounds-and-reps", 489, { units: "kg", perRound: 24 }) // => { figure: "20\u00a0+\u00a09", unit: "rounds + reps" }
 */
export function sayScore(kind: ScoreKind, value: number, context: ScoreContext): SaidScore {
  const { perRound } = context;
  const whole = Math.round(value);
  // Within the first round, as in a ladder that nobody gets through, what is done are reps.
  if (kind === "rounds-and-reps" && perRound !== undefined && whole < perRound)
    return sayScore("reps", value, context);
  if (kind === "rounds-and-reps" && perRound !== undefined && whole > 0 && whole % perRound === 0) {
    const rounds = whole / perRound;
    return { figure: sayNumber(rounds, 0), unit: rounds === 1 ? "round" : "rounds" };
  }
  const figure = figureOf(kind, value, context, Math.round);
  const unit = unitOf(kind, context);
  return { figure, unit: figure === "1" ? (SINGULARS[unit] ?? unit) : unit };
}

/**
 * A range from its lower to its higher end, rounded outwards. The ends are one day in ten each. Of a time whose bad day a cap or a
 * door ends, that end is what is done then: `9:35 to 83 reps`.
 *
 * @example sayRange("reps", { target: 101, cautious: 93.7, middle: 100, hopeful: 108.2 }, { units: "kg" }) // => "93–109"
 */
export function sayRange(kind: ScoreKind, range: Range, context: ScoreContext): string {
  if (isTime(kind)) {
    const { hopeful, cautious, cautiousDone } = range;
    if (cautiousDone === undefined) return sayTimeRange(hopeful, cautious);
    return `${sayTimeFrom(hopeful, cautious)} to ${sayWholeScore("reps", cautiousDone, context)}`;
  }
  const { perRound } = context;
  if (kind === "rounds-and-reps" && perRound !== undefined && Math.ceil(range.hopeful) < perRound)
    return sayRange("reps", range, context);
  const low = figureOf(kind, range.cautious, context, Math.floor);
  const high = figureOf(kind, range.hopeful, context, Math.ceil);
  if (low === high) return low;
  return low.includes("+") ? `${low} to ${high}` : `${low}–${high}`;
}

/** A score in one piece, for a sentence. @example sayWholeScore("time", 425, { units: "kg" }) // => "7:05" */
export function sayWholeScore(kind: ScoreKind, value: number, context: ScoreContext): string {
  const { figure, unit } = sayScore(kind, value, context);
  if (unit === "rounds + reps") {
    const [rounds = 0, reps = 0] = figure.split(`${NO_BREAK_SPACE}+${NO_BREAK_SPACE}`).map(Number);
    const whole = sayCount(rounds, "round", "rounds");
    return reps === 0 ? whole : `${whole} + ${sayCount(reps, "rep", "reps")}`;
  }
  return unit === "" ? figure : `${figure}${NO_BREAK_SPACE}${unit}`;
}

/** Scores that count one thing all through, whose name stands behind an amount of them too. */
const COUNTED: readonly ScoreKind[] = [
  "reps",
  "rounds-and-reps",
  "calories",
  "metres",
  "intervals-completed",
];

/** An amount in score units, such as what is missing to a plan. @example sayScoreAmount("rounds-and-reps", 49) // => "49\u00a0reps" */
export function sayScoreAmount(kind: ScoreKind | undefined, amount: number): string {
  const figure = sayNumber(amount, 0);
  if (kind === undefined || !COUNTED.includes(kind)) return figure;
  const unit = UNITS[kind];
  return `${figure}${NO_BREAK_SPACE}${Math.round(amount) === 1 ? (SINGULARS[unit] ?? unit) : unit}`;
}
