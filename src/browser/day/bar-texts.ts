import type { BarNow } from "../../live/bar-now.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { sayBarStop } from "../../wording/live.ts";
import { sayLoad } from "../../wording/mass.ts";
import { sayClock } from "../../wording/time.ts";
import { make, setText } from "./dom.ts";

/** The lines every screen at the bar has: a figure and what it counts, the load, a side of it, when, and what follows. */
export const barTexts = () => ({
  clock: make("p", { class: "day-figure" }),
  caption: make("p", { class: "day-caption" }),
  load: make("p", { class: "day-hand" }),
  sides: make("p", { class: "day-load" }),
  when: make("p", { class: "day-mark" }),
  then: make("p", { class: "day-next" }),
});

type BarTexts = ReturnType<typeof barTexts>;

/** That nothing is lifted any more, and nothing else. */
export function tellBarStop(texts: BarTexts, why: Extract<BarNow, { kind: "stop" }>["why"]): void {
  for (const text of Object.values(texts)) setText(text, "");
  setText(texts.load, sayBarStop(why));
}

/**
 * Which load waits, and for how long or since when.
 *
 * @param start of the lift, `since`: both seconds since the bar opened; `shift` makes of them the running clock
 */
export function tellBarLift(
  texts: BarTexts,
  { load, start }: { readonly load: Parameters<typeof sayLoad>[0]; readonly start: number },
  told: { readonly since: number; readonly shift: number; readonly units: MassUnit },
): void {
  const wait = start - told.since;
  setText(texts.caption, wait > 0 ? "lift in" : "lift now, since");
  setText(texts.clock, sayClock(Math.ceil(Math.abs(wait))));
  setText(texts.load, sayLoad(load, told.units));
  setText(texts.when, `at ${sayClock(start + told.shift)}`);
}
