/**
 * Bounds beyond which a number is a slip of the pen rather than a fact. They refuse or ask; no plan is computed from
 * them. `usual`: taken as it is. Outside it, within `possible`: asked about. Outside both: refused.
 */
export type Bounds = {
  readonly usual: readonly [low: number, high: number];
  readonly possible: readonly [low: number, high: number];
  readonly source: string;
  readonly confidence: "published" | "judgement";
};

/** Body mass in kilograms. */
export const BODY_MASS: Bounds = {
  usual: [40, 150],
  possible: [25, 250],
  source:
    "adults in training; the lightest and heaviest body weight categories of lifting sports with room on both sides",
  confidence: "judgement",
};

/** Wet bulb globe temperature, degrees Celsius: what is forecast where people train, frost included. */
export const WBGT: Bounds = {
  usual: [-5, 36],
  possible: [-20, 42],
  source: "the range of the index over inhabited places, with room",
  confidence: "judgement",
};

/** Minutes at hand for warming up. */
export const WARM_UP_MINUTES: Bounds = {
  usual: [3, 90],
  possible: [1, 180],
  source: "from none at all to a whole session",
  confidence: "judgement",
};

/** Longest set without stopping over the longest that is usual for the best: asked about, and refused. */
export const UNBROKEN_OVER_ELITE = { usual: 3, possible: 12 } as const;

/** Height in metres. */
export const HEIGHT: Bounds = {
  usual: [1.4, 2.15],
  possible: [1.1, 2.35],
  source: "adults, with room for youth and for the tallest players of ball games",
  confidence: "judgement",
};

/** Year of birth. */
export const BIRTH_YEAR: Bounds = {
  usual: [1930, 2018],
  possible: [1915, 2024],
  source: "ages at which people train with loads",
  confidence: "judgement",
};

/**
 * Heaviest single lift in kilograms by a word of the movement's name, first match. Each stands a little above the
 * heaviest lift known in public lists of records, unequipped, whoever lifted it.
 */
const HEAVIEST_LIFT: readonly { readonly word: RegExp; readonly kilograms: number }[] = [
  { word: /snatch/, kilograms: 230 },
  { word: /clean|jerk/, kilograms: 280 },
  { word: /front squat|overhead squat/, kilograms: 330 },
  { word: /squat/, kilograms: 500 },
  { word: /deadlift/, kilograms: 520 },
  { word: /bench/, kilograms: 360 },
  { word: /press|thruster/, kilograms: 240 },
];
/** For movements of no such word. */
const HEAVIEST_OTHER = 520;

/** Heaviest single lift in kilograms that anybody has made in a movement of this name, a little rounded up. */
export const heaviestLift = (name: string): number =>
  HEAVIEST_LIFT.find(({ word }) => word.test(name.toLowerCase()))?.kilograms ?? HEAVIEST_OTHER;

/** Lightest load in kilograms that anyone would write down for a barbell: the lightest training bar; and for anything. */
export const LIGHTEST_BARBELL = 5;
export const LIGHTEST_LOAD = 0.5;

/** Heaviest lift over body mass, by a word of the movement's name, first match; beyond it one of the two is wrong. */
const HEAVIEST_PER_BODY_MASS: readonly { readonly word: RegExp; readonly ratio: number }[] = [
  { word: /snatch/, ratio: 2.6 },
  { word: /clean|jerk/, ratio: 3.1 },
  { word: /front squat|overhead squat/, ratio: 3.4 },
  { word: /squat/, ratio: 4.5 },
  { word: /deadlift/, ratio: 5 },
  { word: /bench/, ratio: 3.5 },
  { word: /press|thruster/, ratio: 2.2 },
];

/** The bound for a movement by its name; none for other names. */
export const mostPerBodyMass = (name: string): number =>
  HEAVIEST_PER_BODY_MASS.find(({ word }) => word.test(name.toLowerCase()))?.ratio ?? Infinity;

/** Metres per second between a slow walk and a little more than the fastest known over any distance. */
export const SPEEDS: Readonly<
  Record<"run" | "row" | "ski" | "bike-erg" | "air-bike" | "other", readonly [number, number]>
> = {
  run: [0.8, 10.5],
  row: [1.5, 7],
  ski: [1.5, 7],
  "bike-erg": [3, 20],
  "air-bike": [2, 25],
  other: [0.05, 12],
};

/** Seconds per repetition and per calorie between the fastest skip of a rope and long pauses between lifts. */
export const SECONDS_PER_REP: readonly [number, number] = [0.15, 90];
export const SECONDS_PER_CALORIE: readonly [number, number] = [0.4, 30];

/** Most repetitions in one set without stopping, and in one effort. */
export const MOST_REPS = 20_000;

/** Numbers typed to fill a field: repeated digits, counting up, round thousands, the largest a machine can hold. */
export const isPlaceholder = (value: number): boolean => {
  const digits = String(Math.abs(value)).replace(".", "");
  return (
    /^(\d)\1{2,}$/.test(digits) ||
    /^10{3,}$/.test(digits) ||
    /^1234/.test(digits) ||
    [32767, 65535, 2147483647, 4294967295].includes(Math.abs(value))
  );
};

export const within = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;
