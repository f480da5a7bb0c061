import type { Passes } from "../../models/workout.ts";
import type { BlockClauses } from "./block-phrase.ts";

/** How often a block with these clauses is passed through; `inAll` is settled where the number of entries is known. */
export function passesOf(clauses: BlockClauses): Passes {
  const { ladder, rounds } = clauses;
  if (ladder !== undefined && "amounts" in ladder) return { kind: "ladder", amounts: ladder.amounts };
  if (ladder !== undefined && typeof rounds === "number") {
    const amounts = Array.from({ length: rounds }, (_, pass) => ladder.start + ladder.step * pass);
    return { kind: "ladder", amounts };
  }
  if (ladder !== undefined) return { kind: "open-ladder", ...ladder };
  if (typeof rounds === "number") return { kind: "rounds", count: rounds };
  const open =
    rounds === "open" ||
    clauses.lasts !== undefined ||
    clauses.every !== undefined ||
    clauses.on !== undefined;
  return open ? { kind: "open-rounds" } : { kind: "once" };
}
