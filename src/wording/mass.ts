import type { Mass, MassUnit } from "../models/quantity.ts";
import { kilograms, massIn, inKilograms } from "../models/quantity.ts";
import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

type BarLoad = Plan["loads"][number]["load"];

/** The number of a mass without its unit: as marked on plates, to a hundredth. @example sayMassFigure({ value: 1.25, unit: "kg" }) // => "1.25" */
export const sayMassFigure = (mass: Mass): string => sayNumber(mass.value, 2);

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
  const pieces = load.pieces > 1 ? `${load.pieces}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}` : "";
  const other: MassUnit = load.mass.unit === "kg" ? "lb" : "kg";
  const both = load.mass.unit !== units || mixesUnits(load);
  const inOther = massIn(other, inKilograms(load.mass));
  const bracket = both
    ? `${NO_BREAK_SPACE}(${sayNumber(inOther.value, other === "kg" && inOther.value < 100 ? 1 : 0)}${NO_BREAK_SPACE}${other})`
    : "";
  return `${pieces}${sayMass(load.mass)}${bracket}`;
}
