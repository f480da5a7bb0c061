/**
 * Distance in one time from the distance in another: time grows with distance to a power (Riegel 1981, exponent 1.06, from about 3.5 to 230
 * minutes).
 *
 * @example riegelDistance(5000, 1200, 2501.9, 1.06) // => 10000.0...
 */
export const riegelDistance = (distance: number, time: number, other: number, exponent: number): number =>
  distance * (other / time) ** (1 / exponent);
