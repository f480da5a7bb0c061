import type { Grounds } from "../../models/plan/grounds.ts";
import type { MuscleFit } from "./fit-muscles.ts";
import type { CapacityBasis } from "../motion/movement-capacity.ts";

/** What an athlete can do of a movement at its reference load and height, in one unit. */
export type MovementFit = {
  readonly sustainable: number;
  readonly fastest: number;
  readonly kappa: number;
  readonly reach: number;
  readonly muscles: MuscleFit;
  readonly error: number;
  readonly basis: CapacityBasis;
  /** Whether own efforts in this movement say it. */
  readonly isOwn: boolean;
  readonly from: Grounds;
  readonly byDuration: { readonly seconds: readonly number[]; readonly factors: readonly number[] };
};
