import { expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { usableSources } from "../../../src/site/load-data.ts";
import { MOVEMENTS } from "../../fuzz/base-movements.ts";

const workout = (entries: string, title = "Weir") => ({
  path: `content/workouts/${title.toLowerCase()}.mdx`,
  text: `---\ntitle: ${title}\n${entries}\nfor time:\nwork:\n  - 20 pull-up\n---\n`,
});
const athlete = (entries: string, name = "Ada") => ({
  path: `athletes/${name.toLowerCase()}.yaml`,
  text: `name: ${name}\nlevel: regular\n${entries}\n`,
});

const told = (divisions: string, entries: string): string => {
  const own = [...MOVEMENTS, workout(divisions), athlete(entries)];
  return sayFaults(usableSources({ builtIn: [], own, faults: [] }, "2026-11-27").faults);
};

it("a division that is not listed is asked with those that are", () => {
  expect(told("divisions: [men, women]", "division: women 55+")).toBe(`1 question in 1 file.

athletes/ada.yaml:3:11: Question
  found    women 55+
  because  "Weir" has no such division
  allowed  men, women
  to do    Write \`planned as: {women 55+: women}\` in content/workouts/weir.mdx with the one they are planned as, or correct the division here.`);
});

it("a woman is asked about where the workout has only men", () => {
  expect(told("divisions: [men]", "sex: female")).toBe(`1 question in 1 file.

athletes/ada.yaml:3:6: Question
  found    female
  because  "Weir" has no division for this
  allowed  men
  to do    Write \`division:\` with one of these, or \`planned as: {female: men}\` in content/workouts/weir.mdx if everybody of the kind is planned so.`);
});

it("an age that belongs to a division listed is asked about", () => {
  expect(told("divisions: [men, women, men 55+, women 55+]", "sex: female\nborn: 1968"))
    .toBe(`1 question in 1 file.

athletes/ada.yaml:4:7: Question
  found    born 1968
  because  "Weir" has a division for this age
  allowed  men, women, men 55+, women 55+
  nearest  women 55+
  to do    Write \`division:\` with one of these, or \`planned as: {female: women 55+}\` in content/workouts/weir.mdx if everybody of the kind is planned so.`);
});

it("what the workout says of them answers it", () => {
  expect(told("divisions: [men, women]\nplanned as: {women 55+: women}", "division: women 55+")).toBe(
    "No faults.",
  );
  expect(told("divisions: [men]\nplanned as: {women: ladies}", "division: women")).toContain(
    "the workout has no division of this name",
  );
});

it("is asked once for all of whom the same is unclear, and stops only the briefs of the workouts that lack it", () => {
  const own = [
    ...MOVEMENTS,
    workout("divisions: [men, women]"),
    workout("divisions: [men, women]", "Sluice"),
    workout("divisions: [men, women, women 55+]", "Lock"),
    athlete("division: women 55+"),
    athlete("division: women 55+", "Bea"),
    athlete("division: women", "Cleo"),
  ];
  const { value, faults } = usableSources({ builtIn: [], own, faults: [] }, "2026-11-27");
  expect(sayFaults(faults)).toBe(`1 question in 1 file.

athletes/ada.yaml:3:11: Question
  found    women 55+
  because  "Sluice" and "Weir" have no such division; it is the same with athletes/bea.yaml
  allowed  men, women
  to do    Write \`planned as: {women 55+: women}\` in content/workouts/sluice.mdx and content/workouts/weir.mdx with the one they are planned as, or correct the division here.`);
  expect(value?.athletes.map(({ id }) => id)).toEqual(["ada", "bea", "cleo"]);
  expect(value?.workouts.map(({ id }) => id)).toEqual(["lock", "sluice", "weir"]);
  expect(value?.unmade.map(({ kind, name, file }) => [kind, name, file])).toEqual([
    ["brief", "Ada, Sluice", "athletes/ada.yaml"],
    ["brief", "Ada, Weir", "athletes/ada.yaml"],
    ["brief", "Bea, Sluice", "athletes/bea.yaml"],
    ["brief", "Bea, Weir", "athletes/bea.yaml"],
  ]);
});
