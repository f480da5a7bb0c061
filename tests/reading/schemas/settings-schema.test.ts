import { describe, expect, it } from "vitest";
import { readYaml } from "../../../src/reading/yaml/read.ts";
import { settingsSchema, USUAL_SETTINGS } from "../../../src/reading/schemas/settings-schema.ts";
import { lines, tellFaults } from "../../support/tell-faults.ts";

const read = (...entries: readonly string[]) =>
  readYaml(
    { path: "content/settings.yaml", text: entries.join("\n") },
    settingsSchema(["mill"], new Map([["openerChance", [0.1, 0.99]]])),
    {
      scalars: "text",
    },
  );

describe("the settings file", () => {
  it("needs nothing", () => {
    expect(read("title:")).toEqual({ ok: true, value: USUAL_SETTINGS, notices: [] });
  });

  it("sets title, distance, seed, gym, passcode, order of dates and numbers of the model", () => {
    const written = [
      "title: Lantern Week",
      "read at: 2 m",
      "seed: 7",
      "gym: mill",
      "passcode: yes",
      "dates: day first",
      "overrides: {opener chance: 0,9}",
    ];
    expect(read(...written)).toMatchObject({
      ok: true,
      value: {
        title: "Lantern Week",
        readAt: 2,
        seed: 7,
        gym: "mill",
        passcode: true,
        dates: "day-first",
        overrides: { openerChance: 0.9 },
      },
    });
  });

  it("tells a distance nobody reads from, and a seed that is not whole", () => {
    expect(tellFaults(read("read at: 10 m", "seed: 1.5"))).toEqual([
      lines(
        "1:10: Fault",
        "found    10 m",
        "wrong    no sheet on one page can be read from there",
        "allowed  0.4 m to 4 m",
        "to do    Write the distance between eyes and sheet, such as `1.5 m`.",
      ),
      lines(
        "2:7: Fault",
        "found    1.5",
        "wrong    the seed must be a whole number",
        "to do    Write a whole number such as `1`.",
      ),
    ]);
  });

  it("tells a number the model does not have, with the nearest, and one no plan can be made with", () => {
    expect(tellFaults(read("overrides:", "  openerChanse: 0.9", "  openerChance: 90"))).toEqual([
      lines(
        "2:3: Fault",
        "found    openerChanse",
        "wrong    the model has no number of this name",
        "allowed  the names that `npm run model` prints",
        "nearest  openerChance",
        "to do    Write `openerChance`, or leave it out.",
      ),
      lines(
        "3:17: Fault",
        "found    90",
        "wrong    no plan can be made with this number",
        "allowed  0.1 to 0.99",
        "to do    Write a number in this range; `npm run model -- openerChance` says what it does.",
      ),
    ]);
  });
});
