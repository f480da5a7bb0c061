import type { Plan } from "../../models/plan/plan.ts";
import { capitalised, sayBasis, saySharpen } from "../../wording/basis.ts";
import { sayDate, sayMoment } from "../../wording/date.ts";
import { sayEightInTen, sayGoal } from "../../wording/goal.ts";
import { heading, listed, wrap } from "./lines.ts";
import { afterLines } from "./after-lines.ts";
import { partLines } from "./part-lines.ts";
import { choiceLines } from "./choice-lines.ts";
import { warmUpLines } from "./warm-up-lines.ts";

/** A whole brief for a terminal of 80 columns: the same plan and the same words as page and sheet. */
export function terminalBrief(plan: Plan): string {
  const sections: readonly (readonly string[])[] = [
    headLines(plan),
    withheldLines(plan),
    ...plan.parts.map((part) => partLines(part, plan)),
    warmUpLines(plan),
    choiceLines(plan),
    listed(
      "STANDARDS",
      plan.standards.map(({ say, costsThisAthlete }) => (costsThisAthlete ? `${say} (costs you reps)` : say)),
    ),
    listed("SET OUT AND CHECK", plan.setUp),
    afterLines(plan),
    listed(
      "TAKE CARE",
      plan.cautions.map(({ title, say }) => `${title}: ${say}`),
    ),
    listed("WHAT THIS RESTS ON", [
      ...plan.basis.map(sayBasis),
      ...(plan.sharpen === undefined ? [] : [saySharpen(plan.sharpen)]),
    ]),
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function headLines(plan: Plan): readonly string[] {
  const goal = sayGoal(plan);
  const { athlete, workout, start, date } = plan;
  const who = `${athlete.name}, ${athlete.division}${athlete.divisionAssumed ? " (assumed)" : ""}`;
  const when = start === undefined ? `plan of ${sayDate(date)}` : `start ${sayMoment(start.local)}`;
  return [
    heading(workout.title.toUpperCase()),
    ...wrap(`${who}, ${when}`),
    ...(workout.summary === undefined ? [] : wrap(workout.summary)),
    ...(goal === undefined
      ? []
      : [
          "",
          `${capitalised(goal.label)}: ${[goal.figure, goal.unit].filter((text) => text !== "").join(" ")}` +
            (goal.range === undefined ? "" : `   ${sayEightInTen(goal.range)}`),
        ]),
  ];
}

const withheldLines = ({ withheld }: Plan): readonly string[] =>
  listed(
    "NOT PLANNED FOR YOU",
    withheld.map(
      ({ title, why, ask, instead }) =>
        `${title}. ${why} ${ask}${instead === undefined ? "" : ` Planned in its place: ${instead}.`}`,
    ),
  );
