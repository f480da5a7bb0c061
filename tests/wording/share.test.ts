import { expect, it } from "vitest";
import { sayChance, sayShare } from "../../src/wording/share.ts";

it.each([
  [0.746, "75%"],
  [0.82, "82%"],
  [1, "100%"],
])("the share %d is %s", (share, text) => {
  expect(sayShare(share)).toBe(text);
});

it.each([
  [0.78, "80%"],
  [0.51, "50%"],
  [0.974, "95%"],
  [0.975, "over 95%"],
  [0.02, "under 5%"],
])("the chance %d is said to the twentieth: %s", (chance, text) => {
  expect(sayChance(chance)).toBe(text);
});
