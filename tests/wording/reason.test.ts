import { describe, expect, it } from "vitest";
import { FACTS, METRICS } from "../../src/models/condition.ts";
import { sayBecause, sayReason } from "../../src/wording/reason.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");

describe("the reason of a choice", () => {
  it.each([
    [{ what: "unbroken", value: 14, is: "under", threshold: 20 }, "your best unbroken set is 14 (under 20)"],
    [
      { what: "load-share", value: 0.62, is: "at-least", threshold: 0.5 },
      "the load as a share of your best lift is 62% (at least 50%)",
    ],
    [
      { what: "body-mass", value: 64, is: "at-most", threshold: 70 },
      "your body mass is 64_kg (at most 70_kg)",
    ],
    [
      { what: "start-hour", value: 18.5, is: "over", threshold: 18 },
      "the hour of your start is 18:30 (over 18:00)",
    ],
    [{ what: "limit-joint", value: "wrist", is: "holds" }, "you state a limit at the wrist"],
    [{ what: "gym-has", value: "pins", is: "does-not-hold" }, "your gym has no pins"],
    [{ what: "has-lift", value: "yes", is: "holds" }, "a lift is part of it"],
    [{ what: "has-lift", value: "yes", is: "does not hold" }, "no lift is part of it"],
    [{ what: "limiter", value: "no", is: "holds" }, "it does not limit you here"],
    [{ what: "something-new", value: "x-y", is: "holds" }, "something new is x y"],
  ] as const)("%j reads: %s", (reason, text) => {
    expect(sayReason(reason, "kg")).toBe(nb(text));
  });

  it.each(METRICS)("has words for the metric %s", (what) => {
    expect(sayReason({ what, value: 1, is: "over", threshold: 0 }, "kg")).not.toBe(
      `${what.replaceAll("-", " ")} is 1`,
    );
  });

  it.each(FACTS)("has words for the fact %s", (what) => {
    expect(sayReason({ what, value: "yes", is: "holds" }, "kg")).not.toBe(
      `${what.replaceAll("-", " ")} is yes`,
    );
  });
});

describe("why an option was picked", () => {
  const [choice] = samplePlans.forTimeThenLift.choices;
  if (!choice) throw new Error("the sample has a choice");

  const reason = {
    say: "At {load share} of your best, {set} at a time; your best set is {best set}.",
    values: [
      { gap: "load share", value: 0.612, guessed: false },
      { gap: "set", value: 5, guessed: false },
      { gap: "best set", value: 18, guessed: true },
    ],
  };

  it("is the reason of the trade with the athlete's numbers, a guess told as one", () => {
    expect(sayBecause({ ...choice, reason }, "kg")).toBe(
      "At 61% of your best, 5 at a time; your best set is 18 (a guess from your level).",
    );
  });

  it("names what decided when that was a limit or a wish", () => {
    const limit = [{ what: "limit-joint", value: "wrist", is: "holds" }];
    expect(sayBecause({ ...choice, because: limit, decidedBy: "limit" }, "kg")).toBe(
      "You state a limit at the wrist.",
    );
    expect(sayBecause({ ...choice, decidedBy: "preference" }, "kg")).toBe("You prefer it.");
  });

  it("is nothing where there is nothing to say but that it is usual", () => {
    expect(sayBecause({ ...choice, because: [], decidedBy: "default" }, "kg")).toBeUndefined();
  });
});
