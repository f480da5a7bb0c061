import { expect, it } from "vitest";
import { gapNow, type GapOfDay } from "../../src/live/gap-now.ts";

const step = (kind: GapOfDay["steps"][number]["kind"], before: number, lasts: number) => ({
  kind,
  before,
  lasts,
  sets: [],
});
// Opens at 45:00, first lift at 45:20: thirty minutes to fill.
const gap: GapOfDay = {
  part: "b",
  from: 920,
  at: 2720,
  steps: [
    step("come-down", 1800, 300),
    step("keep-warm", 1500, 900),
    step("build", 600, 450),
    step("rest", 150, 150),
  ],
};
const at = (opensIn: number) => gapNow(gap, opensIn, 2700);

it("the step at hand follows from when the part opens, and how long it lasts from the next", () => {
  expect(at(1470)?.now.kind).toBe("keep-warm");
  expect(at(1480)?.left).toBe(900);
  expect(at(500)?.now.kind).toBe("build");
  expect(at(500)?.next?.kind).toBe("rest");
  expect(at(60)?.now.kind).toBe("rest");
  expect(at(60)?.left).toBe(80);
});

it("work that ends sooner leaves more time to come down, and nothing is told once the part is open", () => {
  expect(at(2400)?.now.kind).toBe("come-down");
  expect(at(0)).toBeUndefined();
  expect(gapNow({ ...gap, steps: [] }, 100, 2700)).toBeUndefined();
});
