import * as z from "zod";
import type { AthleteContext } from "./context.ts";
import { profileSchema } from "./athlete-schema.ts";
import { numberField } from "../fields/quantity-field.ts";
import { nameField } from "../fields/text-field.ts";

/** The file of a typical athlete of the general page, `content/bands/*.yaml`. */
export const bandSchema = (context: AthleteContext) =>
  z.strictObject({
    title: nameField.describe("what the page calls the typical athlete, such as `Regular, men`"),
    order: numberField.describe("the place on the page, lowest first: `1`"),
    profile: profileSchema(context).describe(
      "the typical athlete: the entries of an athlete file, without name, starts, shares, results and note",
    ),
  });
