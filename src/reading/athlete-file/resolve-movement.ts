import type * as z from "zod";
import type { FindMovement, FoundMovement } from "../names/find-movement.ts";
import { tellNotice, tellRefusal } from "../yaml/refuse.ts";

type Spot = { readonly path: readonly PropertyKey[]; readonly at?: "name" };
type Found = FoundMovement & { readonly kind: "found" };

/**
 * The movement a person named, or nothing once the fault is told: unknown with the nearest name, or one of several. A
 * name as sheets head it (`C&J`) is taken and told.
 */
export function resolveMovement(
  ctx: z.RefinementCtx,
  find: FindMovement,
  written: string,
  spot: Spot,
  /** The text to be read in place of the whole, where the name is only a piece of it. */
  readAs?: (name: string) => string,
): Found | undefined {
  const found = find(written);
  if (found.kind === "either") {
    const names = found.movements.map((movement) => `\`${movement.name}\``);
    tellRefusal(ctx, {
      ...spot,
      found: written,
      severity: "question",
      problem: "this name can stand for more than one movement, or for one with something",
      allowed: MOVEMENTS,
      remedy: `Write ${names.join(" or ")}, whichever is meant.`,
    });
    return undefined;
  }
  if (found.kind === "none") {
    const { nearest } = found;
    tellRefusal(ctx, {
      ...spot,
      found: written,
      problem: "no movement has this name",
      allowed: MOVEMENTS,
      nearest,
      remedy:
        nearest === undefined
          ? "Look the name up in content/movements, or describe the movement there in a file of its own."
          : `Write \`${nearest}\`, or describe the movement in content/movements in a file of its own.`,
    });
    return undefined;
  }
  if (found.bySpelling) {
    const { label, movement } = found;
    const { name } = movement;
    const withLabel = `${name}${label.reps === undefined ? "" : ` ${label.reps}RM`}${label.unit === undefined ? "" : ` (${label.unit})`}`;
    tellNotice(ctx, {
      ...spot,
      found: written,
      problem: `read as ${name}`,
      readAs: readAs?.(name) ?? withLabel,
      remedy: `Write \`${withLabel}\` to be sure, or correct it here if something else is meant.`,
    });
  }
  return found;
}

const MOVEMENTS = "a movement of content/movements, by its name, its plural or one of its other names";
