import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE, sayCount, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";

type EarlySplits = NonNullable<NonNullable<Plan["parts"][number]["pacing"]>["earlySplits"]>;
type Cost = NonNullable<EarlySplits["perRep"]>;
type Change = NonNullable<EarlySplits["driftPerRound"]>;

/** What early performances show, in three plain statements: the cost of rounds and reps; slowing and finish; how far they were used. */
export const sayEarlySplitsPlainly = (early: EarlySplits): readonly string[] => [
  sayCosts(early),
  saySlowing(early),
  sayUse(early),
];

function sayCosts({ fixedPerRound, perRep, notIdentifiable }: EarlySplits): string {
  const round = fixedPerRound && `every round costs ${sayCost(fixedPerRound)} whatever is in it`;
  const rep = perRep && `a rep costs ${sayCost(perRep)}`;
  if (round && rep) return asSentence(`${round}, and ${rep}`);
  if (round ?? rep) return asSentence(round ?? rep ?? "");
  return notIdentifiable.includes("perRep")
    ? "These splits do not tell a cost of the round apart from the cost of its reps."
    : "These splits do not tell what a round costs whatever is in it.";
}

function saySlowing({ driftPerRound, finishSurge }: EarlySplits): string {
  if (driftPerRound && finishSurge) {
    return `Each round was ${sayChange(driftPerRound)} than the one before, the last one ${sayChange(finishSurge)} than that would make it.`;
  }
  if (driftPerRound) {
    return `Each round was ${sayChange(driftPerRound)} than the one before; how the last one differed these splits do not tell.`;
  }
  return finishSurge
    ? `The last round was ${sayChange(finishSurge)} than the others would make it; how rounds slowed these splits do not tell.`
    : "These splits tell neither how rounds slowed nor how the last one differed.";
}

/** A weight that would be said as nought per cent is told as what it is. */
const isUsed = ({ weight }: EarlySplits): boolean => weight >= 0.005;

const sayUse = (early: EarlySplits): string =>
  isUsed(early)
    ? `${asSentence(saySeen(early))} ${early.performances === 1 ? "It counts" : "They count"} for ${sayShare(early.weight)} of how the work is paced here, everyone's own numbers for the rest.`
    : "There is too little in them to go by: the work is paced without them.";

/** What early performances changed in one athlete's plan, in a line. */
export function sayEarlyChange(early: EarlySplits): string {
  const changes = isUsed(early) && early.changed ? [early.changed.first, early.changed.last] : [];
  const seen = asSentence(saySeen(early));
  const of = (one: string, many: string): string => (early.performances === 1 ? one : many);
  if (changes.every((change) => Math.round(change) === 0)) {
    return `${seen} ${of("It leaves", "They leave")} this plan as your own numbers make it.`;
  }
  const [first = 0, last = 0] = changes;
  return `${seen} ${of("With it", "With them")} your first round is planned ${sayLonger(first)} and your last ${sayLonger(last)} than from your own numbers alone.`;
}

const saySeen = ({ performances }: EarlySplits): string =>
  `${sayCount(performances, "early performance was", "early performances were")} seen`;

const sayLonger = (change: number): string => {
  const size = Math.round(Math.abs(change));
  return size === 0 ? "no slower" : `${size}${NO_BREAK_SPACE}s ${change < 0 ? "faster" : "slower"}`;
};

const sayCost = ({ seconds, error }: Cost): string => `${sayTenths(seconds)} (± ${sayTenths(error)})`;
const sayTenths = (seconds: number): string => `${sayNumber(seconds, 1)}${NO_BREAK_SPACE}s`;

/** A change that would be said as nought per cent is none. */
function sayChange({ share, error }: Change): string {
  const size = sayShare(Math.abs(share));
  const change = size === sayShare(0) ? "no slower" : `${size} ${share < 0 ? "faster" : "slower"}`;
  return `${change} (± ${sayShare(error)})`;
}

const asSentence = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
