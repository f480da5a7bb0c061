import type { PartPlan, Plan } from "../models/plan/plan.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type WarmUp = NonNullable<Plan["warmUp"]>;

/** What the day does not ask of the pace: what is only read beforehand. */
const ONLY_READ = ["earlySplits", "intervals", "tooHeavy"] as const;

/** A part as far as the day needs it. */
export type DayPart = Pick<PartPlan, "name" | "title" | "format" | "score" | "start" | "lifting"> & {
  readonly pacing?: Omit<Pacing, (typeof ONLY_READ)[number]>;
};

/** What the live page of the day is run from: the plan without what is only read. */
export type DayPlan = {
  readonly version: 1;
  readonly athlete: Pick<Plan["athlete"], "id" | "name" | "units">;
  readonly workout: Pick<Plan["workout"], "id" | "title">;
  readonly date: string;
  readonly start?: Plan["start"];
  readonly warmUp?: Pick<WarmUp, "lasts" | "steps" | "gaps" | "moved">;
  readonly parts: readonly DayPart[];
  /** The stop signs, with what to do. */
  readonly stops: readonly { readonly title: string; readonly say: string }[];
};

/** Whether a plan can be run live: it is a person's, and there is something in it to do. */
export const canRunLive = ({ athlete, parts, withheld }: Plan): boolean =>
  !athlete.anonymous &&
  !withheld.some(({ what }) => what === "workout") &&
  parts.some(({ pacing, lifting }) => pacing !== undefined || lifting !== undefined);

/** The plan as the live page takes it along. */
export function dayOf({ athlete, workout, date, start, warmUp, parts, cautions }: Plan): DayPlan {
  return {
    version: 1,
    athlete: { id: athlete.id, name: athlete.name, units: athlete.units },
    workout: { id: workout.id, title: workout.title },
    date,
    ...(start !== undefined && { start }),
    ...(warmUp !== undefined && {
      warmUp: {
        lasts: warmUp.lasts,
        steps: warmUp.steps,
        gaps: warmUp.gaps,
        moved: warmUp.moved,
      },
    }),
    parts: parts.map(dayPart),
    stops: cautions.filter(({ weight }) => weight === "stop").map(({ title, say }) => ({ title, say })),
  };
}

function dayPart({ name, title, format, score, start, pacing, lifting }: PartPlan): DayPart {
  const part = { name, title, format, score, start, ...(lifting !== undefined && { lifting }) };
  if (pacing === undefined) return part;
  const kept = Object.entries(pacing).filter(([key]) => !ONLY_READ.some((name) => name === key));
  return { ...part, pacing: Object.fromEntries(kept) as DayPart["pacing"] & object };
}
