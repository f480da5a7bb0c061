import type { CourseEffort } from "../../models/course.ts";
import type { PacingRow } from "../../models/plan/pacing.ts";
import { displayedPace } from "./displayed-pace.ts";
import type { PartInput } from "./paced-part.ts";
import type { SetPlan } from "../search/plan-sets.ts";
import type { Solved } from "../search/solve-part.ts";
import { REST_FOR, type Track } from "../motion/track.ts";

/** Whole score units, safe against the last bit of a sum. */
export const wholeScore = (score: number): number => Math.floor(score + 1e-6);

/**
 * The rows of a plan: one for each visit and each prescribed rest, in order, as far as the plan goes. Amounts are whole units: a unit
 * begun and not finished is not planned.
 */
export function rowsOf(solved: Solved, input: PartInput): readonly PacingRow[] {
  const { log, state } = solved;
  const { track } = solved.bench;
  const rows: PacingRow[] = [];
  let score = 0;
  const allScore = wholeScore(finalScore(solved));
  const allWork = Math.max(state.worked, 1e-9);
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const item = track.items[i];
    if (!item) continue;
    const started = log.started[i] as number;
    const ended = log.ended[i] as number;
    const common = {
      index: rows.length,
      round: item.pass.round,
      ...(item.pass.of === undefined ? {} : { rounds: item.pass.of }),
      ...(item.pass.ladder === undefined ? {} : { ladder: item.pass.ladder }),
      start: started,
      end: ended,
      shareOfTime: state.clock > 0 ? ended / state.clock : 1,
      shareOfWork: (log.worked[i] as number) / allWork,
      reserve: Math.min(1, Math.max(0, log.left[i] as number)),
    };
    if (item.kind === "rest") {
      if (ended - started < 0.5) continue;
      const shareOfReps = allScore > 0 ? Math.min(1, wholeScore(score) / allScore) : 0;
      rows.push({
        kind: "rest",
        ...restRow(ended - started),
        scoreDone: wholeScore(score),
        shareOfReps,
        ...common,
      });
      continue;
    }
    const amount = plannedAmount(track, i, log.done[i] as number);
    if (amount <= 0) continue;
    score += amount * (track.score[i] as number);
    const shareOfReps = allScore > 0 ? Math.min(1, wholeScore(score) / allScore) : 1;
    const setPlan = solved.sets[i];
    rows.push({
      kind: "work",
      ...workRow(track, i, item, amount, setPlan, log.worksFrom[i] as number, started, ended, input),
      scoreDone: wholeScore(score),
      shareOfReps,
      ...common,
    });
  }
  return rows;
}

/** Score of a plan in whole units of what is counted: a rep begun does not count. */
export function finalScore({ bench: { track }, log, state }: Solved): number {
  let score = 0;
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    if ((track.kind[i] as number) >= REST_FOR) continue;
    score += plannedAmount(track, i, log.done[i] as number) * (track.score[i] as number);
  }
  return score;
}

function plannedAmount(track: Track, i: number, done: number): number {
  const amount = track.amount[i] as number;
  return done >= amount - 1e-6 ? amount : Math.floor(done + 1e-6);
}

const restRow = (
  time: number,
): Pick<
  PacingRow,
  "name" | "short" | "amount" | "unit" | "complexWithNext" | "sets" | "transition" | "tieBreak"
> => ({
  name: "rest",
  short: "rest",
  amount: time,
  unit: "seconds",
  complexWithNext: false,
  sets: [],
  transition: 0,
  tieBreak: false,
});

/** Rests in whole seconds that add up to a mean: the longer ones last. */
function wholeRests(mean: number, breaks: number): readonly number[] {
  const all = Math.round(mean * breaks);
  const short = Math.floor(all / Math.max(1, breaks));
  const longer = all - short * breaks;
  return Array.from({ length: breaks }, (_, i) => short + (i >= breaks - longer ? 1 : 0));
}

function workRow(
  track: Track,
  i: number,
  item: CourseEffort,
  amount: number,
  setPlan: SetPlan | undefined,
  worksFrom: number,
  started: number,
  ended: number,
  input: PartInput,
): Omit<
  PacingRow,
  "kind" | "index" | "round" | "start" | "end" | "scoreDone" | "shareOfReps" | "shareOfTime" | "shareOfWork"
> {
  const task = track.tasks[track.task[i] as number];
  const movement = task?.movement ?? item.movement;
  const restFirst = setPlan?.restFirst ?? 0;
  const sizes = setPlan?.sizes ?? [amount];
  const rests = wholeRests(setPlan?.rest ?? 0, sizes.length - 1);
  const resting = restFirst + rests.reduce((sum, rest) => sum + rest, 0);
  const secondsPerUnit = Math.max(0, ended - worksFrom - resting) / amount;
  const displayed = displayedPace(movement, item.unit, secondsPerUnit);
  const asked = track.amount[i] as number;
  return {
    movement: movement.id,
    name: movement.name,
    plural: movement.plural,
    short: movement.short,
    amount,
    ...(Number.isFinite(asked) && asked > amount + 1e-6 ? { prescribed: asked } : {}),
    unit: item.unit,
    ...(item.sides ? { sides: item.sides } : {}),
    ...(item.load && !item.load.athletesChoice ? { load: input.loadBar(item.load, movement) } : {}),
    ...(item.height === undefined ? {} : { heightMetres: item.height }),
    complexWithNext: item.joinedToNext,
    sets: sizes.map((size, set) => ({ amount: size, restAfter: rests[set] ?? 0 })),
    secondsPerUnit,
    ...(displayed ? { displayed } : {}),
    transition: worksFrom - started + restFirst,
    tieBreak: item.tieBreak,
    ...(item.deadline ? { deadline: item.deadline.clock } : {}),
  };
}
