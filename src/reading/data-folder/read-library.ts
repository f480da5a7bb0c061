import type * as z from "zod";
import { idOfFile } from "../files/id-of-file.ts";
import type { Library } from "../../models/library.ts";
import type { Movement } from "../../models/movement.ts";
import type { SourceFile } from "../files/source-file.ts";
import { readFrontMatter } from "../yaml/read.ts";
import { cautionSchema, recoverySchema, warmUpSchema } from "../schemas/library-schema.ts";
import { movementSchema } from "../schemas/movement-schema.ts";
import { checkConditions } from "./check-conditions.ts";
import { checkLibrary } from "./check-library.ts";
import type { Collector } from "./collect.ts";
import type { SortedFiles } from "./sort-files.ts";

/** The library, and the ids of movements whose files have faults: they are there, but cannot be used. */
type ReadLibrary = { readonly library: Library; readonly broken: readonly string[] };

/** Reads movements, warm-up blocks, recovery options and cautions, and what they say of one another. */
export function readLibrary(files: SortedFiles["of"], collector: Collector): ReadLibrary {
  const movements = new Map<string, Movement>(readAll(files.movements, movementSchema, collector));
  const ids = files.movements.map(({ path }) => idOfFile(path));
  const library: Library = {
    movements,
    warmUps: readAll(files["warm-ups"], warmUpSchema, collector).map(([, block]) => block),
    recovery: readAll(files.recovery, recoverySchema, collector).map(([, option]) => option),
    cautions: readAll(files.cautions, cautionSchema, collector).map(([, entry]) => entry),
  };
  collector.faults.push(
    ...checkLibrary(library, new Set(ids), files),
    ...checkConditions(library, new Set(ids), files),
  );
  return { library, broken: ids.filter((id) => !movements.has(id)) };
}

function readAll<T extends object>(
  files: readonly SourceFile[],
  schema: z.ZodType<T>,
  collector: Collector,
): readonly (readonly [string, T & { readonly id: string }])[] {
  return files.flatMap((file) => {
    const value = collector.take(readFrontMatter(file, schema, { scalars: "text" }));
    const id = idOfFile(file.path);
    return value === undefined ? [] : [[id, { ...value, id }] as const];
  });
}
