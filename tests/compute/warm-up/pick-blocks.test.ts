import { describe, expect, it } from "vitest";
import { pickBlocks, type PickInput } from "../../../src/compute/warm-up/pick-blocks.ts";
import type { WarmUpBlock } from "../../../src/models/library.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const block = (
  id: string,
  more: Partial<Omit<WarmUpBlock, "when">> & { readonly when?: readonly string[] } = {},
): WarmUpBlock => {
  const { when = [], ...rest } = more;
  return {
    id,
    title: id.toUpperCase(),
    stage: "mobility",
    say: "Move.",
    time: { shortest: seconds(60), usual: seconds(120) },
    priority: 3,
    muscles: [],
    joints: [],
    stresses: [],
    perMovement: false,
    source: "made for tests",
    ...rest,
    when: when.flatMap((text) => {
      const read = readCondition(text);
      return read.ok ? [read.value] : [];
    }),
  };
};
const pick = (blocks: readonly WarmUpBlock[], more: Partial<PickInput> = {}) =>
  pickBlocks({
    blocks,
    situation: { numbers: {}, facts: { "gym-has": ["row"], stress: ["overhead"] } },
    movements: [],
    avoids: (each) => each.stresses.includes("impact"),
    longestStill: 45,
    forMovement: (say, { movement }) => say.replace("{movement}", movement.name),
    forWorkout: () => true,
    most: { ready: 1, mobility: 2, general: 1, specific: 1, build: 1, primer: 3, rehearsal: 1, rest: 1 },
    ...more,
  });
const ids = (result: ReturnType<typeof pick>): readonly string[] => result.picked.map((each) => each.id);

describe("the blocks of a warm-up", () => {
  it("are those whose conditions hold, the most needed first, up to the most of a stage", () => {
    const some = [
      block("a", { priority: 4 }),
      block("b", { when: ["stress overhead"] }),
      block("c", { when: ["stress kipping"], priority: 1 }),
      block("d", { priority: 2 }),
    ];
    expect(ids(pick(some))).toEqual(["d", "b"]);
  });

  it("prefer the more particular, then the longer, of equally needed ones", () => {
    const long = { shortest: seconds(60), usual: seconds(300) };
    expect(
      ids(pick([block("a"), block("z", { time: long }), block("m", { when: ["stress overhead"] })])),
    ).toEqual(["m", "z"]);
  });

  it("leave out what does what the athlete keeps away from, and say so", () => {
    const { picked, dropped } = pick([block("a", { stresses: ["impact"] }), block("b")]);
    expect(picked.map((each) => each.id)).toEqual(["b"]);
    expect(dropped).toEqual([{ title: "A", why: "limit" }]);
  });

  it("tell missing equipment only where the stage stays empty", () => {
    const ski = block("ski", { stage: "general", when: ["gym-has ski"] });
    const row = block("row", { stage: "general", when: ["gym-has row"] });
    expect(pick([ski]).dropped).toEqual([{ title: "SKI", why: "no-equipment" }]);
    expect(pick([ski, row]).dropped).toEqual([]);
  });

  it("hold no stretch longer than allowed", () => {
    expect(
      ids(pick([block("a", { holdsStill: seconds(60) }), block("b", { holdsStill: seconds(30) })])),
    ).toEqual(["b"]);
    expect(ids(pick([block("a", { holdsStill: seconds(60) })], { longestStill: Infinity }))).toEqual(["a"]);
  });

  it("come once for each movement where they are for movements", () => {
    const primer = block("p", {
      stage: "primer",
      perMovement: true,
      say: "A few {movement}.",
      when: ["movement-kind gymnastics"],
    });
    const movements = ["pull-up", "row", "toes-to-bar"].flatMap((id) => {
      const movement = sampleMovements.get(id);
      if (movement === undefined) return [];
      return [{ movement, situation: { numbers: {}, facts: { "movement-kind": [movement.kind] } } }];
    });
    const { picked } = pick([primer], { movements });
    expect(picked.map((each) => [each.id, each.say])).toEqual([
      ["p-pull-up", "A few pull-up."],
      ["p-toes-to-bar", "A few toes to bar."],
    ]);
  });

  it("are left out where their words cannot be filled in", () => {
    expect(ids(pick([block("a")], { forWorkout: () => false }))).toEqual([]);
  });
});
