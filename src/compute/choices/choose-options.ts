import type { MovementChoice } from "../../models/movement.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { Withheld, Withholding } from "../cautions/withholding.ts";
import { allHold } from "../conditions/holds.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { CHOICE_CONSTANTS } from "./constants.ts";
import { mergeChoices } from "./merge-choices.ts";
import type { OptionVerdict } from "./option-verdict.ts";
import { ownEntry } from "../../models/own-entry.ts";
import { explainChoice, shown } from "./explain-choice.ts";
import { type Choice, pickFrom, weighOptions, type Weighed } from "./weigh-options.ts";

export type ChooseInput = {
  /** The movements of the workout in order, each with the situation narrowed to it. */
  readonly movements: readonly AtMovement[];
  readonly withholding: Pick<Withholding, "stresses">;
  /** Preferred option by choice id. */
  readonly prefers: Readonly<Record<string, string>>;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * Decides every choice the movements of a workout offer.
 *
 * An option that adds a stress the athlete keeps away from is out. Of the others the first is taken whose conditions
 * all hold. A stated preference settles a close call and whatever no number speaks on; a clear number outweighs it.
 * A choice that comes out the same in several parts, or for several movements, is told once.
 * The answer carries the numbers that decided, the runner-up, when to change over, and, when it was close or a number
 * is not known, what to try in the warm-up. An option the numbers favour and a limit rules out is told as withheld.
 */
export function chooseOptions(input: ChooseInput): {
  readonly choices: readonly Choice[];
  readonly withheld: readonly Withheld[];
} {
  const decided = input.movements.flatMap((at) =>
    at.movement.choices.flatMap((choice) => {
      const asked = whereAsked(choice, at);
      return asked === undefined ? [] : [decide(choice, asked, input)];
    }),
  );
  const withheld = decided.flatMap((each) => each.withheld ?? []);
  return {
    choices: mergeChoices(decided.flatMap(({ choice }) => choice ?? [])),
    withheld: withheld.filter(
      (each, at) => withheld.findIndex((other) => other.of === each.of && other.way === each.way) === at,
    ),
  };
}

/** A movement from the first of its rising loads on at which a choice is asked; nothing where none asks it. */
function whereAsked(choice: MovementChoice, at: AtMovement): AtMovement | undefined {
  if (allHold(choice.when ?? [], at.situation).holds) return at;
  const { heavier: [next, ...rest] = [], ...here } = at;
  return next && whereAsked(choice, { ...here, situation: next.situation, heavier: rest });
}

function decide(
  choice: MovementChoice,
  at: AtMovement,
  input: ChooseInput,
): { readonly choice?: Choice; readonly withheld?: Withheld } {
  const { closeCall } = withOverrides(CHOICE_CONSTANTS, input.overrides);
  const weighed = weighOptions(choice, at, input);
  const picked = pickFrom(weighed, ownEntry(input.prefers, choice.id), closeCall);
  const withheld = withheldOption(weighed, at, picked?.pick, input);
  return {
    ...(picked !== undefined && {
      choice: byLoad(
        explainChoice(choice, at, weighed, picked, closeCall),
        changeAt(choice, at, picked.pick.option.id, input),
      ),
    }),
    ...(withheld !== undefined && { withheld }),
  };
}

/** Where a heavier load of the part asks for another option, that load says when to change over, and nothing else does. */
function byLoad({ switchWhen, test, ...choice }: Choice, change: Pick<Choice, "changesAt">): Choice {
  return change.changesAt === undefined
    ? { ...choice, ...(switchWhen !== undefined && { switchWhen }), ...(test !== undefined && { test }) }
    : { ...choice, ...change };
}

/** The first of the heavier loads of the part at which another option suits: that option and the load. */
function changeAt(
  choice: MovementChoice,
  { heavier = [], ...at }: AtMovement,
  picked: string,
  input: ChooseInput,
): Pick<Choice, "changesAt"> {
  const { closeCall } = withOverrides(CHOICE_CONSTANTS, input.overrides);
  for (const { situation, load } of heavier) {
    const there = weighOptions(choice, { ...at, situation }, input);
    const pick = pickFrom(there, ownEntry(input.prefers, choice.id), closeCall)?.pick;
    if (pick !== undefined && pick.option.id !== picked) return { changesAt: { load, to: shown(pick) } };
  }
  return {};
}

function withheldOption(
  { favoured, ruledOutBy }: Weighed,
  { movement }: AtMovement,
  instead: OptionVerdict | undefined,
  { withholding }: ChooseInput,
): Withheld | undefined {
  const reason = ruledOutBy === undefined ? undefined : withholding.stresses.get(ruledOutBy);
  if (favoured === undefined || reason === undefined) return undefined;
  return {
    what: "option",
    movement: movement.id,
    of: movement.plural,
    way: favoured.option.name,
    reason,
    ...(instead !== undefined && { instead: instead.option.name }),
  };
}
