import { describe, expect, it } from "vitest";
import { sayOrder } from "../../src/wording/order.ts";

const row = { name: "row", plural: "row", unit: "calories", amount: 60 } as const;
const ball = { name: "wall-ball shot", plural: "wall-ball shots", unit: "reps", amount: 120 } as const;
const ring = { name: "ring muscle-up", plural: "ring muscle-ups", unit: "reps", amount: 25 } as const;
const way = (...movements: readonly (typeof row | typeof ball | typeof ring)[]) => ({
  movements: [...movements],
  rounds: 1,
});
const nb = (text: string): string => text.replaceAll("_", "\u00a0");

describe("the order of work that may be done in any", () => {
  it("says what the next best and the worst would cost in the score", () => {
    const order = {
      ...way(row, ball, ring),
      decidedBy: "result",
      next: { ...way(ball, row, ring), costs: 4.2 },
      worst: { ...way(ring, ball, row), costs: 31 },
    } as const;
    expect(sayOrder({ order, score: "reps" })).toBe(
      nb(
        "Order: row, then wall-ball shots, then ring muscle-ups. The next best, wall-ball shots first, costs about 4_reps. The worst, ring muscle-ups first, costs about 31_reps.",
      ),
    );
    expect(sayOrder({ order, score: "time" })).toContain(nb("costs about 31_s."));
  });

  it("tells two others that begin alike apart, and says where the next comes to the same or the tie-break decides", () => {
    const order = {
      ...way(row, ball, ring),
      decidedBy: "tie-break",
      next: { ...way(ball, row, ring), costs: 0.3 },
      worst: { ...way(ball, ring, row), costs: 33 },
    } as const;
    expect(sayOrder({ order, score: "reps" })).toBe(
      nb(
        "Order: row, then wall-ball shots, then ring muscle-ups, for the earlier tie-break. Wall-ball shots, then row, then ring muscle-ups comes to the same. The worst, wall-ball shots, then ring muscle-ups, then row, costs about 33_reps.",
      ),
    );
  });

  it("says how the work is cut up where it is", () => {
    const order = {
      movements: [ball, { ...ring, amount: 50 }],
      rounds: 20,
      decidedBy: "result",
      next: { ...way(ball, ring), costs: 12 },
    } as const;
    const said = nb(
      "Order: 20 rounds of 6_wall-ball shots and about_3_ring muscle-ups. The next best, wall-ball shots first, costs about 12_reps.",
    );
    expect(sayOrder({ order: { ...order, movements: [...order.movements] }, score: "reps" })).toBe(said);
    expect(sayOrder({ score: "reps" })).toBeUndefined();
  });
});
