import { readdirSync, readFileSync } from "node:fs";
import type { Fault } from "../../src/models/fault.ts";
import type { Movement } from "../../src/models/movement.ts";
import { readFrontMatter } from "../../src/reading/yaml/read.ts";
import { movementSchema } from "../../src/reading/schemas/movement-schema.ts";

const folder = new URL("../../content/movements/", import.meta.url);

export type MovementFiles = {
  readonly movements: ReadonlyMap<string, Movement>;
  readonly bodies: ReadonlyMap<string, string>;
  readonly faults: readonly Fault[];
};

/** Every movement of `content/movements/` as the tool reads it, with the advice below its front matter. */
export function readMovements(): MovementFiles {
  const movements = new Map<string, Movement>();
  const bodies = new Map<string, string>();
  const faults: Fault[] = [];
  for (const name of readdirSync(folder)
    .filter((file) => file.endsWith(".mdx"))
    .sort()) {
    const file = { path: `content/movements/${name}`, text: readFileSync(new URL(name, folder), "utf8") };
    const read = readFrontMatter(file, movementSchema, { scalars: "text" });
    const id = name.slice(0, -".mdx".length);
    if (read.ok) movements.set(id, { id, ...read.value });
    else faults.push(...read.faults);
    bodies.set(id, read.body.trim());
  }
  return { movements, bodies, faults };
}
