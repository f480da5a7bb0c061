import { describe, expect, it } from "vitest";
import { choicesOfBands } from "../../src/components/band-choices.ts";
import { samplePlans } from "../support/sample-plan.ts";

const [kipping] = samplePlans.forTimeThenLift.choices;
if (!kipping?.other) throw new Error("the sample has no choice");
const { pick, other } = kipping;

describe("the choices of all bands", () => {
  it("explain both ways and say whom each suits", () => {
    const bands = [
      { band: { title: "New" }, plan: { choices: [kipping] } },
      { band: { title: "Elite" }, plan: { choices: [{ ...kipping, pick: other, other: pick }] } },
      { band: { title: "Regular" }, plan: { choices: [kipping] } },
    ];
    expect(choicesOfBands(bands)).toEqual([
      {
        question: "Pull-ups: kipping or butterfly?",
        options: [
          { name: "Kipping", say: pick.say, who: "For New; Regular." },
          { name: "Butterfly", say: other.say, who: "For Elite." },
        ],
      },
    ]);
  });

  it("tell an option that suits nobody all the same", () => {
    const [only] = choicesOfBands([{ band: { title: "New" }, plan: { choices: [kipping] } }]);
    expect(only?.options.map(({ who }) => who)).toEqual(["For New.", undefined]);
  });

  it("need no list where one way suits all", () => {
    const bands = ["New, men", "Elite, men"].map((title) => ({
      band: { title },
      plan: { choices: [kipping] },
    }));
    expect(choicesOfBands(bands)[0]?.options[0]?.who).toBe("For everyone here.");
  });

  it("are none where there is nothing to choose", () => {
    expect(choicesOfBands([{ band: { title: "New" }, plan: { choices: [] } }])).toEqual([]);
  });
});
