import { cardFacts } from "../../src/card/card-facts.ts";
import { briefText } from "../../src/cli/brief-text.ts";
import { SHARED_FACTS } from "../../src/models/vocabulary.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { BLOCK_IDS, blockOf } from "../../src/sheet/block-list.ts";
import { sayGoal } from "../../src/wording/goal.ts";

/** Clocks that a text calls a cap. */
const capsIn = (text: string): readonly string[] =>
  [...text.matchAll(/cap of ([\d:]+)/gu)].map(([, clock = ""]) => clock);

const plain = (text: string): string => text.replaceAll(/\s+/gu, " ");

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
