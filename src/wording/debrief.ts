import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayMass } from "./mass.ts";
import { NO_BREAK_SPACE, sayCount } from "./number.ts";
import { sayRoundOf } from "./round-name.ts";
import { sayScore, sayScoreAmount } from "./score.ts";
import { sayAgainInShort, sayDaysInTen, sayResultAmount } from "./second-try.ts";
import { sayShare } from "./share.ts";
import { sayClock, sayDuration } from "./time.ts";

export type SaidDebrief = NonNullable<Plan["debriefs"]>[number];
type Cause = SaidDebrief["causes"][number];
type LiftCause = SaidDebrief["lifts"][number];

const STANDING: Readonly<Record<SaidDebrief["standing"], string>> = {
  better: "better than the range of the plan",
  inside: "inside the range of the plan",
  worse: "behind the range of the plan",
};

/** A piece of what was done: a round, or a visit to a movement in one. Reads `round 3`, or `burpee, round 3`. */
export function sayPiece(
  { kind, round, row }: SaidDebrief["pieces"][number],
  pacing: Plan["parts"][number]["pacing"],
): string {
  const where = (pacing && sayRoundOf(pacing, round)) ?? `round ${round}`;
  return kind === "round" ? where : `${pacing?.rows[row]?.name ?? ""}, ${where}`;
}

/** What was noted beside the result: the tie-break time, and the athlete's own words. */
export const sayNoted = ({ logged: { tieBreak, note } }: Pick<SaidDebrief, "logged">): readonly string[] => [
  ...(tieBreak === undefined ? [] : [`Tie-break ${sayClock(tieBreak)}.`]),
  ...(note === undefined ? [] : [`You noted: “${note}”`]),
];

/** The result against the plan in a sentence. What was done in another version is told and set beside nothing. */
export function sayStanding(debrief: SaidDebrief, units: MassUnit): string {
  const { unit, done, planned, standing, version } = debrief;
  const own = sayOwn(debrief, units);
  if (version === "scaled") return `${own}, in another version than the planned one.`;
  const off = Math.abs(done - planned);
  const same = unit === "seconds" ? off < 0.5 : off < 0.25;
  const better = unit === "seconds" ? done < planned : done > planned;
  const side = unit === "seconds" ? (better ? "faster" : "slower") : better ? "more" : "less";
  const against = same ? "as planned" : `${sayResultAmount(debrief, off, units)} ${side} than planned`;
  return `${own}: ${against}, ${STANDING[standing]}.`;
}

type Logged = Pick<SaidDebrief, "unit" | "done" | "logged" | "score" | "perRound">;

/** The result itself, as it was logged. */
export function sayOwn(debrief: Logged, units: MassUnit): string {
  const { unit, done, logged, score, perRound } = debrief;
  if (logged.time !== undefined) return sayClock(logged.time);
  if (logged.load !== undefined) return sayMass(logged.load);
  if (unit === "units" && score !== undefined) {
    const said = sayScore(score, done, { units, perRound });
    return [said.figure, said.unit].filter(Boolean).join(NO_BREAK_SPACE);
  }
  if (logged.reps !== undefined) return sayScoreAmount("reps", logged.reps);
  return unit === "seconds" ? `about ${sayClock(done)}` : sayResultAmount(debrief, done, units);
}

/** What a coach with forty athletes reads of it in a line: the result, and whether to do it again and when. */
export const sayDoneInShort = (debrief: SaidDebrief, units: MassUnit): string =>
  `done: ${sayOwn(debrief, units)}; ${sayAgainInShort(debrief)}`;

/** Where time went, a sentence a cause. */
export function sayCause(cause: Cause): string {
  const cost = `about ${sayDuration(Math.max(0, cause.seconds.value))}`;
  const doubt = `give or take ${sayDuration(cause.seconds.error)}`;
  switch (cause.kind) {
    case "too-fast-early": {
      const begun = `You began about ${sayShare(cause.share)} faster than planned and were up to ${sayDuration(cause.won)} ahead`;
      return cause.seconds.value < 2
        ? `${begun}; all of it was lost again.`
        : `${begun}; it was lost again and cost ${cost} more (${doubt}).`;
    }
    case "breaks":
      return `Breaks in your sets were about ${sayDuration(cause.each)} longer than planned, ${sayCount(cause.count, "of them", "of them")}: ${cost} (${doubt}).`;
    case "transitions":
      return `Each way from one station to the next took about ${sayDuration(cause.each)} longer than planned, ${sayCount(cause.count, "time", "times")}: ${cost} (${doubt}).`;
    case "slower-movement":
      return `The ${cause.name} went about ${sayShare(cause.share)} slower than your numbers said: ${cost} (${doubt}).`;
    case "one-movement":
      return `The ${cause.name} took ${cost} longer (${doubt}); slower reps or longer breaks, the clocks cannot tell which.`;
  }
}

/** What the attempts show, a sentence each. */
export function sayLiftCause(cause: LiftCause): string {
  switch (cause.kind) {
    case "load-too-high":
      return `The missed ${sayMass(cause.load)} was heavier than the ${sayMass(cause.planned)} planned for that lift.`;
    case "too-early":
      return `The missed ${sayMass(cause.load)} was begun at ${sayClock(cause.clock)}, planned at ${sayClock(cause.planned)}: the breath was not back.`;
    case "missed":
      return `${sayMass(cause.load)} was missed; the plan gave it ${sayDaysInTen(cause.chance)}. A miss like that is no mistake.`;
    case "time-unused":
      return `${sayDuration(cause.seconds)} were left after your last lift: time for ${sayCount(cause.lifts, "more lift", "more lifts")}.`;
  }
}

/** What is said where no cause stands clear of the noise. */
export function sayNothingClear({
  pieces,
  standing,
  causes,
  lifts,
  unit,
  version,
}: SaidDebrief): string | undefined {
  if (causes.length + lifts.length > 0) return undefined;
  if (version === "scaled")
    return "Another version than the planned one was done, so nothing is concluded from it.";
  if (unit === "kilograms") return "Nothing in the attempts stands out.";
  if (pieces.length < 2)
    return "No clocks between start and end were logged, so nothing tells where the time went.";
  return standing === "better"
    ? "Nothing stands out: it went well all the way."
    : "Nothing stands out: what differs is the day, not a mistake.";
}
