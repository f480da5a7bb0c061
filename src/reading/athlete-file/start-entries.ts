import * as z from "zod";
import type { Start } from "../../models/athlete.ts";
import { nearestName } from "../../models/nearest.ts";
import { clockChangeRefusal, isZone, readDateTime } from "../quantities/date-time.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { tellReading } from "../fields/take-reading.ts";
import { instantOf } from "../quantities/instant.ts";
import type { AthleteContext, KnownWorkout } from "./context.ts";

const startObject = z.strictObject({
  at: z.string().describe("local date and time, such as `2026-11-28 18:40`"),
  zone: z
    .string()
    .optional()
    .describe("time zone of the place, such as `Europe/Berlin`, where it is not the competition's"),
});
const start = z.union([z.string(), z.null(), startObject]);

export const writtenStarts = z
  .record(z.string(), z.union([start, z.array(start)]))
  .describe(
    "when the athlete starts each workout: `low-water: 2026-11-28 18:40`; more than one time in a list",
  );

/** Reads the start times and checks them against the workout and the window of its competition. */
export function readStarts(
  written: z.output<typeof writtenStarts>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): readonly Start[] {
  return Object.entries(written).flatMap(([name, entry]) => {
    const workout = resolveWorkout(name, { path: [name], at: "name" }, ctx, context);
    const times = Array.isArray(entry) ? entry : [entry];
    return times.flatMap((time, index) => {
      const path = Array.isArray(entry) ? [name, index] : [name];
      const read = readStart(time, path, ctx, context, workout);
      return read && workout ? [read] : [];
    });
  });
}

/** The workout of that id, or nothing once the fault is told. */
export function resolveWorkout(
  name: string,
  spot: { readonly path: readonly PropertyKey[]; readonly at?: "name" },
  ctx: z.RefinementCtx,
  context: AthleteContext,
): KnownWorkout | undefined {
  const ids = [...context.workouts.keys()];
  const byTitle = [...context.workouts.values()].find(
    ({ title }) => title.toLowerCase() === name.trim().toLowerCase(),
  );
  const workout = context.workouts.get(name.trim()) ?? byTitle;
  if (workout) return workout;
  const nearest = nearestName(name, ids);
  tellRefusal(ctx, {
    ...spot,
    found: name,
    problem: "there is no workout of this name",
    allowed: ids.length === 0 ? "none yet: content/workouts holds no workout" : ids.join(", "),
    nearest,
    remedy:
      nearest === undefined
        ? "Write the name of a file in content/workouts, without its ending."
        : `Write \`${nearest}\`.`,
  });
  return undefined;
}

function readStart(
  entry: z.output<typeof start>,
  path: readonly PropertyKey[],
  ctx: z.RefinementCtx,
  context: AthleteContext,
  workout: KnownWorkout | undefined,
): Start | undefined {
  if (entry === null) return undefined;
  const [text, stated, atPath] =
    typeof entry === "string" ? [entry, undefined, path] : [entry.at, entry.zone?.trim(), [...path, "at"]];
  const read = readDateTime(text, context.dates);
  tellReading(ctx, read, { path: atPath });
  if (stated !== undefined && !isZone(stated)) {
    tellRefusal(ctx, {
      path: [...path, "zone"],
      problem: "this is no time zone",
      allowed: "a name of the tz database such as `Europe/Berlin`",
      remedy: "Write the name of the time zone, area and city.",
    });
    return undefined;
  }
  if (!read.ok || read.told || !workout) return undefined;
  const { at } = read.value;
  const usual = workout.ofCompetition ? undefined : context.zone;
  const zone = stated ?? read.value.zone ?? usual;
  const { competition } = workout;
  const there = zone ?? competition?.zone;
  const changed = there === undefined ? undefined : clockChangeRefusal(at, there);
  if (there === undefined && !workout.ofCompetition) {
    tellRefusal(ctx, {
      path: atPath,
      problem: "the time zone is missing, since the workout belongs to no competition",
      allowed: "a time zone behind the time, such as `2026-11-28 18:40 Europe/Berlin`",
      remedy:
        "Add the time zone, or name the competition in the workout's file, or write `zone:` in content/settings.yaml.",
    });
  } else if (changed) {
    tellRefusal(ctx, { path: atPath, ...changed });
  } else if (competition && there !== undefined) {
    const outside = outsideWindow(instantOf(at, there), competition);
    if (outside !== undefined) {
      tellRefusal(ctx, {
        path: atPath,
        problem: `the competition ${outside}`,
        allowed: `${spacedTime(competition.opens)} to ${spacedTime(competition.closes)} ${competition.zone}`,
        remedy: "Write a start inside the window, or correct the window in content/competitions.",
      });
    }
  }
  return { workout: workout.id, at, ...(zone === undefined ? {} : { zone }) };
}

function outsideWindow(
  instant: number,
  competition: NonNullable<KnownWorkout["competition"]>,
): string | undefined {
  if (instant < instantOf(competition.opens, competition.zone)) return "is not open yet then";
  return instant > instantOf(competition.closes, competition.zone) ? "is closed by then" : undefined;
}

const spacedTime = (at: string): string => at.replace("T", " ");
