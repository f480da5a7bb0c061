import type { ModelConstants } from "../../models/model-constant.ts";

/** Every constant of the pacing model. Times in seconds, shares from 0 to 1, rates relative to the sustainable rate. */
export const pacingConstants = {
  // The shared reserve and how it refills.
  refillFastShare: {
    value: 1 / 3,
    unit: "share",
    does: "part of the reserve and of a muscle that refills fast",
    source: "Caen et al. 2021, conference version: 32.4 % refill fast; Chorley et al. 2022 find 50.7 %",
    confidence: "published",
  },
  refillFastSeconds: {
    value: 10,
    unit: "seconds",
    range: [1, 120],
    does: "time constant of the fast refill",
    source: "Caen et al. 2021: first time constant 10 to 11 s",
    confidence: "published",
  },
  refillSlowSeconds: {
    value: 240,
    unit: "seconds",
    range: [20, 3600],
    does: "time constant of the slow refill",
    source: "Caen et al. 2021: second time constant 240 to 256 s",
    confidence: "published",
  },
  refillWorth: {
    value: 0.4,
    unit: "share",
    does: "part of the effort saved below critical that really refills",
    source: "for stretches of a minute from a half-empty reserve, from the two-phase law",
    confidence: "judgement",
  },

  // Drift: work grows dearer as the reserve empties, by level.
  driftNew: {
    value: 0.3,
    unit: "share",
    does: "how much dearer work grows until the reserve is empty, new athletes",
    source:
      "split decay of the slowest fifth over eight segments, +48 % (aggregate tables of some 800,000 open results of a run with eight stations)",
    confidence: "judgement",
  },
  driftRegular: {
    value: 0.2,
    unit: "share",
    does: "the same, regular athletes",
    source: "split decay of the middle of the same field, +28 %",
    confidence: "judgement",
  },
  driftCompetitor: {
    value: 0.12,
    unit: "share",
    does: "the same, competitors",
    source: "split decay of the best quarter of the same field, +21 %",
    confidence: "judgement",
  },
  driftElite: {
    value: 0.08,
    unit: "share",
    does: "the same, elite",
    source: "split decay of the best twentieth of the same field, +18 %",
    confidence: "judgement",
  },

  // Durability: what can be sustained sinks with the work done.
  durabilityFrom: {
    value: 1200,
    unit: "seconds",
    range: [60, 7200],
    does: "length of work after which what can be sustained sinks",
    source: "power laws fit past 15 to 20 minutes (Drake et al. 2022)",
    confidence: "judgement",
  },
  durabilityNew: {
    value: 0.14,
    unit: "share",
    does: "power with which sustainable pace sinks with duration beyond that, new athletes",
    source:
      "split decay of the slowest fifth over eight segments, +48 %, bad pacing included (aggregate tables of open results)",
    confidence: "judgement",
  },
  durabilityRegular: {
    value: 0.105,
    unit: "share",
    does: "the same, regular athletes",
    source: "split decay of the middle of the same field, +28 %",
    confidence: "judgement",
  },
  durabilityCompetitor: {
    value: 0.088,
    unit: "share",
    does: "the same, competitors",
    source: "split decay of the best quarter of the same field, +21 %",
    confidence: "judgement",
  },
  durabilityElite: {
    value: 0.08,
    unit: "share",
    does: "the same, elite",
    source:
      "split decay of the best twentieth of the same field, +10 to +18 %; runners alone slow less, by Riegel's 0.06",
    confidence: "judgement",
  },

  // Running empty.
  blownCost: {
    value: 0.6,
    unit: "share",
    range: [0.1, 0.95],
    does: "effort, over critical, once the reserve is empty",
    source: "no measurement found of mixed work; an athlete who has to stop goes on slowly",
    confidence: "judgement",
  },
  blownUntil: {
    value: 0.12,
    unit: "share",
    range: [0, 0.5],
    does: "share of the reserve that must be back before going on",
    source: "no measurement found",
    confidence: "judgement",
  },
  afterBlownCost: {
    value: 0.95,
    unit: "share",
    range: [0.1, 1],
    does: "effort, over critical, for the rest of the work after the reserve was empty once",
    source: "no measurement found",
    confidence: "judgement",
  },

  // The day.
  formSpread: {
    value: 0.03,
    unit: "share",
    range: [0, 0.3],
    does: "how far an athlete's form differs between days",
    source:
      "12-minute conditioning tests repeat with a CV of 3.9 to 7.3 % (Engel et al. 2019), of which pacing and counting are part; critical speed itself with 0.4 %",
    confidence: "published",
  },
  reserveSpread: {
    value: 0.13,
    unit: "share",
    range: [0, 1],
    does: "how far an athlete's reserve differs between days",
    source: "D' repeats with a CV of 13 % (Galbraith et al. 2014)",
    confidence: "published",
  },
  costSpread: {
    value: 0.015,
    unit: "share",
    range: [0, 0.3],
    does: "how far transitions, breaks and counted misses differ between days, of the whole time",
    source: "no measurement found",
    confidence: "judgement",
  },
  feel: {
    value: 0.25,
    unit: "share",
    does: "share of a reserve felt ahead of or behind the plan that an athlete turns into pace",
    source: "no measurement found",
    confidence: "judgement",
  },
  feelAtTheEnd: {
    value: 0.5,
    unit: "share",
    does: "the same in the last tenth of the work, when what is left can be seen",
    source: "no measurement found",
    confidence: "judgement",
  },

  // Several movements in one piece of work.
  mixedCost: {
    value: 0.25,
    unit: "share",
    range: [0, 3],
    does: "share by which work of infinitely many movements takes longer than each alone suggests",
    source: "set so that medians of open fields of couplets, triplets and chippers come out",
    confidence: "judgement",
  },
  mixedSeconds: {
    value: 600,
    unit: "seconds",
    range: [1, 7200],
    does: "length of work over which that builds up",
    source: "sprints of two or three minutes show little of it (open fields)",
    confidence: "judgement",
  },

  // Sets and breaks.
  spareShare: {
    value: 0.8,
    unit: "share",
    range: [0.3, 1],
    does: "share of the reps possible after which a set is broken",
    source: "coaches break at three quarters to four fifths; no measurement found",
    confidence: "judgement",
  },
  breakShortest: {
    value: 4,
    unit: "seconds",
    range: [1, 30],
    does: "shortest break between two sets",
    source: "put down, breathe, pick up",
    confidence: "judgement",
  },
  breakHandling: {
    value: 2,
    unit: "seconds",
    range: [0, 20],
    does: "part of every break that goes into putting down and picking up, and rests nothing",
    source: "no measurement found",
    confidence: "judgement",
  },
  fewerSetsWorth: {
    value: 0.03,
    unit: "share",
    range: [0, 0.5],
    does: "share of the time of an amount that fewer breaks to keep count of are worth",
    source: "no measurement found",
    confidence: "judgement",
  },
  breakLongest: {
    value: 22,
    unit: "seconds",
    range: [1, 300],
    does: "longest break between two sets",
    source: "beyond it the next doubling of rest buys little (two-phase refill at 20 s: a third)",
    confidence: "judgement",
  },
  slowestInSet: {
    value: 1.5,
    unit: "factor",
    range: [1, 5],
    does: "how far a cycle is drawn out in a set of a held movement, over the fastest",
    source: "no measurement found",
    confidence: "judgement",
  },
  muscleRefillWhileWorking: {
    value: 0.4,
    unit: "share",
    does: "refill of a muscle's freshness while others work, over rest",
    source: "no measurement found",
    confidence: "judgement",
  },

  // Transitions.
  walkingSpeed: {
    value: 1.4,
    unit: "metres a second",
    range: [0.3, 4],
    does: "speed between stations under effort",
    source: "comfortable walking; no measurement under effort found",
    confidence: "judgement",
  },
  transitionCost: {
    value: 0.3,
    unit: "share",
    does: "effort of walking and setting up, over critical",
    source: "no measurement found",
    confidence: "judgement",
  },
  ergSpinUp: {
    value: 3,
    unit: "seconds",
    range: [0, 30],
    does: "what the first strokes of a station at a machine lose",
    source: "first strokes read low (Treff et al. 2022); a short station loses 3 to 5 s",
    confidence: "judgement",
  },
  transitionNew: {
    value: 1.25,
    unit: "factor",
    does: "time of transitions over the middle of the field, new athletes",
    source: "slowest fifth of open race results 1.4 times the middle, shrunk",
    confidence: "judgement",
  },
  transitionRegular: {
    value: 1,
    unit: "factor",
    does: "the same, regular athletes",
    source: "the middle of the field, by definition",
    confidence: "judgement",
  },
  transitionCompetitor: {
    value: 0.85,
    unit: "factor",
    does: "the same, competitors",
    source: "between the middle and the best",
    confidence: "judgement",
  },
  transitionElite: {
    value: 0.75,
    unit: "factor",
    does: "the same, elite",
    source: "best twentieth of open race results 0.66 of the middle, shrunk",
    confidence: "judgement",
  },

  // The plan's few numbers.
  finishFrom: {
    value: 0.9,
    unit: "share",
    range: [0.5, 0.99],
    does: "share of the work after which the finish begins",
    source: "end spurts of 5000 and 10,000 m lie in the last kilometre (Tucker et al. 2006)",
    confidence: "published",
  },
  finishHarder: {
    value: 0.05,
    unit: "share",
    range: [0, 0.3],
    does: "most by which the finish is faster than the closed form",
    source: "within what is seen in races",
    confidence: "judgement",
  },
  hardReserve: {
    value: 0.35,
    unit: "share",
    does: "share of the reserve left at which it gets hard",
    source: "no measurement found",
    confidence: "judgement",
  },
  easyReserve: {
    value: 0.9,
    unit: "share",
    does: "share of the reserve left all the time at which nowhere gets hard",
    source: "no measurement found",
    confidence: "judgement",
  },
  ahead: {
    value: 10,
    unit: "seconds",
    range: [1, 300],
    does: "time ahead of or behind the plan at which to act",
    source: "what a coach at the rig can read off a clock",
    confidence: "judgement",
  },
  aheadInScore: {
    value: 0.04,
    unit: "share",
    range: [0, 0.5],
    does: "share of what is planned by which what is done differs when it is time to act, where the clock ends a round",
    source: "what ten seconds are in four minutes",
    confidence: "judgement",
  },
  intervalSpare: {
    value: 0.08,
    unit: "share",
    range: [0, 0.5],
    does: "share of an interval that work with a fixed end is planned to leave over",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

export type PacingConstants = Readonly<Record<keyof typeof pacingConstants, number>>;
