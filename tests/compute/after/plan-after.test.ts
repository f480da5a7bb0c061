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
    unbroken: (id) => who.unbroken.find((each) => each.movement === id)?.reps,
    cannot: who.cannot,
    hoursAreStated: who.trainingHours !== undefined,
  });
}
const pieces = (plan: After): readonly string[] => plan.day.pieces.map((piece) => piece.id);
/** Somebody for whom a session on the same day is nothing unusual. */
const trained = { trainingHours: 12 } as const;
const sitUps: readonly PartSketch[] = [{ lines: [{ movement: "sit-up", amount: 50 }] }];
const starts = ["2026-11-26T10:00", "2026-11-26T15:00"].map((at) => ({ workout: "x", at }));

describe("what comes after", () => {
  it("is a plan by its schema: cool-down, food and drink, sleep, and the rest of the day", () => {
    const plan = after();
    expect(afterField.safeParse(plan).error).toBeUndefined();
    expect([...new Set(plan.steps.map((step) => step.kind))]).toEqual(["cool-down", "refuel", "sleep"]);
    expect(pieces(plan)).toContain("rest");
  });

  it("counts food by body mass", () => {
    // Thomas, Erdman and Burke 2016: 0.25 to 0.3 g of protein per kilogram; 0.25 x 60 = 15, 0.3 x 60 = 18
    const meal = after({ bodyMass: kilograms(60) }).steps.find((step) => step.id === "eat-a-meal");
    expect(meal?.amount).toEqual({ low: 15, high: 18, unit: "g", of: "protein", perKilogram: false });
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
      unbroken: () => undefined,
      cannot: [],
      hoursAreStated: false,
    });
    expect(plan.steps.find((step) => step.id === "eat-a-meal")?.amount).toEqual({
      low: 0.25,
      high: 0.3,
      unit: "g",
      of: "protein",
      perKilogram: true,
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

describe("the rest of the day", () => {
  it("always holds rest, last in the list, and first where rest comes first", () => {
    for (const plan of [after(), after({ retry: "planned" }), after({ lifts: [], ...trained })]) {
      expect(plan.day.pieces.at(-1)).toMatchObject({ id: "rest", check: "bad", work: [] });
      expect(pieces(plan).filter((id) => id === "rest")).toHaveLength(1);
    }
    expect(pieces(after({ level: "new" }))[0]).toBe("rest");
  });

  it("is a session in its order for somebody used to much training", () => {
    const plan = after({ ...trained, retry: "no" }, sitUps);
    expect(plan.day.kind).toBe("session");
    expect(pieces(plan)).toEqual([
      "overhead-touch",
      "strict-pulls",
      "strict-presses",
      "easy-jog-later",
      "easy-end-later",
      "rest",
    ]);
    expect(plan.day.minutes).toBeLessThanOrEqual(75);
    expect(plan.day.pieces.find((piece) => piece.id === "overhead-touch")).toMatchObject({ check: "good" });
    expect(plan.day.pieces.find((piece) => piece.id === "easy-jog-later")).toMatchObject({
      check: "middling",
    });
  });

  it("is something light for who trains less or does not say, as a guess", () => {
    expect(after({ trainingHours: 5 }).day).toMatchObject({
      kind: "light",
      because: [{ what: "training", value: 5 }],
    });
    expect(after().day.because).toEqual([{ what: "training-guessed", value: 5 }]);
    expect(pieces(after())).toContain("easy-walk");
  });

  it("is rest first for the new, the young, the ill and the limited, however much they train", () => {
    const rests = (given: Partial<Athlete>) => after({ ...trained, ...given }).day.kind;
    expect(rests({ level: "new" })).toBe("rest");
    expect(rests({ birthYear: 2010 })).toBe("rest");
    expect(rests({ limits: [{ condition: "recent-illness", avoid: [], without: [] }] })).toBe("rest");
    expect(rests({ limits: [{ joint: "shoulder", avoid: ["overhead"], without: [] }] })).toBe("rest");
    expect(rests({})).toBe("session");
  });

  it("is for eating and resting where the next start is less than eight hours away", () => {
    const plan = after({ ...trained, starts }, row, { start: { at: "2026-11-26T10:00" } });
    expect(plan.day).toMatchObject({ kind: "between", because: [{ what: "next-start", value: 5 }] });
    expect(pieces(plan)).toEqual(["easy-walk", "rest"]);
  });

  it("takes loads from the athlete's own lifts, rounded down to plates a person takes", () => {
    const press = after({ ...trained, retry: "no" }, sitUps).day.pieces.find(
      (piece) => piece.id === "overhead-touch",
    );
    // 70 % of 100 kg (less what a result of six days ago loses, which is nothing) is 70 kg
    expect(press?.work).toMatchObject([
      { movement: "push-press", sets: 4, reps: 2, load: { kilograms: 40 } },
    ]);
  });

  it("holds no lift over half of a best that is not the athlete's own", () => {
    const plan = after({ ...trained, retry: "no", lifts: [] }, sitUps);
    expect(pieces(plan)).not.toContain("overhead-touch");
  });

  it("leaves muscles alone that have just worked, unless it is easy", () => {
    const squats: readonly PartSketch[] = [
      { lines: [{ movement: "back-squat", amount: 50, kilograms: 50 }] },
    ];
    expect(pieces(after({ ...trained, retry: "no" }, squats))).not.toContain("squat-touch");
  });

  it("keeps the skill of what may still come", () => {
    const coming = { competition: competition(["power-snatch", "double-under"]) };
    expect(pieces(after(trained, row, coming))).toContain("rope-rhythm");
    expect(pieces(after())).not.toContain("snatch-positions");
  });

  it("holds no strength work when another try is planned, but for a heavy touch of a lift", () => {
    const plan = after({ ...trained, level: "competitor", birthYear: 1995, retry: "planned" });
    expect(pieces(plan)).toContain("look-at-the-film");
    for (const id of ["squat-touch", "pull-from-the-floor-touch", "overhead-touch", "heavy-touch"]) {
      expect(pieces(plan)).not.toContain(id);
    }
  });

  it("holds nothing the athlete keeps away from", () => {
    const given = { limits: [{ joint: "shoulder" as const, avoid: ["overhead" as const], without: [] }] };
    const plan = after({ ...trained, ...given }, row, { competition: competition(["power-snatch"]) });
    expect(pieces(plan)).not.toContain("overhead-touch");
    expect(pieces(plan)).not.toContain("snatch-positions");
  });

  it("comes out the same twice", () => {
    expect(after(trained)).toEqual(after(trained));
  });
});
