import { mkdirSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { SETTABLE } from "../compute/model-tables.ts";
import { athleteSchema } from "../reading/athlete-file/athlete-schema.ts";
import { bandSchema } from "../reading/athlete-file/band-schema.ts";
import { coachWordOfWorkout } from "../reading/athlete-file/coach-words-of-workout.ts";
import type { AthleteContext } from "../reading/athlete-file/context.ts";
import { LEVELS, RECOVERIES } from "../models/vocabulary.ts";
import { MASS_UNITS } from "../models/quantity.ts";
import { workoutSchema } from "../reading/notation/workout-schema.ts";
import type { FilesRead } from "../reading/read-data.ts";
import { competitionSchema } from "../reading/schemas/competition-schema.ts";
import { gymSchema } from "../reading/schemas/gym-schema.ts";
import { cautionSchema, recoverySchema, warmUpSchema } from "../reading/schemas/library-schema.ts";
import { movementSchema } from "../reading/schemas/movement-schema.ts";
import { settingsSchema } from "../reading/schemas/settings-schema.ts";
import { forEditors, type JsonSchema, withNames } from "./for-editors.ts";
import { OWN_FOLDER, prepareOwnFolder } from "./secret.ts";
import { writeSafely } from "./write-safely.ts";

/** Kinds of files people write, as their schemas are called. */
export const SCHEMA_KINDS = [
  "athlete",
  "workout",
  "gym",
  "competition",
  "band",
  "settings",
  "movement",
  "warm-up",
  "recovery",
  "caution",
] as const;
export type SchemaKind = (typeof SCHEMA_KINDS)[number];

type Known = Pick<FilesRead, "read" | "context">;

/**
 * The JSON Schema (draft 2020-12) of every kind of file, with the names there are in this data folder. They are no stricter than
 * the reader, which takes more spellings than a schema can say; `npm run check` has the last word.
 */
export function editorSchemas({ read, context }: Known): Readonly<Record<SchemaKind, JsonSchema>> {
  const gyms = [...read.gyms.keys()];
  const made = (schema: z.ZodType): JsonSchema =>
    forEditors(z.toJSONSchema(schema, { io: "input", unrepresentable: "any" }) as JsonSchema);
  const movements = [...read.library.movements.values()].map(({ name }) => name).sort();
  const workouts = [...context.workouts.keys()];
  const word = made(coachWordOfWorkout(context));
  const profile = (schema: JsonSchema): JsonSchema =>
    withNames(schema, {
      values: { level: LEVELS, units: MASS_UNITS, recovery: RECOVERIES, gym: gyms, cannot: movements },
      keys: {
        lifts: movements,
        unbroken: movements,
        prefers: [...context.choices.keys()],
        starts: workouts,
        "coach sets": workouts,
      },
    });
  const band = made(bandSchema(context));
  return {
    athlete: profile(made(athleteSchema(context))),
    workout: withEntry(made(workoutSchema), "coach sets", {
      description: "what you set whatever the numbers say",
      anyOf: [word, { type: "array", items: word }],
    }),
    gym: made(gymSchema),
    competition: made(competitionSchema(context.findMovement)),
    band: withEntry(band, "profile", profile(band.properties?.["profile"] ?? {})),
    settings: withNames(made(settingsSchema(gyms, SETTABLE)), {
      values: { gym: gyms },
      keys: { overrides: [...SETTABLE.keys()] },
    }),
    movement: made(movementSchema),
    "warm-up": made(warmUpSchema),
    recovery: made(recoverySchema),
    caution: made(cautionSchema),
  };
}

const withEntry = (schema: JsonSchema, entry: string, value: JsonSchema): JsonSchema => ({
  ...schema,
  properties: { ...schema.properties, [entry]: value },
});

/** Writes the schemas into the data folder's own folder, where the first line of files names them. */
export function writeEditorSchemas(
  dataFolder: string,
  known: { readonly read: FilesRead["read"]; readonly context: AthleteContext },
): string {
  prepareOwnFolder(dataFolder);
  const folder = join(dataFolder, OWN_FOLDER, "schemas");
  mkdirSync(folder, { recursive: true });
  for (const [kind, schema] of Object.entries(editorSchemas(known)))
    writeSafely(join(folder, `${kind}.json`), `${JSON.stringify(schema, null, 1)}\n`);
  return folder;
}

/** The line that tells editors which schema a file has; `up` is the way from its folder to the data folder. */
export const schemaLine = (kind: SchemaKind, up: string): string =>
  `# yaml-language-server: $schema=${up}${OWN_FOLDER}/schemas/${kind}.json\n`;
