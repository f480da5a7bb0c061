import { type Mass, type MassUnit, type Kilograms, kilograms } from "../../models/quantity.ts";

/**
 * A mass as a whole number of ten-micrograms (1e-8 kg). The international pound is exactly 45 359 237 of them and
 * every plate marked in grams is a whole number too, so that sums of plates compare without rounding error; a loaded
 * bar of 500 kg is 5e10, far inside the integers a number holds exactly.
 */
export type ExactMass = number;

const PER: Readonly<Record<MassUnit, number>> = { kg: 100_000_000, lb: 45_359_237 };

/** The mass as a whole number of ten-micrograms. @example exactMass({ value: 1, unit: "lb" }) // => 45359237 */
export const exactMass = (mass: Mass): ExactMass => Math.round(mass.value * PER[mass.unit]);

/** Back to a mass in a unit. @example fromExact(4535923700, "lb").value // => 100 */
export const fromExact = (exact: ExactMass, unit: MassUnit): Mass => ({ value: exact / PER[unit], unit });

/** Back to kilograms. @example exactInKilograms(4535923700) // => 45.359237 */
export const exactInKilograms = (exact: ExactMass): Kilograms => kilograms(exact / PER.kg);
