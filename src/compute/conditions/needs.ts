import type { Movement } from "../../models/movement.ts";
import type { Equipment } from "../../models/vocabulary.ts";

/** What must stand ready for a movement: what its kind and its load ask for, and what it says itself. */
export function needsOf(movement: Movement): readonly Equipment[] {
  return [...new Set([...byKind(movement), ...(movement.needs ?? [])])];
}

function byKind({ kind, erg, loading }: Movement): readonly Equipment[] {
  if (erg !== undefined) return [erg];
  // A yoke is held as a bar is and is none.
  if (loading?.held === "bar") return kind === "carry" ? [] : ["barbell"];
  if (kind === "dumbbell" || kind === "kettlebell") return [kind];
  return [];
}
