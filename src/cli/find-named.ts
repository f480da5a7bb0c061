import { nearestName } from "../models/nearest.ts";

/** What is asked for by its id, or a sentence with the nearest name and what there is. */
export function findNamed<T extends { readonly id: string }>(
  kind: string,
  id: string,
  among: readonly T[],
): { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string } {
  const found = among.find((each) => each.id === id);
  if (found !== undefined) return { ok: true, value: found };
  const names = among.map((each) => each.id);
  const nearest = nearestName(id, names);
  const known =
    names.length === 0
      ? `There is no ${kind} yet.`
      : `There ${names.length === 1 ? "is" : "are"}: ${names.join(", ")}.`;
  return {
    ok: false,
    message: `There is no ${kind} "${id}".${nearest === undefined ? "" : ` Did you mean "${nearest}"?`} ${known}`,
  };
}
