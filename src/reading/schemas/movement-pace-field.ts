import * as z from "zod";
import type { ReferencePace } from "../../models/movement.ts";
import { readUnitPace, type UnitPace } from "../quantities/unit-pace.ts";
import { LEVELS, type Level } from "../../models/vocabulary.ts";
import { sourceFields } from "./movement-fields.ts";
import { numberField, quantityField, ratioField } from "../fields/quantity-field.ts";

const unitPaceField = quantityField(readUnitPace);

const pacesField = z.strictObject({
  new: unitPaceField.describe("somebody new to it, about the 15th percentile of an open qualifier"),
  regular: unitPaceField.describe("somebody who trains regularly, about the median"),
  competitor: unitPaceField.describe("somebody who competes, about the 90th percentile"),
  elite: unitPaceField.describe("among the best, about the 99th percentile"),
});

const countsField = z.strictObject({
  new: numberField.describe("somebody new to it"),
  regular: numberField.describe("somebody who trains regularly"),
  competitor: numberField.describe("somebody who competes"),
  elite: numberField.describe("among the best"),
});

/** Paces of a movement, and whether any of them is written over a distance. */
export type WrittenPace = { readonly reference: ReferencePace; readonly overDistance: boolean };

/** The `pace` of a movement's file: seconds for each unit, or a time over a distance, by level. */
export const paceField = z
  .strictObject({
    steady: pacesField.describe(
      "seconds for one unit, held for about twenty minutes of this movement alone, breaks included; or `2:05 per 500 m`",
    ),
    fastest: pacesField.describe("seconds for one unit in the quickest clean cycle when fresh"),
    unbroken: countsField.describe("units usually possible in one set when fresh"),
    "by sex": z
      .strictObject({
        female: ratioField.describe("factor on the seconds for women, with their own loads and heights"),
        male: ratioField.describe("factor on the seconds for men"),
      })
      .describe("how far the paces differ between women and men; 1 where no difference is known"),
    ...sourceFields,
  })
  .describe("reference paces at the reference load, by level, in the first unit of `counts`")
  .transform((pace): WrittenPace => ({
    reference: {
      steady: secondsOf(pace.steady),
      fastest: secondsOf(pace.fastest),
      unbroken: pace.unbroken,
      bySex: pace["by sex"],
      source: pace.source,
      confidence: pace.confidence,
    },
    overDistance: [pace.steady, pace.fastest].some((paces) =>
      LEVELS.some((level) => paces[level].per === "metre"),
    ),
  }));

type ByLevel<T> = Readonly<Record<Level, T>>;

const secondsOf = (paces: ByLevel<UnitPace>): ByLevel<number> => ({
  new: paces.new.seconds,
  regular: paces.regular.seconds,
  competitor: paces.competitor.seconds,
  elite: paces.elite.seconds,
});
