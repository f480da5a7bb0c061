import type { Column } from "../reading/tables/settle-columns.ts";
import type { Meaning } from "../reading/tables/meaning.ts";
import { columnIn, type Sheet } from "../reading/tables/sheet.ts";
import { counted } from "./counted.ts";
import type { Import } from "./import-tables.ts";

const SHOWN = 12;

/** What an import did, for somebody who wants to know whether to trust it: columns, changes, what was not taken. */
export function sayIntake(made: Import, folder: string, command: string, told: string | undefined): string {
  const { tables, athletes, faults, open } = made;
  const changed = athletes.filter(
    ({ isNew, changes }) => !isNew && changes.some(({ kind }) => kind !== "kept"),
  );
  const fresh = athletes.filter(({ isNew }) => isNew);
  const blocks = [
    ...(told === undefined ? [] : [told]),
    ...faults,
    ...tables.flatMap(({ sheet, read }) => [
      [
        `${sheet.name}: what its columns hold`,
        ...read.columns.flatMap((column) => sayColumn(read.sheet, column)),
      ].join("\n"),
      listed(
        "Rows passed over",
        read.passedOver.map(({ cell, text, why }) => `${cell} "${text}": ${why}`),
      ),
      listed(
        "Refused",
        read.refused.map(
          ({ who, cell, raw, problem, remedy }) =>
            `${cell} "${raw}"${who === "" ? "" : ` (${who})`}: ${problem}. ${remedy}`,
        ),
      ),
      listed(
        "Taken, and how it was read",
        read.athletes.flatMap(({ cells }) =>
          cells.flatMap(({ cell, raw, told: how }) =>
            how === undefined ? [] : [`${cell} "${raw}": ${how}`],
          ),
        ),
      ),
      sayCounts(read),
    ]),
    listed(
      "Changed in files that were there",
      changed.flatMap(({ name, changes }) =>
        changes
          .filter(({ kind }) => kind !== "kept")
          .map(({ what, from, to }) => `${name}, ${what}: ${from === undefined ? to : `${from} -> ${to}`}`),
      ),
      Infinity,
    ),
    [
      `${counted(fresh.length, "new file")} and ${counted(changed.length, "changed file")} in ${folder}/athletes/.`,
      open > 0
        ? `${counted(open, "question")} in ${folder}/questions.txt. Write the answers behind the arrows, then: ${command}`
        : "Nothing is left to ask.",
      `When they look right: npm run intake -- --take moves them to where they count; then npm run check.`,
    ].join("\n"),
  ];
  return blocks.filter((block) => block !== "").join("\n\n");
}

function sayCounts({ athletes, asked, refused }: Import["tables"][number]["read"]): string {
  const taken = athletes.reduce(
    (sum, { cells }) => sum + cells.filter(({ cell }) => !asked.includes(cell)).length,
    0,
  );
  return `${counted(taken, "cell")} taken, ${asked.length} asked about, ${refused.length} refused.`;
}

function listed(title: string, lines: readonly string[], most = SHOWN): string {
  if (lines.length === 0) return "";
  const more = lines.length > most ? [`  and ${lines.length - most} more`] : [];
  return [`${title}:`, ...lines.slice(0, most).map((line) => `  ${line}`), ...more].join("\n");
}

function sayColumn(
  sheet: Sheet,
  { index, heading, meaning, unit, unitFrom, samples }: Column,
): readonly string[] {
  const inUnit =
    unit === undefined
      ? ""
      : `, in ${unit}${unitFrom === "heading" || unitFrom === undefined ? "" : ` (${FROM[unitFrom]})`}`;
  const title = heading === "" ? "(no heading)" : heading;
  return [
    `  ${columnIn(sheet, index).padStart(2)}  ${title}: ${sayMeaning(meaning)}${inUnit}`,
    `        ${samples.join(" | ")}`,
  ];
}

const FROM = {
  cells: "as other cells say",
  table: "as the rest says",
  size: "by their size",
  answer: "as you said",
  heading: "",
};

function sayMeaning(meaning: Meaning): string {
  switch (meaning.kind) {
    case "entry":
      return meaning.entry;
    case "lift":
      return `best ${meaning.movement}${meaning.reps === undefined ? "" : `, ${meaning.reps} reps`}`;
    case "unbroken":
      return `best set of ${meaning.movement}`;
    case "effort":
      return `${meaning.before}…${meaning.behind}`;
    case "efforts":
      return `efforts at ${meaning.movement}`;
    case "tested":
      return meaning.movement === undefined ? "day of the tests" : `day of the test of ${meaning.movement}`;
    case "passed over":
      return `passed over: ${meaning.why}`;
    case "unclear":
      return `? ${meaning.why}`;
    case "start":
    case "result":
    case "attempts":
      return `${meaning.kind} of ${meaning.workout}${"part" in meaning ? ` ${meaning.part}` : ""}`;
    default:
      return meaning.kind;
  }
}
