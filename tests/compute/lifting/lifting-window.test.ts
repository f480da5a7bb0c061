import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import {
  earliestStart,
  lastStartClock,
  lengthOf,
  windowOf,
} from "../../../src/compute/lifting/lifting-window.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

const constants = attemptConstants();
const untilSixteen = liftPart({
  kind: "max-load",
  length: { kind: "until", time: seconds(960) },
  order: "as-written",
});

describe("the window of a part", () => {
  it("lasts as long as the part says, from whenever it opens", () => {
    const part = liftPart(windowOfSeconds(360));
    expect(windowOf({ part, opens: { mean: 540, spread: 30 } })).toEqual({
      opens: 540,
      closes: 900,
      varies: false,
    });
  });

  it("closes at a clock of the workout, and then varies with the end of the part before", () => {
    const window = windowOf({ part: untilSixteen, opens: { mean: 560, spread: 40 } });
    expect(window).toEqual({ opens: 560, closes: 960, varies: true });
    expect(lengthOf(window)).toBe(400);
    expect(windowOf({ part: untilSixteen, opens: { mean: 560, spread: 0 } }).varies).toBe(false);
  });

  it("has no end where only attempts are limited", () => {
    const window = windowOf({
      part: liftPart({ kind: "max-load", attempts: 3, order: "any" }),
      opens: { mean: 0, spread: 0 },
    });
    expect(window).toEqual({ opens: 0, varies: false });
    expect(lengthOf(window)).toBeUndefined();
  });

  it("has a last clock at which a lift may start", () => {
    expect(lastStartClock(960, 1, { part: untilSixteen }, constants)).toBe(948);
  });
});

describe("the earliest first attempt", () => {
  const before = { work: [], secondsSince: 0 };

  it("is at once for a fresh athlete with a loaded bar, and a short way after other work", () => {
    expect(earliestStart(withIron(liftingInput()), constants)).toBe(0);
    expect(earliestStart(withIron(liftingInput({ before })), constants)).toBe(20);
  });

  it("is when an empty bar is loaded: three pairs alone take 15 + 7.5 + 7.5 s", () => {
    const part = liftPart(windowOfSeconds(360), { openingBar: "empty", loading: "alone" });
    expect(earliestStart(withIron(liftingInput({ part })), constants)).toBe(30);
  });
});
