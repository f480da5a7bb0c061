import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayDay, sayDayTitle, sayExtent, sayLeaveOut, sayPieceExtent, sayWork } from "../wording/after.ts";
import { capitalised, sayBasis, saySharpen } from "../wording/basis.ts";
import { sayGapClock, sayGapStep, sayGapTitle } from "../wording/gaps.ts";
import { sayLearned } from "../wording/learned.ts";
import { sayLoad } from "../wording/mass.ts";
import { sayCalledEarly, sayStartSlips } from "../wording/moved-start.ts";
import { sayNearest, sayPerSide } from "../wording/plates.ts";
import { LITTLE_HANGS_ON, sayAbout, sayBecause, sayChangeAt } from "../wording/reason.ts";
import { saySetUp } from "../wording/set-up.ts";
import { sayMinutes } from "../wording/time.ts";
import { sayStep, sayBuild, sayBuildSet, sayDropped, sayStepTime, titleOfStep } from "../wording/warm-up.ts";
import { columns, wrap } from "./text-block.ts";

type Choice = Plan["choices"][number];

/** The warm-up by the clock. */
export function warmUpText({ warmUp, athlete }: Plan): readonly string[] {
  if (!warmUp) return [];
  const steps = warmUp.steps.map((step) => [
    sayStepTime(step),
    `${titleOfStep(step)}, ${sayMinutes(step.lasts)}. ${sayStep(step)} ${step.sets.map((set) => sayBuildSet(set, athlete.units)).join("; ")}`,
  ]);
  return [
    ...warmUp.before.flatMap(({ title, say }) => wrap(`Before, ${title}: ${say}`, 2, 4)),
    ...columns([...steps, ...(warmUp.start ? [[warmUp.start, "Start"]] : [])], ["right"]),
    ...[
      warmUp.build && sayBuild(warmUp.build, athlete.units),
      sayCalledEarly(warmUp.moved),
      sayStartSlips(warmUp.moved),
      ...warmUp.dropped.map(sayDropped),
    ].flatMap((line) => (line ? wrap(line, 2, 4) : [])),
    ...warmUp.gaps.flatMap((gap) => [
      "",
      ...wrap(sayGapTitle(gap), 2, 4),
      ...columns(
        gap.steps.map((step) => [sayGapClock(gap, step), sayGapStep(gap, step, athlete.units)]),
        ["right"],
      ),
    ]),
  ];
}

/** The choices that decide, with what decided them; of the others what to do. */
export const choicesText = ({ choices, athlete }: Plan): readonly string[] => {
  const minor = choices.filter((choice) => choice.minor);
  return [
    ...choices.filter((choice) => !choice.minor).map((choice) => choiceText(choice, athlete.units)),
    ...(minor.length > 0 ? [`${LITTLE_HANGS_ON}:`] : []),
    ...minor.map((choice) => headOfChoice(choice)),
  ].flatMap((line) => wrap(line, 2, 4));
};

const headOfChoice = (choice: Choice): string =>
  `${sayAbout(choice)}, ${choice.question} ${capitalised(choice.pick.name)}: ${choice.pick.say}`;

const choiceText = (choice: Choice, units: MassUnit): string =>
  [
    headOfChoice(choice),
    sayBecause(choice, units),
    sayChangeAt(choice, units),
    choice.switchWhen,
    choice.test,
  ]
    .filter(Boolean)
    .join(" ");

/** Loads with plates, what to set out, what the judge looks at, rules. */
export const setUpText = ({ loads, setUp, standards, workout, athlete }: Plan): readonly string[] =>
  [
    ...loads.map(({ name, load }) =>
      [`${capitalised(name)}: ${sayLoad(load, athlete.units)}`, sayPerSide(load), sayNearest(load)]
        .filter(Boolean)
        .join(", "),
    ),
    ...setUp.map((line) => `[ ] ${saySetUp(line, athlete.units)}`),
    ...standards.map(({ say, costsThisAthlete }) =>
      costsThisAthlete ? `Judge (watch this): ${say}` : `Judge: ${say}`,
    ),
    ...workout.rules.map((rule) => `Rule: ${rule}`),
  ].flatMap((line) => wrap(line, 2, line.startsWith("[ ]") ? 6 : 4));

/** What to do afterwards. */
export const afterText = ({ after, athlete }: Plan): readonly string[] =>
  [
    ...(after?.steps ?? []).map(
      (step) =>
        `${step.title}${sayExtent(step) === undefined ? "" : ` (${sayExtent(step) ?? ""})`}: ${step.say}`,
    ),
    ...(after ? dayText(after.day, athlete.units) : []),
  ].flatMap((line) => wrap(line, 2, 4));

function dayText(day: NonNullable<Plan["after"]>["day"], units: MassUnit): readonly string[] {
  const pieces = day.pieces.map((piece, at) => {
    const extent = sayPieceExtent(piece);
    const head = `${at + 1}. ${piece.title}${extent === "" ? "" : ` (${extent})`}: ${piece.say}`;
    return [head, ...piece.work.map((work) => `${sayWork(work, units)}.`)].join(" ");
  });
  return [`${sayDayTitle(day)}. ${sayDay(day)}`, ...pieces, sayLeaveOut(day) ?? ""].filter(
    (line) => line !== "",
  );
}

/** Cautions, stop signs first. */
export const careText = ({ cautions }: Plan): readonly string[] =>
  (["stop", "care", "rule"] as const)
    .flatMap((weight) => cautions.filter((caution) => caution.weight === weight))
    .flatMap(({ title, say }) => wrap(`${title}: ${say}`, 2, 4));

/** What the plan rests on, and the one test that would tell most. */
export const groundsText = ({ basis, sharpen, learned }: Plan): readonly string[] =>
  [
    ...(learned ? sayLearned(learned) : []),
    ...basis.map(sayBasis),
    ...(sharpen ? [`To know more: ${saySharpen(sharpen)}`] : []),
  ].flatMap((line) => wrap(line, 2, 4));
