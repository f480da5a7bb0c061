import type { Plan } from "../models/plan/plan.ts";
import { inKilograms, massIn, type Mass } from "../models/quantity.ts";
import { sayMass, sayMassFigure } from "./mass.ts";
import { NO_BREAK_SPACE, sayList } from "./number.ts";

type BarLoad = Plan["loads"][number]["load"];
type Lift = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number];
type PlateChange = NonNullable<Lift["attempts"][number]["change"]>;

/** Plates joined by plus; the unit is said once where all are of one unit, else at each. */
function joinPlates(plates: readonly { readonly plate: Mass; readonly count: number }[]): string {
  const units = new Set(plates.map(({ plate }) => plate.unit));
  const words = plates.map(
    ({ plate, count }) =>
      `${count > 1 ? `${count}×` : ""}${units.size > 1 ? sayMass(plate) : sayMassFigure(plate)}`,
  );
  const [only] = units;
  return units.size === 1 && only ? `${words.join(" + ")}${NO_BREAK_SPACE}${only}` : words.join(" + ");
}

/**
 * The plates of one side from the inside out, collar last. Nothing for a load without a bar.
 *
 * Reads `20 + 2.5 + 1.5 kg a side`.
 */
export function sayPerSide(load: BarLoad): string | undefined {
  if (!load.perSide) return undefined;
  const collar = load.collarsEach ? `, then the ${sayMass(load.collarsEach)} collar` : "";
  return load.perSide.length === 0 ? `empty bar${collar}` : `${joinPlates(load.perSide)} a side${collar}`;
}

/** The plates of one side alone, for a narrow place: figures only. Reads `20 + 2.5 + 1.5`. */
export function sayPlateFigures(load: BarLoad): string | undefined {
  if (!load.perSide) return undefined;
  if (load.perSide.length === 0) return "bar only";
  const units = new Set(load.perSide.map(({ plate }) => plate.unit));
  return load.perSide
    .map(
      ({ plate, count }) =>
        `${count > 1 ? `${count}×` : ""}${units.size > 1 ? sayMass(plate) : sayMassFigure(plate)}`,
    )
    .join(" + ");
}

/** What to change on each side from the lift before. Reads `off 1.5 kg, on 2.5 and 1.5 kg, each side`. */
export function sayPlateChange(change: PlateChange): string {
  const step = (verb: string, plates: readonly Mass[]): readonly string[] => {
    const unit = plates[0]?.unit ?? "kg";
    const same = plates.every((plate) => plate.unit === unit);
    const words = sayList(plates.map(same ? sayMassFigure : sayMass));
    return plates.length === 0 ? [] : [`${verb} ${words}${same ? NO_BREAK_SPACE + unit : ""}`];
  };
  const steps = [...step("off", change.off), ...step("on", change.on)];
  return steps.length === 0 ? "no change of plates" : `${steps.join(", ")}, each side`;
}

/** The same in a narrow place beside the plates, whose unit it shares; nothing where all stay. Reads `off 1.5, on 2.5 + 1.5`. */
export function sayPlateStep({ off, on }: PlateChange): string | undefined {
  const mixed = new Set([...off, ...on].map(({ unit }) => unit)).size > 1;
  const step = (verb: string, plates: readonly Mass[]): readonly string[] =>
    plates.length === 0 ? [] : [`${verb} ${plates.map(mixed ? sayMass : sayMassFigure).join(" + ")}`];
  const steps = [...step("off", off), ...step("on", on)];
  return steps.length === 0 ? undefined : steps.join(", ");
}

/**
 * Says that the prescribed load cannot be made here, and what can, in the unit of the plates and, where that is another, in the one prescribed.
 * Nothing when it can. The heavier one is never less than what the rules ask for.
 */
export function sayNearest(load: BarLoad): string | undefined {
  const { below, above } = load.nearest ?? {};
  const near = [below, above].filter((mass) => mass !== undefined);
  if (near.length === 0) return undefined;
  const said = near.map((mass) => {
    const asked = massIn(load.mass.unit, inKilograms(mass));
    return mass.unit === asked.unit ? sayMass(mass) : `${sayMass(mass)} (${sayMass(asked)})`;
  });
  const rule = below && above ? "; the lighter one only where the rules allow it" : "";
  return `Cannot be made with these plates: nearest ${sayList(said, "or")}${rule}`;
}
