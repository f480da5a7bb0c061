import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { sayFinish, type Visited } from "./finish.ts";
import { nameFor } from "./movement-words.ts";
import { sayList, sayNumber } from "./number.ts";
import { sayOrder } from "./order.ts";
import { sayRowPace } from "./pace.ts";
import { sayVisit } from "./place-in-part.ts";
import { sayRoundOf } from "./round-name.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type PacingRow = Pacing["rows"][number];

/** More movements than this nobody keeps in mind. */
const MOST = 3;
/**
 * The sentence that leads a part, behind the order where that is free: what this athlete does where, in the plan's own numbers; where to breathe, and the
 * finish. What is left is spent only in the last part. Nothing for work that could not be planned.
 */
export function sayGuide(pacing: Pacing, isLast = true): string | undefined {
  const order = sayOrder(pacing);
  const visited = visitedIn(pacing.rows);
  if (visited.length === 0) return undefined;
  const { limiter, breather } = pacing.roles;
  const told = [...visited]
    .sort(
      (one, other) =>
        Number(other.name === limiter) - Number(one.name === limiter) || timeOf(other) - timeOf(one),
    )
    .slice(0, MOST);
  const clauses = clausesFor(visited.filter((each) => told.includes(each)));
  const rest = visited.find(({ name, rows }) => name === breather && name !== limiter && !isHeld(rows));
  const breath = rest && `; take your breath on the ${pluralFor(rest)}`;
  const sentences = [sayLowest(pacing), waitsOf(told), sayFinish(visited, pacing, isLast)].filter(
    (said) => said !== undefined,
  );
  return [
    ...(order === undefined ? [] : [order]),
    `${capitalised(clauses.join(", "))}${breath ?? ""}.`,
    ...sentences,
  ].join(" ");
}

/** Where the lowest interval is the score, that more in another one wins nothing. */
function sayLowest({ score, result }: Pacing): string | undefined {
  if (score === "sum-of-lowest")
    return "Only the lowest interval of each movement counts: what goes beyond it in another one wins nothing, so stop there and rest.";
  if (score !== "lowest-interval") return undefined;
  return `Only the lowest interval counts, ${sayNumber(result.target, 0)} as planned: more than that in another one wins nothing, so stop there and rest.`;
}

/** What the plan waits for breath before a movement in most of its visits, as a sentence. */
function waitsOf(visited: readonly Visited[]): string | undefined {
  const waits = visited.flatMap((each) => {
    const breaths = each.rows.flatMap(({ breath }) => breath ?? []).sort((a, b) => a - b);
    const usual = breaths[Math.floor(breaths.length / 2)];
    return usual !== undefined && breaths.length * 2 >= each.rows.length
      ? [{ what: pluralFor(each), usual }]
      : [];
  });
  if (waits.length === 0) return undefined;
  const isEach = waits.length > 1 && waits.length === visited.length;
  const before = isEach
    ? "each movement"
    : sayList(
        waits.map(({ what }) => `the ${what}`),
        "and",
      );
  const [least, most] = [
    Math.min(...waits.map(({ usual }) => usual)),
    Math.max(...waits.map(({ usual }) => usual)),
  ];
  const [from, to] = [sayNumber(least, 0), sayNumber(most, 0)];
  return `Breathe ${from === to ? from : `${from} to ${to}`} s before ${before}.`;
}

function visitedIn(rows: readonly PacingRow[]): readonly Visited[] {
  const work = rows.filter((row) => row.kind === "work" && row.amount > 0);
  return [...new Set(work.map((row) => row.name))].map((name) => ({
    name,
    rows: work.filter((row) => row.name === name),
  }));
}

/** Nobody gets their breath back with something in the hands. */
const isHeld = (rows: readonly PacingRow[]): boolean => rows.some(({ load }) => load !== undefined);

const timeOf = ({ rows }: Visited): number => rows.reduce((sum, row) => sum + row.end - row.start, 0);

const pluralFor = ({ name, rows: [first] }: Visited): string => (first ? nameFor(first, 2) : name);

/** How the movements are done; where several are broken up, their largest sets are told together. */
function clausesFor(visited: readonly Visited[]): readonly string[] {
  const limits = visited.map(({ rows }) => largestSet(rows));
  const isTogether = limits.filter((most) => most !== undefined).length > 1;
  if (!isTogether) return visited.map((each) => clauseFor(each));
  const sets = visited.flatMap((each, at) => {
    const most = limits[at];
    return most === undefined ? [] : [`${sayNumber(most, 0)} ${pluralFor(each)}`];
  });
  return [
    `sets of ${sayList(sets, "and")} at the most`,
    ...visited.filter((_, at) => limits[at] === undefined).map((each) => clauseFor(each)),
  ];
}

/** The largest set of reps that are broken up wherever they are more, where most are no singles. */
function largestSet(rows: readonly PacingRow[]): number | undefined {
  if (rows[0]?.displayed || rows[0]?.unit !== "reps") return undefined;
  const broken = rows.filter((row) => row.sets.length > 1);
  const amounts = broken.flatMap((row) => row.sets.map((set) => set.amount));
  const most = Math.max(0, ...amounts);
  if (rows.some((row) => !broken.includes(row) && row.amount > most)) return undefined;
  return most <= 1 || amounts.filter((amount) => amount <= 1).length * 2 > amounts.length ? undefined : most;
}

/** How a movement is done: a machine or a way at its pace, the limiter and what is never broken at its seconds a rep, the rest in its sets. */
function clauseFor(visited: Visited): string {
  const { rows } = visited;
  const [first] = rows;
  if (first === undefined) return "";
  const pace = sayRowPace(middleOf(rows));
  const what = pluralFor(visited);
  const sets = rows.flatMap((row) => row.sets.map((set) => set.amount));
  const largest = Math.max(...sets);
  const broken = rows.filter((row) => row.sets.length > 1);
  if (first.displayed) return pace === undefined ? what : `${what} at ${pace}`;
  if (broken.length > 0)
    return first.unit === "reps" ? `${what} ${saySplit(rows)}` : `${what} with the planned stops`;
  if (first.unit !== "reps" || largest <= 1) return pace === undefined ? what : `${what} at ${pace}`;
  return pace === undefined ? `${what} in one go` : `${what} in one go at ${pace}`;
}

/** How reps are broken up: singles where most sets are, the largest set else; a first visit that is not broken up is told apart. */
function saySplit(rows: readonly PacingRow[]): string {
  const broken = rows.filter((row) => row.sets.length > 1);
  const amounts = broken.flatMap((row) => row.sets.map((set) => set.amount));
  if (amounts.filter((amount) => amount <= 1).length * 2 > amounts.length) {
    return Math.max(...amounts) <= 1 && broken.length === rows.length
      ? "one at a time"
      : "mostly one at a time";
  }
  const largest = Math.max(...amounts);
  const isWithin = (row: PacingRow): boolean => row.sets.length > 1 || row.amount <= largest;
  // A first visit within the largest set is no exception from it.
  const whole = Math.max(0, rows.findIndex(isWithin));
  const often = rows.slice(whole).every(isWithin) ? "never" : "mostly not";
  const most = `${often} more than ${sayNumber(largest, 0)} in a set`;
  if (whole === 0) return most;
  return `${whole === 1 ? "the first time" : `the first ${sayNumber(whole, 0)} times`} in one go, then ${most}`;
}

/** The visit in the middle: neither the fresh first nor a finish. */
const middleOf = (rows: readonly PacingRow[]): PacingRow =>
  rows[Math.floor((rows.length - 1) / 2)] as PacingRow;

/** Beyond this share of the reps or the time half of the work comes late, and under it early. */
const LATE = 0.53;
const EARLY = 0.47;

/**
 * Where half of the work lies, where the athlete looks: the round, the movement, the rep in it and the clock. It is said that it
 * comes late or early only where it does. `clock` is the one that is read. Nothing for one visit, where the middle is the middle.
 */
export function sayHalf(pacing: Pacing, clock: string): string | undefined {
  const { half } = pacing;
  // Between two intervals there is a rest, and behind a wall nobody knows what follows: the half says nothing.
  if (pacing.intervals !== undefined || pacing.whenStopped?.atWall) return undefined;
  const row = half && pacing.rows.find(({ index }) => index === half.row);
  if (half === undefined || row === undefined || pacing.rows.filter(({ kind }) => kind === "work").length < 2)
    return undefined;
  const round = sayRoundOf(pacing, row.round);
  // A round that is named tells its visits apart from those of others.
  const among = round === undefined ? pacing.rows : pacing.rows.filter((other) => other.round === row.round);
  const where = `${round === undefined ? "" : `${round}, in `}${placeIn(row, pacing, half.shareOfReps, among)}, at ${clock}`;
  if (Math.max(half.shareOfReps, half.shareOfTime) > LATE) {
    return `Half of your work lies behind you only in ${where}.`;
  }
  return Math.max(half.shareOfReps, half.shareOfTime) < EARLY
    ? `Half of your work is done early: in ${where}.`
    : `Half of your work is done in ${where}.`;
}

/** The place inside a visit: the rep for reps, the movement alone for a way or a machine. */
function placeIn(row: PacingRow, { rows }: Pacing, share: number, among: Pacing["rows"]): string {
  const before = rows.findLast(({ index }) => index < row.index)?.shareOfReps ?? 0;
  const through = row.shareOfReps > before ? (share - before) / (row.shareOfReps - before) : 0;
  const rep = Math.round(through * row.amount);
  if (row.unit !== "reps" || rep < 1 || row.amount < FEW_REPS) return `the ${sayVisit(row, among)}`;
  return `the ${sayVisit(row, among)} at rep ${sayNumber(rep, 0)} of ${sayNumber(row.amount, 0)}`;
}

/** Of fewer reps the one in the middle need not be told. */
const FEW_REPS = 10;
