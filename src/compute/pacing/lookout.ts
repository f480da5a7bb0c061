import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Rules } from "../motion/rules.ts";
import type { Counting } from "./adding-up.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** Results nearer than this are one, in seconds or score units: both are told in whole ones. */
export const SAME_RESULT = 0.5;

type Round = Pacing["rounds"][number];

export type IfThen = Pacing["ifThen"][number];

/** Where to look, what to do there when behind, and what a day would bring whose form explains a difference. */
export type Lookout = {
  readonly row: PacingRow;
  readonly round: Round;
  /** Rounds after it. */
  readonly left: readonly Round[];
  /** Result as planned. */
  readonly target: number;
  /** Whether the result is a time. */
  readonly isTime: boolean;
  /** Whether what is gained there may be kept up. */
  readonly late: boolean;
  readonly smallerSets: IfThen["action"] | undefined;
  readonly counting: Counting;
  /** Result of a day of a form, relative to the expected one. */
  readonly resultAt: (form: number) => number;
};

/** The round before the one where it gets hard; where none does, the last that ends before it is late. A few rounds are left after it. */
export function roundToLookAt(
  rounds: Pacing["rounds"],
  hard: Pacing["hard"],
  { warningUntil, roundsLeft }: Rules,
): Round | undefined {
  if (rounds.length < 2) return undefined;
  const at = rounds.findIndex((round) => round.round === hard?.round);
  const end = rounds.at(-1)?.end ?? 0;
  const look = at >= 0 ? at - 1 : rounds.findLastIndex((round) => round.end <= warningUntil * end);
  const last = Math.max(0, rounds.length - 1 - Math.floor(roundsLeft));
  return rounds[Math.min(last, Math.max(0, look))];
}

/** Cutting the sets of the movement that limits (of any, without one), where it is still to come in sets of more than one. */
export function smallerSetsAfter(
  row: PacingRow,
  rows: readonly PacingRow[],
  limiter: string | undefined,
  { smallerSets }: Rules,
): IfThen["action"] | undefined {
  const isBroken = ({ kind, index, name, sets: [first, ...more] }: PacingRow): boolean =>
    kind === "work" &&
    index > row.index &&
    (limiter === undefined || name === limiter) &&
    more.length > 0 &&
    usualOf([first, ...more]) > smallerOf(first);
  const smallerOf = (first: Set | undefined): number =>
    Math.max(1, Math.floor((first?.amount ?? 1) * smallerSets));
  const broken = rows.find(isBroken);
  return (
    broken && {
      kind: "smaller-sets",
      movement: broken.movement ?? "",
      name: broken.name,
      amount: smallerOf(broken.sets[0]),
    }
  );
}

type Set = PacingRow["sets"][number];

/** The set in the middle of all by size: what is mostly done. */
const usualOf = (sets: readonly (Set | undefined)[]): number =>
  sets.flatMap((set) => set?.amount ?? []).toSorted((one, other) => one - other)[
    Math.floor(sets.length / 2)
  ] ?? 0;

/** Mean of what the rounds after are planned with; 0 without any. */
export const meanOf = (left: readonly Round[], value: (round: Round) => number): number =>
  left.reduce((sum, round) => sum + value(round), 0) / Math.max(1, left.length);

/** What comes so much later or sooner than planned, as a share of its clock, is a day of another form; never more than the other. Judgement. */
const ANOTHER_FORM = PACING_FIXED.anotherForm.value;

/** Seconds off the plan at which to act: at least so many, more where it is late. */
export const differenceAt = (row: PacingRow, least: number): number =>
  Math.min(row.end * ANOTHER_FORM.most, Math.max(least, Math.round(row.end * ANOTHER_FORM.least)));
