import type { Pacing } from "../../models/plan/pacing.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import { rolesToTell } from "../conditions/roles-to-tell.ts";
import { changedRounds } from "../early-splits/changed-rounds.ts";
import type { Difficulty } from "../early-splits/judge-difficulty.ts";
import { isYoung } from "../capacity/capacity.ts";
import { mayLack } from "../capacity/may-lack.ts";
import type { PacedPart } from "../pacing/paced-part.ts";
import type { EarlyShape } from "./early-shape.ts";
import type { PlanContext } from "./plan-context.ts";
import { tellDifficulty } from "./tell-difficulty.ts";

/** What was seen of others in a part, and the part as planned without it and with it, both without what the coach set. */
type Seen = {
  readonly early: EarlyShape | undefined;
  readonly difficulty: Difficulty | undefined;
  readonly alone: PacedPart | undefined;
  readonly asSeen: PacedPart | undefined;
};

/** The pace as a plan tells it, with what performances of others changed, whatever the coach set. */
export function toldPacing(pacing: Pacing, context: PlanContext, seen: Seen): PartPlan["pacing"] {
  const { early, difficulty } = seen;
  const [before, after] = [pacingOf(seen.alone), pacingOf(seen.asSeen)];
  const changed = before && after && changedRounds(before.rounds, after.rounds);
  return {
    ...pacing,
    outOfReach: pacing.outOfReach.map((each) => withNames(each, context)),
    roles: rolesToTell(pacing.roles, pacing.rows, context.library.movements),
    // The pace knows of reps only; what they are worth in loads the lifts tell.
    ...(pacing.score === "load-times-reps" && { score: "reps" as const }),
    ...(early?.seen && { earlySplits: { ...early.seen, ...(changed && { changed }) } }),
    ...(difficulty &&
      before &&
      after && { difficulty: tellDifficulty(difficulty, before, after, context.overrides) }),
  };
}

/** Work out of reach with the names of what to ask for instead: what somebody of the level has the skill for. */
function withNames(
  each: Pacing["outOfReach"][number],
  { athlete, library, date }: Pick<PlanContext, "athlete" | "library" | "date">,
): Pacing["outOfReach"][number] {
  if (each.load && isYoung(athlete, date)) return { ...each, untried: true };
  if (!each.skill) return each;
  const easier = each.skill.easier.flatMap((id) => {
    const movement = library.movements.get(id);
    return movement && !mayLack(athlete.level, athlete.sex, movement) ? [movement.plural] : [];
  });
  return { ...each, skill: { easier } };
}

const pacingOf = (paced: PacedPart | undefined): Pacing | undefined =>
  paced?.kind === "paced" ? paced.pacing : undefined;
