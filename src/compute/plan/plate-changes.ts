import type { Course, CourseEffort, CourseItem, CourseLoad } from "../../models/course.ts";
import type { Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import { seconds } from "../../models/quantity.ts";
import type { Loading } from "../../models/workout.ts";
import { arrangePlates } from "../lifting/arrange-plates.ts";
import type { MakableLoads } from "../lifting/makable-loads.ts";
import { changePlates } from "../lifting/plates.ts";

/** What changing the bar takes at one gym under the rules of one part. */
export type Iron = {
  readonly gym: Gym;
  readonly loadBar: (load: CourseLoad, movement: Movement) => BarLoad;
  readonly loading: Loading | "not-stated";
  readonly overrides: Readonly<Record<string, number>>;
};

/**
 * The loads of a part with plates arranged so that the least iron is moved from one to the next, in the order in which they
 * are first used. Where the bar has one load all along, as `loadBar` says.
 */
export function arrangedLoads(course: Course, iron: Iron, loads: MakableLoads): Iron["loadBar"] {
  const used = course.items.flatMap((item) => {
    const load = item.kind === "effort" ? barLoadOf(item) : undefined;
    return load && item.kind === "effort" ? [standing({ load, movement: item.movement }, iron.loadBar)] : [];
  });
  const keyOf = ({ mass }: BarLoad): string => `${mass.value} ${mass.unit}`;
  const steps = used.filter((load, at) => used.findIndex((other) => keyOf(other) === keyOf(load)) === at);
  if (steps.length < 2 || steps.length > MOST_STEPS) return iron.loadBar;
  const sides = new Map(arrangePlates(loads, steps).map((load) => [keyOf(load), load.perSide]));
  return (load, movement) => {
    const written = iron.loadBar(load, movement);
    const perSide = sides.get(keyOf(written));
    return written.perSide === undefined || perSide === undefined ? written : { ...written, perSide };
  };
}

/** Loads of a ladder without end are more than anybody arranges. */
const MOST_STEPS = 12;

/** A rest at least this much longer than the change leaves time for it, seconds. Judgement. */
const SPARE = 10;

/**
 * The course with the time to change plates where a bar comes back with another load.
 *
 * Alone, the athlete changes it before the visit, unless a rest of the workout is long enough for it. With help it is changed while
 * the athlete works elsewhere, and only a change between two visits that follow one another is waited for. Where every load has
 * a bar of its own nothing is changed. Where nothing is said of it, the athlete is alone.
 */
export function withPlateChanges(course: Course, iron: Iron): Course {
  if (iron.loading === "bars-ready") return course;
  const items: CourseItem[] = [];
  let onBar: { readonly load: CourseLoad; readonly movement: Movement } | undefined;
  let elsewhere = false;
  let rested = 0;
  for (const item of course.items) {
    if (item.kind === "rest") {
      rested = Math.max(rested, item.rest.kind === "as-long-as-work" ? 0 : restOf(item.rest));
      items.push({ ...item, index: items.length });
      continue;
    }
    const load = barLoadOf(item);
    if (load === undefined) elsewhere = true;
    else {
      const change =
        onBar && onBar.load.total !== load.total
          ? changeTo(onBar, { load, movement: item.movement }, iron)
          : undefined;
      const byOthers = iron.loading === "help-allowed" && elsewhere;
      if (change && change.seconds > 0 && !byOthers && rested < change.seconds + SPARE) {
        const { off, on } = change;
        items.push({
          kind: "rest",
          index: items.length,
          rest: { kind: "exactly", time: seconds(change.seconds) },
          counted: true,
          change: { to: load, movement: item.movement, off, on },
          pass: item.pass,
        });
      }
      onBar = { load, movement: item.movement };
      elsewhere = false;
      rested = 0;
    }
    items.push({ ...item, index: items.length });
  }
  return items.length === course.items.length ? course : { ...course, items };
}

type OnBar = { readonly load: CourseLoad; readonly movement: Movement };

const changeTo = (
  from: OnBar,
  to: OnBar,
  { gym, loadBar, loading, overrides }: Iron,
): ReturnType<typeof changePlates> =>
  changePlates(
    standing(from, loadBar),
    standing(to, loadBar),
    gym,
    loading === "help-allowed" ? "help-allowed" : "alone",
    overrides,
  );

/** The load as plates, where it cannot be made the nearest that can. */
function standing({ load, movement }: OnBar, loadBar: Iron["loadBar"]): BarLoad {
  const exact = loadBar(load, movement);
  const near = exact.nearest?.below ?? exact.nearest?.above;
  if (exact.perSide !== undefined || near === undefined) return exact;
  return loadBar({ ...load, written: near, alternative: near }, movement);
}

/** The set load of a barbell; undefined for everything else. */
const barLoadOf = ({ load, movement }: CourseEffort): CourseLoad | undefined =>
  movement.loading?.held === "bar" && load !== undefined && !load.athletesChoice ? load : undefined;

/** Seconds of a rest; what is left of an interval is taken to be long enough only where nothing else can be. */
const restOf = (rest: { readonly kind: string; readonly time?: number }): number =>
  rest.kind === "until" ? Infinity : (rest.time ?? 0);
