import {
  FACT_WORDS,
  FACTS,
  METRICS,
  type Condition,
  type Fact,
  type Metric,
  type SingleCondition,
} from "../../models/condition.ts";
import { alternativesOf, comparisonIn, joined, type Phrase, spoken } from "./condition-phrase.ts";
import {
  joinedByAnd,
  missingName,
  NAMES,
  negatedAnswer,
  negatedNumber,
  nothing,
  type Refused,
  uncompared,
  unknownName,
  unknownWord,
  wrongValue,
} from "./condition-refusal.ts";
import { readConditionValue } from "./condition-value.ts";

type ReadCondition = { readonly ok: true; readonly value: Condition } | Refused;
type ReadSingle = { readonly ok: true; readonly value: SingleCondition } | Refused;

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

function readNumber(metric: Metric, after: Phrase): ReadSingle {
  const comparison = comparisonIn(after.text);
  if (comparison === undefined) return uncompared(metric, after);
  const words = spoken(comparison);
  const written = after.text.slice(words.length).trimStart();
  const value = readConditionValue(metric, written);
  if (value !== undefined) return { ok: true, value: { kind: "number", metric, is: comparison, value } };
  return wrongValue(metric, comparison, written, after.end - written.length);
}

function readFact(fact: Fact, word: Phrase, negation: Phrase | undefined): ReadSingle {
  const words = FACT_WORDS[fact];
  if (words !== undefined && !words.includes(word.text)) return unknownWord(fact, word, words);
  if (word.text === "") return missingName(fact, word.offset);
  if (negation !== undefined && words?.includes("yes") === true) {
    return negatedAnswer(fact, word.text, negation.offset);
  }
  return { ok: true, value: { kind: "fact", fact, word: word.text, holds: negation === undefined } };
}

/** Names hold `and` too, such as clean and jerk. */
const beginsCondition = (word: Phrase | undefined): boolean =>
  word?.text === "not" || NAMES.includes(word?.text ?? "");

const isOneOf = <T extends string>(list: readonly T[], text: string): text is T =>
  (list as readonly string[]).includes(text);
