import * as z from "zod";
import type { Limit } from "../../models/athlete.ts";
import { readDate } from "../quantities/date.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { listField } from "../fields/list-field.ts";
import { tellReading } from "../fields/take-reading.ts";
import { textField } from "../fields/text-field.ts";
import { spaced, wordField, wordOf, type Synonyms } from "../fields/word-field.ts";
import {
  CONDITIONS,
  JOINTS,
  STRESSES,
  type Condition,
  type Joint,
  type Stress,
} from "../../models/vocabulary.ts";
import type { AthleteContext } from "./context.ts";
import { CONDITION_WORDS, JOINT_WORDS, STRESS_WORDS, wordsIn } from "./limit-words.ts";
import { resolveMovement } from "./resolve-movement.ts";

const CONDITION_SYNONYMS: Synonyms<Condition> = {
  pregnant: "pregnancy",
  postpartum: "after-birth",
  "post partum": "after-birth",
  postnatal: "after-birth",
  hypertension: "high-blood-pressure",
  asthmatic: "asthma",
  diabetic: "diabetes",
  epileptic: "epilepsy",
  rhabdo: "past-rhabdomyolysis",
  rhabdomyolysis: "past-rhabdomyolysis",
  "heat stroke": "past-heat-illness",
  doctor: "advised-by-doctor",
  ill: "recent-illness",
};

const STRESS_SYNONYMS: Synonyms<Stress> = {
  kip: "kipping",
  jumping: "impact",
  jumps: "impact",
  running: "impact",
  squatting: "deep-knee-bend",
  deadlifts: "loaded-hinge",
  handstand: "upside-down",
  handstands: "upside-down",
  inversion: "upside-down",
  max: "maximal-lift",
  heavy: "maximal-lift",
};

const limitObject = z.strictObject({
  joint: wordField(JOINTS)
    .optional()
    .describe(`the joint concerned: ${JOINTS.join(", ")}`),
  condition: wordField(CONDITIONS, CONDITION_SYNONYMS)
    .optional()
    .describe(`a condition of the whole body: ${CONDITIONS.map(spaced).join(", ")}`),
  avoid: listField(wordField(STRESSES, STRESS_SYNONYMS), { split: true })
    .optional()
    .describe(
      `what to keep away from: ${STRESSES.map(spaced).join(", ")}; \`none\` where nothing is to be left out`,
    ),
  without: listField(z.string(), { split: true }).optional().describe("movements to keep away from, by name"),
  cleared: listField(z.string(), { split: true })
    .optional()
    .describe("movements that are cleared all the same, by name: `[strict pull-up]`; they stand in first"),
  until: z.string().nullable().optional().describe("the day the limit ends, such as `2026-12-31`"),
  note: textField.optional().describe("your own words, shown on the brief and never interpreted"),
});

export const writtenLimits = listField(z.union([z.string(), limitObject])).describe(
  "what the athlete must not or should not do: `{joint: shoulder, avoid: [kipping], until: 2026-12-31, note: ...}`, or one word such as `pregnancy`; `none` where nothing limits",
);

/** Reads the limits. Words alone change no plan, so they are asked about where they name something to keep away from. */
export function readLimits(
  written: z.output<typeof writtenLimits>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): readonly Limit[] {
  return written.flatMap((entry, index) => {
    const limit =
      typeof entry === "string" ? readText(entry, index, ctx) : readObject(entry, index, ctx, context);
    return limit === undefined ? [] : [limit];
  });
}

function readObject(
  entry: z.output<typeof limitObject>,
  index: number,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): Limit {
  const { joint, condition, avoid, without, cleared, until, note } = entry;
  const idsOf = (names: readonly string[] | undefined, key: "without" | "cleared"): readonly string[] =>
    (names ?? []).flatMap((name, at) => {
      const found = resolveMovement(ctx, context.findMovement, name, { path: [index, key, at] });
      return found ? [found.movement.id] : [];
    });
  const ids = idsOf(without, "without");
  const clearedIds = idsOf(cleared, "cleared");
  const day = until === undefined || until === null ? undefined : readDate(until, context.dates);
  if (day) tellReading(ctx, day, { path: [index, "until"] });
  const settled = condition !== undefined || (without ?? []).length > 0;
  if (avoid === undefined && (!settled || wordsIn(STRESS_WORDS, note ?? "").length > 0)) {
    askWhatToAvoid(note ?? "", joint, index, ctx);
  }
  return {
    ...(joint === undefined ? {} : { joint }),
    ...(condition === undefined ? {} : { condition }),
    avoid: avoid ?? [],
    without: ids,
    ...(clearedIds.length === 0 ? {} : { cleared: clearedIds }),
    ...(note === undefined ? {} : { note }),
    ...(day?.ok === true ? { until: day.value } : {}),
  };
}

/** One word of the lists is a limit by itself; free words are kept as a note and asked about. */
function readText(text: string, index: number, ctx: z.RefinementCtx): Limit | undefined {
  const note = text.normalize("NFC").trim();
  const condition = wordOf(CONDITIONS, note);
  if (condition) return { condition, avoid: [], without: [] };
  const stress = wordOf(STRESSES, note.replace(/^no /i, ""));
  if (stress) return { avoid: [stress], without: [] };
  askWhatToAvoid(note, undefined, index, ctx);
  return undefined;
}

function askWhatToAvoid(note: string, joint: Joint | undefined, index: number, ctx: z.RefinementCtx): void {
  const subject = joint === undefined ? note : `${joint}: ${note}`;
  tellRefusal(ctx, {
    path: [index],
    severity: "question",
    problem: "words alone leave nothing out of a plan, and a plan must not go against them",
    allowed: `\`avoid\` with any of ${STRESSES.map(spaced).join(", ")}, or \`without\` with names of movements`,
    remedy: `Write \`${proposeLimit(subject, note)}\`, with \`avoid: none\` if nothing is to be left out.`,
  });
}

/** A limit in full, from the words of a note, for somebody to correct. */
export function proposeLimit(text: string, note: string): string {
  const [joint] = wordsIn(JOINT_WORDS, text);
  const [condition] = wordsIn(CONDITION_WORDS, text);
  const stresses = wordsIn(STRESS_WORDS, text).map(spaced);
  const parts = [
    joint === undefined ? undefined : `joint: ${joint}`,
    joint === undefined && condition !== undefined ? `condition: ${spaced(condition)}` : undefined,
    `avoid: [${stresses.length > 0 ? stresses.join(", ") : "..."}]`,
    note === "" ? undefined : `note: "${note.replaceAll('"', "'")}"`,
  ];
  return `{${parts.filter((part) => part !== undefined).join(", ")}}`;
}
