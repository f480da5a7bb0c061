/**
 * How far the chance of a lift can be trusted, and whether planned attempts beat rules of thumb. Run by hand:
 *
 *   node tests/experiments/calibrate-attempts.ts <table of lift results> [lifter-days to simulate] [held-out]
 *
 * Scored are lifters that were kept out of the fit: three in ten of the table, or with `held-out` all of them, where the table
 * holds nobody else. Results: calibrate-attempts.md.
 */
import { BEST_LIFT_CONSTANTS } from "../../src/compute/capacity/best-lift-constants.ts";
import type { KnownBy } from "../../src/compute/capacity/known-by.ts";
import { strengthOfDay } from "../../src/compute/capacity/strength-of-day.ts";
import { attemptConstants } from "../../src/compute/lifting/attempt-constants.ts";
import type { AttemptWindow } from "../../src/compute/lifting/attempt-times.ts";
import { both, chancesByDay, DAY_WEIGHTS, totalOf, without } from "../../src/compute/lifting/day-grid.ts";
import { type Belief, beliefBefore, openerTells } from "../../src/compute/lifting/day-strength.ts";
import type { Slot } from "../../src/compute/lifting/ladder-problem.ts";
import { ladderRules } from "../../src/compute/lifting/ladder-rules.ts";
import { attemptLoss } from "../../src/compute/lifting/lift-today.ts";
import type { LiftingTask } from "../../src/compute/lifting/lifting-task.ts";
import { planLadder, slotsOf } from "../../src/compute/lifting/plan-ladder.ts";
import { shareStillLost } from "../../src/compute/lifting/work-loss.ts";
import { withOverrides } from "../../src/compute/overrides/with-overrides.ts";
import { kilograms } from "../../src/models/quantity.ts";
import { createRandom, type Random } from "../../src/numerics/random.ts";
import { isHeldOut, type LiftResultLine, readLiftResults } from "./lift-results.ts";

const constants = attemptConstants();
const bests = withOverrides(BEST_LIFT_CONSTANTS);

const knownBy = ({ results }: LiftResultLine): KnownBy =>
  results >= 4 ? "many-results" : results >= 2 ? "few-results" : "one-result";

/* Calibration. */

type Forecast = { readonly chance: number; readonly made: boolean };

const slotOf = (): Slot => ({ start: 0, rest: 120, strength: 1, recovered: 1 });

/** The chance of every attempt as coaches chose them: the opener tells of the day, each result of the next attempt. */
function forecastsOf(line: LiftResultLine): readonly Forecast[] {
  const [opener] = line.attempts;
  if (!opener) return [];
  const lift = line.best === undefined ? undefined : { best: line.best, known: knownBy(line) };
  const { margin, day, noise } = openerTells(opener.load, lift, line, constants);
  const slip = line.overheadCatch ? constants.snatchMiss : constants.slowMiss;
  const belief: Belief = { mean: opener.load + margin, spread: day, noise, slip };
  let weights: Float64Array = DAY_WEIGHTS;
  return line.attempts.map(({ load, made }, at) => {
    const chances = chancesByDay(load, slotOf(), at === 0, belief);
    const chance = totalOf(both(weights, chances)) / totalOf(weights);
    weights = made ? both(weights, chances) : without(weights, chances);
    return { chance, made };
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const logLoss = (forecasts: readonly Forecast[]): number =>
  mean(
    forecasts.map(({ chance, made }) => {
      const held = Math.min(0.99, Math.max(0.01, chance));
      return -Math.log(made ? held : 1 - held);
    }),
  );

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function reportCalibration(title: string, forecasts: readonly Forecast[]): void {
  console.log(`${title}: ${forecasts.length} attempts, log loss ${logLoss(forecasts).toFixed(4)}`);
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

/* Simulated days. */

type Situation = {
  readonly name: string;
  /** Seconds; absent where no clock runs. */
  readonly length?: number;
  readonly attempts: number;
  readonly rising?: true;
  /** Share of strength lost at the opening. */
  readonly loss?: number;
};

const SITUATIONS: readonly Situation[] = [
  { name: "three attempts, loads rise", attempts: 3, rising: true },
  { name: "three attempts, any load", attempts: 3 },
  { name: "window of 4 min, fresh", length: 240, attempts: 6 },
  { name: "window of 6 min, fresh", length: 360, attempts: 6 },
  { name: "window of 7 min after hard work", length: 420, attempts: 6, loss: 0.17 },
  { name: "window of 10 min after hard work", length: 600, attempts: 6, loss: 0.17 },
];

type World = {
  readonly name: string;
  readonly noise: number;
  readonly strength: number;
  readonly spread: number;
};

/** Both ends of the bracket of the slope, and an athlete weaker, less known and noisier than believed. */
const WORLDS: readonly World[] = [
  { name: "steep end", noise: 1, strength: 1, spread: 1 },
  { name: "flat end", noise: 1.45, strength: 1, spread: 1 },
  { name: "worse than believed", noise: 1.45, strength: 0.95, spread: 1.3 },
];

/** Where the strength stands so many seconds after the opening. */
const stillLost = ({ loss = 0 }: Situation, since: number): number =>
  loss * shareStillLost(since, constants.fastSeconds, constants.slowSecondsOverlap, constants.fastShare);

function windowOf({ length, attempts, loss, rising }: Situation): AttemptWindow {
  const lift = constants.liftSeconds;
  if (length === undefined) {
    const gap = lift + constants.fullRest;
    const lastStart = attempts * gap;
    return { earliest: 0, breath: 0, lastStart, gap, longestGap: gap, lift, attempts };
  }
  const breath = loss === undefined || rising ? 0 : constants.breathHalfTime * Math.log2(5);
  const longestGap = lift + constants.longestRest;
  const gap = lift + constants.smallestRest;
  return {
    earliest: loss === undefined ? 0 : constants.firstLiftAfter,
    breath,
    lastStart: length - constants.lateMargin - lift,
    gap,
    longestGap,
    lift,
    attempts,
  };
}

/** A lifter with a record, ready to be planned with whole kilograms. */
function taskOf(line: LiftResultLine, situation: Situation, window: AttemptWindow): LiftingTask {
  const best = line.best ?? 0;
  const known = knownBy(line);
  const day = strengthOfDay(best, known, line.overheadCatch, bests);
  const doubt = constants.lossDoubt * stillLost(situation, window.lastStart / 2);
  const belief = beliefBefore(
    { kilograms: best * day.mean, spread: best * day.spread },
    doubt,
    line,
    constants,
  );
  const lifted = {
    best: {
      kilograms: kilograms(best),
      spread: kilograms(best * day.spread),
      doubt: 0,
      basis: "tested",
      known,
      from: { kind: "reps-at-load" },
    },
    bestForReps: best,
    line: { pieces: [{ reps: 1 }] },
  } as unknown as Parameters<typeof ladderRules>[0];
  const loads = Array.from({ length: Math.ceil(0.75 * best) }, (_, at) => Math.floor(0.5 * best) + at);
  const today = {
    strength: (since: number, rest: number, attempts: number) =>
      (1 - stillLost(situation, since)) * (1 - attemptLoss(rest, 1, constants)) -
      constants.attemptCost * attempts,
    loss: { at: (since: number) => stillLost(situation, since), overlap: 1 },
  };
  const standard = beliefBefore({ kilograms: 100, spread: 100 * day.spread }, 0, line, constants);
  const problem = {
    ...ladderRules(lifted, constants),
    loads,
    cuts: [],
    cutLoss: 0,
    // Whole kilograms to climb by, loads 2.5 kg apart to open with and to go down to.
    openers: loads.filter((load) => load % 5 === 0 || load % 5 === 2),
    belief,
    change: () => 0,
    worth: (made: number | undefined) => made ?? 0,
    rising: situation.rising ?? false,
    lastTry: constants.lastTry,
    lowestAfterMiss: constants.lowestAfterMiss,
    triesForFirst: constants.triesForFirst,
    gainWorthIt: constants.gainWorthIt,
    gainOfGrowingJumps: constants.gainOfGrowingJumps,
  };
  return { today, problem, standard } as unknown as LiftingTask;
}

/**
 * What somebody lifts: loads while all is made, loads after misses without any made lift, the rung aimed at, misses in a row that
 * end it.
 */
type Policy = {
  readonly loads: readonly number[];
  readonly lower: readonly number[];
  readonly aimed?: number;
  readonly ends: number;
  readonly slots: readonly Slot[];
};

/** Fixed shares of the best as far as strength is back, evenly over the same time; a missed load is repeated. */
function shares(
  line: LiftResultLine,
  situation: Situation,
  window: AttemptWindow,
  rungs: readonly number[],
  ends: number,
): Policy {
  const first = window.earliest;
  const fits = Math.min(window.attempts, Math.floor((window.lastStart - first) / window.gap) + 1);
  const count = Math.max(1, window.gap === window.longestGap ? window.attempts : fits);
  const gap =
    window.gap === window.longestGap ? window.gap : count > 1 ? (window.lastStart - first) / (count - 1) : 0;
  const today = taskOf(line, situation, window).today;
  const slots = slotsOf(
    today,
    Array.from({ length: count }, (_, at) => first + at * gap),
    window,
  );
  const loads = rungs.slice(0, count).map((share, at) => {
    const back = slots[at]?.recovered ?? 1;
    return Math.floor(share * back * (line.best ?? 0));
  });
  return { loads, lower: Array.from({ length: count }, () => loads[0] ?? 0), ends, slots };
}

type Day = { readonly best: number; readonly misses: number; readonly left: boolean };

/** One day that follows a policy. Attempts take their noise from `draws`, so policies share their luck. */
function live(
  { loads, lower, aimed = Infinity, ends, slots }: Policy,
  makes: (load: number, strength: number, attempt: number) => boolean,
): Day {
  let [best, misses, inRow, rung, down] = [0, 0, 0, 0, 0];
  for (let attempt = 0; attempt < slots.length && rung < loads.length; attempt++) {
    const load = (down > 0 ? lower[down - 1] : loads[rung]) ?? 0;
    if (makes(load, slots[attempt]?.strength ?? 1, attempt)) {
      best = Math.max(best, load);
      down = Math.max(0, down - 1);
      if (load >= (loads[0] ?? 0)) rung += inRow > 0 && rung >= aimed ? loads.length : 1;
      inRow = 0;
      continue;
    }
    misses++;
    inRow++;
    if (best > 0 ? inRow >= ends || rung > aimed : lower[down] === undefined) break;
    if (best === 0) down++;
  }
  return { best, misses, left: misses > 0 };
}

const DAYS_EACH = 40;

function simulate(lines: readonly LiftResultLine[], random: Random): void {
  for (const situation of SITUATIONS) {
    const days = new Map<string, Day[]>();
    let [programme, planned] = [0, 0];
    const window = windowOf(situation);
    for (const line of lines) {
      const task = taskOf(line, situation, window);
      const { chosen, problem } = planLadder(task, window, constants);
      planned++;
      if (chosen.rule === "programme") programme++;
      const six = [0.8, 0.86, 0.91, 0.95, 0.98, 1];
      const three = [0.85, 0.92, 0.97];
      const { loads, lower } = chosen;
      const onward = { loads, lower };
      const policies: readonly (readonly [string, Policy])[] = [
        ["plan", { ...chosen, ends: 2, slots: problem.slots }],
        ["the same, all misses", { ...onward, ends: Infinity, slots: problem.slots }],
        ["85/92/97 %", shares(line, situation, window, three, Infinity)],
        ["85/92/97 %, two end", shares(line, situation, window, three, 2)],
        ["six steps", shares(line, situation, window, six, Infinity)],
        ["six steps, two end", shares(line, situation, window, six, 2)],
      ];
      const { belief } = task.problem;
      const fitted = belief.noise / constants.caution;
      for (const world of WORLDS) {
        for (let day = 0; day < DAYS_EACH; day++) {
          const strength = world.strength * belief.mean + world.spread * belief.spread * random.normal();
          // Lifters differ in how even they are.
          const noise = world.noise * fitted * Math.exp(0.2 * random.normal());
          const draws = Array.from({ length: 8 }, () => random.normal());
          const slips = Array.from({ length: 8 }, () => random.uniform() < belief.slip);
          for (const [name, policy] of policies) {
            const key = `${world.name}|${name}`;
            const list = days.get(key) ?? [];
            if (list.length === 0) days.set(key, list);
            const made = live(
              policy,
              (load, there, attempt) =>
                !(attempt > 0 && slips[attempt]) && there * strength + noise * (draws[attempt] ?? 0) >= load,
            );
            list.push({ ...made, best: made.best / belief.mean });
          }
        }
      }
    }
    console.log(`${situation.name} (loads by the programme for ${programme} of ${planned} lifter-days)`);
    for (const [key, list] of days) {
      const [world = "", name = ""] = key.split("|");
      const best = mean(list.map((day) => day.best));
      const none = mean(list.map((day) => (day.best === 0 ? 1 : 0)));
      const misses = mean(list.map((day) => day.misses));
      const left = mean(list.map((day) => (day.left ? 1 : 0)));
      console.log(
        `  ${world.padEnd(20)} ${name.padEnd(22)} best made ${percent(best)} of strength, no lift ${(100 * none).toFixed(2)} %, misses ${misses.toFixed(2)}, ladder left ${percent(left)}`,
      );
    }
  }
}

const [path, count = "1000", whole] = process.argv.slice(2);
if (path === undefined) throw new Error("name the table of lift results");
if (whole !== undefined && whole !== "held-out")
  throw new Error(`"${whole}": only \`held-out\` can stand there`);
const lines = readLiftResults(path).filter(
  (line) => line.attempts.length > 0 && (whole === "held-out" || isHeldOut(line)),
);
const forecasts = lines.map(forecastsOf);
console.log(
  `${lines.length} lifter-days of ${new Set(lines.map(({ lifter }) => lifter)).size} lifters, ${
    whole === "held-out"
      ? "all of the table, which holds only lifters kept out"
      : "three in ten of the table, kept out by their number"
  }`,
);
for (const attempt of [0, 1, 2]) {
  for (const [name, overhead] of [
    ["clean and jerk", false],
    ["snatch", true],
  ] as const) {
    const some = forecasts
      .filter((_, at) => lines[at]?.overheadCatch === overhead)
      .flatMap((each) => each.slice(attempt, attempt + 1));
    reportCalibration(`attempt ${attempt + 1}, ${name}`, some);
  }
}
reportCalibration(
  "openers",
  forecasts.flatMap((each) => each.slice(0, 1)),
);
const known = lines.filter((line) => line.best !== undefined);
const every = Math.max(1, Math.floor(known.length / Number(count)));
simulate(
  known.filter((_, at) => at % every === 0),
  createRandom(20261125),
);
