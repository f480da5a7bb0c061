import { inKilograms, inMetres, type Length } from "../../models/quantity.ts";
import type {
  BlockStep,
  ByRound,
  EffortAmount,
  EffortStep,
  Load,
  Passes,
  RestLength,
  Step,
} from "../../models/workout.ts";
import type { Trouble } from "./notation-fault.ts";
import { type BoundName, WORK_BOUNDS } from "./work-bounds.ts";

/** What is counted and never halved. */
const COUNTED: ReadonlySet<BoundName> = new Set<BoundName>(["attempts", "rounds"]);

/** A number that lies beyond its bound or is no whole one where it is counted, as a person would be told; nothing where it does not. */
export function beyond(name: BoundName, value: number): Trouble | undefined {
  const { low, high, what, from, to } = WORK_BOUNDS[name];
  if (value >= low && value <= high) {
    if (!COUNTED.has(name) || Number.isInteger(value)) return undefined;
    return { problem: `${what} is whole`, allowed: `from ${from} to ${to}`, remedy: "Write a whole number." };
  }
  return {
    problem: `${what} is ${value < low ? `at least ${from}` : `at most ${to}`}`,
    allowed: `from ${from} to ${to}`,
    remedy: "Correct the number.",
  };
}

/** Tells every number of the work, at any depth, that no workout has. */
export function checkBounds(steps: readonly Step[], tell: (step: Step, trouble: Trouble) => void): void {
  for (const step of steps) {
    const numbers =
      step.kind === "effort" ? inEffort(step) : step.kind === "rest" ? inRest(step.rest) : inBlock(step);
    const [trouble] = numbers.flatMap(([name, value]) => beyond(name, value) ?? []);
    if (trouble) tell(step, trouble);
    if (step.kind === "block") checkBounds(step.steps, tell);
  }
}

/** How many lines are visited where every round of known number is counted. */
export const visitsOf = (steps: readonly Step[]): number =>
  steps.reduce(
    (sum, step) => sum + (step.kind === "block" ? passesIn(step.passes) * visitsOf(step.steps) : 1),
    0,
  );

/** How many reps are asked for in all where every round of known number is counted. */
export const repsOf = (steps: readonly Step[], passes = 1, ladder: readonly number[] = []): number =>
  steps.reduce((sum, step) => {
    if (step.kind === "rest") return sum;
    if (step.kind === "effort")
      return sum + step.pieces.reduce((all, { amount }) => all + passes * meanReps(amount, ladder), 0);
    const inner = step.passes.kind === "ladder" ? step.passes.amounts : ladder;
    return sum + repsOf(step.steps, passes * passesIn(step.passes), inner);
  }, 0);

/** Reps of a line in one pass, on the average of all; 0 of what is not counted in reps or has no end of its own. */
function meanReps(amount: EffortAmount, ladder: readonly number[]): number {
  if (amount.kind === "ladder") return amount.unit === "reps" ? mean(ladder) : 0;
  if (amount.kind !== "counted") return 0;
  return mean(valuesIn(amount.amount, ({ value, unit }) => (unit === "reps" ? value : 0)));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The number of passes, 1 where they have no end of their own. */
export function passesIn(passes: Passes): number {
  if (passes.kind === "rounds") return passes.count;
  return passes.kind === "ladder" ? passes.amounts.length : 1;
}

type Numbers = readonly (readonly [name: BoundName, value: number])[];

function inEffort({ pieces, load, height, countsAs, attempts, written }: EffortStep): Numbers {
  const isBox = /\bbox/i.test(written);
  return [
    ...pieces.flatMap(({ amount }): Numbers => {
      if (amount.kind === "max-for") return [["window", amount.time]];
      return amount.kind === "counted"
        ? valuesIn(amount.amount, ({ value, unit }) => [unit, value] as const)
        : [];
    }),
    ...(load ? valuesIn(load, (each) => each).flatMap(inLoad) : []),
    ...(height
      ? valuesIn(height, (each: Length) => [isBox ? "box" : "height", inMetres(each)] as const)
      : []),
    ...(countsAs ? [["scores", countsAs.scores] as const] : []),
    ...(attempts === undefined ? [] : [["attempts", attempts] as const]),
  ];
}

/** The values of all rounds; of a stepped one the first, which the others only go on from. */
const valuesIn = <T, U>(values: ByRound<T>, of: (value: T) => U): readonly U[] =>
  values.kind === "listed"
    ? values.values.map(of)
    : [of(values.kind === "same" ? values.value : values.start)];

/** A load as numbers, whatever it is a share of. */
function inLoad(load: Load): Numbers {
  switch (load.kind) {
    case "mass":
      return [
        ["pieces", load.pieces],
        ["load", load.pieces * inKilograms(load.mass)],
      ];
    case "share-of-best":
      return [["shareOfBest", load.share]];
    case "share-of-body-mass":
      return [["shareOfBodyMass", load.share]];
    case "athletes-choice":
      return [];
  }
}

function inRest(rest: RestLength): Numbers {
  switch (rest.kind) {
    case "exactly":
    case "at-least":
      return [["rest", rest.time]];
    case "until":
      return [["clock", rest.clock]];
    default:
      return [];
  }
}

function inBlock({ passes, window, by, cap, restBetween }: BlockStep): Numbers {
  const amounts = passes.kind === "ladder" ? passes.amounts : [];
  return [
    ["rounds", passesIn(passes)],
    ...amounts.map((amount) => ["reps", amount] as const),
    ...(window === undefined
      ? []
      : window.kind === "on-off"
        ? [["window", window.on] as const, ["rest", window.off] as const]
        : [["window", window.time] as const]),
    ...(by === undefined ? [] : [["clock", by.time] as const]),
    ...(cap === undefined ? [] : [["window", cap] as const]),
    ...(restBetween === undefined ? [] : inRest(restBetween)),
  ];
}

/** What is wrong with the numbers of the kind of a part: its length, its attempts, what a missing rep costs. */
export function troubleOfClock(clock: ClockNumbers): Trouble | undefined {
  const { length, cap, secondsPerMissingRep, attempts } = clock;
  const numbers: readonly (readonly [BoundName, number | undefined])[] = [
    ["length", typeof length === "number" ? length : length?.time],
    ["length", cap?.time],
    ["penalty", secondsPerMissingRep],
    ["attempts", attempts],
  ];
  return numbers.flatMap(([name, value]) => (value === undefined ? [] : (beyond(name, value) ?? [])))[0];
}

/** The numbers that the kind of a part may hold, whichever it is. */
type ClockNumbers = {
  readonly length?: number | { readonly time: number };
  readonly cap?: { readonly time: number };
  readonly secondsPerMissingRep?: number;
  readonly attempts?: number;
};
