import { describe, expect, it } from "vitest";
import { choicesOfBands } from "../../src/components/band-choices.ts";
import { samplePlans } from "../support/sample-plan.ts";

const [kipping] = samplePlans.forTimeThenLift.choices;
if (!kipping?.other) throw new Error("the sample has no choice");
const { pick, other } = kipping;

describe("the choices of all bands", () => {
  it("explain both ways and say whom each suits", () => {
    const bands = [
      { band: { title: "New" }, plan: { choices: [kipping], athlete: { level: "new" } } },
      {
        band: { title: "Elite" },
        plan: { choices: [{ ...kipping, pick: other, other: pick }], athlete: { level: "elite" } },
      },
      { band: { title: "Regular" }, plan: { choices: [kipping], athlete: { level: "regular" } } },
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
    const [only] = choicesOfBands([
      { band: { title: "New" }, plan: { choices: [kipping], athlete: { level: "new" } } },
    ]);
    expect(only?.options.map(({ who }) => who)).toEqual(["For New.", undefined]);
  });

  it("need no list where one way suits all", () => {
    const bands = ["New, men", "Elite, men"].map((title) => ({
      band: { title },
      plan: { choices: [kipping], athlete: { level: "new" } },
    }));
    expect(choicesOfBands(bands)[0]?.options[0]?.who).toBe("For everyone here.");
  });

  it("name a level once where all its bands do alike", () => {
    const bandOf = (title: string, level: "new" | "elite", choice: typeof kipping) => ({
      band: { title },
      plan: { choices: [choice], athlete: { level } },
    });
    const bands = [
      bandOf("New, women", "new", kipping),
      bandOf("New, men", "new", kipping),
      bandOf("Elite, women", "elite", kipping),
      bandOf("Elite, men", "elite", { ...kipping, pick: other, other: pick }),
    ];
    expect(choicesOfBands(bands)[0]?.options.map(({ who }) => who)).toEqual([
      "For new athletes; Elite, women.",
      "For Elite, men.",
    ]);
  });

  it("are none where there is nothing to choose", () => {
    expect(
      choicesOfBands([{ band: { title: "New" }, plan: { choices: [], athlete: { level: "new" } } }]),
    ).toEqual([]);
  });
});
