import type { Gym } from "../../models/gym.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import type { Candidate } from "./candidate-loads.ts";
import type { MakableLoads } from "./makable-loads.ts";

/** The bar and the plates a lift is done with. */
export type LiftIron = {
  readonly gym: Pick<Gym, "plates" | "collar" | "collarsCount" | "plateChange">;
  readonly loads: MakableLoads;
  readonly candidates: readonly Candidate[];
  readonly loading: Lifting["loading"];
};
