import { describe, expect, it } from "vitest";
import { sayCheckSum, SELF_CHECK } from "../../src/wording/self-check.ts";
import { forbiddenWordsIn } from "../support/tone.ts";

describe("the self-check", () => {
  it("asks for sharp pain first, and gives every line a good and a bad end", () => {
    expect(SELF_CHECK[0]?.question).toMatch(/sharp/i);
    expect(SELF_CHECK.length).toBeGreaterThanOrEqual(4);
    for (const { good, bad } of SELF_CHECK) expect(good).not.toBe(bad);
  });

  it("adds up to rest on any bad answer, whatever the day", () => {
    for (const kind of ["session", "light", "between", "rest"] as const) {
      const sum = sayCheckSum(kind);
      expect(sum.at(-1)).toMatch(/any on the right: rest/);
      expect(sum[0]?.includes("session")).toBe(kind === "session");
    }
  });

  it("speaks calmly", () => {
    const words = SELF_CHECK.flatMap(({ question, good, middling = "", bad }) => [
      question,
      good,
      middling,
      bad,
    ]);
    expect(forbiddenWordsIn([...words, ...sayCheckSum("session")].join(" "))).toEqual([]);
  });
});
