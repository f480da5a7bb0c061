import { describe, expect, it } from "vitest";
import type { Reader } from "../../../src/components/reader.ts";
import {
  showFirstLift,
  showHalf,
  showLoad,
  showSets,
  showShare,
  showSplit,
  showTarget,
} from "../../../src/components/words/show-word.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const names = ["clean-and-jerk", "pull-up", "kettlebell-swing"];
const movementNamed: Reader["movementNamed"] = (name) => {
  const id = name.toLowerCase().replaceAll(" ", "-").replace(/s$/, "");
  return names.includes(id) ? { id, name: id.replaceAll("-", " "), plural: `${id}s` } : undefined;
};
const plan = samplePlans.forTimeThenLift;
const reader: Reader = {
  kind: "one",
  plan,
  habits: [],
  limits: [],
  // 70% of 72 kg is 50.4, and 50 kg is what the plates can make below.
  loadAt: (movement, share) =>
    movement === "clean-and-jerk" && share === 0.7
      ? {
          mass: { value: 50, unit: "kg" },
          kilograms: 50,
          pieces: 1,
          perSide: [{ plate: { value: 15, unit: "kg" }, count: 1 }],
        }
      : undefined,
  movementNamed,
};
const anyone: Reader = { kind: "anyone", movementNamed };
const withheld: Reader = { ...reader, plan: samplePlans.almostNothingKnown };

describe("a word in a coach's text", () => {
  it("shows a share of a lift as it can be loaded", () => {
    expect(showLoad({ of: "clean and jerk", share: "70%" }, reader)).toEqual({
      text: "50\u00a0kg (15\u00a0kg a side)",
      own: true,
    });
    expect(showLoad({ of: "clean and jerk", share: "70%" }, anyone)).toEqual({
      text: "70% of your best clean and jerk",
      own: false,
    });
  });

  it("shows target, split, half and first lift as the plan has them", () => {
    // The sample ends at 8:30, its second round at 3:13, half of the work is done at 4:28; it opens with 58 kg.
    expect(showTarget({}, reader).text).toBe("8:30");
    expect(showSplit({ round: 2 }, reader).text).toBe("3:13");
    expect(showSplit({ round: "2", part: "a" }, reader).text).toBe("3:13");
    expect(showHalf({}, reader).text).toBe("4:28");
    expect(showFirstLift({}, reader).text).toBe("58\u00a0kg");
  });

  it("shows the sets of a movement, of the first round where none is named", () => {
    expect(showSets({ of: "pull-up" }, reader).text).toBe("7-5, rest 6\u00a0s");
    expect(showSets({ of: "pull-ups", round: "5" }, reader).text).toBe("4-4-4, rest 6\u00a0s each");
  });

  it("shows how heavy a load is for the reader", () => {
    // 58 of 71 kg.
    expect(showShare({ of: "clean and jerk" }, reader).text).toBe("82%");
  });

  it("speaks in general where the page is for anyone", () => {
    expect(
      [
        showTarget({}, anyone),
        showSplit({ round: "3" }, anyone),
        showHalf({}, anyone),
        showSets({ of: "pull-up" }, anyone),
        showFirstLift({}, anyone),
        showShare({ of: "pull-up" }, anyone),
      ].map(({ text, own }) => [text, own]),
    ).toEqual([
      ["your band's target", false],
      ["your band's clock of round 3", false],
      ["the mark of half the work on your band's tape", false],
      ["your band's sets", false],
      ["your band's first lift", false],
      ["your band's share", false],
    ]);
  });

  it("says plainly that there is no value, and where it is withheld so", () => {
    expect(showLoad({ of: "pull-up", share: "50%" }, reader)).toEqual({ text: "(not planned)", own: false });
    expect(showFirstLift({}, withheld)).toEqual({ text: "(withheld, see the top of the page)", own: false });
    expect(showSplit({ round: "9" }, reader)).toEqual({ text: "(you do not get there)", own: false });
    expect(showSplit({ round: "1", part: "B" }, reader)).toEqual({ text: "(not planned)", own: false });
  });

  it("throws for what the check does not let through", () => {
    expect(() => showLoad({ of: "nothing", share: "70%" }, reader)).toThrow(
      new Error('a word in the text of a workout names the movement "nothing", which does not exist'),
    );
    expect(() => showLoad({ of: "clean and jerk", share: "70" }, reader)).toThrow(
      new Error('a word in the text of a workout has share="70": the percent sign is missing'),
    );
  });
});
