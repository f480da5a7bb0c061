import { describe, expect, it } from "vitest";
import { readYaml } from "../../../src/reading/yaml/read.ts";
import { gymSchema } from "../../../src/reading/schemas/gym-schema.ts";
import { lines, tellFaults } from "../../support/tell-faults.ts";

const read = (...entries: readonly string[]) =>
  readYaml({ path: "content/gyms/mill.yaml", text: ["name: The Mill", ...entries].join("\n") }, gymSchema, {
    scalars: "text",
  });
const tell = (...entries: readonly string[]) => tellFaults(read(...entries));
const PLATES = "plates: {20 kg: 2 pairs}";

describe("a gym file", () => {
  it("needs a name, a bar and plates", () => {
    expect(read("bars: 20 kg", PLATES)).toEqual({
      ok: true,
      value: {
        name: "The Mill",
        bars: [{ id: "20 kg", mass: { value: 20, unit: "kg" }, for: "everyone" }],
        collarsCount: false,
        plates: [{ plate: { value: 20, unit: "kg" }, pairs: 2 }],
        ergs: {},
        equipment: [],
        between: { value: 3, unit: "m" },
      },
      notices: [],
    });
  });

  it("may say everything else, in kg and lb", () => {
    const gym = read(
      "bars:",
      "  - {id: long, mass: 20 kg}",
      "  - {mass: 15 kg, for: female}",
      "  - 35 lb for women",
      "  - {id: odd, mass: 15 kg, counts as: 35 lb}",
      "collar: 2,5 kg",
      "collars count: yes",
      "plates: {2.5 kg: 1, 20 kg: 4 plates, 45 lb: 3 pairs, 10 kg: 0}",
      "ergs: {rower: 6, Ski: 2, air bike: 1}",
      "equipment: rack, pins, bumper plates",
      "between stations: 5 m",
      "plate change: 12 s",
    );
    expect(tellFaults(gym)).toEqual([]);
    expect(gym).toMatchObject({
      value: {
        bars: [
          { id: "long", for: "everyone" },
          { id: "15 kg female", for: "female" },
          { id: "35 lb female", mass: { value: 35, unit: "lb" }, for: "female" },
          { id: "odd", countsAs: { value: 35, unit: "lb" } },
        ],
        collar: { value: 2.5, unit: "kg" },
        collarsCount: true,
        // heaviest first: 45 lb are 20.4 kg
        plates: [
          { plate: { value: 45, unit: "lb" }, pairs: 3 },
          { plate: { value: 20, unit: "kg" }, pairs: 2 },
          { plate: { value: 2.5, unit: "kg" }, pairs: 1 },
        ],
        ergs: { row: 6, ski: 2, "air-bike": 1 },
        equipment: ["rack", "pins", "bumper plates"],
        between: { value: 5, unit: "m" },
        plateChange: 12,
      },
    });
  });

  it("tells what is missing", () => {
    expect(tell("bars: none")).toEqual([
      lines(
        "2:7: Fault",
        "found    none",
        "wrong    `bars` must have at least 1 entry",
        "to do    Write at least 1 entry.",
      ),
      lines(
        "1:1: Fault",
        "wrong    `plates` is missing",
        "allowed  plates one athlete can have, size and number of pairs: `25 kg: 2 pairs`; kg and lb may be mixed",
        "to do    Add `plates`.",
      ),
    ]);
  });

  it("knows what bars, plates and collars weigh", () => {
    expect(
      tell("bars: [20, 45 kg, 200 kg]", "collar: 5 lb", "plates: {45 kg: 1, 450 lb: 2, 12.5: 1, 100 kg: 1}"),
    ).toEqual([
      lines(
        "2:8: Question",
        "found    20",
        "because  the unit is missing",
        "allowed  a number with kg or lb, such as `102.5 kg` or `225 lb`",
        "to do    Write `20 kg` or `20 lb`, whichever is meant.",
      ),
      lines(
        "2:12: Question",
        "found    45 kg",
        "because  a bar does not weigh 45 kg",
        "allowed  a mass from 2 kg to 40 kg",
        "to do    Write `45 lb` if that is meant.",
      ),
      lines(
        "2:19: Fault",
        "found    200 kg",
        "wrong    a bar does not weigh 200 kg",
        "allowed  a mass from 2 kg to 40 kg",
        "to do    Write a mass from 2 kg to 40 kg.",
      ),
      lines(
        "4:20: Fault",
        "found    450 lb",
        "wrong    a plate does not weigh 450 lb",
        "allowed  a mass from 0.1 kg to 50 kg",
        "to do    Write a mass from 0.1 kg to 50 kg.",
      ),
      lines(
        "4:31: Question",
        "found    12.5",
        "because  the unit is missing",
        "allowed  a number with kg or lb, such as `102.5 kg` or `225 lb`",
        "to do    Write `12.5 kg` or `12.5 lb`, whichever is meant.",
      ),
      lines(
        "4:40: Question",
        "found    100 kg",
        "because  a plate does not weigh 100 kg",
        "allowed  a mass from 0.1 kg to 50 kg",
        "to do    Write `100 lb` if that is meant.",
      ),
    ]);
    expect(tell("bars: 20 kg", PLATES, "collar: 5 kg")).toEqual([
      lines(
        "4:9: Question",
        "found    5 kg",
        "because  a collar does not weigh 5 kg",
        "allowed  a mass from 0.05 kg to 3 kg",
        "to do    Write `5 lb` if that is meant.",
      ),
    ]);
  });

  it("counts plates in pairs", () => {
    expect(tell("bars: 20 kg", "plates: {20 kg: 3 plates, 10 kg: many, 5 kg: 99, 5.0 kg: 1}")).toEqual([
      lines(
        "3:17: Question",
        "found    3 plates",
        "because  plates are loaded in pairs, and one of these has no partner",
        "allowed  a number of pairs such as `2 pairs`",
        "to do    Write `1 pairs` if that is meant.",
      ),
      lines(
        "3:34: Fault",
        "found    many",
        "wrong    this is not a number of pairs",
        "allowed  a number of pairs such as `2 pairs`",
        "to do    Write a number of pairs such as `2 pairs`.",
      ),
      lines(
        "3:46: Fault",
        "found    99",
        "wrong    one athlete cannot have more than 40 pairs",
        "allowed  a number of pairs such as `2 pairs`",
        "to do    Write a number of pairs such as `2 pairs`.",
      ),
    ]);
    expect(tell("bars: 20 kg", "plates: {5 kg: 1, 5.0 kg: 1}")).toEqual([
      lines(
        "3:19: Fault",
        "found    5.0 kg",
        'wrong    this size stands here twice, also as "5 kg"',
        "to do    Keep one of the two lines, with all pairs in it.",
      ),
    ]);
  });

  it("tells bars of one name apart, and machines that there are", () => {
    expect(tell("bars: [20 kg, 20 kg]", PLATES)).toEqual([
      lines(
        "2:15: Fault",
        "found    20 kg",
        "wrong    another bar has the same name",
        "to do    Give each bar an `id` of its own.",
      ),
    ]);
    expect(tell("bars: 20 kg", PLATES, "ergs: {treadmill: 2, rows: 1}")).toEqual([
      lines(
        "4:8: Fault",
        "found    treadmill",
        "wrong    there is no machine of this name",
        "allowed  row, ski, bike erg, air bike",
        "to do    Write one of the names allowed; other things belong under `equipment`.",
      ),
      lines(
        "4:22: Fault",
        "found    rows",
        "wrong    there is no machine of this name",
        "allowed  row, ski, bike erg, air bike",
        "nearest  row",
        "to do    Write one of the names allowed; other things belong under `equipment`.",
      ),
    ]);
  });
});
