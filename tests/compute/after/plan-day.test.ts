import { describe, expect, it } from "vitest";
import { AFTER_CONSTANTS } from "../../../src/compute/after/constants.ts";
import type { PlanAfterInput } from "../../../src/compute/after/plan-after.ts";
import { planDay } from "../../../src/compute/after/plan-day.ts";
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
  slot: "strength",
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
const rest: RecoveryOption = { ...option({ id: "rest" }), kind: "rest" };
const options = (recovery: readonly RecoveryOption[], more: Partial<PlanAfterInput> = {}) =>
  planDay(
    {
      library: { movements: sampleMovements, warmUps: [], cautions: [], recovery: [...recovery, rest] },
      gym: kiloGym,
      bar: twentyKiloBar,
      situation: {
        numbers: { "training-hours": 12 },
        facts: { taxes: ["legs", "lungs"], "may-come": ["snatch"] },
      },
      withholding: { stresses: new Map(), forbids: () => false },
      best: () => ({ kilograms: 100, basis: "tested" }),
      unbroken: () => undefined,
      cannot: [],
      hoursAreStated: true,
      ...more,
    },
    withOverrides(AFTER_CONSTANTS),
  ).pieces;
const ids = (...given: Parameters<typeof options>) => options(...given).map((each) => each.id);
const squat = { movement: "back-squat", sets: 3, reps: 2, share: 0.6 };

describe("a piece of the day", () => {
  it("is offered from the worst answer at which it and all better ones hold", () => {
    const checkOf = (...when: readonly string[]) => options([option({ id: "one", when })])[0]?.check;
    expect(checkOf()).toBe("bad");
    expect(checkOf("not self-check bad")).toBe("middling");
    expect(checkOf("self-check good")).toBe("good");
    expect(ids([option({ id: "one", when: ["self-check bad"] })])).toEqual(["rest"]);
  });

  it("leaves muscles alone that have just worked, but for breath and for easy ones", () => {
    const holds = (sketch: Partial<RecoveryOption>) =>
      ids([option({ id: "one", ...sketch, when: [] })]).length > 1;
    expect(holds({ muscles: ["legs"] })).toBe(false);
    expect(holds({ muscles: ["legs"], easy: true })).toBe(true);
    expect(holds({ muscles: ["lungs"] })).toBe(true);
    expect(holds({ muscles: ["pull"] })).toBe(true);
  });

  it("stands in the order of a session, those kept longest first in their slot", () => {
    const some = [
      option({ id: "late", slot: "mobility" }),
      option({ id: "skill", slot: "skill", keep: 2 }),
      option({ id: "other-skill", slot: "skill", keep: 1 }),
      option({ id: "third-skill", slot: "skill", keep: 3 }),
      option({ id: "early", slot: "loosen" }),
    ];
    expect(ids(some)).toEqual(["early", "other-skill", "skill", "late", "rest"]);
  });

  it("goes when the day has no room: what is kept least first", () => {
    // 12 h a week over five days are 144 min a day, half of it 72
    const some = [
      option({ id: "a", slot: "loosen", minutes: 30, keep: 1 }),
      option({ id: "b", slot: "strength", minutes: 30, keep: 3 }),
      option({ id: "c", slot: "easy-work", minutes: 30, keep: 2 }),
    ];
    expect(ids(some)).toEqual(["a", "c", "rest"]);
  });

  it("has reps from the athlete's own best set, and the usual ones where none is known", () => {
    const pulls = option({ id: "pulls", work: [{ movement: "pull-up", sets: 4, reps: 3, setShare: 0.4 }] });
    const repsOf = (longest: number | undefined) =>
      options([pulls], { unbroken: () => longest })[0]?.work[0]?.reps;
    // 0.4 x 14 = 5.6
    expect(repsOf(14)).toBe(5);
    expect(repsOf(undefined)).toBe(3);
    expect(repsOf(60)).toBe(8);
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
    const stresses = new Map([["impact", { kind: "limit" as const }]]);
    const some = [
      option({ id: "squat", work: [squat] }),
      option({ id: "hops", slot: "skill", stresses: ["impact"] }),
    ];
    expect(ids(some, { withholding: { stresses, forbids: (id) => id === "back-squat" } })).toEqual(["rest"]);
  });
});
