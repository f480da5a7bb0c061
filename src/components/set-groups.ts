import type { PartPlan } from "../models/plan/plan.ts";
import { saySameSets, saySets, setsAsWritten } from "../wording/sets.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Row = Pacing["rows"][number];

/** How a movement is broken up, neighbouring rounds of equal sets together. */
type SetGroups = {
  readonly name: string;
  readonly groups: readonly { readonly rounds: string; readonly sets: string }[];
};

/** Every movement that is broken somewhere, in the order of the work. */
export function setGroups({ rows, rounds }: Pacing): readonly SetGroups[] {
  const broken = rows.filter((row) => row.kind === "work" && row.sets.length > 1);
  const names = [...new Set(broken.map(({ name }) => name))];
  return names.map((name) => {
    const groups: {
      first: string;
      last: string;
      sets: string;
      visits: (readonly Row["sets"][number][])[][];
    }[] = [];
    for (const { round, label } of rounds) {
      const visits = rows.filter((row) => row.round === round && row.name === name).map(setsAsWritten);
      if (visits.length === 0) continue;
      const sets = visits.map(saySets).join(" / ");
      const group = groups.at(-1);
      if (group?.sets === sets) {
        group.last = label;
        group.visits.push(visits);
      } else groups.push({ first: label, last: label, sets, visits: [visits] });
    }
    return {
      name,
      groups: groups.map(({ first, last, visits }) => ({
        rounds: first === last ? first : `${first}–${last}`,
        sets: (visits[0] ?? [])
          .map((_, place) => saySameSets(visits.flatMap((own) => own.slice(place, place + 1))))
          .join(" / "),
      })),
    };
  });
}
