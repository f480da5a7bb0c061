import { cardFacts } from "../../src/card/card-facts.ts";
import { briefText } from "../../src/cli/brief-text.ts";
import { SHARED_FACTS } from "../../src/models/vocabulary.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { BLOCK_IDS, blockOf } from "../../src/sheet/block-list.ts";
import { sayCeiling } from "../../src/wording/ceiling.ts";
import { sayEnding } from "../../src/wording/ending.ts";
import { sayGoal } from "../../src/wording/goal.ts";
import { sayLoad } from "../../src/wording/mass.ts";
import { clockShift } from "../../src/wording/part-clock.ts";

/** Clocks that a text calls a cap. */
const capsIn = (text: string): readonly string[] =>
  [...text.matchAll(/cap of ([\d:]+)/gu)].map(([, clock = ""]) => clock);

const plain = (text: string): string => text.replaceAll(/\s+/gu, " ");

/** What a private page must say as the terminal does: goal, how the work ends, the floor, the loads of the lifts. `page`: its text. */
export function disagreementsOfPage(plan: Plan, page: string): readonly string[] {
  const terminal = plain(briefText(plan));
  const { units } = plan.athlete;
  const goal = sayGoal(plan);
  const said = plan.parts.flatMap((part) => [
    ...(part.pacing
      ? [
          sayEnding(part.pacing, { units, perRound: part.pacing.perRound }),
          sayCeiling(part.pacing, clockShift(part)),
        ]
      : []),
    ...(part.lifting?.lifts.flatMap(({ attempts }) => attempts.map(({ load }) => sayLoad(load, units))) ??
      []),
  ]);
  const must = [...(goal ? [goal.label, goal.figure, goal.range] : []), ...said].flatMap((text) =>
    text === undefined || text === "" ? [] : [plain(text)],
  );
  const written = new Set(capsIn(terminal));
  return [
    ...must.filter((text) => !page.includes(text)).map((text) => `not on the page: ${text}`),
    ...must.filter((text) => !terminal.includes(text)).map((text) => `not in the terminal: ${text}`),
    ...capsIn(page)
      .filter((clock) => !written.has(clock))
      .map((clock) => `a cap of ${clock} on the page alone`),
  ];
}

/** Where terminal, sheet and card do not say the same of one plan: what is aimed at, the cap, the loads lifted. */
export function disagreements(plan: Plan): readonly string[] {
  const shared = { ...plan, athlete: { ...plan.athlete, shares: [...SHARED_FACTS], anonymous: true } };
  const terminal = plain(briefText(plan));
  const sheet = plain(
    BLOCK_IDS.flatMap((id) => blockOf(plan, id, "full")?.lines ?? [])
      .map(({ label = "", runs }) => `${label} ${runs.map(({ text }) => text).join("")}`)
      .join(" "),
  );
  const card = cardFacts(shared);
  const goal = sayGoal(plan);
  const written = new Set(capsIn(terminal));
  const found: string[] = [];
  if (goal && !terminal.includes(plain(`${goal.figure} ${goal.unit}`.trim())))
    found.push("no goal in the terminal");
  if (goal && card.goal && (card.goal.figure !== goal.figure || card.goal.label !== goal.label))
    found.push(
      `the card aims at ${card.goal.label} ${card.goal.figure}, the brief at ${goal.label} ${goal.figure}`,
    );
  for (const clock of capsIn(`${sheet} ${card.goal?.label ?? ""}`))
    if (!written.has(clock)) found.push(`a cap of ${clock} that the brief does not know`);
  for (const load of (card.loads ?? "").match(/\d+(\.\d+)?/gu) ?? [])
    if (!terminal.includes(load)) found.push(`a load of ${load} that the brief does not know`);
  return found;
}
