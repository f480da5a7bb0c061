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
import { planSets } from "./plan-sets.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";
import type { RunLog } from "../motion/run.ts";
import { HOLD, REST_FOR, type Track } from "../motion/track.ts";

/** Work shorter than this is not broken up, whatever it is counted in. */
const LEAST_UNITS = 1;
/** Relative excess of the time that sets need at which they still fit. */
const FITS = 1e-3;

/** The sets of every stretch of a run, as far as it went, and what they need. */
export type Breaks = {
  readonly sets: readonly (SetPlan | undefined)[];
  /** Greatest relative excess of the time the sets need over the time the run gave. */
  readonly excess: number;
};

/** How each task of a track draws on the muscles; made once for a track. */
export const drawsOf = (track: Track): readonly MuscleDraw[] =>
  track.tasks.map((task) => drawOf(task.movement));

/**
 * Breaks the work of a run into sets, stretch by stretch, following how tired each muscle is. The muscles are changed to their state
 * at the end. `least` of the track is set to what each stretch needs per unit at its fastest; stretches the run did not reach take
 * over what was needed the last time at the same task.
 */
export function breakTrack(
  track: Track,
  rules: Rules,
  log: RunLog,
  last: number,
  muscles: Muscles,
  draws: readonly MuscleDraw[],
): Breaks {
  const sets: (SetPlan | undefined)[] = [];
  const needed = new Float64Array(track.tasks.length);
  const allowed = new Float64Array(track.tasks.length);
  const length = log.ended[Math.min(last, track.length - 1)] as number;
  let excess = 0;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (i > last) {
      if (task >= 0 && (needed[task] as number) > 0) {
        track.least[i] = needed[task] as number;
        track.most[i] = allowed[task] as number;
      }
      continue;
    }
    const begins = log.worksFrom[i] as number;
    const time = (log.ended[i] as number) - begins;
    if ((track.kind[i] as number) >= REST_FOR || track.kind[i] === HOLD || task < 0) {
      restMuscles(muscles, rules, (log.ended[i] as number) - (log.started[i] as number));
      continue;
    }
    restMuscles(muscles, rules, begins - (log.started[i] as number));
    const done = log.done[i] as number;
    if (done < LEAST_UNITS || time <= 0) continue;
    const capacity = track.tasks[task]?.capacity;
    const draw = draws[task];
    if (!capacity || !draw) continue;
    const whole = track.amount[i] as number;
    const brokenOff = whole - done > 1e-6;
    const planFor = (amount: number): SetPlan =>
      planSets(questionAt(track, muscles, draw, i, amount, time), rules);
    let amount = brokenOff ? wholeUnits(done) : whole;
    let plan = planFor(amount);
    let least = plan.leastTotal / (brokenOff ? amount : done);
    if (brokenOff && plan.leastTotal > time * (1 + FITS)) {
      amount = mostThatFits(planFor, amount, time);
      plan = planFor(amount);
      // A little over whole units, so that the next run reaches just these.
      least = time / (amount + 0.3);
    }
    least = Math.max(capacity.fastest, least);
    const most =
      track.tasks.length > 1
        ? Math.max(
            least,
            longestTime(questionAt(track, muscles, draw, i, amount, time), rules, length) / amount,
          )
        : Number.POSITIVE_INFINITY;
    track.least[i] = least;
    track.most[i] = most;
    needed[task] = least;
    allowed[task] = most;
    sets[i] = plan;
    excess = Math.max(excess, (least * done) / time - 1);
    tireBySets(rules, muscles, draw, plan, capacity);
  }
  return { sets, excess };
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

function questionAt(
  track: Track,
  muscles: Muscles,
  draw: MuscleDraw,
  i: number,
  amount: number,
  time: number,
): SetQuestion {
  const { capacity, effort } = track.tasks[track.task[i] as number] as Track["tasks"][number];
  const item = track.items[i];
  const m = limitingMuscle(muscles, draw);
  const asked = m < 0 ? 1 : (draw.draw[m] as number);
  return {
    amount,
    fastest: capacity.fastest,
    unbroken: m < 0 ? Number.POSITIVE_INFINITY : capacity.unbroken,
    apart: capacity.apart,
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
