import { describe, expect, it } from "vitest";
import { readText, verdictsOf } from "../../support/table-verdicts.ts";

describe("the unit of bare numbers", () => {
  it("is not that of one person who writes another than everybody else", () => {
    // Nora and Ben weigh themselves in kilograms; 65 and 105 pounds would be half of what they lift.
    const verdicts = verdictsOf(
      readText(
        "Name,Level,Bodyweight,Clean & Jerk\nNora,regular,58kg,65\nBen,regular,82kg,105\nTove,regular,140 lb,150 lb\n",
      ),
    );
    expect([verdicts["D2"], verdicts["D3"], verdicts["D4"]]).toEqual(["asked", "asked", "150 lb"]);
  });

  it("is not that of a last cell alone", () => {
    const verdicts = verdictsOf(
      readText("Name,Level,Back squat\nIda,regular,80\nLou,regular,95\nMia,regular,225 lb\n"),
    );
    expect([verdicts["C2"], verdicts["C3"], verdicts["C4"]]).toEqual(["asked", "asked", "225 lb"]);
  });

  it("is that of the first cell where nothing speaks against it, as people begin a column", () => {
    const verdicts = verdictsOf(
      readText("Name,Level,Back squat\nIda,regular,80 kg\nLou,regular,95\nMia,regular,120\n"),
    );
    expect([verdicts["C2"], verdicts["C3"], verdicts["C4"]]).toEqual(["80 kg", "95 kg", "120 kg"]);
  });
});

it.each(["Athlet", "Name (last, first)"])("a column headed %j holds names", (heading) => {
  const [ada] = readText(`"${heading}",Level\nAda Berg,regular\n`).athletes;
  expect(ada?.name).toBe("Ada Berg");
});
