import type { Plan } from "../models/plan/plan.ts";
import { sayAmount } from "./amount.ts";
import { nameFor } from "./movement-words.ts";
import { sayNumber } from "./number.ts";
import { sayRowPace } from "./pace.ts";
import { sayVisit } from "./place-in-part.ts";
import { sayRoundOf } from "./round-name.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type PacingRow = Pacing["rows"][number];

/** One movement of a part with its visits in order. */
export type Visited = { readonly name: string; readonly rows: readonly PacingRow[] };

/** A last visit this much quicker than those before is a finish. */
const QUICKER = 0.97;
/** Visits needed to tell a finish from the ups and downs between them. */
const FEWEST_VISITS = 3;
/** The last tenth of the work is the finish, as the model has it. */
const FROM = 0.9;
/** Shorter work has no finish of its own: all of it is one. Seconds. */
const SHORTEST = 240;

/**
 * The finish as a sentence: where the plan goes quicker at the end, in which movement and at which pace; else where the last tenth of
 * the work begins, in the movement in which it is spent. Nothing where every interval counts for itself, where the clock or a
 * wall ends the work before, where the work is short, or where another part follows that wants what is left.
 */
export function sayFinish(visited: readonly Visited[], pacing: Pacing, isLast: boolean): string | undefined {
  if (pacing.score === "slowest-interval" || pacing.intervals !== undefined) return undefined;
  return quicker(visited, pacing) ?? (isLast ? lastTenth(pacing) : undefined);
}

function quicker(visited: readonly Visited[], pacing: Pacing): string | undefined {
  const found = visited.flatMap(({ rows }) => {
    const last = rows.at(-1);
    const before = rows.slice(1, -1).flatMap((row) => row.secondsPerUnit ?? []);
    if (rows.length < FEWEST_VISITS || last?.secondsPerUnit === undefined || before.length === 0) return [];
    if (last.prescribed !== undefined || last.amount <= 1) return [];
    const mean = before.reduce((sum, each) => sum + each, 0) / before.length;
    return last.secondsPerUnit <= QUICKER * mean ? [{ last, gain: mean - last.secondsPerUnit }] : [];
  });
  const [most] = [...found].sort((one, other) => other.gain * other.last.amount - one.gain * one.last.amount);
  if (most === undefined) return undefined;
  const round = sayRoundOf(pacing, most.last.round);
  const pace = sayRowPace(most.last);
  return round === undefined || pace === undefined
    ? undefined
    : `Finish in ${round}: the ${nameFor(most.last, 2)} at ${pace}.`;
}

function lastTenth(pacing: Pacing): string | undefined {
  const { rows, ending, duration, tooHeavy, outOfReach } = pacing;
  if (duration < SHORTEST) return undefined;
  if (ending === "eliminated" || tooHeavy !== undefined || outOfReach.length > 0) return undefined;
  const work = rows.filter(({ kind, amount }) => kind === "work" && amount > 0);
  const row = work.find(({ shareOfWork }) => shareOfWork >= FROM);
  if (row === undefined) return undefined;
  const before = work.findLast(({ index }) => index < row.index)?.shareOfWork ?? 0;
  const through = row.shareOfWork > before ? (FROM - before) / (row.shareOfWork - before) : 0;
  return `Spend what is left ${fromPlace(row, through, pacing)}.`;
}

/** From where: the round, the movement, and in a long visit how much of it. */
function fromPlace(row: PacingRow, through: number, pacing: Pacing): string {
  const round = sayRoundOf(pacing, row.round);
  const inRound = round === undefined ? "" : ` of ${round}`;
  const left = inWholes((1 - through) * row.amount, row.unit);
  const among = round === undefined ? pacing.rows : pacing.rows.filter((other) => other.round === row.round);
  const name = sayVisit(row, among);
  const isLast = pacing.rows.findLast(({ kind }) => kind === "work")?.index === row.index;
  if (!isLast || through <= 0 || left >= row.amount) return `from the ${name}${inRound} on`;
  return row.unit === "reps"
    ? `in the last ${sayNumber(left, 0)} ${nameFor(row, left)}${inRound}`
    : `in the last ${sayAmount({ amount: left, unit: row.unit })} of the ${name}${inRound}`;
}

/** Metres by fifty and seconds by ten, as far as there are so many; else ones. */
function inWholes(amount: number, unit: PacingRow["unit"]): number {
  const step = unit === "metres" && amount > 75 ? 50 : unit === "seconds" && amount > 15 ? 10 : 1;
  return Math.max(step, Math.round(amount / step) * step);
}
