import { expect, it } from "vitest";
import { groupOf } from "../../../src/reading/field-file/group-of.ts";

const group = (...cells: readonly string[]) => groupOf({ cells, line: 2 }, { groups: [...cells.keys()] });

it("columns of groups are one name in small letters, without the words for as prescribed", () => {
  expect(group("Men", "RX")).toEqual({ group: "men", scaled: false });
  expect(group("rx'd")).toEqual({ scaled: false });
  expect(group("Women", "35-39")).toEqual({ group: "women 35-39", scaled: false });
  expect(group("clean & jerk")).toEqual({ group: "clean & jerk", scaled: false });
});

it("a word for scaled anywhere makes the row scaled", () => {
  expect(group("Scaled Men")).toEqual({ group: "men", scaled: true });
  expect(group("men", "s")).toMatchObject({ scaled: true });
  expect(groupOf({ cells: ["men", "Foundations"], line: 2 }, { groups: [0], version: 1 })).toEqual({
    group: "men",
    scaled: true,
  });
});
