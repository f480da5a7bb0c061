import type { AthleteContext } from "../../src/reading/athlete-file/context.ts";
import { liftFinder, movementFinder } from "../../src/reading/names/find-movement.ts";
import { movementsForTests } from "./some-movements.ts";

const competition = { zone: "Europe/Oslo", opens: "2026-11-26T18:00", closes: "2026-11-30T20:00" };

/** Two gyms, three workouts (one of two parts, one of no competition, one that cannot be read) and a few movements. */
export const contextForTests: AthleteContext = {
  findMovement: movementFinder(movementsForTests),
  findLift: liftFinder(movementsForTests),
  choices: new Map([["pull-up-style", movementsForTests.get("pull-up")?.choices[0]?.options ?? []]]),
  gyms: ["mill", "harbour"],
  workouts: new Map([
    [
      "low-water",
      { id: "low-water", title: "Low water", parts: ["a", "b"], ofCompetition: true, competition },
    ],
    ["own-work", { id: "own-work", title: "Own work", parts: ["a"], ofCompetition: false }],
    ["broken", { id: "broken", title: "broken", ofCompetition: true }],
  ]),
};
