import type { Competition } from "../../models/competition.ts";
import type { Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Equipment } from "../../models/vocabulary.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { needsOf } from "../conditions/needs.ts";
import { helperChanges } from "./helper-changes.ts";
import { type PlannedPart, type PlannedRow, workRowsOf } from "../conditions/situation-of.ts";

export type SetUpInput = {
  readonly workout: Workout;
  /** The movements done, in order. */
  readonly movements: readonly Movement[];
  readonly parts: readonly PlannedPart[];
  readonly gym: Gym;
  readonly competition?: Competition;
  /** What the brief decides beside it. */
  readonly choices: Plan["choices"];
};

const CHALK = "chalk-and-tape";

type Line = Plan["setUp"][number];
type Thing = Extract<Line, { kind: "equipment" }>["things"][number];

/**
 * What to set out, agree and check before the start, each as a kind with what it speaks of: equipment in the order of use with
 * this athlete's loads and heights, floor, plates, machines, who loads, the film, the score sheet, the tie-break moment,
 * the least that counts, chalk.
 */
export function setUpOf(input: SetUpInput): readonly Line[] {
  const { workout } = input;
  return [
    ...equipmentLine(input),
    ...floorLine(input),
    ...plateLines(input),
    ...machineLine(input),
    ...filmLines(input),
    ...sheetLine(input),
    ...workout.parts.flatMap((part) => tieBreakLine(part, input)),
    ...workout.parts.flatMap(leastLine),
    ...chalkLine(input),
  ];
}

function equipmentLine(input: SetUpInput): readonly Line[] {
  const { workout, movements } = input;
  const listed = workout.equipment.map((what): Thing => ({ what, loads: [], heights: [] }));
  const needed = movements.flatMap((movement) => needsOf(movement).map((what) => ({ what, movement })));
  const things = [...new Set(needed.map(({ what }) => what))].map((what): Thing => {
    const users = needed.filter((each) => each.what === what).map(({ movement }) => movement.id);
    return { what, ...numbersOf(what, users, input) };
  });
  const all = listed.length > 0 ? listed : things;
  return all.length === 0 ? [] : [{ kind: "equipment", things: [...all] }];
}

/** What has a height of its own, and what has a load. */
const TALL: readonly Equipment[] = ["box", "target"];
const LOADED: readonly Equipment[] = [
  "dumbbell",
  "kettlebell",
  "medicine-ball",
  "slam-ball",
  "heavy-ball",
  "sandbag",
  "plate",
  "handles",
];

function numbersOf(
  what: Equipment,
  users: readonly string[],
  { parts }: SetUpInput,
): Pick<Thing, "loads" | "heights"> {
  const rows = workRowsOf(parts).filter((row) => row.movement !== undefined && users.includes(row.movement));
  const loads = LOADED.includes(what) ? rows.flatMap((row) => row.load ?? []) : [];
  const heights = TALL.includes(what) ? rows.flatMap((row) => row.heightMetres ?? []) : [];
  const sameLoad = (one: Thing["loads"][number], other: Thing["loads"][number]): boolean =>
    one.kilograms === other.kilograms && one.pieces === other.pieces;
  return {
    loads: loads.filter((load, at) => loads.findIndex((other) => sameLoad(load, other)) === at),
    heights: [...new Set(heights)],
  };
}

function floorLine({ workout, movements, gym }: SetUpInput): readonly Line[] {
  if (movements.length < 2) return [];
  const { value, unit } = workout.floor?.between ?? gym.between;
  return [{ kind: "floor", between: { value, unit }, prescribed: workout.floor?.between !== undefined }];
}

function plateLines({ workout, movements, parts, competition }: SetUpInput): readonly Line[] {
  const onBars = movements.filter((movement) => movement.loading?.held === "bar").map(({ id }) => id);
  if (onBars.length === 0) return [];
  if (!isChanged(onBars, parts)) return [{ kind: "plates", fixed: true }];
  const loading = workout.parts.map((part) => part.loading).find((each) => each !== undefined);
  const who = loading ?? competition?.loading;
  const isSaid = who === "alone" || who === "help-allowed";
  const changes =
    who === "help-allowed" ? parts.flatMap((part) => helperChanges(part.pacing?.rows ?? [], onBars)) : [];
  const prescribed = parts.every((part) => part.lifting === undefined);
  return [
    { kind: "plates", fixed: false, ...(prescribed && { prescribed }) },
    ...(isSaid
      ? [{ kind: "loading", who, ...(changes.length > 0 && { changes: [...changes] }) } as const]
      : []),
  ];
}

/** Whether anything is changed on a bar after the start: for a lift, and where the work comes to another load. */
const isChanged = (onBars: readonly string[], parts: readonly PlannedPart[]): boolean =>
  parts.some((part) => part.lifting !== undefined) ||
  new Set(
    workRowsOf(parts)
      .filter((row) => row.movement !== undefined && onBars.includes(row.movement))
      .flatMap((row) => row.load?.kilograms ?? []),
  ).size > 1;

const machineLine = ({ movements }: SetUpInput): readonly Line[] =>
  movements.some((movement) => movement.erg !== undefined) ? [{ kind: "monitor" }] : [];

function filmLines({ competition, movements }: SetUpInput): readonly Line[] {
  if (competition === undefined) return [];
  return [{ kind: "film", monitor: movements.some((movement) => movement.erg !== undefined) }];
}

function sheetLine({ parts }: SetUpInput): readonly Line[] {
  const rounds = Math.max(0, ...parts.map((part) => part.pacing?.rounds.length ?? 0));
  return rounds > 1 ? [{ kind: "score-sheet" }] : [];
}

function tieBreakLine(part: Part, { parts }: SetUpInput): readonly Line[] {
  const rows = workRowsOf(parts.filter((each) => each.name === part.name));
  const moments = rows.filter((row) => row.tieBreak).map((row) => momentOf(row, rows));
  const once = moments.filter(
    (moment, at) =>
      moments.findIndex(
        (other) =>
          other.name === moment.name &&
          other.when === moment.when &&
          other.round === moment.round &&
          other.line?.number === moment.line?.number,
      ) === at,
  );
  if (once.length > 0) return [{ kind: "tie-break", moments: once }];
  return part.tieBreakNote === undefined ? [] : [{ kind: "tie-break-note", note: part.tieBreakNote }];
}

type Moment = Extract<Line, { kind: "tie-break" }>["moments"][number];

/**
 * When a tie-break time is taken: after a movement, in each round unless the plan has rounds where none is taken, also
 * where the plan does not get beyond the first.
 */
function momentOf(row: PlannedRow, rows: readonly PlannedRow[]): Moment {
  const same = rows.filter((each) => each.movement === row.movement);
  const lines = same.filter((each) => each.round === row.round);
  if (lines.length > 1) return { name: row.name, when: "one-line", line: lineAmong(row, lines) };
  const isOnce = same.some((each) => !each.tieBreak);
  if (isOnce) return { name: row.name, when: "one-round", round: row.round };
  return { name: row.name, when: row.rounds === 1 ? "once" : "each-round" };
}

function lineAmong(row: PlannedRow, lines: readonly PlannedRow[]): NonNullable<Moment["line"]> {
  const { load } = row;
  const isOnly = lines.filter((each) => each.load?.kilograms === load?.kilograms).length === 1;
  return { number: lines.indexOf(row) + 1, ...(load !== undefined && isOnly && { load }) };
}

const leastLine = (part: Part): readonly Line[] =>
  part.minimumWork === undefined
    ? []
    : [{ kind: "least", amount: part.minimumWork.amount, of: part.minimumWork.of }];

/** Where to have chalk, unless a choice of the brief says when to chalk. */
const chalkLine = ({ movements, choices }: SetUpInput): readonly Line[] =>
  movements.some((movement) => movement.stresses.includes("hard-grip")) &&
  !choices.some(({ id }) => id === CHALK)
    ? [{ kind: "chalk" }]
    : [];
