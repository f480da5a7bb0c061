import { expect, it } from "vitest";
import { drawAttempts } from "../../src/charts/attempt-tree.ts";
import { approximateWidth } from "../../src/charts/measure.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";
import { samplePlans } from "../support/sample-plan.ts";

const part = samplePlans.forTimeThenLift.parts[1];
const lift = part?.lifting?.lifts[0];
if (!lift) throw new Error("the sample has a lift");

it.each([720, 320])("attempts at a width of %i stay inside and keep their labels apart", (width) => {
  const drawing = drawAttempts(
    lift,
    part.start.clock,
    { width, textSize: 12, measure: approximateWidth },
    150,
  );
  if (!drawing) throw new Error("there are attempts");
  expect(strays(drawing, approximateWidth)).toEqual([]);
  expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
});

it("attempts are said with their branches", () => {
  const drawing = drawAttempts(
    lift,
    part.start.clock,
    { width: 300, textSize: 12, measure: approximateWidth },
    150,
  );
  expect(drawing?.textAlternative.replaceAll("\u00a0", " ")).toBe(
    "Attempt 1: 58 kg at 10:15, made 95% of the time; if missed, again at 12:25. Attempt 2: 63 kg at 12:25, made 80% of the time; if missed, again at 15:05. Attempt 3: 66 kg at 15:05, made 50% of the time; if missed, done.",
  );
});

it("no attempts are no drawing", () => {
  const size = { width: 300, textSize: 12, measure: approximateWidth };
  expect(drawAttempts({ ...lift, attempts: [] }, 0, size, 150)).toBeUndefined();
});
