import type { Missing } from "../models/plan/missing.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayKilograms } from "./mass.ts";
import { sayList } from "./number.ts";
import { sayDuration } from "./time.ts";

/** What could not be computed of a part, why, and what to do about it, in whole sentences. Masses in the reader's unit. */
export function sayMissing(missing: Missing, units: MassUnit): string {
  switch (missing.kind) {
    case "no-pace": {
      const { movement, unit, counted } = missing;
      return `No pace of the movement "${movement}" is known in ${unit}: it is counted in ${counted}, and nothing says how ${counted} become ${unit}.`;
    }
    case "no-lift": {
      const { movements } = missing;
      const names = movements.length === 0 ? "anything in it" : sayList(movements, "or");
      return `It is lifted for load, but no best lift can be derived of ${names}. Name a lift in the part, or say \`best lift: yes\` in the file of the movement.`;
    }
    case "no-step": {
      const [step, opener] = [missing.step, missing.opener].map((mass) => sayKilograms(mass, units));
      return `No load lies ${step} over the opener of ${opener} with these plates. Set other steps or another opener, or add smaller plates to the gym's file.`;
    }
    case "no-bar":
      return `The ${missing.lift} is done without a bar, and no file says which loads there are. Choose the attempts yourself: open with what you make nine times in ten, and go up by the smallest step.`;
    case "short-window":
      return `${sayWindow(missing)} Give the window more time or the part before it less work, or let a lift begun before the end count.`;
    case "heavy-bar": {
      const { lift } = missing;
      const [bar, opener] = [missing.bar, missing.opener].map((mass) => sayKilograms(mass, units));
      return `The empty bar of ${bar} is heavier than what should be opened with in the ${lift}, ${opener}. Add a lighter bar to the gym's file, or a heavier result of the lift to the athlete's.`;
    }
  }
}

const sayWindow = ({ length, needed }: Extract<Missing, { kind: "short-window" }>): string =>
  length > 0
    ? `Its window leaves ${sayDuration(length)}, too short for one lift, which takes ${sayDuration(needed)} with the way to the bar.`
    : "Its window has closed before it can begin.";
