import type { Bar, Gym } from "../../models/gym.ts";
import type { Library, RecoveryOption } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Withholding } from "../cautions/withholding.ts";
import { allHold } from "../conditions/holds.ts";
import type { Situation } from "../conditions/situation.ts";
import { withMore } from "../conditions/situation.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { AFTER_CONSTANTS } from "./constants.ts";
import { planDay } from "./plan-day.ts";

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
  /** The athlete's own best unbroken set of a movement, where known. */
  readonly unbroken: (movement: string) => number | undefined;
  readonly cannot: readonly string[];
  /** Whether the athlete says how much they train. */
  readonly hoursAreStated: boolean;
  readonly overrides?: Readonly<Record<string, number>>;
};

const STEP_KINDS = ["cool-down", "refuel", "sleep"] as const;
type StepKind = (typeof STEP_KINDS)[number];

/**
 * What comes after: cool-down, refuelling by body mass and sleep, as their conditions hold, and the rest of the day by
 * the answer of the self-check, rest always among it.
 */
export function planAfter(input: PlanAfterInput): After {
  const numbers = withOverrides(AFTER_CONSTANTS, input.overrides);
  const situation = withMore(input.situation, { facts: { "sharp-pain": ["no"] } });
  const holding = input.library.recovery.filter((option) => allHold(option.when, situation).holds);
  const replaced = new Set(holding.flatMap((option) => option.insteadOf ?? []));
  const steps = STEP_KINDS.flatMap((kind) =>
    holding
      .filter((option) => option.kind === kind && !replaced.has(option.id))
      .sort(inOrder)
      .map((option) => stepFrom(option, kind, situation.numbers["body-mass"])),
  );
  return { steps, day: planDay({ ...input, situation }, numbers) };
}

const LAST = Number.MAX_SAFE_INTEGER;

/** By the place an option gives itself; of equals, what is only for some days stands before what is for every day. */
const inOrder = (one: RecoveryOption, other: RecoveryOption): number =>
  (one.order ?? LAST) - (other.order ?? LAST) ||
  other.when.length - one.when.length ||
  (one.id < other.id ? -1 : 1);

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
    // Nobody pours millilitres for each kilogram.
    ...(perBodyMass !== undefined &&
      (bodyMass !== undefined || perBodyMass.unit !== "mL") && { amount: amountFor(perBodyMass, bodyMass) }),
    source,
  };
}

/** The range for this body mass; for each kilogram where it is not known. */
function amountFor(
  { low, high, unit, of }: NonNullable<RecoveryOption["perBodyMass"]>,
  bodyMass: number | undefined,
): NonNullable<After["steps"][number]["amount"]> {
  const isKnown = bodyMass !== undefined;
  return {
    low: low * (bodyMass ?? 1),
    high: high * (bodyMass ?? 1),
    unit,
    ...(of !== undefined && { of }),
    perKilogram: !isKnown,
  };
}
