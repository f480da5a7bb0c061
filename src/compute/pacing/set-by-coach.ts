import { roundNames } from "./round-names.ts";
import type { PaceWord, SetsWord } from "../../models/coach-word.ts";
import type { NotSet } from "../../models/plan/coach-word.ts";
import { convertPace } from "../capacity/convert-pace.ts";
import type { GivenSets, Track } from "../motion/track.ts";
import type { TrackTask } from "../motion/track-task.ts";
import { workTime } from "../search/day.ts";
import type { Solved } from "../search/solve-part.ts";
import { displayedPace } from "./displayed-pace.ts";

/** What a coach sets of how work is gone about: sets, rests between them, paces. */
export type WayWord = { readonly sets?: readonly SetsWord[]; readonly paces?: readonly PaceWord[] };

/** A rest is told as too short when more than this is needed, seconds. */
const SHORT = 0.5;

/**
 * A track with the sets and paces a coach has set, as far as they can be: sets within the best set, a pace within the fastest
 * cycle. What cannot be is left to the computation and told.
 */
export function setByCoach(
  track: Track,
  word: WayWord | undefined,
): { readonly track: Track; readonly notSet: readonly NotSet[] } {
  if (word === undefined) return { track, notSet: [] };
  const fixed = track.fixed.slice();
  const given: (GivenSets | undefined)[] = [];
  const notSet = [
    ...(word.paces ?? []).flatMap((pace) => setPace(track, pace, fixed)),
    ...(word.sets ?? []).flatMap((sets) => setSets(track, sets, given)),
  ];
  return { track: { ...track, fixed, given }, notSet };
}

/** The round of a stretch as the coach counts it. */
const numberOf = (track: Track, i: number): number | undefined =>
  roundNames(track.items).get(track.round[i] as number)?.number;

/** Stretches of a movement, in one round or in all. */
const stretchesOf = (track: Track, movement: string, round?: number): readonly number[] =>
  Array.from({ length: track.length }, (_, i) => i).filter(
    (i) =>
      taskAt(track, i)?.movement.id === movement && (round === undefined || numberOf(track, i) === round),
  );

const taskAt = (track: Track, i: number): TrackTask | undefined => track.tasks[track.task[i] as number];

function setPace(track: Track, pace: PaceWord, fixed: Float64Array): readonly NotSet[] {
  const told = new Map<TrackTask, NotSet>();
  for (const i of stretchesOf(track, pace.movement)) {
    const task = taskAt(track, i);
    if (task === undefined) continue;
    const { movement, capacity, effort } = task;
    const perUnit = convertPace(movement, pace.seconds, pace.per, effort.unit);
    const { name } = movement;
    if (perUnit === undefined) {
      told.set(task, { kind: "pace-in-another-unit", name, unit: effort.unit });
    } else if (perUnit < capacity.fastest - 1e-9) {
      const asked = displayedPace(movement, effort.unit, perUnit);
      const fastest = displayedPace(movement, effort.unit, capacity.fastest);
      told.set(task, { kind: "pace-over-fastest", name, ...(asked && fastest ? { asked, fastest } : {}) });
    } else fixed[i] = perUnit;
  }
  return [...told.values()];
}

function setSets(track: Track, sets: SetsWord, given: (GivenSets | undefined)[]): readonly NotSet[] {
  const stretches = stretchesOf(track, sets.movement, sets.round);
  const first = stretches[0] === undefined ? undefined : taskAt(track, stretches[0]);
  if (first === undefined) return [];
  const { name } = first.movement;
  if (!Number.isFinite(first.capacity.unbroken)) return [{ kind: "no-sets", name }];
  const { sizes = [] } = sets;
  const best = Math.floor(Math.min(...stretches.map((i) => taskAt(track, i)?.capacity.unbroken ?? 0)) + 1e-6);
  const largest = Math.max(0, ...sizes);
  if (largest > best) return [{ kind: "sets-over-best", name, sizes: [...sizes], best }];
  const sum = sizes.reduce((total, size) => total + size, 0);
  const amounts = stretches.map((i) => track.amount[i] as number);
  const fits = (amount: number): boolean => sizes.length < 2 || !Number.isFinite(amount) || amount === sum;
  const reached = stretches.filter((_, at) => fits(amounts[at] ?? 0));
  if (reached.length === 0)
    return [{ kind: "sets-do-not-add-up", name, sizes: [...sizes], amount: amounts[0] ?? 0 }];
  for (const i of reached) {
    given[i] = {
      ...given[i],
      ...(sets.sizes === undefined ? {} : { sizes: sets.sizes }),
      ...(sets.rest === undefined ? {} : { rest: sets.rest }),
    };
  }
  return [];
}

/** A pace that comes out slower than set by more than this share is not held. */
const SLOWER = 0.02;

/**
 * What was set and came out otherwise, a movement once: sets and rests the muscles do not have in them at that moment, paces that
 * empty the reserve before their work is done.
 */
export function notKept(solved: Solved): readonly NotSet[] {
  return [...setsNotKept(solved), ...pacesNotHeld(solved)];
}

function pacesNotHeld({ bench: { track }, log, state }: Solved): readonly NotSet[] {
  const told = new Map<string, NotSet>();
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const [fixed, done] = [track.fixed[i] as number, log.done[i] as number];
    const task = taskAt(track, i);
    if (fixed <= 0 || done < 1 || !task || told.has(task.movement.id)) continue;
    if (workTime(track, log, i) / done <= fixed * (1 + SLOWER)) continue;
    const asked = displayedPace(task.movement, task.effort.unit, fixed);
    told.set(task.movement.id, {
      kind: "pace-not-held",
      movement: task.movement.id,
      name: task.movement.name,
      round: numberOf(track, i) ?? (track.round[i] as number),
      ...(asked ? { asked } : {}),
    });
  }
  return [...told.values()];
}

function setsNotKept({ bench: { track }, sets, state }: Solved): readonly NotSet[] {
  const told = new Map<string, NotSet>();
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const [given, planned] = [track.given[i], sets[i]];
    const task = taskAt(track, i);
    if (!given || !planned || !task || told.has(task.movement.id)) continue;
    const sizes = given.sizes?.length === 1 ? planned.sizes.map(() => given.sizes?.[0] ?? 0) : given.sizes;
    const otherSizes = sizes?.some((size, set) => {
      const came = planned.sizes[set];
      return came !== undefined && set < planned.sizes.length - 1 && Math.abs(came - size) > 1e-6;
    });
    const oneSet = sizes !== undefined && sizes.length > 1 && planned.sizes.length === 1;
    const longer =
      given.rest !== undefined && planned.sizes.length > 1 && Math.abs(planned.rest - given.rest) > SHORT;
    if (otherSizes !== true && !oneSet && !longer) continue;
    told.set(task.movement.id, {
      kind: "sets-too-much",
      movement: task.movement.id,
      name: task.movement.name,
      round: numberOf(track, i) ?? (track.round[i] as number),
      ...(given.sizes ? { sizes: [...given.sizes] } : {}),
      ...(given.rest === undefined ? {} : { rest: given.rest }),
    });
  }
  return [...told.values()];
}
