import type { AthleteContext } from "../../src/reading/athlete-file/context.ts";
import { readFiles } from "../../src/reading/read-data.ts";
import { readTable, type TableRead } from "../../src/reading/read-table.ts";
import { openTextTable } from "../../src/reading/tables/open-text-table.ts";
import type { Answers } from "../../src/reading/tables/questions.ts";
import type { Sheet } from "../../src/reading/tables/sheet.ts";
import { readSources } from "../../src/site/load-data.ts";
import { ROOT } from "./run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
const own = [
  {
    path: "content/workouts/mill-race.mdx",
    text: "---\ntitle: Mill Race\nfor time: cap 12:00\nwork:\n  - 100 burpee\n---\n",
  },
  {
    path: "content/gyms/boat-house.yaml",
    text: "name: Boat House\nbars: [20 kg]\nplates: {10 kg: 2 pairs}\n",
  },
];

/** What tables of the tests may refer to: the built-in movements, a workout `mill-race`, a gym `boat-house`. */
export const tableContext: AthleteContext = readFiles(builtIn, own).context;

export const readText = (text: string, answers: Answers = new Map()): TableRead =>
  readSheet(openTextTable("t.csv", text), answers);

export function readSheet(sheet: Sheet, answers: Answers = new Map()): TableRead {
  const read = readTable(sheet, tableContext, answers);
  if (!read) throw new Error("no headings were found");
  return read;
}

/**
 * What became of every cell by its name, `D4`: what stands in the file for it, `asked` or `refused`. Cells that say nothing
 * are not among them.
 */
export function verdictsOf({ athletes, asked, refused }: TableRead): Readonly<Record<string, string>> {
  const name = (cell: string): string => cell.replace(/^.*!/, "");
  const taken = athletes.flatMap(({ cells }) =>
    cells.map(({ cell, puts }) => {
      const said = puts.map(({ value }) => (typeof value === "string" ? value : JSON.stringify(value)));
      return [name(cell), said.join("; ")] as const;
    }),
  );
  return Object.fromEntries([
    ...taken,
    ...asked.map((cell) => [name(cell), "asked"] as const),
    ...refused.map(({ cell }) => [name(cell), "refused"] as const),
  ]);
}
