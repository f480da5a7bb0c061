import { expect, it } from "vitest";
import { sayPace } from "../../src/wording/pace.ts";

it.each([
  [{ kind: "per-500-m", value: 112.4 }, "1:52 per 500 m"],
  [{ kind: "per-1000-m", value: 100 }, "1:40 per 1000 m"],
  [{ kind: "per-km", value: 285 }, "4:45 per km"],
  [{ kind: "calories-per-hour", value: 1046 }, "1050 cal/h"],
] as const)("%j is read from the display as %s", (pace, text) => {
  expect(sayPace(pace)).toBe(text.replaceAll(" ", "\u00a0"));
});
