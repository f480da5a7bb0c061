import * as z from "zod";
import { seconds } from "../../models/quantity.ts";
import { CHECKED } from "../quantities/doubt.ts";
import { type Bounds, WARM_UP_MINUTES, within } from "../quantities/plausible.ts";
import { ask, reject, take } from "../quantities/reading.ts";
import { readTime } from "../quantities/time.ts";
import { writtenNumber } from "../quantities/written-number.ts";
import { quantityField } from "./quantity-field.ts";

/** A plain number with a plausible range; `checked` behind it keeps one that is rare. */
export const boundedField = (bounds: Bounds, what: string) =>
  quantityField<number>((text) => {
    const number = text.trim().replace(CHECKED, "");
    const written = writtenNumber(number.replace(/^-/, ""));
    const allowed = `a number from ${bounds.usual[0]} to ${bounds.usual[1]}`;
    if (written.kind !== "one") return reject("this is not a number", allowed);
    const value = number.startsWith("-") ? -written.value : written.value;
    if (within(value, bounds.usual)) return take(value);
    if (!within(value, bounds.possible)) return reject(`${number} cannot be ${what}`, allowed);
    return CHECKED.test(text)
      ? take(value)
      : ask(`${number} is unusual for ${what}`, [`${number} checked`], allowed);
  });

/** The time at hand for warming up, in seconds. */
export const warmUpField = z.string().pipe(
  quantityField((text) => {
    const read = readTime(text.trim().replace(CHECKED, ""));
    if (!read.ok) return read;
    const minutes = read.value / 60;
    const allowed = `a time from ${WARM_UP_MINUTES.usual[0]} to ${WARM_UP_MINUTES.usual[1]} minutes`;
    if (within(minutes, WARM_UP_MINUTES.usual)) return read;
    if (!within(minutes, WARM_UP_MINUTES.possible))
      return reject("nobody warms up for so long or so short", allowed);
    return CHECKED.test(text)
      ? take(seconds(read.value))
      : ask("this is unusual for a warm-up", [`${text.trim()} checked`], allowed);
  }),
);
