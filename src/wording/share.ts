import { sayNumber } from "./number.ts";

/** A share in whole per cent. @example sayShare(0.746) // => "75%" */
export const sayShare = (share: number): string => `${sayNumber(share * 100, 0)}%`;

/**
 * A chance to the nearest twentieth, because no chance in a plan is known better; near the ends it says so.
 *
 * @example sayChance(0.78) // => "80%"
 * @example sayChance(0.99) // => "over 95%"
 */
export function sayChance(chance: number): string {
  if (chance >= 0.975) return "over 95%";
  if (chance <= 0.025) return "under 5%";
  return `${Math.round(chance * 20) * 5}%`;
}

const IN_TEN = [
  "hardly ever",
  ...Array.from({ length: 9 }, (_, index) => `${index + 1} in 10`),
  "nearly always",
];

/** A chance as so many times in ten. @example sayInTen(0.78) // => "8 in 10" */
export const sayInTen = (chance: number): string => IN_TEN[Math.round(chance * 10)] ?? sayChance(chance);
