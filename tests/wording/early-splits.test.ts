import { expect, it } from "vitest";
import { sayEarlyChange, sayEarlyForAll } from "../../src/wording/early-splits.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const sample = samplePlans.forTimeThenLift.parts[0]?.pacing?.earlySplits;
if (!sample) throw new Error("the sample has early splits");
const { performances, shape, weight } = sample;
const bare = { performances, shape, weight };

const difficulty = {
  early: 3,
  results: 0,
  scores: 0,
  odd: 0,
  share: 0.062,
  error: 0.05,
  moved: 0.058,
  movements: [{ movement: "burpee", name: "burpee", share: 0.09, error: 0.04 }],
};
const rounds = [
  { round: 1, seconds: 129, relative: 1 },
  { round: 2, seconds: 116.2, relative: 1 },
];
const known = { ...bare, weight: 0.35, notIdentifiable: [] };

it("athletes read what was done, where the time went and what it means for them", () => {
  const early = {
    ...known,
    performances: 3,
    shape: rounds,
    fixedPerRound: { seconds: 11.94, error: 2 },
    perRep: { seconds: 2.46, error: 0.1 },
    driftPerRound: { share: 0.021, error: 0.008 },
    finishSurge: { share: -0.04, error: 0.02 },
  };
  expect(sayEarlyForAll(early, difficulty)).toEqual([
    nb("3_early performances were timed: the rounds took 2:09 and 1:56 on average."),
    nb(
      "Every round lost about 12_s to ways and starts, however few reps were in it, and a rep took about 2.5_s.",
    ),
    "Each round was 2% slower than the one before, the last one 4% faster than that would make it.",
    "Beside that, each rep takes: burpee 9% longer.",
    "For you: reckon with 6% more time than your own numbers say; the times on this page do so already.",
    "Your rounds follow them by 35% in how the work is shared out, and your own numbers for the rest.",
  ]);
});

it("of one whose level is known it is said; what clocks do not tell is not mentioned", () => {
  const early = {
    ...known,
    performances: 1,
    by: { level: "competitor" as const, division: "men" },
    shape: rounds,
    weight: 0,
  };
  expect(sayEarlyForAll(early, { ...difficulty, early: 1, share: 0.002, movements: [] })).toEqual([
    nb("1_early performance, by a competitor (men), was timed: the rounds took 2:09 and 1:56."),
    "For you: it takes as long as an athlete's own numbers say, no more and no less.",
    "Your rounds are paced by your own numbers: one performance shows too little of how to share out the work.",
  ]);
});

it("of somebody nobody knows only the sharing out of the work is taken", () => {
  expect(sayEarlyForAll({ ...known, performances: 1, shape: rounds }).at(-1)).toBe(
    "Your rounds follow it by 35% in how the work is shared out, and your own numbers for the rest. Who it was is not known, so it shows how to share out the work, not how long it takes.",
  );
});

it("of several nobody knows is said in the plural, also where they tell too little", () => {
  expect(sayEarlyForAll({ ...known, performances: 2, shape: rounds, weight: 0 }).at(-1)).toBe(
    "Your rounds are paced by your own numbers: these show too little of how to share out the work. Who they were is not known either.",
  );
});

it("a change too small to be said is none", () => {
  const drift = { driftPerRound: { share: -0.004, error: 0.012 } };
  expect(sayEarlyForAll({ ...known, ...drift })).toContain("Each round was no slower than the one before.");
});

it("an athlete reads how much slower the plan is than their numbers alone, and from what", () => {
  expect(sayEarlyChange({ difficulty: { ...difficulty, early: 1, moved: 0.041, movements: [] } })).toBe(
    nb("From 1_early performance: this plan is 4% slower than your numbers alone say."),
  );
  const more = { ...difficulty, early: 2, results: 12, moved: -0.03 };
  expect(
    sayEarlyChange({ earlySplits: { ...known, changed: { first: 2.6, last: -4.2 } }, difficulty: more }),
  ).toBe(
    nb(
      "From 2_early performances and 12_results of others here: this plan is 3% faster than your numbers alone say. Beside that, each rep takes: burpee 9% longer. Your first round is planned 3_s slower and your last 4_s faster.",
    ),
  );
  expect(sayEarlyChange({ difficulty: { ...difficulty, moved: 0.001, movements: [] } })).toContain(
    "this plan is as your own numbers make it",
  );
  expect(sayEarlyChange({})).toBe("");
});

it("an athlete reads in a line what changed, to the second", () => {
  const with35 = { ...bare, notIdentifiable: [] };
  const say = (first: number, last: number) =>
    sayEarlyChange({ earlySplits: { ...with35, changed: { first, last } } });
  expect(say(2.6, -4.2)).toBe(
    nb(
      "3_early performances were seen. With them your first round is planned 3_s slower and your last 4_s faster than from your own numbers alone.",
    ),
  );
  expect(say(0.3, 1.5)).toContain(nb("your first round is planned no slower and your last 2_s slower"));
});

it("a change below a second, none used, and work in one round are told as no change", () => {
  const unchanged = nb("1_early performance was seen. It leaves this plan as your own numbers make it.");
  const one = { ...bare, performances: 1, notIdentifiable: [] };
  expect(sayEarlyChange({ earlySplits: { ...one, changed: { first: 0.4, last: -0.4 } } })).toBe(unchanged);
  expect(sayEarlyChange({ earlySplits: { ...one, weight: 0.004, changed: { first: 9, last: 9 } } })).toBe(
    unchanged,
  );
  expect(sayEarlyChange({ earlySplits: one })).toBe(unchanged);
});
