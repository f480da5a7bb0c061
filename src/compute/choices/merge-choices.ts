import type { Plan } from "../../models/plan/plan.ts";

type Choice = Plan["choices"][number];

/** Puts together what several choices would say alike: one answer for several parts or movements, each sentence once. */
export const mergeChoices = (choices: readonly Choice[]): readonly Choice[] =>
  saidOnce(mergeMovements(mergeParts(choices)));

/** The same choice of the same movement with the same answer, in several parts, is one. */
function mergeParts(choices: readonly Choice[]): readonly Choice[] {
  const merged: Choice[] = [];
  for (const choice of choices) {
    const at = merged.findIndex(
      (other) =>
        other.movement === choice.movement &&
        other.id === choice.id &&
        other.pick.id === choice.pick.id &&
        other.changesAt === undefined &&
        choice.changesAt === undefined,
    );
    const known = merged[at];
    if (known === undefined) merged.push(choice);
    else merged[at] = { ...known, parts: [...known.parts, ...choice.parts] };
  }
  return merged;
}

/** The same choice with the same answer for several movements is one, told with the heaviest load. */
function mergeMovements(choices: readonly Choice[]): readonly Choice[] {
  const merged: Choice[] = [];
  for (const choice of choices) {
    const at = merged.findIndex((other) => isSameAnswer(other, choice));
    const known = merged[at];
    if (known === undefined) merged.push(choice);
    else merged[at] = bothOf(known, choice);
  }
  return merged;
}

/** What two choices would try, change over at or say as their reason alike stands once, with the first of them. */
const saidOnce = (choices: readonly Choice[]): readonly Choice[] =>
  choices.map(({ test, switchWhen, reason, ...choice }, at) => {
    const before = choices.slice(0, at);
    return {
      ...choice,
      ...(reason !== undefined && !before.some((each) => isSameReason(each.reason, reason)) && { reason }),
      ...(switchWhen !== undefined &&
        !before.some((each) => each.switchWhen === switchWhen) && { switchWhen }),
      ...(test !== undefined && !before.some((each) => each.test === test) && { test }),
    };
  });

const isSameReason = (one: Choice["reason"], other: NonNullable<Choice["reason"]>): boolean =>
  one?.say === other.say &&
  one.values.every(({ gap, value }) => other.values.some((each) => each.gap === gap && each.value === value));

const isSameAnswer = (one: Choice, other: Choice): boolean =>
  one.id === other.id &&
  one.pick.id === other.pick.id &&
  one.pick.say === other.pick.say &&
  one.decidedBy === other.decidedBy &&
  one.changesAt === undefined &&
  other.changesAt === undefined;

function bothOf(one: Choice, other: Choice): Choice {
  const [first, second] = loadOf(other) > loadOf(one) ? [other, one] : [one, other];
  const { reason, alsoFor = [], ...rest } = first;
  const asOne = [
    { movement: second.movement, name: second.movementName },
    ...alsoFor,
    ...(second.alsoFor ?? []),
  ];
  return {
    ...rest,
    ...(reason !== undefined && holdsForBoth(reason, second.reason) && { reason }),
    alsoFor: asOne.filter(({ movement }, at) => asOne.findIndex((each) => each.movement === movement) === at),
    parts: [...new Set([...one.parts, ...other.parts])],
  };
}

const LOAD_SHARE = "load share";
const loadOf = ({ reason }: Choice): number =>
  reason?.values.find(({ gap }) => gap === LOAD_SHARE)?.value ?? 0;

/** A reason holds for two movements where its numbers are the same; of loads the heavier one speaks for both. */
const holdsForBoth = (one: NonNullable<Choice["reason"]>, other: Choice["reason"]): boolean =>
  one.say === other?.say &&
  one.values.every(
    ({ gap, value }) =>
      gap === LOAD_SHARE || other.values.some((each) => each.gap === gap && each.value === value),
  );
