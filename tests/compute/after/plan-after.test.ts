import { describe, expect, it } from "vitest";
import { type After, planAfter } from "../../../src/compute/after/plan-after.ts";
import { bestLift } from "../../../src/compute/capacity/best-lift.ts";
import { withhold } from "../../../src/compute/cautions/withhold.ts";
import type { SituationInput } from "../../../src/compute/conditions/situation-of.ts";
import { chooseBar } from "../../../src/compute/lifting/plates.ts";
import type { Athlete, LiftResult } from "../../../src/models/athlete.ts";
import type { Competition } from "../../../src/models/competition.ts";
import { afterField } from "../../../src/models/plan/around.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { athlete, type PartSketch, workout } from "../../support/hand-made.ts";
import { sampleLibrary } from "../../support/library.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { situationsFor } from "../../support/situations-for.ts";

const row: readonly PartSketch[] = [{ lines: [{ movement: "row", amount: 2000, unit: "metres" }] }];
const lift = (movement: string, value: number): LiftResult => ({
  movement,
  load: { value, unit: "kg" },
  reps: 1,
  inReserve: 0,
  date: "2026-11-20",
  approximate: false,
});
const lifts = [
  lift("back-squat", 100),
  lift("deadlift", 130),
  lift("push-press", 60),
  lift("power-snatch", 50),
];
const competition = (mayCome: readonly string[]): Competition => ({
  id: "c",
  name: "C",
  zone: "Europe/Oslo",
  opens: "2026-11-20T08:00",
  closes: "2026-11-30T20:00",
  counts: "best",
  ties: [],
  mayCome,
  rules: [],
});

function after(
  given: Partial<Athlete> = {},
  parts = row,
  more: Partial<Pick<SituationInput, "competition" | "start">> = {},
): After {
  const who = athlete({ lifts, ...given });
  const { situation } = situationsFor(who, parts, { gym: kiloGym, ...more });
  const { movements } = sampleLibrary;
  return planAfter({
    library: sampleLibrary,
    gym: kiloGym,
    bar: chooseBar(kiloGym, who.sex),
    situation,
    withholding: withhold(who, workout(parts), sampleLibrary, "2026-11-26"),
    best: (id) => {
      const movement = movements.get(id);
      return movement && bestLift(who, movement, movements, "2026-11-26");
    },
  });
}
const options = (plan: After): readonly string[] => plan.options.map((option) => option.id);
const starts = ["2026-11-26T10:00", "2026-11-26T15:00"].map((at) => ({ workout: "x", at }));

describe("what comes after", () => {
  it("is a plan by its schema: cool-down, food and drink, sleep, a self-check and options", () => {
    const plan = after();
    expect(afterField.safeParse(plan).error).toBeUndefined();
    expect([...new Set(plan.steps.map((step) => step.kind))]).toEqual(["cool-down", "refuel", "sleep"]);
    expect(plan.selfCheck.length).toBeGreaterThanOrEqual(4);
  });

  it("counts food by body mass", () => {
    // Thomas, Erdman and Burke 2016: 0.25 to 0.3 g of protein per kilogram; 0.25 x 60 = 15, 0.3 x 60 = 18
    const meal = after({ bodyMass: kilograms(60) }).steps.find((step) => step.id === "eat-a-meal");
    expect(meal?.amount).toEqual({ low: 15, high: 18, unit: "g" });
  });

  it("gives the range for each kilogram where the body mass is not known", () => {
    const { bodyMass, ...unknown } = athlete({ lifts });
    expect(bodyMass).toBeDefined();
    const { situation } = situationsFor(unknown, row);
    const plan = planAfter({
      library: sampleLibrary,
      gym: kiloGym,
      bar: chooseBar(kiloGym, undefined),
      situation,
      withholding: { stresses: new Map(), forbids: () => false },
      best: () => undefined,
    });
    expect(plan.steps.find((step) => step.id === "eat-a-meal")?.amount).toEqual({
      low: 0.25,
      high: 0.3,
      unit: "g for each kg of body mass",
    });
  });

  it("hurries carbohydrate and fluid where the next start is less than eight hours away", () => {
    const plan = after({ starts }, row, { start: { at: "2026-11-26T10:00" } });
    const ids = plan.steps.map((step) => step.id);
    expect(ids).toContain("eat-soon");
    expect(ids).toContain("drink-back-soon");
    // Burke et al. 2011: 1.0 to 1.2 g per kilogram and hour; for 75 kg 75 and 90
    const eat = plan.steps.find((step) => step.id === "eat-soon");
    expect(eat?.amount?.low).toBeCloseTo(75, 9);
    expect(eat?.amount?.high).toBeCloseTo(90, 9);
    expect(after().steps.map((step) => step.id)).not.toContain("eat-soon");
  });

  it("suggests caffeine to an adult between two starts, never to the young or in pregnancy", () => {
    const at = { start: { at: "2026-11-26T10:00" } };
    const ids = (given: Partial<Athlete>) =>
      after({ starts, ...given }, row, at).steps.map((step) => step.id);
    expect(ids({})).toContain("coffee-you-know");
    expect(ids({ birthYear: 2010 })).not.toContain("coffee-you-know");
    expect(ids({ limits: [{ condition: "pregnancy", avoid: [], without: [] }] })).not.toContain(
      "coffee-you-know",
    );
  });

  it("cools down first in the heat", () => {
    const plan = after({ heat: { wbgt: 28, acclimatised: true } });
    expect(plan.steps[0]?.id).toBe("cool-in-the-shade");
  });
});

describe("the options of the same day", () => {
  it("always hold rest, offered at any answer, last in the list", () => {
    for (const plan of [after(), after({ retry: "planned" }), after({ lifts: [] })]) {
      expect(plan.options.at(-1)).toMatchObject({ id: "rest", check: "bad", work: [] });
      expect(options(plan).filter((id) => id === "rest")).toHaveLength(1);
    }
  });

  it("say from which answer of the check on they are offered", () => {
    const checks = Object.fromEntries(after().options.map((option) => [option.id, option.check]));
    expect(checks["squat-touch"] ?? checks["overhead-touch"]).toBe("good");
    expect(checks["easy-walk"] ?? checks["easy-mobility"]).toBe("bad");
  });

  it("take their loads from the athlete's own lifts, rounded down to plates", () => {
    const swings: readonly PartSketch[] = [{ lines: [{ movement: "sit-up", amount: 50 }] }];
    const press = after({}, swings).options.find((option) => option.id === "overhead-touch");
    // 60 % of 60 kg (less what a result of six days ago loses, which is nothing) is 36 kg: 15 + 2 x 10.5
    expect(press?.work).toMatchObject([
      { movement: "push-press", sets: 3, reps: 2, load: { kilograms: 36 } },
    ]);
  });

  it("name no load where the best is not the athlete's own", () => {
    const swings: readonly PartSketch[] = [{ lines: [{ movement: "sit-up", amount: 50 }] }];
    const press = after({ lifts: [] }, swings).options.find((option) => option.id === "overhead-touch");
    expect(press?.work[0]).not.toHaveProperty("load");
  });

  it("leave muscles alone that have just worked, unless it is easy", () => {
    const squats: readonly PartSketch[] = [
      { lines: [{ movement: "back-squat", amount: 50, kilograms: 50 }] },
    ];
    expect(options(after({}, squats))).not.toContain("squat-touch");
    const presses: readonly PartSketch[] = [
      { lines: [{ movement: "push-press", amount: 50, kilograms: 30 }] },
    ];
    expect(options(after({}, presses))).not.toContain("overhead-touch");
    expect(options(after({}, presses))).toContain("squat-touch");
  });

  it("put first what may still come", () => {
    const plan = after({}, row, { competition: competition(["power-snatch", "double-under"]) });
    expect(options(plan).slice(0, 2)).toEqual(["snatch-positions", "rope-rhythm"]);
    expect(options(after())).not.toContain("snatch-positions");
  });

  it("hold no heavier work when another try is planned", () => {
    const plan = after({ retry: "planned" });
    expect(options(plan)).toContain("look-at-the-film");
    for (const id of ["squat-touch", "pull-from-the-floor-touch", "overhead-touch"]) {
      expect(options(plan)).not.toContain(id);
    }
  });

  it("hold nothing the athlete keeps away from", () => {
    const given = {
      limits: [{ joint: "shoulder" as const, avoid: ["overhead" as const], without: ["deadlift"] }],
    };
    const plan = after(given, row, { competition: competition(["power-snatch"]) });
    expect(options(plan)).not.toContain("overhead-touch");
    expect(options(plan)).not.toContain("snatch-positions");
    expect(options(plan)).not.toContain("pull-from-the-floor-touch");
  });

  it("offer something for every answer of the check, and not too much", () => {
    const checks = after().options.map((option) => option.check);
    expect(new Set(checks)).toEqual(new Set(["good", "bad"]));
    expect(checks.length).toBeLessThanOrEqual(6);
    const withRow = after({}, row, { competition: competition(["row"]) });
    expect(withRow.options.length).toBeLessThanOrEqual(6);
  });

  it("come out the same twice", () => {
    expect(after()).toEqual(after());
  });
});
