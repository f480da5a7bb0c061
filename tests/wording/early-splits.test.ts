import { expect, it } from "vitest";
import { sayEarlySplits, sayWeight } from "../../src/wording/early-splits.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const early = samplePlans.forTimeThenLift.parts[0]?.pacing?.earlySplits;
if (!early) throw new Error("the sample has early splits");

it("early performances say how many they are and how far they count", () => {
  expect(sayWeight(early)).toBe(
    nb("Seen so far: 3_performances; they count for 35% of the shape of this plan."),
  );
});

it("each thing seen has its uncertainty, and what cannot be told is named", () => {
  expect(sayEarlySplits(early)).toEqual([
    nb("Every round costs 11_s whatever is in it (± 3_s): transitions count."),
    "Each round was +2% on the one before (± 1%).",
    "Too few splits to tell the surge at the end.",
  ]);
  expect(
    sayEarlySplits({
      ...early,
      notIdentifiable: [],
      perRep: { seconds: 1.84, error: 0.2 },
      finishSurge: { share: -0.04, error: 0.02 },
    }).slice(1),
  ).toEqual([
    nb("A rep costs 1.8_s (± 0.2_s)."),
    "Each round was +2% on the one before (± 1%).",
    "The last round was −4% (± 2%).",
  ]);
});
