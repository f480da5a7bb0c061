import type { Plan } from "../models/plan/plan.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayPlaces } from "../wording/places.ts";
import type { Block } from "./block.ts";

/** What the field tells of each part: the place to expect, what a step more is worth, crowds, holding back. */
export function placesBlock({ parts, athlete }: Plan): Block | undefined {
  const lines = parts.flatMap(({ name, places }) =>
    places === undefined
      ? []
      : [
          {
            runs: [
              { text: `${sayPart(name)}:`, strong: true },
              { text: sayPlaces(places, athlete.units).join(" ") },
            ],
          },
        ],
  );
  return lines.length === 0 ? undefined : { title: "In the field", lines };
}
