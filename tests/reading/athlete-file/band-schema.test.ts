import { describe, expect, it } from "vitest";
import { bandReader } from "../../../src/reading/read-athlete.ts";
import { contextForTests } from "../../support/athlete-context.ts";
import { tellFaults } from "../../support/tell-faults.ts";

const readFile = bandReader(contextForTests);
const read = (...entries: readonly string[]) =>
  readFile({ path: "content/bands/regular-men.yaml", text: entries.join("\n") });

describe("the file of a typical athlete", () => {
  it("is an athlete under a title, with a place on the page", () => {
    expect(
      read(
        "title: Regular, men",
        "order: 2",
        "profile:",
        "  level: regular",
        "  division: men",
        "  efforts: row 2k 7:30",
      ),
    ).toMatchObject({
      ok: true,
      value: {
        id: "regular-men",
        title: "Regular, men",
        order: 2,
        profile: {
          name: "Regular, men",
          level: "regular",
          sex: "male",
          efforts: [
            { movement: "row", place: { file: "content/bands/regular-men.yaml", line: 6, column: 12 } },
          ],
          starts: [],
        },
      },
    });
  });

  it("has no name, starts or results", () => {
    const told = tellFaults(
      read("title: Regular", "order: 1", "profile: {level: new, name: Ada, starts: {}}"),
    );
    expect(told.map((text) => text.split("\n").slice(1, 3))).toEqual([
      ["  found    name", "  wrong    no entry of `profile` has this name"],
      ["  found    starts", "  wrong    no entry of `profile` has this name"],
    ]);
  });
});
