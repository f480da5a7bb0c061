import { describe, expect, it } from "vitest";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import type { RunLog } from "../../../src/compute/motion/run.ts";
import { COUNTED, type Track, UNTIL } from "../../../src/compute/motion/track.ts";
import type { SetPlan } from "../../../src/compute/search/set-plan.ts";
import { shareWaits } from "../../../src/compute/search/share-waits.ts";
import { seconds } from "../../../src/models/quantity.ts";

const rules = rulesFor({ level: "regular", reserve: seconds(60), recoverySpeed: 1 });
const none = Number.POSITIVE_INFINITY;

/** Three stretches of twenty reps, 40 s each, of which the first two may take 2.5 s a rep, so 10 s more. */
const threeStretches = (more: Partial<Track> = {}): Track =>
  ({
    length: 3,
    kind: new Uint8Array([COUNTED, COUNTED, COUNTED]),
    section: new Int32Array(3),
    amount: new Float64Array([20, 20, 20]),
    time: new Float64Array(3),
    most: new Float64Array([2.5, 2.5, 2.5]),
    deadline: new Float64Array([none, none, none]),
    pauses: new Float64Array(0),
    ...more,
  }) as Track;

const logged = (): RunLog =>
  ({
    started: new Float64Array([0, 40, 80]),
    worksFrom: new Float64Array([0, 40, 80]),
    ended: new Float64Array([40, 80, 120]),
  }) as RunLog;

const set = (restFirst: number): SetPlan =>
  ({ sizes: [20], rest: 0, cycle: 2, restFirst, total: 40 + restFirst, leastTotal: 40 }) as const;

const clocks = (track: Track, waits: readonly number[]): readonly (readonly number[])[] => {
  const log = logged();
  shareWaits(track, rules, log, 2, waits.map(set));
  return [[...log.started], [...log.ended]];
};

describe("sharing a wait with what comes before it", () => {
  it("leaves a wait of a few breaths where it is", () => {
    expect(shareWaits(threeStretches(), rules, logged(), 2, [0, 0, rules.breathLongest].map(set))).toBe(
      false,
    );
  });

  it("gives the stretch before as much of the rest as it can take, then the one before that", () => {
    // 14 s beyond a breath: 10 s go to the second stretch, 4 s to the first; the end of all of it stays.
    expect(clocks(threeStretches(), [0, 0, rules.breathLongest + 14])).toEqual([
      [0, 44, 94],
      [44, 94, 120],
    ]);
  });

  it("moves no stretch past the clock by which it must be done", () => {
    // The second stretch must be done at 83 s: it takes nothing over itself, and comes no more than 3 s later.
    const gated = threeStretches({ deadline: new Float64Array([none, 83, none]) });
    expect(clocks(gated, [0, 0, rules.breathLongest + 14])).toEqual([
      [0, 43, 83],
      [43, 83, 120],
    ]);
  });

  it("leaves work until a clock as it is", () => {
    const until = threeStretches({
      kind: new Uint8Array([COUNTED, UNTIL, COUNTED]),
      time: new Float64Array([0, 80, 0]),
    });
    expect(clocks(until, [0, 0, rules.breathLongest + 14])).toEqual([
      [...logged().started],
      [...logged().ended],
    ]);
  });

  it("shares nothing across a rest that parts the work", () => {
    const parted = threeStretches({ section: new Int32Array([0, 0, 1]) });
    expect(clocks(parted, [0, 0, rules.breathLongest + 14])).toEqual([
      [...logged().started],
      [...logged().ended],
    ]);
  });

  it("gives what nobody before it can take to the stretch after it", () => {
    // 14 s beyond a breath before the second: the first takes 10 s, the third the other 4 s, but never what the clock cuts off at the end.
    const four = threeStretches({
      length: 4,
      kind: new Uint8Array(4),
      section: new Int32Array(4),
      amount: new Float64Array(4).fill(20),
      time: new Float64Array(4),
      most: new Float64Array(4).fill(2.5),
      deadline: new Float64Array(4).fill(none),
    });
    const log = {
      started: new Float64Array([0, 40, 80, 120]),
      worksFrom: new Float64Array([0, 40, 80, 120]),
      ended: new Float64Array([40, 80, 120, 160]),
    } as RunLog;
    shareWaits(four, rules, log, 3, [0, rules.breathLongest + 14, 0, 0].map(set));
    expect([...log.ended]).toEqual([50, 76, 120, 160]);
  });
});
