import * as z from "zod";
import type { CoachWord, PaceWord, SetsWord } from "../../models/coach-word.ts";
import { warmUpField } from "../fields/bounded-field.ts";
import {
  attemptsField,
  heaviestField,
  liftRestField,
  openerField,
  stepField,
} from "../fields/lift-word-fields.ts";
import { listField } from "../fields/list-field.ts";
import { takeReading, tellReading } from "../fields/take-reading.ts";
import { textField } from "../fields/text-field.ts";
import { readSetsPhrase } from "../quantities/sets-phrase.ts";
import { readMachinePace } from "../quantities/machine-pace.ts";
import { inPart, readTarget } from "../quantities/target.ts";
import { readTime } from "../quantities/time.ts";
import type { AthleteContext } from "./context.ts";
import { readPreferences, writtenPreferences } from "./preference-entries.ts";
import { resolveMovement } from "./resolve-movement.ts";

/** What names in a coach's word are looked up in. */
export type WordContext = Pick<AthleteContext, "findMovement" | "choices">;

const byMovement = z.record(z.string(), listField(z.string(), { split: true }));

/** What a coach may set for an athlete in a workout. */
export const coachWordFields = (context: WordContext) => ({
  target: z
    .string()
    .transform((text, ctx) => takeReading(ctx, readTarget(text)))
    .optional()
    .describe("what to aim at: `8:00`, `190 reps`, `7 rounds 12 reps`, `100 kg`; `8:00 in part a`"),
  "first round": z
    .string()
    .transform((text, ctx) => takeReading(ctx, inPart(text, readTime)))
    .optional()
    .describe("the first round is not done faster than this: `1:35`"),
  sets: byMovement
    .transform((written, ctx) => readSets(written, ctx, context))
    .optional()
    .describe(
      "sets of a movement: `{pull-up: 5-5-5}`, `{push press: 7-7 in round 2}`, `{thruster: 5}` for fives",
    ),
  "rest between sets": z
    .record(z.string(), z.string())
    .transform((written, ctx) => readRests(written, ctx, context))
    .optional()
    .describe("rest between two sets of a movement: `{pull-up: 8 s}`"),
  pace: z
    .record(z.string(), z.string())
    .transform((written, ctx) => readPaces(written, ctx, context))
    .optional()
    .describe("pace of a machine or a run: `{row: 1:52 per 500 m, air bike: 1100 cal/h, run: 4:30 per km}`"),
  "open with": openerField.optional().describe("the load of the first attempt: `80 kg`"),
  "up by": stepField.optional().describe("from a made load to the next: `5 kg`; needs `open with`"),
  heaviest: heaviestField.optional().describe("no attempt is heavier than this: `90 kg`"),
  lifts: attemptsField.optional().describe("how many attempts, at most: `3`"),
  "rest between lifts": liftRestField.optional().describe("the shortest rest between two attempts: `1:30`"),
  "first lift after": liftRestField
    .optional()
    .describe("the rest before the first attempt, whatever breath asks for: `2:30`"),
  version: writtenPreferences
    .transform((written, ctx) => readPreferences(written, ctx, context))
    .optional()
    .describe("the version of a movement, by the choice it offers: `{pull-up style: strict}`"),
  "warm up": warmUpField.optional().describe("time for warming up: `25 min`"),
  say: textField.optional().describe("a sentence of yours, shown at the top of the brief"),
});

type Written = z.output<z.ZodObject<ReturnType<typeof coachWordFields>>>;

/** The word as the computation takes it. */
export function coachWordOf(written: Written): CoachWord {
  const sets = [...(written.sets ?? []), ...(written["rest between sets"] ?? [])];
  return {
    ...(written.target === undefined ? {} : { target: written.target }),
    ...(written["first round"] === undefined ? {} : { firstRound: written["first round"] }),
    ...(sets.length === 0 ? {} : { sets }),
    ...(written.pace === undefined ? {} : { paces: written.pace }),
    ...(written["open with"] === undefined ? {} : { opener: written["open with"] }),
    ...(written["up by"] === undefined ? {} : { jump: written["up by"] }),
    ...(written.heaviest === undefined ? {} : { heaviest: written.heaviest }),
    ...(written.lifts === undefined ? {} : { lifts: written.lifts }),
    ...(written["rest between lifts"] === undefined ? {} : { liftRest: written["rest between lifts"] }),
    ...(written["first lift after"] === undefined ? {} : { firstLiftAfter: written["first lift after"] }),
    ...(written.version === undefined ? {} : { prefers: written.version }),
    ...(written["warm up"] === undefined ? {} : { warmUp: written["warm up"] }),
    ...(written.say === undefined ? {} : { say: written.say }),
  };
}

function readSets(
  written: z.output<typeof byMovement>,
  ctx: z.RefinementCtx,
  { findMovement }: WordContext,
): readonly SetsWord[] {
  return Object.entries(written).flatMap(([name, phrases]) => {
    const movement = resolveMovement(ctx, findMovement, name, { path: [name], at: "name" })?.movement.id;
    return phrases.flatMap((phrase): readonly SetsWord[] => {
      const sets = readSetsPhrase(phrase);
      tellReading(ctx, sets, { path: [name], found: phrase });
      return sets.ok && movement !== undefined ? [{ movement, ...sets.value }] : [];
    });
  });
}

function readRests(
  written: Readonly<Record<string, string>>,
  ctx: z.RefinementCtx,
  { findMovement }: WordContext,
): readonly SetsWord[] {
  return Object.entries(written).flatMap(([name, text]): readonly SetsWord[] => {
    const movement = resolveMovement(ctx, findMovement, name, { path: [name], at: "name" })?.movement.id;
    const rest = readTime(text);
    tellReading(ctx, rest, { path: [name] });
    return rest.ok && movement !== undefined ? [{ movement, rest: rest.value }] : [];
  });
}

function readPaces(
  written: Readonly<Record<string, string>>,
  ctx: z.RefinementCtx,
  { findMovement }: WordContext,
): readonly PaceWord[] {
  return Object.entries(written).flatMap(([name, text]): readonly PaceWord[] => {
    const movement = resolveMovement(ctx, findMovement, name, { path: [name], at: "name" })?.movement.id;
    const pace = readMachinePace(text);
    tellReading(ctx, pace, { path: [name] });
    return pace.ok && movement !== undefined ? [{ movement, ...pace.value }] : [];
  });
}
