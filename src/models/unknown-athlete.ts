import type { Athlete } from "./athlete.ts";

/** An athlete of whom nothing but what is given is known: no results, no limits, no habits, no wishes. */
export const unknownAthlete = (
  known: Pick<Athlete, "id" | "place" | "name" | "level" | "units"> & Partial<Athlete>,
): Athlete => ({
  lifts: [],
  efforts: [],
  unbroken: [],
  cannot: [],
  recovery: "usual",
  habits: [],
  limits: [],
  prefers: {},
  starts: [],
  shares: [],
  results: [],
  retry: "no",
  ...known,
});
