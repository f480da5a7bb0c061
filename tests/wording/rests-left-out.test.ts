import { expect, it } from "vitest";
import { restLeftOut, sayRestLeftOut } from "../../src/wording/rests-left-out.ts";

const result = { target: 893, cautious: 1040, middle: 900, hopeful: 750 };
const apart = { score: "time", ending: "finishes", duration: 1253, result } as const;

it("the rest a time leaves out is what the clock shows more", () => {
  expect(restLeftOut(apart)).toBe(360);
  expect(sayRestLeftOut(apart)).toBe("the score leaves out 6:00 of rest");
});

it("nothing is left out of a time that is the clock's, of a score that is no time, or where a cap ends it", () => {
  expect(restLeftOut({ ...apart, duration: 893.4 })).toBe(0);
  expect(restLeftOut({ ...apart, score: "slowest-interval" })).toBe(0);
  expect(restLeftOut({ ...apart, ending: "stopped-by-cap" })).toBe(0);
  expect(sayRestLeftOut({ ...apart, duration: 893 })).toBeUndefined();
});
