/**
 * The cost per second at which every movement is equally worth speeding up, for one held effort.
 *
 * Least time for a given reserve makes the marginal cost equal: x^kappa (1 + drift used) = effort / (kappa - 1), where the effort is
 * one number for the whole workout (Lagrange multiplier, transformed). That holds where work spends the reserve. Below the
 * critical rate a second saved refills only the share `worth` of itself, so slowing down pays less: there the condition is
 * (1 + effort - worth) / (worth (kappa - 1)), and between the two the movement is held at the critical rate (cost 1). With a worth of
 * 1 both conditions are the same.
 *
 * @param effort one number for the whole workout, over 0
 * @param kappa how dear the movement is to speed up, over 1
 * @param worth share from 0 (excluded) to 1
 * @example aimedCost(0.6, 1.5, 0.4) // => 1.2
 */
export function aimedCost(effort: number, kappa: number, worth: number): number {
  const spending = effort / (kappa - 1);
  if (spending >= 1) return spending;
  const saving = (1 + effort - worth) / (worth * (kappa - 1));
  return Math.max(spending, Math.min(1, saving));
}
