import type { Plan } from "../models/plan/plan.ts";
import { sayRow } from "./amount.ts";
import { sayLoad } from "./mass.ts";
import { sayCount, sayList } from "./number.ts";
import { sayWhichLoad } from "./place-in-part.ts";
import { sayRoundOf } from "./round-name.ts";
import { sayGates } from "./gates.ts";
import { sayShare, sayChance } from "./share.ts";
import { sayClock } from "./time.ts";
import { sayLighter, sayTooHeavy } from "./too-heavy.ts";
import { isTime, sayWholeScore, type ScoreContext } from "./score.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

const ADVICE: Readonly<Record<NonNullable<Pacing["whenStopped"]>["advice"], string>> = {
  "most-reps": "Every rep counts: keep moving until the clock stops.",
  "tie-break": "The tie-break decides: be early at the tie-break moment.",
};

/** Where the clock stops the work, as a place in it: `in round 4, after 11 of 15 pull-ups`. */
function sayWhere(pacing: Pacing, rowIndex: number | undefined): string | undefined {
  // A clock that runs out in a rest stops the reader after the work before it.
  const row = pacing.rows.findLast(({ kind, index }) => kind === "work" && index <= (rowIndex ?? -1));
  if (!row) return undefined;
  const round = sayRoundOf(pacing, row.round);
  return `${round ? `in ${round}, ` : ""}after ${sayRow(row)}${sayWhichLoad(row, pacing.rows)}`;
}

/** Work out of reach with its load: `squat snatches at 61 kg`. */
const sayOutOfReach = ({ outOfReach }: Pacing, { units }: ScoreContext): string =>
  sayList(
    outOfReach.map(({ name, plural, load, inOneSet }) => {
      const what = inOneSet ? sayCount(inOneSet.asked, name, plural) : plural;
      const loaded = load ? `${what} at ${sayLoad(load, units)}` : what;
      return inOneSet ? `${loaded} without a break, your best set being about ${inOneSet.best}` : loaded;
    }),
    "and",
  );

/**
 * How the part ends, plainly: what is too heavy to repeat, which gates lie on the way, whether a cap is met and, if not, where it
 * ends and what that means; what is out of reach. Nothing for work that simply fills its time or has no cap.
 */
export function sayEnding(pacing: Pacing, context: ScoreContext): string | undefined {
  const said = [
    ...(pacing.tooHeavy ?? []).map((load) => sayTooHeavy(load, pacing.rows, context.units)),
    sayGates(pacing, context),
    sayUnfinished(pacing),
    sayEnd(pacing, context),
  ].filter((sentence) => sentence !== undefined);
  return said.length === 0 ? undefined : said.join(" ");
}

function sayEnd(pacing: Pacing, context: ScoreContext): string | undefined {
  const { whenStopped, cap, chanceOfFinishing, outOfReach } = pacing;
  const chance = chanceOfFinishing === undefined ? undefined : sayChance(chanceOfFinishing);
  if (pacing.ending === "finishes") {
    if (chance === undefined) return undefined;
    return cap === undefined
      ? `Every interval is done before its clock ${chance} of the time.`
      : `Inside the cap of ${sayClock(cap)} ${chance} of the time.`;
  }
  if (pacing.ending === "fills-the-time" || !whenStopped) {
    if (outOfReach.length === 0) return undefined;
    return `${sayLacking(pacing, undefined, context)} ${sayAsk(pacing, context)}`;
  }
  const where = sayWhere(pacing, whenStopped.row);
  const score =
    isCounted(pacing) && whenStopped.scoreDone > 0
      ? ` (${sayWholeScore(pacing.score, whenStopped.scoreDone, context)})`
      : "";
  if (whenStopped.atWall)
    return sayWall(pacing, whenStopped, where ? `${where}${score}` : FROM_THE_START, context);
  const stop = pacing.ending === "eliminated" ? "The work outruns the clock" : "The clock stops you";
  const finishing =
    chance === undefined || pacing.ending === "eliminated" ? "" : ` You finish ${chance} of the time.`;
  const counts = pacing.score !== "intervals-completed" && whenStopped.scoreDone > 0;
  const advice = counts ? ` ${ADVICE[whenStopped.advice]}` : "";
  return `${stop} at ${sayClock(whenStopped.at)}${where ? `, ${where}` : ""}${score}.${finishing}${advice}`;
}

type WhenStopped = NonNullable<Pacing["whenStopped"]>;

/** At most this share of the best a load is worth a try with a long rest. Judgement: half of such lifts are made on a good day. */
const WORTH_A_TRY = 1.03;

/** The plan ends before work that is out of reach: which, how far, how much of the clock remains and what to do with it. */
function sayWall(
  pacing: Pacing,
  { advice, left }: WhenStopped,
  after: string,
  context: ScoreContext,
): string {
  const [first] = pacing.outOfReach;
  const share = first?.load?.shareOfBest;
  const remains = left === undefined ? "" : ` ${sayClock(left)} of the clock remain.`;
  const singles =
    first?.inOneSet === undefined &&
    left !== undefined &&
    left >= 60 &&
    share !== undefined &&
    share <= WORTH_A_TRY;
  const use = singles
    ? " Single lifts with two minutes between them are honest, as long as each is safe; every one made counts."
    : "";
  const tieBreak = advice === "tie-break" ? ` ${ADVICE["tie-break"]}` : "";
  return `${sayLacking(pacing, after, context)}${remains}${use} ${sayAsk(pacing, context)}${tieBreak}`;
}

/** Intervals that the clock ends before their work is done have no time: what is planned instead, and what to ask. */
function sayUnfinished({ unfinished, intervals }: Pacing): string | undefined {
  if (unfinished === undefined || unfinished.length === 0) return undefined;
  const all = unfinished.length === intervals?.length;
  const which = all
    ? "every interval"
    : `${unfinished.length === 1 ? "interval" : "intervals"} ${sayList(unfinished.map(String))}`;
  return `The clock ends ${which} before the work is done, and an interval that is not finished has no time: ask what the rules make of it. Planned is the most that can be done.`;
}

const FROM_THE_START = "from the start";

/** Over a best guessed from the level by no more than this share, a load may well go. Judgement: what people of a level differ by. */
const MAY_GO = 1.2;

type OutOfReach = Pacing["outOfReach"][number];

/** Whether work is out of reach only because nobody knows better: a skill, or a load near a best guessed from the level. */
export const isDoubted = ({ skill, load, share, untried, inOneSet }: OutOfReach): boolean =>
  skill !== undefined ||
  (inOneSet === undefined &&
    untried === undefined &&
    load !== undefined &&
    load.shareOfBest === undefined &&
    (share ?? 0) <= MAY_GO);

/** Why work is not planned: own numbers or the level say that it is out of reach, or nobody knows. */
function sayLacking(pacing: Pacing, after: string | undefined, context: ScoreContext): string {
  const [first] = pacing.outOfReach;
  const what = sayOutOfReach(pacing, context);
  if (first && isDoubted(first)) {
    return after === undefined || after === FROM_THE_START
      ? `Whether you can do ${what}, nobody knows yet, so they are not planned.`
      : `Planned as far as is sure, ${after}: whether you can do ${what}, nobody knows yet.`;
  }
  const guessed = first?.load !== undefined && first.load.shareOfBest === undefined;
  const by = guessed ? "Out of reach by what is expected of you" : "Out of reach by your numbers";
  const share = first?.load?.shareOfBest;
  const near =
    share === undefined || after === undefined || first?.inOneSet !== undefined
      ? ""
      : `, ${sayShare(share)} of your best`;
  return `${by}${after === undefined ? ", so not planned" : ` ${after}`}: ${what}${near}.`;
}

/** What to do about work out of reach: which version to ask for, and what to do for who can do it after all. */
function sayAsk({ outOfReach: [first] }: Pacing, { units }: ScoreContext): string {
  if (!first) return "";
  const { skill, load, share, name, plural, unit, inOneSet } = first;
  if (inOneSet)
    return `Ask before the start for ${load ? "a lighter load or " : ""}sets of ${Math.max(1, Math.min(inOneSet.best, inOneSet.asked) - 1)}, or what the rules make of a break.`;
  if (skill) {
    const instead = skill.easier.length > 0 ? sayList(skill.easier, "or") : "another version";
    const [lacks, has] =
      unit === "reps"
        ? [`have no ${name} yet`, "have one, take them one at a time"]
        : [`have no ${plural} yet`, "have it, go in short pieces"];
    return `If you ${lacks}, the work ends there: ask for ${instead} before the start. If you ${has}, each only when you are ready, and stop after two misses.`;
  }
  if (load && share !== undefined && share > 0) {
    const ask = `sk for ${sayLighter(load, share, units)}`;
    const usual = ask.replace("your best", "what is expected of you");
    if (!isDoubted(first)) return `A${load.shareOfBest === undefined ? usual : ask}, before the start.`;
    return `Work up to one in the warm-up by small steps; if a step does not go easily, stop there and a${usual}, before the start. If it goes, singles, each only when you are ready, and stop after two misses.`;
  }
  return "Ask your coach for another version before the start.";
}

/** Whether what is done when the clock stops is counted in the score's own unit: not for times, nor where whole intervals count. */
const isCounted = ({ score }: Pacing): boolean => !isTime(score) && score !== "intervals-completed";
