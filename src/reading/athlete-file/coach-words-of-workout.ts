import * as z from "zod";
import type { CoachWordFor } from "../../models/coach-word.ts";
import type { Checked } from "../../models/fault.ts";
import type { Movement } from "../../models/movement.ts";
import { listField } from "../fields/list-field.ts";
import { nameField } from "../fields/text-field.ts";
import { choicesOf } from "../names/choices-of.ts";
import { movementFinder } from "../names/find-movement.ts";
import type { OpenedYaml } from "../yaml/open-yaml.ts";
import { checkOpened } from "../yaml/read.ts";
import { coachWordFields, coachWordOf, type WordContext } from "./coach-word-entries.ts";

/** One entry of what a coach sets in a workout: for whom, and what. */
export const coachWordOfWorkout = (context: WordContext) =>
  z
    .strictObject({
      for: nameField.describe("`everyone`, a level, or the name of an athlete's file"),
      ...coachWordFields(context),
    })
    .transform(({ for: who, ...written }): CoachWordFor => ({
      ...coachWordOf(written),
      for: who.trim().toLowerCase(),
    }));

/** Reads what the coach sets in a workout's file, with the movements at hand; nothing where nothing is set. */
export function readCoachWords(
  opened: OpenedYaml,
  movements: ReadonlyMap<string, Movement>,
): Checked<readonly CoachWordFor[]> {
  const written = z.record(z.string(), z.unknown()).safeParse(opened.value).data?.["coach sets"];
  if (written === undefined) return { ok: true, value: [], notices: [] };
  const context: WordContext = { findMovement: movementFinder(movements), choices: choicesOf(movements) };
  const schema = z.looseObject({ "coach sets": listField(coachWordOfWorkout(context)) });
  const read = checkOpened(opened, schema);
  return read.ok ? { ...read, value: read.value["coach sets"] } : read;
}
