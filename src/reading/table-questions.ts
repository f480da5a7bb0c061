import type { AskedCell } from "./tables/cell-reading.ts";
import type { Layout } from "./tables/lay-out.ts";
import { type Question, sayChoice } from "./tables/questions.ts";
import { type Column, isMass } from "./tables/settle-columns.ts";
import { columnIn } from "./tables/sheet.ts";

/** Questions about the whole table, whose answers settle many cells. */
export function wholeQuestions({ sheet }: Layout) {
  const ask = (text: string, proposals: readonly string[]): Question => ({
    text,
    cell: sheet.name,
    proposals,
  });
  return {
    loads: ask("Are the loads and body masses without a unit in kg or in lb?", ["kg", "lb"]),
    level: ask("Which level have those for whom the table says none: new, regular, competitor or elite?", [
      "new",
      "regular",
      "competitor",
      "elite",
    ]),
    sex: ask(
      "Are those of whom the table does not say it women or men? Where some are each write ?, and tell it in a column `sex` of the table.",
      ["female", "male", "?"],
    ),
    dates: ask("Are dates such as 3/4/26 written day first or month first?", ["day first", "month first"]),
    capped: ask("Is the number behind the cap, as in CAP+28, reps left or reps done?", ["left", "done"]),
    ages: ask("In which year were the ages of the table right?", []),
  };
}

/** Questions whose answers hold for the whole table. */
export type Whole = ReturnType<typeof wholeQuestions>;

/** Asks what a column holds whose heading does not say it. */
export function columnQuestion(
  { sheet }: Layout,
  { index, heading, meaning, samples }: Column,
): { readonly index: number; readonly question?: Question } {
  if (meaning.kind !== "unclear") return { index };
  const choice =
    meaning.proposals.length === 0
      ? " Say it in other words, such as `2k row`, `max pull-ups` or `back squat`, or write `nothing`."
      : ` Is it ${sayChoice(meaning.proposals)}?`;
  const title = heading === "" ? "without a heading" : `"${heading}"`;
  const text = `What does the column ${title} hold (${samples.join(", ")})?${choice}`;
  return {
    index,
    question: { text, cell: `${sheet.name}!${columnIn(sheet, index)}`, proposals: meaning.proposals },
  };
}

/** A doubt that many cells share: an answer to it settles the table, or all cells of the column that say the same. */
export function sharedQuestion(
  { heading, meaning }: Column,
  raw: string,
  { problem, proposals }: AskedCell,
  whole: Whole,
): { readonly question: Question; readonly settles: "table" | "cell" } | undefined {
  if (problem.startsWith("day and month can be read in either order"))
    return { question: whole.dates, settles: "table" };
  if (problem.startsWith("the number behind the cap")) return { question: whole.capped, settles: "table" };
  if (problem === "the unit is missing" && isMass(meaning))
    return { question: whole.loads, settles: "table" };
  const isWord =
    meaning.kind === "entry" &&
    ["level", "sex", "gym", "division", "recovery", "units"].includes(meaning.entry);
  if (!isWord) return undefined;
  const choice = sayChoice(meaning.entry === "level" ? whole.level.proposals : proposals);
  const text = `What does "${raw}" in the column "${heading}" mean${choice === "" ? "" : `: ${choice}`}?`;
  return { question: { text, cell: heading, proposals }, settles: "cell" };
}

/** A line to send: what stands there, why it is asked, and what it may be. */
export function sayDoubt({ heading }: Column, raw: string, { problem, proposals }: AskedCell): string {
  const choice = proposals.length === 0 ? "What is right?" : `Is it ${sayChoice(proposals)}?`;
  return `your ${heading} says "${raw.replace(/\s+/g, " ")}", but ${problem}. ${choice}`;
}
