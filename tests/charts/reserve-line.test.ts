import { describe, expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
import { drawReserve } from "../../src/charts/reserve-line.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacings = Object.entries(samplePlans).flatMap(([name, plan]) =>
  plan.parts.flatMap((part) => (part.pacing ? [{ name, pacing: part.pacing }] : [])),
);

describe.each(pacings)("the reserve of $name", ({ pacing }) => {
  it.each([720, 320])("at a width of %i stays inside and keeps its labels apart", (width) => {
    const drawing = drawReserve(pacing, { width, textSize: 12, measure: approximateWidth }, 120);
    if (!drawing) throw new Error("the samples have a reserve");
    expect(strays(drawing, approximateWidth)).toEqual([]);
    expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
  });
});

it("says what is left after each round", () => {
  const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
  if (!pacing) throw new Error("the sample has pacing");
  expect(
    drawReserve(pacing, { width: 300, textSize: 12, measure: approximateWidth }, 120)?.textAlternative,
  ).toBe(
    "Reserve left over the clock, from full to 10% at 8:30. After each round: 1: 77%, 2: 56%, 3: 37%, 4: 21% and 5: 10%.",
  );
});

it("is not drawn where the reserve is not known", () => {
  const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
  if (!pacing) throw new Error("the sample has pacing");
  const rows = pacing.rows.map((row) =>
    Object.fromEntries(Object.entries(row).filter(([key]) => key !== "reserve")),
  ) as unknown as typeof pacing.rows;
  const without = { ...pacing, rows };
  expect(drawReserve(without, { width: 300, textSize: 12, measure: approximateWidth }, 120)).toBeUndefined();
});
