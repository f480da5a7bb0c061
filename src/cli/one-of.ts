import { nearestName } from "../models/nearest.ts";

/**
 * The one of a name that was asked for, however it is written.
 *
 * @throws an Error that says which there are and which is nearest.
 */
export function oneOf<T extends { readonly id: string }>(what: string, asked: string, all: readonly T[]): T {
  const found = all.find(({ id }) => id.toLowerCase() === asked.toLowerCase());
  if (found) return found;
  const ids = all.map(({ id }) => id);
  const nearest = nearestName(asked, ids);
  const there = ids.length === 0 ? `There is no ${what} yet.` : `There are: ${ids.join(", ")}.`;
  throw new Error(
    `There is no ${what} "${asked}".${nearest === undefined ? "" : ` The nearest is "${nearest}".`} ${there}`,
  );
}
