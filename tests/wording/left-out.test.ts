import { expect, it } from "vitest";
import type { Plan } from "../../src/models/plan/plan.ts";
import {
  sameReasons,
  sayAsk,
  sayInstead,
  sayLeftOut,
  sayWhyLeftOut,
  titleOfLeftOut,
} from "../../src/wording/left-out.ts";

type Withheld = Plan["withheld"][number];
const shoulder: Withheld["reason"] = { kind: "limit", joint: "shoulder" };
const ASK_SHOULDER =
  "Ask your coach, or the licensed professional who knows your shoulder, before you do it.";

it("what is left out is a sentence, with its part where there is one", () => {
  expect(sayLeftOut({ of: "pull-ups", way: "kipping" })).toBe("Left out: Pull-ups: kipping.");
  expect(sayLeftOut({ part: "b" })).toBe("Left out in part B: The lift for load.");
  expect(titleOfLeftOut({ of: "box jump overs" })).toBe("Box jump overs");
});

it("what stands in its place ends with one full stop", () => {
  expect(sayInstead({ instead: "strict pull-ups" })).toBe("Instead: Strict pull-ups.");
  expect(sayInstead({ instead: "Ring rows, feet down." })).toBe("Instead: Ring rows, feet down.");
  expect(sayInstead({})).toBeUndefined();
});

it("a limit is told by its joint, else by what was stated, else as asked for", () => {
  const why = (reason: Withheld["reason"]): string => sayWhyLeftOut([{ what: "movement", reason }]);
  expect(why(shoulder)).toBe(`You stated a limit: your shoulder. ${ASK_SHOULDER}`);
  expect(why({ kind: "limit", condition: "recent-illness" })).toBe(
    "You stated a limit: an illness not long ago. Ask your coach or a licensed professional before you do it.",
  );
  expect(why({ kind: "limit" })).toMatch(/^You asked to keep away from it\. Ask /);
});

it("a caution is told by what brought it up, else by its title, with whom it says to ask", () => {
  const caution = { kind: "caution", title: "Heavy loads", because: [], ask: "Ask a physician." } as const;
  expect(sayWhyLeftOut([{ what: "part", reason: caution }])).toBe("Heavy loads. Ask a physician.");
  expect(sayWhyLeftOut([{ what: "part", reason: { ...caution, because: [{ of: "age" }] } }])).toBe(
    "Because of your age. Ask a physician.",
  );
  expect(sayAsk(caution)).toBe("Ask a physician.");
});

it("one reason for several is said once, with what to ask", () => {
  const kip: Withheld = { what: "movement", of: "pull-ups", reason: shoulder, instead: "rows" };
  const press: Withheld = { what: "movement", of: "jerks", reason: { ...shoulder } };
  const lift: Withheld = { what: "part", reason: { kind: "limit" } };
  expect(sameReasons([kip, lift, press])).toEqual([[kip, press], [lift]]);
  expect(sayWhyLeftOut([kip, press])).toBe(
    `You stated a limit: your shoulder. ${ASK_SHOULDER} Ask before the start what still counts with it.`,
  );
});
