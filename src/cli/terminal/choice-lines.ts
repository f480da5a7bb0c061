import type { Plan } from "../../models/plan/plan.ts";
import { sayBecause } from "../../wording/reason.ts";
import { heading, wrap } from "./lines.ts";

/** Every choice with the option that suits, the number that decided it, and when to change over. */
export function choiceLines({ choices, athlete }: Plan): readonly string[] {
  if (choices.length === 0) return [];
  return [
    heading("YOUR CHOICES"),
    ...choices.flatMap((choice) => [
      ...wrap(`${choice.movementName}: ${choice.pick.name}. ${sayBecause(choice, athlete.units)}`),
      ...wrap(choice.pick.say, 80, "  "),
      ...(choice.switchWhen === undefined ? [] : wrap(choice.switchWhen, 80, "  ")),
      ...(choice.test === undefined ? [] : wrap(choice.test, 80, "  ")),
    ]),
  ];
}
