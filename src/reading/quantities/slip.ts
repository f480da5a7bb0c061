import { isPlaceholder } from "./plausible.ts";

/** From here on a whole number is likelier a spreadsheet's number of a day than a load with its decimal sign lost. */
const DAYS_OF_SHEETS = 40_000;

/**
 * Values a person may have meant by one slip in typing a number: the decimal sign lost, a digit typed twice. Nothing for
 * placeholders such as 999 or 65535, in which no reading lies.
 *
 * @example slips(2225) // => [222.5, 225]
 */
export function slips(value: number): readonly number[] {
  if (isPlaceholder(value) || !Number.isInteger(value) || value < 100 || value >= DAYS_OF_SHEETS) return [];
  const digits = String(value);
  const shifted = value / (digits.length > 4 ? 100 : 10);
  const doubled = Array.from(digits).flatMap((digit, index) =>
    digit === digits[index + 1] ? [Number(digits.slice(0, index) + digits.slice(index + 1))] : [],
  );
  return [...new Set([shifted, ...doubled])];
}
