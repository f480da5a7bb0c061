import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayList } from "./number.ts";
import { isTime, sayWholeScore, type ScoreContext } from "./score.ts";
import { sayChance } from "./share.ts";
import { sayClock } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Gate = NonNullable<Pacing["gates"]>[number];

/** Seconds sooner that are worth going all out for. */
const WORTH_SAYING = 1;
/** A gate passed as often as this asks for nothing, and one less often than the second for everything. Judgement. */
const SURE = 0.975;
const DOUBTFUL = 0.8;
/** A gate passed less often than this even all out is no aim; a difference of chances below the second is none. Judgement. */
const HOPELESS = 0.1;
const WORTH_TELLING = 0.04;

/**
 * The deadlines that end the part: those that are sure in one breath, the others each with when the plan is there, how often it is
 * passed as planned and all out, and whether to go for it. Where every interval is such a deadline, from which to which it is in doubt.
 * Nothing where there are none.
 */
export function sayGates(pacing: Pick<Pacing, "gates" | "score">, context: ScoreContext): string | undefined {
  const { gates, score } = pacing;
  if (gates === undefined || gates.length === 0) return undefined;
  if (score === "intervals-completed") return sayIntervals(gates);
  const sure = gates.filter(isSure);
  const others = gates.filter((gate) => !isSure(gate));
  return [
    ...(sure.length > 0 ? [saySure(sure, score, context)] : []),
    ...(others.length > 1 ? [sayInDoubt(others, score, context)] : []),
    ...(others.length === 1 ? others.map((gate) => sayGate(gate, score, context)) : []),
    ...(others.length > 0 ? [sayWhetherToGo(others)] : []),
  ].join(" ");
}

const isSure = ({ planned, chance }: Gate): boolean => planned !== undefined && chance >= SURE;

/** What must be done by when, for a glance. Reads `24 reps by 3:00 or it ends`. */
export function sayDeadline(
  { score: least, clock }: Gate,
  score: Pacing["score"],
  context: ScoreContext,
): string {
  const counted = isTime(score) ? "reps" : score;
  const done =
    least > 0 && counted !== "intervals-completed" ? `${sayWholeScore(counted, least, context)} by ` : "by ";
  return `${done}${sayClock(clock)} or it ends`;
}

/** Reads `Gate: 32 reps by 3:00 or it ends: planned 1:26, passed over 95% of the time.`, or of several `Gates: … (plan 1:26), …`. */
function saySure(gates: readonly Gate[], score: Pacing["score"], context: ScoreContext): string {
  const [only] = gates;
  const passed = `passed ${sayChance(Math.min(...gates.map(({ chance }) => chance)))} of the time.`;
  if (gates.length === 1 && only)
    return `Gate: ${sayDeadline(only, score, context)}: planned ${sayClock(only.planned ?? 0)}, ${passed}`;
  const each = gates.map(
    (gate) => `${sayDeadline(gate, score, context).replace(ENDS, "")} (plan ${sayClock(gate.planned ?? 0)})`,
  );
  return `Gates: ${sayList(each, "and")}, or it ends; each ${passed}`;
}

const ENDS = " or it ends";

function sayGate(gate: Gate, score: Pacing["score"], context: ScoreContext): string {
  const { planned, chance, allOut, sooner } = gate;
  const there = planned === undefined ? "the plan comes too late" : `planned ${sayClock(planned)}`;
  const harder =
    sooner < WORTH_SAYING
      ? ""
      : `; all out, ${Math.round(sooner)}${NO_BREAK_SPACE}s sooner, ${sayChance(allOut)}`;
  return `Gate: ${sayDeadline(gate, score, context)}: ${there}, passed ${sayChance(chance)} of the time${harder}.`;
}

/** Reads `Gates in doubt: 95 reps by 10:00 (plan 9:52, passed 90% of the time), 110 reps by 11:00 (plan 10:55, 55%; all out, 9 s sooner, 70%), or it ends.` */
function sayInDoubt(gates: readonly Gate[], score: Pacing["score"], context: ScoreContext): string {
  const each = gates.map((gate, at) => {
    const { planned, chance, allOut, sooner } = gate;
    const there = planned === undefined ? "the plan comes too late" : `plan ${sayClock(planned)}`;
    const passed = at === 0 ? `passed ${sayChance(chance)} of the time` : sayChance(chance);
    const harder =
      sooner < WORTH_SAYING || allOut - chance < WORTH_TELLING
        ? ""
        : `; all out, ${Math.round(sooner)}${NO_BREAK_SPACE}s sooner, ${sayChance(allOut)}`;
    return `${sayDeadline(gate, score, context).replace(ENDS, "")} (${there}, ${passed}${harder})`;
  });
  return `Gates in doubt: ${each.join(", ")}, or it ends.`;
}

/** What lies behind a gate counts only for who passes it: which one to go all out for. */
function sayWhetherToGo(gates: readonly Gate[]): string {
  const first = gates.find(({ planned, chance }) => planned === undefined || chance < DOUBTFUL);
  if (first !== undefined) {
    const which = gates.length === 1 ? "it" : `the one at ${sayClock(first.clock)}`;
    return first.allOut < HOPELESS
      ? `On most days ${which} cannot be passed; whoever stands before it with a chance goes all out.`
      : `Go for ${which}: nothing is kept by holding back.`;
  }
  return gates.every(({ sooner }) => sooner < WORTH_SAYING)
    ? "Behind the plan there, go all out for it."
    : "Keep to the plan, and go all out for it only when you are behind.";
}

/** Every interval is a gate: where the doubt begins, and where the plan ends. */
function sayIntervals(gates: readonly Gate[]): string {
  const doubtful = gates.filter((gate) => !isSure(gate));
  const [first] = doubtful;
  const last = doubtful.at(-1);
  if (first === undefined || last === undefined)
    return `Every interval up to ${sayClock(gates.at(-1)?.clock ?? 0)} is passed ${sayChance(SURE)} of the time.`;
  const passed = ({ clock, chance }: Gate): string => `${sayClock(clock)} (passed ${sayChance(chance)})`;
  const which =
    last === first
      ? `is the interval that ends at ${passed(first)}`
      : `are the intervals from the one that ends at ${passed(first)} to the one that ends at ${passed(last)}`;
  return `In doubt ${which}: go for it, nothing is kept by holding back.`;
}
