import { expect, it } from "vitest";
import { readText } from "../../support/table-verdicts.ts";

it("Max is a person where a word stands beside him, and a row of sums is none", () => {
  const { athletes } = readText(
    "Name,Level,Back squat (kg)\nMax,regular,120\nMax Muster,new,80\nMax,,120\nAverage,,100\n",
  );
  expect(athletes.map(({ name }) => name)).toEqual(["Max", "Max Muster"]);
});
