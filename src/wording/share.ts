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
