import { describe, expect, it } from "vitest";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { checkWorkout } from "../support/workout-notation.ts";

// What competitions program, as coaches type it: gathered from trade knowledge, one line for each spelling or unit.
const LINES = `
10 single-arm dumbbell overhead squat at 22.5/15 kg
15 m single-arm overhead walking lunge at 22.5/15 kg
25 m double dumbbell overhead walking lunge at 2 x 22.5/15 kg
8 single-arm devil's press at 22.5/15 kg
8 devil's press at 2 x 22.5/15 kg
25 m overhead walking lunge at 40/30 kg
50 ft front rack lunge at 40/30 kg
20 burpee over the box
20 burpee over the bar
20 burpee over the dumbbell
30 lateral burpee over the rower
10 burpee to plate
20 plate burpee
20 burpee box step-over to 50 cm
50 ft burpee broad jump
20 burpee bar muscle-up
20 burpee pull-up
40 m sandbag bear hug carry at 68/45 kg
20 atlas stone over shoulder at 68/45 kg
20 dumbbell squat clean at 2 x 22.5/15 kg
20 dumbbell hang squat clean at 2 x 22.5/15 kg
20 dumbbell power snatch at 22.5/15 kg
20 hang dumbbell snatch at 22.5/15 kg
20 double dumbbell snatch at 2 x 15/10 kg
20 alternating dumbbell clean and jerk at 22.5/15 kg
20 single-arm dumbbell clean and jerk at 22.5/15 kg
20 dumbbell ground to overhead at 2 x 22.5/15 kg
20 dumbbell strict press at 2 x 15/10 kg
20 dumbbell push press at 2 x 22.5/15 kg
20 dumbbell thruster at 2 x 22.5/15 kg
20 dumbbell front squat at 2 x 22.5/15 kg
20 dumbbell deadlift at 2 x 22.5/15 kg
20 dumbbell box step-over at 2 x 22.5/15 kg to 50 cm
20 single-arm kettlebell swing at 24/16 kg
20 kettlebell snatch at 24/16 kg
20 kettlebell goblet squat at 24/16 kg
20 lateral box jump-over to 60/50 cm
20 box jump with step down to 60/50 cm
3 legless rope climb
20 kipping deficit handstand push-up
50 ft handstand walk
20 wall walk
20 power clean and push jerk at 40/30 kg
20 hang power clean and jerk at 40/30 kg
20 squat clean and jerk at 60/40 kg
20 overhead squat at 43/30 kg
20 cluster at 60/40 kg
20 alternating pistol squat
20 weighted pistol at 16/12 kg
20 strict toes-to-bar
20 toes-to-rings
20 knees to elbows
20 butterfly pull-up
20 chin-up
20 strict C2B
20 ring muscle up
"1:00 chin-over-bar hold"
"0:30 L-sit"
"1:00 handstand hold"
20 plate ground-to-overhead at 20/15 kg
20 medicine-ball clean at 9/6 kg
20 turkish get-up at 24/16 kg
20 man maker at 2 x 15/10 kg
10 m sled push at 100/70 kg
30 m sled drag at 60/40 kg
50 m farmers carry at 2 x 32/24 kg
50 m single-arm farmers carry at 32/24 kg
20 cal air bike
1000 m bike erg
20 cal ski erg
2 km row
1 mile run
10 shuttle runs of 10 m
100 m sprint
100 yd swim
50 crossover double-under
50 heavy rope double under
20 ring push-up
20 jumping lunge
20 sumo deadlift high pull at 35/25 kg`
  .trim()
  .split("\n");

describe("movements that competitions program", () => {
  it("are at least forty", () => {
    expect(LINES.length).toBeGreaterThanOrEqual(40);
  });

  it.each(LINES)("%s", (line) => {
    const checked = checkWorkout(`title: Test\nfor time:\nwork:\n  - ${line}`);
    expect(checked.ok ? "" : sayFaults(checked.faults)).toBe("");
  });
});
