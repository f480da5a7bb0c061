import { nearestName } from "../../models/nearest.ts";
import { inKilograms, type Mass, type MassUnit } from "../../models/quantity.ts";
import { takeDoubtOff, type Doubt } from "./doubt.ts";
import { ask, reject, take, type NotTaken, type Reading } from "./reading.ts";
import { NUMBER, sayNumber, writtenNumber } from "./written-number.ts";

/** What a reader may know beside the text. */
export type MassContext = {
  /** Unit of the sheet, the column or the name of the entry, for numbers without one. */
  readonly unit?: MassUnit | undefined;
  /** Whether so many kilograms are possible here; settles what a sign or a missing unit leaves open. */
  readonly plausible?: (kilograms: number) => boolean;
  /** The unit to propose first where one is missing. */
  readonly likely?: MassUnit | undefined;
};

const ALLOWED = "a number with kg or lb, such as `102.5 kg` or `225 lb`";
const POUNDS_PER_STONE = 14;

const UNIT_WORDS: Readonly<Record<string, MassUnit | "g">> = {
  kg: "kg",
  kgs: "kg",
  kilo: "kg",
  kilos: "kg",
  kilogram: "kg",
  kilograms: "kg",
  kilogramme: "kg",
  kilogrammes: "kg",
  kilogramm: "kg",
  кг: "kg",
  公斤: "kg",
  lb: "lb",
  lbs: "lb",
  "#": "lb",
  pound: "lb",
  pounds: "lb",
  livres: "lb",
  g: "g",
  gr: "g",
  gram: "g",
  grams: "g",
};

/** A mass as people write it. @example sayMass({ value: 102.5, unit: "kg" }) // => "102.5 kg" */
export const sayMass = (mass: Mass): string => `${sayNumber(mass.value)} ${mass.unit}`;

/**
 * Reads a mass: `102,5 kg`, `225 lb`, `315#`, `11 st 4 lb`, `~90 kg`. A number without a unit, a range and a bound are
 * asked about. The value keeps its own unit.
 */
export function readMass(text: string, context: MassContext = {}): Reading<Mass> {
  const doubt = takeDoubtOff(text);
  const mass = readCore(doubt, context);
  if (doubt.bound && mass.ok) {
    return ask("this is a bound, not a result", [sayMass(mass.value), `~${sayMass(mass.value)}`], ALLOWED);
  }
  return mass.ok ? { ...mass, approximate: doubt.approximate } : mass;
}

function readCore(doubt: Doubt, context: MassContext): Reading<Mass> {
  const { core, range } = doubt;
  if (core === "") return reject("the mass is missing", ALLOWED);
  if (range) return askAboutRange(range, context);
  const twice = readTwice(core);
  if (twice) return twice;
  const stones = readStones(core);
  if (stones) return stones;
  const match = new RegExp(`^(${NUMBER})\\s*(\\S.*?)?\\.?$`).exec(core);
  if (!match) return notANumber(core, context);
  const [, number = "", word] = match;
  if (word === undefined) return readNumber(number, context.unit, context);
  const unit = Object.hasOwn(UNIT_WORDS, word.toLowerCase()) ? UNIT_WORDS[word.toLowerCase()] : undefined;
  if (unit === "g") return readGrams(number);
  return unit === undefined ? unknownUnit(core, number, word, context) : readNumber(number, unit, context);
}

function readNumber(number: string, unit: MassUnit | undefined, context: MassContext): Reading<Mass> {
  const written = writtenNumber(number);
  if (written.kind === "none") return reject("this is not a number", ALLOWED);
  const values = written.kind === "one" ? [written.value] : [written.decimal, written.grouped];
  if (values.some((value) => value <= 0)) return reject("a mass is more than nothing", ALLOWED);
  const units: readonly MassUnit[] = unit === undefined ? bothUnits(context) : [unit];
  const masses = values.flatMap((value) => units.map((each): Mass => ({ value, unit: each })));
  const { plausible } = context;
  const possible = plausible ? masses.filter((mass) => plausible(inKilograms(mass))) : masses;
  const likely = possible.length > 0 ? possible : masses;
  if (unit === undefined) return ask("the unit is missing", likely.map(sayMass), ALLOWED);
  const [mass] = likely;
  if (mass === undefined || likely.length > 1) {
    return ask(TWO_SIGNS, likely.map(sayMass), ALLOWED);
  }
  return take(mass);
}

/** Both units of mass, the likelier first. */
export const bothUnits = ({ likely }: MassContext): readonly MassUnit[] =>
  likely === "lb" ? ["lb", "kg"] : ["kg", "lb"];

const TWO_SIGNS = "the sign in the number may group thousands or begin decimals";
const GRAMS_PER_KILOGRAM = 1000;

function readGrams(number: string): Reading<Mass> {
  const written = writtenNumber(number);
  if (written.kind === "either") {
    return ask(TWO_SIGNS, [`${written.grouped} g`, `${sayNumber(written.decimal)} g`], ALLOWED);
  }
  if (written.kind === "none" || written.value <= 0) return reject("a mass is more than nothing", ALLOWED);
  return take({ value: written.value / GRAMS_PER_KILOGRAM, unit: "kg" });
}

function askAboutRange([from, to]: readonly [string, string], context: MassContext): NotTaken {
  if (takeDoubtOff(from).range) return reject("this is neither one mass nor a range of two", ALLOWED);
  const high = readMass(to, context);
  const unit = high.ok ? high.value.unit : context.unit;
  const lows = (unit === undefined ? bothUnits(context) : [unit]).map((each) =>
    readMass(from, { unit: each }),
  );
  const proposals = lows.flatMap((low) => (low.ok ? [`~${sayMass(low.value)}`] : []));
  return proposals.length === 0
    ? reject("this is neither one mass nor a range of two", ALLOWED)
    : ask("this is a range; a plan needs one number, and the lower one is the safer", proposals, ALLOWED);
}

/** The same mass in both units, `100 kg / 220 lb`: the first counts, if they agree. */
function readTwice(core: string): Reading<Mass> | undefined {
  const [, first, second] = /^(\S.*?(?:kgs?|lbs?|#))\s*[/(=]\s*(\S.*?(?:kgs?|lbs?|#))\)?$/i.exec(core) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const [one, other] = [readMass(first), readMass(second)];
  if (!one.ok || !other.ok) return undefined;
  if (Math.abs(inKilograms(one.value) / inKilograms(other.value) - 1) <= SAME_WITHIN) return one;
  return ask("these are two different masses", [sayMass(one.value), sayMass(other.value)], ALLOWED);
}

/** Share by which one mass in two units may differ by rounding (judgement). */
const SAME_WITHIN = 0.015;

function readStones(core: string): Reading<Mass> | undefined {
  const match = /^(\d+)\s*(?:st|stone|stones)\.?(?:,?\s*(\d+(?:[.,]\d+)?)\s*(?:lbs?|pounds?)?\.?)?$/i.exec(
    core,
  );
  if (!match) return undefined;
  const pounds = Number((match[2] ?? "0").replace(",", "."));
  return take({ value: Number(match[1]) * POUNDS_PER_STONE + pounds, unit: "lb" });
}

function unknownUnit(core: string, number: string, word: string, context: MassContext): NotTaken {
  if (/^k$/i.test(word)) return ask("k stands for kilo or for a thousand", [`${number} kg`], ALLOWED);
  if (word.startsWith("%")) return reject("a share says nothing without what it is a share of", ALLOWED);
  if (/^poods?$/i.test(word)) {
    const kilograms = Number(number.replace(",", ".")) * 16;
    return ask("a pood is made as 16 kg", [`${sayNumber(kilograms)} kg`], ALLOWED);
  }
  const mended = mendDigits(core, context);
  if (mended) return mended;
  if (/\d/.test(word)) return amongWords(core, context) ?? reject("this is more than one number", ALLOWED);
  const [, unit = "", behind] = /^(kgs?|lbs?|#)[.,]?\s+(.+)$/i.exec(word) ?? [];
  if (behind !== undefined) {
    const known = UNIT_WORDS[unit.toLowerCase()] ?? "kg";
    return ask(`"${behind}" behind the mass is not understood`, [`${number} ${known}`], ALLOWED);
  }
  const nearest = nearestName(word, ["kg", "kilos", "lb", "lbs", "pounds"]);
  if (nearest === undefined)
    return amongWords(core, context) ?? reject(`"${word}" is no unit of mass`, ALLOWED);
  return ask(`"${word}" is no unit of mass`, [`${number} ${UNIT_WORDS[nearest] ?? nearest}`], ALLOWED);
}

function notANumber(core: string, context: MassContext): NotTaken {
  const pounds = /^#\s*(\d[\d.,]*)$/.exec(core);
  if (pounds)
    return ask(
      '"#" before a number usually counts, behind it means pounds',
      [`${pounds[1] ?? ""} lb`],
      ALLOWED,
    );
  return mendDigits(core, context) ?? amongWords(core, context) ?? reject("this is not a mass", ALLOWED);
}

/** A letter O or l typed among the digits. */
function mendDigits(core: string, context: MassContext): NotTaken | undefined {
  const digits = core
    .replace(/(?<=\d)[oO](?=[\d.,\s]|$)/g, "0")
    .replace(/^[lI](?=\d)|(?<=\d)[lI](?=\d)/g, "1");
  const mass = digits === core ? undefined : readMass(digits, context);
  return mass?.ok === true
    ? ask("a letter stands among the digits", [sayMass(mass.value)], ALLOWED)
    : undefined;
}

/** More loads than this in one text are a table of its own. */
const MOST_MASSES = 3;

/** Asks which of the masses among words is meant: `missed 110, made 105`. Nothing where a number can be no mass here. */
function amongWords(core: string, { unit, plausible, likely }: MassContext): NotTaken | undefined {
  if (!plausible || /%|\d\s*:\s*\d/.test(core)) return undefined;
  const found = [
    ...core.matchAll(/(?<![\d.,])(\d+(?:[.,]\d{1,2})?)(?![\d.,]*\d)\s*(kgs?|kilos?|lbs?|pounds?|#)?/gi),
  ];
  if (found.length === 0 || found.length > MOST_MASSES) return undefined;
  const masses = found.flatMap(([, number = "", word]): readonly Mass[] => {
    const value = Number(number.replace(",", "."));
    const own = word === undefined ? unit : UNIT_WORDS[word.toLowerCase()];
    const units = own === "kg" || own === "lb" ? [own] : bothUnits({ likely });
    return units.map((each) => ({ value, unit: each }));
  });
  if (!masses.every((mass) => plausible(inKilograms(mass)))) return undefined;
  return ask(
    found.length > 1 ? "this is more than one number" : "the words beside the number are not understood",
    masses.map(sayMass),
    ALLOWED,
  );
}
