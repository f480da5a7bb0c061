import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DEBRIEF_CONSTANTS } from "../../../src/compute/debrief/constants.ts";
import { type Culprit, findCauses } from "../../../src/compute/debrief/find-causes.ts";
import { piecesOf } from "../../../src/compute/debrief/pieces.ts";
import { pieceWork } from "../../../src/compute/debrief/piece-work.ts";
import { suspectsOf } from "../../../src/compute/debrief/suspects.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { planParts } from "../../../src/compute/plan/plan-parts.ts";
import type { PlannedPart } from "../../../src/compute/plan/planned-part.ts";
import { settle } from "../../../src/compute/plan/settle.ts";
import type { Workout } from "../../../src/models/workout.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { demoData } from "../../support/demo-data.ts";
import { type Mistakes, performed } from "../../support/performed.ts";
import { soundWorkout } from "../../support/workout-notation.ts";

const data = demoData();
const constants = withOverrides(DEBRIEF_CONSTANTS);
type Paced = NonNullable<PlannedPart["paced"]>;

const CASES = new URL("../../cases/workouts/", import.meta.url);
const workouts: readonly Workout[] = [
  ...data.workouts,
  ...readdirSync(CASES).map((file) =>
    soundWorkout(
      readFileSync(new URL(file, CASES), "utf8")
        .replace(/^---\n/, "")
        .replace(/\n---\n[^]*$/, ""),
    ),
  ),
];

/**
 * Parts with enough lines to tell something, without rests that begin by the clock, of three athletes: one that is over in a few lines
 * names no cause.
 */
const parts: readonly Paced[] = data.athletes
  .slice(0, 3)
  .flatMap((athlete) =>
    workouts.flatMap((workout) =>
      planParts(workout, settle(athlete, workout, data, "2026-11-27").context).flatMap(({ paced }) =>
        paced && paced.pacing.rows.length >= 12 && paced.pacing.rows.every(({ why }) => why !== "prescribed")
          ? [paced]
          : [],
      ),
    ),
  );
const SEEDS = 5;

function causesOf({ pacing, hasty }: Paced, mistakes: Mistakes, seed: number): readonly Culprit[] {
  const ends = performed(pacing.rows, hasty, mistakes, createRandom(seed));
  const clocks = pacing.rows.flatMap(({ kind }, r) => (kind === "work" ? [ends[r] ?? 0] : []));
  const pieces = piecesOf({ ...pacing, startsByClock: false }, clocks);
  const work = pieceWork(pieces, pacing.rows);
  // A day's form of 3 %, as `performed` draws it.
  return findCauses(
    pieces,
    suspectsOf({ pieces, work, rows: pacing.rows, hasty, form: 0.03 }, constants),
    constants,
  );
}

/** Share of the time from which a mistake is one worth finding: clear of how days differ (3 %) and of waits that follow breath, not pace. */
const LEAST_COST = 0.05;

type Verdict = { readonly named: number; readonly off: number; readonly days: number };

/** Share of days on which the cause is named first, and the middle of how far its seconds are off the true ones. */
function judge(
  mistakesOf: (paced: Paced) => Mistakes | undefined,
  isTrue: (first: Culprit | undefined, mistakes: Mistakes) => boolean,
  secondsOf: (paced: Paced, mistakes: Mistakes) => number,
): Verdict {
  let days = 0;
  let named = 0;
  const off: number[] = [];
  parts.forEach((paced, p) => {
    const mistakes = mistakesOf(paced);
    if (mistakes === undefined) return;
    // A mistake that costs less than a day's form differs is no use naming.
    const cost = secondsOf(paced, mistakes);
    if (cost > 0 && cost < LEAST_COST * (paced.pacing.rows.at(-1)?.end ?? 0)) return;
    for (let seed = 0; seed < SEEDS; seed += 1) {
      const [first] = causesOf(paced, mistakes, 1000 * seed + p);
      days += 1;
      if (!isTrue(first, mistakes)) continue;
      named += 1;
      const truth = secondsOf(paced, mistakes);
      if (truth > 0) off.push(Math.abs((first?.seconds ?? 0) - truth) / truth);
    }
  });
  return { days, named: named / days, off: off.toSorted((a, b) => a - b)[Math.floor(off.length / 2)] ?? 0 };
}

const breaksIn = ({ pacing }: Paced): number =>
  pacing.rows.reduce((sum, { sets }) => sum + sets.filter(({ restAfter }) => restAfter > 0).length, 0);
const waysIn = ({ pacing }: Paced): number =>
  pacing.rows.filter(({ kind, transition }) => kind === "work" && transition > 1).length;

/** The movement with the second most time: one that is not all of the work. */
function someMovement({ pacing }: Paced): string {
  const time = new Map<string, number>();
  for (const { movement, start, end } of pacing.rows) {
    if (movement !== undefined) time.set(movement, (time.get(movement) ?? 0) + end - start);
  }
  return [...time].toSorted((a, b) => b[1] - a[1])[1]?.[0] ?? "";
}
const workOf = ({ pacing }: Paced, movement: string | undefined): number =>
  pacing.rows
    .filter((row) => row.movement === movement)
    .reduce(
      (sum, { start, end, transition, sets }) =>
        sum + end - start - transition - sets.reduce((rests, { restAfter }) => rests + restAfter, 0),
      0,
    );

const kinds = {
  breaks: () =>
    judge(
      (paced) => (breaksIn(paced) > 3 ? { breaks: 8 } : undefined),
      (first) => first?.suspect.kind === "breaks" || first?.orBreaks === true,
      (paced) => 8 * breaksIn(paced),
    ),
  ways: () =>
    judge(
      (paced) => (waysIn(paced) > 6 ? { transitions: 10 } : undefined),
      (first) => first?.suspect.kind === "transitions",
      (paced) => 10 * waysIn(paced),
    ),
  movement: () =>
    judge(
      // Three tenths slower: a fifth costs too little of most work to be worth finding.
      (paced) => ({ slower: { movement: someMovement(paced), share: 0.3 } }),
      (first, { slower }) => first?.suspect.movement === slower?.movement,
      (paced, { slower }) => 0.3 * workOf(paced, slower?.movement),
    ),
  haste: () =>
    judge(
      () => ({ haste: 0.15 }),
      (first) => first?.suspect.kind === "haste",
      () => 0,
    ),
};

// The goals are those of the product's design: the true cause first on at least 80 of 100 days, none named on at least 90 of 100 days
// without a mistake, seconds within a third of the true cost in the middle. The days are drawn by `performed`.
describe("known mistakes on seeded days", () => {
  it("are there to be found", () => {
    expect(parts.length).toBeGreaterThan(8);
  });

  it("name no cause on days without one", () => {
    const { named } = judge(
      () => ({}),
      (first) => first === undefined,
      () => 0,
    );
    expect(named).toBeGreaterThanOrEqual(0.9);
  });

  it("are named first on 80 of 100 days, each kind on 70", () => {
    const verdicts = Object.values(kinds).map((verdict) => verdict());
    const days = verdicts.reduce((sum, verdict) => sum + verdict.days, 0);
    const named = verdicts.reduce((sum, verdict) => sum + verdict.named * verdict.days, 0);
    expect(named / days).toBeGreaterThanOrEqual(0.8);
    for (const verdict of verdicts) {
      expect(verdict.named).toBeGreaterThanOrEqual(0.7);
      // On a handful of days a share says nothing.
      expect(verdict.days).toBeGreaterThanOrEqual(30);
    }
  });

  it("cost about what they are told to cost", () => {
    for (const kind of ["breaks", "ways", "movement"] as const) {
      expect([kind, kinds[kind]().off < 1 / 3]).toEqual([kind, true]);
    }
  });
});
