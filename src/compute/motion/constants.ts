import type { Sourced } from "../../models/movement.ts";

const table = <Name extends string>(
  constants: Readonly<Record<Name, Sourced<number>>>,
): Readonly<Record<Name, Sourced<number>>> => constants;

const published = (value: number, source: string): Sourced<number> => ({
  value,
  source,
  confidence: "published",
});
const judgement = (value: number, source: string): Sourced<number> => ({
  value,
  source,
  confidence: "judgement",
});

/** Every constant of the pacing model. Times in seconds, shares from 0 to 1, rates relative to the sustainable rate. */
export const pacingConstants = table({
  // The shared reserve and how it refills.
  refillFastShare: published(
    1 / 3,
    "Caen et al. 2021, conference version: 32.4 % refill fast; Chorley et al. 2022 find 50.7 %",
  ),
  refillFastSeconds: published(10, "Caen et al. 2021: first time constant 10 to 11 s"),
  refillSlowSeconds: published(240, "Caen et al. 2021: second time constant 240 to 256 s"),
  refillWorth: judgement(
    0.4,
    "share of the effort saved below critical that really refills, for stretches of a minute from a half-empty reserve; from the two-phase law",
  ),

  // Drift: work grows dearer as the reserve empties, by level.
  driftNew: judgement(0.3, "split decay of the slowest fifth over eight segments, +48 % (race results)"),
  driftRegular: judgement(0.2, "split decay of the middle of the field, +28 % (race results)"),
  driftCompetitor: judgement(0.12, "split decay of the best quarter, +21 % (race results)"),
  driftElite: judgement(0.08, "split decay of the best twentieth, +18 % (race results)"),

  // Durability: what can be sustained sinks with the work done.
  durabilityFrom: judgement(1200, "power laws fit past 15 to 20 minutes (Drake et al. 2022)"),
  durabilityNew: judgement(
    0.14,
    "split decay of the slowest fifth over eight segments, +48 %, bad pacing included",
  ),
  durabilityRegular: judgement(0.105, "split decay of the middle of the field, +28 %"),
  durabilityCompetitor: judgement(0.088, "split decay of the best quarter, +21 %"),
  durabilityElite: judgement(
    0.08,
    "split decay of the best twentieth, +10 to +18 %; runners alone slow less, by Riegel's 0.06",
  ),

  // Running empty.
  blownCost: judgement(0.6, "effort until some of the reserve is back, once it is empty"),
  blownUntil: judgement(0.12, "share of the reserve that must be back before going on"),
  afterBlownCost: judgement(0.95, "effort held for the rest of the work after the reserve was empty once"),

  // The day.
  formSpread: published(
    0.03,
    "12-minute conditioning tests repeat with a CV of 3.9 to 7.3 % (Engel et al. 2019), of which pacing and counting are part; critical speed itself with 0.4 %",
  ),
  reserveSpread: published(0.13, "D' repeats with a CV of 13 % (Galbraith et al. 2014)"),
  costSpread: judgement(
    0.015,
    "how far transitions, breaks and counted misses differ between days, of the whole time",
  ),
  feel: judgement(
    0.25,
    "share of a reserve felt ahead of or behind the plan that an athlete turns into pace",
  ),
  feelAtTheEnd: judgement(0.5, "the same in the last tenth of the work, when what is left can be seen"),

  // Several movements in one piece of work.
  mixedCost: judgement(
    0.25,
    "work of many movements takes longer than each alone suggests, by this share for infinitely many in long work; set so that medians of open fields of couplets, triplets and chippers come out",
  ),
  mixedSeconds: judgement(
    600,
    "length over which that builds up; sprints of two or three minutes show little of it",
  ),

  // Sets and breaks.
  spareShare: judgement(0.8, "trade rule: break at three quarters to four fifths of the reps possible"),
  breakShortest: judgement(4, "put down, breathe, pick up"),
  breakHandling: judgement(2, "of every break go into putting down and picking up, and rest nothing"),
  fewerSetsWorth: judgement(
    0.03,
    "share of the time of an amount that fewer breaks to keep count of are worth",
  ),
  breakLongest: judgement(
    22,
    "beyond it the next doubling of rest buys little (two-phase refill at 20 s: a third)",
  ),
  slowestInSet: judgement(
    1.5,
    "in a set of a held movement a cycle is not drawn out further, over the fastest",
  ),
  muscleRefillWhileWorking: judgement(0.4, "refill of a muscle's freshness while others work, over rest"),

  // Transitions.
  walkingSpeed: judgement(1.4, "metres per second between stations under effort"),
  transitionCost: judgement(0.3, "effort of walking and setting up, over critical"),
  ergSpinUp: judgement(3, "first strokes read low (Treff et al. 2022); a short station loses 3 to 5 s"),
  transitionNew: judgement(
    1.25,
    "time in transitions by group, shrunk: slowest fifth 1.4 times the middle (race results)",
  ),
  transitionRegular: judgement(1, "the middle of the field"),
  transitionCompetitor: judgement(0.85, "between the middle and the best"),
  transitionElite: judgement(0.75, "time in transitions by group: best twentieth 0.66 of the middle, shrunk"),

  // The plan's few numbers.
  finishFrom: published(
    0.9,
    "end spurts of 5000 and 10,000 m lie in the last kilometre (Tucker et al. 2006)",
  ),
  finishHarder: judgement(0.05, "most by which the finish is faster than the closed form"),
  hardReserve: judgement(0.35, "share of the reserve left at which it gets hard"),
  easyReserve: judgement(0.9, "share of the reserve left all the time at which nowhere gets hard"),
  ahead: judgement(10, "seconds ahead of or behind the plan at which to act"),
  aheadInScore: judgement(
    0.04,
    "share of what is planned by which what is done differs when it is time to act, where the clock ends a round; what ten seconds are in four minutes",
  ),
  intervalSpare: judgement(0.08, "share of an interval that work with a fixed end is planned to leave over"),
});

export type PacingConstants = Readonly<Record<keyof typeof pacingConstants, number>>;
