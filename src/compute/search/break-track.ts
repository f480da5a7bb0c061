import type { MovementCapacity } from "../motion/movement-capacity.ts";
import {
  limitingMuscle,
  type Muscles,
  restMuscles,
  tireMuscles,
  workMuscles,
  drawOf,
  type MuscleDraw,
} from "../motion/muscles.ts";
import { refillPerIdleSecond, restIn, type SetQuestion } from "./largest-sets.ts";
import { longestTime } from "./longest-time.ts";
import { isFromFloor } from "./is-from-floor.ts";
import { planSets } from "./plan-sets.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";
import type { RunLog } from "../motion/run.ts";
import { HOLD, REST_FOR, type Track } from "../motion/track.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/** Work shorter than this is not broken up, whatever it is counted in. */
const LEAST_UNITS = 1;
/** Relative excess of the time that sets need at which they still fit. */
const FITS = 1e-3;

/** The sets of every stretch of a run, as far as it went, and what they need. */
type Breaks = {
  readonly sets: readonly (SetPlan | undefined)[];
  /** Greatest relative excess of the time the sets need over the time the run gave. */
  readonly excess: number;
};

/** How each task of a track draws on the muscles; made once for a track. */
export const drawsOf = (track: Track): readonly MuscleDraw[] =>
  track.tasks.map((task) => drawOf(task.movement));

/** A run whose work is broken into sets: its track, whose bounds are set, and what happened. */
type BrokenRun = { readonly track: Track; readonly rules: Rules; readonly log: RunLog };

/**
 * Breaks the work of a run into sets, stretch by stretch, following how tired each muscle is. The muscles are changed to their state
 * at the end. `least` of the track is set to what each stretch needs per unit at its fastest; stretches the run did not reach take
 * over what was needed the last time at the same task.
 */
export function breakTrack(
  run: BrokenRun,
  last: number,
  muscles: Muscles,
  draws: readonly MuscleDraw[],
): Breaks {
  const { track, rules, log } = run;
  const sets: (SetPlan | undefined)[] = [];
  const lastOfTask = new Int32Array(track.tasks.length).fill(-1);
  const length = log.ended[Math.min(last, track.length - 1)] as number;
  let excess = 0;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (i > last) {
      if (task >= 0) takeOverBounds(track, lastOfTask[task] as number, i);
      continue;
    }
    const isWork = (track.kind[i] as number) < REST_FOR && track.kind[i] !== HOLD && task >= 0;
    const restEnds = isWork ? log.worksFrom[i] : log.ended[i];
    restMuscles(muscles, rules, (restEnds as number) - (log.started[i] as number));
    const done = log.done[i] as number;
    const time = (log.ended[i] as number) - (log.worksFrom[i] as number);
    const draw = draws[task];
    const capacity = track.tasks[task]?.capacity;
    if (!isWork || done < LEAST_UNITS || time <= 0 || !draw || !capacity) continue;
    const { plan, least, most } = breakStretch(track, rules, { muscles, draw, i, done, time, length });
    track.least[i] = least;
    track.most[i] = most;
    lastOfTask[task] = i;
    sets[i] = plan;
    excess = Math.max(excess, (least * done) / time - 1);
    tireBySets(rules, muscles, draw, plan, capacity);
  }
  return { sets, excess };
}

/** A stretch not reached takes over the bounds of the last that was, at the same task. */
function takeOverBounds(track: Track, from: number, to: number): void {
  if (from < 0) return;
  track.least[to] = track.least[from] as number;
  track.most[to] = track.most[from] as number;
}

/** The work of one stretch: units done in its time, seconds, by muscles as tired as they are; `length` is that of the run. */
type DoneWork = {
  readonly muscles: Muscles;
  readonly draw: MuscleDraw;
  readonly i: number;
  readonly done: number;
  readonly time: number;
  readonly length: number;
};

/** The sets of one stretch, and the least and the most seconds a unit that leaves. */
function breakStretch(
  track: Track,
  rules: Rules,
  work: DoneWork,
): { readonly plan: SetPlan; readonly least: number; readonly most: number } {
  const { i, done, time } = work;
  const whole = track.amount[i] as number;
  const brokenOff = whole - done > 1e-6;
  const planFor = (amount: number): SetPlan => planSets(questionOf(track, rules, work, amount), rules);
  let amount = brokenOff ? wholeUnits(done) : whole;
  let plan = planFor(amount);
  let least = plan.leastTotal / (brokenOff ? amount : done);
  if (brokenOff && plan.leastTotal > time * (1 + FITS)) {
    amount = mostThatFits(planFor, amount, time);
    plan = planFor(amount);
    // A little over whole units, so that the next run reaches just these.
    least = time / (amount + 0.3);
  }
  if (brokenOff)
    plan = notDrawnOut(plan, (shorter) =>
      planSets({ ...questionOf(track, rules, work, amount), time: shorter }, rules),
    );
  const question = questionOf(track, rules, work, amount);
  least = Math.max(question.fastest, least);
  const most =
    track.tasks.length > 1
      ? Math.max(least, longestTime(question, rules, work.length) / amount)
      : Number.POSITIVE_INFINITY;
  return { plan, least, most };
}

/** Singles that the clock breaks off are drawn out over what they need by no more than this share; what is left is another try. Judgement. */
const DRAWN_OUT = SEARCH_FIXED.singlesDrawnOut.value;

/** Singles as the fastest way has them, with a little more rest: what the clock leaves of a single is not spent before the last one. */
function notDrawnOut(plan: SetPlan, planFor: (time: number) => SetPlan): SetPlan {
  const enough = (1 + DRAWN_OUT) * plan.leastTotal;
  return plan.total > enough && plan.sizes.every((size) => size <= 1) ? planFor(enough) : plan;
}

/** A started unit that was not finished is not planned as one. */
const wholeUnits = (done: number): number => (done >= 1 ? Math.max(1, Math.floor(done + 1e-6)) : done);

/** The largest amount in whole units that the muscles allow in a time; one at least. */
function mostThatFits(planFor: (amount: number) => SetPlan, upTo: number, time: number): number {
  let low = 1;
  let high = Math.ceil(upTo);
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (planFor(middle).leastTotal <= time) low = middle;
    else high = middle;
  }
  return low;
}

/** How to break an amount of a stretch. */
function questionOf(
  track: Track,
  rules: Rules,
  { muscles, draw, i, time }: DoneWork,
  amount: number,
): SetQuestion {
  const { movement, capacity, effort } = track.tasks[track.task[i] as number] as Track["tasks"][number];
  const item = track.items[i];
  const m = limitingMuscle(muscles, draw);
  const asked = m < 0 ? 1 : (draw.draw[m] as number);
  return {
    amount,
    fastest: capacity.fastest,
    unbroken: m < 0 ? Number.POSITIVE_INFINITY : capacity.unbroken,
    apart: capacity.apart,
    singly: (capacity.loadShare ?? 0) >= rules.singlesFrom && isFromFloor(movement),
    held: capacity.held,
    muscleRecovery: capacity.muscleRecovery,
    fast: m < 0 ? 1 : (muscles.fast[m] as number) / asked,
    slow: m < 0 ? 0 : (muscles.slow[m] as number) / asked,
    full: 1 / asked,
    time,
    mayBreathe: i > 0 && (track.kind[i - 1] as number) < REST_FOR && (track.transition[i] as number) > 0,
    unbrokenOnly: item?.kind === "effort" ? item.unbroken : effort.unbroken,
    ...(track.given[i] === undefined ? {} : { given: track.given[i] }),
  };
}

function tireBySets(
  rules: Rules,
  muscles: Muscles,
  draw: MuscleDraw,
  plan: SetPlan,
  { unbroken, held, fastest, muscleRecovery }: MovementCapacity,
): void {
  const idle = held ? 0 : plan.cycle - fastest;
  const perUnit = Number.isFinite(unbroken)
    ? Math.max(0, 1 / unbroken - refillPerIdleSecond(rules, muscleRecovery) * idle)
    : 0;
  restMuscles(muscles, rules, plan.restFirst * muscleRecovery);
  plan.sizes.forEach((size, set) => {
    if (set > 0) restMuscles(muscles, rules, restIn(plan.rest, rules) * muscleRecovery);
    workMuscles(muscles, rules, draw, size * plan.cycle);
    tireMuscles(muscles, draw, size * perUnit);
  });
}
