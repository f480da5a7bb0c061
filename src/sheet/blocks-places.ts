import type { PartPlan, Plan } from "../models/plan/plan.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayPlaces, sayTogether, sayWorth } from "../wording/places.ts";
import type { Block, Detail } from "./block.ts";

/**
 * What a result of each part is worth: the place to expect and what a step more gains where a field tells, what holding back buys at
 * a lift, and how ties are broken. Short: what a step gains and how ties are broken.
 */
export function placesBlock({ parts, athlete }: Plan, detail: Detail = "full"): Block | undefined {
  const lines = parts.flatMap((part) => {
    const told = detail === "full" ? allOf(part, athlete.units) : shortOf(part, athlete.units);
    return told.length === 0
      ? []
      : [{ runs: [{ text: `${sayPart(part.name)}:`, strong: true }, { text: told.join(" ") }] }];
  });
  const title = parts.some(({ places }) => places !== undefined) ? "In the field" : "What it is worth";
  return lines.length === 0 ? undefined : { title, lines };
}

const allOf = (part: PartPlan, units: Plan["athlete"]["units"]): readonly string[] => [
  ...(part.places ? sayPlaces(part.places, units) : []),
  ...sayTogether(part, units),
];

function shortOf({ places, tiesBy, lifting }: PartPlan, units: Plan["athlete"]["units"]): readonly string[] {
  const worth = places && sayWorth(places);
  const together = { ...(tiesBy !== undefined && { tiesBy }), ...(lifting && { lifting }) };
  return [...(worth === undefined ? [] : [worth]), ...sayTogether(together, units)];
}
