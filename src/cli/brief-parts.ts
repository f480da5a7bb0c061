import { sayGrounds } from "../wording/grounds.ts";
import type { PartPlan, Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayAfterMiss } from "../wording/after-miss.ts";
import {
  LIFTED_AND_MADE,
  ONLY_IF_WELL,
  sayFeel,
  sayFinish,
  sayFinishPlan,
  sayForWhat,
  strengthNow,
  sayLifted,
  sayMissesEnd,
} from "../wording/lift-words.ts";
import { sayRow } from "../wording/amount.ts";
import { sayCeiling } from "../wording/ceiling.ts";
import { sayEarlyChange } from "../wording/early-splits.ts";
import { equalRounds } from "../wording/equal-rounds.ts";
import { sayEnding } from "../wording/ending.ts";
import { sayGuide, sayHalf } from "../wording/guide.ts";
import { sayIfThenSentence } from "../wording/if-then.ts";
import { sayKilograms, sayLoad } from "../wording/mass.ts";
import { sayVisitPace } from "../wording/pace.ts";
import { saySpeed } from "../wording/speed.ts";
import { clockShift, sayWhichClock } from "../wording/part-clock.ts";
import { sayPlaces, sayTogether } from "../wording/places.ts";
import { sayPerSide } from "../wording/plates.ts";
import { sayRestRow } from "../wording/rest-row.ts";
import { sayRange } from "../wording/score.ts";
import { sayHow } from "../wording/sets.ts";
import { sayChance, sayShare } from "../wording/share.ts";
import { sayClock } from "../wording/time.ts";
import { columns, wrap } from "./text-block.ts";

type Row = NonNullable<PartPlan["pacing"]>["rows"][number];
type Round = NonNullable<PartPlan["pacing"]>["rounds"][number];

function sayWork(row: Row, units: MassUnit): string {
  const what = `${sayRow(row)}${row.load ? ` ${sayLoad(row.load, units)}` : ""}`;
  const how = [sayHow(row), sayVisitPace(row)].filter((said) => said !== undefined).join("; ");
  return `${what}${how === "" ? "" : `: ${how}`}${row.tieBreak ? " (tie-break time)" : ""}`;
}

/** A round row by row with its clocks; rounds gone about alike once, with the clocks at which each ends. */
function roundText(
  rounds: readonly Round[],
  { rows, rounds: all }: NonNullable<PartPlan["pacing"]>,
  units: MassUnit,
  shift: number,
): readonly (readonly string[])[] {
  const [first] = rounds;
  const last = rounds.at(-1);
  if (!first || !last) return [];
  const label =
    all.length > 1 ? [first, ...(last === first ? [] : [last])].map((one) => one.label).join("–") : "";
  const said = rows
    .filter((row) => row.round === first.round)
    .map((row) => [
      label,
      last === first ? sayClock(row.end + shift) : "",
      last === first ? sayShare(row.shareOfWork) : "",
      row.kind === "rest" ? sayRestRow(row, units) : sayWork(row, units),
    ]);
  if (last === first) return said;
  const ends = rounds.map((one) => sayClock(one.end + shift)).join(", ");
  const done = rows.findLast((row) => row.round === last.round)?.shareOfWork ?? 0;
  return [...said, [label, sayClock(last.end + shift), sayShare(done), `rounds done at ${ends}`]];
}

/** The work of a part: every row with its clock, rounds alike together, then what to know about it. */
export function workText(part: PartPlan, plan: Plan): readonly string[] {
  const { pacing, places } = part;
  if (!pacing) return [];
  const { units } = plan.athlete;
  const shift = clockShift(part);
  const context = { units, perRound: pacing.perRound };
  const inRounds = pacing.rounds.length > 1;
  const rows = equalRounds(pacing).flatMap((rounds) => roundText(rounds, pacing, units, shift));
  const half = pacing.half && sayHalf(pacing, sayClock(pacing.half.clock + shift));
  return [
    ...columns(
      [[inRounds ? "round" : "", "clock", "done", sayWhichClock(part) ?? ""], ...rows],
      ["left", "right", "right"],
    ),
    "",
    ...[
      sayGuide(pacing, part === plan.parts.at(-1)),
      saySpeed(pacing),
      sayCeiling(pacing, shift),
      half,
      ...pacing.ifThen.map((one) => sayIfThenSentence(one, pacing, context, shift)),
      sayEnding(pacing, context),
      sayEarlyChange(pacing),
      ...(places ? sayPlaces(places, units) : []),
      ...sayTogether(part, units),
    ].flatMap((line) => (line === undefined || line === "" ? [] : wrap(line, 2, 4))),
  ];
}

/** What a field tells of a part, and how ties of it are broken, after an empty line; nothing where neither is known. */
function compared(part: PartPlan, units: MassUnit): readonly string[] {
  const lines = [...(part.places ? sayPlaces(part.places, units) : []), ...sayTogether(part, units)];
  return lines.length === 0 ? [] : ["", ...lines];
}

/** The lifts of a part: the made line with plates and what to do after a miss, then the finish table. */
export function liftText(part: PartPlan, plan: Plan): readonly string[] {
  const { lifting } = part;
  if (!lifting) return [];
  const { units } = plan.athlete;
  const shift = clockShift(part);
  const lifts = lifting.lifts.flatMap((lift) => [
    ...wrap(
      `${lift.name}: best ${sayForWhat(lift) === "" ? "" : "single "}today ${sayKilograms(lift.best.kilograms, units)} (${sayGrounds(lift.best.from)}), ${sayKilograms(strengthNow(lift), units)}${sayForWhat(lift)} when the window opens, expected ${sayRange("load", lift.expected, { units })} ${units}${lifting.sum && lifting.lifts.length === 1 ? " in all rounds" : ""}; last start ${sayClock(lift.lastStart)}`,
      2,
      4,
    ),
    ...columns(
      [
        ["", "at", "load", "lifted", "made", "a side; if missed"],
        ...lift.attempts.map((attempt) => [
          `${attempt.number}`,
          sayClock(attempt.clock + shift),
          sayLoad(attempt.load, units),
          sayLifted(attempt),
          sayChance(attempt.made),
          [
            sayPerSide(attempt.load),
            attempt.onlyIfWell && ONLY_IF_WELL,
            sayAfterMiss(attempt.afterMiss, shift),
          ]
            .filter(Boolean)
            .join("; "),
        ]),
      ],
      ["right", "right", "right", "right", "right"],
    ),
    ...wrap(LIFTED_AND_MADE, 2, 4),
    ...sayFeel(lift, units).flatMap((line) => wrap(line, 2, 4)),
    // Where all made loads are added every round is lifted, whatever was missed.
    ...(lifting.sum && lifting.lifts.length === 1 ? [] : wrap(sayMissesEnd(lift, shift) ?? "", 2, 4)),
  ]);
  const table = lifting.finishTable.map((row) => [sayFinish(row), sayFinishPlan(row)]);
  const title = part.start.after ? `If part ${part.start.after} ends at` : "If it starts at";
  return [
    ...lifts,
    ...(table.length > 0 ? ["", `  ${title}`, ...columns(table, ["right"])] : []),
    // Work that is paced has told its places with its pace.
    ...(part.pacing
      ? []
      : compared(part, units).flatMap((line) => (line === "" ? [line] : wrap(line, 2, 4)))),
  ];
}
