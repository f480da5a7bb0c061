import { describe, expect, it } from "vitest";
import { ifCalledEarly, ifStartSlips } from "../../../src/compute/warm-up/called-early.ts";

describe("a start that moves", () => {
  it("is met early with the end of the build and the rehearsal", () => {
    expect(ifCalledEarly({ hasBuild: true, hasRehearsal: true, isHot: false })).toBe(
      "If you are called early, keep the last two sets of your build and the rehearsal and let the rest go. Stop three minutes before you start.",
    );
    expect(ifCalledEarly({ hasBuild: false, hasRehearsal: true, isHot: false })).toBe(
      "If you are called early, keep the rehearsal and let the rest go. Stop three minutes before you start.",
    );
    expect(ifCalledEarly({ hasBuild: false, hasRehearsal: false, isHot: false })).toBe(
      "If you are called early, walk over calmly and start easier than you think.",
    );
  });

  it("is waited for warm, in the heat cool", () => {
    expect(ifStartSlips({ hasBuild: true, hasRehearsal: true, isHot: false })).toBe(
      "If the start slips by ten minutes or less, keep something warm on and keep walking. If it slips by more, repeat one single with the second heaviest load of your build five minutes before the new start.",
    );
    expect(ifStartSlips({ hasBuild: false, hasRehearsal: true, isHot: true })).toBe(
      "If the start slips by ten minutes or less, stay in the shade and keep cool. If it slips by more, repeat the rehearsal five minutes before the new start.",
    );
  });
});
