import type { Faults, NotationFault } from "./notation-fault.ts";

/** One value for each division, in the order of the workout; divisions that read a text alike share one. */
export type ByDivision<T> = readonly T[];

/** What was read, and whether nothing of it was refused: notices refuse nothing. */
export type Read<T> = { readonly value: T; readonly isWhole: boolean };

/** The same value for every division. */
export const forEverybody = <T>(divisions: readonly string[], value: T): ByDivision<T> =>
  divisions.map(() => value);

/** A value for each division, made once for all whose keys are the same values. */
export function byDivision<T>(
  divisions: readonly string[],
  keysOf: (index: number) => readonly unknown[],
  make: (index: number) => T,
): ByDivision<T> {
  const made: { readonly keys: readonly unknown[]; readonly value: T }[] = [];
  return divisions.map((_, index) => {
    const keys = keysOf(index);
    const known = made.find((one) => one.keys.every((key, at) => Object.is(key, keys[at])));
    if (known !== undefined) return known.value;
    const value = make(index);
    made.push({ keys, value });
    return value;
  });
}

/**
 * As byDivision, with the faults of each making. Of words that divisions read each in their own way, what is wrong for several
 * of them in the same way is one fault.
 */
export function readByDivision<T>(
  divisions: readonly string[],
  keysOf: (index: number) => readonly unknown[],
  faults: Faults,
  read: (index: number, faults: Faults) => T,
): ByDivision<Read<T>> {
  const told: NotationFault[] = [];
  const values = byDivision(divisions, keysOf, (index): Read<T> => {
    const own: Faults = [];
    const value = read(index, own);
    told.push(...own.filter((fault) => !told.some((other) => isSame(fault, other))));
    return { value, isWhole: own.every(({ severity }) => severity === "notice") };
  });
  faults.push(...told);
  return values;
}

const isSame = (one: NotationFault, other: NotationFault): boolean =>
  one.problem === other.problem &&
  one.found === other.found &&
  one.offset === other.offset &&
  one.source.isName === other.source.isName &&
  one.source.path.join("\n") === other.source.path.join("\n") &&
  one.place?.line === other.place?.line &&
  one.place?.column === other.place?.column;
