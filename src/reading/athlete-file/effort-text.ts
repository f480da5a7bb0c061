import { lengthUnit } from "../quantities/length.ts";
import { plainText } from "../quantities/plain-text.ts";
import type { Reading } from "../quantities/reading.ts";
import { readTime } from "../quantities/time.ts";
import { NUMBER } from "../quantities/written-number.ts";
import type { Seconds } from "../../models/quantity.ts";

/** One fact of an effort line, cut into its pieces but not yet understood. */
export type EffortText = {
  readonly movement: string;
  readonly amount: string;
  /** `m`, `km`, `cal`, `reps`...; empty when none is written. */
  readonly unit: string;
  readonly load?: string;
  readonly time: Reading<Seconds>;
  readonly approximate: boolean;
};

const MASS = String.raw`(?:2\s*[x×]\s*)?~?\d[\d.,]*\s*(?:kgs?|lbs?|#|pounds?|kilos?)`;
const LOAD = new RegExp(String.raw`\s*(?:\b(?:at|with|x)\s+|@\s*|\()?(${MASS})(?!\w)\)?`, "i");
const BARE_LOAD = /\s*(?:\b(?:at|with)\s+|@\s*)(~?\d[\d.,]*)\s*$/i;
const REPS_AND_CALORIES = /^(?:reps?|cals?|kcal|calories?)\.?$/i;

/** Cuts a line at commas and semicolons where a new amount begins: `2k row 7:05, 5k 19:50`. */
export function splitFacts(line: string): readonly string[] {
  return plainText(line)
    .split(/(?:;|,)\s+(?=~?\d[\d.,]*\s*(?:k|km|m|cal|reps?)?\b(?![-/.]\d|\.\s)(?=.*[:\d]))/i)
    .map((fact) => fact.trim())
    .filter((fact) => fact !== "");
}

/** Cuts one fact into movement, amount, load and time, in whatever order amount and movement stand. */
export function cutEffort(fact: string): EffortText | { readonly missing: "time" | "amount" } {
  const ordered = mostInTime(fact) ?? fact;
  const timed = cutTime(ordered) ?? cutClock(ordered);
  if (!timed) return { missing: endsInTime(ordered) ? "amount" : "time" };
  const load = LOAD.exec(timed.rest) ?? BARE_LOAD.exec(timed.rest);
  const rest = load
    ? `${timed.rest.slice(0, load.index)} ${timed.rest.slice(load.index + load[0].length)}`
    : timed.rest;
  const amount = cutAmount(rest);
  if (!amount) return { missing: "amount" };
  return {
    ...amount,
    ...(load?.[1] === undefined ? {} : { load: load[1] }),
    time: timed.time,
    approximate: /~|\babout\b|\bca\.?\s/i.test(fact),
  };
}

/** `max pull-ups in 2:00: 34` in the usual order; nothing where the fact has another form. */
function mostInTime(fact: string): string | undefined {
  const [, what, amount] = /^(?:max\.?|most|amrap|as many)\s+(.*?)\s*[:=]\s+(~?\d[^:]*)$/i.exec(fact) ?? [];
  if (what === undefined || amount === undefined) return undefined;
  const words = what.split(" ");
  for (let length = words.length; length > 0; length--) {
    for (let start = 0; start + length <= words.length; start++) {
      const time = words.slice(start, start + length).join(" ");
      const others = [...words.slice(0, start), ...words.slice(start + length)].filter(
        (word) => !/^in$/i.test(word),
      );
      if (readTime(time).ok) return `${amount} ${others.join(" ")} in ${time}`;
    }
  }
  return undefined;
}

type Timed = { readonly rest: string; readonly time: Reading<Seconds> };

/** `1:53/500m`, alone at the end. */
const PACE = /^\d{1,2}:\d\d(?:[.,]\d+)?\s*(?:\/|per)\s*(?:\d+\s*m|km|k)$/i;

const CLOCKS = /\d*:\d\d(?:[.,]\d+)?/g;

/** The time stands last, after `in` or on its own: the longest end that reads as one and leaves an amount in front. */
function cutTime(fact: string): Timed | undefined {
  const marked =
    /^(.*\d.*?)\s+(?:in|within)\s+(.+)$/i.exec(fact) ?? /^(.*\d.*?)\s*(?:=|-|:)\s+(.+)$/i.exec(fact);
  if (marked) {
    const time = readTime(marked[2] ?? "");
    if (time.ok || time.severity === "question" || / in /i.test(fact)) return { rest: marked[1] ?? "", time };
  }
  const words = fact.split(" ");
  let doubtful: Timed | undefined;
  for (let start = 1; start < words.length; start++) {
    const rest = words.slice(0, start).join(" ");
    if (!/\d/.test(rest.replace(CLOCKS, ""))) continue;
    const time = readTime(words.slice(start).join(" "));
    if (time.ok) return { rest, time };
    if (time.severity === "question" || PACE.test(words.slice(start).join(" "))) doubtful ??= { rest, time };
  }
  return doubtful;
}

/** A clock that stands elsewhere, `7:05 row 2000 m`. */
function cutClock(fact: string): Timed | undefined {
  const words = fact.split(" ");
  const at = words.findIndex((word) => /^~?\d+:\d\d(?:[.,]\d+)?$/.test(word));
  const rest = words.filter((_word, index) => index !== at).join(" ");
  return at === -1 || !/\d/.test(rest) ? undefined : { rest, time: readTime(words[at] ?? "") };
}

const endsInTime = (fact: string): boolean =>
  /\d:\d\d/.test(fact) ||
  fact.split(" ").some((_word, index, words) => readTime(words.slice(index).join(" ")).ok);

function cutAmount(text: string): Pick<EffortText, "movement" | "amount" | "unit"> | undefined {
  const match = new RegExp(String.raw`(?:^|\s)~?(${NUMBER})\s*(?:-\s*)?([a-z"']+\.?)?(?=\s|$)`, "i").exec(
    text.replace(/\babout\b/gi, " "),
  );
  if (!match) return undefined;
  const [whole, amount = "", word = ""] = match;
  const isUnit = lengthUnit(word.replace(/\.$/, "")) !== undefined || REPS_AND_CALORIES.test(word);
  const cleaned = text.replace(/\babout\b/gi, " ");
  const before = cleaned.slice(0, match.index);
  const after = cleaned.slice(match.index + whole.length);
  const movement = `${before} ${isUnit ? "" : word} ${after}`
    .replace(/\b(?:of|for time|max|reps?)\b/gi, " ")
    .replace(/[:,=]+/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  return { amount, unit: isUnit ? word.replace(/\.$/, "") : "", movement };
}
