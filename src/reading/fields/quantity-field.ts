import * as z from "zod";
import {
  inMetres,
  type Kilograms,
  type Length,
  type Mass,
  type Metres,
  type Seconds,
} from "../../models/quantity.ts";
import { readBodyMass } from "../quantities/body-mass.ts";
import { readCount } from "../quantities/count.ts";
import { readHeight } from "../quantities/height.ts";
import { readLength } from "../quantities/length.ts";
import { readMass } from "../quantities/mass.ts";
import type { Reading } from "../quantities/reading.ts";
import { readTime } from "../quantities/time.ts";
import { writtenNumber } from "../quantities/written-number.ts";
import { ask, reject, take } from "../quantities/reading.ts";
import { takeReading } from "./take-reading.ts";

/** A field of a YAML file whose text is read as a quantity. */
export const quantityField = <T>(read: (text: string) => Reading<T>) =>
  z.string().transform((text, ctx): T => takeReading(ctx, read(text)));

export const massField = quantityField<Mass>(readMass);
export const lengthField = quantityField<Length>(readLength);
export const timeField = quantityField<Seconds>(readTime);
export const heightField = quantityField<Metres>(readHeight);
export const bodyMassField = quantityField<Kilograms>(readBodyMass);
export const countField = quantityField<number>(readCount);

export const metresField = lengthField.transform((length): Metres => inMetres(length));

/** A plain number, with decimal point or comma. */
export const numberField = quantityField<number>((text) => {
  const written = writtenNumber(text);
  const allowed = "a number such as `4` or `0.85`";
  if (written.kind === "none") return reject("this is not a number", allowed);
  if (written.kind === "one") return take(written.value);
  const readings = [`${written.grouped}`, `${written.decimal}`];
  return ask("the sign in the number may group thousands or begin decimals", readings, allowed);
});

/** How many times another value: over nought, and not beyond what two lifts or two people differ by. */
export const ratioField = quantityField<number>((text) => {
  const written = writtenNumber(text);
  const allowed = "a number from 0.02 to 20, such as `0.85`";
  if (written.kind === "none") return reject("this is not a number", allowed);
  if (written.kind === "one") {
    return written.value >= 0.02 && written.value <= 20
      ? take(written.value)
      : reject("no two of these differ by so much", allowed);
  }
  const readings = [`${written.grouped}`, `${written.decimal}`];
  return ask("the sign in the number may group thousands or begin decimals", readings, allowed);
});

/** `yes` or `no`. */
export const yesNoField = quantityField<boolean>((text) => {
  const word = text.trim().toLowerCase();
  if (["yes", "true", "y", "on"].includes(word)) return take(true);
  if (["no", "false", "n", "off", "none"].includes(word)) return take(false);
  return reject("this is neither yes nor no", "`yes` or `no`");
});
