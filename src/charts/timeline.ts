import type { PartPlan, Plan } from "../models/plan/plan.ts";
import { sayLiftFigure, sayLiftLoad } from "../wording/lift-words.ts";

type PacingRow = NonNullable<PartPlan["pacing"]>["rows"][number];

/** A stretch of time on the clock of the whole workout, seconds. */
export type Span = { readonly from: number; readonly to: number };

/** Something done without a pause, in the lane of its movement. */
type Block = Span & { readonly lane: number };

type Lane = { readonly name: string; readonly short: string; readonly limiter: boolean };

export type TimelinePart = Span & {
  readonly name: string;
  readonly kind: "work" | "lift";
  /** The part cut at each checkpoint. */
  readonly pieces: readonly Span[];
  readonly lanes: readonly Lane[];
  readonly blocks: readonly Block[];
  /** Where half of the work is done. */
  readonly half?: number;
  /** Clocks where a tie is broken. */
  readonly tieBreaks: readonly number[];
  readonly attempts: readonly TimedAttempt[];
};

type TimedAttempt = {
  readonly at: number;
  readonly figure: string;
  readonly load: string;
  /** The first and the one that is aimed at: said before the others where there is no room for all. */
  readonly weighty: boolean;
};

export type Timeline = { readonly end: number; readonly parts: readonly TimelinePart[] };

/** How long a lift is drawn, seconds; only so that it can be seen. */
const LIFT_SHOWN = 12;

/** A plan laid out in time: what stands where on the clock. Parts without a plan of their own are left out. */
export function timelineOf(plan: Pick<Plan, "parts">): Timeline {
  const parts = plan.parts
    .flatMap((part) => [workOf(part), liftOf(part)])
    .filter((part) => part !== undefined);
  return { end: Math.max(0, ...parts.map((part) => part.to)), parts };
}

function workOf(part: PartPlan): TimelinePart | undefined {
  const { pacing } = part;
  if (!pacing || pacing.rows.length === 0) return undefined;
  const shift = part.start.clock;
  const names = [...new Set(pacing.rows.filter((row) => row.kind === "work").map((row) => row.name))];
  const lanes = names.map((name): Lane => {
    const short = pacing.rows.find((row) => row.name === name)?.short ?? name;
    return { name, short, limiter: name === pacing.roles.limiter };
  });
  const clockAfter = (index: number): number | undefined =>
    pacing.rows.find((row) => row.index === index)?.end;
  const cuts = pacing.checkpoints
    .map(clockAfter)
    .filter((clock): clock is number => clock !== undefined && clock < pacing.duration);
  const edges = [0, ...cuts, pacing.duration].map((clock) => clock + shift);
  return {
    name: part.name,
    kind: "work",
    from: shift,
    to: shift + pacing.duration,
    pieces: edges.slice(1).map((to, index) => ({ from: edges[index] ?? shift, to })),
    lanes,
    blocks: pacing.rows.flatMap((row) => blocksOf(row, names.indexOf(row.name), shift)),
    ...(pacing.half ? { half: pacing.half.clock + shift } : {}),
    tieBreaks: pacing.rows.filter((row) => row.tieBreak).map((row) => row.end + shift),
    attempts: [],
  };
}

/** The sets of a row as blocks: what is left of its time after transition and rests, shared out by amount. */
function blocksOf(row: PacingRow, lane: number, shift: number): readonly Block[] {
  if (row.kind === "rest") return [];
  const rests = row.sets.reduce((sum, set) => sum + set.restAfter, 0);
  const amount = row.sets.reduce((sum, set) => sum + set.amount, 0);
  const working = Math.max(0, row.end - row.start - row.transition - rests);
  let clock = row.start + row.transition + shift;
  return row.sets.map((set) => {
    const from = clock;
    const to = from + (amount > 0 ? (working * set.amount) / amount : 0);
    clock = to + set.restAfter;
    return { lane, from, to };
  });
}

function liftOf(part: PartPlan): TimelinePart | undefined {
  const { lifting } = part;
  const attempts =
    lifting?.lifts.flatMap((lift) =>
      lift.attempts.map((attempt) => ({
        clock: attempt.clock,
        figure: sayLiftFigure(attempt, lift),
        load: sayLiftLoad(attempt, lift),
        weighty: attempt.number === 1 || attempt.number === lift.target,
      })),
    ) ?? [];
  if (!lifting || attempts.length === 0) return undefined;
  const shift = part.start.clock;
  const at = attempts.map((attempt) => attempt.clock + shift);
  const to = Math.max(lifting.window.closes ?? 0, Math.max(...at) + LIFT_SHOWN);
  return {
    name: part.name,
    kind: "lift",
    from: Math.min(shift, ...at),
    to,
    pieces: [{ from: Math.min(shift, ...at), to }],
    lanes: [],
    blocks: at.map((from) => ({ lane: 0, from, to: from + LIFT_SHOWN })),
    tieBreaks: [],
    attempts: attempts.map(({ clock, ...attempt }) => ({ at: clock + shift, ...attempt })),
  };
}
