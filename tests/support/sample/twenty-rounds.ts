import type { BarLoad } from "../../../src/models/plan/basics.ts";
import type { Plan } from "../../../src/models/plan/plan.ts";
import { pacedRounds, stoppedAt } from "./paced-rounds.ts";

/** 35 lb in kilograms by the exact pound: 35 x 0.45359237. */
const dumbbell: BarLoad = { mass: { value: 35, unit: "lb" }, kilograms: 15.87573295, pieces: 1 };

// 21 rounds are laid out; the clock stops in the last of them.
const laid = pacedRounds(
  21,
  0,
  [
    {
      movement: "dumbbell-snatch",
      name: "dumbbell snatches",
      short: "snatch",
      unit: "reps",
      perUnit: 2.6,
      sets: () => [6],
      rest: 0,
      transition: 4,
      load: dumbbell,
    },
    {
      movement: "push-up",
      name: "push-ups",
      short: "push-up",
      unit: "reps",
      perUnit: 1.8,
      sets: (round) => (round <= 12 ? [8] : [5, 3]),
      rest: 4,
      transition: 3,
    },
    {
      movement: "air-squat",
      name: "air squats",
      short: "squat",
      unit: "reps",
      perUnit: 1.7,
      sets: () => [10],
      rest: 0,
      transition: 3,
    },
  ],
  true,
);

/** What fits before 20:00. */
const rows = stoppedAt(laid.rows, 1200);
const rounds = laid.rounds.filter((round) => round.end <= 1200);

/** As many rounds as possible in 20 minutes, unbroken at first: twenty rounds and a little, loads in pounds. */
export const twentyRounds: Plan = {
  version: 1,
  athlete: {
    id: "bram-oyelund",
    name: "Bram Oyelund",
    level: "regular",
    division: "men",
    divisionAssumed: true,
    units: "lb",
    shares: ["target", "splits"],
    anonymous: false,
  },
  workout: {
    id: "lantern-row",
    title: "Lantern Row",
    rules: ["Score is every rep; a tie is broken by the time at which round 10 is done."],
  },
  gym: { id: "kestrel-yard", name: "Kestrel Yard", assumed: true },
  date: "2026-11-25",
  headline: {
    score: "rounds-and-reps",
    result: { target: 489, cautious: 456, middle: 486, hopeful: 516 },
  },
  parts: [
    {
      name: "A",
      title: "as many rounds as possible in 20:00",
      format: "amrap",
      score: "rounds-and-reps",
      start: { kind: "clock", clock: 0 },
      prescription: [
        "20:00 as many rounds as possible",
        "  6 dumbbell snatches 50/35 lb",
        "  8 push-ups",
        "  10 air squats",
      ],
      missing: [],
      pacing: {
        score: "rounds-and-reps",
        result: { target: 489, cautious: 456, middle: 486, hopeful: 516 },
        roundsAndReps: { rounds: 20, reps: 9 },
        perRound: 24,
        ending: "fills-the-time",
        duration: 1200,
        rows: rows.map((row) => (row.index === 29 ? { ...row, tieBreak: true } : row)),
        rounds,
        checkpoints: rounds.filter((round) => round.round % 4 === 0).map((round) => round.lastRow),
        ...(laid.half ? { half: laid.half } : {}),
        hard: { round: 13, reserve: 0.3 },
        outOfReach: [],
        ifThen: [
          {
            row: 35,
            round: 12,
            planned: rounds[11]?.end ?? 0,
            when: "later-than",
            clock: (rounds[11]?.end ?? 0) + 15,
            action: { kind: "slow-down", secondsPerRound: 2 },
            projected: 476,
          },
          {
            row: 47,
            round: 16,
            planned: rounds[15]?.end ?? 0,
            when: "earlier-than",
            clock: (rounds[15]?.end ?? 0) - 10,
            action: { kind: "push", secondsPerRound: 2 },
            projected: 494,
          },
        ],
        roles: { limiter: "push-ups", breather: "air squats" },
      },
    },
  ],
  choices: [],
  standards: [
    {
      movement: "push-up",
      say: "Chest touches the floor, arms straight at the top.",
      costsThisAthlete: true,
    },
  ],
  setUp: [{ kind: "chalk" }],
  loads: [{ movement: "dumbbell-snatch", name: "dumbbell snatch", load: dumbbell }],
  cautions: [
    {
      id: "stop-signs",
      title: "Stop at once",
      say: "Chest pain, faintness, confusion or a sudden sharp pain: stop and get help.",
      weight: "stop",
      onSheet: true,
    },
  ],
  withheld: [],
  basis: [
    {
      about: "push-ups",
      kind: "tested",
      from: {
        kind: "efforts",
        efforts: [{ amount: 41, unit: "reps", time: 120, date: "2026-10-03", approximate: false }],
      },
      error: 0.05,
    },
  ],
};
