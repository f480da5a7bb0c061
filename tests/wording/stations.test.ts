import { describe, expect, it } from "vitest";
import { sayStation, sayStations } from "../../src/wording/stations.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
const [first, second] = pacing?.rows ?? [];
if (!pacing || !first || !second) throw new Error("the sample has rows");
const detailsOf = (row: typeof first, rows = pacing.rows): readonly string[] =>
  sayStation(row, rows, true).details.map((text) => text.replaceAll("\u00a0", "_"));

describe("a station", () => {
  it("says the rest between its sets", () => {
    const broken = { ...first, sets: [7, 5].map((amount, at) => ({ amount, restAfter: at === 0 ? 9 : 0 })) };
    expect(detailsOf(broken)).toContain("rest 9_s");
    expect(detailsOf({ ...first, sets: [{ amount: 12, restAfter: 0 }] }).join()).not.toContain("rest");
    expect(sayStation(broken, pacing.rows, false).details.join()).not.toContain("rest");
  });

  it("says its height and a pace as the display shows it", () => {
    // A target of nine feet; 112 s for 500 m.
    expect(detailsOf({ ...first, heightMetres: 2.74, displayed: { kind: "per-500-m", value: 112 } })).toEqual(
      expect.arrayContaining(["2.74_m", "1:52/500_m"]),
    );
    expect(detailsOf({ ...first, heightMetres: 0.6 })).toContain("60_cm");
  });

  it.each([
    ["stand", "first stand 40_s"],
    ["prescribed", "first rest 40_s"],
    ["plates", "first plates, 40_s"],
  ] as const)("begins with the wait before it: %s", (why, said) => {
    const wait = { ...first, kind: "rest" as const, why, start: 100, end: 140, sets: [] };
    expect(detailsOf(second, [wait, second])).toContain(said);
  });

  it("of rounds tells rests that differ as a span", () => {
    const rows = [4, 12].map((restAfter, at) => ({
      ...first,
      index: at,
      round: at + 1,
      sets: [
        { amount: 7, restAfter },
        { amount: 5, restAfter: 0 },
      ],
    }));
    expect(sayStations({ ...pacing, rows })[0]?.details).toContain("rest 4\u00a0s to 12\u00a0s");
  });

  it("of rounds tells waits that differ as a span, with their kind once", () => {
    const rows = [12, 15].flatMap((lasts, at) => [
      {
        ...first,
        kind: "rest" as const,
        why: "stand" as const,
        index: 2 * at,
        round: at + 1,
        start: 0,
        end: lasts,
        sets: [],
      },
      { ...first, index: 2 * at + 1, round: at + 1 },
    ]);
    expect(sayStations({ ...pacing, rows })[0]?.details).toContain("first stand 12\u00a0s to 15\u00a0s");
  });
});
