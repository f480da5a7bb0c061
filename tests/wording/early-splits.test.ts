import { expect, it } from "vitest";
import { sayEarlyChange, sayEarlySplitsPlainly } from "../../src/wording/early-splits.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const sample = samplePlans.forTimeThenLift.parts[0]?.pacing?.earlySplits;
if (!sample) throw new Error("the sample has early splits");
const { performances, shape, weight } = sample;
const bare = { performances, shape, weight };

it("everything told makes three sentences with their errors", () => {
  expect(
    sayEarlySplitsPlainly({
      ...bare,
      fixedPerRound: { seconds: 11.94, error: 2 },
      perRep: { seconds: 2.46, error: 0.1 },
      driftPerRound: { share: 0.021, error: 0.008 },
      finishSurge: { share: -0.04, error: 0.02 },
      notIdentifiable: [],
    }),
  ).toEqual([
    nb("Every round costs 11.9_s (± 2_s) whatever is in it, and a rep costs 2.5_s (± 0.1_s)."),
    "Each round was 2% slower (± 1%) than the one before, the last one 4% faster (± 2%) than that would make it.",
    nb(
      "3_early performances were seen. They count for 35% of how the work is paced here, everyone's own numbers for the rest.",
    ),
  ]);
});

it("what is not told is said to be so", () => {
  expect(
    sayEarlySplitsPlainly({
      ...bare,
      weight: 0,
      notIdentifiable: ["fixedPerRound", "perRep", "driftPerRound", "finishSurge"],
    }),
  ).toEqual([
    "These splits do not tell a cost of the round apart from the cost of its reps.",
    "These splits tell neither how rounds slowed nor how the last one differed.",
    "There is too little in them to go by: the work is paced without them.",
  ]);
});

it("one of a pair is told without the other", () => {
  const drift = { driftPerRound: { share: 0.03, error: 0.01 } };
  const surge = { finishSurge: { share: 0.05, error: 0.02 } };
  expect(
    sayEarlySplitsPlainly({
      ...bare,
      ...drift,
      fixedPerRound: { seconds: 8, error: 1 },
      notIdentifiable: ["finishSurge"],
    }).slice(0, 2),
  ).toEqual([
    nb("Every round costs 8_s (± 1_s) whatever is in it."),
    "Each round was 3% slower (± 1%) than the one before; how the last one differed these splits do not tell.",
  ]);
  expect(
    sayEarlySplitsPlainly({
      ...bare,
      ...surge,
      perRep: { seconds: 2, error: 0.5 },
      notIdentifiable: ["driftPerRound"],
    }).slice(0, 2),
  ).toEqual([
    nb("A rep costs 2_s (± 0.5_s)."),
    "The last round was 5% slower (± 2%) than the others would make it; how rounds slowed these splits do not tell.",
  ]);
});

it("work without reps is not said to have a cost of reps", () => {
  expect(sayEarlySplitsPlainly({ ...bare, notIdentifiable: ["fixedPerRound"] })[0]).toBe(
    "These splits do not tell what a round costs whatever is in it.",
  );
});

it("a change too small to be said is none", () => {
  const drift = { driftPerRound: { share: -0.004, error: 0.012 } };
  expect(sayEarlySplitsPlainly({ ...bare, ...drift, notIdentifiable: ["finishSurge"] })[1]).toBe(
    "Each round was no slower (± 1%) than the one before; how the last one differed these splits do not tell.",
  );
});

it("an athlete reads in a line what changed, to the second", () => {
  const with35 = { ...bare, notIdentifiable: [] };
  const say = (first: number, last: number) => sayEarlyChange({ ...with35, changed: { first, last } });
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
  expect(sayEarlyChange({ ...one, changed: { first: 0.4, last: -0.4 } })).toBe(unchanged);
  expect(sayEarlyChange({ ...one, weight: 0.004, changed: { first: 9, last: 9 } })).toBe(unchanged);
  expect(sayEarlyChange(one)).toBe(unchanged);
});
