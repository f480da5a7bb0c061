import { METRIC_UNITS, type Metric } from "../../models/condition.ts";
import { inKilograms, inMetres, type LengthUnit, type MassUnit } from "../../models/quantity.ts";

/** How the value of a metric is written, with the words for a message and an example. */
type ValueForm = {
  readonly words: string;
  readonly example: string;
  readonly pattern: RegExp;
};

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;

const FORMS: Readonly<Record<"share" | "mass" | "length" | "bare", ValueForm>> = {
  share: {
    words: "a share in per cent, such as 80%",
    example: "80%",
    pattern: new RegExp(String.raw`^${NUMBER}\s*(%)$`),
  },
  mass: {
    words: "a mass with its unit, such as 80 kg or 175 lb",
    example: "80 kg",
    pattern: new RegExp(String.raw`^${NUMBER}\s*(kg|lb)$`),
  },
  length: {
    words: "a length with its unit, such as 1.80 m or 180 cm",
    example: "1.80 m",
    pattern: new RegExp(String.raw`^${NUMBER}\s*(cm|m)$`),
  },
  bare: {
    words: "a number without a unit, such as 20",
    example: "20",
    pattern: new RegExp(`^${NUMBER}$`),
  },
};

export const valueFormOf = (metric: Metric): ValueForm => FORMS[METRIC_UNITS[metric] ?? "bare"];

/**
 * Reads the value a metric is compared with: shares from 0 to 1, masses in kilograms, lengths in metres, the rest as
 * it stands; a decimal comma is a decimal point. Undefined when the text is not written as the metric asks.
 *
 * @example readConditionValue("load-share", "80%") // => 0.8
 */
export function readConditionValue(metric: Metric, text: string): number | undefined {
  const match = valueFormOf(metric).pattern.exec(text);
  if (match?.[1] === undefined) return undefined;
  const number = Number(match[1].replace(",", "."));
  switch (METRIC_UNITS[metric]) {
    case "share":
      return number / 100;
    case "mass":
      return inKilograms({ value: number, unit: match[2] as MassUnit });
    case "length":
      return inMetres({ value: number, unit: match[2] as LengthUnit });
    default:
      return number;
  }
}

/** A correct way to write what was probably meant: `0.8` as a share is `80%`, `20 min` as minutes is `20`. */
export function proposeConditionValue(metric: Metric, text: string): string {
  const form = valueFormOf(metric);
  const digits = new RegExp(NUMBER).exec(text)?.[1];
  if (digits === undefined) return form.example;
  const number = Number(digits.replace(",", "."));
  switch (METRIC_UNITS[metric]) {
    case "share":
      return `${number <= 1 ? Math.round(number * 1000) / 10 : number}%`;
    case "mass":
      return `${digits} kg`;
    case "length":
      return number > 3 ? `${digits} cm` : `${digits} m`;
    default:
      return digits;
  }
}
