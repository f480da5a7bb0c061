import { Option, type Command } from "commander";
import type { Data } from "../models/data.ts";
import { groupNamed, isInGroup } from "../site/groups.ts";
import type { Chosen } from "../site/plan-sheets.ts";
import { sayNone } from "./one-of.ts";

/** Options that say whose briefs are meant. */
export type ChoiceOptions = {
  readonly workout?: string;
  readonly gym?: string;
  readonly group?: string;
  readonly athletes?: string;
};

export const withChoice = (command: Command): Command =>
  command
    .addOption(new Option("--workout <id>", "only this workout, by its file or title"))
    .addOption(new Option("--gym <id>", "only athletes of this gym, by its file"))
    .addOption(new Option("--group <name>", "only athletes of this group, as their files call it"))
    .addOption(new Option("--athletes <ids>", "only these, by their files, with commas: a heat"));

/**
 * The workouts and athletes that are meant; all of them where nothing is said.
 *
 * @throws an Error that says which there are.
 */
export function chooseBriefs(data: Data, { workout, gym, group, athletes }: ChoiceOptions): Chosen {
  const workouts = data.workouts.filter(
    ({ id, title }) => workout === undefined || [id, title].some((own) => isSame(own, workout)),
  );
  if (workouts.length === 0)
    throw new Error(
      sayNone(
        "workout",
        workout ?? "",
        data.workouts.map(({ id }) => id),
      ),
    );
  const gyms = [...data.gyms.keys()];
  if (gym !== undefined && !gyms.some((id) => isSame(id, gym))) throw new Error(sayNone("gym", gym, gyms));
  const only = group === undefined ? undefined : groupNamed(group, data);
  const named = athletes?.split(",").map((id) => id.trim());
  const ids = data.athletes.map(({ id }) => id);
  const unknown = named?.find((one) => !ids.some((id) => isSame(id, one)));
  if (unknown !== undefined) throw new Error(sayNone("athlete", unknown, ids));
  return {
    workouts,
    athletes: data.athletes.filter(
      (one) =>
        (gym === undefined || isSame(one.gym ?? data.settings.gym ?? "", gym)) &&
        (only === undefined || isInGroup(one, only, data.settings)) &&
        (named === undefined || named.some((id) => isSame(id, one.id))),
    ),
  };
}

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
