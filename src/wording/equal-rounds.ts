import type { PartPlan } from "../models/plan/plan.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Round = Pacing["rounds"][number];
type Row = Pacing["rows"][number];

/** So many rounds in a row make a group; fewer are told one by one. */
const ENOUGH = 3;
/** Nobody tells apart rests this near, seconds, or rhythms this near, as a share. */
const SAME_REST = 2;
const SAME_RHYTHM = 0.05;

/** Neighbouring rounds gone about alike, in order; a round unlike its neighbours stands alone. */
export function equalRounds({
  rounds,
  rows,
}: Pick<Pacing, "rounds" | "rows">): readonly (readonly Round[])[] {
  const rowsOf = (round: Round): readonly Row[] => rows.filter((row) => row.round === round.round);
  const groups: Round[][] = [];
  for (const round of rounds) {
    const group = groups.at(-1);
    const [first] = group ?? [];
    if (group && first && areAlike(rowsOf(first), rowsOf(round))) group.push(round);
    else groups.push([round]);
  }
  return groups.flatMap((group) => (group.length < ENOUGH ? group.map((round) => [round]) : [group]));
}

const areAlike = (one: readonly Row[], other: readonly Row[]): boolean =>
  one.length === other.length && one.every((row, i) => isLike(row, other[i] as Row));

function isLike(one: Row, other: Row): boolean {
  if (one.kind !== other.kind || one.why !== other.why) return false;
  if (one.kind === "rest") return isNear(one.end - one.start, other.end - other.start);
  return (
    one.name === other.name &&
    one.amount === other.amount &&
    one.prescribed === other.prescribed &&
    one.load?.kilograms === other.load?.kilograms &&
    one.tieBreak === other.tieBreak &&
    isNear(one.breath, other.breath) &&
    one.sets.length === other.sets.length &&
    one.sets.every((set, i) => {
      const there = other.sets[i];
      return set.amount === there?.amount && isNear(set.restAfter, there.restAfter);
    }) &&
    Math.abs((other.secondsPerUnit ?? 1) / (one.secondsPerUnit ?? 1) - 1) <= SAME_RHYTHM
  );
}

const isNear = (one = 0, other = 0): boolean => Math.abs(one - other) <= SAME_REST;
