import { describe, expect, it } from "vitest";
import { sayEnding } from "../../src/wording/ending.ts";
import { samplePlans } from "../support/sample-plan.ts";

const kg = { units: "kg" } as const;
const finishing = samplePlans.forTimeThenLift.parts[0]?.pacing;
const stopped = samplePlans.almostNothingKnown.parts[0]?.pacing;
const filling = samplePlans.twentyRounds.parts[0]?.pacing;
if (!finishing || !stopped || !filling) throw new Error("the samples have pacing");

describe("the end of a part", () => {
  it("inside a cap says how often", () => {
    expect(sayEnding(finishing, kg)).toBe("Inside the cap of 12:00 95% of the time.");
  });

  it("at the cap says where, how often it is finished, and what counts then", () => {
    expect(sayEnding(stopped, kg)).toBe(
      "The clock stops you at 9:00, after 36 of 40 burpees (106\u00a0reps). You finish 40% of the time. Every rep counts: keep moving until the clock stops.",
    );
  });

  it("of intervals that outrun the athlete gives the score", () => {
    const eliminated = {
      ...filling,
      ending: "eliminated",
      score: "reps",
      whenStopped: { at: 700, scoreDone: 270, row: 34, atWall: false, advice: "tie-break" },
    } as const;
    expect(sayEnding(eliminated, kg)).toBe(
      "The work outruns the clock at 11:40, in round\u00a012, after 8 push-ups (270\u00a0reps). The tie-break decides: be early at the tie-break moment.",
    );
  });

  it("where whole intervals count, gives no reps for a score and no advice on reps", () => {
    const out = {
      ...filling,
      ending: "eliminated",
      score: "intervals-completed",
      whenStopped: { at: 480, scoreDone: 35, row: 34, atWall: false, advice: "most-reps" },
    } as const;
    expect(sayEnding(out, kg)).toBe(
      "The work outruns the clock at 8:00, in round\u00a012, after 8 push-ups.",
    );
  });

  it("before work out of reach says what it is, and never to keep moving", () => {
    const outOfReach = [{ name: "ring muscle-up", plural: "ring muscle-ups", unit: "reps" }] as const;
    const whenStopped = { at: 300, scoreDone: 106, row: 2, atWall: true, advice: "tie-break" } as const;
    const ask = "Ask your coach for another version before the start.";
    expect(sayEnding({ ...stopped, whenStopped, outOfReach: [...outOfReach] }, kg)).toBe(
      `Out of reach by your numbers after 36 of 40 burpees (106\u00a0reps): ring muscle-ups. ${ask} The tie-break decides: be early at the tie-break moment.`,
    );
    const never = { at: 0, scoreDone: 0, atWall: true, advice: "most-reps" } as const;
    expect(sayEnding({ ...stopped, rows: [], whenStopped: never, outOfReach: [...outOfReach] }, kg)).toBe(
      `Out of reach by your numbers from the start: ring muscle-ups. ${ask}`,
    );
    expect(sayEnding({ ...filling, outOfReach: [...outOfReach] }, kg)).toBe(
      `Out of reach by your numbers, so not planned: ring muscle-ups. ${ask}`,
    );
  });

  it("before what nobody knows the athlete to do says so, what to ask for and what to do for who can", () => {
    const skill = { easier: ["ring dips", "chest-to-bar pull-ups"] };
    const outOfReach = [{ name: "ring muscle-up", plural: "ring muscle-ups", unit: "reps", skill }] as const;
    const whenStopped = { at: 300, scoreDone: 106, row: 2, atWall: true, advice: "most-reps" } as const;
    const kept = outOfReach.map((each) => ({ ...each, skill: { easier: [...each.skill.easier] } }));
    expect(sayEnding({ ...stopped, whenStopped, outOfReach: kept }, kg)).toBe(
      "Planned as far as is sure, after 36 of 40 burpees (106\u00a0reps): whether you can do ring muscle-ups, nobody knows yet. If you have no ring muscle-up yet, the work ends there: ask for ring dips or chest-to-bar pull-ups before the start. If you have one, take them one at a time, each only when you are ready, and stop after two misses.",
    );
  });

  it("before a load far over what is usual at a level is never told to try it", () => {
    // 180 kg where 120 are usual: 150 %; 70 % of 120 is 84, of loads in steps of 2.5 kg 82.5.
    const load = { mass: { value: 180, unit: "kg" }, kilograms: 180, pieces: 1, perSide: [] } as const;
    const heavy = { name: "deadlift", plural: "deadlifts", unit: "reps", share: 1.5 } as const;
    const never = { at: 0, scoreDone: 0, atWall: true, advice: "most-reps", left: 600 } as const;
    const outOfReach = [{ ...heavy, load: { ...load, perSide: [] } }];
    expect(sayEnding({ ...stopped, rows: [], whenStopped: never, outOfReach }, kg)).toBe(
      "Out of reach by what is expected of you from the start: deadlifts at 180\u00a0kg. 10:00 of the clock remain. Ask for 82.5\u00a0kg or less, 70% of what is expected of you, before the start.",
    );
  });

  it("that is only the end of the time needs no words", () => {
    expect(sayEnding(filling, kg)).toBeUndefined();
  });
});
