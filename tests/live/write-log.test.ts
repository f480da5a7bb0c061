import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import type { DayEvent } from "../../src/live/day-event.ts";
import { dayOf } from "../../src/live/day-plan.ts";
import { foldDay } from "../../src/live/day-state.ts";
import { marksOf } from "../../src/live/course-marks.ts";
import { partTimes } from "../../src/live/part-times.ts";
import { writeLog } from "../../src/live/write-log.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Workout } from "../../src/models/workout.ts";
import { addResults } from "../../src/reading/add-results.ts";
import { athleteReader } from "../../src/reading/read-athlete.ts";
import { readLog } from "../../src/reading/read-log.ts";
import { demoContext, demoData } from "../support/demo-data.ts";

const data = demoData();
const context = demoContext();
const athlete = data.athletes.find(({ id }) => id === "yuri-lesnoy") as Athlete;
const workoutOf = (id: string): Workout => data.workouts.find((one) => one.id === id) as Workout;
const planFor = (who: Athlete, workout: string) =>
  makePlan({ athlete: who, workout: workoutOf(workout), data, date: "2026-11-25" });
const GO = Date.parse("2026-11-27T17:20:00Z");

/** Taps at the marks of a part, each so many times as late as planned; `skip` marks nobody tapped. */
function taps(
  workout: string,
  part: string,
  pace: number,
  skip: readonly number[] = [],
): readonly DayEvent[] {
  const pacing = dayOf(planFor(athlete, workout)).parts.find(({ name }) => name === part)?.pacing;
  if (!pacing) throw new Error("not paced");
  return [
    { kind: "go", part, at: GO },
    ...marksOf(pacing).flatMap(({ row, planned }, at): readonly DayEvent[] =>
      skip.includes(at) ? [] : [{ kind: "passed", part, row, at: GO + 1000 * Math.round(pace * planned) }],
    ),
  ];
}

function logOf(workout: string, events: readonly DayEvent[]): string {
  const plan = dayOf(planFor(athlete, workout));
  const state = foldDay(events);
  const times = partTimes(plan, state, GO + 3_600_000);
  return writeLog({ plan, state, times, date: "2026-11-27" });
}

/** The athlete with the results of a log, as somebody gets who pastes it into the file. */
function withLog(log: string): Athlete {
  const read = readLog({ path: "a.log.yaml", text: log }, context, [athlete.id]);
  expect(read.faults).toEqual([]);
  const file = `name: Yuri\nlevel: competitor\n`;
  const text = addResults(
    file,
    log,
    read.entries.map(({ index }) => index),
  );
  if (text === undefined) throw new Error("the file can be read");
  const checked = athleteReader(context)({ path: "athletes/yuri-lesnoy.yaml", text });
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  return { ...athlete, results: checked.value.results };
}

describe("the log of a day", () => {
  it("comes back as results, and as a debrief that knows every clock", () => {
    const events: readonly DayEvent[] = [
      ...taps("lamp-oil", "a", 1.08),
      { kind: "body", part: "b", felt: "harder", at: GO + 400_000 },
      { kind: "lift", part: "b", lift: 0, load: 77.5, made: true, at: GO + 560_000 },
      { kind: "lift", part: "b", lift: 0, load: 80, made: false, at: GO + 660_000 },
      { kind: "felt", part: "a", felt: "hard", at: GO + 700_000 },
      { kind: "note", text: 'Rope "bit": slow\nfeet', at: GO + 710_000 },
    ];
    const log = logOf("lamp-oil", events);
    const done = withLog(log);
    expect(done.results).toHaveLength(2);
    const [a, b] = done.results;
    expect(a).toMatchObject({ workout: "lamp-oil", part: "a", date: "2026-11-27", felt: "hard" });
    expect(a?.splits).toHaveLength(4);
    expect(a?.time).toBe(a?.splits.at(-1));
    // The answer before the first lift was about part a, where a later one stands.
    expect(b?.felt).toBeUndefined();
    expect(a?.note).toBe('Rope "bit": slow\nfeet');
    expect(b?.attempts.map(({ load, made }) => [load.value, made])).toEqual([
      [77.5, true],
      [80, false],
    ]);
    const { debriefs = [] } = planFor(done, "lamp-oil");
    expect(debriefs.map(({ part }) => part)).toEqual(["a", "b"]);
    expect(debriefs[0]?.pieces.map(({ doneEnd }) => doneEnd)).toEqual(a?.splits);
  });

  it("leaves a question mark where nobody tapped, and the debrief spans it", () => {
    const log = logOf("lamp-oil", taps("lamp-oil", "a", 1, [1]));
    expect(log).toMatch(/splits: \[\d+:\d\d, "\?", \d+:\d\d, \d+:\d\d\]/);
    const { debriefs = [] } = planFor(withLog(log), "lamp-oil");
    expect(debriefs[0]?.pieces).toHaveLength(3);
  });

  it("tells rounds and reps where the clock ended the work", () => {
    const events: readonly DayEvent[] = [
      ...taps("tide-mill", "a", 1.02),
      { kind: "score", part: "a", done: 392, at: GO + 900_000 },
    ];
    const log = logOf("tide-mill", events);
    expect(log).toMatch(/rounds: 7 \+ 7/);
    expect(withLog(log).results[0]?.rounds).toEqual({ whole: 7, reps: 7 });
    expect(planFor(withLog(log), "tide-mill").debriefs?.[0]?.done).toBe(392);
  });

  it("tells how the work before the lifts was as that work's own", () => {
    const log = logOf("lamp-oil", [
      ...taps("lamp-oil", "a", 1.08),
      { kind: "body", part: "b", felt: "harder", at: GO + 400_000 },
      { kind: "lift", part: "b", lift: 0, load: 77.5, made: true, at: GO + 560_000 },
    ]);
    expect(withLog(log).results.map(({ part, felt }) => [part, felt])).toEqual([
      ["a", "hard"],
      ["b", undefined],
    ]);
  });

  it("says so where nothing was tapped, and then of a stop sign and a note", () => {
    expect(logOf("tide-mill", [])).toMatch(/# Nothing was tapped\./);
    const log = logOf("tide-mill", [
      { kind: "stopped", at: GO },
      { kind: "note", text: "Dizzy\nin the warm-up: I lay down", at: GO + 60_000 },
    ]);
    expect(log).toMatch(/\n# Stopped for a stop sign\. Dizzy in the warm-up: I lay down\n$/);
    expect(readLog({ path: "a.log.yaml", text: log }, context, [athlete.id]).entries).toEqual([]);
  });
});
