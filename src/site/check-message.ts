import type { Fault } from "../models/fault.ts";
import type { Movement } from "../models/movement.ts";
import { nearestName } from "../models/nearest.ts";
import { ownEntry } from "../models/own-entry.ts";
import { WORDS } from "../models/words.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import { type MessageWord, messageWords } from "./message-words.ts";
import { faultOfValue, type ValueFault } from "./read-attribute.ts";
import { MESSAGE_WORDS } from "./write-message.ts";

const NAMES = Object.keys(MESSAGE_WORDS);

/**
 * What is wrong in the coach's own text of messages: words that do not exist or are not closed, attributes they do not take, and values
 * that say nothing. Words around other text, such as those for some readers only, have no place in a message.
 */
export function checkMessage(
  { path, text }: SourceFile,
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  return messageWords(text).flatMap((word) => {
    // Plain text may hold such signs: a word is meant where it begins with a capital or is nearly one.
    if (!/^[A-Z]/.test(word.name) && nearestName(word.name, NAMES) === undefined) return [];
    const before = text.slice(0, word.offset).split("\n");
    const place = { file: path, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    return faultsOfWord(word, movements).map((fault): Fault => ({
      place,
      found: word.whole,
      ...fault,
      severity: "fault",
    }));
  });
}

function faultsOfWord(
  { name, written, rest, closed }: MessageWord,
  movements: ReadonlyMap<string, Movement>,
): readonly ValueFault[] {
  if (!Object.hasOwn(MESSAGE_WORDS, name)) return [unknownWord(name)];
  if (!closed)
    return [
      { problem: `<${name} has no end sign`, remedy: `Write <${name} /> with the signs /> behind it.` },
    ];
  if (rest !== "") return [unreadable(name, rest)];
  const known = ownEntry(WORDS, name)?.attributes ?? {};
  const missing = Object.entries(known).filter(
    ([attribute, { required }]) => required && !Object.hasOwn(written, attribute),
  );
  return [
    ...Object.entries(written).flatMap(([attribute, value]) => {
      const kind = ownEntry(known, attribute)?.kind;
      const fault =
        kind === undefined
          ? unknownAttribute(attribute, name, Object.keys(known))
          : faultOfValue(kind, value, { movements, hasReader: true });
      return fault ?? [];
    }),
    ...missing.map(([attribute, { says }]): ValueFault => ({
      problem: `<${name}> needs ${attribute}: ${says}`,
      remedy: `Write <${name} ${attribute}="..." />.`,
    })),
  ];
}

function unknownWord(name: string): ValueFault {
  const nearest = nearestName(name, NAMES);
  return {
    problem: "messages have no word of this name",
    allowed: NAMES.map((one) => `<${one} />`).join(" "),
    ...(nearest === undefined ? {} : { nearest: `<${nearest} />` }),
    remedy: nearest === undefined ? "Write one of the words allowed." : `Write <${nearest} />.`,
  };
}

const unreadable = (name: string, rest: string): ValueFault => ({
  problem: `"${rest}" in <${name}> says nothing`,
  remedy: `Write what the word is to know as name="value", such as <Split round="3" />.`,
});

function unknownAttribute(attribute: string, name: string, known: readonly string[]): ValueFault {
  const nearest = nearestName(attribute, known);
  return {
    problem: `<${name}> has no attribute ${attribute}`,
    allowed: known.length > 0 ? known.join(", ") : "none",
    ...(nearest === undefined ? {} : { nearest }),
    remedy: nearest === undefined ? "Leave the attribute out." : `Write ${nearest}="...".`,
  };
}
