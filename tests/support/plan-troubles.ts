import { sayMissing } from "../../src/wording/missing.ts";
import { briefText } from "../../src/cli/brief-text.ts";
import type { Course, CourseEffort } from "../../src/models/course.ts";
import type { PartPlan, Plan } from "../../src/models/plan/plan.ts";
import { sayGoal } from "../../src/wording/goal.ts";
import { sayClock } from "../../src/wording/time.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
/** Seconds per unit of the quickest clean cycle of what is done in a row, fresh. */
export type FastestOf = (row: Pacing["rows"][number]) => number;
/** Half of the last digit a reader sees. */
const HALF_A_SECOND = 0.5;
const ROUNDING = 1e-6;
/** Reps are whole, and the ends of a range are not: so much may part them from a gate that is passed for sure. */
const SLACK = 1;
/** The longest way, change of hands and setting up that is no rest, seconds (judgement: a machine to strap into, 15 m off). */
const LONGEST_TRANSITION = 25;

/**
 * What is wrong with a plan by what must hold of every plan, one line each: amounts add up to the prescription or to the
 * stated stop, clocks and rows add up, no wait is untold, a printed cap is the written one, targets lie inside ranges and
 * ranges inside what is possible, no unit is quicker than its fastest cycle, no load for reps lies above the best single, every attempt inside its window.
 */
export function planTroubles(
  plan: Plan,
  courseOfPart: (part: string) => Course,
  fastestOf: FastestOf,
): readonly string[] {
  const found = plan.parts.flatMap((part) => {
    const course = courseOfPart(part.name);
    return [
      ...part.missing.map((why) => `not planned: ${sayMissing(why, "kg")}`),
      ...(part.pacing ? pacingTroubles(part.pacing, course, fastestOf) : []),
      ...liftingTroubles(part),
    ].map((trouble) => `${part.name}: ${trouble}`);
  });
  return [...found, ...headlineTroubles(plan), ...textTroubles(plan)];
}

function pacingTroubles(pacing: Pacing, course: Course, fastestOf: FastestOf): readonly string[] {
  return [
    ...amountTroubles(pacing, course),
    ...clockTroubles(pacing, fastestOf),
    ...rangeTroubles(pacing, course),
    ...gateTroubles(pacing, course),
    ...pacing.ifThen.flatMap((one) =>
      one.score === undefined && pacing.cap !== undefined && one.clock > pacing.cap
        ? [`a threshold at ${one.clock} past the cap ${pacing.cap}`]
        : [],
    ),
  ];
}

const isGroup = (item: CourseEffort): boolean => item.accumulates !== undefined;

function amountTroubles({ rows, score, result, ending }: Pacing, course: Course): readonly string[] {
  const found: string[] = [];
  const work = rows.filter((row) => row.kind === "work");
  for (const row of work) {
    const sets = row.sets.reduce((sum, set) => sum + set.amount, 0);
    if (Math.abs(sets - row.amount) > 1e-3)
      found.push(`row ${row.index}: sets ${sets}, amount ${row.amount}`);
    if (row.unit === "reps" && !Number.isInteger(row.amount))
      found.push(`row ${row.index}: ${row.amount} reps`);
  }
  const efforts = course.items.filter((item) => item.kind === "effort");
  const groups = new Set(efforts.filter(isGroup).map((item) => item.accumulates?.group));
  if (groups.size > 0 && ending === "finishes") {
    const total = efforts.find(isGroup)?.accumulates?.total;
    const movement = efforts.find(isGroup)?.movement.id;
    const sum = work.filter((row) => row.movement === movement).reduce((all, row) => all + row.amount, 0);
    if (sum !== total) found.push(`rows add up to ${sum} of ${total}`);
  }
  if (ending === "finishes" && groups.size === 0 && course.totalScore !== undefined) {
    const done = rows.at(-1)?.scoreDone ?? 0;
    if (Math.abs(done - course.totalScore) > 1) found.push(`finishes with ${done} of ${course.totalScore}`);
    if (work.some((row) => row.prescribed !== undefined)) found.push("finishes, and a row is cut short");
  }
  if (score === "reps" || score === "rounds-and-reps") {
    const done = rows.at(-1)?.scoreDone ?? 0;
    if (Math.abs(done - result.target) > ROUNDING) found.push(`rows end at ${done}, target ${result.target}`);
  }
  work.forEach((row, at) => {
    const next = work[at + 1];
    if (row.prescribed === undefined || next === undefined) return;
    const cutByClock = row.deadline !== undefined && row.end >= row.deadline - 1;
    const waits = rows[row.index + 1]?.kind === "rest";
    if (!cutByClock && !waits)
      found.push(`row ${row.index}: ${row.amount} of ${row.prescribed}, and the work goes on`);
  });
  return found;
}

function clockTroubles(
  { rows, duration, whenStopped, cap }: Pacing,
  fastestOf: FastestOf,
): readonly string[] {
  const found: string[] = [];
  let clock = 0;
  for (const row of rows) {
    if (Math.abs(row.start - clock) > HALF_A_SECOND)
      found.push(`row ${row.index} begins at ${row.start}, not ${clock}`);
    if (row.kind === "work") found.push(...rowTroubles(row, fastestOf));
    clock = row.end;
  }
  if (duration < clock - HALF_A_SECOND) found.push(`duration ${duration} before the last row ends, ${clock}`);
  if (duration > clock + HALF_A_SECOND && whenStopped?.atWall !== true) {
    found.push(`duration ${duration}, rows end at ${clock}`);
  }
  if (cap !== undefined && clock > cap + HALF_A_SECOND) found.push(`rows go past the cap: ${clock}`);
  return found;
}

function rowTroubles(row: Pacing["rows"][number], fastestOf: FastestOf): readonly string[] {
  const { index, transition, sets, secondsPerUnit = 0, amount, start, end, load } = row;
  const found: string[] = [];
  const rests = sets.reduce((sum, { restAfter }) => sum + restAfter, 0);
  const sum = transition + rests + secondsPerUnit * amount;
  if (Math.abs(end - start - sum) > HALF_A_SECOND)
    found.push(`row ${index} takes ${end - start}, its pieces ${sum}`);
  if (transition > LONGEST_TRANSITION) found.push(`row ${index}: ${transition} s of transition`);
  const fastest = fastestOf(row);
  // Rests are told in whole seconds, and a unit begun in the window before is told where it ends: what that takes away is missing here.
  const rounded = HALF_A_SECOND / amount;
  if (amount > 0 && secondsPerUnit < fastest - rounded - 1e-3)
    found.push(`row ${index}: ${secondsPerUnit} s a ${row.name}, the fastest is ${fastest}`);
  if (amount > 1 && (load?.shareOfBest ?? 0) > 1)
    found.push(`row ${index}: reps at ${load?.shareOfBest} of the best`);
  return found;
}

function rangeTroubles({ result, score, cap, ending, gates }: Pacing, course: Course): readonly string[] {
  const { target, cautious, middle, hopeful } = result;
  const found: string[] = [];
  const [low, high] = [Math.min(cautious, hopeful), Math.max(cautious, hopeful)];
  if (![target, cautious, middle, hopeful].every(Number.isFinite)) found.push("a range without numbers");
  if (target < low - ROUNDING || target > high + ROUNDING)
    found.push(`target ${target} outside ${low}–${high}`);
  const { hopeful: most } = result;
  const surest = (gates ?? []).filter(({ chance }) => chance > 0.95).at(-1);
  if (score === "reps" && surest && low < surest.score - SLACK)
    found.push(`passes ${surest.score} reps ${surest.chance} of the time, and a bad day ends at ${low}`);
  if (score === "reps" && (gates ?? []).some(({ chance, score: asked }) => chance > 0.95 && most < asked - 1))
    found.push(`a gate is passed for sure, and a good day ends before it`);
  if (low < 0) found.push(`a range below nothing: ${low}`);
  const counts = score === "reps" || score === "rounds-and-reps" || score === "intervals-completed";
  if (
    counts &&
    course.totalScore !== undefined &&
    score !== "intervals-completed" &&
    high > course.totalScore + ROUNDING
  ) {
    found.push(`a range up to ${high} of ${course.totalScore}`);
  }
  if (score === "time" && course.secondsPerMissing === undefined && high > 4 * 3600)
    found.push(`a time of ${high} s`);
  if (score === "time" && ending === "stopped-by-cap" && course.secondsPerMissing === undefined) {
    found.push(`a time of ${target} s though the cap of ${cap} stops the work`);
  }
  return found;
}

/** Doors shut one after the other, ask for no more than the work before them, and are as likely passed as all of it is done in time. */
function gateTroubles({ gates = [], ending, chanceOfFinishing }: Pacing, course: Course): readonly string[] {
  const found: string[] = [];
  gates.forEach(({ clock, score, chance }, at) => {
    const before = gates[at - 1];
    if (before && clock <= before.clock) found.push(`a gate at ${clock} after one at ${before.clock}`);
    if (before && chance > before.chance + ROUNDING)
      found.push(`a gate at ${clock} likelier than the one before`);
    const asked = course.items.reduce(
      (sum, item) =>
        item.kind === "effort" && item.amount.kind === "counted" && (item.deadline?.clock ?? 0) <= clock
          ? sum + item.scores
          : sum,
      0,
    );
    if (course.totalScore !== undefined && score > asked + 1)
      found.push(`a gate asks for ${score} of ${asked}`);
  });
  const last = gates.at(-1)?.chance;
  if (ending === "finishes" && last !== undefined && (chanceOfFinishing ?? 0) > last + ROUNDING)
    found.push(`finishes ${chanceOfFinishing} of the time, and passes the last gate ${last} of it`);
  return found;
}

function liftingTroubles({ lifting, start, pacing }: PartPlan): readonly string[] {
  if (!lifting) return [];
  const found: string[] = [];
  const closes = lifting.window.closes;
  const all = lifting.lifts.flatMap(({ attempts }) => attempts.map(({ load }) => load.kilograms));
  const sum = all.reduce((total, load) => total + load, 0);
  const once = lifting.sum && lifting.lifts.length === 1 && lifting.lifts[0]?.feel === undefined;
  if (once && pacing === undefined && (lifting.lifts[0]?.expected.hopeful ?? 0) > sum + ROUNDING)
    found.push(`a sum up to ${lifting.lifts[0]?.expected.hopeful} of loads that make ${sum}`);
  for (const lift of lifting.lifts) {
    const { best, reps, attempts, expected } = lift;
    if (expected.target < expected.cautious - ROUNDING || expected.target > expected.hopeful + ROUNDING) {
      found.push(`${lift.name}: target ${expected.target} outside ${expected.cautious}–${expected.hopeful}`);
    }
    if (!lifting.sum && expected.hopeful > best.kilograms + 1.65 * best.spread) {
      found.push(`${lift.name}: ${expected.hopeful} kg hoped for at a best of ${best.kilograms}`);
    }
    attempts.forEach(({ clock, load, number, restBefore }, at) => {
      const before = attempts[at - 1];
      if (before && clock <= before.clock)
        found.push(`${lift.name}: attempt ${number} is not after the one before`);
      if (clock < -ROUNDING) found.push(`${lift.name}: attempt ${number} before the start`);
      if (closes !== undefined && start.clock + clock > closes)
        found.push(`${lift.name}: attempt ${number} too late`);
      if (restBefore < 0) found.push(`${lift.name}: rest of ${restBefore}`);
      const several = reps > 1 || lift.name.includes("+");
      if (several && load.kilograms > best.kilograms)
        found.push(`${lift.name}: ${load.kilograms} kg for several reps`);
    });
    const windows = lift.windows ?? [];
    for (const attempt of attempts) {
      const own = windows.find(({ index }) => index === attempt.window);
      if (windows.length > 0 && !own)
        found.push(`${lift.name}: attempt ${attempt.number} belongs to no window`);
      if (own && (attempt.clock < own.opens - ROUNDING || attempt.clock > own.closes + ROUNDING)) {
        found.push(
          `${lift.name}: attempt ${attempt.number} at ${attempt.clock} outside ${own.opens}–${own.closes}`,
        );
      }
    }
  }
  return found;
}

function headlineTroubles(plan: Plan): readonly string[] {
  if (plan.withheld.length > 0 && plan.headline.result === undefined) return [];
  const goal = sayGoal(plan);
  if (!goal || goal.figure.trim() === "") return ["the headline is empty"];
  const clock = /cap of ([\d:]+)/u.exec(goal.label)?.[1];
  const caps = plan.parts.flatMap(({ pacing }) => (pacing?.cap === undefined ? [] : [sayClock(pacing.cap)]));
  return clock !== undefined && !caps.includes(clock) ? [`a cap of ${clock} that nobody wrote`] : [];
}

/** What no reader should ever see. */
const NEVER = [
  /NaN|Infinity|undefined|\[object/u,
  /\b0 s a (rep|cal|m)\b/u,
  /\b[3-9]\d(\.\d)? s a rep/u,
  /no faster than 0/u,
  /Not planned/u,
];

function textTroubles(plan: Plan): readonly string[] {
  const text = briefText(plan);
  const found = NEVER.flatMap((pattern) => {
    const at = pattern.exec(text);
    return at
      ? [`says "${text.slice(Math.max(0, at.index - 30), at.index + 40).replaceAll("\n", " ")}"`]
      : [];
  });
  const capped = plan.parts.some(({ pacing }) => pacing?.cap !== undefined);
  if (!capped && /inside the cap/iu.test(text)) found.push("speaks of a cap, and there is none");
  return found;
}
