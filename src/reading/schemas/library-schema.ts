import * as z from "zod";
import {
  type CautionEntry,
  NUTRIENTS,
  type RecoveryOption,
  SESSION_SLOTS,
  WARM_UP_STAGES,
  type WarmUpBlock,
} from "../../models/library.ts";
import { readShare } from "../quantities/share.ts";
import { JOINTS, MUSCLES, STRESSES } from "../../models/vocabulary.ts";
import { conditionsField } from "../conditions/condition-schema.ts";
import { listField } from "../fields/list-field.ts";
import { countField, numberField, quantityField, timeField, yesNoField } from "../fields/quantity-field.ts";
import { textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

/** Entries of the library as their files say them; the id is the name of the file. */
type Written<T> = Omit<T, "id">;

const titleField = textField.describe("a few words, as they stand above the text");
const sayField = textField.describe(
  "what to do, to the athlete, in the second person; short enough to read aloud",
);
const sourceField = textField.describe(
  "what it rests on and how far that carries, so that others can check it",
);
const musclesField = listField(wordField(MUSCLES), { split: true }).default([]);
const jointsField = listField(wordField(JOINTS), { split: true }).default([]);
const stressesField = listField(wordField(STRESSES), { split: true })
  .default([])
  .describe("what it does to a body; with a stated limit on one of these it is left out");

/** A file of `content/warm-ups/`: one block a warm-up may pick. */
export const warmUpSchema = z
  .strictObject({
    title: titleField,
    stage: wordField(WARM_UP_STAGES).describe("where in the warm-up it belongs"),
    say: sayField,
    time: z
      .strictObject({ shortest: timeField, usual: timeField })
      .describe("how long it takes at the least, and with time at hand"),
    when: conditionsField,
    priority: countField.describe("1 is dropped last when time is short"),
    muscles: musclesField.describe("muscles it wakes up"),
    joints: jointsField.describe("joints it moves"),
    stresses: stressesField,
    "holds still": timeField
      .optional()
      .describe("longest stretch held still in it; long ones are not put before a lift"),
    "per movement": yesNoField
      .default(false)
      .describe(
        "offered once for each movement of the workout that meets its conditions; {amount} and {movement} stand for a few reps of it",
      ),
    source: sourceField,
  })
  .transform(
    ({ "holds still": holdsStill, "per movement": perMovement, ...block }): Written<WarmUpBlock> => ({
      ...block,
      ...(holdsStill !== undefined && { holdsStill }),
      perMovement,
    }),
  );

const workField = z
  .strictObject({
    movement: textField.transform(asId).describe("a movement by its id"),
    sets: countField,
    reps: countField,
    share: quantityField(readShare).optional().describe("of the athlete's best lift, such as 60%"),
    "set share": quantityField(readShare)
      .optional()
      .describe(
        "reps as a share of the athlete's best unbroken set, such as 40%; `reps` where none is known",
      ),
  })
  .transform(({ share, "set share": setShare, ...work }) => ({
    ...work,
    ...(share !== undefined && { share }),
    ...(setShare !== undefined && { setShare }),
  }))
  .describe("a lift with its load as a share of the athlete's best");

const amountField = z.strictObject({
  low: numberField,
  high: numberField,
  unit: z.enum(["g", "mL", "mg", "g/h", "g/day"]),
  of: wordField(NUTRIENTS).optional(),
});

/** A file of `content/recovery/`: something for the hours after a workout. */
export const recoverySchema = z
  .strictObject({
    title: titleField,
    kind: wordField(["cool-down", "refuel", "sleep", "same-day", "rest"] as const),
    say: sayField,
    less: textField.optional().describe("the same with less of it"),
    when: conditionsField,
    minutes: countField.optional(),
    slot: wordField(SESSION_SLOTS).optional().describe("where a piece of the same day belongs in a session"),
    effort: countField.optional().describe("how hard it may feel, out of ten"),
    keep: countField.optional().describe("1 is left out last when time is short"),
    "instead of": listField(textField.transform(asId), { split: true })
      .optional()
      .describe("options of the library that are left out where this one holds"),
    order: countField.optional().describe("place among the steps of its kind, 1 first"),
    muscles: musclesField.describe(
      "muscles it works; muscles that have just worked are left alone unless it is easy",
    ),
    stresses: stressesField,
    easy: yesNoField.default(false).describe("light enough for muscles that have just worked"),
    "per body mass": amountField.optional().describe("a range for each kilogram of body mass"),
    work: z.array(workField).optional(),
    source: sourceField,
  })
  .transform((written): Written<RecoveryOption> => {
    const { "per body mass": perBodyMass, "instead of": insteadOf, ...rest } = written;
    const { less, minutes, slot, effort, keep, order, work, ...option } = rest;
    return {
      ...option,
      ...(less !== undefined && { less }),
      ...(minutes !== undefined && { minutes }),
      ...(slot !== undefined && { slot }),
      ...(effort !== undefined && { effort }),
      ...(keep !== undefined && { keep }),
      ...(insteadOf !== undefined && { insteadOf }),
      ...(order !== undefined && { order }),
      ...(perBodyMass !== undefined && { perBodyMass: amountOf(perBodyMass) }),
      ...(work !== undefined && { work }),
    };
  });

/** An amount without the word it is of where the file gives none. */
const amountOf = ({ of, ...range }: z.infer<typeof amountField>) => ({
  ...range,
  ...(of !== undefined && { of }),
});

const withholdsField = z.strictObject({
  what: wordField(["max-lift", "stress", "workout", "movement"] as const).describe("what is not planned"),
  word: textField.transform(asId).optional().describe("which stress or movement"),
  ask: textField.describe("whom to ask instead, as a sentence to the athlete"),
});

/** A file of `content/cautions/`: what a brief warns of, and what it withholds. */
export const cautionSchema = z
  .strictObject({
    title: titleField,
    weight: wordField(["stop", "care", "rule"] as const).describe(
      "`stop`: signs to stop at; `care`: to mind; `rule`: what goes before the brief",
    ),
    say: sayField,
    when: conditionsField,
    withholds: z.array(withholdsField).default([]),
    "on sheet": yesNoField.default(false).describe("important enough for the sheet at the rig"),
    source: sourceField,
  })
  .transform(({ "on sheet": onSheet, withholds, ...entry }): Written<CautionEntry> => ({
    ...entry,
    withholds: withholds.map(({ word, ...each }) => ({ ...each, ...(word !== undefined && { word }) })),
    onSheet,
  }));

/** A name written with spaces, as the id it stands for. */
function asId(name: string): string {
  return name.toLowerCase().replaceAll(/\s+/g, "-");
}
