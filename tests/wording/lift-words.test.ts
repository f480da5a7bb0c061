import { describe, expect, it } from "vitest";
import {
  strengthNow,
  sayBandLifts,
  sayFeel,
  sayFinish,
  sayFinishPlan,
  sayLiftFigure,
  sayLiftLoad,
  sayMissesEnd,
} from "../../src/wording/lift-words.ts";
import { forTimeThenLift } from "../support/sample/for-time-then-lift.ts";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const [lift] = forTimeThenLift.parts[1]?.lifting?.lifts ?? [];
if (!lift) throw new Error("no lift");
const [opener] = lift.attempts;
if (!opener) throw new Error("no attempt");
const share = { ...opener, load: { ...opener.load, shareOfBest: 0.88 } };

describe("a load of a lift", () => {
  it("is a mass for a person, a share of their own best for the readers of a band", () => {
    expect(plain(sayLiftLoad(opener, lift))).toBe("58 kg");
    expect(sayLiftFigure(opener, lift)).toBe("58");
    expect(sayLiftLoad(share, { ofOwnBest: true })).toBe("88%");
    expect(sayLiftFigure(share, { ofOwnBest: true })).toBe("88%");
  });
});

describe("what ends a lift", () => {
  const lastTry = { load: opener.load, clock: 250 };
  const said = (more: Partial<typeof lift>): string =>
    plain(sayMissesEnd({ attempts: [opener, opener, opener], ofOwnBest: false, ...more }, 120) ?? "nothing");

  it("is two misses in a row, and the last try where there is one", () => {
    expect(said({ lastTry })).toBe(
      "Two misses in a row end it; with nothing made yet there is one last try, 58 kg at 6:10.",
    );
    expect(said({ attempts: [opener, opener] })).toBe("Two misses in a row end it.");
  });

  it("is nothing where there is one attempt only", () => {
    expect(said({ attempts: [opener] })).toBe("nothing");
  });
});

it("the lifts of a band are said as shares, with no kilogram of a stranger", () => {
  const attempts = [share, { ...share, number: 2, load: { ...share.load, shareOfBest: 0.97 } }];
  expect(plain(sayBandLifts({ ...lift, attempts, target: 2 }))).toBe(
    "Clean and jerk: open with 88% of your own best, aim at 97%, 2 lifts.",
  );
});

describe("a row of the finish-time table", () => {
  const kg = (value: number) => ({ value, unit: "kg" as const });
  const row = {
    finish: 406,
    until: 556,
    firstLift: 538,
    firstLiftUntil: 688,
    lifts: 2,
    loads: [kg(85), kg(92.5)],
  };

  it("says from when to when it holds, and what then", () => {
    expect(sayFinish(row)).toBe("6:46 to 9:16");
    expect(plain(sayFinishPlan(row))).toBe("first lift 8:58 to 11:28, 2 lifts: 85 → 92.5 kg");
  });

  it("of one moment names it once", () => {
    expect(sayFinish({ ...row, until: 406 })).toBe("6:46");
    expect(plain(sayFinishPlan({ ...row, firstLiftUntil: 538, loads: [] }))).toBe("first lift 8:58, 2 lifts");
  });

  it("says where no time is left", () => {
    expect(sayFinishPlan({ finish: 900, until: 900, lifts: 0, loads: [] })).toBe("no time for a lift");
  });
});

describe("a build by feel", () => {
  const feel = {
    lifts: 4,
    jumpFirst: 0.1,
    jumpLater: 0.06,
    openerLow: 41,
    openerHigh: 78,
    spreadNow: 14,
    spreadTested: 4,
  };

  it("says how to test the opener, how to go on, and what one tested lift would change", () => {
    const said = sayFeel({ ...lift, feel, lastStart: 948 }, "kg").map(plain);
    expect(said).toEqual([
      "No lift of yours is known, so only the opener stands here. Test it in the warm-up: the right one lies between 41 kg and 78 kg for eight athletes of your level in ten.",
      "From there go by feel, 4 lifts at most, the last started by 15:48: up to 10% more after an easy opener, then up to 6%, half of that once a lift was slow.",
      "One tested lift in your file would tell your strength to about 4 kg instead of 14 kg, and every load would stand here.",
    ]);
  });

  it("is nothing where loads are known", () => {
    expect(sayFeel(lift, "kg")).toEqual([]);
  });
});

it("what there is of a best single when the window opens is never more than the best", () => {
  const best = { kilograms: 100 };
  expect(strengthNow({ reps: 1, best, today: { kilograms: 102, lossShare: 0 } })).toBe(100);
  // 5 % less for the work before: 95 of 100 kg, however strong the day is believed.
  expect(strengthNow({ reps: 1, best, today: { kilograms: 97, lossShare: 0.05 } })).toBe(95);
  expect(strengthNow({ reps: 5, best, today: { kilograms: 87, lossShare: 0 } })).toBe(87);
});
