import {
  COMPARISONS,
  FACTS,
  METRICS,
  type Comparison,
  type Fact,
  type Metric,
} from "../../models/condition.ts";
import { comparisonIn, joined, type Phrase, spoken } from "./condition-phrase.ts";
import { proposeConditionValue, valueFormOf } from "./condition-value.ts";
import { ownEntry } from "../../models/own-entry.ts";

/** Why a condition cannot be read, as parts of a fault; a near miss is looked for among `choices`. */
type ConditionRefusal = {
  readonly found: string;
  readonly problem: string;
  readonly allowed: string;
  readonly choices: readonly string[];
  readonly remedy: string;
  /** Characters from the start of the text to the words found. */
  readonly offset: number;
};

export type Refused = { readonly ok: false; readonly refusal: ConditionRefusal };

/** The value is not written as the metric asks. */
export function wrongValue(metric: Metric, comparison: Comparison, written: string, offset: number): Refused {
  const form = valueFormOf(metric);
  return refuse({
    found: written,
    problem: `\`${metric}\` is compared with ${form.words}`,
    allowed: form.words,
    choices: [],
    remedy: `Write \`${metric} ${spoken(comparison)} ${proposeConditionValue(metric, written)}\`.`,
    offset,
  });
}

/** A fact that speaks about a name has none. */
export function missingName(fact: Fact, offset: number): Refused {
  return refuse({
    found: "",
    problem: `the name after \`${fact}\` is missing`,
    allowed: `\`${fact}\` and a name`,
    choices: [],
    remedy: `Write the name it asks about, such as \`${fact} ${EXAMPLE_NAMES[fact] ?? "pull-up"}\`.`,
    offset,
  });
}

/** A fact answered yes or no has a `not` before it. */
export function negatedAnswer(fact: Fact, answer: string, offset: number): Refused {
  return refuse({
    found: "not",
    problem: `\`${fact}\` is answered yes or no and takes no \`not\``,
    allowed: `${fact} yes, ${fact} no`,
    choices: [],
    remedy: `Write \`${fact} ${answer === "yes" ? "no" : "yes"}\`.`,
    offset,
  });
}

/** Points at the first word, or at as many as make a name that was typed without its hyphens. */
export function unknownName(words: readonly Phrase[]): Refused {
  const first = words.slice(0, 1);
  const phrase = [2, 3]
    .map((count) => words.slice(0, count))
    .find((several) => NAMES.includes(several.map((word) => word.text).join("-")));
  const found = joined(phrase ?? first, 0);
  return refuse({
    found: found.text,
    problem: `"${found.text}" is not a number or fact a condition can ask about`,
    allowed: NAMES.join(", "),
    choices: NAMES,
    remedy: "Begin the condition with one of these names.",
    offset: found.offset,
  });
}

/** It is not said how a number is compared. */
export function uncompared(metric: Metric, after: Phrase): Refused {
  const typed = /^[^\d]*/.exec(after.text)?.[0].trim() ?? "";
  const value = after.text.slice(typed.length);
  const meant = ownEntry(OTHER_COMPARISONS, typed) ?? "at-least";
  return refuse({
    found: typed === "" ? after.text : typed,
    problem: `\`${metric}\` is a number, and it is not said how to compare it`,
    allowed: COMPARISONS.map(spoken).join(", "),
    choices: COMPARISONS.map(spoken),
    remedy: `Write \`${metric} ${spoken(meant)} ${proposeConditionValue(metric, value)}\`.`,
    offset: after.offset,
  });
}

/** A comparison has a `not` before it; it can be turned round. */
export function negatedNumber(metric: Metric, after: Phrase, offset: number): Refused {
  const comparison = comparisonIn(after.text);
  if (comparison === undefined) return uncompared(metric, after);
  const turned = `${metric} ${spoken(CONTRARY[comparison])}${after.text.slice(spoken(comparison).length)}`;
  return refuse({
    found: "not",
    problem: "a comparison of numbers takes no `not`",
    allowed: COMPARISONS.map(spoken).join(", "),
    choices: [],
    remedy: `Turn the comparison round: \`${turned}\`.`,
    offset,
  });
}

/** A fact speaks about one word of a list, and this is none of it. */
export function unknownWord(fact: Fact, word: Phrase, words: readonly string[]): Refused {
  return refuse({
    found: word.text,
    problem:
      word.text === ""
        ? `the word after \`${fact}\` is missing`
        : `"${word.text}" is not a word \`${fact}\` can speak about`,
    allowed: words.join(", "),
    choices: words,
    remedy: `Write \`${fact}\` and one of these words.`,
    offset: word.offset,
  });
}

/** Two conditions stand in one entry. */
export function joinedByAnd(words: readonly Phrase[], and: Phrase): Refused {
  const at = words.indexOf(and);
  const before = joined(words.slice(0, at), 0).text;
  const after = joined(words.slice(at + 1), and.end).text;
  return refuse({
    found: "and",
    problem: "conditions that must all hold are entries of a list and are not joined by `and`",
    allowed: "one condition in each entry of the list",
    choices: [],
    remedy: `Write two entries: \`${before}\` and \`${after}\`.`,
    offset: and.offset,
  });
}

/** There is no condition. */
export function nothing(text: string, negation: Phrase | undefined): Refused {
  return refuse({
    found: negation?.text ?? text.trim(),
    problem: "a condition is missing",
    allowed: NAMES.join(", "),
    choices: [],
    remedy: "Write a condition such as `load-share at least 80%` or `limit-joint shoulder`.",
    offset: negation?.offset ?? 0,
  });
}

/** Every name a condition can begin with. */
export const NAMES: readonly string[] = [...METRICS, ...FACTS];

const refuse = (refusal: ConditionRefusal): Refused => ({ ok: false, refusal });

const CONTRARY: Readonly<Record<Comparison, Comparison>> = {
  "at-least": "under",
  under: "at-least",
  over: "at-most",
  "at-most": "over",
};

/** Signs and turns of phrase people type for the comparisons. */
const OTHER_COMPARISONS: Readonly<Partial<Record<string, Comparison>>> = {
  ">=": "at-least",
  "≥": "at-least",
  ">": "over",
  "more than": "over",
  above: "over",
  "<=": "at-most",
  "≤": "at-most",
  "<": "under",
  "less than": "under",
  below: "under",
};

const EXAMPLE_NAMES: Readonly<Partial<Record<Fact, string>>> = {
  prefers: "butterfly",
  "gym-has": "rack",
};
