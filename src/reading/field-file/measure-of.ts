import type { MassUnit } from "../../models/quantity.ts";

/** What the numbers of a column are. */
export type Measure =
  | { readonly kind: "time" | "reps" | "calories" | "metres" }
  | { readonly kind: "load"; readonly unit?: MassUnit }
  /** Scores as published, each with its own unit. */
  | { readonly kind: "text" }
  /** `value`: what it is stands in the column of kinds or in a remark. */
  | { readonly kind: "stated-elsewhere" };

type Word = "kg" | "lb" | "load" | "time" | "reps" | "calories" | "metres" | "filler";

const WORDS: readonly (readonly [Word, RegExp])[] = [
  ["kg", /^(?:kgs?|kilos?|kilograms?)$/],
  ["lb", /^(?:lbs?|pounds?|#)$/],
  ["load", /^(?:load|loads|weight|weights|1rm|mass)$/],
  ["time", /^(?:seconds|secs?|s|times?|m:ss|mm:ss|min:sec|h:mm:ss|hh:mm:ss|finish|duration)$/],
  ["reps", /^(?:reps?|repetitions)$/],
  ["calories", /^(?:calories|cals?|kcal)$/],
  ["metres", /^(?:metres|meters|m|distance)$/],
  [
    "filler",
    /^(?:max|best|heaviest|total|final|scores?|value|values|results?|lift|in|of|as|published|done)$/,
  ],
];

/** A heading without the signs that only set it apart: `Max_Load (lbs)` is `max load lbs`. */
export const plainHeading = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[_\s()[\]/,;-]+/g, " ")
    .replace(/\.(?= |$)/g, "")
    .trim();

/** Whether a column of this name tells what kind of result each row is, where another holds the value. */
export const isKindName = (name: string | undefined): boolean => name === "result" || name === "kind";

/** The measure a heading, or a remark `# unit: ...`, speaks of; undefined where a word of it is not known or two disagree. */
export function measureOf(heading: string): Measure | undefined {
  const name = plainHeading(heading);
  if (name === "value" || name === "values") return { kind: "stated-elsewhere" };
  if (name === "kind") return { kind: "text" };
  const words = name.split(" ").map((word) => WORDS.find(([, pattern]) => pattern.test(word))?.[0]);
  if (name === "" || words.includes(undefined)) return undefined;
  const said = new Set(words.filter((word) => word !== undefined && word !== "filler"));
  if (said.size === 0) return isOfLoad(name) ? { kind: "load" } : { kind: "text" };
  const [only, ...others] = [...said].filter((word) => word !== "load" || said.size === 1);
  if (only === undefined || others.length > 0) return undefined;
  if (only === "kg" || only === "lb") return { kind: "load", unit: only };
  return said.size === 1 ? { kind: only } : undefined;
}

/** `max`, `best lift`: lifted, whatever the unit. */
const isOfLoad = (name: string): boolean => /^(?:max|(?:max|best|heaviest) lift)$/.test(name);
