import type { PartPlan, Plan } from "../../models/plan/plan.ts";
import { sayAfterMiss } from "../../wording/after-miss.ts";
import { sayRow } from "../../wording/amount.ts";
import { sayEnding } from "../../wording/ending.ts";
import { sayIfThenSentence } from "../../wording/if-then.ts";
import { sayLoad } from "../../wording/mass.ts";
import { sayPace } from "../../wording/pace.ts";
import { clockShift, sayWhichClock } from "../../wording/part-clock.ts";
import { sayPart } from "../../wording/part-name.ts";
import { sayExpectedPlace, sayWorth } from "../../wording/places.ts";
import { sayPlateFigures } from "../../wording/plates.ts";
import { sayRange } from "../../wording/score.ts";
import { saySetsAndRests } from "../../wording/sets.ts";
import { sayChance } from "../../wording/share.ts";
import { sayClock } from "../../wording/time.ts";
import { columns, heading, listed, wrap } from "./lines.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Lift = NonNullable<PartPlan["lifting"]>["lifts"][number];

/** One part: the work as written, the pacing row by row, the attempts, and what it is worth. */
export function partLines(part: PartPlan, plan: Plan): readonly string[] {
  const clock = sayWhichClock(part);
  return [
    heading(`${sayPart(part.name)}. ${part.title}`),
    ...part.prescription.map((line) => `  ${line}`),
    ...(clock === undefined ? [] : [`  (${clock})`]),
    ...(part.pacing === undefined ? [] : ["", ...pacingLines(part.pacing, part, plan)]),
    ...(part.lifting?.lifts ?? []).flatMap((lift) => ["", ...liftLines(lift, part, plan)]),
    ...(part.places === undefined
      ? []
      : ["", ...wrap([sayExpectedPlace(part.places), sayWorth(part.places)].filter(Boolean).join(" "))]),
    ...(part.missing.length === 0 ? [] : ["", ...listed("Not computed", part.missing)]),
  ];
}

function pacingLines(pacing: Pacing, part: PartPlan, { athlete }: Plan): readonly string[] {
  const context = { units: athlete.units, perRound: pacing.perRound };
  const shift = clockShift(part);
  const rows = pacing.rows.map((row) => [
    row.kind === "rest" ? "" : String(row.round),
    row.kind === "rest" ? "rest" : sayRow(row),
    row.load === undefined ? "" : sayLoad(row.load, athlete.units),
    row.displayed !== undefined
      ? sayPace(row.displayed)
      : row.sets.length > 1
        ? saySetsAndRests(row.sets)
        : row.kind === "work"
          ? "unbroken"
          : "",
    sayClock(row.end + shift) + (row.tieBreak ? " tie-break" : ""),
  ]);
  const ending = sayEnding(pacing, context);
  const half =
    pacing.half === undefined ? [] : [`Half of the work is done at ${sayClock(pacing.half.clock + shift)}.`];
  const ceiling =
    pacing.ceiling === undefined
      ? []
      : [`No faster than ${sayClock(pacing.ceiling.seconds)} for the first round.`];
  const hard = pacing.hard === undefined ? [] : [`It gets hard in round ${pacing.hard.round}.`];
  return [
    ...columns([["Round", "Work", "Load", "How", "Clock"], ...rows], [0]),
    "",
    ...wrap(
      [
        ...(ending === undefined ? [] : [ending]),
        `Eight days in ten: ${sayRange(pacing.score, pacing.result, context)}.`,
        ...half,
        ...ceiling,
        ...hard,
      ].join(" "),
    ),
    ...pacing.ifThen.flatMap((ifThen) => wrap(sayIfThenSentence(ifThen, pacing, context))),
  ];
}

function liftLines(lift: Lift, part: PartPlan, { athlete }: Plan): readonly string[] {
  const shift = clockShift(part) - part.start.clock;
  const rows = lift.attempts.map((attempt) => [
    String(attempt.number),
    sayClock(attempt.clock + part.start.clock + shift),
    sayLoad(attempt.load, athlete.units),
    sayPlateFigures(attempt.load) ?? "",
    sayChance(attempt.chance),
    sayAfterMiss(attempt.afterMiss, part.start.clock + shift),
  ]);
  return [
    lift.name,
    ...columns([["Lift", "Start", "Load", "Each side", "Made", "After a miss"], ...rows], [0]),
    `No lift starts after ${sayClock(lift.lastStart)}.`,
  ];
}
