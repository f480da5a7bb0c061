import { describe, expect, it } from "vitest";
import { sourcesForOne } from "../../src/site/sources-for-one.ts";

const file = (path: string, text: string) => ({ path, text });
const own = [
  file("content/settings.yaml", "zone: Europe/Oslo\n"),
  file("content/workouts/kiln.mdx", "---\nearly: [{athlete: eve, time: 8:00}]\n---\n"),
  file("athletes/ada.yaml", "name: Ada Lind\nlevel: new\n"),
  file("athletes/bo.yaml", "name: Bo\nlevel: new\n"),
  file("athletes/cy.yaml", "name: Cy\nlevel: new\nresults:\n  - {workout: kiln, time: 9:10}\n"),
  file("athletes/eve.yaml", "name: Eve\nlevel: new\n"),
];
const sources = { builtIn: [], own, faults: [] };
const keptFor = (asked: string): readonly string[] =>
  sourcesForOne(sources, asked).own.map(({ path }) => path);
const others = ["content/settings.yaml", "content/workouts/kiln.mdx"];

describe("what one athlete's plans rest on", () => {
  it("are their own file, results of others, and whom a workout names", () => {
    expect(keptFor("ada")).toEqual([...others, "athletes/ada.yaml", "athletes/cy.yaml", "athletes/eve.yaml"]);
    expect(keptFor("ADA LIND")).toEqual(keptFor("ada"));
  });

  it("is everything where nobody is found, so that the nearest can be named", () => {
    expect(sourcesForOne(sources, "adda")).toBe(sources);
  });
});
