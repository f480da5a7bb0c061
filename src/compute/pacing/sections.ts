import type { Score } from "../../models/workout.ts";
import type { Rules } from "../motion/rules.ts";
import { COUNTED, HOLD, REST_FOR, REST_UNTIL, type Track } from "../motion/track.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** A rest shorter than this does not part the work. */
const PARTS_FROM = PACING_FIXED.restThatParts.value;

/**
 * Numbers the sections of a track (work between rests worth the name, and windows whose end the work must make) and returns how many
 * there are. In sections where
 * finishing sooner wins nothing, because what is left of the interval is rest anyway, it notes by when the work should be done and
 * what is left of it after each stretch.
 */
export function markSections(track: Omit<Track, "tasks" | "sections">, score: Score, rules: Rules): number {
  let section = 0;
  let begins = 0;
  let opens = 0;
  for (let i = 0; i < track.length; i += 1) {
    if (i > begins && opensWindow(track, i)) {
      section += 1;
      begins = i;
    }
    track.section[i] = section;
    const item = track.items[i];
    const isRest = item?.kind === "rest" && item.change === undefined;
    if (!isRest || (track.kind[i] === REST_FOR && (track.time[i] as number) < PARTS_FROM)) continue;
    if (track.kind[i] === REST_UNTIL) {
      const closes = track.time[i] as number;
      if (!scoresSpeed(score) && isFixedWork(track, begins, i)) {
        const door = doorOf(track, begins, i);
        const by = Math.min(closes, door);
        const spare = rules.intervalSpare * (Number.isFinite(opens) ? by - opens : 0);
        // Before a door that asks for more than can be held, the work is gone about as hard as pays, not evenly.
        if (door >= closes || isHeld(track, begins, i, by - spare - Math.max(0, opens)))
          setNeed(track, begins, i, by - spare);
      }
      opens = closes;
    } else opens = Number.NEGATIVE_INFINITY;
    section += 1;
    begins = i + 1;
  }
  return section + (begins < track.length ? 1 : 0);
}

/** Whether work from one stretch up to another is done in a time at the sustainable rate. */
function isHeld(track: Omit<Track, "tasks" | "sections">, from: number, to: number, time: number): boolean {
  let needed = 0;
  for (let i = from; i < to; i += 1) {
    if ((track.kind[i] as number) >= REST_FOR) needed += track.time[i] as number;
    else {
      needed += track.transition[i] as number;
      needed += (track.amount[i] as number) * (track.kind[i] === HOLD ? 1 : (track.perUnit[i] as number));
    }
  }
  return needed <= time;
}

/** The first clock by which work from one stretch up to another must be done, or all ends; infinite without. */
function doorOf(track: Omit<Track, "tasks" | "sections">, from: number, to: number): number {
  let clock = Number.POSITIVE_INFINITY;
  for (let i = from; i < to; i += 1) {
    if (track.ends[i] === 1) clock = Math.min(clock, track.deadline[i] as number);
  }
  return clock;
}

/** Whether another deadline that ends the part begins to count here. */
function opensWindow(track: Omit<Track, "tasks" | "sections">, i: number): boolean {
  const before = track.ends[i - 1] === 1 ? track.deadline[i - 1] : undefined;
  return before !== undefined && track.ends[i] === 1 && track.deadline[i] !== before;
}

/** Whether doing an interval's work faster makes the score better although the rest grows by it. */
function scoresSpeed(score: Score): boolean {
  if (score.kind === "time") return !score.restCounts;
  return (
    ["slowest-interval", "lowest-interval", "highest-interval"].includes(score.kind) && score.of === "time"
  );
}

function isFixedWork(track: Omit<Track, "tasks" | "sections">, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) {
    const kind = track.kind[i];
    if (kind !== COUNTED && kind !== HOLD && (kind as number) < REST_FOR) return false;
  }
  return to > from;
}

function setNeed(track: Omit<Track, "tasks" | "sections">, from: number, to: number, by: number): void {
  let work = 0;
  let transitions = 0;
  for (let i = to - 1; i >= from; i -= 1) {
    if ((track.kind[i] as number) >= REST_FOR) {
      transitions += track.time[i] as number;
      continue;
    }
    track.needBy[i] = by;
    track.workAfter[i] = work;
    track.transitionsAfter[i] = transitions;
    transitions += track.transition[i] as number;
    if (track.kind[i] === HOLD) transitions += track.amount[i] as number;
    else work += (track.amount[i] as number) * (track.perUnit[i] as number);
  }
}
