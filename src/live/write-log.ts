import type { Feeling } from "../models/vocabulary.ts";
import { kilograms, massIn } from "../models/quantity.ts";
import { sayMassFigure } from "../wording/mass.ts";
import { sayClock } from "../wording/time.ts";
import type { BodyFeeling } from "./day-event.ts";
import type { DayPlan } from "./day-plan.ts";
import type { DayState } from "./day-state.ts";
import { marksOf } from "./course-marks.ts";
import { courseNow } from "./course-now.ts";
import type { PartTimes } from "./part-times.ts";

/** A day as it goes into the log. */
type LoggedDay = {
  readonly plan: DayPlan;
  readonly state: DayState;
  readonly times: readonly PartTimes[];
  /** The day it was done, such as `2026-11-28`. */
  readonly date: string;
};

const FELT: Readonly<Record<BodyFeeling, Feeling>> = {
  easier: "easy",
  "as-planned": "right",
  harder: "hard",
};

/**
 * The log of a day as text: entries of `results:` of an athlete's file, read back as they are. One entry for each part of which
 * something was done. A clock nobody tapped is a question mark.
 */
export function writeLog(day: LoggedDay): string {
  const { plan, times } = day;
  const entries = times.flatMap((part) => {
    const lines = linesOf(part, day);
    return lines.length === 0 ? [] : [entryOf(lines, part, day)];
  });
  const head = comment(`${plan.workout.title}, ${plan.athlete.name}: the log of ${day.date}`);
  if (entries.length > 0) return `${head}results:\n${entries.join("")}`;
  // What is no result is refused as one, but the coach must read it.
  const note = noteOf(day);
  return note === "" ? `${head}# Nothing was tapped.\n` : `${head}${comment(note)}`;
}

/** Whether there is anything to send: also a stop sign or a note where nothing was done. */
export const hasLog = (day: LoggedDay): boolean =>
  noteOf(day) !== "" || day.times.some((part) => linesOf(part, day).length > 0);

const comment = (text: string): string => `# ${text.replace(/\s+/g, " ")}\n`;

const noteOf = ({ state: { stopped, note = "" } }: LoggedDay): string =>
  [...(stopped === undefined ? [] : ["Stopped for a stop sign."]), note.trim()].filter(Boolean).join(" ");

function entryOf(lines: readonly string[], { part, state }: PartTimes, day: LoggedDay): string {
  const { plan, date, times } = day;
  const felt = feltOf({ part, state }, times);
  const note = noteOf(day);
  const all = [
    `athlete: ${plan.athlete.id}`,
    `workout: ${plan.workout.id}`,
    ...(plan.parts.length > 1 ? [`part: ${part.name}`] : []),
    `date: ${date}`,
    ...lines,
    ...(felt === undefined ? [] : [`felt: ${felt}`]),
    ...(state.version === "scaled" ? ["version: scaled"] : []),
    ...(note === "" ? [] : [`note: ${JSON.stringify(note)}`]),
  ];
  return all.map((line, index) => `${index === 0 ? "  - " : "    "}${line}\n`).join("");
}

/** How a part felt: as was tapped, else as was answered before the first lift after it. */
export function feltOf(
  { part, state }: Pick<PartTimes, "part" | "state">,
  times: readonly PartTimes[],
): Feeling | undefined {
  const body = times.find((one) => one.part.start.after === part.name)?.state.body;
  return state.felt ?? (body && FELT[body]);
}

function linesOf({ part, state, go }: PartTimes, { plan: { athlete } }: LoggedDay): readonly string[] {
  return [...workLines(part, state, go), ...liftLines(state, go, athlete.units)];
}

function workLines(
  part: PartTimes["part"],
  state: PartTimes["state"],
  go: number | undefined,
): readonly string[] {
  const { pacing } = part;
  if (pacing === undefined || go === undefined) return [];
  const { passed } = courseNow(pacing, part.format, state, state.ended ?? go);
  const marks = marksOf(pacing);
  const isWhole =
    passed.length === marks.length && pacing.ending === "finishes" && part.format === "for-time";
  const done = passed.at(-1)?.done;
  const splits = passed.map(({ done: clock }) => (clock === undefined ? '"?"' : sayClock(clock)));
  const tieBreak = passed.findLast(({ row, done: clock }) => clock !== undefined && isTieBreak(pacing, row));
  return [
    ...(isWhole && done !== undefined ? [`time: ${sayClock(done)}`] : []),
    ...(state.done === undefined ? [] : [scoreLine(state.done, pacing.score, pacing.perRound)]),
    ...(splits.length === 0 ? [] : [`splits: [${splits.join(", ")}]`]),
    ...(tieBreak?.done === undefined || isWhole ? [] : [`tie-break: ${sayClock(tieBreak.done)}`]),
  ];
}

const isTieBreak = ({ rows }: NonNullable<PartTimes["part"]["pacing"]>, row: number): boolean =>
  rows.find(({ index }) => index === row)?.tieBreak === true;

const scoreLine = (done: number, score: string, perRound: number | undefined): string =>
  score === "rounds-and-reps" && perRound !== undefined
    ? `rounds: ${Math.floor(done / perRound)} + ${done % perRound}`
    : `reps: ${done}`;

function liftLines(
  { lifts }: PartTimes["state"],
  go: number | undefined,
  units: "kg" | "lb",
): readonly string[] {
  if (lifts.length === 0) return [];
  const said = lifts.map(({ load, made, at }) => {
    const clock = go === undefined ? "" : ` ${sayClock(Math.max(0, (at - go) / 1000))}`;
    return `${sayMassFigure(massIn(units, kilograms(load)))} ${units} ${made ? "made" : "missed"}${clock}`;
  });
  const best = Math.max(0, ...lifts.filter(({ made }) => made).map(({ load }) => load));
  return [
    ...(best > 0 ? [`load: ${sayMassFigure(massIn(units, kilograms(best)))} ${units}`] : []),
    `attempts: [${said.join(", ")}]`,
  ];
}
