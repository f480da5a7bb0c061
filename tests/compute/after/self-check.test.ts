import { describe, expect, it } from "vitest";
import { CHECK_ANSWERS, SELF_CHECK } from "../../../src/compute/after/self-check.ts";
import { forbiddenWordsIn } from "../../support/tone.ts";

describe("the self-check", () => {
  it("asks for sharp pain first and says how the answers add up", () => {
    expect(SELF_CHECK[0]?.id).toBe("sharp-pain");
    const sum = SELF_CHECK.at(-1);
    for (const answer of CHECK_ANSWERS) expect(`${sum?.good ?? ""} ${sum?.bad ?? ""}`).toContain(answer);
  });

  it("speaks calmly", () => {
    for (const { question, good, bad } of SELF_CHECK) {
      expect(forbiddenWordsIn([question, good, bad].join(" "))).toEqual([]);
    }
  });
});
