/**
 * The closed lists of the domain. Every other file takes its words from here and uses no others.
 */

/** How experienced an athlete is; it chooses reference values where the athlete has no results of their own. */
export const LEVELS = ["new", "regular", "competitor", "elite"] as const;
export type Level = (typeof LEVELS)[number];

/** What a repetition or a stretch of work is counted in. */
export const AMOUNT_UNITS = ["reps", "calories", "metres", "seconds"] as const;
export type AmountUnit = (typeof AMOUNT_UNITS)[number];

/** What a movement tires, as coaches speak of it. `lungs` is the shared, central load. */
export const MUSCLES = [
  "legs",
  "hips-and-back",
  "press",
  "pull",
  "grip",
  "trunk",
  "calves",
  "lungs",
] as const;
export type Muscle = (typeof MUSCLES)[number];

/** What a movement does to a body that a stated limit may forbid. */
export const STRESSES = [
  "overhead",
  "kipping",
  "impact",
  "deep-knee-bend",
  "loaded-hinge",
  "hard-grip",
  "bent-wrist",
  "lying-on-back",
  "lying-on-front",
  "upside-down",
  "maximal-lift",
  "breath-holding",
  "fall-risk",
  "high-rep-pulling",
] as const;
export type Stress = (typeof STRESSES)[number];

export const JOINTS = [
  "neck",
  "shoulder",
  "elbow",
  "wrist",
  "hand",
  "back",
  "hip",
  "knee",
  "ankle",
  "foot",
] as const;
export type Joint = (typeof JOINTS)[number];

/** Conditions an athlete may state. Rigsheet draws no conclusion from them but cautions and what it withholds. */
export const CONDITIONS = [
  "pregnancy",
  "after-birth",
  "heart",
  "high-blood-pressure",
  "asthma",
  "diabetes",
  "epilepsy",
  "hernia",
  "concussion",
  "past-rhabdomyolysis",
  "past-heat-illness",
  "sickle-cell-trait",
  "recent-illness",
  "advised-by-doctor",
] as const;
export type Condition = (typeof CONDITIONS)[number];

export const HABITS = [
  "starts-too-fast",
  "starts-too-slow",
  "rests-too-long",
  "breaks-too-late",
  "slow-transitions",
] as const;
export type Habit = (typeof HABITS)[number];

/** How fast an athlete is ready again after hard work, by their own or their coach's judgement. */
export const RECOVERIES = ["slow", "usual", "fast"] as const;
export type Recovery = (typeof RECOVERIES)[number];

export const SEXES = ["female", "male"] as const;
export type Sex = (typeof SEXES)[number];

export const MOVEMENT_KINDS = [
  "barbell",
  "dumbbell",
  "kettlebell",
  "odd-object",
  "gymnastics",
  "bodyweight",
  "jump",
  "rope",
  "erg",
  "run",
  "carry",
] as const;
export type MovementKind = (typeof MOVEMENT_KINDS)[number];

export const ERG_KINDS = ["row", "ski", "bike-erg", "air-bike"] as const;
export type ErgKind = (typeof ERG_KINDS)[number];

/** What must stand ready for a movement. `row` to `air-bike` are machines, `rig` is a bar to hang from. */
export const EQUIPMENT = [
  "barbell",
  "dumbbell",
  "kettlebell",
  ...ERG_KINDS,
  "box",
  "rig",
  "rings",
  "dip-bars",
  "climbing-rope",
  "pegboard",
  "skipping-rope",
  "wall",
  "blocks",
  "target",
  "medicine-ball",
  "slam-ball",
  "heavy-ball",
  "sandbag",
  "plate",
  "handles",
  "yoke",
  "sled",
  "rucksack",
  "rack",
  "bench",
  "hip-extension-bench",
  "water",
] as const;
export type Equipment = (typeof EQUIPMENT)[number];

/** How far a number can be trusted. */
export const CONFIDENCES = ["measured", "published", "judgement"] as const;
export type Confidence = (typeof CONFIDENCES)[number];

export const SCORE_KINDS = [
  "time",
  "reps",
  "rounds-and-reps",
  "load",
  "sum-of-loads",
  "load-times-reps",
  "calories",
  "metres",
  "lowest-interval",
  "highest-interval",
  "sum-of-lowest",
  "slowest-interval",
  "intervals-completed",
] as const;
export type ScoreKind = (typeof SCORE_KINDS)[number];

/** What an athlete may agree to show on the share image. */
export const SHARED_FACTS = ["name", "target", "splits", "loads", "division"] as const;
export type SharedFact = (typeof SHARED_FACTS)[number];

/** The rotating answers to "how did it feel" in a logged result. */
export const FEELINGS = ["easy", "right", "hard", "blew-up"] as const;
export type Feeling = (typeof FEELINGS)[number];
