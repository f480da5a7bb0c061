import type { Length, Mass, Seconds } from "./quantity.ts";
import type { ErgKind } from "./vocabulary.ts";

/** Plates of one size; `pairs` is how many pairs one athlete can have. */
export type PlatePairs = { readonly plate: Mass; readonly pairs: number };

export type Bar = {
  readonly id: string;
  readonly mass: Mass;
  /** What the rules count it as, when that differs (a 15 kg bar counted as 35 lb). */
  readonly countsAs?: Mass;
  readonly for: "everyone" | "female" | "male";
};

/** What there is to train with. */
export type Gym = {
  readonly id: string;
  readonly bars: readonly Bar[];
  /** Mass of one collar; they count only where the rules say so. */
  readonly collar?: Mass;
  readonly collarsCount: boolean;
  readonly plates: readonly PlatePairs[];
  readonly ergs: Readonly<Partial<Record<ErgKind, number>>>;
  /** Free words such as `rack`, `pins`, `bumper plates`, `rings`, `rope`. */
  readonly equipment: readonly string[];
  /** Metres between two stations. */
  readonly between: Length;
  /** Seconds one person needs to change one pair of plates, collars off and on included. */
  readonly plateChange?: Seconds;
};

/** A gym that somebody described, by its name. */
export type NamedGym = Gym & { readonly name: string };
