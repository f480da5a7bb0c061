import { describe, expect, it } from "vitest";
import { divisionOf } from "../../src/models/division-of.ts";

const open = { divisions: ["men", "women", "men 55+", "women 55+"] };

describe("the division of a workout an athlete is in", () => {
  it("is the one stated, however its sex is written", () => {
    expect(divisionOf({ division: "Ladies 55+" }, open)).toEqual({ division: "women 55+", by: "stated" });
    expect(divisionOf({ division: "F" }, open)).toEqual({ division: "women", by: "stated" });
  });

  it("is that of the sex where no division is stated", () => {
    expect(divisionOf({ sex: "female" }, open)).toEqual({ division: "women", by: "sex" });
  });

  it("is unclear where an age belongs to a division listed, unless one is stated", () => {
    expect(divisionOf({ sex: "male", birthYear: 1968 }, open, 2026)).toEqual({
      unclear: "age",
      near: "men 55+",
    });
    expect(divisionOf({ sex: "male", birthYear: 1975 }, open, 2026)).toEqual({ division: "men", by: "sex" });
    expect(divisionOf({ division: "men", birthYear: 1968 }, open, 2026)).toEqual({
      division: "men",
      by: "stated",
    });
    const young = { divisions: ["men", "boys 14-15", "boys 16-17"] };
    expect(divisionOf({ sex: "male", birthYear: 2010 }, young, 2026)).toEqual({
      unclear: "age",
      near: "boys 16-17",
    });
  });

  it("is unclear where the one stated is not listed, also where only its sex is", () => {
    const two = { divisions: ["men", "women"] };
    expect(divisionOf({ division: "scaled women", sex: "female" }, two)).toEqual({ unclear: "not-listed" });
    expect(divisionOf({ division: "women 55+" }, two)).toEqual({ unclear: "not-listed" });
  });

  it("is what the workout plans it as", () => {
    const said = { divisions: ["men", "women"], plannedAs: [{ of: "women 55+", as: "women" }] };
    expect(divisionOf({ division: "Women 55+" }, said)).toEqual({ division: "women", by: "planned-as" });
    const onlyMen = { divisions: ["men"], plannedAs: [{ of: "female", as: "men" }] };
    expect(divisionOf({ sex: "female" }, onlyMen)).toEqual({ division: "men", by: "planned-as" });
  });

  it("is unclear for a woman where the workout has only men, or two divisions of women", () => {
    expect(divisionOf({ division: "women" }, { divisions: ["men"] })).toEqual({ unclear: "none-of-the-sex" });
    expect(divisionOf({ sex: "female" }, { divisions: ["men"] })).toEqual({ unclear: "none-of-the-sex" });
    const two = { divisions: ["open men", "open women", "pro men", "pro women"] };
    expect(divisionOf({ division: "women" }, two)).toEqual({ unclear: "several-of-the-sex" });
  });

  it("is the only one there is where that is for everybody, and nothing where nothing is known", () => {
    expect(divisionOf({ sex: "female" }, { divisions: ["everyone"] })).toEqual({
      division: "everyone",
      by: "sex",
    });
    expect(divisionOf({}, open)).toBeUndefined();
  });
});
