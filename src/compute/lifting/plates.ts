import type { Competition } from "../../models/competition.ts";
import type { Bar, Gym } from "../../models/gym.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { PlateChange } from "../../models/plan/lifting.ts";
import { inKilograms, type Mass, type MassUnit, MASS_UNITS } from "../../models/quantity.ts";
import type { Sex } from "../../models/vocabulary.ts";
import type { Loading } from "../../models/workout.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { LOADING_CONSTANTS } from "./constants.ts";
import { exactInKilograms, exactMass, fromExact } from "./exact-mass.ts";
import {
  type Direction,
  makableLoads,
  type MakableLoads,
  nearestSide,
  platesOf,
  type SideLoad,
  totalOf,
} from "./makable-loads.ts";

/**
 * The bar somebody lifts with: one of their own kind before one for everyone, the first listed of several; without a
 * known sex one for everyone first. With a competition's rule the bar says what it counts as: as it weighs, or a
 * 15 kg bar as 35 lb.
 *
 * @throws Error when the gym has no bar (a checked gym has one).
 */
export function chooseBar(gym: Gym, sex: Sex | undefined, rule?: Competition["barCounts"]): Bar {
  const own = sex && gym.bars.find((bar) => bar.for === sex);
  const bar = own ?? gym.bars.find((candidate) => candidate.for === "everyone") ?? gym.bars[0];
  if (!bar) throw new Error(`${gym.id}: no bar to load`);
  return countedBar(bar, rule);
}

const FIFTEEN_KG = exactMass({ value: 15, unit: "kg" });

function countedBar(bar: Bar, rule: Competition["barCounts"]): Bar {
  const { countsAs, ...asWeighed } = bar;
  if (rule === "as-weighed") return asWeighed;
  if (rule === "15-kg-as-35-lb" && exactMass(bar.mass) === FIFTEEN_KG) {
    return { ...asWeighed, countsAs: { value: 35, unit: "lb" } };
  }
  return countsAs ? bar : asWeighed;
}

/**
 * A prescribed load put on the bar: with the plates of one side if it can be made exactly, as written or as the
 * alternative the rules also accept; else as prescribed, with the nearest loads below and above that can be made,
 * plates of both units considered.
 */
export function loadBar(gym: Gym, bar: Bar, mass: Mass, alternative?: Mass): BarLoad {
  const loads = makableLoads(gym, bar);
  for (const asked of alternative ? [mass, alternative] : [mass]) {
    const side = nearestSide(loads, exactMass(asked), "nearest");
    if (side && totalOf(loads, side) === exactMass(asked)) return barLoadOf(loads, side, asked.unit);
  }
  const below = nearestSide(loads, exactMass(mass), "down");
  const above = nearestSide(loads, exactMass(mass), "up");
  return {
    mass,
    kilograms: inKilograms(mass),
    pieces: 1,
    nearest: {
      ...(below && { below: massOfSide(loads, below) }),
      ...(above && { above: massOfSide(loads, above) }),
    },
  };
}

/** A load held in the hands or worn, without plates: `pieces` of `mass` each; `kilograms` is one piece too. */
export const heldLoad = (mass: Mass, pieces: number): BarLoad => ({
  mass,
  kilograms: inKilograms(mass),
  pieces,
});

/**
 * The nearest load that can be made, at or below, at or above, or on whichever side is nearer (the lighter of two
 * equally near). Plates of one unit are preferred unless mixing comes nearer by more than `worthMixing` kilograms.
 * Past the lightest or heaviest bar it is that bar.
 */
export function nearestLoad(
  gym: Gym,
  bar: Bar,
  kg: number,
  direction: Direction,
  overrides?: Readonly<Record<string, number>>,
): BarLoad {
  return nearestOf(makableLoads(gym, bar), kg, direction, overrides);
}

/** `nearestLoad` where the gym's loads are already listed. */
export function nearestOf(
  loads: MakableLoads,
  kg: number,
  direction: Direction,
  overrides?: Readonly<Record<string, number>>,
): BarLoad {
  const { worthMixing } = withOverrides(LOADING_CONSTANTS, overrides);
  const target = exactMass({ value: kg, unit: "kg" });
  const gap = (side: SideLoad | undefined): number =>
    side ? Math.abs(totalOf(loads, side) - target) : Infinity;
  const onSide = (units: readonly MassUnit[]): SideLoad | undefined =>
    nearestSide(loads, target, direction, units);
  const pure = MASS_UNITS.map((unit) => onSide([unit])).sort((a, b) => gap(a) - gap(b))[0];
  const any = onSide(["kg", "lb"]);
  const side =
    (gap(pure) <= gap(any) + exactMass({ value: worthMixing, unit: "kg" }) ? pure : any) ??
    nearestSide(loads, target, direction === "down" ? "up" : "down", ["kg", "lb"]);
  return barLoadOf(loads, side ?? { kg: 0, lb: 0 });
}

/** A side load as the plan shows it; `plates` where another way of making it than the fewest plates is meant. */
export function barLoadOf(
  loads: MakableLoads,
  side: SideLoad,
  unit: MassUnit = unitOfSide(loads, side),
  plates: readonly Mass[] = platesOf(loads, side),
): BarLoad {
  const { bar } = loads;
  const counted = bar.countsAs ?? bar.mass;
  const total = totalOf(loads, side);
  const collars = loads.empty - exactMass(counted);
  return {
    mass: tidy(fromExact(total, unit)),
    kilograms: exactInKilograms(total),
    pieces: 1,
    bar: counted,
    ...(bar.countsAs && { barMarked: bar.mass }),
    ...(collars > 0 && { collarsEach: tidy(fromExact(collars / 2, bar.mass.unit)) }),
    perSide: countPlates(plates),
  };
}

const massOfSide = (loads: MakableLoads, side: SideLoad): Mass =>
  tidy(fromExact(totalOf(loads, side), unitOfSide(loads, side)));

/** The unit its plates are marked in; with plates of both units, or none, that of the bar. */
function unitOfSide(loads: MakableLoads, side: SideLoad): MassUnit {
  if (side.lb > 0 && side.kg === 0) return "lb";
  if (side.kg > 0 && side.lb === 0) return "kg";
  return (loads.bar.countsAs ?? loads.bar.mass).unit;
}

/** Takes away what binary division leaves behind the ten-microgram, so that 225 lb reads 225. */
const tidy = (mass: Mass): Mass => ({ ...mass, value: Number(mass.value.toFixed(6)) });

/** Plates in loading order with equal neighbours counted. */
function countPlates(plates: readonly Mass[]): { plate: Mass; count: number }[] {
  const counted: { plate: Mass; count: number }[] = [];
  for (const plate of plates) {
    const last = counted.at(-1);
    if (last && last.plate.value === plate.value && last.plate.unit === plate.unit) last.count++;
    else counted.push({ plate, count: 1 });
  }
  return counted;
}

/** The plates of one side one by one, from the inside. */
export const listPlates = (load: BarLoad | undefined): readonly Mass[] =>
  (load?.perSide ?? []).flatMap(({ plate, count }) => Array.from({ length: count }, () => plate));

/**
 * What to take off and put on each side between two loads, and how long it takes: plates come off from the outside
 * until only those both loads share from the inside are left. A first pair takes the gym's plate-change time, each
 * further pair a share of it; a helper at the other end halves it. Where nothing is said, alone.
 * Without a load to come from, the bar is empty.
 */
export function changePlates(
  from: BarLoad | undefined,
  to: BarLoad,
  gym: Pick<Gym, "plateChange">,
  loading: Loading | "not-stated" = "not-stated",
  overrides?: Readonly<Record<string, number>>,
): PlateChange {
  const before = listPlates(from);
  const after = listPlates(to);
  const kept = sharedFromInside(before, after);
  const off = before.slice(kept).reverse();
  const on = after.slice(kept);
  return {
    off: [...off],
    on: [...on],
    seconds: changeSeconds(off.length + on.length, gym, loading, overrides),
  };
}

/** How many plates, from the inside, two loadings have in common. */
export function sharedFromInside(a: readonly Mass[], b: readonly Mass[]): number {
  const differs = a.findIndex((plate, at) => {
    const other = b[at];
    return plate.value !== other?.value || plate.unit !== other.unit;
  });
  return differs === -1 ? a.length : differs;
}

/** Seconds to move so many pairs of plates. */
export function changeSeconds(
  pairs: number,
  gym: Pick<Gym, "plateChange">,
  loading: Loading | "not-stated",
  overrides?: Readonly<Record<string, number>>,
): number {
  if (pairs === 0) return 0;
  const constants = withOverrides(LOADING_CONSTANTS, overrides);
  const first = gym.plateChange ?? constants.plateChangeAlone;
  const alone = first * (1 + (pairs - 1) * constants.furtherPairShare);
  return loading === "help-allowed" ? alone * constants.helpShare : alone;
}
