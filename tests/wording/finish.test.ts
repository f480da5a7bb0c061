import { describe, expect, it } from "vitest";
import { sayFinish } from "../../src/wording/finish.ts";
import { samplePlans } from "../support/sample-plan.ts";

const sample = samplePlans.forTimeThenLift.parts[0]?.pacing;
const row = sample?.rows[0];
if (!sample || !row) throw new Error("the sample has pacing");
const nb = (text: string): string => text.replaceAll("_", "\u00a0");

// Two stations of one round: squats to 40 % of the work, a run of 1000 m for the rest; a tenth of all work is a sixth of the run.
const squats = { ...row, index: 0, round: 1, name: "squat", plural: "squats", amount: 60, unit: "reps" as const, shareOfWork: 0.4 }; // prettier-ignore
const run = { ...squats, index: 1, name: "run", plural: "runs", amount: 1000, unit: "metres" as const, shareOfWork: 1 }; // prettier-ignore
const chipper = { ...sample, rows: [squats, run], rounds: sample.rounds.slice(0, 1), duration: 700 };

describe("the finish", () => {
  it("is where the last tenth of the work begins", () => {
    expect(sayFinish([], chipper, true)).toBe(nb("Spend what is left in the last 150_m of the run."));
  });

  it("begins with a movement where others follow it", () => {
    const before = { ...run, shareOfWork: 0.95 };
    const last = { ...squats, index: 2, amount: 5, shareOfWork: 1 };
    const three = { ...chipper, rows: [{ ...squats, shareOfWork: 0.9 }, before, last] };
    expect(sayFinish([], three, true)).toBe("Spend what is left from the 60 squats on.");
  });

  it("is not told before another part, in short work, and where intervals count one by one", () => {
    expect(sayFinish([], chipper, false)).toBeUndefined();
    expect(sayFinish([], { ...chipper, duration: 200 }, true)).toBeUndefined();
    expect(sayFinish([], { ...chipper, score: "slowest-interval" }, true)).toBeUndefined();
  });

  it("is the plan's own where it goes quicker at the end", () => {
    const visits = [3, 3, 3, 2.7].map((secondsPerUnit, at) => ({ ...squats, index: at, round: at + 1, secondsPerUnit })); // prettier-ignore
    const rounds = visits.map(({ round }) => ({
      ...sample.rounds[0],
      round,
      label: `${round}`,
    })) as typeof sample.rounds;
    expect(sayFinish([{ name: "squat", rows: visits }], { ...sample, rows: visits, rounds }, true)).toBe(
      nb("Finish in round_4: the squats at 2.7_s_a_rep."),
    );
  });
});
