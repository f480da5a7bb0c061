import { sayMissing } from "../wording/missing.ts";
import { unplannable } from "../compute/unplannable.ts";
import type { IsoDate } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import type { Fault } from "../models/fault.ts";

/** What the files allow and no plan can be made of, told at the part it belongs to, once for all divisions. */
export function faultsOfPlans(data: Data, date: IsoDate): readonly Fault[] {
  const told = new Map<string, { readonly fault: Fault; readonly divisions: string[] }>();
  for (const { workout, division, problem } of unplannable(data, date)) {
    const part = "part" in problem ? problem.part : undefined;
    const why = "part" in problem ? sayMissing(problem.missing, "kg") : problem.error;
    const place = workout.parts.find(({ name }) => name === part)?.place ?? workout.place;
    const key = `${workout.id} ${part ?? ""} ${why}`;
    const known = told.get(key);
    if (known) known.divisions.push(division);
    else
      told.set(key, {
        divisions: [division],
        fault: {
          place,
          found: workout.title,
          problem: `${part === undefined ? "this" : `part ${part}`} would not be planned: ${why}`,
          remedy: "Write the line in another unit, or say in the movement's file what is missing.",
          severity: "fault",
        },
      });
  }
  return [...told.values()].map(({ fault, divisions }) => ({
    ...fault,
    found: `${fault.found}: ${divisions.join(", ")}`,
  }));
}
