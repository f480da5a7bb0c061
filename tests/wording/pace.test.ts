import { expect, it } from "vitest";
import { sayPace, sayRowPace, sayVisitPace } from "../../src/wording/pace.ts";

it.each([
  [{ kind: "per-500-m", value: 112.4 }, "1:52 per 500 m"],
  [{ kind: "per-1000-m", value: 100 }, "1:40 per 1000 m"],
  [{ kind: "per-km", value: 285 }, "4:45 per km"],
  [{ kind: "per-100-m", value: 154 }, "2:34 per 100 m"],
  [{ kind: "calories-per-hour", value: 1046 }, "1050 cal/h"],
] as const)("%j is read from the display as %s", (pace, text) => {
  expect(sayPace(pace)).toBe(text.replaceAll(" ", "\u00a0"));
});

it("a way is told in the unit its floor is marked in: 1.1 s a metre are 3.4 s for ten feet", () => {
  const way = { unit: "metres", secondsPerUnit: 1.1 } as const;
  expect(sayRowPace({ ...way, writtenIn: "ft" })).toBe("3.4\u00a0s\u00a0per\u00a010\u00a0ft");
  expect(sayRowPace(way)).toBe("1.1\u00a0s\u00a0a\u00a0metre");
});

it("of a single rep that is waited for is not said: its clocks tell how long it lasts", () => {
  const row = { unit: "reps", amount: 1, secondsPerUnit: 60.9 } as const;
  expect(sayVisitPace(row)).toBeUndefined();
  expect(sayVisitPace({ ...row, amount: 2 })).toBe("60.9\u00a0s\u00a0a\u00a0rep");
});
