import type { CourseLoad } from "../../models/course.ts";
import { inKilograms, kilograms, type Mass } from "../../models/quantity.ts";
import type { ByRound, Load } from "../../models/workout.ts";
import type { UnrollContext } from "./context.ts";
import { inRound, type Frame } from "./frame.ts";

/**
 * The load of a line in the pass at hand: the mass as written and in kilograms, all pieces together. Shares of a lift
 * are taken from the best lift today; they are undefined where none is asked for, and a share of body mass where that is not known.
 */
export function resolveLoad(
  load: ByRound<Load>,
  movementId: string,
  frame: Frame,
  context: UnrollContext,
): CourseLoad | undefined {
  return loadOf(inRound(load, frame, stepped), movementId, context);
}

/** The same for a load that is the same in every round, such as what is worn. */
export function loadOf(load: Load, movementId: string, context: UnrollContext): CourseLoad | undefined {
  switch (load.kind) {
    case "mass":
      return {
        written: load.mass,
        pieces: load.pieces,
        total: kilograms(inKilograms(load.mass) * load.pieces),
        ...(load.alternative === undefined ? {} : { alternative: load.alternative }),
        athletesChoice: false,
      };
    case "share-of-best": {
      if (context.bestLift === undefined) return undefined;
      const of = load.of ?? movementId;
      const best = context.bestLift(of);
      if (best === undefined) throw new RangeError(`a load is a share of ${of}, which is no lift`);
      return share(best, load.share, of, onTheBarOf(movementId, context));
    }
    case "share-of-body-mass":
      return context.bodyMass === undefined
        ? undefined
        : share(context.bodyMass, load.share, "body mass", onTheBarOf(movementId, context));
    case "athletes-choice":
      return { written: { value: 0, unit: "kg" }, pieces: 1, total: kilograms(0), athletesChoice: true };
  }
}

/** What plates make of a mass, for what is lifted with a bar. */
const onTheBarOf = (movementId: string, { movements, onTheBar }: UnrollContext): UnrollContext["onTheBar"] =>
  movements.get(movementId)?.loading?.held === "bar" ? onTheBar : undefined;

function share(
  whole: number,
  part: number,
  of: string,
  onTheBar: NonNullable<UnrollContext["onTheBar"]> = (value) => ({ value, unit: "kg" }),
): CourseLoad {
  const written = onTheBar(whole * part);
  const total = kilograms(inKilograms(written));
  return {
    written,
    pieces: 1,
    total,
    athletesChoice: false,
    share: { share: part, of },
  };
}

/** The start with the step added so many times, never under nothing. */
function stepped(start: Load, step: Load, times: number): Load {
  if (start.kind === "mass" && step.kind === "mass") {
    const mass: Mass = { ...start.mass, value: Math.max(start.mass.value + step.mass.value * times, 0) };
    return { kind: "mass", pieces: start.pieces, mass };
  }
  if ((start.kind === "share-of-best" || start.kind === "share-of-body-mass") && start.kind === step.kind) {
    return { ...start, share: Math.max(start.share + step.share * times, 0) };
  }
  return start;
}
