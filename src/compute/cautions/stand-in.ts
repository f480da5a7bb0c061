import type { Movement } from "../../models/movement.ts";

/** A cleared movement that does the same work: of the same kind, with the same muscle taxed most. */
export function clearedInstead(
  id: string,
  cleared: ReadonlySet<string>,
  movements: ReadonlyMap<string, Movement>,
): Movement | undefined {
  const asked = movements.get(id);
  const found = [...cleared]
    .flatMap((each) => movements.get(each) ?? [])
    .find((each) => each.id !== id && each.kind === asked?.kind && mostTaxed(each) === mostTaxed(asked));
  return found;
}

const mostTaxed = ({ taxes }: Movement): string | undefined =>
  Object.entries(taxes).sort(([, one], [, other]) => other - one)[0]?.[0];

/** The nearest easier movement that is allowed: those listed first are nearer, and what is one step away before two. */
export function nearestAllowed(
  id: string,
  movements: ReadonlyMap<string, Movement>,
  allowed: (id: string) => boolean,
): Movement | undefined {
  const seen = new Set([id]);
  let ring = [id];
  while (ring.length > 0) {
    ring = ring
      .flatMap((each) => movements.get(each)?.easier ?? [])
      .filter((each) => !seen.has(each) && seen.add(each));
    const found = ring.find((each) => movements.has(each) && allowed(each));
    if (found !== undefined) return movements.get(found);
  }
  return undefined;
}
