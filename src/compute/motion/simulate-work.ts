import type { Drive } from "./drive.ts";
import { sitOutPause, toNextPause } from "./pass-time.ts";
import { drain, refill } from "./reserve.ts";
import type { Rules } from "./rules.ts";
import type { RunLog, RunState } from "./run.ts";
import type { Track } from "./track.ts";

/** Nothing shorter than this is simulated; sustainable seconds and seconds. */
const NOTHING = 1e-9;
/** No step drains more than this share of the reserve, however coarse. */
const MOST_DRAINED_PER_STEP = 1 / 8;

/** How much of its own rhythm there is breath for: 1 until an easy set may be waited for, 0 where any wait is better than failing. */
const breathLeft = ({ noWaitUntil, anyWaitFrom }: Rules, used: number): number =>
  Math.min(1, Math.max(0, (anyWaitFrom - used) / (anyWaitFrom - noWaitUntil)));

/** Simulates the work of one stretch from its first rep until it is done or `limit` is reached. */
export function simulateWork(
  track: Track,
  rules: Rules,
  drive: Drive,
  state: RunState,
  log: RunLog,
  i: number,
  limit: number,
): void {
  const perUnit = track.perUnit[i] as number;
  const kappa = track.kappa[i] as number;
  const reach = track.reach[i] as number;
  const least = track.least[i] as number;
  const slow = track.most[i] as number;
  const whole = rules.reserve * drive.reserveForm;
  const all = unitsLeft(track, state, i) * perUnit;
  const step = Math.max(track.rep[i] as number, drive.grain);
  const begun = state.clock;
  let done = 0;
  while (all - done > NOTHING && state.clock < limit - NOTHING) {
    const pause = toNextPause(track, state);
    if (pause <= NOTHING) {
      sitOutPause(track, rules, drive, state);
      continue;
    }
    const used = Math.min(1, 1 - (state.fast + state.slow) / whole);
    const dearer = 1 + rules.drift * used;
    // Sustainable seconds of this moment and this day per sustainable second of the track.
    const stretched = tired(rules, state.worked) / drive.form;
    let piece = Math.min(all - done, step, toFinish(drive, state));
    let rate: number;
    // The cost per second where it is known without raising the rate to its power again; else it is computed below.
    let cost = -1;
    const fixed = drive.by === "effort" ? (track.fixed[i] as number) : 0;
    if (fixed > 0) {
      rate = (perUnit * stretched) / fixed;
    } else if ((track.needBy[i] as number) < Number.POSITIVE_INFINITY) {
      rate = Math.max((1 / dearer) ** (1 / kappa), neededRate(track, state, i, all - done) * stretched);
    } else if (drive.by === "effort") {
      const lift = (drive.lift[i] as number) * (isFinish(drive, state) ? drive.finishLift : 1);
      rate = ((drive.cost[i] as number) / (drive.even ? 1 : dearer)) ** (1 / kappa) * lift;
      if (lift === 1) cost = (drive.cost[i] as number) * (drive.even ? dearer : 1);
    } else {
      const through =
        all < Number.POSITIVE_INFINITY
          ? Math.min(1, (done + piece / 2) / (all * (drive.reached[i] as number)))
          : (state.clock - begun) / (limit - begun);
      rate = (perUnit * stretched) / plannedPace(drive, state, i, through, whole);
    }
    // Nobody stands before a set that is easy: it is done at its own rhythm as far as there is breath for it.
    const slowest = (breathLeft(rules, used) * perUnit * stretched) / slow;
    if (rate < slowest && !state.blown) {
      rate = slowest;
      cost = -1;
    }
    const fastest = (perUnit * stretched) / least;
    if (rate > fastest || cost < 0) {
      rate = Math.min(rate, fastest);
      cost = rate ** kappa * dearer;
    }
    const most = state.slowing
      ? rules.blownCost
      : state.blown
        ? rules.afterBlownCost
        : Number.POSITIVE_INFINITY;
    if (cost > most) {
      rate = (most / dearer) ** (1 / kappa);
      cost = most;
    }
    let time = (piece * stretched) / rate;
    const longest = Math.min(
      limit - state.clock,
      pause,
      toFinishClock(drive, state),
      cost > 1 && used < 1 ? (MOST_DRAINED_PER_STEP * whole * reach) / (cost - 1) : Number.POSITIVE_INFINITY,
    );
    if (time > longest) {
      piece *= longest / time;
      time = longest;
    }
    if (done === 0) log.opening[i] = (perUnit * stretched) / rate;
    if (cost >= 1) {
      const taken = ((cost - 1) * time) / reach;
      const held = state.fast + state.slow;
      if (taken > held && !drive.mayOwe) {
        piece *= held / taken;
        time *= held / taken;
        state.fast = 0;
        state.slow = 0;
        state.slowing = true;
      } else drain(state, taken);
    } else {
      refill(state, rules, whole, time, cost);
      if (state.slowing && state.fast + state.slow >= rules.blownUntil * whole) {
        state.slowing = false;
        state.blown = true;
      }
    }
    state.clock += time;
    state.worked += piece;
    done += piece;
    state.least = Math.min(state.least, (state.fast + state.slow) / whole);
  }
  log.done[i] = done / perUnit;
  state.score += (done / perUnit) * (track.score[i] as number);
  if ((track.adds[i] as number) > 0) state.groupDone += done / perUnit;
}

/** Units of the stretch still to be done; fewer where its group has nearly reached its total. */
function unitsLeft(track: Track, state: RunState, i: number): number {
  const amount = track.amount[i] as number;
  return (track.adds[i] as number) === 0
    ? amount
    : Math.min(amount, (track.groupTotal[i] as number) - state.groupDone);
}

/** How much longer a sustainable second takes after so much work: a power law past the durability limit. */
const tired = (rules: Rules, worked: number): number =>
  worked > rules.durabilityFrom ? (worked / rules.durabilityFrom) ** rules.durability : 1;

/** The rate at which the rest of an interval's work is just done in time; infinite when there is none. */
function neededRate(track: Track, state: RunState, i: number, left: number): number {
  const time = (track.needBy[i] as number) - state.clock - (track.transitionsAfter[i] as number);
  return time > 0 ? (left + (track.workAfter[i] as number)) / time : Number.POSITIVE_INFINITY;
}

/** Seconds per unit by the plan, changed by what the athlete feels of the reserve against it. */
function plannedPace(drive: Drive, state: RunState, i: number, through: number, whole: number): number {
  const opening = drive.opening[i] as number;
  const pace = opening + through * ((drive.closing[i] as number) - opening);
  const feel = isFinish(drive, state) ? drive.feelAtTheEnd : drive.feel;
  if (feel === 0) return pace;
  const before = drive.before[i] as number;
  const expected = before + through * ((drive.left[i] as number) - before);
  return pace * (1 - feel * ((state.fast + state.slow) / whole - expected));
}

const hasFixedWork = (drive: Drive): boolean => drive.wholeWork < Number.POSITIVE_INFINITY;

const isFinish = (drive: Drive, state: RunState): boolean =>
  hasFixedWork(drive)
    ? state.worked >= drive.finishFrom * drive.wholeWork - NOTHING
    : state.clock >= drive.finishFrom * drive.horizon - NOTHING;

/** Sustainable seconds until the finish begins; infinite when it has, or when the clock says when. */
function toFinish(drive: Drive, state: RunState): number {
  const left = drive.finishFrom * drive.wholeWork - state.worked;
  return hasFixedWork(drive) && left > NOTHING ? left : Number.POSITIVE_INFINITY;
}

/** Seconds until the finish begins, where the clock says when; else infinite. */
function toFinishClock(drive: Drive, state: RunState): number {
  const left = drive.finishFrom * drive.horizon - state.clock;
  return !hasFixedWork(drive) && left > NOTHING ? left : Number.POSITIVE_INFINITY;
}
