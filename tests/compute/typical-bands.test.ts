import { expect, it } from "vitest";
import { typicalBands } from "../../src/compute/typical-bands.ts";
import { demoData } from "../support/demo-data.ts";

const data = demoData();
const workoutOf = (id: string) => {
  const found = data.workouts.find((workout) => workout.id === id);
  if (!found) throw new Error(`the demonstration has ${id}`);
  return found;
};
const titles = (id: string): readonly string[] =>
  typicalBands(workoutOf(id), data.bands).map(({ title }) => title);

it("a division that no band is planned in has a regular band of its own, beside the regular one of its sex", () => {
  // Lamp Oil has men, women and masters men; Long Quay only men and women.
  expect(titles("lamp-oil")).toEqual([
    "New, women",
    "New, men",
    "Regular, women",
    "Regular, men",
    "Regular, masters men",
    "Competitor, women",
    "Competitor, men",
    "Elite, women",
    "Elite, men",
  ]);
  expect(titles("long-quay")).toHaveLength(8);
});

it("a division whose name tells no sex has none", () => {
  const odd = { ...workoutOf("lamp-oil"), divisions: ["men", "women", "open"] };
  expect(typicalBands(odd, data.bands)).toHaveLength(8);
});
