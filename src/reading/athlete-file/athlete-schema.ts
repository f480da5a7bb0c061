import * as z from "zod";
import type { Athlete } from "../../models/athlete.ts";
import { SEX_WORDS } from "../../models/sex-words.ts";
import { readBirthYear } from "./birth-year.ts";
import type { AthleteContext } from "./context.ts";
import { readEfforts, writtenEfforts, type EffortEntry } from "./effort-entries.ts";
import { readLifts, writtenLifts } from "./lift-entries.ts";
import { readLimits, writtenLimits } from "./limit-entries.ts";
import { defined, profileOf } from "./profile-of.ts";
import { readPreferences, writtenPreferences } from "./preference-entries.ts";
import { resolveMovement } from "./resolve-movement.ts";
import { readResults, writtenResults } from "./result-entries.ts";
import { readStarts, resolveWorkout, writtenStarts } from "./start-entries.ts";
import { readUnbroken, writtenUnbroken } from "./unbroken-entries.ts";
import {
  HABITS,
  JOINTS,
  LEVELS,
  RECOVERIES,
  SEXES,
  SHARED_FACTS,
  type Level,
} from "../../models/vocabulary.ts";
import { MASS_UNITS } from "../../models/quantity.ts";
import { readWeeklyHours } from "../quantities/weekly-hours.ts";
import { gymName } from "../fields/gym-name.ts";
import type { CoachWord } from "../../models/coach-word.ts";
import { coachWordFields, coachWordOf } from "./coach-word-entries.ts";
import { known, listField } from "../fields/list-field.ts";
import { bodyMassField, heightField, quantityField, yesNoField } from "../fields/quantity-field.ts";
import { boundedField, warmUpField } from "../fields/bounded-field.ts";
import { WBGT } from "../quantities/plausible.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

/** An athlete as the file says it, read and checked; the file itself adds id and places. */
export type WrittenAthlete = Omit<Athlete, "id" | "place" | "name" | "efforts"> & {
  readonly name?: string;
  readonly efforts: readonly EffortEntry[];
};

const LEVEL_SYNONYMS: Readonly<Record<string, Level>> = {
  beginner: "new",
  novice: "new",
  intermediate: "regular",
  average: "regular",
  advanced: "competitor",
  rx: "competitor",
  pro: "elite",
};

/** Everything an athlete file may say but the name, which the typical athletes of the general page do not have. */
const profileFields = (context: AthleteContext) => ({
  ...bodyFields(context),
  ...abilityFields(context),
  ...aroundFields(context),
});

/** Who the athlete is. */
const bodyFields = (context: AthleteContext) => ({
  level: wordField(LEVELS, LEVEL_SYNONYMS).describe(
    "how experienced the athlete is: new, regular, competitor or elite; it stands in where results are missing",
  ),
  sex: known(wordField(SEXES, SEX_WORDS, "Leave the entry out where neither fits."))
    .describe(
      "`female` or `male`, for reference values and bars; left out, the division tells it where it can",
    )
    .meta({ alsoCalled: ["gender"] }),
  division: known(nameField).describe(
    "the division the athlete competes in, as the workouts name it: `women`",
  ),
  units: known(wordField(MASS_UNITS)).describe(
    "`kg` or `lb`: the unit the athlete reads loads in; kg if left out",
  ),
  "body mass": known(bodyMassField)
    .describe("`63 kg` or `139 lb`")
    .meta({ alsoCalled: ["weight", "body weight", "bw", "mass"] }),
  height: known(heightField)
    .describe("`170 cm`, `1.70 m` or `5'7\"`")
    .meta({ alsoCalled: ["ht", "size", "tall"] }),
  born: known(quantityField((text) => readBirthYear(text, context.dates)))
    .describe("the year of birth: `1991`")
    .meta({
      alsoCalled: ["age", "birth year", "birthday", "year of birth", "date of birth", "dob", "birth"],
    }),
});

/** What the athlete can do and cannot. */
const abilityFields = (context: AthleteContext) => ({
  lifts: writtenLifts
    .transform((written, ctx) => readLifts(written, ctx, context))
    .nullable()
    .optional()
    .describe(writtenLifts.description ?? "")
    .meta({ alsoCalled: ["bests", "best lifts", "maxes", "PRs", "PBs", "1RM", "strength"] }),
  efforts: writtenEfforts
    .transform((written, ctx) => readEfforts(written, ctx, context))
    .optional()
    .describe(writtenEfforts.description ?? "")
    .meta({ alsoCalled: ["max efforts", "tests", "times", "engine", "performances"] }),
  unbroken: writtenUnbroken
    .transform((written, ctx) => readUnbroken(written, ctx, context))
    .nullable()
    .optional()
    .describe(writtenUnbroken.description ?? "")
    .meta({ alsoCalled: ["max sets", "gymnastics", "skills", "max reps"] }),
  cannot: listField(z.string(), { split: true })
    .transform((names, ctx) =>
      names.flatMap(
        (name, index) =>
          resolveMovement(ctx, context.findMovement, name, { path: [index] })?.movement.id ?? [],
      ),
    )
    .optional()
    .describe("movements the athlete cannot do yet: `[ring muscle-up]`")
    .meta({ alsoCalled: ["cannot do", "can't do", "not yet"] }),
});

/** How the athlete trains, races and must be cared for, and what is around the start. */
const aroundFields = (context: AthleteContext) => ({
  recovery: known(wordField(RECOVERIES)).describe(
    "how fast the athlete is ready again: slow, usual or fast; usual if left out",
  ),
  habits: listField(wordField(HABITS), { split: true })
    .optional()
    .describe(
      "habits in racing: starts too fast, starts too slow, rests too long, breaks too late, slow transitions",
    ),
  trains: known(quantityField(readWeeklyHours))
    .describe("how much the athlete trains in a usual week: `9 h a week` or `5 x 90 min a week`")
    .meta({ alsoCalled: ["training", "training hours", "hours a week", "volume"] }),
  stiff: listField(wordField(JOINTS), { split: true })
    .optional()
    .describe("joints that are stiff and want their minutes in the warm-up, without being a limit: `[hip]`")
    .meta({ alsoCalled: ["tight", "mobility"] }),
  limits: writtenLimits
    .transform((written, ctx) => readLimits(written, ctx, context))
    .optional()
    .describe(writtenLimits.description ?? "")
    .meta({ alsoCalled: ["injuries", "injury", "limitations", "restrictions", "health"] }),
  prefers: writtenPreferences
    .transform((written, ctx) => readPreferences(written, ctx, context))
    .optional()
    .describe(writtenPreferences.description ?? "")
    .meta({ alsoCalled: ["preferences", "variants", "styles"] }),
  gym: known(gymName(context.gyms)).describe("the gym, by the name of its file in content/gyms"),
  "warm up": known(warmUpField).describe("time at hand for warming up: `40 min`"),
  heat: z
    .strictObject({
      wbgt: boundedField(WBGT, "a wet bulb globe temperature in degrees Celsius").describe(
        "wet bulb globe temperature expected, degrees Celsius: `28`",
      ),
      acclimatised: yesNoField
        .default(false)
        .describe("whether the athlete is used to such heat: `yes` or `no`"),
    })
    .optional()
    .describe("expected heat at the start: `{wbgt: 28, acclimatised: no}`"),
  retry: known(wordField(["planned", "open", "no"] as const))
    .describe("whether a second try is planned: planned, open or no; open if left out")
    .meta({ alsoCalled: ["second try", "repeat"] }),
});

const nameFields = {
  name: nameField.describe("the name, in any script"),
  "share name": known(nameField).describe("the name for the share image, where it is not the full one"),
};

/** What only a real athlete has. */
const personFields = (context: AthleteContext) => ({
  starts: writtenStarts
    .transform((written, ctx) => readStarts(written, ctx, context))
    .nullable()
    .optional()
    .describe(writtenStarts.description ?? "")
    .meta({ alsoCalled: ["start", "start times", "start time", "heats"] }),
  group: listField(nameField, { split: true })
    .optional()
    .describe(
      "groups the athlete belongs to, for sheets and messages of one group: `evening` or `[evening, team blue]`",
    )
    .meta({ alsoCalled: ["groups", "team", "teams", "squad"] }),
  shares: listField(wordField(SHARED_FACTS), { split: true })
    .optional()
    .describe(
      "what the athlete agrees to show on the share image: name, target, splits, loads, division; nothing if left out",
    )
    .meta({ alsoCalled: ["consent", "share", "sharing"] }),
  results: writtenResults
    .transform((written, ctx) => readResults(written, ctx, context))
    .optional()
    .describe(writtenResults.description ?? "")
    .meta({ alsoCalled: ["log", "done", "scores"] }),
  "coach sets": z
    .record(z.string(), z.strictObject(coachWordFields(context)).transform(coachWordOf))
    .transform((written, ctx): Readonly<Record<string, CoachWord>> => {
      const settled = Object.entries(written).flatMap(([name, word]) => {
        const workout = resolveWorkout(name, { path: [name], at: "name" }, ctx, context);
        return workout ? [[workout.id, word] as const] : [];
      });
      return Object.fromEntries(settled);
    })
    .optional()
    .describe(
      "what you set for a workout whatever the numbers say: `low-water: {open with: 60 kg, lifts: 3}`",
    ),
  note: known(textField)
    .describe("private words between coach and athlete, shown on the brief only")
    .meta({ alsoCalled: ["notes", "comment", "comments", "remarks"] }),
});

/** The file of an athlete, `athletes/*.yaml`. Only `name` and `level` are needed. */
export const athleteSchema = (context: AthleteContext) =>
  z
    .strictObject({ ...nameFields, ...profileFields(context), ...personFields(context) })
    .transform((written, ctx): WrittenAthlete & { readonly name: string } => ({
      ...profileOf(written, ctx, context),
      name: written.name,
      ...defined("shareName", written["share name"]),
      starts: written.starts ?? [],
      shares: written.shares ?? [],
      results: written.results ?? [],
      ...defined("groups", written.group?.length === 0 ? undefined : written.group),
      ...defined("words", written["coach sets"]),
      ...defined("note", written.note),
    }));

/** What a profile says, each entry read for itself. */
export type WrittenProfile = z.output<z.ZodObject<ReturnType<typeof profileFields>>> & {
  readonly note?: string | undefined;
};

/** The profile of a typical athlete: an athlete without name, start and results. */
export const profileSchema = (context: AthleteContext) =>
  z.strictObject(profileFields(context)).transform((written, ctx) => profileOf(written, ctx, context));
