import { describe, expect, it } from "vitest";
import { leaveOut } from "../../../src/reading/data-folder/leave-out.ts";
import { readFiles } from "../../../src/reading/read-data.ts";
import type { SourceFile } from "../../../src/reading/files/source-file.ts";
import { readSources } from "../../../src/site/load-data.ts";
import { ROOT } from "../../support/run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });

const workout = (title: string, more = "", line = "10 burpee"): string =>
  `---\ntitle: ${title}\namrap: 5:00\n${more}work:\n  - ${line}\n---\n`;
const gym = (name: string): string => `name: ${name}\nbars: [20 kg]\nplates: {10 kg: 2 pairs}\n`;
const good: Readonly<Record<string, string>> = {
  "athletes/ana.yaml": "name: Ana\nlevel: regular\ngym: pier\n",
  "athletes/bo.yaml": "name: Bo\nlevel: regular\ngym: loft\n",
  "athletes/cy.yaml": "name: Cy\nlevel: new\n",
  "content/gyms/pier.yaml": gym("Pier"),
  "content/gyms/loft.yaml": gym("Loft"),
  "content/workouts/sea-wall.mdx": workout("Sea Wall"),
  "content/workouts/weed-rack.mdx": workout("Weed Rack", "competition: tide-days\n"),
  "content/competitions/tide-days.yaml":
    "name: Tide Days\nzone: Europe/Oslo\nopens: 2026-11-26 18:00\ncloses: 2026-11-30 20:00\n",
};

/** What is left and what is not, with some files written differently. */
function leftOf(changes: Readonly<Record<string, string>>) {
  const own = Object.entries({ ...good, ...changes }).map(([path, text]): SourceFile => ({ path, text }));
  const { read, files, faults, consequences } = readFiles(builtIn, own);
  const left = leaveOut({ read, files, faults: [...faults, ...consequences] });
  return (
    left && {
      made: [...left.athletes, ...left.workouts].map(({ id }) => id),
      unmade: left.unmade.map(
        ({ kind, id, name, why }) => `${kind} ${id} (${name}): ${why[0]?.place.file ?? ""}`,
      ),
    }
  );
}

describe("leaving out what has faults", () => {
  it("leaves nothing out where nothing is wrong", () => {
    expect(leftOf({})).toEqual({ made: ["ana", "bo", "cy", "sea-wall", "weed-rack"], unmade: [] });
  });

  it("stops an athlete for a fault of their own file, and nobody else", () => {
    expect(leftOf({ "athletes/ana.yaml": "name: Ana\nlevel: regular\nlifts: {snatch: 70}\n" })).toEqual({
      made: ["bo", "cy", "sea-wall", "weed-rack"],
      unmade: ["athlete ana (Ana): athletes/ana.yaml"],
    });
  });

  it("calls an athlete by the file's name where not even the name can be read", () => {
    expect(leftOf({ "athletes/ana.yaml": "name: [Ana\n" })?.unmade).toEqual([
      "athlete ana (ana): athletes/ana.yaml",
    ]);
  });

  it("stops those who train in a gym with faults, and who names none where it leaves open which", () => {
    expect(leftOf({ "content/gyms/pier.yaml": "name: Pier\n" })).toEqual({
      made: ["bo", "sea-wall", "weed-rack"],
      unmade: ["athlete ana (Ana): content/gyms/pier.yaml", "athlete cy (Cy): content/gyms/pier.yaml"],
    });
  });

  it("stops the workouts of a competition with faults", () => {
    expect(leftOf({ "content/competitions/tide-days.yaml": "name: Tide Days\n" })).toEqual({
      made: ["ana", "bo", "cy", "sea-wall"],
      unmade: ["workout weed-rack (Weed Rack): content/competitions/tide-days.yaml"],
    });
  });

  it("stops the workouts that need a movement with faults", () => {
    const left = leftOf({
      "content/movements/rope-wade.mdx": "---\nname: rope wade\n---\n",
      "content/workouts/sea-wall.mdx": workout("Sea Wall", "", "10 rope wade"),
    });
    expect(left?.made).toEqual(["ana", "bo", "cy", "weed-rack"]);
    expect(left?.unmade).toHaveLength(1);
  });

  it("holds two files of one name both in doubt", () => {
    expect(leftOf({ "athletes/ana.yml": "name: Anna\nlevel: new\n" })?.made).not.toContain("ana");
  });

  it("stops everything for the settings, and for a caution that cannot be read", () => {
    expect(leftOf({ "content/settings.yaml": "titel: Us\n" })).toBeUndefined();
    expect(leftOf({ "content/cautions/own.mdx": "---\nname: x\n---\n" })).toBeUndefined();
  });

  it("goes on without a block of the warm-up that cannot be read", () => {
    expect(leftOf({ "content/warm-ups/own.mdx": "---\nname: x\n---\n" })?.unmade).toEqual([]);
  });
});
