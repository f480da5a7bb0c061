import * as z from "zod";
import type { SettableConstants } from "../../models/model-constant.ts";
import { comparable, nearestName } from "../../models/nearest.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { numberField } from "./quantity-field.ts";

/** Numbers of the model by name, as a coach sets them: names the model has, values it can be computed with. */
export const overridesField = (settable: SettableConstants) =>
  z.record(z.string(), numberField).transform((written, ctx): Readonly<Record<string, number>> => {
    const names = [...settable.keys()];
    const taken = Object.entries(written).flatMap(([word, value]) => {
      const name = names.find((each) => comparable(each) === comparable(word));
      if (name === undefined) {
        const nearest = nearestName(word, names);
        tellRefusal(ctx, {
          path: [word],
          at: "name",
          found: word,
          problem: "the model has no number of this name",
          allowed: "the names that `npm run model` prints",
          nearest,
          remedy: nearest === undefined ? "Leave it out." : `Write \`${nearest}\`, or leave it out.`,
        });
        return [];
      }
      const [least, most] = settable.get(name) ?? [value, value];
      if (value >= least && value <= most) return [[name, value] as const];
      tellRefusal(ctx, {
        path: [word],
        problem: "no plan can be made with this number",
        allowed: `${least} to ${most}`,
        remedy: `Write a number in this range; \`npm run model -- ${name}\` says what it does.`,
      });
      return [];
    });
    return Object.fromEntries(taken);
  });
