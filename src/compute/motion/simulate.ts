import { passTime } from "./pass-time.ts";
import type { Run, RunState } from "./run.ts";
import { simulateWork } from "./simulate-work.ts";
import { HOLD, REST_AS_WORK, REST_FOR, REST_UNTIL, type Track, UNTIL, WINDOW } from "./track.ts";

/**
 * Runs a track forward from stretch `from` up to (not including) stretch `to`, changing the state and filling the log.
 *
 * Each step is a rep (a few seconds on ergs and runs), or longer while searching. At intensity x a
 * second costs x^kappa x (1 + drift x share of the reserve used); what exceeds 1 drains the reserve, what falls short lets it
 * refill in two phases. Past the durability limit the sustainable time grows with the work done. An empty reserve forces a slow
 * stretch until some of it is back, and a careful effort after it.
 */
export function simulate(run: Run, from: number, to: number): void {
  const { track, rules, drive, state, log } = run;
  for (let i = from; i < to && goesOn(state); i += 1) {
    state.at = i;
    log.started[i] = state.clock;
    log.worksFrom[i] = state.clock;
    log.done[i] = 0;
    log.opening[i] = 0;
    const whole = rules.reserve * drive.reserveForm;
    log.before[i] = (state.fast + state.slow) / whole;
    if ((track.kind[i] as number) >= REST_FOR) restAt(run, i);
    else if (!groupIsDone(track, state, i)) workAt(run, i);
    log.ended[i] = state.clock;
    log.left[i] = (state.fast + state.slow) / whole;
    log.scored[i] = state.score;
    log.worked[i] = state.worked;
    if (goesOn(state) && state.clock >= drive.horizon - 1e-9) state.stopped = "horizon";
  }
}

const goesOn = (state: RunState): boolean => state.stopped === "no";

/** Whether the group this stretch belongs to has its total already. A new group starts from nothing. */
function groupIsDone(track: Track, state: RunState, i: number): boolean {
  const group = track.group[i] as number;
  if (group < 0) return false;
  if (group !== state.group) {
    state.group = group;
    state.groupDone = 0;
  }
  return state.groupDone >= (track.groupTotal[i] as number) - 1e-9;
}

function restAt(run: Run, i: number): void {
  const { track, drive, state } = run;
  if (groupIsDone(track, state, i)) return;
  const time = track.time[i] as number;
  const kind = track.kind[i];
  const wanted =
    kind === REST_UNTIL ? time - state.clock : kind === REST_AS_WORK ? time * state.workSinceRest : time;
  const rest = Math.max(0, Math.min(wanted, drive.horizon - state.clock));
  passTime(run, rest, 0);
  if (track.counted[i] === 0) state.uncounted += rest;
  state.workSinceRest = 0;
}

function workAt(run: Run, i: number): void {
  const { track, rules, drive, state, log } = run;
  const kind = track.kind[i];
  const begun = state.clock;
  const time = track.time[i] as number;
  const limit = Math.min(
    drive.horizon,
    track.deadline[i] as number,
    kind === WINDOW ? begun + time : kind === UNTIL ? time : Number.POSITIVE_INFINITY,
  );
  if (limit > begun) {
    const transition = Math.min(track.transition[i] as number, limit - begun);
    passTime(run, transition, rules.transitionCost);
    log.worksFrom[i] = state.clock;
    if (track.wall[i] === 1) standAtWall(run, limit);
    else if (kind === HOLD) holdAt(run, i, limit);
    else simulateWork(run, i, limit);
    state.workSinceRest += state.clock - begun;
  }
  const short = (log.done[i] as number) < (track.amount[i] as number) - 1e-9;
  const missed = short && state.clock >= (track.deadline[i] as number) - 1e-9;
  if (missed && track.ends[i] === 1) state.stopped = "deadline";
}

/** Nothing more can be done here: the athlete stands until a window closes, or for good. */
function standAtWall(run: Run, limit: number): void {
  if (limit < run.drive.horizon) passTime(run, limit - run.state.clock, 0);
  else run.state.stopped = "wall";
}

/** A given time of work at its own pace, as hard as the critical rate. */
function holdAt(run: Run, i: number, limit: number): void {
  const { track, state, log } = run;
  const time = Math.min(track.amount[i] as number, limit - state.clock);
  const begun = { clock: state.clock, pause: state.pause };
  passTime(run, time, 1);
  logHeldAtPauses(run, begun);
  state.worked += time;
  state.score += time * (track.score[i] as number);
  log.done[i] = time;
  log.opening[i] = 1;
}

/** Seconds held when each pause began that fell into a hold. */
function logHeldAtPauses(
  { track: { pauses }, state, log }: Run,
  begun: { readonly clock: number; readonly pause: number },
): void {
  let from = begun.clock;
  let held = 0;
  for (let p = begun.pause; p < state.pause; p += 2) {
    held += (pauses[p] as number) - from;
    log.atPause[p / 2] = held;
    from = pauses[p + 1] as number;
  }
}
