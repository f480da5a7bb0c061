import type * as z from "zod";

/**
 * Physical quantities as distinct number types, so that a time cannot be passed where a mass is meant.
 * The brand exists for the compiler only; at run time each is a plain number in the unit of its name.
 */
export type Seconds = number & z.$brand<"seconds">;
export type Metres = number & z.$brand<"metres">;
export type Kilograms = number & z.$brand<"kilograms">;

export const seconds = (value: number): Seconds => value as Seconds;
export const metres = (value: number): Metres => value as Metres;
export const kilograms = (value: number): Kilograms => value as Kilograms;

/** One pound in kilograms, exact by the international yard and pound agreement of 1959. */
export const KILOGRAMS_PER_POUND = 0.45359237;
/** One foot in metres, exact by the same agreement. */
const METRES_PER_FOOT = 0.3048;
/** One inch in metres, exact. */
export const METRES_PER_INCH = 0.0254;
/** One mile in metres, exact. */
const METRES_PER_MILE = 1609.344;

export const MASS_UNITS = ["kg", "lb"] as const;
export type MassUnit = (typeof MASS_UNITS)[number];

/** A mass as it was written: the number and its own unit, so that 225 lb stays 225 lb on paper. */
export type Mass = { readonly value: number; readonly unit: MassUnit };

/** The mass in kilograms, by the exact pound. @example inKilograms({ value: 100, unit: "lb" }) // => 45.359237 */
export const inKilograms = (mass: Mass): Kilograms =>
  kilograms(mass.unit === "kg" ? mass.value : mass.value * KILOGRAMS_PER_POUND);

/** A mass in kilograms expressed in another unit. @example massIn("lb", kilograms(45.359237)).value // => 100 */
export const massIn = (unit: MassUnit, mass: Kilograms): Mass => ({
  value: unit === "kg" ? mass : mass / KILOGRAMS_PER_POUND,
  unit,
});

export const LENGTH_UNITS = ["m", "km", "mile", "ft", "in", "cm"] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** A length as it was written. */
export type Length = { readonly value: number; readonly unit: LengthUnit };

const METRES_PER: Readonly<Record<LengthUnit, number>> = {
  m: 1,
  km: 1000,
  mile: METRES_PER_MILE,
  ft: METRES_PER_FOOT,
  in: METRES_PER_INCH,
  cm: 0.01,
};

/** The length in metres, exact. @example inMetres({ value: 24, unit: "in" }) // => 0.6096 */
export const inMetres = (length: Length): Metres => metres(length.value * METRES_PER[length.unit]);
