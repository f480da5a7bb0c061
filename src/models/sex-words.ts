import type { Sex } from "./vocabulary.ts";

/** How people write a sex, alone or in the name of a division; the only such list. */
export const SEX_WORDS: Readonly<Record<string, Sex>> = {
  f: "female",
  w: "female",
  female: "female",
  females: "female",
  woman: "female",
  women: "female",
  womens: "female",
  lady: "female",
  ladies: "female",
  girl: "female",
  girls: "female",
  m: "male",
  male: "male",
  males: "male",
  man: "male",
  men: "male",
  mens: "male",
  gentleman: "male",
  gentlemen: "male",
  gents: "male",
  boy: "male",
  boys: "male",
};

/** The words of a division's name in lower case, those of a sex always the same. @example divisionWords("Masters Ladies") // => ["masters", "female"] */
export const divisionWords = (name: string): readonly string[] =>
  name
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .map((word) => (Object.hasOwn(SEX_WORDS, word) ? (SEX_WORDS[word] ?? word) : word));

/** The sex a division's name speaks of, if it speaks of one. @example sexOfDivision("ladies 40+") // => "female" */
export function sexOfDivision(name: string): Sex | undefined {
  const words = divisionWords(name);
  const [female, male] = [words.includes("female"), words.includes("male")];
  if (female === male) return undefined;
  return female ? "female" : "male";
}

/** Whether two names mean one division: the same words in any order, however the sex is written. */
export function isSameDivision(one: string, other: string): boolean {
  const [first, second] = [one, other].map((name) => divisionWords(name).toSorted().join(" "));
  return first === second;
}
