import { seconds } from "../../src/models/quantity.ts";
import { describe, expect, it } from "vitest";
import {
  type SaidDebrief,
  sayCause,
  sayDoneInShort,
  sayLiftCause,
  sayNoted,
  sayNothingClear,
  sayStanding,
} from "../../src/wording/debrief.ts";
import { saySecondPlan } from "../../src/wording/second-plan.ts";
import { sayHoursLater, saySecondTry } from "../../src/wording/second-try.ts";

const plainly = (text: string | undefined): string => (text ?? "").replaceAll("\u00a0", " ");
const debrief: SaidDebrief = {
  part: "a",
  version: "prescribed",
  logged: { time: 532 },
  unit: "seconds",
  done: 532,
  planned: 518,
  standing: "inside",
  pieces: [],
  causes: [],
  lifts: [],
  secondTry: { answer: "leave-it", why: "inside-noise", fixes: 0 },
};

describe("a result in words", () => {
  it("stands against the plan", () => {
    expect(plainly(sayStanding(debrief, "kg"))).toBe(
      "8:52: 14 s slower than planned, inside the range of the plan.",
    );
    const lift = {
      ...debrief,
      unit: "kilograms" as const,
      logged: { load: { value: 95, unit: "kg" as const } },
    };
    expect(plainly(sayStanding({ ...lift, done: 95, planned: 92.5, standing: "better" }, "kg"))).toBe(
      "95 kg: 2.5 kg more than planned, better than the range of the plan.",
    );
  });

  it("is told in what the score counts, rounds and reps apart", () => {
    // 213 reps of rounds of 55 are three rounds and 48.
    const circuit: SaidDebrief = {
      ...debrief,
      unit: "units",
      score: "rounds-and-reps",
      perRound: 55,
      logged: {},
      done: 213,
      planned: 262,
      standing: "worse",
    };
    expect(plainly(sayStanding(circuit, "kg"))).toBe(
      "3 + 48 rounds + reps: 49 reps less than planned, behind the range of the plan.",
    );
    const gain = { value: 34, error: 20 };
    const again = { answer: "do-it", why: "gain-is-clear", gain, chance: 0.97, fixes: 1 } as const;
    expect(plainly(saySecondTry({ ...circuit, secondTry: again }, "kg"))).toBe(
      "Do it again. Expect about 34 reps more, give or take 20 reps. All of it comes from mending what is named above. Better on nearly every day.",
    );
  });

  it("stands on the board in a line, with whether to do it again and by when", () => {
    expect(plainly(sayDoneInShort(debrief, "kg"))).toBe("done: 8:52; leave it");
    const secondTry = {
      answer: "only-if",
      why: "gain-is-likely",
      fixes: 0,
      best: "2026-11-29",
      latest: "2026-11-29T18:30",
    } as const;
    expect(plainly(sayDoneInShort({ ...debrief, secondTry }, "kg"))).toBe(
      "done: 8:52; again only if fresh on Sunday, 29 November, begun by 18:30",
    );
  });

  it("of another version is set beside nothing", () => {
    const scaled: SaidDebrief = { ...debrief, version: "scaled", logged: { reps: 110 }, standing: "worse" };
    expect(plainly(sayStanding(scaled, "kg"))).toBe("110 reps, in another version than the planned one.");
  });

  it("names causes with what they cost and how sure that is", () => {
    expect(
      plainly(sayCause({ kind: "too-fast-early", share: 0.12, won: 9, seconds: { value: 25, error: 8 } })),
    ).toBe(
      "You began about 12% faster than planned and were up to 9 s ahead; it was lost again and cost about 25 s more (give or take 8 s).",
    );
    expect(plainly(sayCause({ kind: "breaks", each: 8, count: 12, seconds: { value: 96, error: 14 } }))).toBe(
      "Breaks in your sets were about 8 s longer than planned, 12 of them: about 1:36 (give or take 14 s).",
    );
    expect(plainly(sayLiftCause({ kind: "missed", load: { value: 95, unit: "kg" }, chance: 0.6 }))).toBe(
      "95 kg was missed; the plan gave it 6 days in 10. A miss like that is no mistake.",
    );
  });

  it("says so where nothing stands out or nothing can be told", () => {
    expect(sayNothingClear(debrief)).toContain("No clocks between start and end were logged");
    expect(sayNothingClear({ ...debrief, version: "scaled" })).toContain("nothing is concluded");
  });
});

describe("a second try in words", () => {
  it("is a plain answer with its reason", () => {
    expect(saySecondTry(debrief, "kg")).toMatch(/^Leave it\. What you could win is smaller than/);
    const again: SaidDebrief = {
      ...debrief,
      secondTry: {
        answer: "do-it",
        why: "gain-is-clear",
        gain: { value: 40, error: 25 },
        chance: 0.9,
        places: 12.3,
        fixes: 0.8,
        bestHours: 46,
        tiredness: 0.01,
      },
    };
    expect(plainly(saySecondTry(again, "kg"))).toBe(
      "Do it again, about 2 days later. Expect about 40 s less, worth 12 places, give or take 25 s. 80% of it comes from mending what is named above. Better on 9 days in 10.",
    );
  });

  it("tells hours as people do", () => {
    expect([22, 47, 72].map((hours) => plainly(sayHoursLater(hours)))).toEqual([
      "about a day later",
      "about 2 days later",
      "about 3 days later",
    ]);
  });
});

describe("the plan of a second try in words", () => {
  it("sets both plans side by side and marks what differs for a reader", () => {
    const lines = saySecondPlan(
      {
        target: { before: 518, now: 505.2 },
        ceiling: { before: 95, now: 95.2 },
        rounds: [],
        sets: [{ movement: "x", name: "pull-up", round: 1, before: [9, 9], now: [12, 6] }],
        loads: [],
      },
      "seconds",
      "kg",
    );
    expect(lines).toEqual([
      { what: "target", before: "8:38", now: "8:25", changed: true },
      { what: "first round not under", before: "1:35", now: "1:35", changed: false },
      { what: "pull-up, round 1", before: "9-9", now: "12-6", changed: true },
    ]);
  });

  it("tells the day and the latest hour where they are known", () => {
    const again: SaidDebrief = {
      ...debrief,
      secondTry: {
        answer: "only-if",
        why: "gain-is-likely",
        gain: { value: 20, error: 25 },
        chance: 0.7,
        fixes: 0,
        bestHours: 46,
        best: "2026-11-28",
        latest: "2026-11-29T18:30",
      },
    };
    expect(plainly(saySecondTry(again, "kg"))).toMatch(
      /^Do it again on Saturday, 28 November \(at the latest Sunday, 29 November, 18:30\), but only if/,
    );
  });
});

it("what was noted beside a result is the tie-break time and the athlete's own words", () => {
  expect(sayNoted({ logged: { tieBreak: seconds(275), note: "grip went in the 20s" } })).toEqual([
    "Tie-break 4:35.",
    "You noted: “grip went in the 20s”",
  ]);
  expect(sayNoted({ logged: {} })).toEqual([]);
});
