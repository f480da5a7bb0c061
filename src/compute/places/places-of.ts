import type { Field } from "../../models/field.ts";
import type { Range } from "../../models/plan/basics.ts";
import type { Places } from "../../models/plan/lifting.ts";
import type { PlacesConstants } from "./constants.ts";
import { crowdsNear } from "./crowds.ts";
import { expectedPlace } from "./expected-place.ts";
import { holdBack, type HoldBackInput } from "./hold-back.ts";
import { type Cap, type PossibleResult, resultsOfRange, stoppedByCap } from "./possible-results.ts";
import { placeOf, rankField, type Side } from "./rank-field.ts";

/** A result as planned, on one side of the cap, in the unit of the field. */
type PlannedResult = { readonly side: Side; readonly range: Range; readonly chance: number };

export type PlacesInput = {
  readonly part: string;
  readonly field: Field;
  /** The plan's result; two entries where the cap may or may not be met. Chances add up to 1. */
  readonly results: readonly PlannedResult[];
  /** Of a part for time: finishes later than it are stopped by it. */
  readonly cap?: Cap;
  /** One plate more: the smallest jump the gym's plates allow, in the unit of the field. Only for loads. */
  readonly plate?: number;
  /** The lightest load above another that can be made, in the unit of the field. Only for loads. */
  readonly loadAbove?: (load: number) => number | undefined;
  /** Share of those tied that come before the athlete; half, where nothing is known of the tie-break. */
  readonly tied?: number;
  readonly trade?: HoldBackInput;
};

/**
 * What a result is worth among a field: the expected place, the places one second, rep or plate more gains, the crowds
 * within reach and what passes them, and whether holding back before a lift could pay.
 *
 * Undefined for a field without scores.
 */
export function placesOf(input: PlacesInput, constants: PlacesConstants): Places | undefined {
  const field = rankField(input.field);
  const likeliest = input.results.reduce<PlannedResult | undefined>(
    (best, result) => (!best || result.chance > best.chance ? result : best),
    undefined,
  );
  if (field.size === 0 || !likeliest) return undefined;
  const results: readonly PossibleResult[] = input.results.flatMap(({ range, side, chance }) =>
    resultsOfRange(range, side, chance).map((result) => stoppedByCap(result, input.cap)),
  );
  const tied = input.tied === undefined ? {} : { tied: input.tied };
  const expected = expectedPlace(field, results, tied);
  const unit = unitOf(input.field, likeliest.side);
  const better = unit === "plate" ? input.plate : 1;
  const onSide = results.filter(({ side }) => side === likeliest.side);
  return {
    part: input.part,
    fieldSize: field.size,
    expected,
    shareAhead: (expected - 1) / field.size,
    ...(better !== undefined && {
      perUnit: {
        unit,
        amount: 1,
        places: expectedPlace(field, onSide, tied) - expectedPlace(field, onSide, { better, ...tied }),
      },
    }),
    scored: scoredIn(input.field, likeliest.side),
    crowds: [...crowdsNear(field, likeliest.side, likeliest.range, nextBetter(input, unit), constants)],
    ...(input.trade && { holdBack: holdBack(input.trade, constants) }),
  };
}

function unitOf(field: Field, side: Side): "second" | "rep" | "plate" {
  if (field.kind === "load") return "plate";
  return field.kind === "time" && side === "finished" ? "second" : "rep";
}

function scoredIn({ kind, unit }: Field, side: Side): Places["scored"] {
  if (kind === "load") return unit ?? "kg";
  if (kind === "time") return side === "finished" ? "seconds" : "reps";
  return kind;
}

const nextBetter =
  ({ loadAbove }: PlacesInput, unit: "second" | "rep" | "plate") =>
  (score: number): number | undefined => {
    if (unit === "plate") return loadAbove?.(score);
    return unit === "second" ? score - 1 : score + 1;
  };

/** What a load is worth as a place, for choosing attempts by place: less is better, none is behind everyone. */
export function placeOfLoad(field: Field): (load: number | undefined) => number {
  const ranked = rankField(field);
  return (load) => (load === undefined ? ranked.size + 1 : placeOf(ranked, "finished", load));
}
