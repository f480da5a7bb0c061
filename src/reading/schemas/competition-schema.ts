import * as z from "zod";
import { resolveMovement } from "../athlete-file/resolve-movement.ts";
import type { Competition } from "../../models/competition.ts";
import type { FindMovement } from "../names/find-movement.ts";
import { clockChangeRefusal, isZone, readDateTime } from "../quantities/date-time.ts";
import type { DateOrder } from "../quantities/date.ts";
import { instantOf } from "../quantities/instant.ts";
import { refuse, tellRefusal } from "../yaml/refuse.ts";
import { liftRestField } from "../fields/lift-word-fields.ts";
import { listField } from "../fields/list-field.ts";
import { quantityField, timeField } from "../fields/quantity-field.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";
import { mapReading } from "../quantities/reading.ts";

const zone = z.string().transform((text, ctx): string => {
  const name = text.trim();
  if (isZone(name)) return name;
  return refuse(ctx, {
    problem: "this is no time zone",
    allowed: "a name of the tz database: area and city, such as `Europe/Berlin` or `America/New_York`",
    remedy: "Write the time zone in which the opening and closing times are meant.",
  });
});

/** The file of a competition, `content/competitions/*.yaml`. */
export const competitionSchema = (findMovement: FindMovement, dates?: DateOrder) =>
  z.strictObject(competitionFields(findMovement, dates)).transform(competitionOf);

const competitionFields = (findMovement: FindMovement, dates?: DateOrder) => {
  const clock = quantityField<string>((text) => mapReading(readDateTime(text, dates), ({ at }) => at));
  return {
    name: nameField.describe("the name of the competition"),
    zone: zone.describe("the time zone of its times, such as `Europe/Berlin`"),
    opens: clock.describe("local date and time when results are first accepted: `2026-11-26 18:00`"),
    closes: clock.describe("local date and time of the deadline: `2026-11-30 20:00`"),
    counts: wordField(["best", "last", "first"] as const)
      .default("best")
      .describe(
        "which result counts when a workout is done more than once: best, last or first; best if left out",
      ),
    ties: listField(textField).default([]).describe("how ties are broken, in your words"),
    "may come": listField(z.string(), { split: true })
      .default([])
      .transform((names, ctx) =>
        names.flatMap(
          (name, index) => resolveMovement(ctx, findMovement, name, { path: [index] })?.movement.id ?? [],
        ),
      )
      .describe("movements that may still come: `[snatch, row]`"),
    rules: listField(textField).default([]).describe("event rules that prevail over the plan, in your words"),
    "bar counts": wordField(["as-weighed", "15-kg-as-35-lb"] as const)
      .optional()
      .describe("how the rules count the bar: `as weighed` or `15 kg as 35 lb`"),
    loading: wordField(["alone", "help-allowed"] as const)
      .optional()
      .describe("who may change plates: `alone` or `help allowed`"),
    "rest between lifts": liftRestField
      .optional()
      .describe(
        "the shortest rest between two attempts of a lift: `1:30`; a workout or an athlete may say otherwise",
      ),
    "first lift after": liftRestField
      .optional()
      .describe(
        "the rest before the first attempt of a lift: `2:00`; a workout or an athlete may say otherwise",
      ),
    briefing: timeField.optional().describe("time taken by the briefing before the start: `5 min`"),
  };
};

type WrittenCompetition = z.output<z.ZodObject<ReturnType<typeof competitionFields>>>;

function competitionOf(written: WrittenCompetition, ctx: z.RefinementCtx): Omit<Competition, "id"> {
  const { opens, closes, zone: there } = written;
  for (const name of ["opens", "closes"] as const) {
    const changed = clockChangeRefusal(written[name], there);
    if (changed) tellRefusal(ctx, { path: [name], ...changed });
  }
  if (instantOf(opens, there) >= instantOf(closes, there)) {
    tellRefusal(ctx, {
      path: ["closes"],
      problem: `it closes before it opens (${opens.replace("T", " ")})`,
      remedy: "Correct one of the two times.",
    });
  }
  const { name, counts, ties, rules, loading, briefing } = written;
  const barCounts = written["bar counts"];
  const liftRest = written["rest between lifts"];
  const firstLiftAfter = written["first lift after"];
  return {
    name,
    zone: there,
    opens,
    closes,
    counts,
    ties,
    mayCome: written["may come"],
    rules,
    ...(barCounts === undefined ? {} : { barCounts }),
    ...(loading === undefined ? {} : { loading }),
    ...(liftRest === undefined ? {} : { liftRest }),
    ...(firstLiftAfter === undefined ? {} : { firstLiftAfter }),
    ...(briefing === undefined ? {} : { briefing }),
  };
}
