import type { RoundDetail } from "./round-lines.ts";

/** How much the upper half shows: sets, rounds, how many notes (or the essential ones), the height of the tape in millimetres. */
export type Fullness = {
  readonly sets: "beside" | "lines" | "none";
  readonly every: RoundDetail["every"];
  readonly notes: number | "essential";
  readonly tape: number;
  /** One column: what each round is made of beside the clocks, what to do after a miss as large as the load; else columns. */
  readonly wide?: boolean;
  /** Heads of columns smaller than the figures, where the page has no room for them. */
  readonly smallHeads?: boolean;
  /** Thresholds smaller than the figures, where the warm-up would find no room below. */
  readonly smallNotes?: boolean;
  /** Only the first attempt of each lift, where they would stand too large. */
  readonly opener?: boolean;
};

/**
 * What the upper half shows, from the fullest to the barest: notes go and the tape grows thinner, then sets move from
 * beside the clocks into a line of their own, then the tape goes, then only the checkpoints stay, last only a few of
 * these. Key figures are never made smaller.
 */
export const WIDE: readonly Fullness[] = [
  { wide: true, sets: "beside", every: "row", notes: 8, tape: 13 },
  { wide: true, sets: "beside", every: "row", notes: 5, tape: 9 },
  { wide: true, sets: "beside", every: "row", notes: "essential", tape: 8.2 },
  { wide: true, sets: "beside", every: "row", notes: "essential", tape: 4.5 },
  { wide: true, smallHeads: true, sets: "beside", every: "row", notes: "essential", tape: 4.5 },
  {
    wide: true,
    smallHeads: true,
    smallNotes: true,
    sets: "beside",
    every: "row",
    notes: "essential",
    tape: 4.5,
  },
];

/** The same in columns, where one is not enough. */
export const CONCESSIONS: readonly Fullness[] = [
  { sets: "beside", every: "row", notes: 8, tape: 13 },
  { sets: "beside", every: "row", notes: 5, tape: 11 },
  { sets: "beside", every: "row", notes: 3, tape: 9 },
  { sets: "beside", every: "row", notes: "essential", tape: 9 },
  { sets: "beside", every: "row", notes: "essential", tape: 6 },
  { sets: "lines", every: "row", notes: 5, tape: 11 },
  { sets: "lines", every: "row", notes: 3, tape: 9 },
  { sets: "lines", every: "row", notes: "essential", tape: 6 },
  { sets: "beside", every: "row", notes: "essential", tape: 0 },
  { sets: "lines", every: "row", notes: "essential", tape: 0 },
  { sets: "lines", every: "checkpoint", notes: 4, tape: 9 },
  { sets: "lines", every: "checkpoint", notes: "essential", tape: 6 },
  { sets: "lines", every: "checkpoint", notes: "essential", tape: 0 },
  { sets: "none", every: "checkpoint", notes: 1, tape: 0 },
  { sets: "none", every: "few", notes: 1, tape: 0 },
];

/** What is still shown where a sheet is read from so far away that not even a few checkpoints fit a whole page. */
export const FAR_CONCESSIONS: readonly Fullness[] = [
  { sets: "none", every: "few", notes: 0, tape: 0 },
  { sets: "none", every: "last", notes: 0, tape: 0 },
  { sets: "none", every: "last", notes: 0, tape: 0, opener: true },
];

/** Growth tried where there is room to spare, largest first. */
export const GROWTH: readonly number[] = [1.7, 1.55, 1.4, 1.3, 1.2, 1.1, 1];
