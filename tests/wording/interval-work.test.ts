import { expect, it } from "vitest";
import { namesOfIntervals, workOfIntervals } from "../../src/wording/interval-work.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
const [swing, pull] = pacing?.rows ?? [];
if (!pacing || !swing || !pull) throw new Error("the sample has rows");
const rest = { ...swing, kind: "rest", name: "rest", short: "rest" } as const;

it("an interval is the work between two rests, however many rests stand there", () => {
  const rows = [swing, pull, rest, rest, swing, pull, rest];
  expect(workOfIntervals({ rows })).toEqual([
    [swing, pull],
    [swing, pull],
  ]);
});

it("movements in turn are named, one for each interval", () => {
  expect(namesOfIntervals({ rows: [swing, rest, pull, rest, rest, swing] })).toEqual([
    "swing",
    "pull-up",
    "swing",
  ]);
});

it("the same movement every time, or several in one interval, need no name", () => {
  expect(namesOfIntervals({ rows: [swing, rest, swing] })).toEqual([]);
  expect(namesOfIntervals({ rows: [swing, pull, rest, swing, pull] })).toEqual([]);
});
