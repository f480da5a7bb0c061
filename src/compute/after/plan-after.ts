import type { Bar, Gym } from "../../models/gym.ts";
import type { Library, RecoveryOption } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Withholding } from "../cautions/withhold.ts";
import { allHold } from "../conditions/holds.ts";
import type { Situation } from "../conditions/situation.ts";
import { withMore } from "../conditions/situation.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { AFTER_CONSTANTS } from "./constants.ts";
import { planOptions } from "./plan-options.ts";
import { SELF_CHECK } from "./self-check.ts";

export type After = NonNullable<Plan["after"]>;

export type PlanAfterInput = {
  readonly library: Library;
  readonly gym: Gym;
  readonly bar: Bar;
  /** The situation of the whole workout, with what comes next. */
  readonly situation: Situation;
  readonly withholding: Pick<Withholding, "stresses" | "forbids">;
  readonly best: (
    movement: string,
  ) =>
    | { readonly kilograms: number; readonly basis: "tested" | "estimated" | "related" | "level" | "assumed" }
    | undefined;
  readonly overrides?: Readonly<Record<string, number>>;
};

const STEP_KINDS = ["cool-down", "refuel", "sleep"] as const;
type StepKind = (typeof STEP_KINDS)[number];

/**
 * What comes after: cool-down, refuelling by body mass and sleep, as their conditions hold; the self-check; and what may
 * be done on the same day by its answer, rest always among it.
 */
export function planAfter(input: PlanAfterInput): After {
  const numbers = withOverrides(AFTER_CONSTANTS, input.overrides);
  const situation = withMore(input.situation, { facts: { "sharp-pain": ["no"] } });
  const steps = STEP_KINDS.flatMap((kind) =>
    input.library.recovery
      .filter((option) => option.kind === kind && allHold(option.when, situation).holds)
      .sort(moreParticularFirst)
      .map((option) => stepFrom(option, kind, situation.numbers["body-mass"])),
  );
  return { steps, selfCheck: SELF_CHECK, options: planOptions({ ...input, situation }, numbers) };
}

/** What is only for some days stands before what is for every day. */
const moreParticularFirst = (one: RecoveryOption, other: RecoveryOption): number =>
  other.when.length - one.when.length || (one.id < other.id ? -1 : 1);

function stepFrom(
  option: RecoveryOption,
  kind: StepKind,
  bodyMass: number | undefined,
): After["steps"][number] {
  const { id, title, say, minutes, perBodyMass, source } = option;
  return {
    id,
    kind,
    title,
    say,
    ...(minutes !== undefined && { minutes }),
    ...(perBodyMass !== undefined && { amount: amountFor(perBodyMass, bodyMass) }),
    source,
  };
}

/** The range for this body mass; for each kilogram where it is not known. */
function amountFor(
  { low, high, unit }: NonNullable<RecoveryOption["perBodyMass"]>,
  bodyMass: number | undefined,
): NonNullable<After["steps"][number]["amount"]> {
  return bodyMass === undefined
    ? { low, high, unit: `${unit} for each kg of body mass` }
    : { low: low * bodyMass, high: high * bodyMass, unit };
}
