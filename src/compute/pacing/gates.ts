import type { Pacing } from "../../models/plan/pacing.ts";
import { normalBelow } from "../../numerics/normal.ts";
import { REST_UNTIL } from "../motion/track.ts";
import type { Solved } from "../search/solve-part.ts";
import { plannedAmounts, wholeScore } from "./planned-amounts.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

type Gate = NonNullable<Pacing["gates"]>[number];

/** Chances between which going all out is worth a look of its own. Judgement. */
const OPEN = PACING_FIXED.gateInDoubt.value;
/** At most so many are told, the last ones: a ladder of intervals has one at the end of each. */
const MOST = PACING_FIXED.gatesTold.value;
/** So many doubtful ones are looked at all out: each is a run of its own. */
const ASKED = PACING_FIXED.gatesAsked.value;

/**
 * The deadlines that end the part: all that the plan passes and the first it does not, as far as nothing out of reach stands before
 * them. How likely each is passed follows from how far off it the plan is, by the spread of days, from where the clock last let the
 * work begin anew; who misses one misses all after it. For the first few in doubt, what nothing kept for later would bring.
 *
 * @param spread relative spread of a time on other days
 * @param allOut clock at which the work up to a stretch is done by who has nothing else in mind
 */
export function gatesOf(solved: Solved, spread: number, allOut: (last: number) => number): readonly Gate[] {
  const { bench, log, state } = solved;
  const { track } = bench;
  const planned = plannedAmounts(solved);
  const gates: Gate[] = [];
  let sofar = 1;
  let asked = 0;
  for (const last of gateStretches(track)) {
    const clock = track.deadline[last] as number;
    if (clock > bench.horizon || wallBefore(solved, last)) break;
    const at = arrivalAt(solved, last);
    const from = startBefore(solved, last);
    const passed = state.at > last || (state.at === last && state.stopped !== "deadline" && at <= clock);
    const chance = Math.min(sofar, chanceOf(at - from, clock - from, spread));
    const inDoubt: boolean = asked < ASKED && chance > OPEN.from && chance < OPEN.to;
    const hurried = inDoubt ? Math.min(at, allOut(last)) : at;
    asked += inDoubt ? 1 : 0;
    gates.push({
      clock,
      score: wholeScore(scoreUpTo(track, planned, last)),
      ...(passed ? { planned: log.ended[last] } : {}),
      chance,
      allOut: Math.max(chance, Math.min(sofar, chanceOf(hurried - from, clock - from, spread))),
      sooner: at - hurried,
    });
    sofar = chance;
    if (!passed) break;
  }
  return gates.slice(-MOST);
}

/** The last stretch before each deadline that ends the part, in order. */
function gateStretches(track: Solved["bench"]["track"]): readonly number[] {
  const last = new Map<number, number>();
  for (let i = 0; i < track.length; i += 1) {
    if (track.ends[i] === 1) last.set(track.deadline[i] as number, i);
  }
  return [...last.values()];
}

/** Clock at which the work up to a stretch is done; what the plan does not reach is added at the sustainable rate. */
function arrivalAt({ bench: { track }, log, state }: Solved, last: number): number {
  if (state.at > last) return log.ended[last] as number;
  let clock = log.ended[state.at] as number;
  for (let i = state.at; i <= last; i += 1) {
    const done = i === state.at ? (log.done[i] as number) : 0;
    const left = Number.isFinite(track.amount[i]) ? (track.amount[i] as number) - done : 0;
    clock +=
      Math.max(0, left) * (track.perUnit[i] as number) +
      (i === state.at ? 0 : (track.transition[i] as number));
  }
  return clock;
}

/** Whether something the athlete cannot do stands before the end of a stretch. */
function wallBefore({ bench: { track }, state }: Solved, last: number): boolean {
  for (let i = state.at; i <= last; i += 1) if (track.wall[i] === 1) return true;
  return false;
}

/** The clock at which the work up to a stretch was let begin, whatever went before: the end of the last rest until a clock. */
function startBefore({ bench: { track }, log, state }: Solved, last: number): number {
  for (let i = Math.min(last, state.at); i > 0; i -= 1)
    if (track.kind[i] === REST_UNTIL) return log.ended[i] as number;
  return 0;
}

const chanceOf = (at: number, clock: number, spread: number): number =>
  at > 0 ? normalBelow(Math.log(clock / at) / spread) : 1;

/** Score units when a stretch is done: planned ones as far as the plan goes, else those asked for. */
function scoreUpTo(track: Solved["bench"]["track"], planned: readonly number[], last: number): number {
  let score = 0;
  for (let i = 0; i <= last; i += 1) {
    const amount = track.amount[i] as number;
    score += (Number.isFinite(amount) ? amount : (planned[i] ?? 0)) * (track.score[i] as number);
  }
  return score;
}
