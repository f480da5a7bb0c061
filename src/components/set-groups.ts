import type { PartPlan } from "../models/plan/plan.ts";
import { saySetsAndRests } from "../wording/sets.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;

/** How a movement is broken up, neighbouring rounds of equal sets together. */
export type SetGroups = {
  readonly name: string;
  readonly groups: readonly { readonly rounds: string; readonly sets: string }[];
};

/** Every movement that is broken somewhere, in the order of the work. */
export function setGroups({ rows, rounds }: Pacing): readonly SetGroups[] {
  const broken = rows.filter((row) => row.kind === "work" && row.sets.length > 1);
  const names = [...new Set(broken.map(({ name }) => name))];
  return names.map((name) => {
    const groups: { first: string; last: string; sets: string }[] = [];
    for (const { round, label } of rounds) {
      const visits = rows.filter((row) => row.round === round && row.name === name);
      if (visits.length === 0) continue;
      const sets = visits.map((row) => saySetsAndRests(row.sets)).join(" / ");
      const group = groups.at(-1);
      if (group?.sets === sets) group.last = label;
      else groups.push({ first: label, last: label, sets });
    }
    return {
      name,
      groups: groups.map(({ first, last, sets }) => ({
        rounds: first === last ? first : `${first}–${last}`,
        sets,
      })),
    };
  });
}
