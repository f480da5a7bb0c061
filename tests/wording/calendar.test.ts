import { describe, expect, it } from "vitest";
import { sayCalendar, sayFirstLifts } from "../../src/wording/calendar.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { without } from "../support/without.ts";

const plan = samplePlans.forTimeThenLift;

describe("the line about the calendar", () => {
  it("says what is in it, where, and when it reminds", () => {
    expect(sayCalendar({ ...plan, gym: { ...plan.gym, name: "Kiln Yard", assumed: false } })).toBe(
      "The calendar holds warm-up and start at Kiln Yard, with the first lift; it reminds you 45 minutes before.",
    );
  });

  it("says why there is none, and what helps", () => {
    expect(sayCalendar(without(plan, "start"))).toBe(
      "No calendar yet: your start is not known. Tell your coach the day and the time.",
    );
  });

  it("is empty for a typical band", () => {
    expect(sayCalendar({ ...plan, athlete: { ...plan.athlete, anonymous: true } })).toBe("");
  });
});

it("the first lift is told with its load and its clock", () => {
  // The window opens at 8:30 of the workout; the sample's first lift is at 10:15 on that clock, with 58 kg.
  expect(sayFirstLifts(plan)).toEqual(["Part B: first lift 58\u00a0kg at 10:15 on the clock."]);
});
