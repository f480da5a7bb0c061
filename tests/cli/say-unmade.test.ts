import { describe, expect, it } from "vitest";
import { sayUnmade } from "../../src/cli/say-unmade.ts";
import type { Data } from "../../src/models/data.ts";

const data = {
  athletes: [{ id: "ana", name: "Ana" }],
  workouts: [{ id: "kiln-road", title: "Kiln Road" }],
  unmade: [
    {
      kind: "athlete",
      id: "bo",
      file: "athletes/bo.yaml",
      name: "B\u001b[2Jo",
      why: [
        {
          place: { file: "athletes/bo.yaml", line: 1, column: 7 },
          problem: "an invisible control sign stands in the name",
        },
      ],
    },
  ],
} as unknown as Data;
const nothing = { failed: [], kept: 0 };

describe("what could not be made", () => {
  it("is named a line each, and no name commands the terminal", () => {
    expect(sayUnmade({ data, made: nothing, faults: [] })).toBe(`Not made this time:
  B[U+001B][2Jo (athletes/bo.yaml:1:7: an invisible control sign stands in the name)
Everything else was made. Mend what is named above and build again; --strict makes nothing where anything is wrong.`);
  });

  it("tells a brief of which the program failed from one of which a file did", () => {
    const failed = [
      { athlete: "ana", workout: "kiln-road", problem: "no plan" },
      { athlete: "ana", workout: "kiln-road", file: "Calendar", problem: "no start" },
    ];
    const said = sayUnmade({ data: { ...data, unmade: [] }, made: { failed, kept: 1 }, faults: [] });
    expect(said).toContain(
      "  Ana, Kiln Road: the program failed (no plan). Please report it with both files.\n" +
        "  Calendar, for Ana, Kiln Road: no start\n" +
        "1 brief of the build before stay",
    );
  });

  it("is nothing where everything was made", () => {
    expect(sayUnmade({ data: { ...data, unmade: [] }, made: nothing, faults: [] })).toBeUndefined();
  });
});
