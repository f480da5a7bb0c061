import type { PacingRow } from "../models/plan/pacing.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayLoad } from "./mass.ts";
import { sayPlateChange } from "./plates.ts";
import { sayDuration } from "./time.ts";

/** A wait shorter than this is a few breaths, seconds. */
const A_BREATH = 20;

type Row = Pick<PacingRow, "why" | "start" | "end"> & {
  readonly change?: Parameters<typeof sayPlateChange>[0] | undefined;
  readonly load?: Parameters<typeof sayLoad>[0] | undefined;
};

/**
 * A row in which nothing is counted: a rest the workout sets, a wait the plan sets, or plates to change. Reads `rest 1:40`, `stand
 * 40 s before the next rep`, or `change to 61 kg: on 5 and 2.5 kg, each side; 24 s`.
 */
export function sayRestRow({ why, start, end, change, load }: Row, units: MassUnit): string {
  const time = sayDuration(end - start);
  if (why === "plates" && change && load) {
    return `change to ${sayLoad(load, units)}: ${sayPlateChange(change)}; ${time}`;
  }
  if (why === "begun") return `begin the next: no whole rep fits into the last ${time}`;
  if (why === "skipped") return `rest ${time}: what stands here is not planned`;
  if (why !== "stand") return `rest ${time}`;
  return end - start < A_BREATH ? `breathe ${time} before the next rep` : `stand ${time} before the next rep`;
}
