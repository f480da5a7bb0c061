import type { Athlete, MaxEffort } from "../../models/athlete.ts";
import type { EffortTrouble } from "../../models/effort-trouble.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import { convertPace } from "./convert-pace.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** Quicker than this share of the quickest cycle known at any level is not believed. */
const BELIEVABLE = CAPACITY_FIXED.leastCycle.value;
/** Slower than this multiple of the steady pace of a beginner is asked about. */
const ASKED_FROM = CAPACITY_FIXED.slowestEffort.value;
/** A shorter effort may be this much slower than a longer one before they contradict each other. */
const TOLERANCE = CAPACITY_FIXED.contradiction.value;

/** An effort nothing is wrong with by itself, and its seconds for each unit the movement is counted in. */
type Sound = { readonly effort: MaxEffort; readonly movement: Movement; readonly pace: number };

/**
 * Tells what cannot be right in an athlete's max efforts: nothing done or no time, rates nobody has, units that say nothing of the
 * movement, and efforts that contradict each other because the shorter one was the slower. Movements not in the library are the
 * reader's to refuse and are left out here.
 */
export function checkEfforts(
  athlete: Athlete,
  movements: ReadonlyMap<string, Movement>,
): readonly EffortTrouble[] {
  const sound: Sound[] = [];
  const troubles: EffortTrouble[] = [];
  for (const effort of athlete.efforts) {
    const movement = movements.get(effort.movement);
    if (!movement) continue;
    const unit = movement.counts[0] ?? "reps";
    const pace = convertPace(movement, effort.time / effort.amount, effort.unit, unit);
    const trouble = troubleOf(effort, movement, pace);
    if (trouble) troubles.push(trouble);
    else if (pace !== undefined) sound.push({ effort, movement, pace });
  }
  return [...troubles, ...sound.flatMap((each) => contradiction(each, sound) ?? [])];
}

function troubleOf(
  effort: MaxEffort,
  movement: Movement,
  pace: number | undefined,
): EffortTrouble | undefined {
  const { amount, time } = effort;
  const of = { effort, movement };
  if (!(amount > 0) || !(time > 0) || !Number.isFinite(amount) || !Number.isFinite(time))
    return { ...of, kind: "nothing-done" };
  if (pace === undefined) return { ...of, kind: "no-conversion" };
  const quickest = Math.min(...Object.values(movement.pace.fastest));
  if (pace < BELIEVABLE * quickest)
    return { ...of, kind: "too-fast", pace, quickest, most: time / (BELIEVABLE * quickest) };
  const beginner =
    Math.max(...Object.values(movement.pace.steady)) * Math.max(...Object.values(movement.pace.bySex));
  return pace > ASKED_FROM * beginner ? { ...of, kind: "too-slow", pace, beginner } : undefined;
}

/** The fastest longer effort of the same movement at the same load that is faster than this one: told once for each that is too slow. */
function contradiction(
  { effort, movement, pace }: Sound,
  sound: readonly Sound[],
): EffortTrouble | undefined {
  const longer = sound.filter(
    (other) =>
      other.movement.id === movement.id &&
      sameLoad(other.effort, effort) &&
      other.effort.time > effort.time &&
      other.pace < pace * (1 - TOLERANCE),
  );
  const worst = longer.reduce<Sound | undefined>(
    (fastest, other) => (!fastest || other.pace < fastest.pace ? other : fastest),
    undefined,
  );
  return (
    worst && {
      kind: "slower-than-longer",
      effort,
      movement,
      pace,
      longer: worst.effort,
      longerPace: worst.pace,
    }
  );
}

const sameLoad = (one: MaxEffort, other: MaxEffort): boolean =>
  (one.load === undefined ? undefined : inKilograms(one.load)) ===
  (other.load === undefined ? undefined : inKilograms(other.load));
