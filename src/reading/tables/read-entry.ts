import { parse } from "yaml";
import type { Athlete } from "../../models/athlete.ts";
import { comparable } from "../../models/nearest.ts";
import { answerWord } from "../quantities/answer-word.ts";
import { plainText } from "../quantities/plain-text.ts";
import { takeRemarkOff } from "../quantities/remark.ts";
import { asked, type CellReading, type Put } from "./cell-reading.ts";
import { type CellContext, fromFile } from "./from-file.ts";

/** Bare numbers that are a person's height in centimetres and in no other unit. */
const ONLY_CENTIMETRES = /^(?:1[3-9]\d|20\d|21[0-5])(?:[.,]\d)?$/;

/** Entries whose cells are words and stay as they were written. */
const WORDS: readonly string[] = ["note", "limits", "share name", "group"];
/** Answers to a question that was not the one asked: the entry is left out. */
const NEITHER = /^(?:x|nb|non-?binary|diverse?|other|neither)$/i;

/** Reads a cell of an entry that holds one value, or words. */
export function readEntry(
  entry: string,
  written: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const text = WORDS.includes(entry) ? written : plainText(written);
  if (!WORDS.includes(entry) && answerWord(text) === "unknown") return { kind: "nothing" };
  const single = (value: (athlete: Athlete) => string | undefined, given: unknown = text): CellReading =>
    fromFile({ [entry]: given }, context, (athlete) => {
      const said = value(athlete);
      return said === undefined ? [] : [{ entry, value: said }];
    });
  const bare = /^[~\d.,\s]+(?:-?ish|\?)?$/i.test(text);
  const isCentimetres = entry === "height" && unit === undefined && ONLY_CENTIMETRES.test(text);
  const ownUnit = isCentimetres ? "cm" : unit;
  const withUnit = bare && ownUnit !== undefined ? `${text} ${ownUnit}` : text;
  switch (entry) {
    case "level":
      return askedIfRefused(single(({ level }) => level, text.toLowerCase()));
    case "sex":
      return NEITHER.test(text) ? { kind: "nothing" } : askedIfRefused(readSex(text, context));
    case "body mass":
      return single(
        ({ bodyMass }) => (bodyMass === undefined ? undefined : tidy(takeRemarkOff(withUnit))),
        withUnit,
      );
    case "height":
      return single(
        ({ height }) =>
          height === undefined
            ? undefined
            : /['"′″’]|ft|feet|in/i.test(withUnit)
              ? withUnit
              : `${Math.round(height * 1000) / 10} cm`,
        withUnit,
      );
    case "born":
      return single(({ birthYear }) => (birthYear === undefined ? undefined : String(birthYear)));
    case "gym": {
      const gym = context.gyms.find((id) => comparable(id) === comparable(text));
      return single(({ gym: read }) => read, gym ?? text);
    }
    case "limits":
      return readLimits(text, context);
    case "habits":
      return fromFile({ habits: text }, context, ({ habits }) =>
        habits.length === 0
          ? []
          : [{ entry: "habits", value: habits.map((one) => one.replaceAll("-", " ")).join(", ") }],
      );
    case "note":
      return single(({ note }) => note);
    default:
      return single(() => text);
  }
}

/** A word nobody knows is asked about, once for all cells that hold it. */
const askedIfRefused = (reading: CellReading): CellReading =>
  reading.kind === "refused" ? asked(reading.problem, []) : reading;

const SEX: Readonly<Record<string, string>> = {
  f: "female",
  w: "female",
  k: "female",
  v: "female",
  vrouw: "female",
  dame: "female",
  damen: "female",
  woman: "female",
  women: "female",
  girl: "female",
  female: "female",
  frau: "female",
  weiblich: "female",
  femme: "female",
  mujer: "female",
  kvinne: "female",
  kvinna: "female",
  kobieta: "female",
  "♀": "female",
  m: "male",
  man: "male",
  men: "male",
  male: "male",
  boy: "male",
  mann: "male",
  herr: "male",
  männlich: "male",
  homme: "male",
  hombre: "male",
  h: "male",
  herre: "male",
  herren: "male",
  herrer: "male",
  mężczyzna: "male",
  "♂": "male",
};

/** In a column of sexes a letter says enough. */
function readSex(text: string, context: CellContext): CellReading {
  const sex = Object.hasOwn(SEX, text.toLowerCase()) ? SEX[text.toLowerCase()] : undefined;
  if (sex === undefined)
    return fromFile({ sex: text }, context, ({ sex: read }) => (read ? [{ entry: "sex", value: read }] : []));
  return { kind: "taken", puts: [{ entry: "sex", value: sex }] };
}

function readLimits(text: string, context: CellContext): CellReading {
  if (/^(?:-+|n\/?a|\?)$/i.test(text)) return { kind: "nothing" };
  if (
    /^(?:none|no|nothing|nil|nei|nej|nein|nie|non|keine|keiner|aucune|aucun|ingen|inga|ninguna|nessuna|0|healthy|all good|ok|okay|fine|all fine)\.?$/i.test(
      text,
    )
  )
    return { kind: "taken", puts: [{ entry: "limits", value: "none" }] };
  const given = /^[{[]/.test(text) ? flowOf(text) : [text];
  return fromFile({ limits: given ?? [text] }, context, ({ limits }) =>
    limits.length === 0
      ? [{ entry: "limits", value: "none" }]
      : (Array.isArray(given) ? given : [given]).map((value): Put => ({
          entry: "limits",
          listed: true,
          value: value as Put["value"],
        })),
  );
}

/** `102,5kg` as `102.5 kg`. */
const tidy = (text: string): string =>
  text
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/^(\d[\d.]*)-?ish\b/i, "~$1")
    .replace(
      /(\d)\s*(kgs?|kilos?|lbs?|pounds?|#)\.?$/i,
      (_all, digit: string, word: string) => `${digit} ${/^k/i.test(word) ? "kg" : "lb"}`,
    );

function flowOf(text: string): unknown {
  try {
    return parse(text) as unknown;
  } catch {
    return undefined;
  }
}
