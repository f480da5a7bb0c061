/** Something that takes time in a warm-up. Seconds. */
export type Stretch = {
  readonly id: string;
  readonly shortest: number;
  readonly usual: number;
  /** 1 is dropped last; what is never dropped has 0. */
  readonly priority: number;
};

export type Fitted = {
  /** Seconds of every stretch that stays, by id. */
  readonly times: ReadonlyMap<string, number>;
  /** Ids of what found no room, in the order given. */
  readonly dropped: readonly string[];
};

const STEP = 60;

/**
 * Fits stretches into a time. Everything at its shortest first; while that is too long, what has the highest priority
 * number goes (of equals the last); then the time left over is given out minute by minute, each to what is furthest
 * below its usual time in proportion, of equals the most needed. What has priority 0 always stays.
 */
export function fitTime(stretches: readonly Stretch[], time: number): Fitted {
  let kept = [...stretches];
  const shortest = (): number => kept.reduce((sum, each) => sum + each.shortest, 0);
  while (shortest() > time) {
    const last = lastToKeep(kept);
    if (last === undefined) break;
    kept = kept.filter((each) => each !== last);
  }
  return {
    times: shareOut(kept, time - shortest()),
    dropped: stretches.filter((each) => !kept.includes(each)).map((each) => each.id),
  };
}

function shareOut(kept: readonly Stretch[], spare: number): ReadonlyMap<string, number> {
  const times = new Map(kept.map((each) => [each.id, each.shortest]));
  const timeOf = (each: Stretch): number => times.get(each.id) ?? 0;
  for (let left = spare; left >= STEP; left -= STEP) {
    const growing = kept.filter((each) => timeOf(each) + STEP <= each.usual);
    const [next] = growing.sort(
      (one, other) => timeOf(one) / one.usual - timeOf(other) / other.usual || one.priority - other.priority,
    );
    if (next === undefined) break;
    times.set(next.id, timeOf(next) + STEP);
  }
  return times;
}

/** What goes next: the highest priority number, of equals the last; undefined when all that is left has to stay. */
function lastToKeep(kept: readonly Stretch[]): Stretch | undefined {
  const highest = Math.max(...kept.map((each) => each.priority));
  return highest <= 0 ? undefined : kept.findLast((each) => each.priority === highest);
}
