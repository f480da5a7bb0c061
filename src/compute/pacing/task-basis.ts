import type { PacedPart } from "./paced-part.ts";
import type { Track } from "../motion/track.ts";

/** What the paces rest on, one entry per movement in the order of the work. */
export function basisOf({ tasks }: Track): (PacedPart & { kind: "paced" })["basis"] {
  const seen = new Set<string>();
  return tasks.flatMap(({ movement, capacity }) => {
    if (seen.has(movement.id)) return [];
    seen.add(movement.id);
    const { basis: kind, from, error } = capacity;
    return [{ movement: movement.id, name: movement.name, kind, from, error }];
  });
}
