import * as z from "zod";
import { missingField } from "./missing.ts";
import {
  afterField,
  basisField,
  cautionField,
  choiceField,
  sharpenField,
  warmUpField,
  withheldField,
  limitField,
  setUpLineField,
} from "./around.ts";
import { barLoadField, rangeField, scoreKindField, secondsField } from "./basics.ts";
import { coachWordField } from "./coach-word.ts";
import { debriefField, learnedField } from "./debrief.ts";
import { heldBackField, liftingField, placesField } from "./lifting.ts";
import { pacingField } from "./pacing.ts";

const partPlanField = z.strictObject({
  name: z.string(),
  title: z.string().describe("format in words, such as `for time, cap 12:00`"),
  format: z.enum(["for-time", "amrap", "on-the-clock", "max-load"]),
  score: scoreKindField,
  start: z
    .strictObject({
      kind: z.enum(["clock", "after"]),
      clock: secondsField.describe("clock of the workout at which the part begins, as planned"),
      after: z.string().optional(),
      restAtLeast: secondsField.optional(),
      rest: secondsField.optional(),
    })
    .describe("where the part stands on the clock of the whole workout"),
  prescription: z
    .array(z.string())
    .describe(
      "the work as written, with the values of the athlete's division, line by line, indented by two spaces a level",
    ),
  pacing: pacingField.optional(),
  lifting: liftingField.optional(),
  places: placesField.optional(),
  heldBack: heldBackField.optional(),
  tiesBy: z.string().optional().describe("the part whose result breaks ties of this one"),
  missing: z
    .array(missingField)
    .describe(
      "what could not be computed for this part, and why; a field whose model lacks input is absent, never invented",
    ),
});

/** Everything one athlete needs for one workout. Renderers draw it and decide nothing. */
export const planSchema = z.strictObject({
  version: z.literal(1),
  athlete: z.strictObject({
    id: z.string(),
    name: z.string(),
    shareName: z.string().optional(),
    level: z.string(),
    division: z.string(),
    divisionAssumed: z.boolean(),
    units: z.enum(["kg", "lb"]),
    shares: z.array(z.string()),
    note: z.string().optional(),
    anonymous: z.boolean().describe("a typical band of athletes, not a person"),
  }),
  workout: z.strictObject({
    id: z.string(),
    title: z.string(),
    summary: z.string().optional(),
    competition: z.string().optional(),
    deadline: z
      .string()
      .optional()
      .describe("local date and time at which the competition closes, with zone"),
    rules: z.array(z.string()),
  }),
  gym: z.strictObject({
    id: z.string(),
    name: z.string().optional().describe("absent of a usual gym, taken where none is known"),
    assumed: z.boolean(),
  }),
  start: z
    .strictObject({ local: z.string(), zone: z.string(), instant: z.string().describe("ISO 8601, UTC") })
    .optional(),
  date: z.string().describe("the day the plan was made for, `2026-11-25`"),
  headline: z.strictObject({
    score: scoreKindField,
    result: rangeField.optional(),
    firstLoad: barLoadField.optional().describe("opener of the first lift"),
  }),
  parts: z.array(partPlanField),
  total: z.strictObject({ parts: z.array(z.string()), result: rangeField }).optional(),
  warmUp: warmUpField.optional(),
  choices: z.array(choiceField),
  standards: z.array(
    z.strictObject({ movement: z.string(), say: z.string(), costsThisAthlete: z.boolean() }),
  ),
  setUp: z.array(setUpLineField).describe("what to set out, film and check before the start"),
  limits: z
    .array(limitField)
    .optional()
    .describe("limits that stand on the day, in the athlete's own words; absent where none does"),
  loads: z
    .array(z.strictObject({ movement: z.string(), name: z.string(), load: barLoadField }))
    .describe("prescribed loads with plates, each once, in order of use"),
  after: afterField.optional(),
  cautions: z.array(cautionField),
  withheld: z.array(withheldField),
  basis: z.array(basisField),
  sharpen: sharpenField.optional(),
  coachWord: coachWordField
    .optional()
    .describe("what the coach set, and what it means beside the athlete's own numbers"),
  learned: learnedField.optional(),
  debriefs: z
    .array(debriefField)
    .optional()
    .describe("results of this workout held against their parts, once there are any"),
});

type DeepReadonly<T> = T extends (infer U)[]
  ? readonly DeepReadonly<U>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

export type Plan = DeepReadonly<z.infer<typeof planSchema>>;
export type PartPlan = Plan["parts"][number];
/** Pacing and its rows as they stand in a finished plan. */
export type PlannedPacing = NonNullable<PartPlan["pacing"]>;
export type PlannedRow = PlannedPacing["rows"][number];

/** The JSON Schema (draft 2020-12) of a plan. */
export const planJsonSchema = (): unknown => z.toJSONSchema(planSchema, { target: "draft-2020-12" });
