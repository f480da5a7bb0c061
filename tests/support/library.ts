import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type * as z from "zod";
import type { CautionEntry, Library, RecoveryOption, WarmUpBlock } from "../../src/models/library.ts";
import { readFrontMatter } from "../../src/reading/yaml/read.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { cautionSchema, recoverySchema, warmUpSchema } from "../../src/reading/schemas/library-schema.ts";
import { sampleMovements } from "./sample-movements.ts";

const content = fileURLToPath(new URL("../../content", import.meta.url));

/** Every entry of a folder of the library that comes with the tool, with its id; throws on the first faulty file. */
function readFolder<T>(folder: string, schema: z.ZodType<T>): readonly (T & { readonly id: string })[] {
  return readdirSync(`${content}/${folder}`)
    .filter((name) => name.endsWith(".mdx"))
    .sort()
    .map((name) => {
      const text = readFileSync(`${content}/${folder}/${name}`, "utf8");
      const read = readFrontMatter({ path: `content/${folder}/${name}`, text }, schema, { scalars: "text" });
      if (!read.ok) throw new Error(sayFaults(read.faults));
      return { id: name.replace(/\.mdx$/, ""), ...read.value };
    });
}

export const warmUps: readonly WarmUpBlock[] = readFolder("warm-ups", warmUpSchema);
export const recovery: readonly RecoveryOption[] = readFolder("recovery", recoverySchema);
export const cautions: readonly CautionEntry[] = readFolder("cautions", cautionSchema);

/** The library that comes with the tool, around the hand-made movements of the tests. */
export const sampleLibrary: Library = { movements: sampleMovements, warmUps, recovery, cautions };
