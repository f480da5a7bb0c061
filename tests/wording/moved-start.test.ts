import { describe, expect, it } from "vitest";
import { sayCalledEarly, sayStartSlips, sayWait } from "../../src/wording/moved-start.ts";

const all = { buildSets: 4, hasRehearsal: true, isHot: false };

describe("a start that moves", () => {
  it("is met early with the end of the build and the rehearsal", () => {
    expect(sayCalledEarly(all)).toBe(
      "Called early: keep the last two sets of your build and the rehearsal, and stop three minutes before you start.",
    );
    expect(sayCalledEarly({ ...all, buildSets: 0 })).toBe(
      "Called early: keep the rehearsal, and stop three minutes before you start.",
    );
    expect(sayCalledEarly({ buildSets: 0, hasRehearsal: false, isHot: false })).toBe(
      "Called early: walk over calmly and start easier than you think.",
    );
  });

  it("is waited for warm, in the heat cool", () => {
    expect(sayWait({ isHot: true })).not.toMatch(/warm/);
    expect(sayStartSlips(all)).toBe(
      "Start slips: keep warm and keep walking; by more than ten minutes, repeat one single with the second heaviest load of your build five minutes before it.",
    );
    expect(sayStartSlips({ ...all, buildSets: 1, isHot: true })).toBe(
      "Start slips: stay cool in the shade; by more than ten minutes, repeat the rehearsal five minutes before it.",
    );
  });
});
