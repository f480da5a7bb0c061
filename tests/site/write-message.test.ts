import { describe, expect, it } from "vitest";
import { checkMessage, USUAL_MESSAGE, writeMessage } from "../../src/site/write-message.ts";
import { samplePlans } from "../support/sample-plan.ts";

const plan = samplePlans.forTimeThenLift;
const reader = {
  kind: "one",
  plan: { ...plan, athlete: { ...plan.athlete, name: "Ana Berg" }, start: undefined as never },
  habits: [],
  limits: [],
  loadAt: () => undefined,
  movementNamed: () => undefined,
} as const;

describe("a message", () => {
  it("shows who, what and the link in the coach's own words", () => {
    expect(writeMessage("<Name/>: <Workout />, <Start />. <Link />", reader, "https://x/#k")).toBe(
      `Ana Berg: ${plan.workout.title}, not set yet. https://x/#k`,
    );
  });

  it("has a usual form without a fault", () => {
    expect(checkMessage(USUAL_MESSAGE)).toEqual([]);
    expect(writeMessage(USUAL_MESSAGE, reader, "L")).toMatch(
      /^Hi Ana, your brief for .* is ready\.\n[^<]*\nL$/,
    );
  });

  it("refuses words that do not exist, with the line and the nearest", () => {
    expect(checkMessage('Hi\n<Naem /> and <Only level="new">')).toEqual([
      "line 2: there is no word <Naem /> for messages. Write <Name />.",
      expect.stringMatching(/^line 2: there is no word <Only \/> for messages\. Write /) as string,
    ]);
  });
});
