import type { Athlete, MaxEffort } from "../../models/athlete.ts";
import type { Fault } from "../../models/fault.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import { convertPace } from "./convert-pace.ts";
import { sayEffort } from "./say-efforts.ts";

/** Quicker than this share of the quickest cycle known at any level is not believed. */
const BELIEVABLE = 0.7;
/** Slower than this multiple of the steady pace of a beginner is asked about. */
const ASKED_FROM = 5;
/** A shorter effort may be this much slower than a longer one before they contradict each other. */
const TOLERANCE = 0.01;

/**
 * Tells what cannot be right in an athlete's max efforts: nothing done or no time, rates nobody has, units that say nothing of the
 * movement, and efforts that contradict each other because the shorter one was the slower. Movements not in the library are the
 * reader's to refuse and are left out here.
 */
export function checkEfforts(athlete: Athlete, movements: ReadonlyMap<string, Movement>): readonly Fault[] {
  const sound: { effort: MaxEffort; movement: Movement; pace: number }[] = [];
  const faults: Fault[] = [];
  for (const effort of athlete.efforts) {
    const movement = movements.get(effort.movement);
    if (!movement) continue;
    const unit = movement.counts[0] ?? "reps";
    const pace = convertPace(movement, effort.time / effort.amount, effort.unit, unit);
    const fault = faultOf(effort, movement, pace);
    if (fault) faults.push(fault);
    else if (pace !== undefined) sound.push({ effort, movement, pace });
  }
  return [...faults, ...contradictions(sound)];
}

function faultOf(effort: MaxEffort, movement: Movement, pace: number | undefined): Fault | undefined {
  const { place, amount, time, unit } = effort;
  const found = sayEffort(effort);
  const usual = movement.counts[0] ?? "reps";
  if (!(amount > 0) || !(time > 0) || !Number.isFinite(amount) || !Number.isFinite(time)) {
    return {
      place,
      found,
      problem: `a max effort of ${movement.name} needs an amount and a time of more than nothing`,
      allowed: "an amount done and the time it took, such as `98 burpee in 7:00`",
      remedy: `Write what was done and how long it took, or delete the line. If ${movement.plural} are not possible yet, list the movement under \`cannot\`.`,
      severity: "fault",
    };
  }
  if (pace === undefined) {
    return {
      place,
      found,
      problem: `nothing says how ${unit} of ${movement.name} become ${usual}`,
      allowed: `an effort of ${movement.name} in ${movement.counts.filter((other) => other !== "seconds").join(" or ")}`,
      remedy: `Write the effort in ${usual}.`,
      severity: "fault",
    };
  }
  const quickest = Math.min(...Object.values(movement.pace.fastest));
  if (pace < BELIEVABLE * quickest) {
    return {
      place,
      found,
      problem: `one ${unitName(usual)} of ${movement.name} every ${plain(pace)} s is faster than anybody's quickest cycle, about ${plain(quickest)} s`,
      allowed: `at most about ${Math.floor(time / (BELIEVABLE * quickest))} ${usual} in that time`,
      remedy:
        "Check the amount and the time; minutes typed as hours or a digit too many are the usual causes.",
      severity: "fault",
    };
  }
  const slowest =
    ASKED_FROM *
    Math.max(...Object.values(movement.pace.steady)) *
    Math.max(...Object.values(movement.pace.bySex));
  if (pace > slowest) {
    return {
      place,
      found,
      problem: `one ${unitName(usual)} of ${movement.name} every ${plain(pace)} s is slower than a beginner's long work, even at ${plain(slowest / ASKED_FROM)} s`,
      allowed: "as much as could be done in the time, or an amount done as fast as it could be",
      remedy: "Check the amount and the time. If the load was near the best lift, give it as a lift instead.",
      severity: "question",
    };
  }
  return undefined;
}

/** Pairs of efforts at one movement and load in which the shorter one was slower: told once for each effort that is too slow. */
function contradictions(
  sound: readonly { readonly effort: MaxEffort; readonly movement: Movement; readonly pace: number }[],
): readonly Fault[] {
  const faults: Fault[] = [];
  for (const { effort, movement, pace } of sound) {
    const longer = sound.filter(
      (other) =>
        other.movement.id === movement.id &&
        sameLoad(other.effort, effort) &&
        other.effort.time > effort.time &&
        other.pace < pace * (1 - TOLERANCE),
    );
    const worst = longer.reduce<(typeof longer)[number] | undefined>(
      (fastest, other) => (!fastest || other.pace < fastest.pace ? other : fastest),
      undefined,
    );
    if (!worst) continue;
    const unit = unitName(movement.counts[0] ?? "reps");
    faults.push({
      place: effort.place,
      found: sayEffort(effort),
      problem: `this shorter effort at ${movement.name} is slower (${plain(pace)} s a ${unit}) than the longer one on line ${worst.effort.place.line}, ${sayEffort(worst.effort)} (${plain(worst.pace)} s a ${unit})`,
      allowed: "a shorter effort at least as fast as any longer one",
      remedy: "Correct one of the two, or delete the one that was not a max effort.",
      severity: "fault",
    });
  }
  return faults;
}

const sameLoad = (one: MaxEffort, other: MaxEffort): boolean =>
  (one.load === undefined ? undefined : inKilograms(one.load)) ===
  (other.load === undefined ? undefined : inKilograms(other.load));

const unitName = (unit: string): string =>
  ({ reps: "rep", calories: "calorie", metres: "metre", seconds: "second" })[unit] ?? unit;

/** A time in seconds with as many decimals as matter. */
const plain = (seconds: number): string => seconds.toFixed(seconds < 1 ? 2 : 1);
