import type { CourseItem } from "../../models/course.ts";

/** What a round is to a reader: its number, or what it is beside the rounds that are counted. */
export type RoundName = { readonly label: string; readonly number?: number };

/** Lines beside the rounds, before the first of them, between two and after the last. */
const ASIDE = { before: "in", between: "mid", after: "out" } as const;

/**
 * What a reader calls each round of a part: rounds are counted from 1 without the lines that stand loose before, between and after
 * them. Where nothing but such lines is there, each is a round.
 */
export function roundNames(items: readonly (CourseItem | undefined)[]): ReadonlyMap<number, RoundName> {
  const efforts = items.filter((item) => item?.kind === "effort");
  const rounds = [...new Set(efforts.map(({ pass }) => pass.round))];
  const aside = new Set(efforts.flatMap(({ pass }) => (pass.aside ? [pass.round] : [])));
  const counted = rounds.filter((round) => !aside.has(round));
  if (counted.length === 0)
    return new Map(rounds.map((round) => [round, { label: `${round}`, number: round }]));
  const [first, last] = [Math.min(...counted), Math.max(...counted)];
  return new Map(
    rounds.map((round): [number, RoundName] => {
      if (!aside.has(round)) {
        const number = counted.indexOf(round) + 1;
        return [round, { label: `${number}`, number }];
      }
      return [round, { label: ASIDE[round < first ? "before" : round > last ? "after" : "between"] }];
    }),
  );
}
