import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { capitalised } from "./basis.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayList } from "./number.ts";
import { sayPart } from "./part-name.ts";
import { sayClock, sayMinutes } from "./time.ts";
import { sayEffort } from "./warm-up.ts";

export type Gap = NonNullable<Plan["warmUp"]>["gaps"][number];
type GapStep = Gap["steps"][number];

/** From so long on, seconds, one sits down, eats a little and gets up again in between. Judgement. */
const LONG = 1500;

/** What a gap is called. Reads `Before part B: 33 min, snatch at 45:20`, of a rest inside a part `Rest from 3:17: 12 min, on at 15:17`. */
export function sayGapTitle({ part, from, at, lift, inside, again = [] }: Gap): string {
  if (inside) {
    const on = lift === undefined ? "on" : `next ${lift.name}`;
    const later = again.length === 0 ? "" : `; the same from ${sayList(again.map(sayClock), "and")}`;
    return `Rest from ${sayClock(from)}: ${sayMinutes(at - from)}, ${on} at ${sayClock(at)}${later}`;
  }
  const next = lift === undefined ? `start at ${sayClock(at)}` : `first ${lift.name} at ${sayClock(at)}`;
  return `Before part ${sayPart(part)}: ${sayMinutes(at - from)}, ${next}`;
}

/** When a step begins, on the clock of the workout. */
export const sayGapClock = ({ at }: Pick<Gap, "at">, { before }: Pick<GapStep, "before">): string =>
  sayClock(at - before);

/** A step in two or three words, for a glance. */
export function sayGapStepName({ lift }: Pick<Gap, "lift">, { kind }: Pick<GapStep, "kind">): string {
  const names: Readonly<Record<GapStep["kind"], string>> = {
    "come-down": "come down",
    "keep-warm": "keep warm",
    "move-again": "move again",
    build: `build the ${lift?.name ?? "lift"} again`,
    rehearse: "rehearse",
    rest: "rest",
  };
  return names[kind];
}

/** What to do in a step, as a sentence. */
export function sayGapStep(gap: Gap, step: GapStep, units: MassUnit): string {
  const name = capitalised(sayGapStepName(gap, step));
  switch (step.kind) {
    case "come-down":
      return `${name}: walk until your breath is quiet, then dry off and put on something warm.`;
    case "keep-warm":
      return step.lasts < LONG
        ? `${name}: stay covered, sip, and walk a little every few minutes.`
        : `${name}: sit covered, drink, eat a little you know, and walk a few minutes every ten.`;
    case "move-again":
      return `${name}: easy jog or machine, then the positions of what comes, until you are just sweating.`;
    case "build":
      return `${name}: ${step.sets.map((set) => sayGapSet(gap, set, units)).join("; ")}.`;
    case "rehearse":
      return `${name}: ${sayList((step.efforts ?? []).map(sayEffort), "and")}.`;
    case "rest":
      return `${name}, warm and on your feet.`;
  }
}

/** A set of the second build with its clock. Reads `3 × 30 kg at 37:50`. */
const sayGapSet = ({ at }: Gap, { load, reps, before }: GapStep["sets"][number], units: MassUnit): string =>
  `${reps}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}${sayLoad(load, units)} at ${sayClock(at - before)}`;
