import type { Plan } from "../models/plan/plan.ts";
import { nameFor, pluralOf } from "./movement-words.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayWholeScore, type ScoreContext } from "./score.ts";
import { sayClock } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type IfThen = Pacing["ifThen"][number];

function sayAction(action: IfThen["action"], pacing: Pacing): string {
  switch (action.kind) {
    case "smaller-sets":
      return `${pluralOf(pacing, action.name)} in ${action.amount === 1 ? "singles" : `sets of ${action.amount}`}`;
    case "slow-down":
      return `${sayNumber(action.secondsPerRound, 0)}${NO_BREAK_SPACE}s slower a round`;
    case "push":
      return `${sayNumber(action.secondsPerRound, 0)}${NO_BREAK_SPACE}s faster a round`;
    case "hold":
      return "hold your pace, do not push yet";
    case "skip-to-tie-break": {
      const row = pacing.rows.find((candidate) => candidate.index === action.row);
      return row
        ? `straight to the ${nameFor(row, row.amount)}, where the tie is broken`
        : "straight to the tie-break";
    }
  }
}

/** What the moment is called: the round, or the movement where there is only one round. */
function sayMoment(ifThen: IfThen, pacing: Pacing): string {
  const round = pacing.rounds.find((candidate) => candidate.round === ifThen.round);
  if (round && pacing.rounds.length > 1) {
    return /^\d+$/.test(round.label) ? `round${NO_BREAK_SPACE}${round.label}` : `the ${round.label}`;
  }
  return pacing.rows.find((row) => row.index === ifThen.row)?.name ?? "this point";
}

/** The threshold and the action in two pieces, for the sheet. The threshold reads `After round 3 past 5:08`. */
export function sayIfThen(ifThen: IfThen, pacing: Pacing): { readonly when: string; readonly then: string } {
  const word = ifThen.when === "later-than" ? "past" : "before";
  return {
    when: `After ${sayMoment(ifThen, pacing)} ${word} ${sayClock(ifThen.clock)}`,
    then: sayAction(ifThen.action, pacing),
  };
}

/** The same as one sentence, with what to expect then. */
export function sayIfThenSentence(ifThen: IfThen, pacing: Pacing, context: ScoreContext): string {
  const { when, then } = sayIfThen(ifThen, pacing);
  const expected =
    ifThen.projected === undefined
      ? ""
      : ` Expect about ${sayWholeScore(pacing.score, ifThen.projected, context)}.`;
  return `${when} (plan ${sayClock(ifThen.planned)}): ${then}.${expected}`;
}
