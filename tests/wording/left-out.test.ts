import { expect, it } from "vitest";
import { sameReasons, sayInstead, sayLeftOut, sayWhyLeftOut } from "../../src/wording/left-out.ts";

it("what is left out is a sentence, with its part where there is one", () => {
  expect(sayLeftOut({ title: "Pull-ups: kipping" })).toBe("Left out: Pull-ups: kipping.");
  expect(sayLeftOut({ part: "b", title: "The lift for load" })).toBe(
    "Left out in part B: The lift for load.",
  );
});

it("what stands in its place ends with one full stop", () => {
  expect(sayInstead({ instead: "strict" })).toBe("Instead: strict.");
  expect(sayInstead({ instead: "Ring rows, feet down." })).toBe("Instead: Ring rows, feet down.");
  expect(sayInstead({})).toBeUndefined();
});

it("one reason for several is said once, with what to ask", () => {
  const kip = {
    what: "movement",
    title: "Pull-ups",
    why: "Your shoulder.",
    ask: "Ask.",
    instead: "Rows",
  } as const;
  const press = { what: "movement", title: "Jerks", why: "Your shoulder.", ask: "Ask." } as const;
  const lift = { what: "part", title: "The lift for load", why: "Your age.", ask: "Ask." } as const;
  expect(sameReasons([kip, lift, press])).toEqual([[kip, press], [lift]]);
  expect(sayWhyLeftOut([kip, press])).toBe(
    "Your shoulder. Ask. Ask before the start what still counts with it.",
  );
  expect(sayWhyLeftOut([lift])).toBe("Your age. Ask.");
});
