import type { Plan } from "../models/plan/plan.ts";
import { sayAbout, sayBecause } from "../wording/reason.ts";
import { sayGapClock, sayGapStep, sayGapStepName, sayGapTitle } from "../wording/gaps.ts";
import { sayCalledEarly, sayStartSlips } from "../wording/moved-start.ts";
import { saySetUp } from "../wording/set-up.ts";
import { sayBuildLoad, sayStep, sayBuildSet, sayStepTime, titleOfStep } from "../wording/warm-up.ts";
import type { Block, BlockLine, Detail } from "./block.ts";
import type { Run } from "./paragraph.ts";

/**
 * The warm-up counted back from the start, every build set with its plates. Short: without what to do at each step;
 * shorter: short steps that follow each other share a line, and sets stand behind their step; shortest: each of these in one
 * line, what does not fit left to the page.
 */
export function warmUpBlock({ warmUp, athlete }: Plan, detail: Detail): Block | undefined {
  if (!warmUp || warmUp.steps.length === 0) return undefined;
  const sets = (step: WarmUpStep): readonly BlockLine[] =>
    step.sets.map((set) => ({ runs: [{ text: sayBuildSet(set, athlete.units) }], indent: 0 }));
  const start: readonly WarmUpMoment[] = warmUp.start ? [{ time: warmUp.start, title: "Start" }] : [];
  const moments = warmUp.steps.map((step): WarmUpMoment => ({
    time: sayStepTime(step),
    title: titleOfStep(step),
    step,
  }));
  const title = warmUp.start ? "Warm-up" : "Warm-up, minutes to the start";
  if (detail === "shorter" || detail === "shortest") {
    const moments = shortMoments(warmUp.steps, athlete.units, detail === "shortest");
    const lines = [...moments, ...start.map(lineOf)];
    return { title, lines };
  }
  const lines = [...moments, ...start].flatMap(({ time, title: what, step }): readonly BlockLine[] => [
    {
      label: time,
      runs: [{ text: what, strong: true }, ...(step && detail === "full" ? [{ text: sayStep(step) }] : [])],
    },
    ...(step ? sets(step) : []),
  ]);
  const changes = detail === "full" ? [sayCalledEarly(warmUp.moved), sayStartSlips(warmUp.moved)] : [];
  return { title, lines: [...lines, ...changes.map((text) => ({ runs: [{ text }], indent: 0 }))] };
}

/** Long gaps between parts and inside them, on the clock of the workout. Short: what to do in a few words, the build in full. */
export function gapsBlock({ warmUp, athlete }: Plan, detail: Detail): Block | undefined {
  const gaps = warmUp?.gaps ?? [];
  const lines = gaps.flatMap((gap): readonly BlockLine[] => [
    { runs: [{ text: sayGapTitle(gap), strong: true }] },
    ...gap.steps.map((step): BlockLine => ({
      label: sayGapClock(gap, step),
      runs: [
        {
          text:
            detail === "full" || step.sets.length > 0
              ? sayGapStep(gap, step, athlete.units)
              : sayGapStepName(gap, step),
        },
      ],
    })),
  ]);
  return lines.length === 0 ? undefined : { title: "Long gaps", lines };
}

const lineOf = ({ time, title }: WarmUpMoment): BlockLine => ({
  label: time,
  runs: [{ text: title, strong: true }],
});

/** A step up to so many seconds long shares a line with its neighbours of that kind. */
const SHORT_STEP = 180;
/** Stages that keep a line of their own, however short. */
const OWN_LINE: readonly WarmUpStep["stage"][] = ["rehearsal", "rest"];

/**
 * The steps a line each, every build set behind its step; short ones of preparation that follow each other share a line. With
 * `inOneLine` each knows shorter words for where it would be broken: sets without plates, fewer names.
 */
function shortMoments(
  steps: readonly WarmUpStep[],
  units: Plan["athlete"]["units"],
  inOneLine: boolean,
): readonly BlockLine[] {
  const groups: WarmUpStep[][] = [];
  let open = false;
  for (const step of steps) {
    const short = step.sets.length === 0 && step.lasts <= SHORT_STEP && !OWN_LINE.includes(step.stage);
    const last = groups.at(-1);
    if (short && open && last) last.push(step);
    else groups.push([step]);
    open = short;
  }
  return groups.flatMap((group): readonly BlockLine[] => {
    const [first] = group;
    if (!first) return [];
    const label = sayStepTime(first);
    const titles = group.map(titleOfStep);
    const title = { text: titles.join(" · "), strong: true };
    const saySets = (say: (set: WarmUpStep["sets"][number]) => string): readonly Run[] =>
      first.sets.length === 0 ? [] : [{ text: first.sets.map(say).join("; ") }];
    const runs = [title, ...saySets((set) => sayBuildSet(set, units))];
    if (!inOneLine) return [{ label, runs }];
    const fewer = titles
      .slice(1)
      .map((_, left): readonly Run[] => [
        { text: titles.slice(0, -1 - left).join(" · "), strong: true },
        { text: `and ${left + 1} more` },
      ]);
    return [
      { label, runs, shorter: [[title, ...saySets((set) => sayBuildLoad(set, units))], ...fewer, [title]] },
    ];
  });
}

type WarmUpStep = NonNullable<Plan["warmUp"]>["steps"][number];
type WarmUpMoment = { readonly time: string; readonly title: string; readonly step?: WarmUpStep };

/** What to set out and check, to be ticked. */
export const setUpBlock = ({ setUp, athlete }: Plan): Block | undefined =>
  setUp.length === 0
    ? undefined
    : {
        title: "Set up",
        lines: setUp.map((line) => ({ tick: true, runs: [{ text: saySetUp(line, athlete.units) }] })),
      };

/** Standards, those that cost this athlete reps first and marked. Short: only those. */
export function standardsBlock({ standards }: Plan, detail: Detail): Block | undefined {
  const costly = standards.filter((standard) => standard.costsThisAthlete);
  const others = detail !== "full" ? [] : standards.filter((standard) => !standard.costsThisAthlete);
  const lines = [
    ...costly.map((standard): BlockLine => ({ tick: true, runs: [{ text: standard.say, strong: true }] })),
    ...others.map((standard): BlockLine => ({ tick: true, runs: [{ text: standard.say }] })),
  ];
  return lines.length === 0 ? undefined : { title: "Show your judge", lines };
}

/**
 * The option of each choice that decides, with the number behind it. Short: the option alone. A stated limit is not named: a sheet
 * hangs where others read it.
 */
export function choiceBlock({ choices, athlete }: Plan, detail: Detail): Block | undefined {
  const deciding = choices.filter((choice) => !choice.minor);
  const lines = deciding.map((choice): BlockLine => {
    const pick = { text: `${sayAbout(choice)}: ${choice.pick.name}.`, strong: true };
    if (detail !== "full") return { runs: [pick] };
    const more = [
      choice.pick.say,
      ...(choice.decidedBy === "limit" ? [] : [sayBecause(choice, athlete.units) ?? ""]),
      ...(choice.switchWhen ? [choice.switchWhen] : []),
    ];
    return { runs: [pick, { text: more.filter((text) => text !== "").join(" ") }] };
  });
  return lines.length === 0 ? undefined : { title: "How to move", lines };
}
