import { inMetres, metres, METRES_PER_INCH, type Metres } from "../../models/quantity.ts";
import { takeDoubtOff } from "./doubt.ts";
import { feetAndInches, INCHES_PER_FOOT, sayFeet } from "./feet-and-inches.ts";
import { readLength, sayLength } from "./length.ts";
import { HEIGHT, within } from "./plausible.ts";
import { ask, reject, take, type Reading } from "./reading.ts";
import { writtenNumber } from "./written-number.ts";

const ALLOWED = "a height such as `170 cm`, `1.70 m` or `5'7\"`";

/**
 * Reads the height of a person, in metres. Beyond what {@link readLength} does: a bare 1.70 can only be metres and is
 * taken; `5-7`, `67` and `511 in` are asked about with the one reading that is a person's height; what no reading makes
 * a height is refused. `checked` behind an unusual height keeps it.
 */
export function readHeight(text: string): Reading<Metres> {
  const { core, approximate, checked } = takeDoubtOff(text);
  const between = /^(1\d\d|2[01]\d)\s*(?:cm)?\s*-\s*(1\d\d|2[01]\d)\s*(?:cm)?$/i.exec(core);
  if (between) {
    const ends = between.slice(1).map((end) => `${end} cm`);
    return ask("this is a range; a plan needs one height", ends, ALLOWED);
  }
  const decimal = /^([3-7])[.,](\d\d?)\s*(?:ft|feet|foot|')\.?$/i.exec(core);
  if (decimal) return askAboutDecimalFeet(Number(decimal[1]), decimal[2] ?? "");
  const feet = feetAndInches(core);
  if (feet && feet.inches >= INCHES_PER_FOOT) {
    const total = feet.feet * INCHES_PER_FOOT + feet.inches;
    return ask(
      "a foot has twelve inches",
      isHeight(total * METRES_PER_INCH) ? [sayFeet(total)] : [],
      ALLOWED,
    );
  }
  const twice = readTwice(core);
  if (twice) return twice;
  const bare = readBare(core, approximate);
  if (bare) return bare;
  const length = readLength(core);
  if (!length.ok) return reject(length.problem, ALLOWED, length.remedy);
  const height = inMetres(length.value);
  if (within(height, HEIGHT.usual) || (checked && within(height, HEIGHT.possible)))
    return take(height, approximate);
  return unlikely(core, height, length.value.value);
}

/** `5.7 ft` may be 5 feet 7 inches, or 5 feet and seven tenths of one. */
function askAboutDecimalFeet(feet: number, decimals: string): Reading<Metres> {
  const joined =
    Number(decimals) < INCHES_PER_FOOT ? [sayFeet(feet * INCHES_PER_FOOT + Number(decimals))] : [];
  const tenths = (Number(`${feet}.${decimals}`) * INCHES_PER_FOOT * METRES_PER_INCH).toFixed(2);
  return ask("this may be feet and inches, or feet with a decimal", [...joined, `${tenths} m`], ALLOWED);
}

/** The same height in two units, `5'7" (170 cm)`: the first counts, if they agree. */
function readTwice(core: string): Reading<Metres> | undefined {
  const [, first, second] = /^(\S.*?)\s*[/(=]\s*(\S.*?)\)?$/.exec(core) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const [one, other] = [readHeight(first), readHeight(second)];
  if (!one.ok || !other.ok) return undefined;
  if (Math.abs(one.value / other.value - 1) <= SAME_WITHIN) return { ...one, value: one.value };
  return ask("these are two different heights", [first, second], ALLOWED);
}

/** Share by which one height in two units may differ by rounding (judgement). */
const SAME_WITHIN = 0.01;

const isHeight = (metresTall: number): boolean => within(metresTall, HEIGHT.usual);

/** Numbers without a unit, and feet and inches written with another sign. */
function readBare(core: string, approximate: boolean): Reading<Metres> | undefined {
  const feet = /^([3-7])[-. ,](\d\d?)$/.exec(core);
  const inches = feet ? Number(feet[1]) * INCHES_PER_FOOT + Number(feet[2]) : 0;
  if (feet && Number(feet[2]) < INCHES_PER_FOOT && isHeight(inches * METRES_PER_INCH)) {
    return ask("this could be feet and inches, a range or a date", [sayFeet(inches)], ALLOWED);
  }
  if (!/^[\d.,]+$/.test(core)) return undefined;
  const written = writtenNumber(core);
  if (written.kind !== "one") return reject("this is not a height", ALLOWED);
  if (/^[12][.,]\d\d?$/.test(core) && isHeight(written.value)) {
    const said = `${written.value.toFixed(2)} m`;
    return take(metres(written.value), approximate, {
      problem: `only metres are a height here; read as ${said}`,
      readAs: said,
    });
  }
  const proposals = readings(core, written.value);
  return proposals.length > 0
    ? ask("the unit is missing", proposals, ALLOWED)
    : reject("nobody is of this height in any unit", ALLOWED);
}

function unlikely(core: string, height: number, value: number): Reading<Metres> {
  const digits = /[\d.,]+/.exec(core)?.[0] ?? "";
  const proposals = digits.replace(/\D/g, "").length > 1 ? readings(digits, value) : [];
  if (within(height, HEIGHT.possible)) {
    return ask(`${height.toFixed(2)} m is unusual for a person`, [...proposals, `${core} checked`], ALLOWED);
  }
  const problem = `no adult is ${height.toFixed(2)} m tall`;
  return proposals.length > 0 ? ask(problem, proposals, ALLOWED) : reject(problem, ALLOWED);
}

/** Every unit in which the digits are a person's height. */
function readings(digits: string, value: number): readonly string[] {
  const joined = /^([4-7])(\d\d?)$/.exec(digits);
  const inches = joined ? Number(joined[1]) * INCHES_PER_FOOT + Number(joined[2]) : 0;
  const asFeet =
    joined && Number(joined[2]) < INCHES_PER_FOOT && digits.length === 3 ? [sayFeet(inches)] : [];
  const lengths = (["cm", "m", "in"] as const).map((unit) => ({ value, unit }));
  return [...asFeet, ...lengths.filter((length) => isHeight(inMetres(length))).map(sayLength)];
}
