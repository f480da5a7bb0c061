import { MUSCLES } from "../../models/vocabulary.ts";
import { freshMuscles, type Muscles, restMuscles } from "../motion/muscles.ts";
import type { PartInput } from "./paced-part.ts";
import { refill } from "../motion/reserve.ts";
import type { Rules } from "../motion/rules.ts";
import { type RunState, startState } from "../motion/run.ts";

/** The body at the start of a part: fresh, or as the part before left it after the rest since. */
export function startBody(
  before: PartInput["before"],
  rules: Rules,
): { readonly state: RunState; readonly muscles: Muscles } {
  const state = startState(rules);
  const muscles = freshMuscles(rules);
  if (!before) return { state, muscles };
  state.fast = before.state.reserve.fast * rules.reserve;
  state.slow = before.state.reserve.slow * rules.reserve;
  refill(state, rules, rules.reserve, before.rest, 0);
  MUSCLES.forEach((muscle, m) => {
    muscles.fast[m] = before.state.muscles[muscle].fast;
    muscles.slow[m] = before.state.muscles[muscle].slow;
  });
  restMuscles(muscles, rules, before.rest);
  return { state, muscles };
}
