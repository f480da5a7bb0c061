import type { Sourced } from "./movement.ts";

/** Units of the model's constants, each with the range that is possible where a constant names none of its own. */
const CONSTANT_UNITS = {
  share: [0, 1],
  factor: [0.05, 20],
  exponent: [0, 4],
  seconds: [0, 14_400],
  minutes: [0, 240],
  hours: [0, 72],
  days: [0, 3650],
  "metres a second": [0.1, 10],
  kilograms: [0, 500],
  "kilograms a kilogram": [0, 1],
  reps: [0, 1000],
  rounds: [0, 100],
  performances: [0, 1000],
  years: [0, 120],
  count: [0, 1000],
  spreads: [0, 5],
  logarithm: [-20, 20],
  "share a year": [0, 1],
  "share a rep": [0, 1],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;

type ConstantUnit = keyof typeof CONSTANT_UNITS;

/**
 * A number of a model that a coach may set differently, by its name. `does` completes "the name is …"; `range` holds the least
 * and the most that is possible, where it is not that of the unit.
 */
export type ModelConstant = Sourced<number> & {
  readonly unit: ConstantUnit;
  readonly does: string;
  readonly range?: readonly [least: number, most: number];
};

/** The constants of one model by their names. */
export type ModelConstants = Readonly<Record<string, ModelConstant>>;

/**
 * A number of a model that no coach sets, or several that go together: where a term begins, what counts as the same, what is
 * believed at most. `does` completes "the name is …".
 */
export type FixedConstant = Sourced<FixedValue> & { readonly unit: string; readonly does: string };

type FixedValue = number | readonly number[] | { readonly [name: string]: FixedValue };

/** The fixed constants of one model by their names. */
export type FixedConstants = Readonly<Record<string, FixedConstant>>;

/** The least and the most a constant can be. */
export const rangeOf = ({ unit, range }: Pick<ModelConstant, "unit" | "range">): readonly [number, number] =>
  range ?? CONSTANT_UNITS[unit];

/** The names a coach may set under `overrides:`, each with the least and the most it can be. */
export type SettableConstants = ReadonlyMap<string, readonly [least: number, most: number]>;
