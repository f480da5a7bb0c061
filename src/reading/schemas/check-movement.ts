import type * as z from "zod";
import { refuse } from "../yaml/refuse.ts";
import { LEVELS, type AmountUnit, type Level } from "../../models/vocabulary.ts";
import type { WrittenPace } from "./movement-pace-field.ts";

/** Most signs a short name may have on the sheet. */
const LONGEST_SHORT = 12;

type ToCheck = {
  readonly short: string;
  readonly counts: readonly AmountUnit[];
  readonly pace: WrittenPace;
  readonly "speeding up": { readonly power: number };
};

/** Refuses what no single field can see: paces that contradict one another, a pace over a distance for what is counted otherwise. */
export function checkMovement(movement: ToCheck, ctx: z.RefinementCtx): void {
  const { short, counts, pace } = movement;
  if (short.length > LONGEST_SHORT) {
    refuse(ctx, {
      path: ["short"],
      problem: `the short form has ${short.length} signs`,
      allowed: `at most ${LONGEST_SHORT} signs`,
      remedy: "Shorten it.",
    });
  }
  if (counts.length === 0) {
    refuse(ctx, {
      path: ["counts"],
      problem: "no unit is given",
      allowed: "reps, calories, metres, seconds",
      remedy: "Write the unit it is usually counted in.",
    });
  }
  if (pace.overDistance && counts[0] !== "metres") {
    refuse(ctx, {
      path: ["counts"],
      problem: "a pace is written over a distance, but metres do not come first here",
      remedy: "Put `metres` first, or write the paces in seconds for one unit.",
    });
  }
  if (movement["speeding up"].power <= 1) {
    refuse(ctx, {
      path: ["speeding up", "power"],
      problem: "going faster would cost no more than going slowly",
      allowed: "a number over 1",
      remedy: "Write a number over 1, such as 2.",
    });
  }
  checkPaces(pace, ctx);
}

function checkPaces({ reference }: WrittenPace, ctx: z.RefinementCtx): void {
  for (const [index, level] of LEVELS.entries()) {
    if (reference.fastest[level] >= reference.steady[level]) {
      refuse(ctx, {
        path: ["pace", "fastest", level],
        problem: `the fastest cycle (${level}) is not quicker than the steady pace`,
        remedy: "Write fewer seconds here, or more under `steady`.",
      });
    }
    const before: Level | undefined = LEVELS[index - 1];
    if (before === undefined) continue;
    if (reference.steady[level] > reference.steady[before]) {
      refuse(ctx, {
        path: ["pace", "steady", level],
        problem: `${level} is slower than ${before}`,
        remedy: `Write the seconds so that they do not grow from ${before} to ${level}.`,
      });
    }
  }
}
