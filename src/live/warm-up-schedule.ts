import type { DayPlan } from "./day-plan.ts";

type WarmUp = NonNullable<DayPlan["warmUp"]>;
export type WarmUpStep = WarmUp["steps"][number];

/** One stretch of the warm-up with its moments, milliseconds since 1970. */
export type Stretch = {
  readonly kind: "step" | "wait" | "repeat";
  readonly step?: WarmUpStep;
  readonly from: number;
  readonly to: number;
};

/** The warm-up as it stands after the start was moved so often. */
export type Schedule = {
  readonly start: number;
  readonly stretches: readonly Stretch[];
  /** What is left out because the start came sooner. */
  readonly dropped: readonly WarmUpStep[];
};

const SECOND = 1000;
/** Called early, the last rest is this long at least; told so by the plan too. Seconds. */
const LAST_REST = 180;
/** A start that slips by more than this wants something hard once more, so long before it. Seconds. */
const LONG_SLIP = 600;
const AGAIN_BEFORE = 300;
/** Sets of the build that are kept when called early. */
const SETS_KEPT = 2;

/** The warm-up counted back from a start. */
export const scheduleFrom = (steps: readonly WarmUpStep[], start: number): Schedule => ({
  start,
  dropped: [],
  stretches: steps.map((step) => {
    const from = start - step.before * SECOND;
    return { kind: "step", step, from, to: from + step.lasts * SECOND };
  }),
});

/**
 * The warm-up after the start was moved at a moment. What is done by then stays done.
 *
 * Sooner: what is left keeps its order and loses from the front whatever there is no time for; the last two sets of the build and
 * the rehearsal go last, and the rest before the start is shortened before them, to three minutes. Later: what is left is
 * done so much later, and the time between is for keeping warm; where the build was done already and the start slips by more than ten
 * minutes, one single or the rehearsal comes once more five minutes before it.
 */
export function moveStart(schedule: Schedule, at: number, start: number): Schedule {
  const slip = start - schedule.start;
  if (slip === 0) return schedule;
  const isDone = ({ from, to, kind, step }: Stretch): boolean =>
    to <= at || (from <= at && kind === "step" && step?.stage !== "rest" && slip > 0);
  const done = schedule.stretches.filter(isDone);
  const left = schedule.stretches.filter((stretch) => !isDone(stretch));
  const doneTo = Math.max(at, ...done.map(({ to }) => to));
  const steps = left.flatMap(({ step, kind }) => (step && kind === "step" ? [step] : []));
  if (slip < 0 || doneTo + lengthOf(steps) > start)
    return squeezed(schedule, done, steps, { doneTo: at, start });
  return stretchedOut(schedule, done, steps, { doneTo, start, slip });
}

type Moved = { readonly doneTo: number; readonly start: number };

const lengthOf = (steps: readonly WarmUpStep[]): number =>
  steps.reduce((sum, { lasts }) => sum + lasts * SECOND, 0);

function squeezed(
  before: Schedule,
  done: readonly Stretch[],
  steps: readonly WarmUpStep[],
  { doneTo, start }: Moved,
): Schedule {
  const time = Math.max(0, start - doneTo);
  const kept = squeezeSteps(steps, time);
  let from = start - Math.min(lengthOfKept(kept), time);
  const stretches = kept.map(({ step, lasts }): Stretch => {
    const stretch = { kind: "step", step, from, to: Math.min(start, from + lasts) } as const;
    from = stretch.to;
    return stretch;
  });
  const first = stretches[0]?.from ?? start;
  return {
    start,
    stretches: [
      ...cutOff(done, doneTo),
      ...waitAfter(done, doneTo, first),
      ...stretches.filter(({ from: a, to }) => to > a),
    ],
    dropped: [
      ...before.dropped,
      ...steps.filter(
        ({ id, before: when }) => !kept.some(({ step }) => step.id === id && step.before === when),
      ),
    ],
  };
}

/** A step that is kept, and how long it lasts now, milliseconds. */
type KeptStep = { readonly step: WarmUpStep; readonly lasts: number };

const lengthOfKept = (kept: readonly KeptStep[]): number => kept.reduce((sum, { lasts }) => sum + lasts, 0);

/** The steps as far as there is time for them, in milliseconds. */
function squeezeSteps(steps: readonly WarmUpStep[], time: number): readonly KeptStep[] {
  let kept: readonly KeptStep[] = steps.map((step) => ({ step, lasts: step.lasts * SECOND }));
  const length = (): number => lengthOfKept(kept);
  const shorten = (which: (step: WarmUpStep) => boolean, least: (step: WarmUpStep) => number): void => {
    kept = kept.map(({ step, lasts }) => {
      const over = length() - time;
      const floor = Math.min(lasts, least(step) * SECOND);
      return which(step) && over > 0 ? { step, lasts: Math.max(floor, lasts - over) } : { step, lasts };
    });
  };
  const droppable = (rank: (step: WarmUpStep) => boolean): void => {
    for (const { step } of [...kept]) {
      if (length() <= time) return;
      if (rank(step)) kept = kept.filter((other) => other.step !== step);
    }
  };
  shorten(
    ({ stage }) => stage === "rest",
    () => LAST_REST,
  );
  droppable(({ stage }) => !KEPT_EARLY.includes(stage));
  const cut = kept.map(({ step, lasts }) => ({ step: length() > time ? lastSets(step, kept) : step, lasts }));
  kept = cut.map(({ step, lasts }) => ({ step, lasts: Math.min(lasts, step.lasts * SECOND) }));
  droppable(({ stage, sets }) => stage === "build" && sets.length === 0);
  droppable(({ stage }) => stage === "rehearsal");
  droppable(({ stage }) => stage === "build");
  shorten(
    ({ stage }) => stage === "rest",
    () => 0,
  );
  // What is left over goes back to the rest.
  kept = kept.map(({ step, lasts }) =>
    step.stage === "rest"
      ? { step, lasts: Math.min(step.lasts * SECOND, lasts + Math.max(0, time - length())) }
      : { step, lasts },
  );
  return kept;
}

const KEPT_EARLY: readonly WarmUpStep["stage"][] = ["build", "rehearsal", "rest"];

/** The step without the sets that come before the last two of the whole build; shorter by its share of them. */
function lastSets(step: WarmUpStep, kept: readonly { readonly step: WarmUpStep }[]): WarmUpStep {
  const all = kept.flatMap(({ step: { sets } }) => sets);
  const last = all.slice(-SETS_KEPT);
  const sets = step.sets.filter((set) => last.includes(set));
  return step.sets.length === 0 || sets.length === step.sets.length
    ? step
    : { ...step, sets, lasts: (step.lasts * sets.length) / step.sets.length };
}

const cutOff = (done: readonly Stretch[], at: number): readonly Stretch[] =>
  done.map((stretch) => ({ ...stretch, to: Math.min(stretch.to, Math.max(stretch.from, at)) }));

const waitBetween = (from: number, to: number): readonly Stretch[] =>
  to - from < SECOND ? [] : [{ kind: "wait", from, to }];

/** Nobody who has not begun has anything to keep warm: until then there is no waiting. */
const waitAfter = (done: readonly Stretch[], from: number, to: number): readonly Stretch[] =>
  done.length === 0 ? [] : waitBetween(from, to);

function stretchedOut(
  before: Schedule,
  done: readonly Stretch[],
  steps: readonly WarmUpStep[],
  { doneTo, start, slip }: Moved & { readonly slip: number },
): Schedule {
  let from = start - lengthOf(steps);
  const later = steps.map((step): Stretch => {
    const stretch = { kind: "step", step, from, to: from + step.lasts * SECOND } as const;
    from = stretch.to;
    return stretch;
  });
  const hard = ({ stage }: WarmUpStep): boolean => stage === "build" || stage === "rehearsal";
  const repeats = slip > LONG_SLIP * SECOND && !steps.some(hard);
  const [again] = repeats ? toRepeat(done.flatMap(({ step }) => step ?? [])) : [];
  if (again === undefined) {
    const first = later[0]?.from ?? start;
    return {
      start,
      dropped: before.dropped,
      stretches: [...done, ...waitAfter(done, doneTo, first), ...later],
    };
  }
  const begins = Math.max(doneTo, start - AGAIN_BEFORE * SECOND);
  const ends = Math.min(start, begins + again.lasts * SECOND);
  const repeat: Stretch = { kind: "repeat", step: again, from: begins, to: ends };
  return {
    start,
    dropped: before.dropped,
    stretches: [...done, ...waitBetween(doneTo, begins), repeat, ...waitBetween(ends, start)],
  };
}

/** What is done once more after a long wait: one single with the second heaviest load of the build, else the rehearsal. */
function toRepeat(done: readonly WarmUpStep[]): readonly WarmUpStep[] {
  const build = done.filter(({ stage, sets }) => stage === "build" && sets.length > 0);
  const sets = build.flatMap((step) => step.sets);
  const loads = [...new Set(sets.map(({ load }) => load.kilograms))].sort((a, b) => b - a);
  const second = sets.find(({ load }) => load.kilograms === (loads[1] ?? loads[0]));
  const last = build.at(-1);
  if (last && second) return [{ ...last, lasts: 60, sets: [{ ...second, reps: 1, restAfter: 0 }] }];
  return done.filter(({ stage }) => stage === "rehearsal").slice(-1);
}
