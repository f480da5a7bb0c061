import type { Athlete } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import { nearestName } from "../models/nearest.ts";

/** Athletes looked after together: those of a gym, or those whose files name the group. */
export type Group = { readonly kind: "gym" | "group"; readonly id: string; readonly name: string };

type Given = Pick<Data, "athletes" | "gyms" | "settings">;

/** Every group, in the order of their names: those that files name, and the gyms where there is more than one. */
export function groupsOf({ athletes, gyms, settings }: Given): readonly Group[] {
  const named = new Map<string, Group>();
  for (const name of athletes.flatMap(({ groups = [] }) => groups)) {
    const id = name.toLowerCase();
    if (!named.has(id)) named.set(id, { kind: "group", id, name });
  }
  const own = new Set(athletes.map((athlete) => gymOf(athlete, settings)));
  const houses = [...own].flatMap((id): readonly Group[] => {
    const gym = id === undefined ? undefined : gyms.get(id);
    return gym === undefined ? [] : [{ kind: "gym", id: gym.id, name: gym.name }];
  });
  const all = [...named.values(), ...(own.size > 1 ? houses : [])];
  return all.toSorted((one, other) => (one.name < other.name ? -1 : one.name > other.name ? 1 : 0));
}

const gymOf = ({ gym }: Athlete, settings: Data["settings"]): string | undefined => gym ?? settings.gym;

/** Whether an athlete belongs to a group. */
export const isInGroup = (athlete: Athlete, { kind, id }: Group, settings: Data["settings"]): boolean =>
  kind === "gym"
    ? gymOf(athlete, settings) === id
    : (athlete.groups ?? []).some((name) => name.toLowerCase() === id);

/**
 * The group a person names by its id or name.
 *
 * @throws an Error that says which there are.
 */
export function groupNamed(asked: string, data: Given): Group {
  const groups = groupsOf(data);
  const wanted = asked.trim().toLowerCase();
  const found = groups.find(({ id, name }) => [id.toLowerCase(), name.toLowerCase()].includes(wanted));
  if (found) return found;
  const names = groups.map(({ name }) => name);
  const nearest = nearestName(asked, names);
  const near = nearest === undefined ? "" : ` The nearest is "${nearest}".`;
  const there =
    names.length === 0
      ? "Nobody's file names a group: write `group: evening` in it."
      : `There are: ${names.join(", ")}.`;
  throw new Error(`There is no group "${asked}".${near} ${there}`);
}
