import { expect, it } from "vitest";
import { sayPart } from "../../src/wording/part-name.ts";

it("a single letter is shown large, a longer name as written", () => {
  expect([sayPart("a"), sayPart("A"), sayPart("opening row")]).toEqual(["A", "A", "opening row"]);
});
