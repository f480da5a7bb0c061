import type { Course, CourseItem } from "../../models/course.ts";
import { seconds, type Seconds } from "../../models/quantity.ts";
import type { Part, PartClock, PartLength, Step, Workout } from "../../models/workout.ts";
import type { UnrollContext } from "./context.ts";
import { emitterFor, type Emitter } from "./emitter.ts";
import { standsAlone } from "./passes.ts";
import { loadOf } from "./resolve-load.ts";
import { walkSteps } from "./walk-steps.ts";
import { ownEntry } from "../../models/own-entry.ts";

/**
 * What an athlete of a division does in a part, in order: every visit to every movement with its amount, load and
 * deadline, and every rest. Work without end is listed further than anybody gets in the time.
 *
 * Rounds, ladders and intervals are written out; clocks are clocks of the part. What follows from the clock alone
 * (the rest of an interval) stands in the list as a rest. Throws a RangeError for a division or movement that does
 * not exist, which a checked workout cannot name.
 */
export function unroll(workout: Workout, part: Part, context: UnrollContext): Course {
  const steps = ownEntry(part.work, context.division);
  if (steps === undefined) {
    throw new RangeError(`"${workout.title}" has no division "${context.division}"`);
  }
  const ends = endOf(part.clock, context.startClock);
  const emitter = emitterFor(part, context, ends);
  walkSteps(steps, { soonest: 0, clock: 0 }, START, emitter, sectionCounter(steps, emitter));
  const endless = emitter.cut;
  const items = numbered(withoutLastRests(emitter.items), endless);
  const worn = part.wearing && ownEntry(part.wearing.load, context.division);
  const total = endless ? undefined : totalOf(items);
  const perRound = perRoundOf(emitter);
  const minimum = minimumOf(part, items, perRound);
  const wornLoad = worn === undefined ? undefined : loadOf(worn, "", context);
  const { secondsPerMissingRep } = part.clock.kind === "for-time" ? part.clock : {};
  return {
    part: part.name,
    items,
    endless,
    ...(ends === undefined ? {} : { ends }),
    ...(emitter.pauses.length === 0
      ? {}
      : { pauses: emitter.pauses.map(({ from, to }) => ({ from: seconds(from), to: seconds(to) })) }),
    ...(total === undefined ? {} : { totalScore: total }),
    ...(perRound === undefined ? {} : { perRound }),
    ...(secondsPerMissingRep === undefined ? {} : { secondsPerMissing: secondsPerMissingRep }),
    ...(minimum === undefined ? {} : { minimumScore: minimum }),
    ...(wornLoad === undefined ? {} : { worn: wornLoad }),
  };
}

const START = { passes: [], unbroken: false, inRound: false, inWindow: false } as const;

/** Clock of the part at which it ends whatever was done. */
function endOf(clock: PartClock, start: Seconds): Seconds | undefined {
  if (clock.kind === "on-the-clock") return clock.length;
  const length: PartLength | undefined = clock.kind === "for-time" ? clock.cap : clock.length;
  if (length === undefined) return undefined;
  return length.kind === "for" ? length.time : seconds(length.time - start);
}

/** Counts the sections of a part, if it has several with rounds among them. */
function sectionCounter(steps: readonly Step[], emitter: Emitter): (() => void) | undefined {
  const work = steps.filter((step) => step.kind !== "rest");
  if (work.length < 2 || !work.some(standsAlone)) return undefined;
  return () => {
    emitter.section = (emitter.section ?? 0) + 1;
    emitter.roundOfSection = 0;
  };
}

/** After the last effort nothing is waited for. */
function withoutLastRests(items: readonly CourseItem[]): readonly CourseItem[] {
  const last = items.findLastIndex((item) => item.kind === "effort");
  return items.slice(0, last + 1);
}

/** Adds how many rounds there are, where their number is fixed. */
function numbered(items: readonly CourseItem[], endless: boolean): readonly CourseItem[] {
  if (endless) return items;
  const of = Math.max(...items.map((item) => item.pass.round));
  const inSection = new Map<number | undefined, number>();
  for (const { pass } of items) {
    inSection.set(pass.section, Math.max(inSection.get(pass.section) ?? 0, pass.roundOfSection));
  }
  return items.map((item) => {
    const roundsOfSection = inSection.get(item.pass.section);
    const pass = { ...item.pass, of, ...(roundsOfSection === undefined ? {} : { roundsOfSection }) };
    return { ...item, pass };
  });
}

/** Score units of everything, where every amount is fixed. */
function totalOf(items: readonly CourseItem[]): number | undefined {
  let total = 0;
  for (const item of items) {
    if (item.kind === "rest") continue;
    if (item.amount.kind !== "counted") return undefined;
    total += item.scores;
  }
  return total;
}

/** Score units of one round of rounds without end, if all are alike. */
function perRoundOf({ perPass }: Emitter): number | undefined {
  const [first, ...others] = perPass;
  return first !== undefined && first > 0 && others.every((score) => score === first) ? first : undefined;
}

function minimumOf(
  part: Part,
  items: readonly CourseItem[],
  perRound: number | undefined,
): number | undefined {
  const { minimumWork } = part;
  if (minimumWork === undefined) return undefined;
  if (minimumWork.of === "reps") return minimumWork.amount;
  if (perRound !== undefined) return minimumWork.amount * perRound;
  return items.reduce(
    (sum, item) =>
      item.kind === "effort" && item.amount.kind === "counted" && item.pass.round <= minimumWork.amount
        ? sum + item.scores
        : sum,
    0,
  );
}
