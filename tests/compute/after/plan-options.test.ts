import { describe, expect, it } from "vitest";
import { AFTER_CONSTANTS } from "../../../src/compute/after/constants.ts";
import type { PlanAfterInput } from "../../../src/compute/after/plan-after.ts";
import { planOptions } from "../../../src/compute/after/plan-options.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import type { RecoveryOption } from "../../../src/models/library.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import { kiloGym, twentyKiloBar } from "../../support/sample-gym.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

type Sketch = Partial<Omit<RecoveryOption, "when">> & {
  readonly id: string;
  readonly when?: readonly string[];
};
const option = ({ when = [], ...sketch }: Sketch): RecoveryOption => ({
  title: sketch.id,
  kind: "same-day",
  say: "Move.",
  muscles: [],
  stresses: [],
  easy: false,
  source: "made for tests",
  ...sketch,
  when: when.flatMap((text) => {
    const read = readCondition(text);
    return read.ok ? [read.value] : [];
  }),
});
const rest = option({ id: "rest", kind: "rest" });
const options = (recovery: readonly RecoveryOption[], more: Partial<PlanAfterInput> = {}) =>
  planOptions(
    {
      library: { movements: sampleMovements, warmUps: [], cautions: [], recovery: [...recovery, rest] },
      gym: kiloGym,
      bar: twentyKiloBar,
      situation: { numbers: {}, facts: { taxes: ["legs", "lungs"], "may-come": ["snatch"] } },
      withholding: { stresses: new Map(), forbids: () => false },
      best: () => ({ kilograms: 100, basis: "tested" }),
      ...more,
    },
    withOverrides(AFTER_CONSTANTS),
  );
const ids = (...given: Parameters<typeof options>) => options(...given).map((each) => each.id);
const squat = { movement: "back-squat", sets: 3, reps: 2, share: 0.6 };

describe("an option of the same day", () => {
  it("is offered from the worst answer at which it and all better ones hold", () => {
    const checks = options([
      option({ id: "always" }),
      option({ id: "not-bad", when: ["not self-check bad"] }),
      option({ id: "good", when: ["self-check good"] }),
      option({ id: "only-bad", when: ["self-check bad"] }),
    ]).map((each) => [each.id, each.check]);
    expect(checks).toEqual([
      ["always", "bad"],
      ["good", "good"],
      ["not-bad", "middling"],
      ["rest", "bad"],
    ]);
  });

  it("leaves muscles alone that have just worked, but for breath and for easy ones", () => {
    const some = [
      option({ id: "legs", muscles: ["legs"] }),
      option({ id: "easy-legs", muscles: ["legs"], easy: true }),
      option({ id: "lungs", muscles: ["lungs"] }),
      option({ id: "pull", muscles: ["pull"] }),
    ];
    expect(ids(some)).toEqual(["easy-legs", "lungs", "pull", "rest"]);
  });

  it("lifts a share of the best with the plates there are, rounded down", () => {
    // 60 % of 100 kg is 60 kg: 20 + 2 x 20
    const [lifted] = options([option({ id: "squat", work: [squat] })]);
    expect(lifted?.work).toMatchObject([
      {
        movement: "back-squat",
        name: "back squat",
        sets: 3,
        reps: 2,
        load: { kilograms: 60, shareOfBest: 0.6 },
      },
    ]);
  });

  it("is left out where even the empty bar is more than a tenth over what is meant", () => {
    const of = (kilograms: number) =>
      ids([option({ id: "squat", work: [squat] })], { best: () => ({ kilograms, basis: "tested" }) });
    // 60 % of 31 kg is 18.6 kg, and 20 is 7 % over it; of 30 kg it is 18 kg, and 20 is 11 % over it
    expect(of(31)).toEqual(["squat", "rest"]);
    expect(of(30)).toEqual(["rest"]);
  });

  it("is left out where it lifts or does what is kept away from", () => {
    const stresses = new Map([["impact", { why: "", ask: "" }]]);
    const some = [option({ id: "squat", work: [squat] }), option({ id: "hops", stresses: ["impact"] })];
    expect(ids(some, { withholding: { stresses, forbids: (id) => id === "back-squat" } })).toEqual(["rest"]);
  });

  it("comes first where it touches what may still come", () => {
    const some = [
      option({ id: "a" }),
      option({ id: "b", when: ["may-come snatch"] }),
      option({ id: "c", work: [{ ...squat, movement: "snatch" }] }),
    ];
    expect(ids(some)).toEqual(["c", "b", "a", "rest"]);
  });

  it("is one of five at the most, one for each answer among them", () => {
    const some = ["a", "b", "c", "d", "e", "f"].map((id) => option({ id }));
    const good = option({ id: "z", when: ["self-check good"] });
    expect(ids([...some, good])).toEqual(["a", "b", "c", "d", "z", "rest"]);
  });
});
