import { describe, expect, it } from "vitest";
import * as z from "zod";
import { conditionField, conditionsField } from "../../../src/reading/conditions/condition-schema.ts";

describe("a condition in a file", () => {
  it("comes out checked", () => {
    expect(conditionsField.parse(["set-share over 75%", "not level new"])).toEqual([
      { kind: "number", metric: "set-share", is: "over", value: 0.75 },
      { kind: "fact", fact: "level", word: "new", holds: false },
    ]);
  });

  it("always holds where it is left out", () => {
    expect(z.strictObject({ when: conditionsField }).parse({})).toEqual({ when: [] });
  });

  it("is refused with place, words found, what is allowed, the nearest name and the remedy", () => {
    const result = conditionField.safeParse("limit-joint sholder");
    expect(result.error?.issues).toEqual([
      {
        code: "custom",
        path: [],
        message: '"sholder" is not a word `limit-joint` can speak about',
        params: {
          severity: "fault",
          found: "sholder",
          problem: '"sholder" is not a word `limit-joint` can speak about',
          allowed: "neck, shoulder, elbow, wrist, hand, back, hip, knee, ankle, foot",
          nearest: "shoulder",
          remedy: "Write `limit-joint` and one of these words.",
          offset: 12,
        },
      },
    ]);
  });

  it.each([
    ["load share at least 80%", "load share", "load-share"],
    ["hours to next under 8", "hours to next", "hours-to-next"],
    ["stres kipping", "stres", "stress"],
  ])("names the nearest metric or fact: %s", (text, found, nearest) => {
    const result = conditionField.safeParse(text);
    expect(result.error?.issues[0]).toMatchObject({ params: { found, nearest, offset: 0 } });
  });
});
