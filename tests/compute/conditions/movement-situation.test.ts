import { describe, expect, it } from "vitest";
import {
  atMovement,
  type MovementSituationInput,
} from "../../../src/compute/conditions/movement-situation.ts";
import { situationOf } from "../../../src/compute/conditions/situation-of.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { athlete, plannedParts, workout } from "../../support/hand-made.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const sketches = [
  {
    rounds: 3,
    lines: [
      { movement: "pull-up", amount: 10 },
      { movement: "power-snatch", amount: 5, kilograms: 40 },
    ],
  },
];
const parts = plannedParts(sketches, { secondsPerUnit: 2 });

function at(id: string, more: Partial<MovementSituationInput> = {}): ReturnType<typeof atMovement> {
  const movement = sampleMovements.get(id);
  if (movement === undefined) throw new Error(`no ${id}`);
  const who = more.athlete ?? athlete();
  const situation = situationOf({
    athlete: who,
    workout: workout(sketches),
    movements: sampleMovements,
    date: "2026-11-26",
    parts,
  });
  return atMovement({
    situation,
    movement,
    movements: sampleMovements,
    athlete: who,
    date: "2026-11-26",
    parts,
    abilities: { best: () => undefined },
    ...more,
  });
}

const bests: Readonly<Record<string, { kilograms: number; basis: "tested" | "level" }>> = {
  snatch: { kilograms: 64, basis: "tested" },
  "power-snatch": { kilograms: 56, basis: "tested" },
};

describe("the situation at one movement", () => {
  it("knows amount, total and pace", () => {
    expect(at("pull-up").numbers).toMatchObject({ amount: 10, "total-amount": 30, "seconds-per-unit": 2 });
  });

  it("takes the unbroken set from the model of capacity, else the athlete's own, else the level's", () => {
    const own = athlete({ unbroken: [{ movement: "pull-up", reps: 20 }] });
    const modelled = { best: () => undefined, unbroken: () => 16 };
    expect(at("pull-up", { athlete: own, abilities: modelled }).numbers.unbroken).toBe(16);
    expect(at("pull-up", { athlete: own }).numbers).toMatchObject({ unbroken: 20, "set-share": 0.5 });
    expect(at("pull-up").numbers.unbroken).toBe(15);
  });

  it("knows the load as a share of the best lift", () => {
    const abilities = { best: (id: string) => bests[id] };
    // 40 of 56 kg
    expect(at("power-snatch", { abilities }).numbers["load-share"]).toBeCloseTo(0.7143, 4);
    expect(at("power-snatch", { abilities }).facts["best-known"]).toEqual(["yes"]);
    expect(at("power-snatch").numbers["load-share"]).toBeUndefined();
  });

  it("compares a style with its general movement, from the athlete's own results only", () => {
    const abilities = { best: (id: string) => bests[id] };
    // 56 of 64 kg
    expect(at("power-snatch", { abilities }).numbers["ratio-to-parent"]).toBe(0.875);
    expect(at("snatch", { abilities }).numbers["ratio-to-parent"]).toBe(0.875);
    const guessed = { best: (id: string) => bests[id] && { ...bests[id], basis: "level" as const } };
    expect(at("power-snatch", { abilities: guessed }).numbers["ratio-to-parent"]).toBeUndefined();
    const sets = athlete({
      unbroken: [
        { movement: "pull-up", reps: 20 },
        { movement: "butterfly-pull-up", reps: 30 },
      ],
    });
    expect(at("pull-up", { athlete: sets }).numbers["ratio-to-parent"]).toBe(1.5);
  });

  it("narrows kind, muscles and stresses to the movement", () => {
    const { facts } = at("power-snatch");
    expect(facts["movement-kind"]).toEqual(["barbell"]);
    expect(facts.taxes).not.toContain("pull");
    expect(facts.stress).not.toContain("kipping");
    expect(facts.movement).toContain("pull-up");
  });

  it("says which movement limits", () => {
    expect(at("pull-up").facts.limiter).toEqual(["yes"]);
    expect(at("power-snatch").facts.limiter).toEqual(["no"]);
  });

  it("sets the total against what the athlete is used to, where that is known", () => {
    const usual = new Map([["pull-up", { amount: 20, last: "2026-11-16" }]]);
    expect(at("pull-up", { usual }).numbers).toMatchObject({
      "usual-amount": 20,
      "times-usual": 1.5,
      "days-unaccustomed": 10,
    });
    expect(at("pull-up").numbers["times-usual"]).toBeUndefined();
  });

  it("knows the load aimed at in a lift, not the opener", () => {
    const lifted = plannedParts([
      { clock: { kind: "max-load", order: "as-written" }, lines: [{ movement: "snatch" }] },
    ]);
    const load = { mass: { value: 60, unit: "kg" as const }, kilograms: 60, pieces: 1 };
    const attempt = {
      number: 1,
      clock: 0,
      load,
      chance: 0.8,
      lifted: 1,
      made: 0.9,
      onlyIfWell: false,
      lossShare: 0,
      restBefore: 0,
      afterMiss: { kind: "stop" as const },
    };
    const withAttempts = lifted.map((part) => ({
      ...part,
      ...(part.lifting && {
        lifting: {
          ...part.lifting,
          lifts: part.lifting.lifts.map((lift) => ({
            ...lift,
            target: 2,
            attempts: [attempt, { ...attempt, number: 2, load: { ...load, kilograms: 90 } }],
          })),
        },
      }),
    }));
    const abilities = { best: () => ({ kilograms: kilograms(80), basis: "tested" as const }) };
    expect(at("snatch", { parts: withAttempts, abilities }).numbers["load-share"]).toBe(1.125);
  });
});
