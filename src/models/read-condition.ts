import {
  COMPARISONS,
  FACTS,
  FACT_WORDS,
  METRICS,
  type Comparison,
  type Condition,
  type Fact,
  type Metric,
  type SingleCondition,
} from "./condition.ts";
import { proposeConditionValue, readConditionValue, valueFormOf } from "./condition-value.ts";

/** Why a condition cannot be read, as parts of a fault; a near miss is looked for among `choices`. */
export type ConditionRefusal = {
  readonly found: string;
  readonly problem: string;
  readonly allowed: string;
  readonly choices: readonly string[];
  readonly remedy: string;
  /** Characters from the start of the text to the words found. */
  readonly offset: number;
};

type Refused = { readonly ok: false; readonly refusal: ConditionRefusal };
export type ReadCondition = { readonly ok: true; readonly value: Condition } | Refused;
type ReadSingle = { readonly ok: true; readonly value: SingleCondition } | Refused;

/** Neighbouring words with where they stand in the text. */
type Phrase = { readonly text: string; readonly offset: number; readonly end: number };

/**
 * Reads one condition of the declared vocabulary: `load-share at least 80%`, `workout-minutes over 20`,
 * `limit-joint shoulder`, `not prefers butterfly`, or several joined by `or`, of which one must hold.
 *
 * Numbers: a name, `at least`, `over`, `at most` or `under`, and a value. Facts: a name and a word, with `not` before
 * for the contrary; a fact answered yes or no takes no `not`. Conditions that must all hold are written as a list.
 * Shares come out from 0 to 1, masses in kilograms, lengths in metres.
 */
export function readCondition(text: string): ReadCondition {
  const singles: SingleCondition[] = [];
  for (const words of alternativesOf(text)) {
    const single = readSingle(words, text);
    if (!single.ok) return single;
    singles.push(single.value);
  }
  const [only] = singles;
  if (only !== undefined && singles.length === 1) return { ok: true, value: only };
  return { ok: true, value: { kind: "any", of: singles } };
}

function readSingle(words: readonly Phrase[], text: string): ReadSingle {
  const negation = words[0]?.text === "not" ? words[0] : undefined;
  const [name, ...rest] = negation === undefined ? words : words.slice(1);
  if (name === undefined) return nothing(text, negation);
  const and = rest.find((word, at) => word.text === "and" && beginsCondition(rest[at + 1]));
  if (and !== undefined) return joinedByAnd(words, and);
  if (isOneOf(METRICS, name.text)) {
    const after = joined(rest, name.end);
    return negation === undefined
      ? readNumber(name.text, after)
      : negatedNumber(name.text, after, negation.offset);
  }
  if (isOneOf(FACTS, name.text)) return readFact(name.text, joined(rest, name.end), negation);
  return unknownName([name, ...rest]);
}

/** Points at the first word, or at as many as make a name that was typed without its hyphens. */
function unknownName(words: readonly Phrase[]): ReadSingle {
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

function readNumber(metric: Metric, after: Phrase): ReadSingle {
  const comparison = comparisonIn(after.text);
  if (comparison === undefined) return uncompared(metric, after);
  const words = spoken(comparison);
  const written = after.text.slice(words.length).trimStart();
  const value = readConditionValue(metric, written);
  if (value !== undefined) return { ok: true, value: { kind: "number", metric, is: comparison, value } };
  const form = valueFormOf(metric);
  return refuse({
    found: written,
    problem: `\`${metric}\` is compared with ${form.words}`,
    allowed: form.words,
    choices: [],
    remedy: `Write \`${metric} ${words} ${proposeConditionValue(metric, written)}\`.`,
    offset: after.end - written.length,
  });
}

function uncompared(metric: Metric, after: Phrase): ReadSingle {
  const typed = /^[^\d]*/.exec(after.text)?.[0].trim() ?? "";
  const value = after.text.slice(typed.length);
  const meant = OTHER_COMPARISONS[typed] ?? "at-least";
  return refuse({
    found: typed === "" ? after.text : typed,
    problem: `\`${metric}\` is a number, and it is not said how to compare it`,
    allowed: COMPARISONS.map(spoken).join(", "),
    choices: COMPARISONS.map(spoken),
    remedy: `Write \`${metric} ${spoken(meant)} ${proposeConditionValue(metric, value)}\`.`,
    offset: after.offset,
  });
}

function negatedNumber(metric: Metric, after: Phrase, offset: number): ReadSingle {
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

function readFact(fact: Fact, word: Phrase, negation: Phrase | undefined): ReadSingle {
  const words = FACT_WORDS[fact];
  if (words !== undefined && !words.includes(word.text)) return unknownWord(fact, word, words);
  if (word.text === "") {
    return refuse({
      found: "",
      problem: `the name after \`${fact}\` is missing`,
      allowed: `\`${fact}\` and a name`,
      choices: [],
      remedy: `Write the name it asks about, such as \`${fact} ${EXAMPLE_NAMES[fact] ?? "pull-up"}\`.`,
      offset: word.offset,
    });
  }
  if (negation !== undefined && words?.includes("yes") === true) {
    return refuse({
      found: "not",
      problem: `\`${fact}\` is answered yes or no and takes no \`not\``,
      allowed: `${fact} yes, ${fact} no`,
      choices: [],
      remedy: `Write \`${fact} ${word.text === "yes" ? "no" : "yes"}\`.`,
      offset: negation.offset,
    });
  }
  return { ok: true, value: { kind: "fact", fact, word: word.text, holds: negation === undefined } };
}

function unknownWord(fact: Fact, word: Phrase, words: readonly string[]): ReadSingle {
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

function joinedByAnd(words: readonly Phrase[], and: Phrase): ReadSingle {
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

function nothing(text: string, negation: Phrase | undefined): ReadSingle {
  return refuse({
    found: negation?.text ?? text.trim(),
    problem: "a condition is missing",
    allowed: NAMES.join(", "),
    choices: [],
    remedy: "Write a condition such as `load-share at least 80%` or `limit-joint shoulder`.",
    offset: negation?.offset ?? 0,
  });
}

const refuse = (refusal: ConditionRefusal): Refused => ({ ok: false, refusal });

/** Names hold `and` too, such as clean and jerk. */
const beginsCondition = (word: Phrase | undefined): boolean =>
  word?.text === "not" || NAMES.includes(word?.text ?? "");

const NAMES: readonly string[] = [...METRICS, ...FACTS];

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

const spoken = (comparison: Comparison): string => comparison.replace("-", " ");

const comparisonIn = (text: string): Comparison | undefined =>
  COMPARISONS.find((each) => text === spoken(each) || text.startsWith(`${spoken(each)} `));

const isOneOf = <T extends string>(list: readonly T[], text: string): text is T =>
  (list as readonly string[]).includes(text);

/** The words of the text with their places, cut at each `or`. */
function alternativesOf(text: string): readonly (readonly Phrase[])[] {
  const words = [...text.matchAll(/\S+/g)].map((match) => ({
    text: match[0],
    offset: match.index,
    end: match.index + match[0].length,
  }));
  const alternatives: Phrase[][] = [[]];
  for (const word of words) {
    if (word.text === "or") alternatives.push([]);
    else alternatives.at(-1)?.push(word);
  }
  return alternatives;
}

/** Words as one phrase with single spaces; an empty phrase stands at `end`. */
function joined(words: readonly Phrase[], end: number): Phrase {
  const first = words[0];
  const last = words.at(-1);
  return {
    text: words.map((word) => word.text).join(" "),
    offset: first?.offset ?? end,
    end: last?.end ?? end,
  };
}
