import type { MovementByName } from "../names/movement-names.ts";
import { cursorAt } from "./cursor.ts";
import { longestMovement } from "./movement-phrase.ts";
import { spellWords, type DivisionWord } from "./spell-words.ts";
import { tokensOf, type TextSource } from "./token.ts";

/** One division of several, with what its words stand for. */
type LineReader = {
  readonly index: number;
  readonly divisions: number;
  readonly words: readonly DivisionWord[];
  readonly byName: MovementByName;
};

/**
 * Lines of work as one division reads them: its own words, amounts, loads, heights and movements, and nothing of the others. A
 * line that a word leaves out is left out.
 *
 * @example at two divisions, the second: `12 thruster at 43/29 kg` is `12 thruster at 29 kg`
 */
export const ownLines = (lines: readonly string[], reader: LineReader): readonly string[] =>
  lines.flatMap((line) => {
    const spelled = withWords(line, reader.words, reader.byName);
    if (/^\s*(?:-\s*)?nothing\s*$/i.test(spelled)) return [];
    return [ownValues(ownMovement(spelled, reader), reader)];
  });

/** Lines as everybody reads them: words of the workout's own with the values of all divisions, as slashes part them. */
export function everybodysLines(lines: readonly string[], readers: readonly LineReader[]): readonly string[] {
  return lines.map((line) => {
    const [first, ...others] = readers;
    if (first === undefined || first.words.length === 0) return line;
    const joined = first.words.map(({ word, text }) => {
      const values = [
        text.text,
        ...others.map(({ words }) => words.find((one) => one.word === word)?.text.text ?? ""),
      ];
      const isSame = values.every((value) => value === values[0]);
      return { word, text: { ...text, text: isSame ? text.text : values.join(" / ") } };
    });
    return withWords(line, joined, first.byName);
  });
}

/** A line with the words of `by division:` replaced, everything else as it was typed. */
function withWords(line: string, words: readonly DivisionWord[], byName: MovementByName): string {
  if (words.length === 0) return line;
  const source: TextSource = { text: line, path: [], isName: false };
  let result = "";
  let from = 0;
  let last: TextSource | undefined;
  const tokens = tokensOf(source);
  const spelled = spellWords(tokens, words, byName);
  const kept = new Set(spelled.filter((token) => token.source === source).map(({ offset }) => offset));
  for (const token of spelled) {
    if (token.source === source) {
      const start = last === undefined ? from : token.offset;
      // Behind a word that was replaced the line goes on where the next token of its own stands.
      result +=
        last === undefined
          ? line.slice(start, token.end)
          : spaceBefore(line, token.offset) + line.slice(token.offset, token.end);
      from = token.end;
      last = undefined;
    } else if (token.source !== last) {
      const next = tokens.find(({ offset }) => offset >= from && !kept.has(offset));
      result += (next === undefined ? " " : line.slice(from, next.offset)) + token.source.text;
      if (next !== undefined) from = next.end;
      last = token.source;
    }
  }
  return result;
}

const spaceBefore = (line: string, offset: number): string => /\s*$/.exec(line.slice(0, offset))?.[0] ?? "";

/** `bar muscle-up/chest-to-bar pull-up`: the movement of the division. */
function ownMovement(line: string, { index, divisions, byName }: LineReader): string {
  if (divisions < 2 || !line.includes("/")) return line;
  const tokens = tokensOf({ text: line, path: [], isName: false });
  for (let start = 0; start < tokens.length; start += 1) {
    const runs: { from: number; to: number }[] = [];
    let at = start;
    for (;;) {
      const length = longestMovement(cursorAt(tokens, at), { byName })?.length;
      const [one, end] = [tokens[at], length === undefined ? undefined : tokens[at + length - 1]];
      if (length === undefined || one === undefined || end === undefined) break;
      runs.push({ from: one.offset, to: end.end });
      at += length;
      if (tokens[at]?.text !== "/") break;
      at += 1;
    }
    const [first, own, last] = [runs[0], runs[index], runs.at(-1)];
    if (runs.length === divisions && divisions > 1 && first && own && last)
      return line.slice(0, first.from) + line.slice(own.from, own.to) + line.slice(last.to);
  }
  return line;
}

const UNIT = "(?:kg|lbs?|km|miles?|mi|cm|m|ft|in|cal|calories|reps|min|s|%|body mass)(?![\\p{L}])";
const NUMBER = "\\d[\\d.,:]*(?<![.,:])";
const ITEM = `(?:\\d+\\s*x\\s*)?${NUMBER}(?:\\s*-\\s*${NUMBER})*(?:\\s*${UNIT})?(?:\\s*\\([^()]*\\))?`;

/** `2 x 22.5/15 kg`, `95 lb (43 kg)/65 lb (29 kg)`, `24/20 in`: the value of the division, with the unit it shares. */
function ownValues(line: string, { index, divisions }: LineReader): string {
  if (divisions < 2) return line;
  const series = new RegExp(`${ITEM}(?:\\s*/\\s*${ITEM}){${divisions - 1}}(?!\\s*/)`, "giu");
  const inBrackets = line.replace(
    /\(([^()]*)\)/g,
    (_, inner: string) => `(${valueOf(inner, series, index)})`,
  );
  return valueOf(inBrackets, series, index);
}

function valueOf(text: string, series: RegExp, index: number): string {
  return text.replace(series, (found) => {
    const items = found.split(/\s*\/\s*(?![^(]*\))/);
    const own = items[index] ?? found;
    const unit = new RegExp(`\\s*${UNIT}(?=\\s*(?:\\(|$))`, "iu");
    const shared =
      items
        .slice(index)
        .map((item) => unit.exec(item)?.[0])
        .find((one) => one !== undefined) ?? "";
    const pieces = /^\d+\s*x\s*/i.exec(own) === null ? (/^\d+\s*x\s*/i.exec(items[0] ?? "")?.[0] ?? "") : "";
    const bracket = own.includes("(") ? "" : (/\s*\([^()]*\)$/.exec(items.at(-1) ?? "")?.[0] ?? "");
    return `${pieces}${own}${unit.test(own) ? "" : shared}${bracket}`;
  });
}
