import type { Range } from "../../models/plan/basics.ts";
import { normalQuantile } from "../../numerics/normal.ts";

const TENTH = normalQuantile(0.9);

/**
 * Relative standard deviation of a range: its tenth percentiles lie twice 1.2816 of them apart.
 *
 * @param least no range is taken to be surer than this
 */
export function spreadOf({ cautious, hopeful }: Range, least: number): number {
  const ratio = cautious > 0 && hopeful > 0 ? Math.abs(Math.log(cautious / hopeful)) : 0;
  return Math.max(least, ratio / (2 * TENTH));
}
