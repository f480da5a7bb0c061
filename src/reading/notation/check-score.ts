import type { PartClock, Score, Step } from "../../models/workout.ts";
import { effortsOf } from "./default-score.ts";
import { tellStep, tellText, type Trouble } from "./notation-fault.ts";
import type { WorkReading } from "./work-reading.ts";
import type { TextSource } from "./token.ts";

/** Scores that need intervals: timed passes, or rounds where a time is scored. */
const OF_INTERVALS: readonly Score["kind"][] = [
  "lowest-interval",
  "highest-interval",
  "sum-of-lowest",
  "slowest-interval",
  "intervals-completed",
];

/** A score with the clock and the work it is of. */
type ScoredWork = { readonly score: Score; readonly clock: PartClock; readonly steps: readonly Step[] };

/** Tells a score that cannot come out of the work, and how distances and holds are counted where that is not written. */
export function checkScore(
  { score, clock, steps }: ScoredWork,
  source: TextSource,
  reading: WorkReading,
): void {
  const trouble = misfit({ score, clock, steps });
  if (trouble !== undefined) tellText(reading.faults, source, trouble);
  if (!countsReps(score, clock)) return;
  // Rounds are counted without what is done before the first of them.
  const scored = score.kind === "rounds-and-reps" ? steps.filter(hasPasses) : steps;
  tellUncounted(scored, reading);
}

function misfit({ score, clock, steps }: ScoredWork): Trouble | undefined {
  const efforts = effortsOf(steps);
  const units = efforts.flatMap((step) => step.pieces.map(({ amount }) => unitOf(amount)));
  if (score.kind === "time" && (clock.kind === "amrap" || clock.kind === "max-load")) {
    return {
      problem: "a part of fixed length has no time to score",
      remedy: "Write `for time:` as its kind, or another score.",
    };
  }
  if (score.kind === "calories" && !units.includes("calories")) {
    return {
      problem: "no line is counted in calories",
      remedy: "Write the amount in calories, or another score.",
    };
  }
  if (score.kind === "metres" && !units.includes("metres")) {
    return {
      problem: "no line is counted in metres",
      remedy: "Write the amount in metres, or another score.",
    };
  }
  const ofLoads = score.kind === "load" || score.kind === "sum-of-loads";
  const chosen = efforts.some(({ load }) => load?.kind === "same" && load.value.kind === "athletes-choice");
  if (ofLoads && clock.kind !== "max-load" && !(clock.kind === "on-the-clock" && chosen)) {
    return {
      problem: "a load is the score where the athlete chooses it",
      allowed:
        "`max load: 6:00`, or `on the clock:` with a line such as `1 clean at any load`; with set loads that rise `score: intervals completed`",
      remedy: "Write `max load:` as the kind of the part, or another score.",
    };
  }
  if (score.kind === "rounds-and-reps" && clock.kind !== "amrap") {
    return {
      problem: "rounds and reps are the score of an AMRAP",
      remedy: "Write `score: reps`, or `amrap:` as the kind of the part.",
    };
  }
  if (OF_INTERVALS.includes(score.kind) && !steps.some(hasPasses)) {
    return {
      problem: "the score is of intervals, and the work has none",
      allowed: "a block with `every`, with `on` and `off`, or with rounds",
      remedy: "Write the intervals as a block, or another score.",
    };
  }
  return undefined;
}

const hasPasses = (step: Step): boolean =>
  step.kind === "block" && (step.passes.kind !== "once" || step.steps.some(hasPasses));

function unitOf(amount: ReturnType<typeof effortsOf>[number]["pieces"][number]["amount"]): string {
  if (amount.kind !== "counted") return amount.unit;
  const { amount: counted } = amount;
  const [first] =
    counted.kind === "listed" ? counted.values : [counted.kind === "same" ? counted.value : counted.start];
  return first?.unit ?? "reps";
}

/** Whether anything is counted in reps where some may be missing: then it matters what a distance counts. */
const countsReps = (score: Score, clock: PartClock): boolean =>
  score.kind === "reps" ||
  score.kind === "rounds-and-reps" ||
  (score.kind === "time" && clock.kind === "for-time" && clock.cap !== undefined);

function tellUncounted(steps: readonly Step[], reading: WorkReading): void {
  const uncounted = effortsOf(steps).filter(
    (step) =>
      step.countsAs === undefined &&
      step.pieces.some(({ amount }) => ["metres", "seconds"].includes(unitOf(amount)) && isCounted(amount)),
  );
  const [first] = uncounted;
  if (first === undefined) return;
  const lines = new Set(uncounted.map(({ written }) => written)).size;
  tellStep(reading.faults, first, {
    problem:
      lines === 1
        ? "what this counts for the score is not said, and it is taken as 1"
        : `what ${lines} lines from here on count for the score is not said, and each is taken as 1`,
    allowed: "`, counts 10`, `, counts 1 per 5 ft`, `, counts 0`",
    remedy: "Write what the rules say it counts.",
    severity: "notice",
  });
}

const isCounted = (amount: { readonly kind: string }): boolean =>
  amount.kind === "counted" || amount.kind === "ladder";
