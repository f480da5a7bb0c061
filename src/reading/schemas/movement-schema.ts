import * as z from "zod";
import type { Movement, Sourced } from "../../models/movement.ts";
import { inMetres, type Seconds } from "../../models/quantity.ts";
import { readShare } from "../quantities/share.ts";
import {
  AMOUNT_UNITS,
  EQUIPMENT,
  ERG_KINDS,
  MOVEMENT_KINDS,
  MUSCLES,
  STRESSES,
  type Confidence,
  type Muscle,
  LEVELS,
} from "../../models/vocabulary.ts";
import { checkMovement } from "./check-movement.ts";
import { listField } from "../fields/list-field.ts";
import { choiceField } from "./movement-choice-field.ts";
import { paceField } from "./movement-pace-field.ts";
import {
  lengthField,
  massField,
  numberField,
  ratioField,
  quantityField,
  timeField,
  yesNoField,
} from "../fields/quantity-field.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { movementIdField, sourceFields } from "./movement-fields.ts";
import { spaced, wordField } from "../fields/word-field.ts";

/** A movement as its file says it; the id is the name of the file. */
export type WrittenMovement = Omit<Movement, "id">;

const shareField = quantityField(readShare);
const massBySexField = z.strictObject({
  female: massField.describe("the load for women, such as 65 lb"),
  male: massField.describe("the load for men, such as 95 lb"),
});

const loadField = z
  .strictObject({
    held: wordField(["bar", "pair", "single", "worn", "sled"] as const).describe(
      "how it is held: bar, pair (one in each hand), single, worn or sled",
    ),
    "best lift": yesNoField.describe("yes where a single best lift of it means something"),
    reference: massBySexField.describe("the load the paces above are meant for; of a pair, the mass of one"),
    "from other lifts": z
      .array(
        z
          .strictObject({
            of: movementIdField.describe("the other lift by name"),
            ratio: ratioField.describe("best of this movement over best of the other one, such as 0.88"),
            ...sourceFields,
          })
          .describe("one relation to another lift"),
      )
      .default([])
      .describe("what the best lift follows from when only another lift is known, nearest relation first"),
    "typical best": z
      .strictObject({
        new: ratioField.describe("somebody new to it"),
        regular: ratioField.describe("somebody who trains regularly"),
        competitor: ratioField.describe("somebody who competes"),
        elite: ratioField.describe("among the best"),
      })
      .describe(
        "typical best lift of a man by level, all pieces together, as a multiple of body mass, such as 1.4; judgement, set beside what well-placed men report of themselves",
      ),
    "lands on the lifter": yesNoField.describe(
      "yes where a missed lift comes down on or over the lifter unless pins, spotters or bumper plates are used",
    ),
  })
  .describe("only where something is lifted, carried, pushed or worn")
  .transform((load): NonNullable<Movement["loading"]> => ({
    held: load.held,
    lift: load["best lift"],
    reference: load.reference,
    ratios: load["from other lifts"].map(({ of, ratio, ...from }) => ({
      of,
      ratio: { value: ratio, ...from },
    })),
    typical: load["typical best"],
    needsCatching: load["lands on the lifter"],
  }));

const taxed = (what: string) => shareField.optional().describe(what);
const taxesField = z
  .strictObject({
    legs: taxed("thighs, front and back"),
    "hips and back": taxed("hips and lower back"),
    press: taxed("shoulders, chest and the back of the arms"),
    pull: taxed("upper back and the front of the arms"),
    grip: taxed("hands and forearms"),
    trunk: taxed("belly and sides"),
    calves: taxed("calves and feet"),
    lungs: taxed("breath and heart"),
  })
  .describe("how much a typical set taxes each muscle, from 0% to 100%; leave out what it spares")
  .transform((taxes): Movement["taxes"] =>
    Object.fromEntries(
      MUSCLES.flatMap((muscle) => {
        const share = taxes[spaced(muscle) as keyof typeof taxes];
        return share === undefined ? [] : [[muscle, share] satisfies [Muscle, number]];
      }),
    ),
  );

/** A number and where it comes from. */
const sourced = <T>(value: T, from: { source: string; confidence: Confidence }): Sourced<T> => ({
  value,
  source: from.source,
  confidence: from.confidence,
});

/** A file of `content/movements/`: what a movement is, what it taxes, how fast it goes, what there is to choose. */
export const movementSchema = z
  .strictObject({
    name: nameField.describe("the name as read aloud, such as `power snatch`"),
    plural: nameField.describe("the name for several, such as `power snatches`"),
    short: nameField.describe("a short form for the sheet, at most 12 signs"),
    also: listField(nameField, { split: true })
      .default([])
      .describe("other names and abbreviations people write; case, spaces and hyphens make no difference"),
    kind: wordField(MOVEMENT_KINDS).describe(`one of ${MOVEMENT_KINDS.map(spaced).join(", ")}`),
    counts: listField(wordField(AMOUNT_UNITS), { split: true }).describe(
      "units an amount may be given in: reps, calories, metres, seconds; the usual one first",
    ),
    taxes: taxesField,
    stresses: listField(wordField(STRESSES), { split: true })
      .default([])
      .describe("what it does to a body in every style, so that a stated limit can keep it out"),
    pace: paceField,
    "speeding up": z
      .strictObject({
        power: numberField.describe("the cost rises with the rate to this power; more than 1"),
        ...sourceFields,
      })
      .describe("how dear it is to go faster"),
    "set up": z
      .strictObject({
        time: timeField.describe("seconds from arriving to the first rep: chalk, straps, picking up"),
        ...sourceFields,
      })
      .describe("what getting ready costs at every visit"),
    erg: wordField(ERG_KINDS).optional().describe("which machine it is, where it is one"),
    "distance per rep": lengthField
      .optional()
      .describe("length of one rep or step, where reps and distances can stand for one another"),
    load: loadField.optional(),
    height: z
      .strictObject({
        female: lengthField.describe("the height for women, such as 20 in"),
        male: lengthField.describe("the height for men, such as 24 in"),
      })
      .optional()
      .describe("usual height of the box, the target or the rope"),
    choices: z.array(choiceField).default([]).describe("what an athlete may do one way or another"),
    needs: listField(wordField(EQUIPMENT), { split: true })
      .default([])
      .describe(
        `what must stand ready for it beside bar, bells or machine: ${EQUIPMENT.map(spaced).join(", ")}`,
      ),
    standards: listField(textField)
      .default([])
      .describe("what a judge looks at, the most often lost first, one sentence each"),
    easier: listField(movementIdField, { split: true })
      .default([])
      .describe("movements to do instead when this one cannot or must not be done, nearest first"),
    "sure from": z
      .strictObject({
        female: wordField(LEVELS).describe("of women"),
        male: wordField(LEVELS).describe("of men"),
      })
      .optional()
      .describe(
        "a skill many do not have: the level from which on one can count on it where nothing is known of the athlete",
      ),
    "style of": movementIdField.optional().describe("the general movement this one is a style of"),
    "without kipping": movementIdField
      .optional()
      .describe("the strict movement it becomes for somebody who must not kip, with its own pace and sets"),
  })
  .transform((written, ctx): WrittenMovement => {
    checkMovement(written, ctx);
    const { also, pace, load, erg, height, "distance per rep": perRep, "style of": styleOf } = written;
    const withoutKipping = written["without kipping"];
    const sureFrom = written["sure from"];
    const { name, plural, short, kind, counts, taxes, stresses, choices, needs, standards, easier } = written;
    const { power, ...powerFrom } = written["speeding up"];
    const { time, ...timeFrom } = written["set up"];
    return {
      ...{ name, plural, short, kind, counts, taxes, stresses, choices, needs, standards, easier },
      aliases: also,
      pace: pace.reference,
      kappa: sourced(power, powerFrom),
      setUp: sourced<Seconds>(time, timeFrom),
      ...(erg !== undefined && { erg }),
      ...(perRep !== undefined && { metresPerRep: inMetres(perRep) }),
      ...(load !== undefined && { loading: load }),
      ...(height !== undefined && { height }),
      ...(styleOf !== undefined && { styleOf }),
      ...(withoutKipping !== undefined && { withoutKipping }),
      ...(sureFrom !== undefined && { sureFrom }),
    };
  }) satisfies z.ZodType<WrittenMovement>;
