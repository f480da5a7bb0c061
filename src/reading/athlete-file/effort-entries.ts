import { isGroup } from "../yaml/is-group.ts";
import * as z from "zod";
import type { MaxEffort } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { takeDateOff } from "../quantities/date-behind.ts";
import { readTestDay } from "../quantities/date.ts";
import { readMass, sayMass } from "../quantities/mass.ts";
import { ask, askFor, reject, take, type NotTaken, type Reading } from "../quantities/reading.ts";
import { readTime, sayTime } from "../quantities/time.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import { heaviestLift } from "../quantities/plausible.ts";
import { refuse, tellRefusal } from "../yaml/refuse.ts";
import { listField } from "../fields/list-field.ts";
import { tellReading } from "../fields/take-reading.ts";
import type { AthleteContext } from "./context.ts";
import { amountOf, EFFORT_FORM, type Amount, type Last } from "./effort-amount.ts";
import { doubtPace } from "./effort-pace.ts";
import { cutEffort, splitFacts, type EffortText } from "./effort-text.ts";
import { resolveMovement } from "./resolve-movement.ts";

/** An effort as read, with the number of its entry in the file in place of the place. */
export type EffortEntry = Omit<MaxEffort, "place"> & { readonly entry: number };

const writtenEffort = z.preprocess(
  asLine,
  z.union([
    z.string(),
    z.strictObject({
      effort: z.string().describe("such as `row 2000 m in 7:05.4`"),
      tested: z.string().nullable().optional().describe("the day of the effort, such as `2026-10-03`"),
    }),
  ]),
);
type WrittenEffort = z.output<typeof writtenEffort>;

export const writtenEfforts = z
  .preprocess(refuseGroup, listField(writtenEffort))
  .describe(
    "hard efforts with their time: `row 2000 m in 7:05.4`, `84 burpees in 7:00`, `30 thruster at 40 kg in 1:32`, with a day `(2026-10-03)`",
  );

/** `row 2000 m: 7:05.4` is an entry of its own to YAML, and the same line to a person. */
function asLine(written: unknown): unknown {
  const [only, another] = isGroup(written) ? Object.entries(written) : [];
  if (!only || another || only[0] === "effort" || typeof only[1] !== "string") return written;
  return `${only[0]}: ${only[1]}`;
}

/** Lines below one another without hyphens are a group to YAML, and a list to a person. */
function refuseGroup(written: unknown, ctx: z.RefinementCtx): unknown {
  if (!isGroup(written) || "effort" in written || Object.keys(written).length < 2) return written;
  const problem = "efforts are a list, and this is a group of entries";
  return refuse(ctx, {
    problem,
    allowed: EFFORT_FORM,
    remedy: "Put a hyphen and a space in front of each line.",
  });
}

/** Reads all efforts. One entry may hold several facts about the same movement, parted by commas. */
export function readEfforts(
  written: z.output<typeof writtenEfforts>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): readonly EffortEntry[] {
  let before: Movement | undefined;
  return written.flatMap((effort, entry) => {
    const read = readEntry(effort, entry, before, ctx, context);
    before = read.movement;
    return read.efforts;
  });
}

type ReadEntry = { readonly efforts: readonly EffortEntry[]; readonly movement: Movement | undefined };

function readEntry(
  written: WrittenEffort,
  entry: number,
  before: Movement | undefined,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): ReadEntry {
  const path = typeof written === "string" ? [entry] : [entry, "effort"];
  const line = typeof written === "string" ? written : written.effort;
  const tested = typeof written === "string" ? undefined : (written.tested ?? undefined);
  const date = tested === undefined ? undefined : readTestDay(tested, context.dates);
  if (date) tellReading(ctx, date, { path: [entry, "tested"] });
  const spot: LineSpot = { path, line, before, ctx, context };
  const efforts: EffortEntry[] = [];
  let last: Last | undefined;
  for (const fact of splitFacts(line)) {
    const read = readFact(fact, last, spot);
    if (!read) continue;
    last = read.last;
    if (read.effort) {
      efforts.push({ ...read.effort, entry, ...(date?.ok === true ? { date: date.value } : {}) });
    }
  }
  return { efforts, movement: last?.movement };
}

type LineSpot = {
  readonly path: readonly PropertyKey[];
  readonly line: string;
  /** The movement of the entry before, to propose where none is named. */
  readonly before: Movement | undefined;
  readonly ctx: z.RefinementCtx;
  readonly context: AthleteContext;
};

function readFact(
  fact: string,
  last: Last | undefined,
  spot: LineSpot,
): { readonly effort?: Omit<EffortEntry, "entry">; readonly last: Last } | undefined {
  const { ctx, context, path } = spot;
  const { core, date } = takeDateOff(fact, context.dates);
  const cut = cutEffort(core);
  if ("missing" in cut) {
    const problem = `the ${cut.missing} is missing`;
    tellRefusal(ctx, {
      ...spotOf(fact, spot),
      problem,
      allowed: EFFORT_FORM,
      remedy: `Write ${EFFORT_FORM}.`,
    });
    return undefined;
  }
  if (cut.movement === "" && !last) {
    tellReading(ctx, movementMissing(cut, spot.before), spotOf(fact, spot));
    return undefined;
  }
  const rewritten = (by: string): string => spot.line.replace(fact, by);
  const movement =
    cut.movement === "" && last
      ? last.movement
      : resolveMovement(ctx, context.findMovement, cut.movement, { path }, (name) =>
          rewritten(fact.replace(cut.movement, name)),
        )?.movement;
  const amount = movement ? amountOf(cut, movement, last) : undefined;
  const pace = amount?.ok === true ? askAboutPace(core, amount.value, movement) : undefined;
  const load = cut.load === undefined ? loadMissing(movement) : readLoad(cut.load, movement);
  const readings = [amount, pace ?? cut.time, load, date].filter((reading) => reading !== undefined);
  for (const reading of readings) if (!reading.ok) tellReading(ctx, reading, spotOf(fact, spot));
  if (!movement) return undefined;
  if (amount?.ok !== true) return { last: { movement, unit: last?.unit ?? "metres" } };
  const unit = amount.value.unit;
  if (!cut.time.ok || load?.ok === false || date?.ok === false) return { last: { movement, unit } };
  const result = {
    movement: movement.id,
    amount: amount.value.amount,
    unit,
    time: cut.time.value,
    ...(load === undefined ? {} : { load: load.value }),
    ...(date === undefined ? {} : { date: date.value }),
    approximate: cut.approximate || readings.some((reading) => reading.ok && reading.approximate),
  };
  const say = (time: string): string => sayEffort(movement, amount.value, { ...result, time });
  const ease = /\bchecked\b/i.test(fact) ? RARE : 1;
  const doubt = doubtPace(movement, amount.value, result.time, { say, ease });
  if (doubt) tellReading(ctx, doubt, spotOf(fact, spot));
  const told = readings.flatMap((reading) => (reading.ok && reading.told ? [reading.told.problem] : []));
  if (!doubt && told.length > 0) {
    const readAs = rewritten(say(sayTime(result.time)));
    tellReading(ctx, take(result, false, { problem: told.join("; "), readAs }), spotOf(fact, spot));
  }
  return { effort: result, last: { movement, unit } };
}

/** A time that was checked may lie outside what anybody is known to take by this factor. Judgement. */
const RARE = 1.25;

const HEAVY = "a load with kg or lb that somebody can have lifted";

/** Reps with a bar say nothing without its load. */
const loadMissing = (movement: Movement | undefined): NotTaken | undefined =>
  movement?.loading?.held === "bar"
    ? askFor(
        "the load on the bar is missing",
        EFFORT_FORM,
        `Add the load behind the movement: \`${movement.name} at ... kg\`.`,
      )
    : undefined;

/** The load of an effort, which somebody can have lifted in this movement. */
function readLoad(text: string, movement: Movement | undefined): Reading<Mass> {
  const load = readMass(text.replace(/^2\s*[x×]\s*/i, ""));
  if (!load.ok || movement === undefined) return load;
  if (movement.loading === undefined) return reject(`no load is lifted in a ${movement.name}`, EFFORT_FORM);
  return inKilograms(load.value) > heaviestLift(movement.name)
    ? reject(`${sayMass(load.value)} is more than anybody has lifted in a ${movement.name}`, HEAVY)
    : load;
}

/** `2k row 1:53/500m` gives the pace of the whole distance. */
function askAboutPace(
  fact: string,
  { amount, unit, written }: Amount,
  movement: Movement | undefined,
): NotTaken | undefined {
  const [, clock = "", per, kilo] =
    /(\d{1,2}:\d\d(?:[.,]\d+)?)\s*(?:\/|per)\s*(?:(\d+)\s*m|(km|k))\b/i.exec(fact) ?? [];
  const pace = readTime(clock);
  if (unit !== "metres" || !movement || !pace.ok || (per === undefined && kilo === undefined))
    return undefined;
  const time = (pace.value * amount) / (per === undefined ? METRES_PER_KILOMETRE : Number(per));
  return ask("this is a pace, not a time", [`${written} ${movement.name} in ${sayTime(time)}`], EFFORT_FORM);
}

const METRES_PER_KILOMETRE = 1000;

function movementMissing(cut: EffortText, before: Movement | undefined): Reading<never> {
  const problem = "the movement is missing";
  if (!before) return reject(problem, EFFORT_FORM);
  const time = cut.time.ok ? ` in ${cut.approximate ? "~" : ""}${sayTime(cut.time.value)}` : "";
  return ask(problem, [`${cut.amount}${cut.unit} ${before.name}${time}`], EFFORT_FORM);
}

/** The fact as it stands in the line, so that the column points at it. */
function spotOf(fact: string, { path, line }: LineSpot) {
  const offset = line.indexOf(fact);
  return { path, found: fact, ...(offset === -1 ? {} : { offset }) };
}

/** What is said of an effort beside its amount and movement; its time as written. */
type SaidEffort = {
  readonly load?: Mass;
  readonly time: string;
  readonly date?: string;
  readonly approximate: boolean;
};

function sayEffort(
  movement: Movement,
  amount: Amount,
  { load, time, date, approximate }: SaidEffort,
): string {
  const at = load ? ` at ${sayMass(load)}` : "";
  const day = date === undefined ? "" : ` (${date})`;
  return `${amount.written} ${movement.name}${at} in ${approximate ? "~" : ""}${time}${day}`;
}
