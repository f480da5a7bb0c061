import * as z from "zod";
import type { LoggedAttempt, LoggedResult } from "../../models/athlete.ts";
import { nearestName } from "../../models/nearest.ts";
import { readDate } from "../quantities/date.ts";
import { readMass } from "../quantities/mass.ts";
import { ask, reject, take, type Reading } from "../quantities/reading.ts";
import { readClock } from "../quantities/time.ts";
import { seconds, type Seconds } from "../../models/quantity.ts";
import { answerWord } from "../quantities/answer-word.ts";
import { refuse, tellRefusal } from "../yaml/refuse.ts";
import { listField } from "../fields/list-field.ts";
import { countField, massField, quantityField, timeField } from "../fields/quantity-field.ts";
import { tellReading } from "../fields/take-reading.ts";
import { wordField, wordOf } from "../fields/word-field.ts";
import { FEELINGS } from "../../models/vocabulary.ts";
import type { AthleteContext, KnownWorkout } from "./context.ts";
import { misfitOf } from "./result-fits.ts";
import { resolveWorkout } from "./start-entries.ts";

const VERSIONS = ["prescribed", "scaled"] as const;
const ATTEMPT = "a load, made or missed, and the clock, such as `90 kg made 1:05`";

/** `90 kg made 1:05`, `90 kg made easy 1:05`, `95 kg missed at 3:10`, `95 kg`. */
function readAttempt(text: string): Reading<LoggedAttempt> {
  const parts =
    /^(.*?(?:kg|kgs|lbs?|#|pounds?|\d))\s*(?:,|:)?\s*(made|good|yes|ok|✓|missed|miss|failed|fail|no|x|✗)?\s*,?\s*(easy|true[- ]max)?\s*(?:,|at|@)?\s*(\d{0,2}:\d\d(?:[.,]\d+)?)?$/i.exec(
      text.trim(),
    );
  if (!parts) return reject("this is not an attempt", ATTEMPT);
  const mass = readMass(parts[1] ?? "");
  if (!mass.ok) return { ...mass, allowed: ATTEMPT };
  const clock = parts[4] === undefined ? undefined : readClock(parts[4]);
  if (clock?.ok === false) return clock;
  const word = parts[2]?.toLowerCase();
  if (word === undefined) {
    return ask("was it made or missed?", [`${text.trim()} made`, `${text.trim()} missed`], ATTEMPT);
  }
  const made = ["made", "good", "yes", "ok", "✓"].includes(word);
  const effort = parts[3] === undefined ? undefined : wordOf(["true-max", "easy"] as const, parts[3]);
  if (effort !== undefined && !made)
    return reject("only a lift that was made is easy or a true max", ATTEMPT, "Take the word out.");
  return take(
    {
      load: mass.value,
      made,
      ...(clock === undefined ? {} : { at: clock.value }),
      ...(effort === undefined ? {} : { effort }),
    },
    mass.approximate,
  );
}

/** A clock, or a sign that nobody looked. */
const readSplit = (text: string): Reading<Seconds | undefined> =>
  answerWord(text) === "unknown" ? take(undefined) : readClock(text);

/** `7 + 12`: whole rounds, and the reps of the next one. */
function readRounds(text: string): Reading<NonNullable<LoggedResult["rounds"]>> {
  const parts = /^(\d{1,3})\s*(?:rounds?|rds?)?\s*(?:\+\s*(\d{1,4})\s*(?:reps?)?)?$/i.exec(text.trim());
  return parts
    ? take({ whole: Number(parts[1]), reps: Number(parts[2] ?? 0) })
    : reject("this is no count of rounds", "whole rounds and the reps of the next one, such as `7 + 12`");
}

const resultFields = {
  workout: z.string().describe("the workout, by the name of its file"),
  part: z.string().optional().describe("the part, where the workout has more than one"),
  date: z.string().nullable().optional().describe("the day it was done, such as `2026-11-28`"),
  time: timeField.optional().describe("the time it took, such as `9:41`"),
  reps: countField.optional().describe("the reps (or calories, or metres) done"),
  load: massField.optional().describe("the load lifted, such as `100 kg`"),
  athlete: z
    .string()
    .optional()
    .describe("whose result it is, by the name of the file, as a log of the day says it"),
  rounds: quantityField<NonNullable<LoggedResult["rounds"]>>(readRounds)
    .optional()
    .describe("whole rounds and the reps of the next one: `7 + 12`"),
  "tie-break": timeField.optional().describe("the clock at the tie-break"),
  splits: listField(quantityField<Seconds | undefined>(readSplit), { split: true })
    .optional()
    .describe(
      "the clock at the end of each line or each round, in order: `[1:02, 2:10, 3:25]`; `?` where nobody looked",
    ),
  took: listField(timeField, { split: true })
    .optional()
    .describe("instead of `splits`: how long each line or each round took, in order"),
  attempts: listField(quantityField<LoggedAttempt>(readAttempt))
    .optional()
    .describe(
      "lifts in order: `[90 kg made 1:05, 95 kg missed 3:10]`; behind `made` also `easy` or `true max`",
    ),
  felt: wordField(FEELINGS, { good: "right", fine: "right", died: "blew-up", blowup: "blew-up" })
    .optional()
    .describe(`how it felt: ${FEELINGS.join(", ")}`),
  version: wordField(VERSIONS, { rx: "prescribed", "as written": "prescribed", s: "scaled" })
    .optional()
    .describe("`scaled` where an easier version was done; left out: as prescribed"),
  note: z.string().optional().describe("the athlete's own words, for the coach"),
};

const resultObject = z.strictObject(resultFields);

/** `{2000 m row: 7:02}`: what was done in a time, where a workout by name is meant. */
function refuseEffort(written: unknown, ctx: z.RefinementCtx): unknown {
  if (typeof written === "string") {
    return refuse(ctx, {
      ...NO_RESULT,
      remedy: `Move it to \`efforts:\`, as \`- ${written}\`, or name the workout: \`{workout: ..., date: ..., time: ...}\`.`,
    });
  }
  const entries: readonly (readonly [string, unknown])[] =
    typeof written === "object" && written !== null && !Array.isArray(written) ? Object.entries(written) : [];
  const [first] = entries;
  const isBare =
    first !== undefined &&
    entries.every(
      ([name, value]) => !(name in resultFields) && (typeof value === "string" || typeof value === "number"),
    );
  if (!isBare) return written;
  const [name, value] = first;
  return refuse(ctx, {
    ...NO_RESULT,
    remedy: `What was done outside a workout goes under \`efforts:\`, as \`- ${name} in ${String(value)}\`; of a workout write \`{workout: ${name}, date: ..., time: ${String(value)}}\`.`,
  });
}

const NO_RESULT = {
  problem: "this names no workout",
  allowed: "`{workout: low-water, date: 2026-11-28, time: 9:41}`",
};

export const writtenResults = listField(z.preprocess(refuseEffort, resultObject)).describe(
  "workouts done: `{workout: low-water, date: 2026-11-28, time: 9:41, splits: [1:02, 2:10], felt: hard}`",
);

type WrittenResult = z.output<typeof resultObject>;

/** Reads logged results: the workout and part exist, something was logged, splits go up. */
export const readResults = (
  written: z.output<typeof writtenResults>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): readonly LoggedResult[] => written.flatMap((entry, index) => readResult(entry, index, ctx, context) ?? []);

function readResult(
  entry: WrittenResult,
  index: number,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): LoggedResult | undefined {
  const workout = resolveWorkout(entry.workout, { path: [index, "workout"] }, ctx, context);
  const part = resolvePart(entry.part, workout, index, ctx);
  const date =
    entry.date === undefined || entry.date === null ? undefined : readDate(entry.date, context.dates);
  if (date) tellReading(ctx, date, { path: [index, "date"] });
  const { time, reps, load, rounds, took = [], attempts = [], felt, version = "prescribed" } = entry;
  const { "tie-break": tieBreak, note } = entry;
  const splits = entry.splits ?? clocksAfter(took);
  refuseContradictions(entry, splits, index, ctx);
  if (!workout || part === undefined) return undefined;
  const score = workout.scores?.[workout.parts?.indexOf(part) ?? -1];
  const misfit = misfitOf({ time, reps, load, rounds }, score);
  if (misfit) {
    const { entry: at, ...said } = misfit;
    tellRefusal(ctx, { path: [index, at], severity: "question", ...said });
  }
  return {
    workout: workout.id,
    part,
    ...(date?.ok === true ? { date: date.value } : {}),
    ...(time === undefined ? {} : { time }),
    ...(reps === undefined ? {} : { reps }),
    ...(load === undefined ? {} : { load }),
    ...(rounds === undefined ? {} : { rounds }),
    ...(tieBreak === undefined ? {} : { tieBreak }),
    splits,
    attempts,
    ...(note === undefined || note.trim() === "" ? {} : { note: note.trim() }),
    ...(felt === undefined ? {} : { felt }),
    version,
  };
}

/** Tells what is said twice, what says nothing, and clocks that go back. */
function refuseContradictions(
  { time, reps, load, rounds, took = [], attempts = [], splits: written }: WrittenResult,
  splits: LoggedResult["splits"],
  index: number,
  ctx: z.RefinementCtx,
): void {
  if (written !== undefined && took.length > 0) {
    tellRefusal(ctx, {
      path: [index, "took"],
      problem: "the result has clocks and lengths",
      allowed: "either `splits` or `took`",
      remedy: "Keep one of the two.",
    });
  }
  const isSaid = [time, reps, load, rounds].some((one) => one !== undefined);
  if (!isSaid && splits.length + attempts.length === 0) {
    tellRefusal(ctx, {
      path: [index],
      problem: "nothing of the result is written down",
      allowed: "`time`, `reps`, `rounds`, `load`, `splits`, `took` or `attempts`",
      remedy: "Add what was done, or delete the entry.",
    });
  }
  const beyond = time === undefined ? -1 : splits.findIndex((clock) => clock !== undefined && clock > time);
  if (beyond >= 0) {
    tellRefusal(ctx, {
      path: [index, written === undefined ? "took" : "splits", beyond],
      problem: "this clock is later than the time of the whole result",
      allowed: "clocks up to the time",
      remedy: "Correct the clock or the time.",
    });
  }
  const fallsBack = splits.findIndex(
    (clock, at) => clock !== undefined && clock <= Math.max(0, ...splits.slice(0, at).map((one) => one ?? 0)),
  );
  if (fallsBack >= 0) {
    tellRefusal(ctx, {
      path: [index, "splits", fallsBack],
      problem: fallsBack === 0 ? "the first clock is not over 0" : "the clock goes back here",
      allowed: "the running clock at the end of each line, always going up",
      remedy: "Write clocks, not the seconds each line took.",
    });
  }
}

/** Clocks from how long each stretch took. */
const clocksAfter = (took: readonly Seconds[]): readonly Seconds[] =>
  took.map((_, at) => seconds(took.slice(0, at + 1).reduce((sum, time) => sum + time, 0)));

function resolvePart(
  written: string | undefined,
  workout: KnownWorkout | undefined,
  index: number,
  ctx: z.RefinementCtx,
): string | undefined {
  const parts = workout?.parts;
  if (!workout || parts === undefined) return undefined;
  const [only, another] = parts;
  if (written === undefined && another === undefined) return only;
  const part = parts.find((name) => name.toLowerCase() === written?.trim().toLowerCase());
  if (part !== undefined) return part;
  const nearest = written === undefined ? undefined : nearestName(written, parts);
  tellRefusal(ctx, {
    path: written === undefined ? [index] : [index, "part"],
    problem:
      written === undefined
        ? `the workout has ${parts.length} parts, and which one is missing`
        : "the workout has no part of this name",
    allowed: parts.join(", "),
    nearest,
    remedy: "Add `part:` with one of the names allowed.",
  });
  return undefined;
}
