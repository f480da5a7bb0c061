import type { Plan } from "../models/plan/plan.ts";
import { sayBecause } from "../wording/reason.ts";
import { capitalised } from "../wording/basis.ts";
import { sayBuildSet, sayStepTime } from "../wording/warm-up.ts";
import type { Block, BlockLine } from "./block.ts";

/** The warm-up counted back from the start, every build set with its plates. Short: without what to do at each step. */
export function warmUpBlock({ warmUp, athlete }: Plan, short: boolean): Block | undefined {
  if (!warmUp || warmUp.steps.length === 0) return undefined;
  const lines = warmUp.steps.flatMap((step): readonly BlockLine[] => [
    {
      label: sayStepTime(step),
      runs: [{ text: step.title, strong: true }, ...(short ? [] : [{ text: step.say }])],
    },
    ...step.sets.map((set): BlockLine => ({ runs: [{ text: sayBuildSet(set, athlete.units) }], indent: 0 })),
  ]);
  const start: readonly BlockLine[] = warmUp.start
    ? [{ label: warmUp.start, runs: [{ text: "Start", strong: true }] }]
    : [];
  const changes = short ? [] : [warmUp.ifEarly, warmUp.ifLate].filter((text) => text !== "");
  const title = warmUp.start ? "Warm-up" : "Warm-up, minutes to the start";
  return { title, lines: [...lines, ...start, ...changes.map((text) => ({ runs: [{ text }], indent: 0 }))] };
}

/** What to set out and check, to be ticked. */
export const setUpBlock = ({ setUp }: Plan): Block | undefined =>
  setUp.length === 0
    ? undefined
    : { title: "Set out", lines: setUp.map((text) => ({ tick: true, runs: [{ text }] })) };

/** Standards, those that cost this athlete reps first and marked. Short: only those. */
export function standardsBlock({ standards }: Plan, short: boolean): Block | undefined {
  const costly = standards.filter((standard) => standard.costsThisAthlete);
  const others = short ? [] : standards.filter((standard) => !standard.costsThisAthlete);
  const lines = [
    ...costly.map((standard): BlockLine => ({ tick: true, runs: [{ text: standard.say, strong: true }] })),
    ...others.map((standard): BlockLine => ({ tick: true, runs: [{ text: standard.say }] })),
  ];
  return lines.length === 0 ? undefined : { title: "Show your judge", lines };
}

/**
 * The option of each choice, with the number that decided. Short: the option alone. A stated limit is not named: a sheet
 * hangs where others read it.
 */
export function choiceBlock({ choices, athlete }: Plan, short: boolean): Block | undefined {
  const lines = choices.map((choice): BlockLine => {
    const pick = { text: `${capitalised(choice.movementName)}: ${choice.pick.name}.`, strong: true };
    if (short) return { runs: [pick] };
    const more = [
      choice.pick.say,
      ...(choice.decidedBy === "limit" ? [] : [`${capitalised(sayBecause(choice, athlete.units))}.`]),
      ...(choice.switchWhen ? [choice.switchWhen] : []),
    ];
    return { runs: [pick, { text: more.join(" ") }] };
  });
  return lines.length === 0 ? undefined : { title: "How to move", lines };
}
