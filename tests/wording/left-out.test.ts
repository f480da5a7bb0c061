import { expect, it } from "vitest";
import { sayInstead, sayLeftOut } from "../../src/wording/left-out.ts";

it("what is left out is a sentence, with its part where there is one", () => {
  expect(sayLeftOut({ title: "Pull-ups: kipping" })).toBe("Pull-ups: kipping is left out.");
  expect(sayLeftOut({ part: "b", title: "The lift for load" })).toBe("B: The lift for load is left out.");
});

it("what stands in its place ends with one full stop", () => {
  expect(sayInstead({ instead: "strict" })).toBe(
    "Instead: strict. Ask before the start what still counts with it.",
  );
  expect(sayInstead({ instead: "Ring rows, feet down." })).toBe(
    "Instead: Ring rows, feet down. Ask before the start what still counts with it.",
  );
  expect(sayInstead({})).toBeUndefined();
});
