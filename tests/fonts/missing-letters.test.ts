import { expect, it } from "vitest";
import { missingLetters, sayMissingLetters } from "../../src/fonts/missing-letters.ts";

const onlyLatin = (codePoint: number): boolean => codePoint < 0x250;

it("each missing letter is told once; spaces and invisible marks need no picture", () => {
  expect(missingLetters(["Ångström 山本", "山 a\u00a0b\u200d"], onlyLatin)).toEqual(["山", "本"]);
});

it("a letter written with a combining mark is looked for as composed", () => {
  expect(missingLetters(["Zoe\u0308"], onlyLatin)).toEqual([]);
});

it("the message names the letter, its code, where it stands and what to do", () => {
  expect(sayMissingLetters("card", "山本", ["山"], ["Kiln Road", "山本"])).toBe(
    "The card of 山本 cannot be made: no font has a picture for “山” (U+5C71) in “山本”. The fonts (Fira Sans Condensed) hold Latin, Greek, Cyrillic and Vietnamese. Write it in one of these scripts in the file it comes from, for example by a name or share name in Latin letters.",
  );
});
