/** How the athlete goes about the work, one entry per stretch where it is an array. */
export type Drive = {
  /** `effort`: the closed form, from the cost aimed at. `pace`: seconds per unit as planned. */
  readonly by: "effort" | "pace";
  /** Cost aimed at per second, 1 at the critical rate; and a lift of the rate it gives. */
  readonly cost: Float64Array;
  readonly lift: Float64Array;
  /** Whether a pace is held rather than an effort: the rate then does not fall as the work grows dearer. */
  readonly even: boolean;
  /** Planned seconds per unit, breaks included, at the start and the end of the stretch; linear between. */
  readonly opening: Float64Array;
  readonly closing: Float64Array;
  /** Planned share of the reserve at the start and the end of the stretch, for whoever feels ahead of or behind it. */
  readonly before: Float64Array;
  readonly left: Float64Array;
  /** Planned share of the amount, where a clock breaks the stretch off. */
  readonly reached: Float64Array;
  /** Share of a reserve felt ahead of or behind the plan that is turned into pace; the second holds from `finishFrom` on. */
  readonly feel: number;
  readonly feelAtTheEnd: number;
  /** Rate on the day over the expected one, and the same of the size of the reserve. */
  readonly form: number;
  readonly reserveForm: number;
  /** Whether the reserve may go below zero (to search for an affordable effort); else empty forces a slow stretch. */
  readonly mayOwe: boolean;
  /** From this share of the whole work (of the time, where that is fixed) on the rate is lifted by `finishLift`. */
  readonly finishFrom: number;
  readonly finishLift: number;
  /** Sustainable seconds of the whole work; infinite where the time is fixed. */
  readonly wholeWork: number;
  /** Clock at which the part ends whatever was done; infinite without. */
  readonly horizon: number;
  /** Fewest sustainable seconds simulated in one step; 0 for rep by rep. Coarser while searching. */
  readonly grain: number;
};
