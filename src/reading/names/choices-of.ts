import type { Movement } from "../../models/movement.ts";

/** Ids and names of the options of each choice, by the choice's id. */
type Choices = ReadonlyMap<string, readonly { readonly id: string; readonly name: string }[]>;

/** The choices movements offer; one that several offer has the options of all of them. */
export function choicesOf(movements: ReadonlyMap<string, Movement>): Choices {
  const choices = new Map<string, { readonly id: string; readonly name: string }[]>();
  for (const movement of movements.values()) {
    for (const { id, options } of movement.choices) {
      const known = choices.get(id) ?? [];
      choices.set(id, [
        ...known,
        ...options.filter((option) => known.every((other) => other.id !== option.id)),
      ]);
    }
  }
  return choices;
}
