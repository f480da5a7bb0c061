import { expect, test } from "vitest";
import { resolveDivision } from "../../../src/compute/unroll/resolve-division.ts";

const divisions = ["men", "women", "masters men"];

test("a stated division is taken whatever its capitals", () => {
  expect(resolveDivision({ division: "Masters Men", sex: "male" }, { divisions })).toEqual({
    division: "masters men",
    by: "stated",
  });
});

test("without a division the first one of the athlete's sex is taken, and said to be assumed", () => {
  expect(resolveDivision({ sex: "male" }, { divisions })).toEqual({ division: "men", by: "sex" });
  expect(resolveDivision({ sex: "female" }, { divisions })).toEqual({ division: "women", by: "sex" });
});

test("men is not read inside the word women", () => {
  expect(resolveDivision({ sex: "male" }, { divisions: ["women", "men"] }).division).toBe("men");
});

test("with nothing known the last division listed is taken", () => {
  expect(resolveDivision({}, { divisions })).toEqual({ division: "masters men", by: "last" });
});

test("a division the workout does not offer is replaced openly", () => {
  expect(resolveDivision({ division: "women 55+", sex: "female" }, { divisions })).toEqual({
    division: "women",
    by: "replaced",
  });
});

test("a woman gets the women's loads where the division is called ladies, stated or not", () => {
  const named = ["gentlemen", "ladies", "masters"];
  expect(resolveDivision({ sex: "female" }, { divisions: named })).toEqual({ division: "ladies", by: "sex" });
  expect(resolveDivision({ division: "women", sex: "female" }, { divisions: named })).toEqual({
    division: "ladies",
    by: "stated",
  });
});
