import { nearestName } from "../models/nearest.ts";

/**
 * The one of a name that was asked for, however it is written.
 *
 * @throws an Error that says which there are and which is nearest.
 */
export function oneOf<T extends { readonly id: string }>(what: string, asked: string, all: readonly T[]): T {
  const found = all.find(({ id }) => id.toLowerCase() === asked.toLowerCase());
  if (found) return found;
  throw new Error(
    sayNone(
      what,
      asked,
      all.map(({ id }) => id),
    ),
  );
}

/** That there is none of a name, which there are, and which is nearest. */
export function sayNone(what: string, asked: string, all: readonly string[]): string {
  const nearest = nearestName(asked, all);
  const there = all.length === 0 ? `There is no ${what} yet.` : `There are: ${all.join(", ")}.`;
  return `There is no ${what} "${asked}".${nearest === undefined ? "" : ` The nearest is "${nearest}".`} ${there}`;
}
