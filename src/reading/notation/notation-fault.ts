import type { Fault, Place } from "../../models/fault.ts";
import type { Step } from "../../models/workout.ts";
import type { OpenedYaml } from "../yaml/open-yaml.ts";
import { writtenBy, type TextSource, type Token } from "./token.ts";

/** What is wrong with some words of the notation, and what to do. */
export type Trouble = {
  readonly problem: string;
  readonly allowed?: string | undefined;
  readonly nearest?: string | undefined;
  readonly remedy: string;
  readonly severity?: Fault["severity"];
  /** What a word of `by division:` stands for is right in itself, and wrong in this line. */
  readonly atUse?: true;
};

/** Trouble with where it stands in a text. */
export type NotationFault = Trouble & {
  readonly source: TextSource;
  readonly offset: number;
  readonly found: string;
  /** Where it stands in the file, if that is known already. */
  readonly place?: Place;
};

/** Collects the faults of one reading. It belongs to the caller and lives as long as the reading. */
export type Faults = NotationFault[];

/** Notes trouble with these tokens; with none, at the end of (or in) the text of `around`. */
export function tell(
  faults: Faults,
  tokens: readonly Token[],
  around: readonly Token[],
  trouble: Trouble,
): void {
  const [first] = tokens;
  // A line of which a part stands in for a word is told where the line stands.
  const line = around.find(({ use }) => use === undefined) ?? around.at(-1)?.use;
  if (first !== undefined) {
    const { source, offset } = (trouble.atUse && first.use) || first;
    faults.push({ ...trouble, source, offset, found: writtenBy(tokens) });
  } else if (line !== undefined) {
    const { source, offset } = around.some(({ use }) => use !== undefined) ? line : (around.at(-1) ?? line);
    faults.push({ ...trouble, source, offset, found: writtenBy(around) });
  }
}

/** Notes trouble with a text as a whole. */
export function tellText(faults: Faults, source: TextSource, trouble: Trouble): void {
  faults.push({ ...trouble, source, offset: 0, found: source.text });
}

/** Notes trouble with a step that was read. */
export function tellStep(faults: Faults, step: Step, trouble: Trouble): void {
  const source: TextSource = { text: step.written, path: [], isName: false };
  faults.push({ ...trouble, source, offset: 0, found: step.written, place: step.place });
}

/** A fault of the notation with its place in the file. */
export function placedFault(fault: NotationFault, opened: OpenedYaml): Fault {
  const { source, offset, found, problem, allowed, nearest, remedy, severity } = fault;
  return {
    place: fault.place ?? placeOf(source, offset, opened),
    found,
    problem,
    ...(allowed === undefined ? {} : { allowed }),
    ...(nearest === undefined ? {} : { nearest }),
    remedy,
    severity: severity ?? "fault",
  };
}

function placeOf(source: TextSource, offset: number, opened: OpenedYaml): Fault["place"] {
  return source.isName ? opened.placeOfName(source.path, offset) : opened.placeAt(source.path, offset);
}
