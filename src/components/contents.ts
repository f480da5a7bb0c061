import type { Plan } from "../models/plan/plan.ts";
import { glossaryOf } from "./glossary.ts";

/** A section of a brief, by the id it has on the page. */
export type Entry = { readonly id: string; readonly title: string };

/** The sections of a brief that have something to say, in order. The components of the sections show the same. */
export function contentsOf(plan: Plan, hasText: boolean): readonly Entry[] {
  const { parts, loads, standards, setUp, workout } = plan;
  const paced = parts.filter(({ pacing }) => pacing);
  const lifted = parts.filter(({ lifting }) => lifting);
  const setsUp = loads.length + standards.length + setUp.length + workout.rules.length > 0;
  const named = (title: string, name: string, several: boolean): string =>
    several ? `${title}, part ${name}` : title;
  return [
    ...(plan.warmUp ? [{ id: "warm-up", title: "Warm-up" }] : []),
    ...(hasText ? [{ id: "coach", title: titleOfText(plan) }] : []),
    ...(plan.cautions.length > 0 ? [{ id: "care", title: "Take care" }] : []),
    ...paced.map(({ name }) => ({
      id: idOf("pacing", name),
      title: named("Pacing", name, paced.length > 1),
    })),
    ...lifted.map(({ name }) => ({
      id: idOf("lifts", name),
      title: named("Lifts", name, lifted.length > 1),
    })),
    ...(plan.choices.length > 0 ? [{ id: "choices", title: "How to do it" }] : []),
    ...(setsUp ? [{ id: "set-up", title: "Set up" }] : []),
    ...(plan.after ? [{ id: "after", title: "After" }] : []),
    { id: "grounds", title: "What this rests on" },
    ...(glossaryOf([plan]).length > 0 ? [{ id: "words", title: "Words" }] : []),
  ];
}

/** What the coach's text is called: for an athlete it comes from somebody, for a band it is about the workout. */
export const titleOfText = ({ athlete }: Plan): string =>
  athlete.anonymous ? "About this workout" : "From your coach";

/** The id of a section about one part. @example idOf("pacing", "A 1") // => "pacing-a-1" */
export const idOf = (section: string, part: string): string =>
  `${section}-${part.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
