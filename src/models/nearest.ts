/** Nobody means a name by more signs than this, and comparing them would take seconds. */
const LONGEST_NAME = 200;
/** Longest share of a name that may be mistyped and still be recognised (judgement). */
const MISTYPED_SHARE = 1 / 3;

/**
 * The allowed name a person most likely meant, or nothing when none is close.
 *
 * Compares blind to case, accents, spaces, hyphens and other signs. First the fewest slips of the pen (optimal string
 * alignment distance, the restricted Damerau-Levenshtein: a letter added, left out, changed, or two neighbours
 * swapped), at most one slip per three letters. Else the shortest allowed name that holds all the words found, else
 * the longest one whose words are all found. Equal candidates: the earlier one wins.
 *
 * @example nearestName("Back-sqaut", ["front squat", "back squat"]) // => "back squat"
 */
export function nearestName(found: string, allowed: Iterable<string>): string | undefined {
  if (found.length > LONGEST_NAME) return undefined;
  const names = [...allowed];
  return fewestSlips(found, names) ?? sameWords(found, names);
}

/** A name reduced to what is compared: lower case, no marks, no signs, words joined. */
export const comparable = (name: string): string => wordsOf(name).join("");

function wordsOf(name: string): string[] {
  const plain = name.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

/**
 * Whether a name is another one misspelt, and not one of another thing: word by word at most one slip for each four letters.
 *
 * @example isMisspelt("thrsuter", "thruster") // => true
 * @example isMisspelt("chest-to-ring pull-up", "chest-to-bar pull-up") // => false
 */
export function isMisspelt(found: string, name: string): boolean {
  const [own, other] = [wordsOf(found), wordsOf(name)];
  const joined = [own.join(""), other.join("")] as const;
  const whole = slipsBetween(joined[0], joined[1]) <= 1;
  const isOne = (one: string, two: string): boolean =>
    slipsBetween(one, two) <= Math.max(1, Math.floor(Math.max(one.length, two.length) * SLIPS_IN_WORD)) &&
    Math.min(one.length, two.length) > 2;
  return (
    whole ||
    (own.length === other.length &&
      own.every((word, at) => word === other[at] || isOne(word, other[at] ?? "")))
  );
}

/** Slips of the pen in a word, as a share of its letters. */
const SLIPS_IN_WORD = 1 / 4;

function fewestSlips(found: string, names: readonly string[]): string | undefined {
  const target = comparable(found);
  if (target === "") return undefined;
  let best: string | undefined;
  let fewest = Math.max(1, Math.floor(target.length * MISTYPED_SHARE)) + 1;
  for (const name of names) {
    const candidate = comparable(name);
    if (Math.abs(candidate.length - target.length) >= fewest) continue;
    const slips = slipsBetween(target, candidate);
    // A name of which nothing is left is no correction.
    if (slips < fewest && slips < Math.max(candidate.length, target.length)) [best, fewest] = [name, slips];
  }
  return best;
}

function sameWords(found: string, names: readonly string[]): string | undefined {
  const words = new Set(wordsOf(found));
  if (words.size === 0) return undefined;
  let holding: string | undefined;
  let held: string | undefined;
  for (const name of names) {
    const own = new Set(wordsOf(name));
    if (own.size === 0) continue;
    if (allIn(words, own) && (holding === undefined || name.length < holding.length)) holding = name;
    if (allIn(own, words) && (held === undefined || name.length > held.length)) held = name;
  }
  return holding ?? held;
}

const allIn = (some: ReadonlySet<string>, all: ReadonlySet<string>): boolean =>
  [...some].every((word) => all.has(word));

/** Optimal string alignment distance, row by row. */
function slipsBetween(one: string, other: string): number {
  let twoBefore: number[] = [];
  let before = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const current = [row];
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1];
      const swapped =
        row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      current[column] = Math.min(
        at(before, column) + 1,
        at(current, column - 1) + 1,
        at(before, column - 1) + (same ? 0 : 1),
        swapped ? at(twoBefore, column - 2) + 1 : Infinity,
      );
    }
    [twoBefore, before] = [before, current];
  }
  return at(before, other.length);
}

const at = (row: readonly number[], column: number): number => row[column] ?? Infinity;
