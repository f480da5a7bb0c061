import type { Plan } from "../models/plan/plan.ts";
import { nameFor, pluralOf } from "./movement-words.ts";
import { NO_BREAK_SPACE, sayCount, sayNumber } from "./number.ts";
import { sayRowPace } from "./pace.ts";
import { sayVisit } from "./place-in-part.ts";
import { sayRoundOf } from "./round-name.ts";
import { restLeftOut, WITHOUT_RESTS } from "./rests-left-out.ts";
import { isTime, sayWholeScore, type ScoreContext } from "./score.ts";
import { sayClock } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type IfThen = Pacing["ifThen"][number];

function sayAction(action: IfThen["action"], pacing: Pacing): string {
  switch (action.kind) {
    case "smaller-sets":
      return `${pluralOf(pacing, action.name)} in ${action.amount === 1 ? "singles" : `sets of ${action.amount}`}`;
    case "slow-down":
      return sayChange(action.secondsPerRound, "slower");
    case "push":
      return sayChange(action.secondsPerRound, "faster");
    case "aim-at":
      return `aim at ${sayNumber(action.scorePerRound, 0)} a round`;
    case "hold":
      return pacing.rounds.length > 1
        ? "keep to the planned rounds, do not push yet"
        : "keep the paces as planned, do not push yet";
    case "pace-at":
      return sayPaceAt(action, pacing);
    case "skip-to-tie-break": {
      const row = pacing.rows.find((candidate) => candidate.index === action.row);
      return row
        ? `straight to the ${nameFor(row, row.amount)}, where the tie is broken`
        : "straight to the tie-break";
    }
  }
}

/** A pace of a later row. Reads `the box step-overs at 3.5 s a rep`. */
function sayPaceAt(action: Extract<IfThen["action"], { kind: "pace-at" }>, { rows }: Pacing): string {
  const row = rows.find(({ index }) => index === action.row);
  if (row === undefined) return "the next station at that pace";
  const { displayed, secondsPerUnit } = action;
  return `the ${sayVisit(row, rows)} at ${sayRowPace({ unit: row.unit, secondsPerUnit, displayed }) ?? "that pace"}`;
}

/** A change that would be said as nought seconds is none. */
const sayChange = (secondsPerRound: number, word: string): string =>
  Math.round(secondsPerRound) === 0
    ? "keep the pace as planned"
    : `${sayNumber(secondsPerRound, 0)}${NO_BREAK_SPACE}s ${word} a round`;

/** What the moment is called: the round, or the movement where there is only one round. */
function sayMoment(ifThen: IfThen, pacing: Pacing): string {
  const row = pacing.rows.find(({ index }) => index === ifThen.row);
  return (
    sayRoundOf(pacing, ifThen.round) ??
    (row === undefined ? "this point" : `the ${sayVisit(row, pacing.rows)}`)
  );
}

const BEYOND: Readonly<Record<IfThen["when"], string>> = {
  "later-than": "past",
  "earlier-than": "before",
  "fewer-than": "with under",
  "more-than": "with over",
};

/** What is done: of one movement where its reps alone add up, in reps where the score is a time, else in the score. */
function sayDone(
  done: number,
  { counted }: Pick<IfThen, "counted">,
  { score }: Pacing,
  context: ScoreContext,
): string {
  if (counted) return sayCount(done, counted.name, counted.plural);
  return sayWholeScore(isTime(score) ? "reps" : score, done, context);
}

/** The threshold and the action in two pieces; `shift` turns the clock of the part into the one that is read. The threshold reads `After round 3 past 5:08`, or `After round 1 with under 106 reps`. */
export function sayIfThen(
  ifThen: IfThen,
  pacing: Pacing,
  context: ScoreContext,
  shift = 0,
): { readonly when: string; readonly then: string } {
  const { score, clock, when } = ifThen;
  const threshold = score === undefined ? sayClock(clock + shift) : sayDone(score, ifThen, pacing, context);
  return {
    when: `After ${sayMoment(ifThen, pacing)} ${BEYOND[when]} ${threshold}`,
    then: sayAction(ifThen.action, pacing),
  };
}

/** What to do beyond a threshold in as few words as a glance allows. */
function sayShortAction(action: IfThen["action"], pacing: Pacing): string {
  switch (action.kind) {
    case "hold":
      return "hold";
    case "slow-down":
      return sayShortChange(action.secondsPerRound, "slower");
    case "push":
      return sayShortChange(action.secondsPerRound, "faster");
    case "pace-at": {
      const row = pacing.rows.find(({ index }) => index === action.row);
      const { displayed, secondsPerUnit } = action;
      const pace = row && sayRowPace({ unit: row.unit, secondsPerUnit, displayed });
      return row && pace ? `${row.short} ${pace}` : "hold";
    }
    case "smaller-sets": {
      const row = pacing.rows.find(({ name }) => name === action.name);
      return `${row?.short ?? action.name} ${action.amount === 1 ? "singles" : `in ${action.amount}s`}`;
    }
    default:
      return sayAction(action, pacing);
  }
}

const sayShortChange = (seconds: number, word: string): string =>
  Math.round(seconds) === 0 ? "as planned" : `${sayNumber(seconds, 0)}${NO_BREAK_SPACE}s ${word}`;

/**
 * The thresholds of one moment as one text, so that too slow and too fast stay together. `shift` turns the clock of the part into
 * the one that is read. Reads `past 10:41 → 3 s slower; before 10:21 → hold`.
 */
export function sayIfThenPair(
  pair: readonly IfThen[],
  pacing: Pacing,
  context: ScoreContext,
  shift: number,
): { readonly moment: string; readonly say: string } | undefined {
  const [first] = pair;
  if (!first) return undefined;
  const each = pair.map((one) => {
    const { when, score, clock, action } = one;
    const threshold = score === undefined ? sayClock(clock + shift) : sayDone(score, one, pacing, context);
    return `${BEYOND[when]} ${threshold}${NO_BREAK_SPACE}→ ${sayShortAction(action, pacing)}`;
  });
  return { moment: sayMoment(first, pacing), say: each.join("; ") };
}

/** The same as one sentence, with what to expect then. */
export function sayIfThenSentence(ifThen: IfThen, pacing: Pacing, context: ScoreContext, shift = 0): string {
  const { when, then } = sayIfThen(ifThen, pacing, context, shift);
  const { plannedScore } = ifThen;
  const planned =
    plannedScore === undefined
      ? sayClock(ifThen.planned + shift)
      : sayDone(plannedScore, ifThen, pacing, context);
  const expected =
    ifThen.projected === undefined
      ? ""
      : ` Expect about ${sayWholeScore(pacing.score, ifThen.projected, context)}${restLeftOut(pacing) > 0 ? ` ${WITHOUT_RESTS}` : ""}.`;
  return `${when} (plan ${planned}): ${then}.${expected}`;
}
