import { isGroup } from "../yaml/is-group.ts";
import type { MovementByName } from "../names/movement-names.ts";
import { comparable, nearestName } from "../../models/nearest.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import type { DivisionWord } from "./spell-words.ts";
import type { TextSource } from "./token.ts";
import { ownEntry } from "../../models/own-entry.ts";

const NAME = "by division";
const OTHERS = "others";
/** Words the notation itself uses; a word of one's own may not be one of them. */
const TAKEN = new Set(
  "at to in or by on off rest max every rounds round each side unbroken counts until for amrap cap and of repeat".split(
    " ",
  ),
);

/**
 * The words of `by division:` with what they stand for, one list for each division. A value may be given for a
 * division by name, for all divisions whose names hold certain words (`men` for `open men` and `pro men`), or for
 * `others`; the closest one counts.
 */
export function divisionWords(
  written: unknown,
  divisions: readonly string[],
  byName: MovementByName,
  faults: Faults,
): readonly (readonly DivisionWord[])[] {
  const entries = Object.entries(isGroup(written) ? written : {}).filter(([, values]) => isGroup(values));
  const words = divisions.map((): DivisionWord[] => []);
  for (const [word, values] of entries) {
    const source: TextSource = { text: word, path: [NAME, word], isName: true };
    const trouble = wordTrouble(word, byName);
    if (trouble !== undefined) tellText(faults, source, trouble);
    const keys = Object.keys(values as object);
    for (const key of keys) tellUnknownDivision(key, word, divisions, faults);
    for (const division of divisions) tellTorn(division, word, keys, faults);
    const texts = values as Readonly<Record<string, unknown>>;
    const missing = divisions.filter(
      (division) => typeof ownEntry(texts, keyFor(division, keys) ?? "") !== "string",
    );
    if (missing.length > 0) tellText(faults, source, missingTrouble(word, missing));
    for (const [index, division] of divisions.entries()) {
      // Where the value is missing, which is told, another one keeps the lines that use it from looking wrong too.
      const given = keys.filter((key) => typeof texts[key] === "string");
      const key = keyFor(division, given) ?? given[0];
      const text = key === undefined ? undefined : ownEntry(texts, key);
      if (key === undefined || typeof text !== "string") continue;
      words[index]?.push({ word, text: { text, path: [NAME, word, key], isName: false } });
    }
  }
  return words;
}

/** The key whose words are all in the division's name, the one with most words first. */
function keyFor(division: string, keys: readonly string[]): string | undefined {
  const own = wordsOf(division);
  const holding = keys.filter((key) => key !== OTHERS && wordsOf(key).every((word) => own.includes(word)));
  const [closest] = holding.toSorted((one, other) => wordsOf(other).length - wordsOf(one).length);
  return closest ?? keys.find((key) => key.toLowerCase() === OTHERS);
}

function tellTorn(division: string, word: string, keys: readonly string[], faults: Faults): void {
  const closest = keyFor(division, keys);
  if (closest === undefined || closest === OTHERS) return;
  const own = wordsOf(division);
  const count = wordsOf(closest).length;
  const rival = keys.find(
    (key) =>
      key !== closest && wordsOf(key).length === count && wordsOf(key).every((each) => own.includes(each)),
  );
  if (rival === undefined) return;
  tellText(
    faults,
    { text: rival, path: [NAME, word, rival], isName: true },
    {
      problem: `both "${closest}" and "${rival}" could be meant for ${division}`,
      remedy: `Add \`${division}:\` with its own value.`,
    },
  );
}

const wordsOf = (name: string): readonly string[] =>
  name
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");

function tellUnknownDivision(key: string, word: string, divisions: readonly string[], faults: Faults): void {
  if (key.toLowerCase() === OTHERS || divisions.some((division) => keyFor(division, [key]) !== undefined))
    return;
  const nearest = nearestName(key, divisions);
  const comma = /^\d/.test(key);
  tellText(
    faults,
    { text: key, path: [NAME, word, key], isName: true },
    {
      problem: comma ? "between { and } a comma begins a new entry" : `no division is called "${key}"`,
      allowed: `${divisions.join(", ")}, words of their names, ${OTHERS}`,
      nearest,
      remedy: comma
        ? "Put the whole value in quotes, or each division on a line of its own."
        : "Use the name of a division, or add the division under `divisions:`.",
    },
  );
}

const missingTrouble = (word: string, missing: readonly string[]): Trouble => ({
  problem: `"${word}" stands for nothing in ${missing.join(", ")}`,
  allowed: "a value for each division, or `others:` for the rest; `nothing` where a line is left out",
  remedy: `Add ${missing.map((division) => `\`${division}:\``).join(", ")}, or \`${OTHERS}:\`.`,
});

function wordTrouble(word: string, byName: MovementByName): Trouble | undefined {
  if (!/^\p{L}[\p{L}\p{N} -]*$/u.test(word)) {
    return {
      problem: "a word of your own begins with a letter and has only letters, digits, spaces and hyphens",
      remedy: "Choose a plain word, such as `bar` or `gymnastics`.",
    };
  }
  if (byName(word) !== undefined) {
    return {
      problem: `"${word}" is already the name of a movement`,
      remedy: "Choose another word, so that nobody takes one for the other.",
    };
  }
  const taken = wordsOf(word).length === 1 && TAKEN.has(comparable(word));
  return taken
    ? {
        problem: `"${word}" already means something in a line of work`,
        remedy: "Choose another word, such as `bar`.",
      }
    : undefined;
}
