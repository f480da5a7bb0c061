import { describe, expect, it } from "vitest";
import { makePlan, planAsIs } from "../../../src/compute/make-plan.ts";
import { coachWordFor } from "../../../src/compute/plan/coach-word.ts";
import type { Athlete } from "../../../src/models/athlete.ts";
import type { Data } from "../../../src/models/data.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { Workout } from "../../../src/models/workout.ts";
import { sayCoachWord } from "../../../src/wording/coach-word.ts";
import { readFiles } from "../../../src/reading/read-data.ts";
import { readSources } from "../../../src/site/load-data.ts";
import { ROOT } from "../../support/run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
const files = (athlete: string, word: string) => [
  {
    path: "athletes/ana.yaml",
    text: `name: Ana\nlevel: regular\nsex: female\nlifts: {clean and jerk: 80 kg}\n${athlete}`,
  },
  {
    path: "content/workouts/moraine.mdx",
    text: `---\ntitle: Moraine\nmax load: 8:00\nwork: [1 clean and jerk]\n${word}---\n`,
  },
];
const read = (athlete: string, word: string) => readFiles(builtIn, files(athlete, word));
function given(
  athlete: string,
  word: string,
): { readonly athlete: Athlete; readonly workout: Workout; readonly data: Data } {
  const { read: data, faults } = read(athlete, word);
  expect(faults).toEqual([]);
  const [one, workout] = [data.athletes[0], data.workouts[0]];
  if (!one || !workout) throw new Error("nothing was read");
  return { athlete: one, workout, data: { ...data, unmade: [] } };
}
const planned = (athlete: string, word: string) => makePlan({ ...given(athlete, word), date: "2026-11-25" });
const loadsOf = (plan: ReturnType<typeof planned>): readonly number[] =>
  plan.parts[0]?.lifting?.lifts[0]?.attempts.map(({ load }) => load.kilograms) ?? [];

describe("the coach's last word", () => {
  it("sets opener, steps and number of lifts, and says what that means", () => {
    const plan = planned(
      "",
      "coach sets: [{for: everyone, open with: 60 kg, up by: 5 kg, lifts: 3, say: Smooth.}]\n",
    );
    expect(loadsOf(plan)).toEqual([60, 65, 70]);
    const said = plan.coachWord ? sayCoachWord(plan.coachWord, "kg") : [];
    expect(said[0]).toBe("Smooth.");
    // Three lifts up to 70 kg cannot come to what a best of 80 kg lets one expect.
    expect(said[1]).toMatch(
      /^Set by your coach in part a: opens with 60\skg where the numbers say [\d.]+\skg; the best lift to expect is [\d.]+\skg, [\d.]+\skg less than without\.$/,
    );
  });

  it("leaves a plan without a word as it is", () => {
    const one = given("", "");
    expect(makePlan({ ...one, date: "2026-11-25" })).toEqual(planAsIs({ ...one, date: "2026-11-25" }));
  });

  it("asks about an opener over the best, and does not bend it", () => {
    const plan = planned("", "coach sets: [{for: ana, open with: 85 kg}]\n");
    expect(plan.coachWord?.notSet).toEqual([{ kind: "opener-over-best", opener: 85, best: 80 }]);
    expect(loadsOf(plan)).toEqual(loadsOf(planned("", "")));
  });

  it("holds one athlete's before a level's, and a level's before everyone's", () => {
    const { athlete, workout } = given(
      "coach sets: {moraine: {lifts: 2}}\n",
      "coach sets: [{for: regular, lifts: 3, warm up: 20 min}, {for: everyone, lifts: 4, say: All.}, {for: elite, lifts: 6}]\n",
    );
    expect(coachWordFor(athlete, workout)).toEqual({ lifts: 2, warmUp: seconds(1200), say: "All." });
  });

  it("never overrules a stated limit", () => {
    const limit = "limits: [{condition: high blood pressure, avoid: [maximal lift]}]\n";
    const plan = planned(limit, "coach sets: [{for: everyone, open with: 60 kg, lifts: 3}]\n");
    expect(plan.parts[0]?.lifting).toBeUndefined();
    expect(plan.withheld.length).toBeGreaterThan(0);
  });

  it("is refused for nobody, and without a first load for its steps", () => {
    expect(
      read("", "coach sets: [{for: anna, up by: 5 kg}]\n").faults.map(({ found, nearest }) => [
        found,
        nearest,
      ]),
    ).toEqual([
      ["anna", "ana"],
      ["up by", undefined],
    ]);
  });
});

const row = "4 rounds:\n      - 500/430 m row\n      - 15 pull-up\n      - 14 push press at 42.5/30 kg";
const round = (word: string, clock = "for time: cap 24:00", work = row) => [
  {
    path: "athletes/ana.yaml",
    text: "name: Ana\nlevel: regular\nsex: female\nlifts: {push press: 60 kg}\nunbroken: {pull-up: 16}\n",
  },
  {
    path: "content/workouts/weir.mdx",
    text: `---\ntitle: Weir\n${clock}\nwork:\n  - ${work}\n${word}---\n`,
  },
];
function paced(word: string, clock?: string, work?: string) {
  const { read: data, faults } = readFiles(builtIn, round(word, clock, work));
  expect(faults).toEqual([]);
  const [athlete, workout] = [data.athletes[0], data.workouts[0]];
  if (!athlete || !workout) throw new Error("nothing was read");
  const plan = makePlan({ athlete, workout, data: { ...data, unmade: [] }, date: "2026-11-25" });
  const pacing = plan.parts[0]?.pacing;
  if (!pacing) throw new Error("nothing was paced");
  return { pacing, word: plan.coachWord, said: plan.coachWord ? sayCoachWord(plan.coachWord, "kg") : [] };
}
const rowsOf = ({ pacing }: ReturnType<typeof paced>, movement: string) =>
  pacing.rows.filter((each) => each.movement === movement);

describe("the coach's last word on pacing", () => {
  const own = paced("");

  it("aims at a target to the second, says what it is against the numbers, and keeps the range of the athlete", () => {
    const target = Math.round(own.pacing.result.target * 0.98);
    const clock = `${Math.floor(target / 60)}:${String(target % 60).padStart(2, "0")}`;
    const set = paced(`coach sets: [{for: everyone, target: ${clock}}]\n`);
    expect(Math.round(set.pacing.result.target)).toBe(target);
    expect(Math.round(set.pacing.rows.at(-1)?.end ?? 0)).toBe(target);
    // A worse day ends where the numbers end.
    expect(set.pacing.result.cautious).toBe(own.pacing.result.cautious);
    const chance = set.word?.paced[0]?.aimed?.chance ?? 1;
    expect(chance).toBeGreaterThan(0.05);
    expect(chance).toBeLessThan(0.6);
    // 1 / 0.98 is 1.02.
    expect(set.said[0]).toMatch(
      /^Target set by your coach: \d+:\d\d is 2\s% faster than your numbers \(\d+:\d\d\): \d/,
    );
  });

  it("does not hide how far others who have done it moved the plan", () => {
    const early = "early: [{level: regular, division: women, time: 20:00}]\n";
    const free = paced(early).pacing;
    expect(free.difficulty?.moved).toBeGreaterThan(0.01);
    // The coach makes up for ten seconds of what others lost.
    const target = Math.round(free.result.target) - 10;
    const clock = `${Math.floor(target / 60)}:${String(target % 60).padStart(2, "0")}`;
    const set = paced(`${early}coach sets: [{for: everyone, target: ${clock}}]\n`).pacing;
    expect(Math.abs(set.result.target - target)).toBeLessThan(2);
    expect(set.difficulty).toEqual(free.difficulty);
  });

  it("does not set a target that the fastest paces do not come to", () => {
    const set = paced("coach sets: [{for: everyone, target: 6:00}]\n");
    expect(set.pacing.result).toEqual(own.pacing.result);
    expect(set.word?.notSet.map(({ kind }) => kind)).toEqual(["target-out-of-reach"]);
  });

  it("breaks a movement as it is told, in one round or in all, and says what that costs", () => {
    const set = paced("coach sets: [{for: everyone, sets: {pull-up: 2, push press: 7-4-3 in round 2}}]\n");
    for (const each of rowsOf(set, "pull-up"))
      expect(each.sets.map(({ amount }) => amount)).toEqual([2, 2, 2, 2, 2, 2, 2, 1]);
    expect(rowsOf(set, "push-press")[1]?.sets.map(({ amount }) => amount)).toEqual([7, 4, 3]);
    const cost = (set.word?.paced[0]?.costs ?? []).reduce((sum, each) => sum + each.cost, 0);
    // Each word is told against the plan without any; two that ask for the same reserve cost a little less together than one by one.
    expect(Math.abs(cost - (set.pacing.result.target - own.pacing.result.target))).toBeLessThan(4);
    const pulls = set.word?.paced[0]?.costs[0]?.cost ?? Number.NaN;
    expect(set.said.join(" ")).toContain(`pull-up in sets of 2 ${pulls < 0 ? "gains" : "costs"} about`);
  });

  it("rests between sets as long as it is told", () => {
    const set = paced("coach sets: [{for: everyone, rest between sets: {pull-up: 15 s}}]\n");
    for (const each of rowsOf(set, "pull-up"))
      for (const one of each.sets.slice(0, -1)) expect(one.restAfter).toBeCloseTo(15, 6);
  });

  it("asks about sets over the best set, sets that do not add up, and a pace beyond the fastest; nothing is bent", () => {
    const set = paced(
      "coach sets: [{for: everyone, sets: {pull-up: 20, push press: 7-6}, pace: {row: 1:10 per 500 m}}]\n",
    );
    expect(set.word?.notSet.map(({ kind }) => kind)).toEqual([
      "pace-over-fastest",
      "sets-over-best",
      "sets-do-not-add-up",
    ]);
    expect(set.pacing.rows).toEqual(own.pacing.rows);
    expect(set.said).toContain(
      "Not set: pull-up in sets of 20; the largest set of these numbers is 16. Is there a better one?",
    );
    expect(set.said).toContain(
      "Not set: push press in 7-6 is 13, the work asks for 14. Which sets are meant?",
    );
  });

  it("holds the pace of a machine and computes the rest around it", () => {
    const set = paced("coach sets: [{for: everyone, pace: {row: 2:50 per 500 m}}]\n");
    for (const each of rowsOf(set, "row")) expect(each.displayed?.value).toBeCloseTo(170, 1);
    // A row 18 s slower over 430 m, four times, costs at most a minute; what is saved goes into the rest.
    const cost = set.pacing.result.target - own.pacing.result.target;
    expect(cost).toBeGreaterThan(5);
    expect(cost).toBeLessThan(62);
  });

  it("does not begin faster than it is told, and leaves a slower first round as it is", () => {
    const slow = paced("coach sets: [{for: everyone, first round: 4:10}]\n");
    expect(slow.pacing.rounds[0]?.seconds).toBeGreaterThan(247);
    expect(slow.pacing.rounds[0]?.seconds).toBeLessThan(253);
    expect(slow.pacing.ceiling?.seconds).toBe(250);
    const free = paced("coach sets: [{for: everyone, first round: 2:00}]\n");
    expect(free.pacing.rows).toEqual(own.pacing.rows);
    expect(free.said[0]).toContain("anyway; faster than");
  });

  it("aims at rounds and reps of an amrap", () => {
    const [clock, work] = ["amrap: 14:00", "9 burpee\n  - 7 pull-up\n  - 6 push press at 42.5/30 kg"];
    const { pacing } = paced("", clock, work);
    const { rounds = 0, reps = 0 } = pacing.roundsAndReps ?? {};
    const set = paced(
      `coach sets: [{for: everyone, target: ${rounds} rounds ${reps + 3} reps}]\n`,
      clock,
      work,
    );
    expect(set.pacing.result.target).toBe(pacing.result.target + 3);
  });

  it("is refused where the workout has nothing it could be about", () => {
    const told = (word: string): readonly (readonly [string, string])[] =>
      readFiles(builtIn, round(`coach sets: [{for: everyone, ${word}}]\n`))
        .faults.filter(({ severity }) => severity !== "notice")
        .map(({ found, problem }) => [found, problem] as const);
    expect(told("sets: {thruster: 5}")).toEqual([["thruster", "no line of this workout has this movement"]]);
    expect(told("target: 190 reps")).toEqual([["190 reps", "no part of this workout is scored so"]]);
    expect(told("target: 9:00 in part b")).toEqual([["in part b", "the workout has no part of this name"]]);
    expect(told("target: 8")).toEqual([["8", "a bare number can be minutes, reps or a load"]]);
    expect(told("open with: 70 kg")).toEqual([["open with", "nothing is lifted for load in this workout"]]);
    expect(
      read("", "coach sets: [{for: everyone, open with: 70 kg, heaviest: 60 kg}]\n").faults.map(
        ({ found, problem }) => [found, problem],
      ),
    ).toEqual([["60 kg", "the first load is heavier than the heaviest allowed"]]);
    expect(told("sets: {pull-up: 5--5}")).toEqual([["5--5", "these are no sets"]]);
  });
});

describe("the heaviest load a coach allows", () => {
  it("ends the ladder there, and a target of a load is what it aims at", () => {
    const plan = planned("", "coach sets: [{for: everyone, heaviest: 75 kg}]\n");
    expect(Math.max(...loadsOf(plan))).toBeLessThanOrEqual(75);
    expect(Math.max(...loadsOf(planned("", "")))).toBeGreaterThan(75);
    const aimed = planned("", "coach sets: [{for: everyone, target: 82 kg}]\n");
    expect(aimed.parts[0]?.lifting?.objective).toBe("chance-of-load");
    expect(aimed.coachWord?.lifts[0]?.aimed?.load).toBe(82);
  });
});
