import type { Mass, MassUnit } from "../models/quantity.ts";
import { kilograms, massIn, inKilograms } from "../models/quantity.ts";
import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

type BarLoad = Plan["loads"][number]["load"];

/**
 * The number of a mass without its unit. Quarters are said as marked on plates, to a hundredth; what comes of plates of two
 * units to a tenth, because a finer figure helps nobody to load the bar.
 *
 * @example sayMassFigure({ value: 1.25, unit: "kg" }) // => "1.25"
 * @example sayMassFigure({ value: 33.38, unit: "kg" }) // => "33.4"
 */
export function sayMassFigure({ value }: Mass): string {
  const quarters = value * 4;
  return sayNumber(value, Math.abs(quarters - Math.round(quarters)) < QUARTER_TOLERANCE ? 2 : 1);
}

/** Quarters of a unit that are still a whole number of them, for conversions that do not come out even. */
const QUARTER_TOLERANCE = 0.01;

/** A mass in its own unit. @example sayMass({ value: 102.5, unit: "kg" }) // => "102.5\u00a0kg" */
export const sayMass = (mass: Mass): string => `${sayMassFigure(mass)}${NO_BREAK_SPACE}${mass.unit}`;

/** A mass given in kilograms, in the reader's unit, to the half: what is computed is not known finer. @example sayKilograms(66.66, "kg") // => "66.5\u00a0kg" */
export function sayKilograms(mass: number, units: MassUnit): string {
  const { value, unit } = massIn(units, kilograms(mass));
  return `${sayNumber(Math.round(value * 2) / 2, 1)}${NO_BREAK_SPACE}${unit}`;
}

const mixesUnits = (load: BarLoad): boolean =>
  new Set([load.mass.unit, ...(load.perSide ?? []).map(({ plate }) => plate.unit)]).size > 1;

/**
 * A load as it stands on the bar or in the hands; a pair says so. Where it is not in the reader's unit, or plates of
 * both units hang on the bar, the other unit follows in brackets.
 *
 * @example sayLoad({ mass: { value: 35, unit: "lb" }, kilograms: 15.876, pieces: 2 }, "kg") // => "2\u00a0×\u00a035\u00a0lb\u00a0(15.9\u00a0kg)"
 */
export function sayLoad(load: BarLoad, units: MassUnit): string {
  const other = sayOtherUnit(load, units);
  return `${sayPieces(load)}${other ? `${NO_BREAK_SPACE}(${other})` : ""}`;
}

/** A load in its own unit alone; a pair says so. */
export const sayPieces = (load: BarLoad): string =>
  `${load.pieces > 1 ? `${load.pieces}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}` : ""}${sayMass(load.mass)}`;

/** A load in the unit it is not said in, where the reader needs it: a unit not theirs, or plates of both units. */
export function sayOtherUnit(load: BarLoad, units: MassUnit): string | undefined {
  if (load.mass.unit === units && !mixesUnits(load)) return undefined;
  const unit: MassUnit = load.mass.unit === "kg" ? "lb" : "kg";
  const { value } = massIn(unit, inKilograms(load.mass));
  return `${sayNumber(value, unit === "kg" && value < 100 ? 1 : 0)}${NO_BREAK_SPACE}${unit}`;
}
