import { listed } from "../../models/words.ts";
import { sayList } from "../../wording/number.ts";
import type { Reader } from "../reader.ts";
import type { Written } from "./show-word.ts";

/** Whom a passage is for: for each attribute, the names it lists. */
const READERS = ["level", "division", "unit", "sex", "habit", "limit"] as const;

/**
 * Whether a passage is meant for a reader: one of the names of every attribute given must fit. Where a passage is shown
 * to anyone, everything is, with a line that says for whom.
 */
export function isMeant(written: Written, reader: Reader): boolean {
  if (reader.kind === "anyone") return true;
  return READERS.every((attribute) => {
    const given = written[attribute];
    if (given === undefined) return true;
    const names = listed(String(given));
    return valuesOf(attribute, reader).some((value) => names.includes(value.toLowerCase()));
  });
}

function valuesOf(
  attribute: (typeof READERS)[number],
  reader: Extract<Reader, { kind: "one" }>,
): readonly string[] {
  const { level, division, units } = reader.plan.athlete;
  switch (attribute) {
    case "level":
      return [level];
    case "division":
      return [division];
    case "unit":
      return [units];
    case "sex":
      return reader.sex === undefined ? [] : [reader.sex];
    case "habit":
      return reader.habits;
    case "limit":
      return reader.limits.length > 0 ? ["any", ...reader.limits] : [];
  }
}

/** What the names an attribute lists are called in a sentence. */
const WHOM: Readonly<Record<(typeof READERS)[number], (names: readonly string[]) => string>> = {
  level: (names) => `${sayList(names, "and")} athletes`,
  division: (names) => sayList(names, "and"),
  unit: (names) => `who reads loads in ${sayList(names, "or")}`,
  sex: (names) => ({ female: "women", male: "men" })[names.join()] ?? sayList(names, "and"),
  habit: (names) => `the habit ${sayList(names.map(spaced), "or")}`,
  limit: (names) =>
    names.includes("any") ? "any stated limit" : `the limit ${sayList(names.map(spaced), "or")}`,
};

const spaced = (name: string): string => `“${name.replaceAll("-", " ")}”`;

/** For whom a passage is, in words, where it is shown to anyone. @example sayWhom({ level: "new, regular" }) // => "new and regular athletes" */
export const sayWhom = (written: Written): string =>
  READERS.flatMap((attribute) => {
    const given = written[attribute];
    return given === undefined ? [] : [WHOM[attribute](listed(String(given)))];
  }).join(", ");

/** The line before a passage that is shown to anyone, as HTML; nothing for a reader of their own page. */
export function whomLine(written: Written, reader: Reader, before = "For"): string {
  if (reader.kind !== "anyone") return "";
  const text = `${before} ${sayWhom(written)}`.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  return `<em class="whom">${text}: </em>`;
}
