import { describe, expect, it } from "vitest";
import { checkWorkout } from "../../support/workout-notation.ts";

/** The lines of the first part as everybody and as each division reads them. */
function linesOf(text: string) {
  const checked = checkWorkout(`title: Test\n${text}`, "w.mdx");
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  const [part] = checked.value.parts;
  return { everybody: part?.prescription, own: part?.ownPrescription };
}

describe("the work as its reader sees it", () => {
  it.each([
    ["11 thruster at 95/65 lb (43/29 kg)", "11 thruster at 95 lb (43 kg)", "11 thruster at 65 lb (29 kg)"],
    [
      "11 thruster at 95 lb (43 kg)/65 lb (29 kg)",
      "11 thruster at 95 lb (43 kg)",
      "11 thruster at 65 lb (29 kg)",
    ],
    ["20/15 cal row", "20 cal row", "15 cal row"],
    [
      "20 wall-ball shot at 9/6 kg to 3/2.7 m",
      "20 wall-ball shot at 9 kg to 3 m",
      "20 wall-ball shot at 6 kg to 2.7 m",
    ],
    [
      "8 dumbbell power clean at 2 x 22.5/15 kg",
      "8 dumbbell power clean at 2 x 22.5 kg",
      "8 dumbbell power clean at 2 x 15 kg",
    ],
    ["8 bar muscle-up/chest-to-bar pull-up", "8 bar muscle-up", "8 chest-to-bar pull-up"],
    [
      "20 box jump to 24/20 in, tie-break",
      "20 box jump to 24 in, tie-break",
      "20 box jump to 20 in, tie-break",
    ],
    ["30 burpee", "30 burpee", "30 burpee"],
  ])("%s", (line, men, women) => {
    expect(linesOf(`for time:\nwork:\n  - ${line}`)).toEqual({
      everybody: [line],
      own: { men: [men], women: [women] },
    });
  });

  it("holds no word of the file's own: everybody reads all values, each division its own", () => {
    const text = `divisions: [men, women, masters women]
by division:
  bar: {men: 57.5 kg, women: 40 kg, masters women: 32.5 kg}
  more: {men: 10 burpee, others: nothing}
amrap: 16:00
work:
  - 7 hang power clean at bar, tie-break
  - more
  - 19 goblet squat at 24/16/12 kg`;
    expect(linesOf(text)).toEqual({
      everybody: [
        "7 hang power clean at 57.5 kg / 40 kg / 32.5 kg, tie-break",
        "10 burpee / nothing / nothing",
        "19 goblet squat at 24/16/12 kg",
      ],
      own: {
        men: ["7 hang power clean at 57.5 kg, tie-break", "10 burpee", "19 goblet squat at 24 kg"],
        women: ["7 hang power clean at 40 kg, tie-break", "19 goblet squat at 16 kg"],
        "masters women": ["7 hang power clean at 32.5 kg, tie-break", "19 goblet squat at 12 kg"],
      },
    });
  });
});
