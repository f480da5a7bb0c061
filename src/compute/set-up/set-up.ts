import type { Competition } from "../../models/competition.ts";
import type { Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { ErgKind } from "../../models/vocabulary.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { type PlannedPart, type PlannedRow, workRowsOf } from "../conditions/situation-of.ts";

export type SetUpInput = {
  readonly workout: Workout;
  /** The movements done, in order. */
  readonly movements: readonly Movement[];
  readonly parts: readonly PlannedPart[];
  readonly gym: Gym;
  readonly competition?: Competition;
};

/**
 * What to set out, agree and check before the start, one short line each: equipment, floor, plates, machines, who loads,
 * the film, the score sheet, the tie-break moment, the least that counts, chalk.
 */
export function setUpOf(input: SetUpInput): readonly string[] {
  return [
    equipmentLine(input),
    floorLine(input),
    ...plateLines(input),
    machineLine(input),
    ...filmLines(input),
    sheetLine(input),
    ...input.workout.parts.flatMap((part) => tieBreakLine(part, input)),
    ...input.workout.parts.flatMap(leastLine),
    chalkLine(input),
  ].filter((line) => line !== undefined);
}

const MACHINES: Readonly<Record<ErgKind, string>> = {
  row: "rower",
  ski: "ski erg",
  "bike-erg": "bike erg",
  "air-bike": "air bike",
};

function equipmentLine({ workout, movements }: SetUpInput): string | undefined {
  const listed = workout.equipment.length > 0 ? workout.equipment : movements.flatMap(equipmentFor);
  const things = [...new Set(listed)];
  return things.length === 0 ? undefined : `Set out, in the order of use: ${things.join(", ")}.`;
}

function equipmentFor(movement: Movement): readonly string[] {
  switch (movement.kind) {
    case "barbell":
      return ["barbell, plates and collars"];
    case "dumbbell":
      return ["dumbbells"];
    case "kettlebell":
      return ["kettlebells"];
    case "odd-object":
    case "carry":
      return [`what you need for the ${movement.name}`];
    case "gymnastics":
      return ["rig at your height"];
    case "erg":
      return movement.erg === undefined ? [] : [MACHINES[movement.erg]];
    case "bodyweight":
    case "jump":
    case "run":
      return [];
  }
}

function floorLine({ workout, movements, gym }: SetUpInput): string | undefined {
  if (movements.length < 2) return undefined;
  const prescribed = workout.floor?.between;
  const { value, unit } = prescribed ?? gym.between;
  return prescribed === undefined
    ? `Stations about ${value} ${unit} apart; walk the way once.`
    : `Stations ${value} ${unit} apart as prescribed; show the tape on the film.`;
}

function plateLines({ workout, movements, competition }: SetUpInput): readonly string[] {
  if (!movements.some((movement) => movement.loading?.held === "bar")) return [];
  const loading = workout.parts.map((part) => part.loading).find((each) => each !== undefined);
  const who = loading ?? competition?.loading;
  return [
    "Plates beside the bar in loading order; a second person checks them without knowing your target.",
    ...(who === "alone" ? ["You load alone: nobody touches the bar after the start."] : []),
    ...(who === "help-allowed" ? ["Helpers may load: agree with two of them who stands where."] : []),
  ];
}

const machineLine = ({ movements }: SetUpInput): string | undefined =>
  movements.some((movement) => movement.erg !== undefined)
    ? "Monitor reset and turned to the unit that counts."
    : undefined;

function filmLines({ competition, movements }: SetUpInput): readonly string[] {
  if (competition === undefined) return [];
  const monitor = movements.some((movement) => movement.erg !== undefined) ? ", monitor" : "";
  return [
    `Film in one piece: clock, whole body${monitor} and floor marks in the picture, storage checked.`,
    "Show plates, heights and distances on the film before the start.",
  ];
}

function sheetLine({ parts }: SetUpInput): string | undefined {
  const rounds = Math.max(0, ...parts.map((part) => part.pacing?.rounds.length ?? 0));
  return rounds > 1 ? "Score sheet with a box for each round, ticked by your judge." : undefined;
}

function tieBreakLine(part: Part, { parts }: SetUpInput): readonly string[] {
  const planned = parts.filter((each) => each.name === part.name);
  const rows = workRowsOf(planned);
  const moments = [...new Set(rows.filter((row) => row.tieBreak).map((row) => momentOf(row, rows)))];
  if (moments.length > 0) return [`Tie-break: your judge writes down the clock ${moments.join(" and ")}.`];
  return part.tieBreakNote === undefined ? [] : [`Tie-break: ${part.tieBreakNote}`];
}

/**
 * When a tie-break time is taken: after a movement, in each round unless the plan has rounds where none is taken, also
 * where the plan does not get beyond the first.
 */
function momentOf(row: PlannedRow, rows: readonly PlannedRow[]): string {
  const isOnce = rows.some((each) => each.movement === row.movement && !each.tieBreak);
  if (isOnce) return `after the ${row.name} of round ${row.round}`;
  return row.rounds === 1 ? `after the ${row.name}` : `after the ${row.name} of each round`;
}

const leastLine = (part: Part): readonly string[] =>
  part.minimumWork === undefined
    ? []
    : [`Nothing counts under ${part.minimumWork.amount} ${part.minimumWork.of}: reach that first.`];

const chalkLine = ({ movements }: SetUpInput): string | undefined =>
  movements.some((movement) => movement.stresses.includes("hard-grip"))
    ? "Chalk and tape where you pass by, not only where you start."
    : undefined;
