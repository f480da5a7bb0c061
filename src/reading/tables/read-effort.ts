import { answerWord } from "../quantities/answer-word.ts";
import { plainText } from "../quantities/plain-text.ts";
import { clockAmongWords, readTime, sayTime } from "../quantities/time.ts";
import { asked, type CellReading, type Put } from "./cell-reading.ts";
import { type CellContext, fromFile, proposalsIn } from "./from-file.ts";
import type { Meaning } from "./meaning.ts";
import { sayEffort } from "./say-values.ts";

/** Reads a cell below a heading that says what was done, or in which time. */
export function readEffort(
  { before, behind }: Meaning & { readonly kind: "effort" },
  written: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const text = before === "" ? written : withoutHeading(written, before);
  const word = answerWord(text);
  if (word === "unknown" || word === "cannot") return { kind: "nothing" };
  if (word === "unclear") return asked("this can mean not known or not done", ["?"]);
  const range = before === "" ? /^(\d{1,4})\s*[-–—]\s*(\d{1,4})$/.exec(text) : null;
  if (range)
    return asked("this is a range; a plan needs one number, and the lower one is the safer", [
      `~${range[1] ?? ""}`,
    ]);
  const named = /^\d[\d.,]*$/.test(text) && unit !== undefined && before !== "" ? `${text} ${unit}` : text;
  // A cell may say all of it again, or hold several facts of its own.
  const words = text
    .replace(/[\d:.,~()]+\s*(?:k|km|m|cals?|reps?)?\b/gi, " ")
    .replace(/\s+/g, " ")
    .trim();
  const isWhole = words !== "" && context.findMovement(words.split(" ")[0] ?? "").kind === "found";
  const line = isWhole ? text : `${before}${named}${behind}`;
  if (before !== "" && /^\d+[.,]\d+(?:\s*(?:min|m|'))?$/i.test(named)) return askAboutDecimals(named);
  const reading = effortsOf([line], context);
  if (reading.kind !== "refused" || before === "") return reading;
  // The heading says what is timed, so a time in doubt is asked about as a time.
  const time = readTime(named);
  const doubt = time.ok || time.severity === "fault" ? clockAmongWords(named) : time;
  return doubt ? asked(doubt.problem, proposalsIn(doubt.remedy)) : reading;
}

/** A time without what the heading says already: `2k in 7:32` in a column of 2k rows, `in 7:32`. */
function withoutHeading(text: string, before: string): string {
  const amount = before.split(" ")[0]?.toLowerCase() ?? "";
  const own = plainText(text);
  const rest = amount !== "" && own.toLowerCase().startsWith(`${amount} `) ? own.slice(amount.length) : own;
  return rest.replace(/^\s*(?:in|:|=)\s+/i, "").trim();
}

/** Seconds of a day, and the most and least that anybody is timed over. */
const DAY = 86_400;
const TIMED = [20, 3 * 3600] as const;

/** `0.005382`: spreadsheets keep a time as a part of a day, minutes and seconds often as hours and minutes. */
function partOfDay(text: string): readonly string[] {
  const part = /^0?[.,]\d{3,}$/.test(text) ? Number(text.replace(",", ".")) : NaN;
  return [part * DAY, (part * DAY) / 60]
    .map((time) => Math.round(time * 10) / 10)
    .filter((time) => time >= TIMED[0] && time <= TIMED[1])
    .map(sayTime);
}

/** `7.32` may be 7:32, or seven minutes and a third. */
function askAboutDecimals(text: string): CellReading {
  const times = partOfDay(text);
  if (times.length > 0) return asked("this is a part of a day, as spreadsheets keep times", times);
  const [, whole = "", decimals = ""] = /^(\d+)[.,](\d+)/.exec(text) ?? [];
  const seconds = Math.round(Number(`0.${decimals}`) * 60);
  const proposals = [
    ...(decimals.length === 2 && Number(decimals) < 60 ? [`${whole}:${decimals}`] : []),
    ...(decimals.length === 1 ? [`${whole}:${decimals}0`] : []),
    `${whole}:${String(seconds).padStart(2, "0")}`,
  ];
  return asked("this may be minutes and seconds, or minutes with a decimal", [...new Set(proposals)]);
}

/** Reads facts in words, of this movement where a fact names none. */
export function readEfforts(movement: string, text: string, context: CellContext): CellReading {
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
