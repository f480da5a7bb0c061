import { expect, test } from "vitest";
import { findNamed } from "../../src/cli/find-named.ts";

const workouts = [{ id: "low-water" }, { id: "high-wall" }];

test("what is there is found by its id", () => {
  expect(findNamed("workout", "high-wall", workouts)).toEqual({ ok: true, value: { id: "high-wall" } });
});

test("a misspelt id is told with the nearest name and all there are", () => {
  expect(findNamed("workout", "low-watr", workouts)).toEqual({
    ok: false,
    message: 'There is no workout "low-watr". Did you mean "low-water"? There are: low-water, high-wall.',
  });
});

test("an id like none is told with what there is, and an empty folder is said to be empty", () => {
  expect(findNamed("workout", "zzzzzzzz", workouts)).toEqual({
    ok: false,
    message: 'There is no workout "zzzzzzzz". There are: low-water, high-wall.',
  });
  expect(findNamed("athlete", "somebody", [])).toEqual({
    ok: false,
    message: 'There is no athlete "somebody". There is no athlete yet.',
  });
});
