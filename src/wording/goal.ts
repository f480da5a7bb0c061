import type { Plan } from "../models/plan/plan.ts";
import { sayAmount } from "./amount.ts";
import { isDoubted } from "./ending.ts";
import { sayMassFigure } from "./mass.ts";
import { NO_BREAK_SPACE } from "./number.ts";
import { sayPart } from "./part-name.ts";
import { restLeftOut, WITHOUT_RESTS } from "./rests-left-out.ts";
import { sayRange, sayScore, type SaidScore } from "./score.ts";
import { sayClock } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** The one large figure of a brief: what to aim at, what it is counted in, and how sure that is. */
export type Goal = SaidScore & {
  /** What the figure is, in two or three words. */
  readonly label: string;
  /** Between which ends the result lies on eight of ten simulated days. */
  readonly range?: string;
};

/**
 * What the reader aims at; the load to open with where the lifts after it go by feel. Where a cap will stop the work before it is done, that is said; where there is only a lift, the
 * load to open with; where nothing of the work can be done, the load that is out of reach. Nothing where nothing could be computed.
 */
export function sayGoal(plan: Plan): Goal | undefined {
  const { score, result, firstLoad } = plan.headline;
  const lifts = plan.parts.flatMap(({ lifting }) => lifting?.lifts ?? []);
  const byFeel =
    lifts.length > 0 && lifts.every(({ feel }) => feel) && plan.parts.every(({ pacing }) => !pacing);
  if (!result || byFeel) {
    return (
      firstLoad && { label: "open with", figure: sayMassFigure(firstLoad.mass), unit: firstLoad.mass.unit }
    );
  }
  const paced = plan.parts.filter((part) => part.pacing);
  const aimed = paced.find((part) => part.pacing?.result.target === result.target);
  const pacing = aimed?.pacing;
  const which = aimed && paced.length > 1 ? `part ${sayPart(aimed.name)}, ` : "";
  const context = { units: plan.athlete.units, perRound: pacing?.perRound };
  if (pacing && (pacing.rows.length === 0 || !pacing.rows.some(({ kind }) => kind === "work"))) {
    return nothingToAimAt(which, pacing);
  }
  const stopped = pacing?.ending === "stopped-by-cap" && pacing.whenStopped?.atWall === false;
  const cap = stopped ? pacing.cap : undefined;
  const isApart = pacing !== undefined && restLeftOut(pacing) > 0;
  const way = cap === undefined ? undefined : onTheWay(pacing?.rows ?? []);
  if (way !== undefined && cap !== undefined)
    return { label: `${which}by the cap of ${sayClock(cap)}`, ...way };
  return {
    label: `${which}${cap === undefined ? "aim at" : `by the cap of ${sayClock(cap)}`}`,
    ...sayScore(score, result.target, context),
    ...(isApart ? { unit: WITHOUT_RESTS } : {}),
    range: sayRange(score, result, context),
  };
}

/** A way that the cap ends, where that is all the work: how far one gets, since no rep is counted on it. */
function onTheWay(rows: Pacing["rows"]): SaidScore | undefined {
  const work = rows.filter(({ kind }) => kind === "work");
  const [only] = work;
  if (work.length !== 1 || only?.unit !== "metres" || only.prescribed === undefined) return undefined;
  return { figure: sayAmount(only), unit: `of ${sayAmount({ ...only, amount: only.prescribed })}` };
}

/** Where the first thing to do is out of reach, that is what is to be known: the load, else that it cannot be done. */
function nothingToAimAt(which: string, { outOfReach: [first], score }: Pacing): Goal {
  const load = first?.load;
  if (first && isDoubted(first))
    return {
      label: `${which}sure of`,
      figure: "0",
      unit: first.unit === "reps" ? first.plural : score === "metres" ? "m" : "reps",
    };
  if (load === undefined)
    return { label: `${which}out of reach today`, figure: "0", unit: first?.plural ?? "" };
  const pieces = load.pieces > 1 ? `${load.pieces}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}` : "";
  return {
    label: `${which}out of reach today`,
    figure: `${pieces}${sayMassFigure(load.mass)}`,
    unit: load.mass.unit,
  };
}

/** The range as a claim that can be held against the days. @example sayEightInTen("8:05–9:05") // => "8\u00a0days in\u00a010: 8:05–9:05" */
export const sayEightInTen = (range: string): string =>
  `8${NO_BREAK_SPACE}days in${NO_BREAK_SPACE}10: ${range}`;
