import { describe, expect, it } from "vitest";
import type { Reader } from "../../../src/components/reader.ts";
import { isMeant, sayWhom, whomLine } from "../../../src/components/words/is-meant.ts";
import { samplePlans } from "../../support/sample-plan.ts";
import { without } from "../../support/without.ts";

// A competitor among the women who reads kg, with a shoulder limit.
const reader: Reader = {
  kind: "one",
  plan: samplePlans.forTimeThenLift,
  sex: "female",
  habits: ["starts-too-fast"],
  limits: ["shoulder", "overhead"],
  loadAt: () => undefined,
  movementNamed: () => undefined,
};
const anyone: Reader = { kind: "anyone", movementNamed: () => undefined };

describe("a passage for some readers", () => {
  it.each([
    { level: "competitor" },
    { level: "new, Competitor" },
    { level: "competitor", unit: "kg", sex: "female", division: "women" },
    { habit: "starts-too-fast, slow-transitions" },
    { limit: "any" },
    { limit: "overhead" },
    {},
  ])("is meant for one who fits %j", (written) => {
    expect(isMeant(written, reader)).toBe(true);
  });

  it.each([
    { level: "new" },
    { level: "competitor", unit: "lb" },
    { sex: "male" },
    { habit: "rests-too-long" },
    { limit: "knee" },
  ])("is not meant for one who does not fit %j", (written) => {
    expect(isMeant(written, reader)).toBe(false);
  });

  it("about limits is not meant for those who have none, nor about sex for those who say none", () => {
    const unsaid: Reader = without({ ...reader, limits: [] }, "sex");
    expect(isMeant({ limit: "any" }, unsaid)).toBe(false);
    expect(isMeant({ sex: "female, male" }, unsaid)).toBe(false);
  });

  it("is shown to anyone, with a line that says for whom", () => {
    expect(isMeant({ level: "new" }, anyone)).toBe(true);
    expect(sayWhom({ level: "new, regular", unit: "lb" })).toBe(
      "new and regular athletes, who reads loads in lb",
    );
    expect(sayWhom({ habit: "starts-too-fast", limit: "shoulder, knee" })).toBe(
      "the habit “starts too fast”, the limit “shoulder” or “knee”",
    );
    expect(whomLine({ division: "a<b" }, anyone, "For all but")).toBe(
      '<em class="whom">For all but a&lt;b: </em>',
    );
    expect(whomLine({ level: "new" }, reader)).toBe("");
  });
});
