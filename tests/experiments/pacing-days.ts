/**
 * Whether a plan beats simpler ways of going about the same work on days it does not know. Run by hand:
 *
 *   node tests/experiments/pacing-days.ts [days of each part] [first seed] [--mild]
 *
 * Over the demonstration's athletes and its parts without a lift, the same seeded days are simulated for each way. On a day the
 * athlete's rate, the size of the reserve, the cost of each movement and each transition differ from what was planned for.
 *
 * - plan: the paces of the plan, changed by what is felt of the reserve, as the tool's own range takes it to be followed.
 * - even: every rep at the same pace relative to what the athlete can sustain, aimed at the plan's own predicted result,
 *   changed by what is felt of the reserve in the same way.
 * - even, own aim: the same, aimed at the result the even split itself can afford with the plan's margin.
 * - hard: the plan's paces 10 to 20 % faster (drawn by the day) from the start, until the reserve is empty, then whatever goes.
 *
 * With --mild running empty costs little, and the plan is made knowing it: 0.85 of the critical effort until a twentieth of the reserve
 * is back, and no caution after it.
 */
import { keepAsPlan } from "../../src/compute/search/day.ts";
import type { Drive } from "../../src/compute/motion/drive.ts";
import { lossOf } from "../../src/compute/search/loss.ts";
import type { Rules } from "../../src/compute/motion/rules.ts";
import { newLog, type RunLog, type RunState } from "../../src/compute/motion/run.ts";
import { simulate } from "../../src/compute/motion/simulate.ts";
import type { Solved } from "../../src/compute/search/solve-part.ts";
import type { Track } from "../../src/compute/motion/track.ts";
import { quantileSorted } from "../../src/numerics/quantile.ts";
import { createRandom, type Random } from "../../src/numerics/random.ts";
import { demoData } from "../support/demo-data.ts";
import { demoProblems, isTime, percent, type Problem, solveProblem, table } from "./pacing-problems.ts";

/** Relative spreads of a day, none of which the plan knows; our judgement, of the size of the model's own errors. */
const FORM = 0.03;
const RESERVE = 0.13;
const MOVEMENT = 0.03;
const TRANSITION = 0.2;
/** Sustainable seconds of a step. */
const GRAIN = 5;
/** What is left, on average, of the start of those who go hard: 10 to 20 % faster. */
const HARD = [0.1, 0.2] as const;
const MILD = { blownCost: 0.85, blownUntil: 0.05, afterBlownCost: 100 } as const;

/** Seconds per unit at the start and end of each stretch, and the reserve expected there. */
type Paces = Pick<Drive, "opening" | "closing" | "before" | "left">;

/** What a day is like, as factors: rate, size of the reserve, cost of each task, each transition. */
type Day = {
  readonly form: number;
  readonly reserve: number;
  readonly task: Float64Array;
  readonly transition: Float64Array;
  readonly harder: number;
};

const WAYS = ["plan", "even", "even, own aim", "hard"] as const;

function drawDay(track: Track, random: Random): Day {
  const about = (spread: number): number => Math.exp(spread * random.normal());
  return {
    form: about(FORM),
    reserve: about(RESERVE),
    task: Float64Array.from(track.tasks, () => about(MOVEMENT)),
    transition: Float64Array.from(track.transition, () => about(TRANSITION)),
    harder: 1 + HARD[0] + (HARD[1] - HARD[0]) * random.uniform(),
  };
}

/** The track as it is on a day. */
function trackOn(track: Track, day: Day): Track {
  const byTask = (column: Float64Array): Float64Array =>
    column.map((value, i) => value * (day.task[track.task[i] as number] ?? 1));
  return {
    ...track,
    perUnit: byTask(track.perUnit),
    least: byTask(track.least),
    rep: byTask(track.rep),
    transition: track.transition.map((value, i) => value * (day.transition[i] as number)),
  };
}

const usualDay = (track: Track): Day => ({
  form: 1,
  reserve: 1,
  task: new Float64Array(track.tasks.length).fill(1),
  transition: new Float64Array(track.length).fill(1),
  harder: 1,
});

function run(
  { bench, choice }: Solved,
  rules: Rules,
  paces: Paces,
  day: Day,
  log: RunLog,
  { feels, mayOwe = false }: { readonly feels: boolean; readonly mayOwe?: boolean },
): RunState {
  const state = {
    ...bench.start,
    fast: bench.start.fast * day.reserve,
    slow: bench.start.slow * day.reserve,
  };
  const drive: Drive = {
    by: "pace",
    even: false,
    reached: bench.reached,
    cost: bench.cost,
    lift: bench.lift,
    ...paces,
    feel: feels ? rules.feel : 0,
    feelAtTheEnd: feels ? rules.feelAtTheEnd : 0,
    form: day.form,
    reserveForm: day.reserve,
    mayOwe,
    finishFrom: choice.plan.finishFrom,
    finishLift: 1,
    wholeWork: bench.wholeWork,
    horizon: bench.horizon,
    grain: GRAIN,
  };
  const track = trackOn(bench.track, day);
  state.least = 1;
  simulate({ track, rules, drive, state, log }, 0, track.length);
  return state;
}

/** The plan's own paces. */
function planPaces(solved: Solved): Paces {
  const { bench, log, state } = solved;
  keepAsPlan(bench, log, state.at);
  const { opening, closing, before, left } = bench;
  return { opening: opening.slice(), closing: closing.slice(), before: before.slice(), left: left.slice() };
}

/** The same pace throughout, relative to what can be sustained; never faster than the fastest cycle. */
function flatPaces({ bench: { track } }: Solved, slowness: number): Paces {
  const pace = track.perUnit.map((perUnit, i) => Math.max(track.least[i] as number, perUnit * slowness));
  return {
    opening: pace,
    closing: pace,
    before: new Float64Array(track.length),
    left: new Float64Array(track.length),
  };
}

/** The even pace with which, on the expected day, something falls to what is wanted as the pace slows. */
function evenPaces(
  solved: Solved,
  rules: Rules,
  isTooFast: (state: RunState, log: RunLog) => boolean,
): Paces {
  const log = newLog(solved.bench.track);
  const usual = usualDay(solved.bench.track);
  let fast = 0.3;
  let slow = 3;
  for (let step = 0; step < 30; step += 1) {
    const middle = Math.sqrt(fast * slow);
    const state = run(solved, rules, flatPaces(solved, middle), usual, log, { feels: false, mayOwe: true });
    if (isTooFast(state, log)) fast = middle;
    else slow = middle;
  }
  const paces = flatPaces(solved, slow);
  run(solved, rules, paces, usual, log, { feels: false, mayOwe: true });
  // Who plans to owe expects to be empty.
  const notNegative = (column: Float64Array): Float64Array => column.map((share) => Math.max(0, share));
  return { ...paces, before: notNegative(log.before), left: notNegative(log.left) };
}

const quicker = (paces: Paces, factor: number): Paces => ({
  ...paces,
  opening: paces.opening.map((pace) => pace / factor),
  closing: paces.closing.map((pace) => pace / factor),
});

/** Losses of each way over the same days; undefined where the part cannot be paced. */
function compare(
  problem: Problem,
  days: number,
  seed: number,
  mild: boolean,
): { readonly losses: readonly (readonly number[])[]; readonly time: boolean } | undefined {
  const { input } = problem;
  const found = solveProblem(
    mild ? { ...problem, input: { ...input, overrides: { ...input.overrides, ...MILD } } } : problem,
  );
  if (!found) return undefined;
  const { solved, rules } = found;
  const { bench, goal, choice, state } = solved;
  const planned = lossOf(goal, bench.track, state, solved.log);
  const plan = planPaces(solved);
  const even = evenPaces(solved, rules, (end, log) => lossOf(goal, bench.track, end, log) < planned);
  const ownAim = evenPaces(solved, rules, ({ least }) => least < Math.max(0, choice.margin));
  const log = newLog(bench.track);
  const random = createRandom(seed);
  const losses: [number[], number[], number[], number[]] = [[], [], [], []];
  for (let at = 0; at < days; at += 1) {
    const day = drawDay(bench.track, random);
    const lossWith = (paces: Paces, feels: boolean): number =>
      lossOf(goal, bench.track, run(solved, rules, paces, day, log, { feels }), log);
    losses[0].push(lossWith(plan, true));
    losses[1].push(lossWith(even, true));
    losses[2].push(lossWith(ownAim, true));
    losses[3].push(lossWith(quicker(plan, day.harder), false));
  }
  return { losses, time: isTime(solved) };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const badDay = (losses: readonly number[]): number =>
  quantileSorted(
    [...losses].sort((a, b) => a - b),
    0.9,
  );

/** How much worse than the plan, relative to the plan's result; over 0 means the plan is better. */
const worse = (loss: number, plan: number): number => (loss - plan) / Math.abs(plan);

const numbers = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const [days = 200, seed = 1] = numbers.map(Number);
const isMild = process.argv.includes("--mild");

const problems = demoProblems(demoData());
const rows: string[][] = [
  ["part", "athlete", "plan", "bad", ...WAYS.slice(1).flatMap((way) => [way, "bad"])],
];
const overall: { readonly part: string; readonly mean: number[]; readonly bad: number[] }[] = [];
for (const problem of problems) {
  const found = compare(problem, days, seed, isMild);
  if (!found) continue;
  const means = found.losses.map(mean);
  const bads = found.losses.map(badDay);
  const ratio = (of: readonly number[]): number[] => of.map((loss) => worse(loss, of[0] as number));
  overall.push({ part: problem.part, mean: ratio(means), bad: ratio(bads) });
  const sign = found.time ? 1 : -1;
  const unit = found.time ? " s" : "";
  rows.push([
    problem.part,
    problem.athlete,
    `${(sign * (means[0] as number)).toFixed(1)}${unit}`,
    `${(sign * (bads[0] as number)).toFixed(1)}${unit}`,
    ...[1, 2, 3].flatMap((way) => [
      percent(ratio(means)[way] as number),
      percent(ratio(bads)[way] as number),
    ]),
  ]);
}
console.log(
  `${days} days of each, seed ${seed}${isMild ? ", running empty costs little" : ""}; others: how much worse than the plan (+)`,
);
console.log(table(rows));

const parts = [...new Set(overall.map(({ part }) => part))];
const summary = [...parts, "all"].map((part) => {
  const of = overall.filter((each) => part === "all" || each.part === part);
  return [
    part,
    `${of.length}`,
    ...[1, 2, 3].flatMap((way) => {
      const lost = of.filter((each) => (each.mean[way] as number) < 0).length;
      const lostBad = of.filter((each) => (each.bad[way] as number) < 0).length;
      return [
        percent(mean(of.map((each) => each.mean[way] as number))),
        percent(mean(of.map((each) => each.bad[way] as number))),
        `${lost}/${lostBad}`,
      ];
    }),
  ];
});
console.log(
  "\nMean over athletes; the last column of each way: how many athletes do better that way (mean / bad day)",
);
console.log(
  table([["part", "athletes", ...WAYS.slice(1).flatMap((way) => [way, "bad", "better"])], ...summary]),
);
