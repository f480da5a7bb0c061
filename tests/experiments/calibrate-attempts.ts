/**
 * How far the chance of a lift can be trusted, and whether planned attempts beat rules of thumb. Run by hand:
 *
 *   node tests/experiments/calibrate-attempts.ts <table of lift results> [lifter-days to simulate]
 */
import { BEST_LIFT_CONSTANTS } from "../../src/compute/capacity/best-lift-constants.ts";
import { ATTEMPT_CONSTANTS, type AttemptConstants } from "../../src/compute/lifting/attempt-constants.ts";
import type { AttemptPlan, Stop } from "../../src/compute/lifting/attempt-problem.ts";
import { isStop } from "../../src/compute/lifting/attempt-problem.ts";
import type { Candidate } from "../../src/compute/lifting/candidate-loads.ts";
import { chooseAttempts, type OpenProblem } from "../../src/compute/lifting/choose-attempts.ts";
import {
  type Belief,
  beliefBefore,
  type LiftKind,
  openerMargin,
  spreadOfAttempt,
} from "../../src/compute/lifting/day-strength.ts";
import { attemptLoss } from "../../src/compute/lifting/lift-today.ts";
import { liftingClock } from "../../src/compute/lifting/lifting-clock.ts";
import { makeChance, updateBelief } from "../../src/compute/lifting/make-chance.ts";
import { objectiveOf, withoutLiftPriced } from "../../src/compute/lifting/objective.ts";
import { withOverrides } from "../../src/compute/overrides/with-overrides.ts";
import { createRandom, type Random } from "../../src/numerics/random.ts";
import { isHeldOut, type LiftResultLine, readLiftResults } from "./lift-results.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const bests = withOverrides(BEST_LIFT_CONSTANTS);

/** Mean strength of a day over the best of 24 months, by how many results that is the best of (public results). */
const MEANS = { overhead: [1.088, 1.046, 1.023, 1.004], slow: [1.07, 1.034, 1.012, 0.996] } as const;

const groupOf = (results: number): 0 | 1 | 2 | 3 =>
  results >= 8 ? 3 : results >= 4 ? 2 : results >= 2 ? 1 : 0;

/** The belief before the day of a lifter with a record. */
function recordOf({ best = 0, results, overheadCatch }: LiftResultLine): {
  kilograms: number;
  spread: number;
} {
  const group = groupOf(results);
  const spreads = overheadCatch
    ? [
        bests.snatchSpreadOneResult,
        bests.snatchSpreadFewResults,
        bests.snatchSpreadSomeResults,
        bests.snatchSpreadManyResults,
      ]
    : [
        bests.slowSpreadOneResult,
        bests.slowSpreadFewResults,
        bests.slowSpreadSomeResults,
        bests.slowSpreadManyResults,
      ];
  return {
    kilograms: best * MEANS[overheadCatch ? "overhead" : "slow"][group],
    spread: best * (spreads[group] ?? 0),
  };
}

/* Calibration. */

type Forecast = { readonly chance: number; readonly made: boolean };

/** The chance of every attempt as coaches chose them: the opener tells of the day, each result of the next attempt. */
function forecastsOf(line: LiftResultLine): readonly Forecast[] {
  const [opener] = line.attempts;
  if (!opener) return [];
  const margin = openerMargin(opener.load, line.best, line, constants);
  const spread = spreadOfAttempt(opener.load + margin, line, constants);
  let belief: Belief = { mean: opener.load + margin, spread: spread.day, noise: spread.noise };
  return line.attempts.map(({ load, made }) => {
    const chance = makeChance(load, belief);
    belief = updateBelief(belief, load, made);
    return { chance, made };
  });
}

const logLoss = (forecasts: readonly Forecast[]): number =>
  forecasts.reduce((sum, { chance, made }) => {
    const held = Math.min(0.99, Math.max(0.01, chance));
    return sum - Math.log(made ? held : 1 - held);
  }, 0) / forecasts.length;

const brier = (forecasts: readonly Forecast[]): number =>
  forecasts.reduce((sum, { chance, made }) => sum + (chance - (made ? 1 : 0)) ** 2, 0) / forecasts.length;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function reportCalibration(title: string, forecasts: readonly Forecast[]): void {
  console.log(
    `${title}: ${forecasts.length} attempts, log loss ${logLoss(forecasts).toFixed(4)}, Brier ${brier(forecasts).toFixed(4)}`,
  );
  for (let tenth = 0; tenth < 10; tenth++) {
    const inside = forecasts.filter(({ chance }) => Math.min(9, Math.floor(chance * 10)) === tenth);
    if (inside.length < 500) continue;
    const predicted = mean(inside.map(({ chance }) => chance));
    const made = mean(inside.map(({ made }) => (made ? 1 : 0)));
    console.log(
      `  ${tenth}0 to ${tenth + 1}0 %: ${inside.length} attempts, predicted ${percent(predicted)}, made ${percent(made)}`,
    );
  }
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/* Simulated days. */

type Situation = {
  readonly name: string;
  readonly length?: number;
  readonly attempts: number;
  readonly rising: boolean;
};

const SITUATIONS: readonly Situation[] = [
  { name: "three attempts, loads rise", attempts: 3, rising: true },
  { name: "three attempts, any load", attempts: 3, rising: false },
  { name: "window of 6 min", length: 360, attempts: 6, rising: false },
  { name: "window of 4 min", length: 240, attempts: 6, rising: false },
];

type World = {
  readonly name: string;
  readonly noise: (fitted: number) => number;
  readonly strength: number;
  readonly spread: number;
};

/** Both ends of the bracket of the slope, and an athlete weaker, less known and noisier than believed. */
const WORLDS: readonly World[] = [
  { name: "steep end", noise: (fitted) => fitted, strength: 1, spread: 1 },
  { name: "flat end", noise: (fitted) => 1.45 * fitted, strength: 1, spread: 1 },
  { name: "worse than believed", noise: (fitted) => 1.45 * fitted, strength: 0.95, spread: 1.3 },
];

const wholeKilograms = (low: number, high: number): readonly Candidate[] =>
  Array.from({ length: Math.floor(high) - Math.ceil(low) + 1 }, (_, at) => ({
    kilograms: Math.ceil(low) + at,
    side: { kg: 0, lb: 0 },
  }));

function problemOf(
  belief: Belief,
  kind: LiftKind,
  situation: Situation,
  known: AttemptConstants,
): OpenProblem {
  const clock = liftingClock(
    {
      ...(situation.length !== undefined && { length: situation.length }),
      attempts: situation.attempts,
      reps: 1,
      earliest: 0,
      mayWait: false,
      lateLift: false,
    },
    known,
  );
  if (!clock) throw new Error("no time to lift");
  return {
    ...clock,
    belief,
    begins: [0],
    strength: (_since, rest, attempts) => 1 - attemptLoss(rest, 1, known) - known.attemptCost * attempts,
    change: () => 0,
    worth: withoutLiftPriced(
      objectiveOf({ objective: "expected-lift" }, false),
      belief.mean,
      known.noLiftCost,
    ),
    counts: "best",
    rising: situation.rising,
    standard: beliefBefore({ kilograms: 100, spread: (100 * belief.spread) / belief.mean }, 0, kind, known),
  };
}

/** Fixed shares of the best lift, evenly spread over the same time; a missed load is repeated. */
function shares(problem: OpenProblem, best: number, rungs: readonly number[]): AttemptPlan | Stop {
  const { step, lift, lastStart, gaps } = problem;
  const fits = Math.min(problem.attempts, Math.floor(lastStart / (gaps[0] ?? 1)) + 1, rungs.length);
  const gap = fits > 1 ? Math.floor(lastStart / (fits - 1)) : 0;
  const follow = (attempt: number, rung: number): AttemptPlan | Stop => {
    const share = rungs[rung];
    if (attempt >= fits || share === undefined) return { stop: "no-attempts" };
    const start = attempt * gap;
    return {
      load: Math.floor(share * best),
      start,
      strength: problem.strength(start * step, attempt === 0 ? Infinity : gap * step - lift, attempt),
      chance: NaN,
      made: follow(attempt + 1, rung + 1),
      missed: follow(attempt + 1, rung),
    };
  };
  return follow(0, 0);
}

/** Opens with 85 % and adds 5 kg for as long as it is made and time is left. */
function addFive(problem: OpenProblem, best: number): AttemptPlan | Stop {
  const { step, lift, lastStart, gaps } = problem;
  const gap = gaps[0] ?? 1;
  const follow = (attempt: number, load: number): AttemptPlan | Stop => {
    const start = attempt * gap;
    if (attempt >= problem.attempts || start > lastStart) return { stop: "no-time" };
    const rest = attempt === 0 ? Infinity : gap * step - lift;
    return {
      load,
      start,
      strength: problem.strength(start * step, rest, attempt),
      chance: NaN,
      made: follow(attempt + 1, load + 5),
      missed: { stop: "no-gain" },
    };
  };
  return follow(0, Math.floor(0.85 * best));
}

/** Best made load of one simulated day; 0 when nothing is made. Attempts take their noise from `draws`, so plans share their luck. */
function live(plan: AttemptPlan | Stop, strength: number, noise: number, draws: readonly number[]): number {
  let at = plan;
  let best = 0;
  for (let attempt = 0; !isStop(at); attempt++) {
    const made = at.strength * strength + noise * (draws[attempt] ?? 0) >= at.load;
    if (made) best = Math.max(best, at.load);
    at = made ? at.made : at.missed;
  }
  return best;
}

const DAYS_EACH = 40;

function simulate(lines: readonly LiftResultLine[], random: Random): void {
  for (const situation of SITUATIONS) {
    const results = new Map<string, number[]>();
    let ruleUsed = 0;
    for (const line of lines) {
      const record = recordOf(line);
      const belief = beliefBefore(record, 0, line, constants);
      const problem = problemOf(belief, line, situation, constants);
      const width = Math.hypot(belief.spread, belief.noise);
      const loads = wholeKilograms(Math.max(10, record.kilograms - 3 * width), record.kilograms + 2 * width);
      const chosen = chooseAttempts(problem, loads, [], 0, constants);
      if (chosen.rule === "fixed-percentages") ruleUsed++;
      const plans: readonly (readonly [string, AttemptPlan | Stop])[] = [
        ["plan", chosen.plan],
        ["85/92/97 % of the record", shares(problem, line.best ?? 0, [0.85, 0.92, 0.97])],
        ["85/92/97 % of today", shares(problem, record.kilograms, [0.85, 0.92, 0.97])],
        ["+5 kg until a miss", addFive(problem, record.kilograms)],
      ];
      const fitted = spreadOfAttempt(record.kilograms, line, constants).noise;
      for (const world of WORLDS) {
        for (let day = 0; day < DAYS_EACH; day++) {
          const strength = world.strength * record.kilograms + world.spread * record.spread * random.normal();
          // Lifters differ in how even they are.
          const noise = world.noise(fitted) * Math.exp(0.2 * random.normal());
          const draws = Array.from({ length: 8 }, () => random.normal());
          for (const [name, plan] of plans) {
            const key = `${world.name}|${name}`;
            const share = live(plan, strength, noise, draws) / record.kilograms;
            const list = results.get(key) ?? [];
            if (list.length === 0) results.set(key, list);
            list.push(share);
          }
        }
      }
    }
    console.log(`${situation.name} (fixed percentages used for ${ruleUsed} of ${lines.length} lifter-days)`);
    for (const [key, list] of results) {
      const [world = "", name = ""] = key.split("|");
      const none = list.filter((share) => share === 0).length / list.length;
      console.log(
        `  ${world.padEnd(20)} ${name.padEnd(26)} best made ${percent(mean(list))} of strength, no lift ${(100 * none).toFixed(2)} %`,
      );
    }
  }
}

const [path, count = "1000"] = process.argv.slice(2);
if (path === undefined) throw new Error("name the table of lift results");
const lines = readLiftResults(path).filter((line) => line.attempts.length > 0 && isHeldOut(line));
const forecasts = lines.map(forecastsOf);
console.log(
  `${lines.length} held-out lifter-days of ${new Set(lines.map(({ lifter }) => lifter)).size} lifters`,
);
reportCalibration(
  "openers",
  forecasts.flatMap((each) => each.slice(0, 1)),
);
for (const attempt of [1, 2]) {
  reportCalibration(
    `attempt ${attempt + 1}`,
    forecasts.flatMap((each) => each.slice(attempt, attempt + 1)),
  );
}
reportCalibration("all attempts", forecasts.flat());
const known = lines.filter((line) => line.best !== undefined);
const every = Math.max(1, Math.floor(known.length / Number(count)));
simulate(
  known.filter((_, at) => at % every === 0),
  createRandom(20261125),
);
