import { PLACES_CONSTANTS } from "../../../src/compute/places/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { describe, expect, it } from "vitest";
import { crowdsNear } from "../../../src/compute/places/crowds.ts";
import { rankField } from "../../../src/compute/places/rank-field.ts";
import { sampleField } from "../../support/sample-field.ts";

const constants = withOverrides(PLACES_CONSTANTS);

/** One athlete at every kilogram from 80 to 120, with a crowd at 100 and a smaller one at 105 kg. */
const counts = Object.fromEntries(
  Array.from({ length: 41 }, (_, i): [number, number] => [
    80 + i,
    80 + i === 100 ? 12 : 80 + i === 105 ? 8 : 1,
  ]),
);
const field = rankField(sampleField(counts));
const nextPlate = (load: number): number => load + 0.5;

describe("crowds at round scores", () => {
  it("are told largest first, with the load that passes them", () => {
    expect(crowdsNear(field, "finished", { cautious: 98, hopeful: 106 }, nextPlate, constants)).toEqual([
      { score: 100, count: 12, passWith: 100.5 },
      { score: 105, count: 8, passWith: 105.5 },
    ]);
  });

  it("out of reach are not told", () => {
    expect(crowdsNear(field, "finished", { cautious: 85, hopeful: 90 }, nextPlate, constants)).toEqual([]);
  });

  it("that nothing passes are not told", () => {
    expect(crowdsNear(field, "finished", { cautious: 98, hopeful: 106 }, () => undefined, constants)).toEqual(
      [],
    );
  });

  it("do not exist where every score is held by as many", () => {
    const even = rankField(sampleField({ 98: 5, 99: 5, 100: 5, 101: 5 }));
    expect(crowdsNear(even, "finished", { cautious: 98, hopeful: 101 }, nextPlate, constants)).toEqual([]);
  });

  it("are at most four, and the range may be given best first", () => {
    const many = rankField(
      sampleField(
        Object.fromEntries(
          Array.from({ length: 70 }, (_, i): [number, number] => [i, i % 10 === 0 ? 30 : 1]),
        ),
      ),
    );
    expect(
      crowdsNear(many, "finished", { cautious: 65, hopeful: 5 }, (score) => score + 1, constants),
    ).toHaveLength(4);
  });
});
