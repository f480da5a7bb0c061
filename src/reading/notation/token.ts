import type { Path } from "../yaml/open-yaml.ts";
import { LARGEST_READ } from "./work-bounds.ts";

/** A text of a file: the value of an entry, or (`isName`) the name of one. */
export type TextSource = { readonly text: string; readonly path: Path; readonly isName: boolean };

/**
 * The smallest piece of a text. `value` is that of a number, or the seconds of a clock such as 9:00. Signs are one
 * character each; dashes of any length are `-`, a multiplication sign is `x`.
 */
export type Token = {
  readonly kind: "number" | "clock" | "word" | "sign";
  /** As compared: words in lower case, signs in their plain form. */
  readonly text: string;
  readonly value: number;
  readonly source: TextSource;
  /** Characters from the start of the source to the first of this piece, and to the first after it. */
  readonly offset: number;
  readonly end: number;
  /** Where the word of `by division:` stands that this piece was put in for. */
  readonly use?: Pick<Token, "source" | "offset">;
};

const CLOCK = /\d+(?::\d+)+(?:[.,]\d+)?/y;
const NUMBER = /\d+(?:[.,]\d+)*/y;
/** `x` between two numbers, as in 2 x 50 lb, or right behind one, as in 3x. */
const TIMES = /[xX×](?![\p{L}])/uy;
const WORD = /\p{L}[\p{L}\p{N}]*(?:[-&'’.][\p{L}\p{N}]+)*/uy;
const DOTS = /\.{2,}|…/y;
const SPACE = /\s+/y;

const PLAIN_SIGNS: Readonly<Record<string, string>> = {
  "–": "-",
  "—": "-",
  "−": "-",
  "”": '"',
  "“": '"',
  "″": '"',
  "’": "'",
  "′": "'",
  "×": "x",
};

/** Cuts a text into numbers, clocks, words and signs; nothing of it is lost but spaces. */
export function tokensOf(source: TextSource): readonly Token[] {
  const tokens: Token[] = [];
  let offset = 0;
  // As long as before, so that places stay what they are.
  const plain = source.text.replace(/[０-９：]/g, (sign) => sign.normalize("NFKC"));
  while (offset < source.text.length) {
    const space = matchAt(SPACE, plain, offset);
    if (space !== undefined) {
      offset += space.length;
      continue;
    }
    const token = tokenAt(source, plain, offset);
    tokens.push(token);
    offset = token.end;
  }
  return tokens;
}

function tokenAt(source: TextSource, text: string, offset: number): Token {
  const make = (kind: Token["kind"], written: string, plain: string, value = Number.NaN): Token => ({
    kind,
    text: plain,
    value,
    source,
    offset,
    end: offset + written.length,
  });
  const clock = matchAt(CLOCK, text, offset);
  if (clock !== undefined) return make("clock", clock, clock, clockValue(clock));
  const number = matchAt(NUMBER, text, offset);
  if (number !== undefined) return make("number", number, number, numberValue(number));
  const times = matchAt(TIMES, text, offset);
  if (times !== undefined) return make("sign", times, "x");
  const word = matchAt(WORD, text, offset);
  if (word !== undefined) return make("word", word, word.toLowerCase().replace("’", "'"));
  const dots = matchAt(DOTS, text, offset);
  if (dots !== undefined) return make("sign", dots, "...");
  const sign = String.fromCodePoint(text.codePointAt(offset) ?? 0);
  return make("sign", sign, PLAIN_SIGNS[sign] ?? sign);
}

function matchAt(pattern: RegExp, text: string, offset: number): string | undefined {
  const sticky = new RegExp(pattern.source, pattern.flags);
  sticky.lastIndex = offset;
  return sticky.exec(text)?.[0];
}

/** NaN where a comma or point may stand for thousands, and for lists such as 21,15,9. */
function numberValue(written: string): number {
  if (/^\d+$/.test(written)) return Math.min(Number(written), LARGEST_READ);
  return /^\d+[.,]\d{1,2}$/.test(written)
    ? Math.min(Number(written.replace(",", ".")), LARGEST_READ)
    : Number.NaN;
}

/** Seconds of `m:ss` or `h:mm:ss`, with tenths; NaN for anything else. */
function clockValue(written: string): number {
  const match = /^(?:(\d+):)?(\d{1,3}):(\d{2}(?:[.,]\d+)?)$/.exec(written);
  if (!match) return Number.NaN;
  const [, hours = "0", minutes = "0", rest = "0"] = match;
  const second = Number(rest.replace(",", "."));
  if (second >= 60 || (match[1] !== undefined && Number(minutes) >= 60)) return Number.NaN;
  return Math.min(Number(hours) * 3600 + Number(minutes) * 60 + second, LARGEST_READ);
}

/** The tokens' own words, with spaces as typed. Tokens of another text are joined by single spaces. */
export function writtenBy(tokens: readonly Token[]): string {
  const [first] = tokens;
  const last = tokens.at(-1);
  if (first === undefined || last === undefined) return "";
  if (tokens.every((token) => token.source === first.source))
    return first.source.text.slice(first.offset, last.end);
  return tokens.map((token) => token.source.text.slice(token.offset, token.end)).join(" ");
}

/** The tokens between commas; commas inside brackets do not divide. */
export function phrasesOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const phrases: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.text === "(") depth += 1;
    if (token.text === ")") depth -= 1;
    if (token.text === "," && depth <= 0) phrases.push([]);
    else phrases.at(-1)?.push(token);
  }
  return phrases;
}
