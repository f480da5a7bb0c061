import type { Competition } from "../../models/competition.ts";
import type { SecondTry } from "../../models/plan/debrief.ts";
import type { Feeling, Level } from "../../models/vocabulary.ts";
import { normalBelow } from "../../numerics/normal.ts";
import type { DebriefConstants } from "./constants.ts";

/** What a second try is judged by. Shares are of the planned result, above 0 where the first try fell short. */
export type SecondTryInput = {
  readonly level: Level;
  readonly felt?: Feeling;
  /** Result short of the plan; below 0 where it was better. */
  readonly behind: number;
  /** Of that, what was named as a cause, and what of it a second try wins back. */
  readonly named: number;
  readonly recoverable: number;
  /** Relative standard deviation of the plan's range, and of the same work done twice. */
  readonly spread: number;
  readonly retestNoise: number;
  /** The planned result in its unit, and the places one unit is worth. */
  readonly planned: number;
  readonly placesPerUnit?: number;
  readonly counts: Competition["counts"];
  /** Hours from the first try to the deadline, where both are known. */
  readonly hoursLeft?: number;
  /** A stated limit or a caution keeps the athlete from it. */
  readonly withheld: boolean;
};

type Answer = Pick<SecondTry, "answer" | "why">;

/**
 * Whether to do it again: what can be won back of the named causes, what knowing the work brings, and what of the rest was only a
 * bad day, less what the first try still costs at the best hour there is; held against the noise of the work done twice.
 *
 * A bad day is told from too hopeful a plan by how much each varies: of the part no cause explains the share
 * noise^2 / (noise^2 + doubt^2) is expected to come back (regression towards what was known). A gain within the noise is no reason.
 */
export function secondTry(input: SecondTryInput, constants: DebriefConstants): SecondTry {
  const { retestNoise: noise, spread, behind, named, recoverable, planned } = input;
  const doubt = Math.sqrt(Math.max(0, spread ** 2 - noise ** 2));
  const oddDay = (behind - named) * (noise ** 2 / (noise ** 2 + doubt ** 2));
  const hours = bestHours(input.hoursLeft, constants);
  const tiredness = tiredAfter(hours, input.felt, constants);
  const gain = recoverable + oddDay + knowing(input.level, constants) - tiredness;
  const ownDoubt = (doubt * noise) / Math.hypot(doubt, noise);
  const error = Math.hypot(noise, ownDoubt, constants.recoverableError * recoverable, constants.knowingError);
  const chance = normalBelow(gain / error);
  const places =
    input.placesPerUnit === undefined ? undefined : Math.max(0, gain * planned * input.placesPerUnit);
  return {
    ...answerOf(input, { gain, chance, ...(places !== undefined && { places }) }, constants),
    gain: { value: gain * planned, error: error * planned },
    chance,
    ...(places !== undefined && { places }),
    fixes: gain > 0 ? Math.min(1, Math.max(0, recoverable / gain)) : 0,
    bestHours: hours,
    tiredness,
  };
}

function answerOf(
  { counts, withheld, hoursLeft, retestNoise }: SecondTryInput,
  { gain, chance, places }: { readonly gain: number; readonly chance: number; readonly places?: number },
  constants: DebriefConstants,
): Answer {
  if (withheld) return { answer: "leave-it", why: "withheld" };
  if (counts === "first") return { answer: "leave-it", why: "first-counts" };
  if (hoursLeft !== undefined && hoursLeft < constants.soonest + constants.uploadHours) {
    return { answer: "leave-it", why: "no-time" };
  }
  if (
    chance < constants.likelyChance ||
    gain <= constants.priceOfTry ||
    (places !== undefined && places < 1)
  ) {
    return { answer: "leave-it", why: "inside-noise" };
  }
  const clear = chance >= constants.clearChance && gain >= retestNoise;
  if (counts === "last") return { answer: clear ? "only-if" : "leave-it", why: "last-counts" };
  return clear ? { answer: "do-it", why: "gain-is-clear" } : { answer: "only-if", why: "gain-is-likely" };
}

/** Later is better while there is time; nothing is won by waiting for longer than the body needs. */
function bestHours(hoursLeft: number | undefined, constants: DebriefConstants): number {
  const latest = (hoursLeft ?? Number.POSITIVE_INFINITY) - constants.uploadHours;
  return Math.max(constants.soonest, Math.min(latest, constants.mostHours));
}

/** Share of the result still lost to the first try after so many hours. */
function tiredAfter(hours: number, felt: Feeling | undefined, constants: DebriefConstants): number {
  const harder =
    felt === "blew-up" ? constants.tiredWhenBlown : felt === "hard" ? constants.tiredWhenHard : 1;
  return constants.tiredAtOnce * harder * Math.exp(-hours / constants.tiredHours);
}

const knowing = (level: Level, constants: DebriefConstants): number =>
  ({
    new: constants.knowingNew,
    regular: constants.knowingRegular,
    competitor: constants.knowingCompetitor,
    elite: constants.knowingElite,
  })[level];
