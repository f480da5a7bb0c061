import { nearestName } from "../../models/nearest.ts";
import type { Length, LengthUnit } from "../../models/quantity.ts";
import { takeDoubtOff } from "./doubt.ts";
import { feetAndInches, INCHES_PER_FOOT } from "./feet-and-inches.ts";
import { ask, reject, take, type Reading } from "./reading.ts";
import { NUMBER, sayNumber, writtenNumber } from "./written-number.ts";

const ALLOWED = "a number with m, km, mile, ft, in or cm, such as `500 m` or `24 in`";

/** A unit and how many of it the word stands for: a yard is 3 ft. */
const UNIT_WORDS: Readonly<Record<string, readonly [LengthUnit, number]>> = {
  m: ["m", 1],
  mtr: ["m", 1],
  mtrs: ["m", 1],
  metre: ["m", 1],
  metres: ["m", 1],
  meter: ["m", 1],
  meters: ["m", 1],
  km: ["km", 1],
  kms: ["km", 1],
  k: ["km", 1],
  kilometre: ["km", 1],
  kilometres: ["km", 1],
  kilometer: ["km", 1],
  kilometers: ["km", 1],
  mi: ["mile", 1],
  mile: ["mile", 1],
  miles: ["mile", 1],
  ft: ["ft", 1],
  foot: ["ft", 1],
  feet: ["ft", 1],
  "'": ["ft", 1],
  in: ["in", 1],
  inch: ["in", 1],
  inches: ["in", 1],
  '"': ["in", 1],
  cm: ["cm", 1],
  centimetre: ["cm", 1],
  centimetres: ["cm", 1],
  centimeter: ["cm", 1],
  centimeters: ["cm", 1],
  mm: ["cm", 0.1],
  yd: ["ft", 3],
  yds: ["ft", 3],
  yard: ["ft", 3],
  yards: ["ft", 3],
};

/** A length as people write it. @example sayLength({ value: 500, unit: "m" }) // => "500 m" */
export const sayLength = (length: Length): string => `${sayNumber(length.value)} ${length.unit}`;

/** The unit a word stands for, if it is a unit of length. */
export const lengthUnit = (word: string): readonly [LengthUnit, number] | undefined =>
  Object.hasOwn(UNIT_WORDS, word.toLowerCase()) ? UNIT_WORDS[word.toLowerCase()] : undefined;

/**
 * Reads a length: `500 m`, `1,70 m`, `2 km`, `5k`, `50 ft`, `5'7"`, `24 in`, `1/2 mile`, `1m70`. The value keeps its own
 * unit; feet with inches become inches, yards feet. A number without a unit is asked about.
 */
export function readLength(text: string): Reading<Length> {
  const { core, approximate, bound, range } = takeDoubtOff(text);
  if (core === "") return reject("the length is missing", ALLOWED);
  const feet = feetAndInches(core);
  if (feet && feet.inches > 0)
    return take({ value: feet.feet * INCHES_PER_FOOT + feet.inches, unit: "in" }, approximate);
  const metresAndCentimetres = /^(\d+)\s*m\s*(\d\d)$/i.exec(core);
  if (metresAndCentimetres) {
    return take(
      { value: Number(`${metresAndCentimetres[1] ?? ""}.${metresAndCentimetres[2] ?? ""}`), unit: "m" },
      approximate,
    );
  }
  if (range) return reject("this is a range; a plan needs one length", ALLOWED);
  const parts = new RegExp(`^(\\d+/\\d+|${NUMBER})\\s*(\\S.*?)?\\.?$`).exec(core);
  if (!parts) return reject("this is not a length", ALLOWED);
  const [, number = "", word] = parts;
  const unit = word === undefined ? undefined : lengthUnit(word);
  if (word === undefined) return ask("the unit is missing", [`${number} m`, `${number} ft`], ALLOWED);
  if (unit === undefined) {
    const nearest = nearestName(word, Object.keys(UNIT_WORDS));
    const problem = `"${word}" is no unit of length`;
    return nearest === undefined ? reject(problem, ALLOWED) : ask(problem, [`${number} ${nearest}`], ALLOWED);
  }
  const written = number.includes("/") ? fraction(number) : writtenNumber(number);
  if (written.kind === "none") return reject("this is not a number", ALLOWED);
  if (written.kind === "either") {
    const readings = [written.grouped, written.decimal].map((value) => `${sayNumber(value)} ${word}`);
    return ask("the sign in the number may group thousands or begin decimals", readings, ALLOWED);
  }
  if (written.value <= 0) return reject("a length is more than nothing", ALLOWED);
  const length: Length = { value: written.value * unit[1], unit: unit[0] };
  return bound
    ? ask("this is a bound, not a length", [sayLength(length)], ALLOWED)
    : take(length, approximate);
}

function fraction(
  text: string,
): { readonly kind: "one"; readonly value: number } | { readonly kind: "none" } {
  const [above = "", below = ""] = text.split("/");
  return Number(below) > 0 ? { kind: "one", value: Number(above) / Number(below) } : { kind: "none" };
}
