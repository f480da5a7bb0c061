/**
 * Time over one distance from the time over another: time grows with distance to a power (Riegel 1981, exponent 1.06, from about 3.5
 * to 230 minutes). Units of the two distances are the same.
 *
 * @example riegelTime(1200, 5000, 10000, 1.06) // => 2501.9...
 */
export const riegelTime = (time: number, distance: number, other: number, exponent: number): number =>
  time * (other / distance) ** exponent;

/** Distance in one time from the distance in another, the same law turned round. */
export const riegelDistance = (distance: number, time: number, other: number, exponent: number): number =>
  distance * (other / time) ** (1 / exponent);
