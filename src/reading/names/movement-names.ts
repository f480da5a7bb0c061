import { comparable } from "../../models/nearest.ts";
import type { Movement } from "../../models/movement.ts";

/**
 * Finds a movement by any of its names: id, name, plural or alias; blind to case, spaces, hyphens and other signs,
 * and to the s of a plural anywhere in the name (`burpees over the bar`).
 */
export type MovementByName = (name: string) => Movement | undefined;

/**
 * The finder of movements by name. Where two movements claim the same name, an id counts before a name, a name before
 * a plural, a plural before an alias, and then the earlier movement.
 */
export function movementByName(movements: ReadonlyMap<string, Movement>): MovementByName {
  const byName = new Map<string, Movement>();
  const bySingular = new Map<string, Movement>();
  const claim = (movement: Movement, name: string): void => {
    const key = comparable(name);
    if (key !== "" && !byName.has(key)) byName.set(key, movement);
    const singular = comparable(inSingular(name));
    if (singular !== "" && !bySingular.has(singular)) bySingular.set(singular, movement);
  };
  const all = [...movements.values()];
  for (const movement of all) claim(movement, movement.id);
  for (const movement of all) claim(movement, movement.name);
  for (const movement of all) claim(movement, movement.plural);
  for (const movement of all) for (const alias of movement.aliases) claim(movement, alias);
  return (name) => byName.get(comparable(name)) ?? bySingular.get(comparable(inSingular(name)));
}

/** Every word without the ending of a plural: snatches, carries, burpees. Short words and those in -ss keep theirs. */
const inSingular = (name: string): string =>
  name
    .replace(/(?<=ch|sh|ss|x)es\b/giu, "")
    .replace(/(?<=\p{L}{2})ies\b/giu, "y")
    .replace(/(?<=\p{L}{2}[^s])s\b/giu, "");

/** Every name a movement may be called by, for telling the nearest one. */
export function namesOfMovements(movements: ReadonlyMap<string, Movement>): readonly string[] {
  return [...movements.values()].flatMap((movement) => [movement.name, movement.plural, ...movement.aliases]);
}
