import { describe, expect, it } from "vitest";
import { situationOf } from "../../../src/compute/conditions/situation-of.ts";
import type { Athlete } from "../../../src/models/athlete.ts";
import { kilograms, metres, seconds } from "../../../src/models/quantity.ts";
import { athlete, plannedParts, workout } from "../../support/hand-made.ts";
import { sampleMovements } from "../../support/sample-movements.ts";
import { kiloGym } from "../../support/sample-gym.ts";

const sketches = [
  {
    lines: [
      { movement: "thruster", amount: 40, kilograms: 30 },
      { movement: "pull-up", amount: 40 },
    ],
  },
  {
    clock: { kind: "max-load", order: "as-written", length: { kind: "for", time: seconds(360) } },
    lines: [{ movement: "snatch" }],
  },
] as const;
const input = { workout: workout(sketches), movements: sampleMovements, date: "2026-11-26" } as const;

describe("the situation of an athlete and a workout", () => {
  it("knows what the athlete states", () => {
    const { numbers, facts } = situationOf({
      ...input,
      athlete: athlete({
        birthYear: 1990,
        bodyMass: kilograms(61),
        height: metres(1.68),
        warmUpTime: seconds(2400),
        heat: { wbgt: 26.5, acclimatised: false },
        habits: ["starts-too-fast"],
        prefers: { "pull-up-style": "butterfly" },
        cannot: ["bar-muscle-up"],
        limits: [{ joint: "shoulder", condition: "asthma", avoid: ["kipping"], without: [] }],
      }),
    });
    // 2026 - 1990 = 36, and 35 until the unknown birthday
    expect(numbers).toEqual({
      "training-hours": 5,
      age: 35,
      "body-mass": 61,
      height: 1.68,
      wbgt: 26.5,
      "warm-up-minutes": 40,
    });
    expect(facts).toMatchObject({
      level: ["regular"],
      recovery: ["usual"],
      habit: ["starts-too-fast"],
      prefers: ["butterfly"],
      cannot: ["bar-muscle-up"],
      acclimatised: ["no"],
      "limit-joint": ["shoulder"],
      "limit-condition": ["asthma"],
      "limit-stress": ["kipping"],
      retry: ["open"],
      sex: ["female"],
    });
  });

  it("leaves unknown what the athlete does not state", () => {
    const stated = ["birthYear", "bodyMass", "sex"];
    const nameless = Object.fromEntries(
      Object.entries(athlete()).filter(([field]) => !stated.includes(field)),
    ) as Athlete;
    const { numbers, facts } = situationOf({ ...input, athlete: nameless });
    // Hours of training are those usual at the level.
    expect(numbers).toEqual({ "training-hours": 5 });
    expect(facts.sex).toBeUndefined();
    expect(facts.acclimatised).toBeUndefined();
    expect(facts["gym-has"]).toBeUndefined();
    expect(facts.ending).toBeUndefined();
  });

  it("keeps a limit up to and on its last day, and no longer", () => {
    const limited = athlete({ limits: [{ joint: "knee", avoid: [], without: [], until: "2026-11-26" }] });
    expect(situationOf({ ...input, athlete: limited }).facts["limit-joint"]).toEqual(["knee"]);
    const later = situationOf({ ...input, athlete: limited, date: "2026-11-27" });
    expect(later.facts["limit-joint"]).toEqual([]);
  });

  it("knows what the workout holds", () => {
    const { facts } = situationOf({ ...input, athlete: athlete() });
    expect(facts.movement).toEqual(["thruster", "pull-up", "snatch"]);
    expect(facts.format).toEqual(["for-time", "max-load"]);
    expect(facts["has-lift"]).toEqual(["yes"]);
    expect(facts.taxes).toContain("pull");
    expect(facts.stress).toContain("kipping");
    expect(facts["needs-catching"]).toEqual(["no"]);
  });

  it("knows from the planned parts how long the workout and the window for the lift are", () => {
    // 80 reps at 3 s make 240 s, then the window of 360 s: 10 minutes, of which 6 for the lift
    const { numbers, facts } = situationOf({ ...input, athlete: athlete(), parts: plannedParts(sketches) });
    expect(numbers).toMatchObject({ "workout-minutes": 10, "window-minutes": 6 });
    expect(facts.ending).toEqual(["finishes"]);
  });

  it("knows where the athlete stands among the starts of the day and before the deadline", () => {
    const starts = ["2026-11-26T10:00", "2026-11-26T13:30", "2026-11-27T09:00"].map((at) => ({
      workout: "hand-made-workout",
      at,
    }));
    const { numbers } = situationOf({
      ...input,
      athlete: athlete({ starts }),
      start: { at: "2026-11-26T13:30" },
      competition: {
        id: "c",
        name: "C",
        zone: "Europe/Oslo",
        opens: "2026-11-26T08:00",
        closes: "2026-11-27T13:30",
        counts: "best",
        ties: [],
        mayCome: ["row"],
        rules: [],
      },
    });
    // 13:30 to 9:00 the next day is 19.5 hours, 10:00 to 13:30 is 3.5
    expect(numbers).toMatchObject({
      "start-hour": 13.5,
      "starts-today": 2,
      "hours-since-start": 3.5,
      "hours-to-next": 19.5,
      "hours-to-deadline": 24,
    });
  });

  it("compares starts in different zones by the instant they are", () => {
    const starts = [
      { workout: "x", at: "2026-11-26T10:00", zone: "Europe/Oslo" },
      { workout: "y", at: "2026-11-26T12:00", zone: "Europe/London" },
    ];
    // 10:00 in Oslo is 9:00 in London in November: three hours
    const { numbers } = situationOf({
      ...input,
      athlete: athlete({ starts }),
      start: { at: "2026-11-26T10:00", zone: "Europe/Oslo" },
    });
    expect(numbers["hours-to-next"]).toBe(3);
  });

  it("knows the gym by its own words, its ergs and its bars", () => {
    const gym = { ...kiloGym, ergs: { row: 2, ski: 0 }, equipment: ["rack", "shared bars"] };
    const { facts } = situationOf({ ...input, athlete: athlete(), gym });
    expect(facts["gym-has"]).toEqual(["rack", "shared bars", "row", "barbell"]);
    expect(facts.sharing).toEqual(["yes"]);
    expect(situationOf({ ...input, athlete: athlete(), gym: kiloGym }).facts.sharing).toEqual(["no"]);
  });

  it("holds what is done in the place of what a limit keeps out", () => {
    const withholding = {
      forbids: (id: string) => id === "pull-up" || id === "thruster",
      replace: (id: string) => (id === "pull-up" ? sampleMovements.get("ring-row") : undefined),
    };
    const { facts } = situationOf({ ...input, athlete: athlete(), withholding });
    expect(facts.movement).toEqual(["ring-row", "snatch"]);
    expect(facts.stress).not.toContain("kipping");
  });

  it("holds the movements of the plan once there is one", () => {
    const parts = plannedParts([{ lines: [{ movement: "ring-row", amount: 10 }] }]);
    expect(situationOf({ ...input, athlete: athlete(), parts }).facts.movement).toEqual(["ring-row"]);
  });

  it("counts a line as work and a prescribed pause as rest", () => {
    const [paced] = plannedParts([{ lines: [{ movement: "row", amount: 400, unit: "metres" }] }]);
    const work = paced?.pacing?.rows[0];
    if (paced?.pacing === undefined || work === undefined) throw new Error("no row");
    const rest = { ...work, kind: "rest" as const, start: work.end, end: work.end + 50 };
    const parts = [{ ...paced, pacing: { ...paced.pacing, rows: [work, rest] } }];
    // 400 m at 0.25 s a metre are 100 s of work against 50 s of rest
    expect(situationOf({ ...input, athlete: athlete(), parts }).numbers["work-rest-ratio"]).toBe(2);
  });
});
