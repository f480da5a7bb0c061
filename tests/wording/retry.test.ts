import { expect, it } from "vitest";
import { sayGain, sayRetry } from "../../src/wording/retry.ts";

it.each([
  ["yes", "Do it again. Reason."],
  ["no", "Do not do it again. Reason."],
  ["only-if", "Do it again only if: Reason."],
] as const)("the answer %s is plain", (answer, text) => {
  expect(sayRetry({ answer, lost: [], say: "Reason." })).toBe(text);
});

it("a gain carries its uncertainty", () => {
  expect(sayGain({ seconds: 12.2, error: 15 })).toBe("12\u00a0s, give or take 15\u00a0s");
  expect(sayGain({ score: 6, error: 9 })).toBe("6, give or take 9");
  expect(sayGain({ error: 9 })).toBeUndefined();
});
