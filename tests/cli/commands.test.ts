import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { planSchema } from "../../src/models/plan/plan.ts";
import { copyFixture, DAY, FIXTURE } from "../support/fixture-site.ts";
import { runCommand, TEST_SECRET } from "../support/run-command.ts";

const given = ["--data", FIXTURE, "--date", DAY];
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet-"));
  copyFixture(folder);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe("npm run check", () => {
  it("counts what it read when there are no faults", async () => {
    const { out, err, code } = await runCommand("check", given);
    expect([err, code]).toEqual(["", 0]);
    expect(out).toMatch(/^No faults: 2 workouts, 3 athletes, \d+ movements in .*site\.\n$/);
  });

  it("tells all faults of all files and ends with 1", async () => {
    writeFileSync(join(folder, "athletes/one.yaml"), "naem: One\n");
    writeFileSync(join(folder, "content/gyms/two.yaml"), "name: Two\n");
    const { err, code } = await runCommand("check", ["--data", folder]);
    expect(code).toBe(1);
    expect(err).toMatch(/^\d+ faults in 2 files\./);
    expect(err).toContain("athletes/one.yaml:1:1: Fault\n  found    naem\n");
    expect(err).toContain("content/gyms/two.yaml:1:");
    expect(err).not.toMatch(/\bat .*\.ts:\d+/);
  });

  it("says which folder is meant where there is nothing to read", async () => {
    const { err, code } = await runCommand("check", ["--data", tmpdir()]);
    expect([err, code]).toEqual([
      `There is no folder content/ in ${tmpdir()}. Name the folder that holds content/ and athletes/ with --data or RIGSHEET_DATA.\n`,
      1,
    ]);
  });

  it("refuses a day that is none", async () => {
    const { err, code } = await runCommand("check", ["--data", FIXTURE, "--date", "2026-13-01"]);
    expect([err, code]).toEqual([
      'The date is "2026-13-01"; write a day of the calendar as year-month-day, such as 2026-11-25.\n',
      1,
    ]);
  });
});

describe("npm run plan", () => {
  it("prints one brief in the terminal, by id or name", async () => {
    const byId = await runCommand("plan", [
      ...given,
      "--athlete",
      "ilvane-quistgard",
      "--workout",
      "gravel-bell",
    ]);
    const byName = await runCommand("plan", [
      ...given,
      "--athlete",
      "Ilvane Quistgård",
      "--workout",
      "gravel bell",
    ]);
    expect([byId.err, byId.code]).toEqual(["", 0]);
    expect(byId.out).toBe(byName.out);
    expect(byId.out).toMatch(
      /^Gravel Bell +Ilvane Quistgård\n27 November 2026, 18:40, Copper Shed +women, competitor\n/,
    );
  });

  it("prints the whole plan as JSON and nothing else", async () => {
    const { out, code } = await runCommand("plan", [
      ...given,
      "--athlete",
      "orsolo-venn",
      "--workout",
      "gravel-bell",
      "--json",
    ]);
    expect(code).toBe(0);
    const plan = planSchema.parse(JSON.parse(out));
    expect([plan.athlete.id, plan.workout.id, plan.date]).toEqual(["orsolo-venn", "gravel-bell", DAY]);
  });

  it("prints one plan a line for everybody", async () => {
    const { out, code } = await runCommand("plan", [...given, "--workout", "gravel-bell", "--all", "--json"]);
    expect(code).toBe(0);
    const plans = out
      .trimEnd()
      .split("\n")
      .map((line) => planSchema.parse(JSON.parse(line)));
    expect(plans.map(({ athlete }) => athlete.id)).toEqual([
      "ilvane-quistgard",
      "orsolo-venn",
      "tjostolv-nandubay",
    ]);
    const both = await runCommand("plan", [...given, "--workout", "gravel-bell", "--all", "--athlete", "x"]);
    expect(both.err).toBe("Say --all for everybody or --athlete ID for one, not both.\n");
  });

  it("prints the JSON Schema of a plan without reading anything", async () => {
    const { out, code } = await runCommand("plan", ["--schema", "--data", "/nowhere"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      type: "object",
      additionalProperties: false,
    });
  });

  it("names the nearest athlete or workout, and all there are", async () => {
    const athlete = await runCommand("plan", [...given, "--athlete", "ilvane", "--workout", "gravel-bell"]);
    expect([athlete.out, athlete.code]).toEqual(["", 1]);
    expect(athlete.err).toBe(`There is no athlete "ilvane". The nearest is "ilvane-quistgard". There are:
  ilvane-quistgard  Ilvane Quistgård
  orsolo-venn  Orsolo Vennemark
  tjostolv-nandubay  Tjøstolv Ñandúbay-Œuvrard von Đỗ-Щерба
`);
    const workout = await runCommand("plan", [...given, "--athlete", "orsolo-venn"]);
    expect(workout.err).toBe(`Say which workout: --workout ID. There are:
  gravel-bell  Gravel Bell
  slow-lighthouse  Slow Lighthouse
`);
  });
});

describe("npm run links", () => {
  const secret = { RIGSHEET_SECRET: TEST_SECRET, RIGSHEET_SITE: "https://example.org", RIGSHEET_BASE: "gym" };

  it("prints who gets which link, as text, CSV and JSON alike", async () => {
    const [text, csv, json] = await Promise.all([
      runCommand("links", given, secret),
      runCommand("links", [...given, "--csv"], secret),
      runCommand("links", [...given, "--json"], secret),
    ]);
    const links = JSON.parse(json.out) as { athlete: string; link: string }[];
    expect(links.map(({ athlete }) => athlete)).toEqual([
      "board",
      ...["ilvane-quistgard", "orsolo-venn", "tjostolv-nandubay"].flatMap((id) => [id, id]),
    ]);
    for (const { link } of links) {
      expect(link).toMatch(/^https:\/\/example\.org\/gym\/b\/[0-9A-Z]{16}\/#[0-9A-Z]{55}$/);
      expect(text.out).toContain(link);
      expect(csv.out).toContain(link);
    }
  });

  it("gives one athlete new links and leaves the others theirs", async () => {
    rmSync(join(folder, "athletes/one.yaml"), { force: true });
    rmSync(join(folder, "content/gyms/two.yaml"), { force: true });
    const read = async (args: readonly string[]) => {
      const said = await runCommand("links", ["--data", folder, "--json", ...args], secret);
      return { said, links: JSON.parse(said.out) as { athlete: string; link: string }[] };
    };
    const before = (await read([])).links;
    const { said, links: after } = await read(["--revoke", "orsolo-venn"]);
    const changed = after.filter((one, index) => one.link !== before[index]?.link);
    expect([...new Set(changed.map(({ athlete }) => athlete))]).toEqual(["orsolo-venn"]);
    expect(said.err).toBe(
      "New links for orsolo-venn. The old ones open nothing once you have built and put up the site again; what was opened and saved before stays with who has it.\n\n",
    );
    expect(JSON.parse(readFileSync(join(folder, ".rigsheet/links.json"), "utf8"))).toMatchObject({
      board: 1,
      athletes: { "orsolo-venn": 2 },
    });
  });

  it("prints the board and the athletes of one group, and renews that board alone", async () => {
    const file = join(folder, "athletes/orsolo-venn.yaml");
    const before = readFileSync(file, "utf8");
    writeFileSync(file, `${before.trimEnd()}\ngroup: Evening\n`);
    const read = async (...args: readonly string[]) =>
      runCommand("links", ["--data", folder, "--json", "--group", "evening", ...args], secret);
    const parsed = ({ out }: { readonly out: string }) =>
      JSON.parse(out) as readonly { readonly athlete: string; readonly link: string }[];
    const first = parsed(await read());
    expect(first.map(({ athlete }) => athlete)).toEqual(["board of Evening", "orsolo-venn", "orsolo-venn"]);
    const said = await read("--revoke", "board");
    expect(said.err).toMatch(/^New links for the board of Evening\./);
    const second = parsed(said);
    expect(second.filter(({ link }, at) => link !== first[at]?.link).map(({ athlete }) => athlete)).toEqual([
      "board of Evening",
    ]);
    expect(JSON.parse(readFileSync(join(folder, ".rigsheet/links.json"), "utf8"))).toMatchObject({
      board: 1,
      groups: { "group evening": 2 },
    });
    writeFileSync(file, before);
  });

  it("does not revoke the links of somebody it does not know", async () => {
    const { err, code } = await runCommand("links", ["--data", folder, "--revoke", "orsolo"], secret);
    expect([err, code]).toEqual([
      'There is no athlete "orsolo". The nearest is "orsolo-venn". The id is the name of the file in athletes/ without its ending; `board` stands for the coach\'s board.\n',
      1,
    ]);
  });
});
