import { describe, expect, it } from "vitest";
import { withhold } from "../../../src/compute/cautions/withhold.ts";
import type { Athlete, Limit } from "../../../src/models/athlete.ts";
import { athlete, type PartSketch, workout } from "../../support/hand-made.ts";
import { sampleLibrary } from "../../support/library.ts";

const limit = (given: Partial<Limit>): Limit => ({ avoid: [], without: [], ...given });
const lifted = { kind: "max-load", order: "as-written" } as const;
const sketches: readonly PartSketch[] = [
  { lines: [{ movement: "pull-up" }, { movement: "burpee" }, { movement: "box-jump-over" }] },
  { clock: lifted, lines: [{ movement: "clean-and-jerk" }] },
];
const against = (given: Partial<Athlete>, parts = sketches) =>
  withhold(athlete(given), workout(parts), sampleLibrary, "2026-11-26");

/** The library with a pull-up that may be kipped or not, as in our content. */
function eitherWay(): typeof sampleLibrary.movements {
  const pullUp = sampleLibrary.movements.get("pull-up");
  if (pullUp === undefined) throw new Error("the sample has pull-ups");
  return new Map([
    ...sampleLibrary.movements,
    ["pull-up", { ...pullUp, stresses: ["overhead"], withoutKipping: "strict-pull-up" }],
  ]);
}

describe("what a plan withholds", () => {
  it("is nothing where nothing is stated", () => {
    const plan = against({});
    expect(plan.withheld).toEqual([]);
    expect(plan.noMaxLift).toBe(false);
    expect(plan.noWorkout).toBe(false);
    expect(plan.replace("pull-up")).toBeUndefined();
    expect(plan.forbids("pull-up")).toBe(false);
  });

  it("is a movement with a stress that a limit rules out, and the nearest easier one stands in for it", () => {
    const plan = against({ limits: [limit({ joint: "shoulder", avoid: ["kipping"] })] });
    expect(plan.withheld).toEqual([
      {
        what: "movement",
        part: "a",
        movement: "pull-up",
        of: "pull-ups",
        reason: { kind: "limit", joint: "shoulder" },
        instead: "strict pull-ups",
      },
    ]);
    expect(plan.replace("pull-up")?.id).toBe("strict-pull-up");
    expect(plan.noMaxLift).toBe(false);
  });

  it("is kipping alone where a movement may be done strictly: then it is done so, at the pace of that", () => {
    const plan = withhold(
      athlete({ limits: [limit({ joint: "shoulder", avoid: ["kipping"] })] }),
      workout([{ lines: [{ movement: "pull-up" }] }]),
      { ...sampleLibrary, movements: eitherWay() },
      "2026-11-26",
    );
    expect(plan.withheld.map(({ what, of, way, instead }) => [what, of, way, instead])).toEqual([
      ["option", "pull-ups", "kipping", "strict pull-ups"],
    ]);
    expect(plan.replace("pull-up")?.id).toBe("strict-pull-up");
  });

  it("goes on to a movement two steps easier when the first is ruled out too, or cannot be done", () => {
    const overhead = against({ limits: [limit({ avoid: ["kipping", "overhead"] })] });
    expect(overhead.replace("pull-up")?.id).toBe("ring-row");
    const cannot = against({ limits: [limit({ avoid: ["kipping"] })], cannot: ["strict-pull-up"] });
    expect(cannot.replace("pull-up")?.id).toBe("ring-row");
  });

  it("names nothing instead where nothing easier is left", () => {
    const plan = against({ limits: [limit({ without: ["burpee"] }), limit({ avoid: ["deep-knee-bend"] })] });
    expect(plan.withheld.map((each) => [each.what, each.movement, each.instead])).toEqual([
      ["movement", "burpee", undefined],
      ["part", undefined, undefined],
    ]);
    expect(plan.replace("burpee")).toBeUndefined();
    expect(plan.forbids("burpee")).toBe(true);
  });

  it("is nothing any more once a limit has ended", () => {
    const ended = limit({ avoid: ["kipping"], until: "2026-11-25" });
    expect(against({ limits: [ended] }).withheld).toEqual([]);
  });

  it("is nothing where the line leaves another movement to choose", () => {
    const made = workout([{ lines: [{ movement: "pull-up" }] }]);
    const [part] = made.parts;
    const [step] = part?.work["everyone"] ?? [];
    if (part === undefined || step?.kind !== "effort") throw new Error("no line");
    const pieces = [{ movements: ["pull-up", "ring-row"], amount: { kind: "max", unit: "reps" } }] as const;
    const open = { ...made, parts: [{ ...part, work: { everyone: [{ ...step, pieces }] } }] };
    const who = athlete({ limits: [limit({ avoid: ["kipping"] })] });
    expect(withhold(who, open, sampleLibrary, "2026-11-26").withheld).toEqual([]);
  });

  it("is the lift for load, in pregnancy, and what could make one fall or lie", () => {
    const plan = against({ limits: [limit({ condition: "pregnancy" })] });
    expect(plan.noMaxLift).toBe(true);
    expect(plan.noWorkout).toBe(false);
    expect(plan.withheld.map((each) => [each.what, each.part, each.movement, each.instead])).toEqual([
      ["movement", "a", "burpee", "air squats"],
      ["movement", "a", "box-jump-over", "box step overs"],
      ["part", "b", undefined, undefined],
    ]);
    expect(plan.withheld.at(-1)).toMatchObject({
      reason: {
        kind: "caution",
        because: [{ of: "limit-condition", word: "pregnancy" }],
        ask: "Ask the midwife or doctor who looks after you, and a coach licensed for it, before you lift for a maximum.",
      },
    });
  });

  it.each(["after-birth", "heart", "hernia"] as const)("is the lift for load with %s", (condition) => {
    const plan = against({ limits: [limit({ condition })] });
    expect(plan.withheld.map((each) => each.what)).toEqual(["part"]);
  });

  it("is the lift for load where the athlete keeps away from maxima, and no lighter barbell work", () => {
    const plan = against({ limits: [limit({ avoid: ["maximal-lift"] })] }, [
      { lines: [{ movement: "deadlift", kilograms: 60 }] },
      { clock: lifted, lines: [{ movement: "deadlift" }] },
    ]);
    expect(plan.withheld.map((each) => [each.what, each.part])).toEqual([["part", "b"]]);
    expect(plan.forbids("deadlift")).toBe(false);
  });

  it("is the lift for load, with no stand-in, where a movement of it is kept away from", () => {
    const plan = against({ limits: [limit({ avoid: ["loaded-hinge"] })] }, [
      { clock: lifted, lines: [{ movement: "deadlift" }] },
    ]);
    expect([...plan.withoutLift]).toEqual(["a"]);
    expect(plan.withheld.map(({ what, instead }) => ({ what, instead }))).toEqual([
      { what: "part", instead: undefined },
    ]);
  });

  it("is the lift for load under thirteen, and not at sixteen", () => {
    // Certainly twelve, or possibly eleven, on a day of 2026
    expect(against({ birthYear: 2013 }).noMaxLift).toBe(true);
    expect(against({ birthYear: 2010 }).noMaxLift).toBe(false);
  });

  it("is the whole workout after a concussion that nobody has cleared", () => {
    const plan = against({ limits: [limit({ condition: "concussion" })] });
    expect(plan.noWorkout).toBe(true);
    expect(plan.withheld[0]).toEqual({
      what: "workout",
      of: "Hand-made workout",
      reason: {
        kind: "caution",
        title: "Concussion",
        because: [{ of: "limit-condition", word: "concussion" }],
        ask: "Ask a doctor licensed to clear athletes after a blow to the head.",
      },
    });
  });

  // Armstrong et al. 2007, Med Sci Sports Exerc 39(3):556-572, heat table (PMC5094838, table 3): cancelled for those not
  // acclimatised from 30.1 C, for everybody above 32.2 C.
  it.each([
    [27, false, false],
    [27, true, false],
    [29, false, false],
    [29, true, false],
    [31, false, true],
    [31, true, false],
    [33, false, true],
    [33, true, true],
  ])("in heat of %s C WBGT, acclimatised %s: no workout %s", (wbgt, acclimatised, noWorkout) => {
    expect(against({ heat: { wbgt, acclimatised } }).noWorkout).toBe(noWorkout);
  });

  it("comes out the same twice", () => {
    const given = { limits: [limit({ joint: "knee" as const, avoid: ["impact", "kipping"] })] };
    expect(against(given).withheld).toEqual(against(given).withheld);
  });
});
