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
    expect(plan.coachWord?.openerOverBest).toEqual({ opener: 85, best: 80 });
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
