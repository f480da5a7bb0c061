import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { expectedWorth, outcomesOf } from "../../../src/compute/lifting/attempt-outcomes.ts";
import type { Candidate } from "../../../src/compute/lifting/candidate-loads.ts";
import { chooseAttempts, type OpenProblem } from "../../../src/compute/lifting/choose-attempts.ts";
import { makeChance } from "../../../src/compute/lifting/make-chance.ts";
import { percentageRule } from "../../../src/compute/lifting/percentage-rule.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { attemptProblem, planned } from "../../support/attempt-problem.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const candidates: readonly Candidate[] = Array.from({ length: 25 }, (_, at) => ({
  kilograms: 60 + 2.5 * at,
  side: { kg: at, lb: 0 },
}));

function openProblem(more: Partial<OpenProblem> = {}): OpenProblem {
  const { loads: _loads, ...problem } = attemptProblem({ worth: (best) => best ?? -200 });
  expect(_loads).toBeDefined();
  return { ...problem, standard: { mean: 100, spread: 5, noise: 6 }, ...more };
}

describe("the attempts chosen", () => {
  it("open with the heaviest load made as surely as the standard athlete opens, 85 % or more", () => {
    const problem = openProblem();
    const { plan } = chooseAttempts(problem, candidates, [], 0, constants);
    const opener = planned(plan).load;
    expect(planned(plan).chance).toBeGreaterThanOrEqual(0.85);
    expect(makeChance(opener + 10, problem.belief)).toBeLessThan(0.85);
  });

  it("are worth more than fixed percentages on days as believed", () => {
    const problem = openProblem();
    const { plan, rule } = chooseAttempts(problem, candidates, [], 0, constants);
    const fixed = percentageRule(
      { ...problem, loads: candidates.map(({ kilograms }) => kilograms) },
      0,
      constants,
    );
    const worth = (each: typeof plan): number =>
      expectedWorth(outcomesOf(each, problem.belief), problem.worth);
    expect(rule).toBe("decision");
    expect(worth(plan)).toBeGreaterThan(worth(fixed));
  });

  it("are the fixed percentages where these do better over all worlds", () => {
    const chosen = chooseAttempts(
      // A change of plates that takes longer than any rest leaves the decision one load.
      openProblem({ change: (from, to) => (from !== undefined && from !== to ? 1e6 : 0) }),
      candidates,
      [],
      0,
      constants,
    );
    expect(chosen.rule).toBe("fixed-percentages");
    expect(planned(chosen.planAt(0)).load).toBe(planned(chosen.plan).load);
  });

  it("keep the opener the coach has set, and use no percentages then", () => {
    const { plan, rule } = chooseAttempts(
      openProblem({ opener: 95 }),
      candidates,
      candidates.filter(({ kilograms }) => kilograms === 95),
      0,
      constants,
    );
    expect(planned(plan).load).toBe(95);
    expect(rule).toBe("decision");
  });

  it("may open with any load where only one counts", () => {
    const { standard: _standard, ...free } = openProblem({ worth: (best) => ((best ?? 0) >= 110 ? 1 : 0) });
    expect(_standard).toBeDefined();
    const { plan } = chooseAttempts(
      free,
      candidates,
      candidates.filter(({ kilograms }) => kilograms === 110),
      0,
      constants,
    );
    expect(planned(plan).load).toBe(110);
  });

  it("can be begun at another step, and tell what that is worth", () => {
    const chosen = chooseAttempts(
      openProblem({ step: 60, gaps: [2], lastStart: 6, begins: [0, 2] }),
      candidates,
      [],
      0,
      constants,
    );
    expect(planned(chosen.planAt(2)).start).toBe(2);
    expect(chosen.worthAt(2)).toBeLessThanOrEqual(chosen.worthAt(0));
  });

  it("expect no less with more time or another attempt, to half a per cent", () => {
    const expected = (more: Partial<OpenProblem>, mean: number): number => {
      const belief = { mean, spread: 0.06 * mean, noise: 5.5 };
      const problem = openProblem({
        step: 15,
        gaps: [5, 6, 8, 11],
        attempts: 6,
        lastStart: 20,
        belief,
        ...more,
      });
      const around = candidates.map(({ side }, at) => ({ kilograms: mean * (0.7 + 0.02 * at), side }));
      return expectedWorth(chooseAttempts(problem, around, [], 0, constants).outcomes, problem.worth);
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 180 }),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 1, max: 5 }),
        (mean, lastStart, attempts) => {
          const slack = 0.005 * mean;
          const [short, long] = [expected({ lastStart }, mean), expected({ lastStart: lastStart + 5 }, mean)];
          expect(long).toBeGreaterThan(short - slack);
          const [few, more] = [expected({ attempts }, mean), expected({ attempts: attempts + 1 }, mean)];
          expect(more).toBeGreaterThan(few - slack);
        },
      ),
      { numRuns: 60, seed: 9 },
    );
  });
});
