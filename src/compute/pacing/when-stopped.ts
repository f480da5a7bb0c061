import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { PartInput } from "./paced-part.ts";
import { isAllDone } from "./planned-amounts.ts";
import type { Falls } from "./solve-course.ts";
import type { Solved } from "../search/solve-part.ts";

/** How a plan ends. */
export function endingOf(solved: Solved, falls: Falls): Pacing["ending"] {
  const { state, bench } = solved;
  if (falls === "intervals" && state.stopped === "no") return "fills-the-time";
  const capped = falls === "cap";
  if (state.stopped === "deadline") return "eliminated";
  if (capped) return "stopped-by-cap";
  if (state.stopped === "wall") return "stopped-by-cap";
  const fills = Number.isFinite(bench.horizon) && state.stopped === "horizon";
  // Work that is left undone in its interval is not made up for later.
  return fills || !isAllDone(solved) ? "fills-the-time" : "finishes";
}

/**
 * Where a plan that does not finish stops, and what to go for. Reps are worth more than a tie-break wherever more reps are possible;
 * the tie-break is all that is left to win where the athlete stands before something they cannot do.
 */
export function whenStoppedOf(
  { state, bench }: Solved,
  rows: readonly PacingRow[],
  ending: Pacing["ending"],
  ends: number | undefined,
): Pacing["whenStopped"] {
  if (ending !== "stopped-by-cap" && ending !== "eliminated") return undefined;
  const last = rows.at(-1);
  const atWall = bench.track.wall[state.at] === 1;
  // What is waited before a wall is no work done, and may be used for something else.
  const worked = rows.findLast(({ kind }) => kind === "work")?.end ?? 0;
  const at = atWall ? Math.min(state.clock, worked) : state.clock;
  return {
    at,
    scoreDone: last?.scoreDone ?? 0,
    ...(last && { row: last.index }),
    atWall,
    ...(atWall && ends !== undefined && ends > at ? { left: ends - at } : {}),
    advice: atWall && rows.some((row) => row.tieBreak) ? "tie-break" : "most-reps",
  };
}

/** What the plan comes to and the athlete cannot do, each once, in order. */
export function outOfReachOf(
  { state, bench: { track } }: Solved,
  { loadBar }: PartInput,
): Pacing["outOfReach"] {
  const seen = new Set<number>();
  const found: Pacing["outOfReach"] = [];
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const item = track.items[i];
    const task = track.task[i] as number;
    if (track.wall[i] !== 1 || item?.kind !== "effort" || seen.has(task)) continue;
    seen.add(task);
    const movement = track.tasks[task]?.movement ?? item.movement;
    const capacity = track.tasks[task]?.capacity;
    const { loadShare, unsure } = capacity ?? {};
    found.push({
      name: movement.name,
      plural: movement.plural,
      unit: item.unit,
      ...(item.load && !item.load.athletesChoice ? { load: loadBar(item.load, movement) } : {}),
      ...(unsure ? { skill: { easier: [...movement.easier] } } : {}),
      ...(loadShare === undefined ? {} : { share: loadShare }),
      ...(capacity?.possible && item.unbroken && item.amount.kind === "counted"
        ? { inOneSet: { asked: item.amount.amount, best: Math.floor(capacity.unbroken) } }
        : {}),
    });
  }
  return found;
}
