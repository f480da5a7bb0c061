import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Competition } from "../../models/competition.ts";
import type { Course } from "../../models/course.ts";
import type { Field } from "../../models/field.ts";
import type { Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { Mass, Seconds } from "../../models/quantity.ts";
import type { AttemptBounds, Loading, Part, Workout } from "../../models/workout.ts";
import type { BestLift } from "../capacity/best-lift.ts";
import { makableLoads, type MakableLoads } from "./makable-loads.ts";
import { chooseBar } from "./plates.ts";
import type { WorkBefore } from "./work-loss.ts";

/** Everything the attempts of one part are planned from. */
export type LiftingInput = {
  readonly part: Part;
  readonly course: Course;
  readonly athlete: Athlete;
  /** A typical band of athletes, who read the plan as shares of their own best. */
  readonly anonymous?: boolean;
  readonly movements: ReadonlyMap<string, Movement>;
  /** The athlete's best lifts by movement, where they are worked out already. */
  readonly bestLift?: (movement: string) => BestLift | undefined;
  readonly gym: Gym;
  readonly date: IsoDate;
  /**
   * Clock of the workout at which the part begins: as expected, its standard deviation where the part before decides, and the
   * latest, where a cap ends that part.
   */
  readonly opens: { readonly mean: number; readonly spread: number; readonly latest?: number };
  readonly before?: WorkBefore;
  /** Clock of the part at which the athlete comes to an item of the course, where the work before it is paced. */
  readonly reached?: (index: number) => Seconds | undefined;
  readonly competition?: Competition;
  readonly field?: Field;
  readonly objective: Workout["objective"];
  readonly objectiveLoad?: Mass;
  readonly bounds?: AttemptBounds;
  /** Model constants the coach sets differently, by name. */
  readonly overrides?: Readonly<Record<string, number>>;
};

/** The same with the bar chosen and its loads listed. */
export type LoadedInput = LiftingInput & {
  readonly iron: {
    readonly loads: MakableLoads;
    readonly loading: Exclude<Loading, "bars-ready"> | "not-stated";
  };
};

/** Chooses the bar, lists what it can be loaded to, and settles who may load it. */
export function withIron(input: LiftingInput): LoadedInput {
  const { gym, athlete, competition, part } = input;
  const bar = chooseBar(gym, athlete.sex, competition?.barCounts);
  const stated = part.loading ?? competition?.loading ?? "not-stated";
  // A lift whose load is the athlete's choice has no bar that stands ready: who sets out bars helps.
  const loading = stated === "bars-ready" ? "help-allowed" : stated;
  return { ...input, iron: { loads: makableLoads(gym, bar), loading } };
}
