import type { Athlete } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import type { Gym } from "../../models/gym.ts";

/** The gym a plan is made for; `assumed` when neither the athlete nor the settings name one. */
type PlanPlace = { readonly gym: Gym; readonly assumed: boolean };

/** A usual gym, for athletes of whom no gym is known. Judgement. */
const USUAL_GYM: Gym = {
  id: "usual-gym",
  name: "a usual gym",
  bars: [
    { id: "long", mass: { value: 20, unit: "kg" }, for: "everyone" },
    { id: "short", mass: { value: 15, unit: "kg" }, for: "female" },
  ],
  collarsCount: false,
  plates: [25, 20, 15, 10, 5, 2.5, 1.25].map((value) => ({ plate: { value, unit: "kg" }, pairs: 2 })),
  ergs: {},
  equipment: [],
  between: { value: 4, unit: "m" },
};

/** The athlete's gym, else the one of the settings, else the only one there is, else a usual one. */
export function planPlace(athlete: Athlete, { gyms, settings }: Pick<Data, "gyms" | "settings">): PlanPlace {
  const named = athlete.gym ?? settings.gym;
  const gym = named === undefined ? undefined : gyms.get(named);
  if (gym !== undefined) return { gym, assumed: false };
  const [only, second] = [...gyms.values()];
  if (only !== undefined && second === undefined) return { gym: only, assumed: false };
  return { gym: USUAL_GYM, assumed: true };
}
