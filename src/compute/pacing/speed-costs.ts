import type { Pacing } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";
import { workTime } from "../search/day.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** How much quicker the example is: a tenth. */
const QUICKER = PACING_FIXED.hurryExample.value;
/** A movement must take this share of the work time to be worth hurrying in. Judgement. */
const ENOUGH_TIME = PACING_FIXED.hurryTime.value;
/** Costs nearer than this are the same to an athlete. Judgement. */
const APART = PACING_FIXED.hurryApart.value;

/**
 * The movements of a part in which speed is cheapest and dearest: by how much the effort of a unit grows when it is done a tenth
 * quicker, which is quicker^(κ − 1) − 1, as effort by the second grows with rate^κ. Nothing where they differ too little to matter.
 */
export function speedCosts({ bench: { track }, log }: Solved): Pacing["speed"] {
  const movements = new Map<string, { time: number; kappa: number }>();
  let all = 0;
  for (let i = 0; i < track.length; i += 1) {
    const name = track.tasks[track.task[i] as number]?.movement.name;
    if (name === undefined || (log.done[i] as number) <= 0) continue;
    const time = workTime(track, log, i);
    const known = movements.get(name) ?? { time: 0, kappa: 0 };
    movements.set(name, { time: known.time + time, kappa: Math.max(known.kappa, track.kappa[i] as number) });
    all += time;
  }
  const ranked = [...movements]
    .filter(([, { time }]) => time >= ENOUGH_TIME * all)
    .map(([name, { kappa }]) => ({ name, cost: QUICKER ** (kappa - 1) - 1 }))
    .toSorted((one, other) => one.cost - other.cost);
  const [cheapest, dearest] = [ranked[0], ranked.at(-1)];
  if (cheapest === undefined || dearest === undefined || dearest.cost - cheapest.cost < APART)
    return undefined;
  return { cheapest, dearest };
}
