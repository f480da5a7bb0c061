import { stringify } from "yaml";
import type { Athlete } from "../../models/athlete.ts";
import type { Checked, Fault } from "../../models/fault.ts";
import type { FindMovement } from "../names/find-movement.ts";
import { asked, type CellReading, type Put, refused } from "./cell-reading.ts";

/** What cells are read with. The reader of athlete files judges every value, so that a table and a file agree. */
export type CellContext = {
  readonly read: (text: string) => Checked<Athlete>;
  readonly findMovement: FindMovement;
  readonly gyms: readonly string[];
  /** Day of the tests of this row, as written. */
  readonly tested?: string;
  /** What `cap+28` counts in this table. */
  readonly capped?: "left" | "done";
  /** Time of the workout whose splits are read, seconds, where a cell beside says it. */
  readonly total?: number;
};

/** Writes an entry into an athlete file of its own and lets the reader of athlete files judge it. */
export function fromFile(
  entries: Readonly<Record<string, unknown>>,
  { read }: CellContext,
  puts: (athlete: Athlete) => readonly Put[],
): CellReading {
  const level = "level" in entries ? {} : { level: "regular" };
  const checked = read(stringify({ name: "Somebody", ...level, ...entries }));
  if (!checked.ok) return unread(checked.faults);
  const told = checked.notices.map(({ problem }) => problem).join("; ");
  const given = puts(checked.value);
  return given.length === 0
    ? { kind: "nothing" }
    : { kind: "taken", puts: given, ...(told === "" ? {} : { told }) };
}

/** A fault refuses and a question asks; a refusal that names the nearest correct text is asked about too. */
export function unread(faults: readonly Fault[]): CellReading {
  const fault = faults.find(({ severity }) => severity === "fault");
  const question = faults.find(({ severity }) => severity === "question");
  const worst = fault ?? question;
  if (!worst) return { kind: "nothing" };
  const proposals = fault?.nearest === undefined ? proposalsIn(worst.remedy) : [fault.nearest];
  const isAnswer =
    fault === undefined || fault.nearest !== undefined || /^Write `[^`]+`\.$/.test(fault.remedy);
  return isAnswer ? asked(worst.problem, proposals) : refused(worst.problem, worst.remedy);
}

/** What a remedy proposes to write, between backticks. */
export const proposalsIn = (remedy: string): readonly string[] =>
  [...remedy.replace(/such as `[^`]+`/g, "").matchAll(/`([^`]+)`/g)]
    .map(([, text = ""]) => text)
    .filter((text) => !/^[a-z ]+: /.test(text));
