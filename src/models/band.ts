import type { Athlete } from "./athlete.ts";

/** A typical athlete of the strategy page: an athlete without a name, only a title such as "Regular, men". */
export type Band = {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  readonly profile: Athlete;
};
