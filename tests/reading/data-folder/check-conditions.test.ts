import { describe, expect, it } from "vitest";
import { checkConditions } from "../../../src/reading/data-folder/check-conditions.ts";
import { sortFiles } from "../../../src/reading/data-folder/sort-files.ts";
import type { CautionEntry } from "../../../src/models/library.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { movement } from "../../support/sample-movements.ts";

const movements = new Map(
  [
    movement({
      id: "pull-up",
      kind: "gymnastics",
      choices: [
        {
          id: "style",
          question: "Which way?",
          options: [{ id: "thumb-over", name: "thumb over", say: "Do.", when: [], adds: [] }],
        },
      ],
    }),
    movement({ id: "clean-and-jerk", kind: "barbell" }),
  ].map((each) => [each.id, each]),
);

/** The faults of a caution with these conditions. */
function faults(...conditions: readonly string[]): string {
  const entry: CautionEntry = {
    id: "x",
    title: "X",
    say: "Mind it.",
    weight: "care",
    when: conditions.flatMap((text) => {
      const read = readCondition(text);
      return read.ok ? [read.value] : [];
    }),
    withholds: [],
    onSheet: false,
    source: "made for tests",
  };
  const text = `---\ntitle: X\nwhen:\n${conditions.map((each) => `  - ${each}`).join("\n")}\n---\n`;
  const files = sortFiles([], [{ path: "content/cautions/x.mdx", text }]);
  const library = { movements, warmUps: [], recovery: [], cautions: [entry] };
  const found = checkConditions(library, new Set(movements.keys()), files.of);
  return found.length === 0 ? "" : sayFaults(found);
}

describe("names in conditions", () => {
  it("are fine where they exist, with spaces or hyphens", () => {
    expect(
      faults(
        "may-come clean and jerk or movement pull-up",
        "not cannot Clean-and-Jerk",
        "prefers thumb over",
        "stress kipping",
        "gym-has something of the gym",
        "age over 18",
      ),
    ).toBe("");
  });

  it("are told with their place and the nearest name where they do not exist", () => {
    expect(faults("stress kipping", "age over 18 or may-come clean and jrek")).toBe(`1 fault in 1 file.

content/cautions/x.mdx:5:29: Fault
  found    clean and jrek
  wrong    there is no movement of this name, so the condition would never hold
  nearest  clean and jerk
  to do    Write \`may-come clean and jerk\`.`);
    expect(faults("not prefers sideways")).toBe(`1 fault in 1 file.

content/cautions/x.mdx:4:17: Fault
  found    sideways
  wrong    there is no option of this name, so the condition would never hold
  to do    Write the name of an option that there is.`);
  });
});
