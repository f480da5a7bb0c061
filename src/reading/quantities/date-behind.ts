import { readTestDay, type DateOrder } from "./date.ts";
import { monthOf } from "./month-names.ts";
import { plainText } from "./plain-text.ts";
import type { Reading } from "./reading.ts";

/** Forms in which a date stands behind a result; the first that holds something like a date counts. */
const BEHIND = [
  /\s*\(([^()]*)\)\s*$/,
  /\s*[,;]\s*(?:(?:tested|on|in|done)\s+)?([^,;:]+)$/i,
  /\s+(?:tested|on|in|done)\s+([^,;:]+)$/i,
  /\s(\d{4}-\d\d-\d\d)$/,
  // A month, or a month and a year, behind a unit or a number: `105 kg 12/2023`, `105 Jan 2025`.
  /(?<=\d\s*(?:kgs?|lbs?|#)?)\s+((?:\d{1,2}[-/.]\d{4})|(?:\d{1,2}\.?\s+)?\p{L}{3,}\.?\s+(?:19|20)\d\d)$/iu,
] as const;

/** Parts a date behind a result, `110 kg (2026-09-01)`, `2:05, tested 3 April 2026`, from the result. */
export function takeDateOff(
  text: string,
  order?: DateOrder,
): { readonly core: string; readonly date?: Reading<string> } {
  const plain = plainText(text);
  for (const form of BEHIND) {
    const match = form.exec(plain);
    const candidate = (match?.[1] ?? "").trim();
    if (match && looksLikeDate(candidate)) {
      return { core: plain.slice(0, match.index).trim(), date: readTestDay(candidate, order) };
    }
  }
  return { core: plain };
}

const looksLikeDate = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$|^\d{1,2}[-/.]\d{1,2}(?:[-/.]\d{2,4})?$|^\d{1,2}[-/.](?:19|20)\d\d$|^(?:19|20)\d\d$|^\d{5}$/.test(
    text,
  ) || text.split(/[\s.,]+/).some((word) => /^\p{L}+$/u.test(word) && monthOf(word) !== undefined);
