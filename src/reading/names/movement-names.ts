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
  const byForm = (name: string): Movement | undefined =>
    byName.get(comparable(name)) ?? bySingular.get(comparable(inSingular(name)));
  const long = new Map(
    [...bySingular].map(([, movement]) => [comparable(inSingular(movement.name)), movement]),
  );
  for (const movement of all)
    for (const alias of [movement.plural, ...movement.aliases]) {
      const key = comparable(inSingular(writtenOut(alias)));
      if (!long.has(key)) long.set(key, movement);
    }
  return (name) =>
    byForm(name) ?? (isShort(name) ? long.get(comparable(inSingular(writtenOut(name)))) : undefined);
}

/** Words of names as gyms shorten them, whole words only, longest first. */
const SHORT: readonly (readonly [RegExp, string])[] = [
  [/\bdbs?\b/giu, "dumbbell"],
  [/\bkbs?\b/giu, "kettlebell"],
  [/\bbb\b/giu, "barbell"],
  [/\b(?:mb|med ?ball|medball)\b/giu, "medicine ball"],
  [/\boh\b/giu, "overhead"],
  [/\bfr\b/giu, "front-rack"],
  [/\b(?:alt|altern)\b\.?/giu, "alternating"],
  [/\b(?:sa|one[- ]arm|1[- ]arm)\b/giu, "single-arm"],
  [/\b(?:c2b|ctb)\b/giu, "chest-to-bar"],
  [/\b(?:t2b|ttb)\b/giu, "toes-to-bar"],
  [/\b(?:k2e|kte)\b/giu, "knees-to-elbows"],
  [/\b(?:g2oh?|gtoh?)\b/giu, "ground-to-overhead"],
  [/\b(?:s2oh?|stoh?)\b/giu, "shoulder-to-overhead"],
  [/\bhr\b/giu, "hand-release"],
  [/\bhs\b/giu, "handstand"],
  [/\bhspus?\b/giu, "handstand push-up"],
];

const isShort = (name: string): boolean => SHORT.some(([short]) => name.search(short) >= 0);

/** A name without its shortenings: `SA DB OH lunge` is a single-arm dumbbell overhead lunge. */
const writtenOut = (name: string): string =>
  SHORT.reduce((text, [short, whole]) => text.replace(short, whole), name);

/** Every word without the ending of a plural: snatches, carries, burpees. Short words and those in -ss keep theirs. */
const inSingular = (name: string): string =>
  name
    .replace(/(?<=ch|sh|ss|x)es\b/giu, "")
    .replace(/(?<=\p{L}{2})ies\b/giu, "y")
    .replace(/(?<=\p{L}(?!s)\p{L})s\b/giu, "");

/** Every name a movement may be called by, for telling the nearest one. */
export function namesOfMovements(movements: ReadonlyMap<string, Movement>): readonly string[] {
  return [...movements.values()].flatMap((movement) => [movement.name, movement.plural, ...movement.aliases]);
}
