import type { Movement } from "../../models/movement.ts";
import type { PartPlan, Plan, PlannedRow } from "../../models/plan/plan.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { CHOICE_CONSTANTS } from "./constants.ts";

type Choice = Plan["choices"][number];
type Lift = NonNullable<PartPlan["lifting"]>["lifts"][number];
/** What of a planned part tells how long it spends on which movement. */
type PlannedPart = {
  readonly name: string;
  readonly pacing?:
    { readonly rows: readonly Pick<PlannedRow, "kind" | "movement" | "start" | "end">[] } | undefined;
  readonly lifting?: { readonly lifts: readonly Pick<Lift, "movement" | "others">[] } | undefined;
};

export type RankInput = {
  readonly choices: readonly Choice[];
  readonly movements: ReadonlyMap<string, Movement>;
  readonly parts: readonly PlannedPart[];
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Marks the choices on which little of this athlete's result hangs, so that a brief carries the few that decide.
 *
 * A choice is worth the share of its part's planned time its movements take, less where the movement says that little
 * hangs on it or where nothing of the athlete's decided it, more where it is close. What a stated limit decided is
 * never minor. The order stays that of the work; of equals the earlier one is told.
 */
export function rankChoices(input: RankInput): readonly Choice[] {
  const { choices, parts, overrides } = input;
  const { mainChoices, mainChoicesOfPart } = withOverrides(CHOICE_CONSTANTS, overrides);
  const ranked = choices
    .map((choice) => ({ choice, worth: worthOf(choice, input) }))
    .sort((one, other) => other.worth - one.worth);
  const told = new Map(parts.map(({ name }) => [name, 0]));
  const main = new Set<Choice>();
  for (const { choice } of ranked) {
    const fits =
      choice.parts.length === 0 || choice.parts.some((part) => (told.get(part) ?? 0) < mainChoicesOfPart);
    if (choice.decidedBy !== "limit" && (!fits || main.size >= mainChoices)) continue;
    main.add(choice);
    for (const part of choice.parts) told.set(part, (told.get(part) ?? 0) + 1);
  }
  return choices.map((choice) => (main.has(choice) ? choice : { ...choice, minor: true }));
}

function worthOf(choice: Choice, { movements, parts, overrides }: RankInput): number {
  const weight = withOverrides(CHOICE_CONSTANTS, overrides);
  const ids = [choice.movement, ...(choice.alsoFor ?? []).map(({ movement }) => movement)];
  const share = Math.max(
    0,
    ...parts.filter(({ name }) => choice.parts.includes(name)).map((part) => shareOf(ids, part)),
  );
  const offered = movements.get(choice.movement)?.choices.find(({ id }) => id === choice.id);
  return (
    share *
    (offered?.worth === "little" ? weight.worthOfLittle : 1) *
    (choice.test !== undefined || choice.other !== undefined ? weight.worthOfUnsure : 1) *
    (choice.decidedBy === "default" ? weight.worthOfUsual : 1)
  );
}

/** Share of a part's work, by its planned time, in which movements are done; a lift for load is all of its part. */
function shareOf(ids: readonly string[], { pacing, lifting }: PlannedPart): number {
  const isLifted = (lifting?.lifts ?? []).some(({ movement, others = [] }) =>
    [movement, ...others].some((id) => ids.includes(id)),
  );
  if (isLifted) return 1;
  const work = (pacing?.rows ?? []).filter(({ kind }) => kind === "work");
  const time = (rows: typeof work): number => rows.reduce((sum, row) => sum + row.end - row.start, 0);
  const own = work.filter(({ movement }) => movement !== undefined && ids.includes(movement));
  return work.length === 0 ? 0 : time(own) / Math.max(time(work), Number.EPSILON);
}
