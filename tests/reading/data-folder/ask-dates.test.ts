import { expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { usableSources } from "../../../src/site/load-data.ts";
import { MOVEMENTS } from "../../fuzz/base-movements.ts";

const told = (entries: string, day = "2026-11-27"): string => {
  const own = [...MOVEMENTS, { path: "athletes/ada.yaml", text: `name: Ada\nlevel: regular\n${entries}\n` }];
  return sayFaults(usableSources({ builtIn: [], own, faults: [] }, day).faults);
};

it("a test of a day that has not come is asked about", () => {
  const lifts = "lifts: {thruster: {best: 60 kg, tested: 2026-12-24}}";
  expect(told(lifts)).toBe(`1 question in 1 file.

athletes/ada.yaml:3:41: Question
  found    2026-12-24
  because  this test is of a day after the 2026-11-27 the plan is made for
  to do    Correct the day, or leave it out.`);
  expect(told(lifts, "2026-12-24")).toBe("No faults.");
});

it("a weekday that is not that of the date is asked about", () => {
  expect(told("lifts: {thruster: {best: 60 kg, tested: Monday 3 Oct 2026}}")).toBe(`1 question in 1 file.

athletes/ada.yaml:3:41: Question
  found    Monday 3 Oct 2026
  because  2026-10-03 is a Saturday, and another weekday stands before it
  allowed  a date such as \`2026-11-28\`
  to do    Write \`2026-10-03\` if that is meant. If the weekday is right, correct the day.`);
  expect(told("lifts: {thruster: {best: 60 kg, tested: Saturday 3 Oct 2026}}")).toBe("No faults.");
});

it("letters of another encoding are asked about in notes too, and sound letters are not", () => {
  expect(told("note: JosÃ© canâ€™t jump")).toBe(`1 question in 1 file.

athletes/ada.yaml:3:7: Question
  found    JosÃ© canâ€™t jump
  because  the text comes from another encoding of letters
  allowed  text saved as UTF-8
  nearest  José can’t jump
  to do    Write \`José can’t jump\`.`);
  expect(told("note: Sør-Ålesund, BØ’s belt, São Ñandú")).toBe("No faults.");
});
