import { KILOGRAMS_PER_POUND, type Mass } from "../../models/quantity.ts";
import type { Told } from "./reading.ts";
import { sayMass } from "./mass.ts";

/** Pounds per kilogram as sheets round it, roughest first; the last is exact to six digits. */
const FACTORS = [2.2, 2.204, 2.2046, 2.205, 2.20462, 1 / KILOGRAMS_PER_POUND] as const;
/** Steps in which loads are made: half a kilogram, and the smallest pair of pound plates (judgement). */
const KILOGRAM_STEP = 0.5;
const POUND_STEP = 5;

/**
 * The mass as it stood before somebody's sheet converted it: 264.48 lb was 120 kg, 102.06 kg was 225 lb. Only where the
 * number is odd in its own unit and round in the other, within the half of its last digit.
 */
export function undoConversion(mass: Mass): { readonly mass: Mass; readonly told: Told } | undefined {
  const digits = /\.(\d+)$/.exec(String(mass.value))?.[1]?.length ?? 0;
  const halfLastDigit = 0.5 * 10 ** -Math.min(digits, 3);
  const original =
    mass.unit === "lb" ? kilogramsBefore(mass.value, halfLastDigit) : poundsBefore(mass.value, halfLastDigit);
  if (original === undefined) return undefined;
  const said = sayMass(original);
  const problem = `an odd number of ${mass.unit} that is a round number of ${original.unit}; read as ${said}`;
  return { mass: original, told: { problem, readAs: said } };
}

function kilogramsBefore(pounds: number, tolerance: number): Mass | undefined {
  if (isMultiple(pounds, 0.5, 1e-6)) return undefined;
  for (const factor of FACTORS) {
    const kilograms = pounds / factor;
    // Nearness to a round number must come from rounding, not from the factor: see the last digit.
    if (isMultiple(kilograms, KILOGRAM_STEP, tolerance / factor + 1e-9))
      return { value: round(kilograms, KILOGRAM_STEP), unit: "kg" };
  }
  return undefined;
}

function poundsBefore(kilograms: number, tolerance: number): Mass | undefined {
  if (isMultiple(kilograms, 0.25, 1e-6)) return undefined;
  for (const factor of FACTORS) {
    const pounds = kilograms * factor;
    if (isMultiple(pounds, POUND_STEP, tolerance * factor + 1e-9))
      return { value: round(pounds, POUND_STEP), unit: "lb" };
  }
  return undefined;
}

const round = (value: number, step: number): number => Math.round(value / step) * step;
const isMultiple = (value: number, step: number, within: number): boolean =>
  Math.abs(value - round(value, step)) <= within;
