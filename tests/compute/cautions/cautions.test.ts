import { describe, expect, it } from "vitest";
import { cautionsOf } from "../../../src/compute/cautions/cautions.ts";
import type { Athlete } from "../../../src/models/athlete.ts";
import { athlete, type PartSketch } from "../../support/hand-made.ts";
import { cautions } from "../../support/library.ts";
import { situationsFor } from "../../support/situations-for.ts";
import { kiloGym } from "../../support/sample-gym.ts";

const told = (given: Partial<Athlete>, parts: readonly PartSketch[] = [{ lines: [{ movement: "row" }] }]) => {
  const { situation, movements } = situationsFor(athlete(given), parts, { gym: kiloGym });
  return cautionsOf(cautions, situation, movements);
};
const ids = (given: Partial<Athlete>, parts?: readonly PartSketch[]): readonly string[] =>
  told(given, parts).map((each) => each.id);

const ALWAYS = [
  "stop-chest-and-breath",
  "stop-faint-or-confused",
  "stop-sharp-pain",
  "emergency-number",
  "what-prevails",
];

describe("the cautions of a brief", () => {
  it("are stop signs and what prevails, where nothing else comes up", () => {
    expect(ids({})).toEqual(ALWAYS);
  });

  it("stand in order: stop signs, what to mind, what prevails", () => {
    const weights = told({ heat: { wbgt: 33, acclimatised: false }, birthYear: 2012 }).map(
      (each) => each.weight,
    );
    const rank = weights.map((weight) => ["stop", "care", "rule"].indexOf(weight));
    expect(rank).toEqual([...rank].sort());
    expect(told({ heat: { wbgt: 33, acclimatised: false } })[0]?.id).toBe("stop-chest-and-breath");
  });

  // Armstrong et al. 2007, Med Sci Sports Exerc 39(3):556-572, heat table (PMC5094838, table 3), its four bands.
  it.each([
    [27, false, "heat-under-28-not-used-to-it"],
    [27, true, "heat-under-28"],
    [27.8, true, "heat-under-28"],
    [27.9, true, "heat-28"],
    [29, false, "heat-28-not-used-to-it"],
    [29, true, "heat-28"],
    [30, false, "heat-28-not-used-to-it"],
    [30.1, false, "heat-30-not-used-to-it"],
    [31, false, "heat-30-not-used-to-it"],
    [31, true, "heat-30"],
    [32.2, true, "heat-30"],
    [33, false, "heat-over-32"],
    [33, true, "heat-over-32"],
  ])("in heat of %s C WBGT, acclimatised %s, hold %s and no other band", (wbgt, acclimatised, id) => {
    const heat = ids({ heat: { wbgt, acclimatised } }).filter((each) => each.startsWith("heat-"));
    expect(heat).toEqual([id]);
  });

  it("say what brought them up, and nothing where they always stand", () => {
    const shoulder = told({ limits: [{ joint: "shoulder", avoid: [], without: [] }] }, [
      { lines: [{ movement: "row" }, { movement: "pull-up", amount: 20 }] },
    ]);
    expect(shoulder.find((each) => each.id === "shoulder-or-arm")?.because).toEqual([
      { of: "limit-joint", word: "shoulder", movement: "pull-ups" },
      { of: "stress", word: "overhead", movement: "pull-ups" },
    ]);
    expect(shoulder.find((each) => each.id === "stop-sharp-pain")).not.toHaveProperty("because");
  });

  it("weigh conditions on a movement one movement at a time", () => {
    // A light squat beside a clean for load: the miss that lands on the lifter is not the one lifted for load.
    const parts: readonly PartSketch[] = [
      { lines: [{ movement: "back-squat", amount: 20, kilograms: 20 }] },
      { clock: { kind: "max-load", order: "as-written" }, lines: [{ movement: "power-clean" }] },
    ];
    expect(ids({}, parts)).not.toContain("heavy-without-catch");
    const squat: readonly PartSketch[] = [
      { clock: { kind: "max-load", order: "as-written" }, lines: [{ movement: "back-squat" }] },
    ];
    expect(ids({}, squat)).toContain("heavy-without-catch");
  });
});
