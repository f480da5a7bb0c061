/**
 * What a workout can ask for at most and at least. Beyond it a number is a slip of the pen, or no program could plan it in
 * the time somebody waits. All judgement: each stands well beyond anything that is done in training or in competition.
 */
type WorkBound = {
  readonly low: number;
  readonly high: number;
  /** What is bounded, as the subject of a sentence, and the two bounds as they are written. */
  readonly what: string;
  readonly from: string;
  readonly to: string;
};

const bound = (what: string, low: number, high: number, from = `${low}`, to = `${high}`): WorkBound => ({
  what,
  low,
  high,
  from,
  to,
});

export const WORK_BOUNDS = {
  rounds: bound("a number of rounds", 1, 500),
  visits: bound("the number of lines of a part, each round counted,", 1, 600),
  attempts: bound("a number of attempts", 1, 12),
  reps: bound("a number of reps in one line", 1, 2000),
  allReps: bound("the number of reps of a part, all rounds together,", 1, 10_000),
  calories: bound("a number of calories in one line", 1, 3000),
  metres: bound("a distance in one line", 0.5, 100_000, "0.5 m", "100 km"),
  seconds: bound("the time of a hold", 1, 3600, "0:01", "1:00:00"),
  length: bound("the length of a part", 10, 43_200, "0:10", "12:00:00"),
  window: bound("an interval", 5, 7200, "0:05", "2:00:00"),
  rest: bound("a rest", 1, 10_800, "0:01", "3:00:00"),
  clock: bound("a clock of the workout", 1, 86_400, "0:01", "24:00:00"),
  penalty: bound("the time added for a missing rep", 0.1, 60, "0.1 s", "60 s"),
  load: bound("a load", 0.25, 600, "0.25 kg", "600 kg"),
  opener: bound("a load to open with", 1, 600, "1 kg", "600 kg"),
  jump: bound("a step between two lifts", 0.25, 100, "0.25 kg", "100 kg"),
  pieces: bound("a number of implements", 1, 2),
  shareOfBest: bound("a share of the best lift", 0.05, 1.5, "5%", "150%"),
  shareOfBodyMass: bound("a share of body mass", 0.05, 5),
  worn: bound("a load that is worn", 0.5, 60, "0.5 kg", "60 kg"),
  height: bound("a height", 0.02, 6, "2 cm", "6 m"),
  box: bound("the height of a box", 0.1, 1.5, "10 cm", "150 cm"),
  scores: bound("what a line counts", 0, 1000),
  minimum: bound("the minimum work", 1, 10_000),
} as const satisfies Readonly<Record<string, WorkBound>>;

export type BoundName = keyof typeof WORK_BOUNDS;

/** The largest number and time that are read at all; any bound is far below. */
export const LARGEST_READ = 1_000_000;
