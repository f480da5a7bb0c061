import type { Debrief } from "../../models/plan/debrief.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Bias, Review, Reviewable, ReviewedResult } from "../../models/plan/review.ts";
import { LEVELS, type Level } from "../../models/vocabulary.ts";

type One = {
  readonly result: ReviewedResult;
  /** Natural logarithm of done over planned as time; of loads that of planned over done. */
  readonly slower: number;
  readonly movements: readonly { readonly name: string; readonly slower: number }[];
};

/**
 * How good the plans of a workout were: for each part the result of everybody who logged one against their plan, inside its range or
 * not, and the bias by level and by movement. Scaled versions are listed and counted in nothing. Parts without a result are left
 * out.
 */
export function reviewPlans(plans: readonly Reviewable[]): readonly Review[] {
  const parts = [...new Set(plans.flatMap((plan) => plan.parts.map(({ name }) => name)))];
  return parts.flatMap((part) => {
    const all = plans.flatMap((plan) =>
      (plan.debriefs ?? []).filter((one) => one.part === part).map((one) => reviewed(plan, one)),
    );
    return all.length === 0 ? [] : [reviewOf(part, all)];
  });
}

function reviewed(plan: Reviewable, debrief: Debrief | NonNullable<Plan["debriefs"]>[number]): One {
  const { unit, planned, done, standing, version, score, perRound, logged } = debrief;
  const slower = unit === "seconds" ? Math.log(done / planned) : Math.log(planned / done);
  const level = LEVELS.find((one) => one === plan.athlete.level) ?? "regular";
  return {
    result: {
      name: plan.athlete.name,
      level,
      unit,
      planned,
      done,
      standing,
      scaled: version === "scaled",
      score,
      perRound,
      logged,
    },
    slower: Number.isFinite(slower) ? slower : 0,
    movements: version === "scaled" ? [] : byMovement(plan, debrief),
  };
}

/** How much longer than the rest of the work each movement took, from lines that were timed. */
function byMovement(
  plan: Reviewable,
  { part, pieces }: Pick<NonNullable<Plan["debriefs"]>[number], "part" | "pieces">,
): One["movements"] {
  const rows = plan.parts.find(({ name }) => name === part)?.pacing?.rows ?? [];
  if (pieces.length < 2 || !pieces.every(({ kind }) => kind === "row")) return [];
  const lines = Map.groupBy(pieces, ({ row }) => rows.find(({ index }) => index === row)?.name ?? "");
  const ratio = (some: typeof pieces): number =>
    Math.log(some.reduce((sum, { done }) => sum + done, 0) / some.reduce((sum, one) => sum + one.planned, 0));
  const whole = ratio(pieces);
  return lines.size < 2 ? [] : [...lines].map(([name, own]) => ({ name, slower: ratio(own) - whole }));
}

function reviewOf(part: string, all: readonly One[]): Review {
  const counted = all.filter(({ result }) => !result.scaled);
  const lines = Map.groupBy(
    counted.flatMap(({ movements }) => movements),
    ({ name }) => name,
  );
  return {
    part,
    results: all.map(({ result }) => result),
    counted: counted.length,
    inside: counted.filter(({ result }) => result.standing === "inside").length,
    all: biasOf(counted),
    size: Math.expm1(counted.reduce((sum, { slower }) => sum + Math.abs(slower), 0) / (counted.length || 1)),
    levels: LEVELS.flatMap((level: Level) => {
      const own = counted.filter(({ result }) => result.level === level);
      return own.length === 0 ? [] : [{ level, ...biasOf(own) }];
    }),
    movements: [...lines].map(([name, own]) => ({ name, ...biasOf(own) })),
  };
}

const biasOf = (some: readonly { readonly slower: number }[]): Bias => ({
  slower: Math.expm1(some.reduce((sum, { slower }) => sum + slower, 0) / (some.length || 1)),
  count: some.length,
});
