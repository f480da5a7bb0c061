/** Angle under which a figure needed mid-workout must appear, arcminutes: the preferred size of ISO 9241-3. */
export const KEY_ARCMINUTES = 20;

/** Nothing on a sheet has capitals lower than this, millimetres. */
export const LEAST_CAPITALS = 2.5;

/** Running text, a little above the least so that rounding cannot bring it below. Millimetres of capital height. */
export const TEXT_CAPITALS = 2.55;

/**
 * Height of capitals and figures that appear under an angle from a distance: h = 2 D tan(angle / 2).
 *
 * @param metres distance of the reader
 * @returns millimetres
 * @example Math.round(capitalsFor(20, 1.5) * 100) / 100 // => 8.73
 */
export const capitalsFor = (arcminutes: number, metres: number): number =>
  2 * metres * 1000 * Math.tan((arcminutes / 60 / 2) * (Math.PI / 180));
