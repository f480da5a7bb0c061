import { isGroup } from "./yaml/is-group.ts";
import { tellText } from "./notation/notation-fault.ts";
import { type ReadPart, readPart } from "./notation/read-part.ts";
import type { WrittenPart } from "./notation/written-part.ts";
import type { WorkReading } from "./notation/work-reading.ts";
import { seconds } from "../models/quantity.ts";
import type { PartStart } from "../models/workout.ts";
import type { Path } from "./yaml/open-yaml.ts";

/** The entries of a workout, or of a part of it, as they were typed. */
export type Entries = Readonly<Record<string, unknown>>;

/** Nobody scores more in one workout, and each takes a page of the brief. */
const MOST_PARTS = 12;

type PartInFile = { readonly written: WrittenPart; readonly read: ReadPart | undefined };

/** The parts in order; without `parts:` the entries at the top are the one part. */
export function readParts(entries: Entries, reading: WorkReading): readonly PartInFile[] {
  const { faults } = reading;
  const listed = entries["parts"];
  const raw: readonly (readonly [Entries, Path])[] = Array.isArray(listed)
    ? listed.flatMap((part: unknown, index) => (isGroup(part) ? [[part, ["parts", index]] as const] : []))
    : [[entries, []]];
  if (Array.isArray(listed) && "work" in entries) {
    tellText(
      faults,
      { text: "work", path: ["work"], isName: true },
      {
        problem: "with `parts:` the work stands inside the parts",
        remedy: "Move it into the part it belongs to, or leave `parts:` out for a workout of one part.",
      },
    );
  }
  if (raw.length > MOST_PARTS) {
    tellText(
      faults,
      { text: "parts", path: ["parts"], isName: true },
      {
        problem: `a workout has at most ${MOST_PARTS} parts`,
        allowed: `from 1 to ${MOST_PARTS}`,
        remedy: "Write the others as a workout of their own.",
      },
    );
    return [];
  }
  const parts: PartInFile[] = [];
  const earlier: WrittenPart["earlier"][number][] = [];
  for (const [index, [part, path]] of raw.entries()) {
    // A rest written as a part of its own: its name is told as unknown.
    if (path.length > 0 && "rest" in part && !("work" in part)) continue;
    const named = part["name"];
    const name =
      path.length > 0 && typeof named === "string"
        ? named.trim()
        : String.fromCharCode("a".charCodeAt(0) + index);
    if (earlier.some((other) => other.name.toLowerCase() === name.toLowerCase())) {
      tellText(
        faults,
        { text: name, path: [...path, "name"], isName: false },
        {
          problem: "another part already has this name",
          remedy: "Give every part a name of its own; left out, they are called a, b, c.",
        },
      );
    }
    const written: WrittenPart = { entries: part, path, name, earlier: [...earlier] };
    const read = readPart(written, reading);
    parts.push({ written, read });
    earlier.push({ name, start: read?.start ?? unknownStart(name) });
  }
  return parts;
}

/** A part whose start could not be read still has a name for later parts to refer to. */
const unknownStart = (part: string): PartStart => ({
  kind: "after",
  part,
  rest: seconds(0),
  restIs: "exactly",
});
