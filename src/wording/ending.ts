import type { Plan } from "../models/plan/plan.ts";
import { sayRow } from "./amount.ts";
import { sayLoad } from "./mass.ts";
import { pluralOf } from "./movement-words.ts";
import { sayList } from "./number.ts";
import { sayRoundOf } from "./round-name.ts";
import { sayChance } from "./share.ts";
import { sayClock } from "./time.ts";
import { isTime, sayWholeScore, type ScoreContext } from "./score.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

const ADVICE: Readonly<Record<NonNullable<Pacing["whenStopped"]>["advice"], string>> = {
  "most-reps": "Every rep counts: keep moving until the clock stops.",
  "tie-break": "The tie-break decides: be early at the tie-break moment.",
};

/** Where the clock stops the work, as a place in it: `in round 4, after 11 of 15 pull-ups`. */
function sayWhere(pacing: Pacing, rowIndex: number | undefined): string | undefined {
  const row = pacing.rows.find((candidate) => candidate.index === rowIndex);
  if (!row) return undefined;
  const round = sayRoundOf(pacing, row.round);
  return `${round ? `in ${round}, ` : ""}after ${sayRow(row)}`;
}

/** Work out of reach with its load: `squat snatches at 61 kg`. */
const sayOutOfReach = ({ outOfReach }: Pacing, { units }: ScoreContext): string =>
  sayList(
    outOfReach.map(({ plural, load }) => (load ? `${plural} at ${sayLoad(load, units)}` : plural)),
    "and",
  );

/**
 * How the part ends, plainly: whether a cap is met and, if not, where it ends and what that means; what is out of reach. Nothing for
 * work that simply fills its time or has no cap.
 */
export function sayEnding(pacing: Pacing, context: ScoreContext): string | undefined {
  const { whenStopped, cap, chanceOfFinishing, outOfReach } = pacing;
  const chance = chanceOfFinishing === undefined ? undefined : sayChance(chanceOfFinishing);
  if (pacing.ending === "finishes") {
    if (cap === undefined || chance === undefined) return undefined;
    return `Inside the cap of ${sayClock(cap)} ${chance} of the time.`;
  }
  if (pacing.ending === "fills-the-time" || !whenStopped) {
    if (outOfReach.length === 0) return undefined;
    return `Out of reach by your numbers, so not planned: ${sayOutOfReach(pacing, context)}. ${ASK}`;
  }
  const where = sayWhere(pacing, whenStopped.row);
  const score = isCounted(pacing) ? ` (${sayWholeScore(pacing.score, whenStopped.scoreDone, context)})` : "";
  if (whenStopped.atWall) {
    const after = where ? `${where}${score}` : "from the start";
    const tieBreak = whenStopped.advice === "tie-break" ? ` ${ADVICE["tie-break"]}` : "";
    return `Out of reach by your numbers ${after}: ${sayOutOfReach(pacing, context)}. ${ASK}${tieBreak}`;
  }
  const stop = pacing.ending === "eliminated" ? "The work outruns the clock" : "The clock stops you";
  const finishing = chance === undefined ? "" : ` You finish ${chance} of the time.`;
  const advice = pacing.score === "intervals-completed" ? "" : ` ${ADVICE[whenStopped.advice]}`;
  return `${stop} at ${sayClock(whenStopped.at)}${where ? `, ${where}` : ""}${score}.${finishing}${advice}`;
}

/** What to do about work out of reach. */
const ASK = "Ask your coach for another version before the start.";

/** Whether what is done when the clock stops is counted in the score's own unit: not for times, nor where whole intervals count. */
const isCounted = ({ score }: Pacing): boolean => !isTime(score) && score !== "intervals-completed";

/** The one line on whom to protect and where to breathe; the same name for both is said once. */
export function sayRoles(pacing: Pacing): string | undefined {
  const { limiter, breather } = pacing.roles;
  const protect = limiter ? `Protect the ${pluralOf(pacing, limiter)}` : undefined;
  const breathe = breather && breather !== limiter ? pluralOf(pacing, breather) : undefined;
  if (protect && breathe) return `${protect}, breathe on the ${breathe}.`;
  if (protect) return `${protect}.`;
  return breathe ? `Breathe on the ${breathe}.` : undefined;
}
