import type { PlanPlace } from "./plan-place.ts";
import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { CoachWord } from "../../models/coach-word.ts";
import type { Competition } from "../../models/competition.ts";
import type { CourseLoad } from "../../models/course.ts";
import type { Field } from "../../models/field.ts";
import type { Bar, Gym } from "../../models/gym.ts";
import type { Library } from "../../models/library.ts";
import type { Movement } from "../../models/movement.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { Metres } from "../../models/quantity.ts";
import type { BestLift } from "../capacity/best-lift.ts";
import type { SeenPerformance } from "../early-splits/seen-performance.ts";
import type { Capacity } from "../motion/movement-capacity.ts";
import type { Withholding } from "../cautions/withholding.ts";
import type { UsualAmounts } from "../conditions/usual-amounts.ts";
import type { StartInstant } from "./start-instant.ts";

/** What is settled about an athlete and a workout before anything is planned. */
export type PlanContext = {
  /** The athlete, in the division they are planned in. */
  readonly athlete: Athlete;
  /** A typical band of athletes, not a person. */
  readonly anonymous?: boolean;
  readonly division: string;
  readonly date: IsoDate;
  readonly library: Library;
  readonly gym: Gym;
  readonly place: PlanPlace;
  readonly bar: Bar;
  readonly competition?: Competition;
  /** Samples of scores the athlete is compared with, by part; that named for the part itself first. */
  readonly fields: ReadonlyMap<string, readonly Field[]>;
  readonly start?: StartInstant;
  readonly withholding: Withholding;
  readonly capacity: Capacity;
  /** Best lift today by movement id; undefined for what is no lift. */
  readonly bestLift: (movement: string) => BestLift | undefined;
  /** What the athlete has lately done of each movement in one session. */
  readonly usual: UsualAmounts;
  readonly loadBar: (load: CourseLoad, movement: Movement) => BarLoad;
  readonly between: Metres;
  /** Whether the workout prescribes that way. */
  readonly floorPrescribed: boolean;
  /** What was seen of others in this workout, as far as it counts for this athlete. */
  readonly seen?: readonly SeenPerformance[];
  /** What the coach set of how the work is paced. */
  readonly word?: CoachWord;
  readonly seed: number;
  readonly overrides: Readonly<Record<string, number>>;
};
