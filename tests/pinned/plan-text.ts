import { sayMissing } from "../../src/wording/missing.ts";
import type { Lift, Lifting, Places } from "../../src/models/plan/lifting.ts";
import type { Pacing, PacingRow } from "../../src/models/plan/pacing.ts";
import { titleOfLeftOut } from "../../src/wording/left-out.ts";
import type { PartPlan, Plan } from "../../src/models/plan/plan.ts";

type Read<T> = T extends (infer U)[]
  ? readonly Read<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Read<T[K]> }
    : T;

type Load = { readonly mass: { readonly value: number; readonly unit: string }; readonly pieces: number };
type Numbers = { readonly target: number } & Readonly<Record<"cautious" | "middle" | "hopeful", number>>;

/**
 * The numbers of one plan as lines to read and to compare: the target, the rounds, every row with its sets and rests,
 * what to do when ahead or behind, the finish, the attempts, the places, the build. Times are seconds, shares are parts of one.
 */
export function planText(plan: Plan): string {
  const lines = [
    `== ${plan.athlete.id} · ${plan.workout.id} ==`,
    `division ${plan.athlete.division}${plan.athlete.divisionAssumed ? " (assumed)" : ""}, gym ${plan.gym.id}${plan.gym.assumed ? " (assumed)" : ""}`,
    ...(plan.headline.firstLoad ? [`first load ${load(plan.headline.firstLoad)}`] : []),
    ...plan.parts.flatMap(partLines),
    ...(plan.total ? [`total ${range(plan.total.result)}`] : []),
    ...buildLines(plan),
    ...plan.choices.map(
      ({ movement, question, pick, decidedBy }) =>
        `choice ${movement}: ${question} ${pick.id}, by ${decidedBy}`,
    ),
    ...plan.withheld.map((entry) => `withheld ${entry.what} ${entry.movement ?? titleOfLeftOut(entry)}`),
  ];
  return `${lines.join("\n")}\n`;
}

/** A number with at most three decimals and no more than six figures. */
const n = (value: number): string => String(Number(Number(value.toPrecision(6)).toFixed(3)));

const load = ({ mass, pieces }: Load): string =>
  `${pieces > 1 ? `${pieces} x ` : ""}${n(mass.value)} ${mass.unit}`;

const range = ({ target, cautious, middle, hopeful }: Numbers): string =>
  `${n(target)}, days ${n(hopeful)} ${n(middle)} ${n(cautious)}`;

const partLines = (part: Read<PartPlan>): readonly string[] => [
  `-- part ${part.name}: ${part.format}, ${part.score}, starts ${n(part.start.clock)}`,
  ...(part.pacing ? pacingLines(part.pacing) : []),
  ...(part.lifting ? liftingLines(part.lifting) : []),
  ...(part.places ? placesLines(part.places) : []),
  ...part.missing.map((missing) => `missing ${sayMissing(missing, "kg")}`),
];

const pacingLines = (pacing: Read<Pacing>): readonly string[] => [
  `target ${range(pacing.result)}`,
  `ends ${pacing.ending} at ${n(pacing.duration)}${maybe(", chance", pacing.chanceOfFinishing)}`,
  ...pacing.rounds.map(
    ({ label, start, end, scoreDone, days }) =>
      `round ${label}: ${n(start)} to ${n(end)}, done ${n(scoreDone)}${days ? `, days ${n(days.hopeful)} ${n(days.cautious)}` : ""}`,
  ),
  ...pacing.rows.map(rowLine),
  ...finishLines(pacing),
];

const rowLine = (row: Read<PacingRow>): string =>
  row.kind === "rest"
    ? `${row.index} rest ${n(row.start)} to ${n(row.end)}`
    : `${row.index} ${n(row.amount)} ${row.unit} ${row.movement ?? row.name}${row.load ? ` at ${load(row.load)}` : ""}: ` +
      `${n(row.start)} to ${n(row.end)}, way ${n(row.transition)}${maybe(", each", row.secondsPerUnit)}, ` +
      `sets ${row.sets.map(({ amount, restAfter }) => `${n(amount)}${restAfter > 0 ? ` (${n(restAfter)})` : ""}`).join(" ")}, ` +
      `work ${n(row.shareOfWork)}${maybe(", reserve", row.reserve)}`;

const maybe = (name: string, value: number | undefined): string =>
  value === undefined ? "" : `${name} ${n(value)}`;

function finishLines({
  half,
  ceiling,
  hard,
  margin,
  ifThen,
  whenStopped,
  outOfReach,
  earlySplits,
  difficulty,
  checkpoints,
}: Read<Pacing>): readonly string[] {
  return [
    `checkpoints ${checkpoints.join(" ")}`,
    ...(half ? [`half in row ${half.row} at ${n(half.clock)}`] : []),
    ...(ceiling
      ? [`round ${ceiling.round} no faster than ${n(ceiling.seconds)}${maybe(", score", ceiling.score)}`]
      : []),
    ...(hard ? [`hard from round ${hard.round}, reserve ${n(hard.reserve)}`] : []),
    ...(margin ? [`held back ${n(margin.seconds)}, share ${n(margin.share)}`] : []),
    ...ifThen.map(
      ({ row, when, clock, score, action, projected }) =>
        `after row ${row} ${when} ${n(score ?? clock)}: ${actionText(action)}${maybe(", then", projected)}`,
    ),
    ...(whenStopped
      ? [`stopped at ${n(whenStopped.at)}, done ${n(whenStopped.scoreDone)}, ${whenStopped.advice}`]
      : []),
    ...outOfReach.map(({ name }) => `out of reach ${name}`),
    ...(earlySplits
      ? [
          `early splits weigh ${n(earlySplits.weight)}${maybe(", first round", earlySplits.changed?.first)}${maybe(", last", earlySplits.changed?.last)}`,
        ]
      : []),
    ...(difficulty
      ? [
          `seen early ${difficulty.early}, results ${difficulty.results}, scores ${difficulty.scores}: asks ${n(difficulty.share)} more${maybe(", moved", difficulty.moved)}`,
          ...difficulty.movements.map(
            ({ movement, share }) => `beside that ${movement} asks ${n(share)} more`,
          ),
        ]
      : []),
  ];
}

const actionText = (action: Readonly<Record<string, unknown>>): string =>
  Object.values(action)
    .map((value) => (typeof value === "number" ? n(value) : String(value)))
    .join(" ");

const liftingLines = ({ window, lifts, finishTable }: Read<Lifting>): readonly string[] => [
  `window ${n(window.opens)}${maybe(" to", window.closes)}`,
  ...lifts.flatMap(liftLines),
  ...finishTable.map(
    ({ finish, until, firstLift, loads, expected }) =>
      `finish ${n(finish)} to ${n(until)}: first lift${maybe("", firstLift)}, ${loads.map(({ value, unit }) => `${n(value)} ${unit}`).join(", ")}${maybe("; expected", expected)}`,
  ),
];

const liftLines = ({
  name,
  best,
  today,
  attempts,
  expected,
  chanceOfNone,
  misses,
  rule,
  lastStart,
}: Read<Lift>): readonly string[] => [
  `lift ${name}: best ${n(best.kilograms)} ± ${n(best.spread)} kg (${best.basis}), today ${n(today.kilograms)} ± ${n(today.spread)}, lost ${n(today.lossShare)} ${n(today.lossAtLast)}`,
  `expected ${range(expected)}, none ${n(chanceOfNone)}, misses ${n(misses)}, by ${rule}, last start ${n(lastStart)}`,
  ...attempts.map(
    ({ number, clock, load: bar, chance, lifted, made, onlyIfWell, restBefore, change, afterMiss }) => {
      const missed =
        afterMiss.kind === "stop"
          ? "stop"
          : `${load(afterMiss.load)} ${afterMiss.direction} at ${n(afterMiss.clock)}, chance ${n(afterMiss.chance)}`;
      return `attempt ${number} at ${n(clock)}: ${load(bar)}, chance ${n(chance)}, lifted ${n(lifted)}, made ${n(made)}${onlyIfWell ? ", only if well" : ""}, rest ${n(restBefore)}${maybe(", change", change?.seconds)}; missed: ${missed}`;
    },
  ),
];

const placesLines = ({
  expected,
  fieldSize,
  shareAhead,
  perUnit,
  crowds,
  holdBack,
}: Read<Places>): readonly string[] => [
  `place ${n(expected)} of ${fieldSize}, ahead ${n(shareAhead)}${perUnit ? `; ${n(perUnit.amount)} ${perUnit.unit} is ${n(perUnit.places)} places` : ""}`,
  ...crowds.map(({ score, count, passWith }) => `crowd ${count} at ${n(score)}, passed with ${n(passWith)}`),
  ...(holdBack
    ? [
        `holding back ${n(holdBack.share)}: ${holdBack.answer}, lost ${n(holdBack.lost)} ${holdBack.unit} and ${n(holdBack.placesLost)} places, won ${n(holdBack.kilogramsGained)} kg and ${n(holdBack.placesWon)} of ${holdBack.liftFieldSize}`,
      ]
    : []),
];

function buildLines({ warmUp }: Plan): readonly string[] {
  if (warmUp === undefined) return [];
  const steps = warmUp.steps.map(({ id, before, lasts }) => `${id} -${n(before)} for ${n(lasts)}`);
  const sets = warmUp.steps.flatMap((step) => step.sets);
  return [
    `warm-up ${n(warmUp.lasts)}: ${steps.join(", ")}`,
    ...sets.map((set) => `build ${set.movement}: ${set.reps} at ${load(set.load)}, rest ${n(set.restAfter)}`),
  ];
}
