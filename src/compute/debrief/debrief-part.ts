import type { LoggedResult } from "../../models/athlete.ts";
import type { Competition } from "../../models/competition.ts";
import type { Debrief, DebriefCause } from "../../models/plan/debrief.ts";
import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { Level } from "../../models/vocabulary.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { DEBRIEF_CONSTANTS, type DebriefConstants } from "./constants.ts";
import { type Culprit, findCauses } from "./find-causes.ts";
import { liftCauses } from "./lift-causes.ts";
import { laidOf } from "./laid-of.ts";
import { piecesOf } from "./pieces.ts";
import { pieceWork } from "./piece-work.ts";
import { spreadOf } from "./range-spread.ts";
import { type ResultDone, resultDone } from "./result-done.ts";
import { secondTry, type SecondTryInput } from "./second-try.ts";
import { suspectsOf } from "./suspects.ts";

/** A result and the plan it is held against. */
type DebriefInput = {
  readonly plan: PartPlan;
  readonly result: LoggedResult;
  readonly level: Level;
  /** Clock at the end of each row on a day whose beginning, a share of the planned time, is faster by a share; absent where nothing was paced. */
  readonly hasty?: (faster: number, lasting: number) => readonly number[];
  readonly counts: Competition["counts"];
  /** Hours from the first try to the deadline, where both are known. */
  readonly hoursLeft?: number;
  readonly withheld: boolean;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Holds a logged result against the plan: how it stands to the range, where time or load went where that is clear, and whether a second try
 * is worth it. Undefined where the part was not planned or nothing of the result can be compared with it.
 *
 * A scaled version is set beside the plan and nothing is concluded from it.
 */
export function debriefPart(input: DebriefInput): Debrief | undefined {
  const { plan, result, overrides } = input;
  const constants = withOverrides(DEBRIEF_CONSTANTS, overrides);
  const { part, date, felt, version, time, reps, load, tieBreak, note } = result;
  const common = {
    part,
    ...(date !== undefined && { date }),
    ...(felt !== undefined && { felt }),
    version,
    logged: {
      ...(time !== undefined && { time }),
      ...(reps !== undefined && { reps }),
      ...(load !== undefined && { load }),
      ...(tieBreak !== undefined && { tieBreak }),
      ...(note !== undefined && { note }),
    },
  };
  const body = plan.lifting ? ofLift(input, constants) : ofWork(input, constants);
  return body && { ...common, ...body };
}

type Body = Omit<Debrief, "part" | "date" | "felt" | "version" | "logged">;

function ofWork(input: DebriefInput, constants: DebriefConstants): Body | undefined {
  const { plan, result, hasty } = input;
  const { pacing } = plan;
  if (pacing === undefined || hasty === undefined) return undefined;
  const laid = laidOf(plan, pacing);
  const pieces = piecesOf(laid, result.splits, pacing.score === "time" ? result.time : undefined);
  const done = resultDone(laid, result, pieces);
  if (done === undefined) return undefined;
  const spread = spreadOf(pacing.result, constants.leastSpread);
  const scaled = result.version === "scaled";
  const culprits = scaled
    ? []
    : findCauses(
        pieces,
        suspectsOf(
          { pieces, work: pieceWork(pieces, pacing.rows), rows: pacing.rows, hasty, form: spread },
          constants,
        ),
        constants,
      );
  const behind = behindOf(done);
  const total = pieces.at(-1)?.plannedEnd ?? 1;
  const named = sumOf(culprits, ({ seconds }) => seconds) / total;
  const recoverable = sumOf(culprits, (one) => one.seconds * recoverableShare(one, constants)) / total;
  const late = (pieces.at(-1)?.doneEnd ?? 0) - (pieces.at(-1)?.plannedEnd ?? 0);
  return {
    ...done,
    score: pacing.score,
    ...(pacing.perRound !== undefined && { perRound: pacing.perRound }),
    standing: standingOf(done, pacing.result),
    pieces: [...pieces],
    causes: culprits.map((one) => causeOf(one, pacing.rows)),
    lifts: [],
    ...(pieces.length > 0 && { unexplained: late - sumOf(culprits, ({ seconds }) => seconds) }),
    secondTry: scaled
      ? { answer: "leave-it", why: "not-known", fixes: 0 }
      : secondTry(
          {
            ...tryInput(input, done, spread),
            behind,
            named,
            recoverable,
            retestNoise: constants.retestNoise,
          },
          constants,
        ),
  };
}

function ofLift(input: DebriefInput, constants: DebriefConstants): Body | undefined {
  const { plan, result } = input;
  const lift = plan.lifting?.lifts[0];
  if (plan.lifting === undefined || lift === undefined) return undefined;
  const best = Math.max(
    0,
    result.load === undefined ? 0 : inKilograms(result.load),
    ...result.attempts.filter(({ made }) => made).map(({ load }) => inKilograms(load)),
  );
  if (best === 0 && result.attempts.length === 0) return undefined;
  const done: ResultDone = { unit: "kilograms", done: best, planned: lift.expected.target };
  const lifts = liftCauses(result.attempts, lift, plan.lifting.window, constants);
  const behind = behindOf(done);
  const mendable = lifts.some(({ kind }) => kind !== "missed") ? Math.max(0, behind) : 0;
  return {
    ...done,
    standing: standingOf(done, lift.expected),
    pieces: [],
    causes: [],
    lifts: [...lifts],
    secondTry: secondTry(
      {
        ...tryInput(input, done, spreadOf(lift.expected, constants.leastSpread)),
        behind,
        named: mendable,
        recoverable: mendable * constants.recoverablePacing,
        retestNoise: constants.liftRetestNoise,
      },
      constants,
    ),
  };
}

function tryInput(
  { plan, result, level, counts, hoursLeft, withheld }: DebriefInput,
  { planned }: ResultDone,
  spread: number,
): Omit<SecondTryInput, "behind" | "named" | "recoverable" | "retestNoise"> {
  const places = plan.places?.perUnit?.places;
  return {
    level,
    ...(result.felt !== undefined && { felt: result.felt }),
    spread,
    planned,
    ...(places !== undefined && plan.lifting === undefined && { placesPerUnit: places }),
    counts,
    ...(hoursLeft !== undefined && { hoursLeft }),
    withheld,
  };
}

/** Share by which a result falls short of the plan; below 0 where it is better. */
const behindOf = ({ unit, done, planned }: ResultDone): number =>
  planned > 0 ? (unit === "seconds" ? done - planned : planned - done) / planned : 0;

function standingOf(
  { unit, done }: ResultDone,
  { cautious, hopeful }: PlannedPacing["result"],
): Debrief["standing"] {
  const less = unit === "seconds";
  if (less ? done < hopeful : done > hopeful) return "better";
  return (less ? done > cautious : done < cautious) ? "worse" : "inside";
}

const sumOf = (culprits: readonly Culprit[], value: (culprit: Culprit) => number): number =>
  culprits.reduce((sum, culprit) => sum + value(culprit), 0);

function recoverableShare({ suspect }: Culprit, constants: DebriefConstants): number {
  return {
    form: 0,
    movement: constants.recoverableMovement,
    breaks: constants.recoverableBreaks,
    transitions: constants.recoverableTransitions,
    haste: constants.recoverablePacing,
  }[suspect.kind];
}

function causeOf(
  { suspect, size, seconds, error, won, orBreaks }: Culprit,
  rows: PlannedPacing["rows"],
): DebriefCause {
  const doubted = { value: seconds, error };
  const { kind, movement = "", count } = suspect;
  const name = rows.find((row) => row.movement === movement)?.name ?? movement;
  if (kind === "haste") return { kind: "too-fast-early", share: size, won, seconds: doubted };
  if (kind === "breaks" || kind === "transitions") return { kind, each: size, count, seconds: doubted };
  return orBreaks
    ? { kind: "one-movement", movement, name, seconds: doubted }
    : { kind: "slower-movement", movement, name, share: size, seconds: doubted };
}
