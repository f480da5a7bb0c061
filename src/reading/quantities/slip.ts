import { isPlaceholder } from "./plausible.ts";

/**
 * Values a person may have meant by one slip in typing a number: the decimal sign lost, a digit typed twice. Nothing for
 * placeholders such as 999 or 65535, in which no reading lies.
 *
 * @example slips(2225) // => [222.5, 225]
 */
export function slips(value: number): readonly number[] {
  if (isPlaceholder(value) || !Number.isInteger(value) || value < 100) return [];
  const digits = String(value);
  const shifted = value / (digits.length > 4 ? 100 : 10);
  const doubled = Array.from(digits).flatMap((digit, index) =>
    digit === digits[index + 1] ? [Number(digits.slice(0, index) + digits.slice(index + 1))] : [],
  );
  return [...new Set([shifted, ...doubled])];
}
