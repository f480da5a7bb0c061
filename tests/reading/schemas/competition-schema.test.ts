import { describe, expect, it } from "vitest";
import { readYaml } from "../../../src/reading/yaml/read.ts";
import { competitionSchema } from "../../../src/reading/schemas/competition-schema.ts";
import { contextForTests } from "../../support/athlete-context.ts";
import { lines, tellFaults } from "../../support/tell-faults.ts";

const schema = competitionSchema(contextForTests.findMovement);
const read = (...entries: readonly string[]) =>
  readYaml({ path: "content/competitions/autumn.yaml", text: entries.join("\n") }, schema, {
    scalars: "text",
  });
const HEAD = [
  "name: Autumn",
  "zone: Europe/Oslo",
  "opens: 2026-11-26 18:00",
  "closes: 2026-11-30 20:00",
] as const;

describe("a competition file", () => {
  it("needs name, zone and window", () => {
    expect(read(...HEAD)).toEqual({
      ok: true,
      value: {
        name: "Autumn",
        zone: "Europe/Oslo",
        opens: "2026-11-26T18:00",
        closes: "2026-11-30T20:00",
        counts: "best",
        ties: [],
        mayCome: [],
        rules: [],
      },
      notices: [],
    });
  });

  it("may say everything else", () => {
    const entries = [
      "counts: last",
      "ties: The earlier tie-break time wins, then the earlier day.",
      "may come: snatch, handstand walk",
      "rules:",
      "  - Film without a cut.",
      "  - Two judges.",
      "bar counts: 15 kg as 35 lb",
      "loading: help allowed",
      "rest between lifts: 1:30",
      "first lift after: 2 min",
      "briefing: 5 min",
    ];
    expect(read(...HEAD, ...entries)).toMatchObject({
      ok: true,
      value: {
        counts: "last",
        ties: ["The earlier tie-break time wins, then the earlier day."],
        mayCome: ["snatch", "handstand-walk"],
        rules: ["Film without a cut.", "Two judges."],
        barCounts: "15-kg-as-35-lb",
        loading: "help-allowed",
        liftRest: 90,
        firstLiftAfter: 120,
        briefing: 300,
      },
    });
  });

  it("tells a wrong zone, window and hour", () => {
    expect(tellFaults(read("name: A", "zone: Oslo", ...HEAD.slice(2)))).toEqual([
      lines(
        "2:7: Fault",
        "found    Oslo",
        "wrong    this is no time zone",
        "allowed  a name of the tz database: area and city, such as `Europe/Berlin` or `America/New_York`",
        "to do    Write the time zone in which the opening and closing times are meant.",
      ),
    ]);
    expect(tellFaults(read(...HEAD.slice(0, 3), "closes: 2026-11-25 20:00"))).toEqual([
      lines(
        "4:9: Fault",
        "found    2026-11-25 20:00",
        "wrong    it closes before it opens (2026-11-26 18:00)",
        "to do    Correct one of the two times.",
      ),
    ]);
    // the hour left out on the last Sunday of March
    expect(
      tellFaults(read(...HEAD.slice(0, 2), "opens: 2026-03-29 02:30", "closes: 2026-11-30 20:00")),
    ).toEqual([
      lines(
        "3:8: Fault",
        "found    2026-03-29 02:30",
        "wrong    clocks in Europe/Oslo go forward that night, and this time is left out",
        "to do    Write a time an hour later.",
      ),
    ]);
  });

  it("tells unknown movements that may come", () => {
    expect(tellFaults(read(...HEAD, "may come: [snatsch]"))[0]).toContain("\n  nearest  snatch\n");
  });
});
