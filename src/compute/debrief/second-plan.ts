import type { SecondPlan } from "../../models/plan/debrief.ts";
import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";

/**
 * What changes from the plan of the first try to that of the second: the numbers of both where they differ. Undefined where the two plans
 * cannot be set side by side, as where one of them was not made.
 */
export function secondPlan(before: PartPlan, now: PartPlan): SecondPlan | undefined {
  const lift = [before.lifting?.lifts[0], now.lifting?.lifts[0]] as const;
  if (lift[0] && lift[1]) {
    return {
      target: { before: lift[0].expected.target, now: lift[1].expected.target },
      rounds: [],
      sets: [],
      loads: changedLoads(lift[0].attempts, lift[1].attempts),
    };
  }
  const [first, second] = [before.pacing, now.pacing];
  if (!first || !second || first.score !== second.score) return undefined;
  return {
    target: { before: first.result.target, now: second.result.target },
    ...(first.ceiling &&
      second.ceiling && { ceiling: { before: first.ceiling.seconds, now: second.ceiling.seconds } }),
    rounds: sameRounds(first, second),
    sets: changedSets(first, second),
    loads: [],
  };
}

/** Clocks of both plans at the end of each round, from two rounds on, where both have the same rounds. */
function sameRounds(before: PlannedPacing, now: PlannedPacing): SecondPlan["rounds"] {
  const same =
    before.rounds.length === now.rounds.length &&
    before.rounds.every(({ label }, at) => now.rounds[at]?.label === label);
  if (!same || before.rounds.length < 2) return [];
  return before.rounds.map(({ label, end }, at) => ({ label, before: end, now: now.rounds[at]?.end ?? end }));
}

/** The first visit to each movement whose sets are not the same in both. */
function changedSets(before: PlannedPacing, now: PlannedPacing): SecondPlan["sets"] {
  const changed = new Map<string, SecondPlan["sets"][number]>();
  for (const row of before.rows) {
    const other = now.rows.find(({ movement, round }) => movement === row.movement && round === row.round);
    if (row.movement === undefined || !other || changed.has(row.movement)) continue;
    const [was, is] = [amountsOf(row), amountsOf(other)];
    if (was.length === is.length && was.every((amount, at) => amount === is[at])) continue;
    const { movement, name, round } = row;
    changed.set(movement, { movement, name, round, before: was, now: is });
  }
  return [...changed.values()];
}

const amountsOf = ({ sets }: PlannedPacing["rows"][number]): number[] => sets.map(({ amount }) => amount);

type Attempts = NonNullable<PartPlan["lifting"]>["lifts"][number]["attempts"];

function changedLoads(before: Attempts, now: Attempts): SecondPlan["loads"] {
  return before.flatMap(({ number, load }, at) => {
    const other = now[at]?.load;
    const changed = other !== undefined && other.mass.value !== load.mass.value;
    return changed ? [{ number, before: load.mass, now: other.mass }] : [];
  });
}
