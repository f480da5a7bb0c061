import type { PlannedPart } from "../conditions/situation-of.ts";
import { seconds } from "../../models/quantity.ts";
import { GAP_RUNGS, type WarmUpNumbers } from "./constants.ts";
import { easyLoad } from "./easy-load.ts";
import type { WarmUp, WarmUpInput } from "./plan-warm-up.ts";
import { rehearsedEfforts } from "./primer-words.ts";

type Gap = WarmUp["gaps"][number];
/** What a gap is planned from. */
type GapInput = Pick<WarmUpInput, "parts" | "gym" | "bar"> & {
  readonly withholding: Pick<WarmUpInput["withholding"], "noMaxLift">;
};
type GapStep = Gap["steps"][number];

/** Where a part begins long after the work before it: the part, when that work ends and when the first lift or rep is due. */
type Between = { readonly part: PlannedPart; readonly from: number; readonly at: number };

/** Where a part goes on long after the work before it: the part as it goes on, and when later rests begin that are alike. */
type Inside = Between & { readonly inside: true; readonly again: readonly number[] };

/** The parts that begin so long after the work before them that a body cools down. Clocks of the workout. */
export function gapsBetween(parts: readonly PlannedPart[], numbers: WarmUpNumbers): readonly Between[] {
  return parts.flatMap((part, index): readonly Between[] => {
    const before = parts[index - 1];
    if (before === undefined || (part.lifting === undefined && part.pacing === undefined)) return [];
    const from = endOf(before);
    const first = part.pacing === undefined ? (part.lifting?.lifts[0]?.attempts[0]?.clock ?? 0) : 0;
    const at = part.start.clock + first;
    return at - from >= numbers.longGap ? [{ part, from, at }] : [];
  });
}

/** The rests inside a part in which a body cools down; those as long as the first, before the same work, are told with it. */
function gapsInside(part: PlannedPart, numbers: WarmUpNumbers): readonly Inside[] {
  const found: Inside[] = [];
  for (const next of [...restsOf(part, numbers), ...betweenLifts(part, numbers)]) {
    const alike = found.find((one) => Math.abs(one.at - one.from - (next.at - next.from)) < ALIKE);
    if (alike) found[found.indexOf(alike)] = { ...alike, again: [...alike.again, next.from] };
    else found.push({ ...next, inside: true, again: [] });
  }
  return found;
}

/** Rests whose lengths differ by less than this are alike, seconds. */
const ALIKE = 60;

/** Long rests of a pace, each with the part as it goes on after it. */
function restsOf(part: PlannedPart, { longGap }: WarmUpNumbers): readonly Between[] {
  const { pacing, start } = part;
  if (!pacing) return [];
  const { rows } = pacing;
  return rows.flatMap((row, at): readonly Between[] => {
    if (row.kind !== "rest" || row.end - row.start < longGap || rows[at + 1] === undefined) return [];
    const goesOn = { ...part, pacing: { ...pacing, rows: rows.slice(at + 1) } };
    return [{ part: goesOn, from: start.clock + row.start, at: start.clock + row.end }];
  });
}

/** Long waits between two attempts at one lift. */
function betweenLifts(part: PlannedPart, { longGap }: WarmUpNumbers): readonly Between[] {
  const { lifting, pacing, start } = part;
  const [lift] = lifting?.lifts ?? [];
  if (!lifting || !lift || pacing) return [];
  return lift.attempts.flatMap((attempt, at): readonly Between[] => {
    const next = lift.attempts[at + 1];
    if (next === undefined || next.clock - attempt.clock < longGap) return [];
    const goesOn = {
      ...part,
      lifting: { ...lifting, lifts: [{ ...lift, attempts: lift.attempts.slice(at + 1) }] },
    };
    return [{ part: goesOn, from: start.clock + attempt.clock, at: start.clock + next.clock }];
  });
}

/** Clock of the workout at which the work of a part is over: lifts count to the last attempt. */
function endOf({ start, pacing, lifting }: PlannedPart): number {
  const lifts = (lifting?.lifts ?? []).flatMap(({ attempts }) => attempts.map(({ clock }) => clock));
  return start.clock + (pacing?.duration ?? Math.max(0, ...lifts));
}

/**
 * What to do in every long gap of a workout, counted back from what comes next: come down, keep warm, move again, then build the lift or
 * rehearse the work, and rest. The build stays light and short: the first one is only woken up again.
 */
export function planGaps(input: GapInput, numbers: WarmUpNumbers): Gap[] {
  const between = gapsBetween(input.parts, numbers).map((gap) => gapOf(gap, input, numbers));
  const inside = input.parts
    .flatMap((part) => gapsInside(part, numbers))
    .map((gap): Gap => {
      const again = gap.again.length > 0 ? { again: gap.again.map(seconds) } : {};
      return { ...gapOf(gap, input, numbers), inside: true, ...again };
    });
  return [...between, ...inside].sort((one, other) => one.from - other.from);
}

function gapOf({ part, from, at }: Between, input: GapInput, numbers: WarmUpNumbers): Gap {
  const length = at - from;
  const lift = input.withholding.noMaxLift || part.pacing ? undefined : part.lifting?.lifts[0];
  const hard = lift ? buildAgain(lift, length, input, numbers) : rehearsal(part, numbers);
  const share = numbers.gapShare * length;
  const busy = hard[0]?.before ?? numbers.gapRest;
  const move = stepBefore("move-again", busy, Math.min(numbers.gapMoveAgain, share));
  const down: GapStep = {
    kind: "come-down",
    before: length,
    lasts: Math.min(numbers.gapComeDown, share),
    sets: [],
  };
  const warm = length - down.lasts - move.before;
  return {
    part: part.name,
    from,
    at,
    ...(lift && { lift: { movement: lift.movement, name: lift.name } }),
    steps: [down, ...(warm > 0 ? [stepBefore("keep-warm", move.before, warm)] : []), move, ...hard],
  };
}

/** A step that ends so many seconds before what comes next. */
const stepBefore = (kind: GapStep["kind"], ends: number, lasts: number): GapStep => ({
  kind,
  before: ends + lasts,
  lasts,
  sets: [],
});

type Lift = NonNullable<PlannedPart["lifting"]>["lifts"][number];

function buildAgain(
  lift: Lift,
  length: number,
  { gym, bar }: GapInput,
  { buildUnderOpener, gapCooled, gapBetweenSets, gapToLoad, gapLastRest }: WarmUpNumbers,
): readonly GapStep[] {
  const { best, reps, attempts } = lift;
  const opener = attempts[0]?.load.kilograms ?? best.kilograms;
  const loads = GAP_RUNGS.slice(length < gapCooled ? 1 : 0).map((rung) => ({
    load: easyLoad(
      gym,
      bar,
      Math.min(rung.share * best.kilograms, buildUnderOpener * opener),
      best.kilograms,
    ),
    reps: reps > 1 ? 1 : rung.reps,
  }));
  // Light lifters meet the empty bar more than once: each load stands there once, with the most reps, and none reaches the opener.
  const rungs = loads.filter(
    ({ load }, index) =>
      load.kilograms < opener &&
      loads.findIndex((other) => other.load.kilograms === load.kilograms) === index,
  );
  if (rungs.length === 0) return [{ kind: "rest", before: gapLastRest, lasts: gapLastRest, sets: [] }];
  const sets = rungs.map((rung, index) => ({
    ...rung,
    before: gapLastRest + gapBetweenSets * (rungs.length - 1 - index),
  }));
  const lasts = gapToLoad + gapBetweenSets * (sets.length - 1);
  return [
    { ...stepBefore("build", gapLastRest, lasts), sets },
    { kind: "rest", before: gapLastRest, lasts: gapLastRest, sets: [] },
  ];
}

/** The first movements of the part at its pace; nothing to rehearse where nothing has a pace. */
function rehearsal(part: PlannedPart, numbers: WarmUpNumbers): readonly GapStep[] {
  const efforts = rehearsedEfforts([part], numbers);
  const rest: GapStep = { kind: "rest", before: numbers.gapRest, lasts: numbers.gapRest, sets: [] };
  if (efforts.length === 0) return [rest];
  return [{ ...stepBefore("rehearse", numbers.gapRest, numbers.gapRehearsal), efforts: [...efforts] }, rest];
}
