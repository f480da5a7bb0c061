import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayCount, sayList, sayNumber } from "./number.ts";
import { type Difficulty, sayForEverybody, sayMoved, sayMovements } from "./difficulty.ts";
import { sayShare } from "./share.ts";
import { sayClock } from "./time.ts";

type EarlySplits = NonNullable<NonNullable<Plan["parts"][number]["pacing"]>["earlySplits"]>;

/**
 * What early performances show, for the athletes who come after: what was done, where the time went, what it means for them. A
 * sentence for each thing that is known; what the clocks do not tell is not mentioned.
 */
export const sayEarlyForAll = (early: EarlySplits | undefined, difficulty?: Difficulty): readonly string[] =>
  [
    early && sayDone(early),
    early && sayCosts(early),
    early && saySlowing(early),
    ...(difficulty ? sayMovements(difficulty) : []),
    difficulty && sayForEverybody(difficulty),
    early && sayUse(early, difficulty),
  ].flatMap((sentence) => (sentence === undefined || sentence === "" ? [] : [sentence]));

/** Rounds whose times are said one by one, at most; of more the first and the last. */
const MOST_ROUNDS = 5;

function sayDone({ performances, by, shape }: EarlySplits): string {
  const who = by ? `, by ${sayLevel(by)},` : "";
  const seen = `${sayCount(performances, "early performance", "early performances")}${who} ${performances === 1 ? "was" : "were"} timed`;
  const times = shape.map(({ seconds }) => sayClock(seconds));
  const first = shape[0]?.round;
  const about = performances === 1 ? "" : " on average";
  if (times.length === 0 || first === undefined) return `${seen}.`;
  if (times.length === 1) return `${seen}: ${times[0] ?? ""}${about}.`;
  if (times.length <= MOST_ROUNDS) return `${seen}: the rounds took ${sayList(times)}${about}.`;
  return `${seen}: round ${first} took ${times[0] ?? ""} and round ${shape.at(-1)?.round ?? first} ${times.at(-1) ?? ""}${about}.`;
}

const sayLevel = ({ level, division }: NonNullable<EarlySplits["by"]>): string =>
  `${{ new: "somebody new", regular: "a regular", competitor: "a competitor", elite: "one of the elite" }[level]}${division === undefined ? "" : ` (${division})`}`;

function sayCosts({ fixedPerRound, perRep }: EarlySplits): string {
  const round =
    fixedPerRound &&
    fixedPerRound.seconds >= 0.5 &&
    `every round lost about ${saySeconds(fixedPerRound.seconds)} to ways and starts, however few reps were in it`;
  const rep = perRep && `a rep took about ${saySeconds(perRep.seconds, 1)}`;
  const both = [round, rep].flatMap((said) => (said ? [said] : []));
  return both.length === 0 ? "" : asSentence(both.join(", and "));
}

function saySlowing({ driftPerRound, finishSurge }: EarlySplits): string {
  const drift = driftPerRound && sayChange(driftPerRound.share);
  const finish = finishSurge && sayChange(finishSurge.share);
  if (drift !== undefined && finish !== undefined) {
    const end =
      finish === "no slower" ? "the last one too" : `the last one ${finish} than that would make it`;
    return `Each round was ${drift} than the one before, ${end}.`;
  }
  if (drift !== undefined) return `Each round was ${drift} than the one before.`;
  return finish === undefined ? "" : `The last round was ${finish} than the others would make it.`;
}

/** A weight that would be said as nought per cent is told as what it is. */
const isUsed = ({ weight }: EarlySplits): boolean => weight >= 0.005;

function sayUse(early: EarlySplits, difficulty: Difficulty | undefined): string {
  const one = early.performances === 1;
  const who = `Who ${one ? "it was" : "they were"} is not known`;
  const unknown = difficulty
    ? ""
    : ` ${who}, so ${one ? "it shows" : "they show"} how to share out the work, not how long it takes.`;
  if (!isUsed(early)) {
    return `Your rounds are paced by your own numbers: ${one ? "one performance shows" : "these show"} too little of how to share out the work.${difficulty ? "" : ` ${who} either.`}`;
  }
  return `Your rounds follow ${one ? "it" : "them"} by ${sayShare(early.weight)} in how the work is shared out, and your own numbers for the rest.${unknown}`;
}

/** What was seen of others changed in one athlete's plan, in a line or two. Nothing where nobody was seen. */
export function sayEarlyChange({
  earlySplits,
  difficulty,
}: {
  readonly earlySplits?: EarlySplits | undefined;
  readonly difficulty?: Difficulty | undefined;
}): string {
  if (!difficulty) return earlySplits ? sayRounds(earlySplits) : "";
  const { first, last } = earlySplits?.changed ?? { first: 0, last: 0 };
  const rounds = [first, last].some((change) => Math.round(change) !== 0)
    ? ` Your first round is planned ${sayLonger(first)} and your last ${sayLonger(last)}.`
    : "";
  return `${sayMoved(difficulty)}${rounds}`;
}

/** The same where who was seen is not known, so that only the sharing out of the work follows them. */
function sayRounds(early: EarlySplits): string {
  const changes = isUsed(early) && early.changed ? [early.changed.first, early.changed.last] : [];
  const seen = asSentence(saySeen(early));
  const of = (one: string, many: string): string => (early.performances === 1 ? one : many);
  if (changes.every((change) => Math.round(change) === 0)) {
    return `${seen} ${of("It leaves", "They leave")} this plan as your own numbers make it.`;
  }
  const [first = 0, last = 0] = changes;
  return `${seen} ${of("With it", "With them")} your first round is planned ${sayLonger(first)} and your last ${sayLonger(last)} than from your own numbers alone.`;
}

const saySeen = ({ performances }: EarlySplits): string =>
  `${sayCount(performances, "early performance was", "early performances were")} seen`;

const sayLonger = (change: number): string => {
  const size = Math.round(Math.abs(change));
  return size === 0 ? "no slower" : `${size}${NO_BREAK_SPACE}s ${change < 0 ? "faster" : "slower"}`;
};

const saySeconds = (seconds: number, decimals = 0): string =>
  `${sayNumber(seconds, decimals)}${NO_BREAK_SPACE}s`;

/** A change that would be said as nought per cent is none. */
function sayChange(share: number): string {
  const size = sayShare(Math.abs(share));
  return size === sayShare(0) ? "no slower" : `${size} ${share < 0 ? "faster" : "slower"}`;
}

const asSentence = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
