import { describe, expect, it } from "vitest";
import {
  heavyBarFault,
  noBarFault,
  noLiftFault,
  shortWindowFault,
  stepsFault,
} from "../../../src/compute/lifting/lifting-faults.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";

const workout = { file: "content/workouts/grindstone.mdx", line: 7, column: 5 };
const athlete = { file: "athletes/ada.yaml", line: 1, column: 1 };

describe("why attempts cannot be planned", () => {
  it("says that nothing in a part is a lift", () => {
    expect(sayFault(noLiftFault(workout, "b", ["plank", "row"]))).toBe(
      [
        "content/workouts/grindstone.mdx:7:5: Fault",
        "  found    plank, row",
        "  wrong    part b is lifted for load, but no best lift can be derived of plank or row",
        "  allowed  movements of which a single best lift means something",
        "  to do    Name a lift in the part, or say `best lift: yes` in the file of the movement.",
      ].join("\n"),
    );
    expect(noLiftFault(workout, "b", []).problem).toBe(
      "part b is lifted for load, but no best lift can be derived of anything in it",
    );
  });

  it("says that a lift is done without a bar", () => {
    expect(sayFault(noBarFault(workout, "b", "weighted pull-up"))).toBe(
      [
        "content/workouts/grindstone.mdx:7:5: Fault",
        "  found    weighted pull-up",
        "  wrong    part b is lifted for load in the weighted pull-up, which is done without a bar, and no file says which loads there are",
        "  allowed  lifts with a bar",
        "  to do    Choose the attempts yourself: open with what you make nine times in ten, and go up by the smallest step.",
      ].join("\n"),
    );
  });

  it("says that the plates cannot make the steps that are set", () => {
    expect(sayFault(stepsFault(workout, "b", 85, 3))).toBe(
      [
        "content/workouts/grindstone.mdx:7:5: Fault",
        "  found    steps of 3 kg",
        "  wrong    no load lies 3 kg over the opener of 85 kg of part b with these plates",
        "  allowed  steps that the plates of the gym make from the opener",
        "  to do    Set other steps or another opener, or add smaller plates to the gym's file.",
      ].join("\n"),
    );
  });

  it("says that a window is too short for one lift", () => {
    expect(sayFault(shortWindowFault(workout, "b", 15, 32))).toBe(
      [
        "content/workouts/grindstone.mdx:7:5: Fault",
        "  found    15 s",
        "  wrong    the window of part b leaves 15 s, too short for one lift",
        "  allowed  32 s or more for getting to the bar and one lift",
        "  to do    Give the window more time or the part before it less work, or let a lift begun before the end count.",
      ].join("\n"),
    );
  });

  it("says that a window has closed before it can begin", () => {
    expect(shortWindowFault(workout, "b", -40, 32).problem).toBe(
      "the window of part b has closed before it can begin",
    );
  });

  it("says that the empty bar is heavier than the opener", () => {
    expect(sayFault(heavyBarFault(athlete, "snatch", 20, 16.42))).toBe(
      [
        "athletes/ada.yaml:1:1: Fault",
        "  found    bar of 20 kg",
        "  wrong    the empty bar of 20 kg is heavier than what should be opened with in the snatch, 16.4 kg",
        "  allowed  a bar of at most 16.4 kg",
        "  to do    Add a lighter bar to the gym's file, or a heavier result of the lift to the athlete's.",
      ].join("\n"),
    );
  });
});
