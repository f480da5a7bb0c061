import { describe, expect, it } from "vitest";
import { USUAL_MESSAGE, writeMessage } from "../../src/site/write-message.ts";
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

  it("leaves what is no word as it stands", () => {
    expect(writeMessage("3 < 5, <ana@example.org>, <b> <Link/>", reader, "L")).toBe(
      "3 < 5, <ana@example.org>, <b> L",
    );
  });

  it("has a usual form", () => {
    expect(writeMessage(USUAL_MESSAGE, reader, "L")).toMatch(
      /^Hi Ana, your brief for .* is ready\.\n[^<]*\nL$/,
    );
  });
});
