import { expect, it } from "vitest";
import { tickRow } from "../../src/sheet/tick-row.ts";
import { textsOf } from "../../src/sheet/sheet-node.ts";
import { setterOf } from "../../src/sheet/type-setting.ts";
import { sheetFonts } from "../support/load-fonts.ts";

const setter = setterOf(sheetFonts);
const labels = Array.from({ length: 20 }, (_, index) => `${index + 1}`);

it("twenty rounds have twenty boxes with their numbers, none beyond the width", () => {
  const { marks, nodes } = tickRow(labels, 60, setter).place(10, 0);
  expect(marks).toHaveLength(20);
  expect(textsOf(nodes).map(({ text }) => text.trim())).toEqual(labels);
  for (const { x } of textsOf(nodes)) expect(x).toBeLessThan(70);
});

it("what does not fit one row goes on in the next", () => {
  // Boxes of 5.4 mm with 1 mm between: nine in 60 mm, so twenty take three rows.
  expect(tickRow(labels, 60, setter).height).toBeCloseTo(3 * 6.4);
  expect(tickRow(labels.slice(0, 9), 60, setter).height).toBeCloseTo(6.4);
});
