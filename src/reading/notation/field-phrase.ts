import { nearestName } from "../../models/nearest.ts";
import type { NamedField } from "../../models/workout.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import type { TextSource } from "./token.ts";

/**
 * Reads which samples of scores a workout is compared with: one for every part it counts (`field: wave`), or one for a part
 * (`field: {a: wave-a, b: wave-b}`). A slash parts divisions: `wave-men/wave-women`, `nothing` for one without a sample.
 * Whether the files exist is looked at with all of them at hand.
 */
export function readFieldEntry(
  written: unknown,
  divisions: readonly string[],
  parts: readonly string[],
  faults: Faults,
): readonly NamedField[] {
  if (typeof written === "string") {
    const files = filesOf({ text: written, path: ["field"], isName: false }, divisions, faults);
    return files === undefined ? [] : [{ files }];
  }
  if (typeof written !== "object" || written === null || Array.isArray(written)) return [];
  return Object.entries(written).flatMap(
    ([name, text]: readonly [string, unknown]): readonly NamedField[] => {
      const path = ["field", name];
      const part = parts.find((known) => known.toLowerCase() === name.trim().toLowerCase());
      if (part === undefined) {
        tellText(
          faults,
          { text: name, path, isName: true },
          {
            problem: `no part is called "${name}"`,
            allowed: parts.join(", "),
            nearest: nearestName(name, parts),
            remedy:
              "Write the name of a part before the colon and that of a file of content/fields behind it.",
          },
        );
        return [];
      }
      if (typeof text !== "string") return [];
      const files = filesOf({ text, path, isName: false }, divisions, faults);
      return files === undefined ? [] : [{ part, files }];
    },
  );
}

/** The file of each division, by its name. */
function filesOf(
  source: TextSource,
  divisions: readonly string[],
  faults: Faults,
): NamedField["files"] | undefined {
  const names = source.text.split("/").map((name) => name.trim());
  const [one = ""] = names;
  if (names.length !== 1 && names.length !== divisions.length) {
    tellText(faults, source, {
      problem: `${names.length} fields for ${divisions.length === 1 ? "one division" : `${divisions.length} divisions`}`,
      allowed: `one for all, or ${divisions.length} with slashes between, in the order ${divisions.join(", ")}`,
      remedy: "Give every division its field, or `nothing`; a file with a column `division` serves them all.",
    });
    return undefined;
  }
  return Object.fromEntries(
    divisions.flatMap((division, index) => {
      const name = names.length === 1 ? one : (names[index] ?? "");
      return name === "" || name.toLowerCase() === "nothing" ? [] : [[division, name]];
    }),
  );
}
