import type { Course } from "../../models/course.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import { seconds } from "../../models/quantity.ts";
import type { EarlyPerformance, Part, Workout } from "../../models/workout.ts";
import { makableLoads } from "../lifting/makable-loads.ts";
import { nearestOf } from "../lifting/plates.ts";
import { isOnlyLifts } from "../lifting/lift-line.ts";
import { pacePart } from "../pacing/pace-part.ts";
import { paceWithWord } from "../pacing/pace-with-word.ts";
import type { PacedPart, PaceShape, PartInput } from "../pacing/paced-part.ts";
import { unroll } from "../unroll/unroll.ts";
import { difficultyOf, harderFor } from "./difficulty-of.ts";
import { earlyShape } from "./early-shape.ts";
import { partWordOf } from "./coach-word.ts";
import type { PlanContext } from "./plan-context.ts";
import { arrangedLoads, type Iron, withPlateChanges } from "./plate-changes.ts";
import { toldPacing } from "./told-pacing.ts";
import { substitute } from "../unroll/substitute.ts";
import { ownEntry } from "../../models/own-entry.ts";
import { liftPart } from "./lift-part.ts";
import type { Before, PartTask, PlannedPart } from "./planned-part.ts";

/** Score kinds whose part is lifted for load even where the work, not a window, sets the clock. */
const LOAD_SCORES: readonly Part["score"]["kind"][] = ["load", "sum-of-loads", "load-times-reps"];

/**
 * Plans one part: unrolls it for the athlete's division, puts in what stands for movements kept away from, paces the
 * work and chooses the attempts. What cannot be computed is told in `missing` and left out.
 */
export function planPart(
  workout: Workout,
  part: Part,
  given: PlanContext,
  start: PartPlan["start"],
  before: Before | undefined,
): PlannedPart {
  const { withholding, athlete } = given;
  const asWritten = unrolledFor(workout, part, given, start);
  const { course, loadBar } = withBars(
    substitute(asWritten(given.division), withholding, athlete),
    part,
    given,
  );
  const context: PlanContext = { ...given, loadBar };
  const maxLoad = part.clock.kind === "max-load";
  // Lifts alone in windows of the clock are lifted and not paced.
  const onlyLifts =
    isOnlyLifts(course) &&
    (maxLoad || (isOfLoads(part) && course.ends !== undefined && !withholding.noMaxLift));
  const withheld = withholding.noWorkout || withholding.withoutLift.has(part.name);
  const task = { workout, part, course };
  const seen = withheld || onlyLifts ? undefined : paceSeen(task, context, before, asWritten);
  const paced = seen?.paced;
  const forLoad = maxLoad || (LOAD_SCORES.includes(part.score.kind) && hasOpenLoad(course));
  const lifted =
    withheld || withholding.noMaxLift || !forLoad
      ? undefined
      : liftPart(task, context, start.clock, before, paced);
  const pacing = paced?.kind === "paced" ? paced.pacing : undefined;
  const plan: PartPlan = {
    name: part.name,
    title: part.heading,
    format: part.clock.kind,
    score: part.score.kind,
    start,
    prescription: ownEntry(part.ownPrescription ?? {}, given.division) ?? part.prescription,
    ...(pacing && seen && { pacing: toldPacing(pacing, context, seen) }),
    ...(lifted?.lifting !== undefined && { lifting: lifted.lifting }),
    missing: [...(paced?.kind === "not-paced" ? paced.missing : []), ...(lifted?.missing ?? [])],
  };
  return {
    plan,
    course,
    ...(paced?.kind === "paced" && { paced }),
    ends: endOf(plan, course, start.clock, paced),
  };
}

/** The work paced alone, then as early performances and a difficulty make it, and in the end as the coach's word sets it. */
function paceSeen(
  { workout, part, course }: PartTask,
  context: PlanContext,
  before: Before | undefined,
  asWritten: (division: string) => Course,
): Parameters<typeof toldPacing>[2] & { readonly paced: PacedPart } {
  const alone = pacePart(paceInput(part, course, context, before));
  const performances = earlyOfOthers(workout, part, context.athlete);
  const early =
    alone.kind === "paced"
      ? earlyShape(
          { performances, course: asWritten(context.division) },
          asWritten,
          alone.pacing.rounds,
          context.overrides,
        )
      : undefined;
  const difficulty = alone.kind === "paced" ? difficultyOf(part, context) : undefined;
  const shaped = (): PartInput =>
    paceInput(part, course, harderFor(difficulty, context), before, early?.shape);
  const asSeen = early === undefined && difficulty === undefined ? alone : pacePart(shaped());
  const word = partWordOf(context.word, part);
  const paced = word === undefined ? asSeen : paceWithWord(shaped(), word);
  return { early, difficulty, alone, asSeen, paced };
}

/** Early performances of a part but the athlete's own, which their results tell of. */
const earlyOfOthers = (
  { early }: Workout,
  part: Part,
  { id }: PlanContext["athlete"],
): readonly EarlyPerformance[] =>
  early.filter((each) => each.part === part.name && each.athlete !== id.toLowerCase());

/** The course with the time its bars take, and its loads with plates arranged to move the least iron. */
function withBars(
  course: Course,
  part: Part,
  { gym, bar, loadBar, competition, overrides }: PlanContext,
): { readonly course: Course; readonly loadBar: PlanContext["loadBar"] } {
  const loading: Iron["loading"] = part.loading ?? competition?.loading ?? "not-stated";
  const iron: Iron = { gym, loadBar, loading, overrides };
  const arranged = arrangedLoads(course, iron, makableLoads(gym, bar));
  return { course: withPlateChanges(course, { ...iron, loadBar: arranged }), loadBar: arranged };
}

const isOfLoads = ({ score: { kind } }: Part): boolean => kind === "load" || kind === "sum-of-loads";

/** The part as a division does it, for this athlete's lifts and body mass. */
function unrolledFor(
  workout: Workout,
  part: Part,
  { athlete, library, bestLift, withholding, gym, bar, overrides }: PlanContext,
  start: PartPlan["start"],
): (division: string) => Course {
  const loads = makableLoads(gym, bar);
  return (division) =>
    unroll(workout, part, {
      division,
      movements: library.movements,
      ...(athlete.bodyMass !== undefined && { bodyMass: athlete.bodyMass }),
      bestLift: (id) => bestLift(id)?.kilograms,
      onTheBar: (kg) => nearestOf(loads, kg, "nearest", overrides).mass,
      startClock: seconds(start.clock),
      avoid: (movement) => withholding.forbids(movement.id),
    });
}

const hasOpenLoad = ({ items }: Course): boolean =>
  items.some((item) => item.kind === "effort" && item.load?.athletesChoice === true);

function paceInput(
  part: Part,
  course: Course,
  context: PlanContext,
  before: Before | undefined,
  shape?: PaceShape,
): PartInput {
  const { overrides, seed } = context;
  const after = before?.part.paced?.after;
  return {
    course,
    clock: part.clock,
    // What is lifted makes the score; the work around it has to be done in its time.
    score: isOfLoads(part) ? { kind: "intervals-completed", restCounts: true } : part.score,
    capacity: context.capacity,
    between: context.between,
    prescribed: context.floorPrescribed,
    loadBar: context.loadBar,
    ...(after !== undefined &&
      before !== undefined && { before: { state: after, rest: seconds(before.rest) } }),
    ...(shape !== undefined && { shape }),
    seed,
    overrides,
  };
}

/** Where nothing was planned the part is taken to last its whole time; without one, no time at all. */
function endOf(
  { pacing, lifting }: PartPlan,
  { ends }: Course,
  start: number,
  paced: PacedPart | undefined,
): PlannedPart["ends"] {
  if (paced?.kind === "paced" && pacing !== undefined) {
    return { clock: start + pacing.duration, spread: paced.finish.spread };
  }
  const lastLift = lifting?.lifts.at(-1)?.attempts.at(-1)?.clock;
  return { clock: lifting?.window.closes ?? lastLift ?? start + (ends ?? 0), spread: 0 };
}
