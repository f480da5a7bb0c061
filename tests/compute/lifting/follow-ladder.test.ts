import { describe, expect, it } from "vitest";
import { dayChances } from "../../../src/compute/lifting/day-grid.ts";
import type { Belief } from "../../../src/compute/lifting/day-strength.ts";
import {
  followLadder,
  type Ladder,
  type Outcome,
  type Rung,
  rungsOf as rungsWith,
} from "../../../src/compute/lifting/follow-ladder.ts";
import type { LadderProblem } from "../../../src/compute/lifting/ladder-problem.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

const problem = ladderProblem();
const ladder: Ladder = { loads: [90, 95, 100, 102.5], lower: [85, 80] };

type Slots = Pick<LadderProblem, "slots">;
const rungsOf = (own: Ladder, { slots }: Slots, belief: Belief): readonly Rung[] =>
  rungsWith(own, dayChances(slots, belief));
const outcomesOf = (own: Ladder, { slots }: Slots, belief: Belief): readonly Outcome[] =>
  followLadder(own, dayChances(slots, belief)).outcomes;

/** No doubt of the day: chances of attempts do not depend on each other. 100 kg half the time, 94 kg with 0.8413. */
const certain = { mean: 100, spread: 0, noise: 6, slip: 0 };

describe("the rows of a ladder", () => {
  it("by hand, without doubt of the day: how likely each is made, once lifted and seen from now", () => {
    const rungs = rungsOf({ loads: [94, 100], lower: [94] }, problem, certain);
    expect(rungs[0]?.chance).toBeCloseTo(0.8413, 4);
    expect(rungs[0]?.lifted).toBeCloseTo(1, 12);
    // Made at once or at the second try: 1 - 0.1587^2.
    expect(rungs[0]?.made).toBeCloseTo(0.9748, 4);
    expect(rungs[1]?.chance).toBeCloseTo(0.5, 4);
    expect(rungs[1]?.lifted).toBeCloseTo(0.9748, 4);
    // Two tries at even chances of whoever comes to it, of four attempts in all: 0.9748 x 0.75.
    expect(rungs[1]?.made).toBeCloseTo(0.7311, 4);
    expect(rungs[1]?.ifMissed?.load).toBe(100);
    expect(rungs[1]?.ifMissed?.chance).toBeCloseTo(0.5, 4);
  });

  it("come and are made less and less often down the ladder, however the chances of single lifts run", () => {
    // Much strength comes back before the third lift, so that its own chance is higher than that of the second.
    const later = { slots: slotsWith(0.9, 0.9, 1, 1) };
    const rungs = rungsOf(ladder, later, problem.belief);
    expect(rungs[2]?.chance).toBeGreaterThan(rungs[1]?.chance ?? 1);
    const told = rungs.flatMap(({ lifted, made }) => [lifted, made]);
    for (const [at, chance] of told.entries()) expect(chance).toBeLessThanOrEqual(told[at - 1] ?? 1);
  });

  it("miss 3 % more after the first, whatever the load", () => {
    const rungs = rungsOf({ loads: [70, 72.5], lower: [] }, problem, { ...certain, slip: 0.03 });
    expect(rungs[0]?.chance).toBeCloseTo(1, 6);
    expect(rungs[1]?.chance).toBeCloseTo(0.97, 5);
  });

  it("are surer after a made lift and less sure after a miss, where the day is in doubt", () => {
    const rungs = rungsOf(ladder, problem, { ...problem.belief, slip: 0 });
    const alone = rungsOf({ loads: [95], lower: [] }, problem, problem.belief)[0]?.chance ?? 1;
    expect(rungs[1]?.chance).toBeGreaterThan(alone);
    expect(rungs[1]?.ifMissed?.chance).toBeLessThan(rungs[1]?.chance ?? 0);
  });

  it("have no next after a miss at the last attempt", () => {
    expect(rungsOf(ladder, problem, problem.belief).at(-1)?.ifMissed).toBeUndefined();
  });
});

describe("how days end that follow a ladder", () => {
  it("by hand with two attempts: opener missed, the lighter one made or not", () => {
    const two = { slots: slotsWith(1, 1) };
    const ends = outcomesOf({ loads: [94, 100], lower: [88] }, two, certain);
    const of = (best: number | undefined): number =>
      ends.filter((each) => each.best === best).reduce((sum, { chance }) => sum + chance, 0);
    // 0.8413 x 0.5; 0.8413 x 0.5; 0.1587 x P(z < 2) = 0.1587 x 0.9772; the rest
    expect(of(100)).toBeCloseTo(0.4207, 4);
    expect(of(94)).toBeCloseTo(0.4207, 4);
    expect(of(88)).toBeCloseTo(0.155, 3);
    expect(of(undefined)).toBeCloseTo(0.0036, 4);
  });

  // The stupid method: two hundred thousand days lived one by one.
  it.each([undefined, 1, 2])("agree with days lived by chance, aimed at rung %s", (aimed) => {
    const ladder: Ladder = { loads: [90, 95, 100, 102.5], lower: [85, 80], ...(aimed && { aimed }) };
    const random = createRandom(7);
    const { belief, slots } = problem;
    const days = 200_000;
    const lived = new Map<number | undefined, number>();
    let misses = 0;
    for (let day = 0; day < days; day++) {
      const strength = belief.mean + belief.spread * random.normal();
      const makes = (load: number, first: boolean): boolean =>
        strength + belief.noise * random.normal() >= load && (first || random.uniform() >= belief.slip);
      const end = live(ladder, slots.length, makes);
      lived.set(end.best, (lived.get(end.best) ?? 0) + 1 / days);
      misses += end.misses / days;
    }
    const ends = outcomesOf(ladder, problem, belief);
    for (const best of [undefined, 80, 85, ...ladder.loads]) {
      const told = ends.filter((each) => each.best === best).reduce((sum, { chance }) => sum + chance, 0);
      expect(Math.abs(told - (lived.get(best) ?? 0))).toBeLessThan(0.004);
    }
    const told = ends.reduce((sum, { misses: missed, chance }) => sum + missed * chance, 0);
    expect(Math.abs(told - misses)).toBeLessThan(0.01);
  });

  it("are all of them", () => {
    const sum = outcomesOf(ladder, problem, problem.belief).reduce((all, { chance }) => all + chance, 0);
    expect(sum).toBeCloseTo(1, 9);
  });

  it("take work that grows with the attempts and not with their ways", () => {
    const loads = [90, ...Array.from({ length: 59 }, (_, at) => 90.25 + at * 0.25)] as [number, ...number[]];
    const long = { loads, lower: [85, 80] };
    const many = { slots: slotsWith(...loads.map(() => 1)) };
    // Ways through 60 attempts are more than 10^11; ends are few.
    expect(outcomesOf(long, many, problem.belief).length).toBeLessThan(2500);
  });
});

/**
 * One day by the rule in words: an opener missed, lighter, and back the same way; a later miss, again; two in a row end it once a
 * lift stands; over the load aimed at only after a first try, and one miss ends it.
 */
function live(
  { loads, lower, aimed = Infinity }: Ladder,
  attempts: number,
  makes: (load: number, first: boolean) => boolean,
): { readonly best: number | undefined; readonly misses: number } {
  let best: number | undefined;
  let misses = 0;
  let inRow = 0;
  let rung = 0;
  let down = 0;
  for (let attempt = 0; attempt < attempts && rung < loads.length; attempt++) {
    const load = (down > 0 ? lower[down - 1] : loads[rung]) ?? 0;
    if (makes(load, attempt === 0)) {
      best = Math.max(best ?? 0, load);
      if (load >= loads[0] && rung >= aimed && inRow > 0) break;
      inRow = 0;
      down = Math.max(0, down - 1);
      if (load >= loads[0]) rung++;
      continue;
    }
    misses++;
    inRow++;
    if (best !== undefined && (inRow === 2 || rung > aimed)) break;
    if (best === undefined && lower[down] === undefined) break;
    if (best === undefined) down++;
  }
  return { best, misses };
}
