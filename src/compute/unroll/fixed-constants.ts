import type { FixedConstants } from "../../models/model-constant.ts";
import type { MassUnit } from "../../models/quantity.ts";
import type { MovementKind } from "../../models/vocabulary.ts";

/** Numbers of writing a part out that a coach cannot set: they say how the model is used, not what somebody can do. */
export const UNROLL_FIXED = {
  fastestCalories: {
    value: 3,
    unit: "calories a second",
    does: "rate that calories are never faster than on any machine",
    source: "beyond a sprint of 2000 W",
    confidence: "judgement",
  },
  fastestMetre: {
    value: 0.05,
    unit: "seconds",
    does: "time nobody covers a metre in",
    source: "twice a sprinter's pace",
    confidence: "judgement",
  },
  fastestRep: {
    value: 0.1,
    unit: "seconds",
    does: "time nobody does a rep in",
    source: "ten reps a second",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

type Step = Readonly<Record<MassUnit, number>>;

/** Steps in which things to lift are made, by the kind of movement; judgement: what stands in a gym's rack. */
export const STAND_IN_STEPS: Readonly<Partial<Record<MovementKind, Step>>> = {
  kettlebell: { kg: 4, lb: 9 },
  dumbbell: { kg: 2.5, lb: 5 },
};
/** The step of anything else; judgement. */
export const USUAL_STEP: Step = { kg: 1, lb: 2 };
