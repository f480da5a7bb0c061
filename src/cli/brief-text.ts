import { sayGym } from "../wording/gym-name.ts";
import { sayMissing } from "../wording/missing.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayCoachWord } from "../wording/coach-word.ts";
import { sayMoment } from "../wording/date.ts";
import { sayEightInTen, sayGoal } from "../wording/goal.ts";
import { sameReasons, sayInstead, sayLeftOut, sayWhyLeftOut } from "../wording/left-out.ts";
import { sayLimit } from "../wording/limits.ts";
import { sayLoad } from "../wording/mass.ts";
import { sayPerSide } from "../wording/plates.ts";
import { afterText, careText, choicesText, groundsText, setUpText, warmUpText } from "./brief-around.ts";
import { liftText, workText } from "./brief-parts.ts";
import { debriefText } from "./debrief-text.ts";
import { columns, edges, heading, wrap } from "./text-block.ts";
import { visiblePlan } from "./visible-plan.ts";

/** A brief as lines for a terminal of 80 columns. Headings may be set off by the caller. */
export function briefText(given: Plan, strong: (text: string) => string = (text) => text): string {
  const plan = visiblePlan(given);
  const blocks: readonly (readonly string[])[] = [
    headText(plan, strong),
    section("How it went", debriefText(plan), strong),
    (plan.limits ?? []).flatMap((limit) => wrap(`Your limit. ${sayLimit(limit)}`, 2)),
    sameReasons(plan.withheld).flatMap((entries) =>
      wrap(
        [...entries.flatMap((entry) => [sayLeftOut(entry), sayInstead(entry)]), sayWhyLeftOut(entries)]
          .filter(Boolean)
          .join(" "),
        2,
      ),
    ),
    ...plan.parts.map((part) => [
      strong(heading(`${part.name}  ${part.title}`)),
      ...part.prescription.flatMap((line) => wrap(line.trim(), 2 + (line.length - line.trimStart().length))),
      ...(part.pacing ? ["", ...workText(part, plan)] : []),
      ...(part.lifting ? ["", ...liftText(part, plan)] : []),
      ...part.missing.flatMap((why) => wrap(`Not planned: ${sayMissing(why, plan.athlete.units)}`, 2)),
    ]),
    section("Warm-up", warmUpText(plan), strong),
    section("How to do it", choicesText(plan), strong),
    section("Set up", setUpText(plan), strong),
    section("After", afterText(plan), strong),
    section("Take care", careText(plan), strong),
    section("What this rests on", groundsText(plan), strong),
  ];
  return blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n");
}

const section = (
  title: string,
  lines: readonly string[],
  strong: (text: string) => string,
): readonly string[] => (lines.length === 0 ? [] : [strong(heading(title)), ...lines]);

function headText(plan: Plan, strong: (text: string) => string): readonly string[] {
  const { athlete, workout, start, gym, headline } = plan;
  const goal = sayGoal(plan);
  const opener = goal?.label === "open with" ? undefined : headline.firstLoad;
  const [title = "", ...rest] = edges(workout.title, athlete.name);
  return [
    strong(title),
    ...rest,
    ...edges(
      [start ? sayMoment(start.local) : "start not set", sayGym(gym)].join(", "),
      `${athlete.division}${athlete.divisionAssumed ? " (assumed)" : ""}, ${athlete.level}`,
    ),
    ...(workout.summary ? wrap(workout.summary) : []),
    "",
    ...columns(
      [
        ...(goal
          ? [[goal.label, `${goal.figure} ${goal.unit}`.trim(), goal.range ? sayEightInTen(goal.range) : ""]]
          : []),
        ...(opener ? [["first lift", sayLoad(opener, athlete.units), sayPerSide(opener) ?? ""]] : []),
      ],
      ["left", "right"],
    ),
    ...(plan.coachWord
      ? ["", ...sayCoachWord(plan.coachWord, athlete.units).flatMap((line) => wrap(line, 2))]
      : []),
    ...(athlete.note ? ["", ...wrap(athlete.note, 2)] : []),
  ];
}
