import { parse, stringify } from "yaml";
import type { Athlete } from "../../models/athlete.ts";
import type { Checked, Fault } from "../../models/fault.ts";
import { comparable } from "../../models/nearest.ts";
import type { FindMovement } from "../names/find-movement.ts";
import { answerWord } from "../quantities/answer-word.ts";
import { asked, type CellReading, type Put, refused } from "./cell-reading.ts";
import type { Meaning } from "./meaning.ts";
import { mendText } from "./mend-text.ts";
import { readResult } from "./read-result.ts";
import { sayEffort, sayLift, sayUnbroken } from "./say-values.ts";

/** What cells are read with. The reader of athlete files judges every value, so that a table and a file agree. */
export type CellContext = {
  readonly read: (text: string) => Checked<Athlete>;
  readonly findMovement: FindMovement;
  readonly gyms: readonly string[];
  /** Day of the tests of this row, as written. */
  readonly tested?: string;
  /** What `cap+28` counts in this table. */
  readonly capped?: "left" | "done";
  /** Time of the workout whose splits are read, seconds, where a cell beside says it. */
  readonly total?: number;
};

const FAILED_FORMULA = /^#(?:REF!|N\/A|VALUE!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA)/i;

/** Reads a cell by what its column holds. `unit` is that of the column for numbers without one. */
export function readCell(
  meaning: Meaning,
  written: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const text = written.trim();
  if (text === "" || meaning.kind === "passed over" || meaning.kind === "unclear") return { kind: "nothing" };
  if (FAILED_FORMULA.test(text))
    return refused(
      "a formula of the table failed here, and what stood there is lost",
      "Type the value itself.",
    );
  const mended = mendText(text);
  if (mended.kind === "lost")
    return refused(
      "letters were lost when the table was saved",
      "Type the text again, or save the table as UTF-8.",
    );
  if (mended.kind === "garbled") return asked("letters were garbled when the table was saved", [mended.text]);
  return readPlain(meaning, betweenAsRange(text), unit, context);
}

/** `between 80 and 85` is a range. */
const betweenAsRange = (text: string): string =>
  text.replace(/^between\s+(\S+)\s+and\s+(.+)$/i, "$1-$2").replace(/^from\s+(\d\S*)\s+to\s+(.+)$/i, "$1-$2");

function readPlain(
  meaning: Meaning,
  text: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  switch (meaning.kind) {
    case "entry":
      return readEntry(meaning.entry, text, meaning.unit ?? unit, context);
    case "lift":
      return readLift(meaning, text, unit, context);
    case "unbroken":
      return fromFile(
        { unbroken: { [meaning.movement]: text } },
        context,
        ({ unbroken: [set], cannot: [no] }) => {
          if (set) {
            const metres = isMetres(meaning.movement, context);
            return [{ entry: "unbroken", key: meaning.movement, value: sayUnbroken(set, metres) }];
          }
          return no === undefined ? [] : [{ entry: "unbroken", key: meaning.movement, value: "none" }];
        },
      );
    case "effort":
      return readEffort(meaning, text, unit, context);
    case "efforts":
      return readEfforts(meaning.movement, text, context);
    case "start":
      return fromFile({ starts: { [meaning.workout]: text } }, context, ({ starts: [start] }) =>
        start
          ? [
              {
                entry: "starts",
                key: meaning.workout,
                value: `${start.at.replace("T", " ")}${start.zone === undefined ? "" : ` ${start.zone}`}`,
              },
            ]
          : [],
      );
    case "result":
    case "attempts":
    case "splits":
      return readResult(meaning, text, unit, context, (entry) =>
        fromFile({ results: [entry] }, context, ({ results: [result] }) =>
          result ? [{ entry: "results", listed: true, value: entry }] : [],
        ),
      );
    default:
      return { kind: "nothing" };
  }
}

function readLift(
  meaning: Meaning & { readonly kind: "lift" },
  text: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const { movement, reps } = meaning;
  const loadUnit = meaning.unit ?? unit;
  const name = `${movement}${reps === undefined ? "" : ` ${reps}RM`}${loadUnit === undefined ? "" : ` (${loadUnit})`}`;
  const value =
    context.tested === undefined || /\(.*\d.*\)|\d{4}-\d\d-\d\d/.test(text)
      ? text
      : { best: text, tested: context.tested };
  return fromFile({ lifts: { [name]: value } }, context, ({ lifts: [lift], cannot: [no] }) => {
    if (lift) return [{ entry: "lifts", key: movement, value: sayLift(lift) }];
    return no === undefined ? [] : [{ entry: "lifts", key: movement, value: "none" }];
  });
}

function readEffort(
  { before, behind }: Meaning & { readonly kind: "effort" },
  text: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const word = answerWord(text);
  if (word === "unknown" || word === "cannot") return { kind: "nothing" };
  if (word === "unclear") return asked("this can mean not known or not done", ["?"]);
  const named = /^\d[\d.,]*$/.test(text) && unit !== undefined && before !== "" ? `${text} ${unit}` : text;
  // A cell may say all of it again, or hold several facts of its own.
  const words = text
    .replace(/[\d:.,~()]+\s*(?:k|km|m|cals?|reps?)?\b/gi, " ")
    .replace(/\s+/g, " ")
    .trim();
  const isWhole = words !== "" && context.findMovement(words.split(" ")[0] ?? "").kind === "found";
  const line = isWhole ? text : `${before}${named}${behind}`;
  if (before !== "" && /^\d+[.,]\d+(?:\s*(?:min|m|'))?$/i.test(named)) return askAboutDecimals(named);
  return effortsOf([line], context);
}

/** `7.32` may be 7:32, or seven minutes and a third. */
function askAboutDecimals(text: string): CellReading {
  const [, whole = "", decimals = ""] = /^(\d+)[.,](\d+)/.exec(text) ?? [];
  const seconds = Math.round(Number(`0.${decimals}`) * 60);
  const proposals = [
    ...(decimals.length === 2 && Number(decimals) < 60 ? [`${whole}:${decimals}`] : []),
    ...(decimals.length === 1 ? [`${whole}:${decimals}0`] : []),
    `${whole}:${String(seconds).padStart(2, "0")}`,
  ];
  return asked("this may be minutes and seconds, or minutes with a decimal", [...new Set(proposals)]);
}

function readEfforts(movement: string, text: string, context: CellContext): CellReading {
  const word = answerWord(text);
  if (word === "unknown") return { kind: "nothing" };
  const found = context.findMovement(text.replace(/[\d:.,~]+\s*(?:k|km|m|cals?)?/gi, " ").trim());
  const facts = text
    .split(/[;,]\s+/)
    .map((fact) => (found.kind === "found" || /[a-z]{3,}/i.test(fact) ? fact : `${movement} ${fact}`));
  return effortsOf(facts, context);
}

function effortsOf(lines: readonly string[], context: CellContext): CellReading {
  const { tested } = context;
  const dated = lines.map((effort) => (tested === undefined ? effort : { effort, tested }));
  return fromFile({ efforts: dated }, context, ({ efforts }) =>
    efforts.map((effort): Put => {
      const found = context.findMovement(effort.movement);
      const [name, plural] =
        found.kind === "found"
          ? [found.movement.name, found.movement.plural]
          : [effort.movement, effort.movement];
      return { entry: "efforts", listed: true, value: sayEffort(effort, name, plural) };
    }),
  );
}

const isMetres = (name: string, { findMovement }: CellContext): boolean => {
  const found = findMovement(name);
  return found.kind === "found" && found.movement.counts[0] === "metres";
};

/** Bare numbers that are a person's height in centimetres and in no other unit. */
const ONLY_CENTIMETRES = /^(?:1[3-9]\d|20\d|21[0-5])$/;
const UNKNOWN = /^(?:n\/?a|-+|\?+|tbd|unknown)$/i;

function readEntry(entry: string, text: string, unit: string | undefined, context: CellContext): CellReading {
  if (entry !== "limits" && UNKNOWN.test(text)) return { kind: "nothing" };
  const single = (value: (athlete: Athlete) => string | undefined, given: unknown = text): CellReading =>
    fromFile({ [entry]: given }, context, (athlete) => {
      const said = value(athlete);
      return said === undefined ? [] : [{ entry, value: said }];
    });
  const bare = /^[~\d.,\s]+$/.test(text);
  const isCentimetres = entry === "height" && unit === undefined && ONLY_CENTIMETRES.test(text);
  const ownUnit = isCentimetres ? "cm" : unit;
  const withUnit = bare && ownUnit !== undefined ? `${text} ${ownUnit}` : text;
  switch (entry) {
    case "level":
      return single(({ level }) => level, text.toLowerCase());
    case "sex":
      return readSex(text, context);
    case "body mass":
      return single(({ bodyMass }) => (bodyMass === undefined ? undefined : tidy(withUnit)), withUnit);
    case "height":
      return single(
        ({ height }) =>
          height === undefined
            ? undefined
            : /['"′″’]|ft|feet|in/i.test(withUnit)
              ? withUnit
              : `${Math.round(height * 100)} cm`,
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

const SEX: Readonly<Record<string, string>> = {
  f: "female",
  w: "female",
  woman: "female",
  women: "female",
  girl: "female",
  female: "female",
  frau: "female",
  m: "male",
  man: "male",
  men: "male",
  male: "male",
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
  if (/^(?:none|no|nothing|nil|keine|aucune|0|healthy|all good)\.?$/i.test(text))
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

/** Writes an entry into an athlete file of its own and lets the reader of athlete files judge it. */
function fromFile(
  entries: Readonly<Record<string, unknown>>,
  { read }: CellContext,
  puts: (athlete: Athlete) => readonly Put[],
): CellReading {
  const level = "level" in entries ? {} : { level: "regular" };
  const checked = read(stringify({ name: "Somebody", ...level, ...entries }));
  if (!checked.ok) return unread(checked.faults);
  const told = checked.notices.map(({ problem }) => problem).join("; ");
  const given = puts(checked.value);
  return given.length === 0
    ? { kind: "nothing" }
    : { kind: "taken", puts: given, ...(told === "" ? {} : { told }) };
}

/** A fault refuses and a question asks; a refusal that names the nearest correct text is asked about too. */
export function unread(faults: readonly Fault[]): CellReading {
  const fault = faults.find(({ severity }) => severity === "fault");
  const question = faults.find(({ severity }) => severity === "question");
  const worst = fault ?? question;
  if (!worst) return { kind: "nothing" };
  const proposals = fault?.nearest === undefined ? proposalsIn(worst.remedy) : [fault.nearest];
  const isAnswer =
    fault === undefined || fault.nearest !== undefined || /^Write `[^`]+`\.$/.test(fault.remedy);
  return isAnswer ? asked(worst.problem, proposals) : refused(worst.problem, worst.remedy);
}

/** What a remedy proposes to write, between backticks. */
const proposalsIn = (remedy: string): readonly string[] =>
  [...remedy.matchAll(/`([^`]+)`/g)].map(([, text = ""]) => text).filter((text) => !/^[a-z ]+: /.test(text));
