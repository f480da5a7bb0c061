import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";

type After = NonNullable<Plan["after"]>;
type Step = After["steps"][number];
type Day = After["day"];
type Piece = Day["pieces"][number];
type Amount = NonNullable<Step["amount"]>;

/** The unit and the time it is for. */
const UNITS: Readonly<Record<Amount["unit"], readonly [unit: string, per: string]>> = {
  g: ["g", ""],
  mL: ["mL", ""],
  mg: ["mg", ""],
  "g/h": ["g", " an hour"],
  "g/day": ["g", " a day"],
};

/** From here on no stand gives more than the nearest five, and from there on than the nearest fifty. */
const BY_FIVE_FROM = 20;
const BY_FIFTY_FROM = 250;

/**
 * A range of an amount, no finer than what it rests on. One figure where both ends round to the same.
 *
 * @example sayAmountRange({ low: 64, high: 77, unit: "g", perKilogram: false }) // => "65–75\u00a0g"
 */
export function sayAmountRange({ low, high, unit, of, perKilogram }: Amount): string {
  const round = (value: number): string => {
    if (perKilogram) return sayNumber(value, 2);
    const step = value >= BY_FIFTY_FROM || unit === "mL" ? 50 : value >= BY_FIVE_FROM ? 5 : 1;
    return sayNumber(Math.round(value / step) * step, 0);
  };
  const [from, to] = [round(low), round(high)];
  const range = from === to ? `about${NO_BREAK_SPACE}${from}` : `${from}–${to}`;
  const [short, per] = UNITS[unit];
  const what = of === undefined ? "" : ` of ${of}`;
  return `${range}${NO_BREAK_SPACE}${short}${what}${perKilogram ? " for each kg of your body mass" : ""}${per}`;
}

/** How much or how long a step is. Nothing where neither is given. @example sayExtent({ minutes: 10 }) // => "10\u00a0min" */
export function sayExtent({ minutes, amount }: Pick<Step, "minutes" | "amount">): string | undefined {
  if (amount) return sayAmountRange(amount);
  return minutes === undefined ? undefined : `${sayNumber(minutes, 0)}${NO_BREAK_SPACE}min`;
}

/** Work of the same day as sets by reps and load. Reads `4 × 3 clean pulls at 50 kg`. */
export const sayWork = (work: Piece["work"][number], units: MassUnit): string =>
  `${work.sets}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}${work.reps} ${work.reps === 1 ? work.name : work.plural}` +
  (work.load ? ` at ${sayLoad(work.load, units)}` : "");

/** How long a piece is and how hard it may feel. @example sayPieceExtent({ minutes: 10, effort: 3 }) // => "10\u00a0min, effort 3 of 10" */
export const sayPieceExtent = ({ minutes, effort }: Pick<Piece, "minutes" | "effort">): string =>
  [
    ...(minutes === undefined ? [] : [`${sayNumber(minutes, 0)}${NO_BREAK_SPACE}min`]),
    ...(effort === undefined ? [] : [`effort ${effort} of${NO_BREAK_SPACE}10`]),
  ].join(", ");

const TITLES: Readonly<Record<Day["kind"], string>> = {
  session: "The rest of the day: one session",
  light: "The rest of the day: something light",
  between: "Until your next start",
  rest: "The rest of the day: rest",
};

/** What the rest of the day is called. */
export const sayDayTitle = ({ kind }: Pick<Day, "kind">): string => TITLES[kind];

type Reason = Day["because"][number];

function sayDayReason({ what, value = 0 }: Reason): string {
  const whole = sayNumber(value, 0);
  const hours = `${whole}${NO_BREAK_SPACE}h`;
  const said: Readonly<Record<Reason["what"], string>> = {
    ill: "you have been ill",
    condition: "you stated something about your health",
    limit: "you stated a limit",
    young: "you are under eighteen",
    new: "you are new to this",
    "next-start": `you start again in about ${hours}`,
    tomorrow: `you start again in ${hours}`,
    starts: value === 2 ? "you start twice today" : `you start ${whole} times today`,
    heat: "it is hot",
    age: "the body of sixty takes longer",
    long: `${whole}${NO_BREAK_SPACE}minutes of work are enough for a day`,
    evening: "you start in the evening",
    training: `you train ${hours} a week`,
    "training-guessed": `about ${hours} of training a week is usual at your level`,
  };
  return said[what];
}

const LEADS: Readonly<Record<Day["kind"], readonly [lead: string, end: string]>> = {
  session: ["In this order, if your check is good:", ""],
  light: ["No more than this, because", ""],
  between: ["Eat, rest and walk; train nothing, because", ""],
  rest: ["Rest comes first, because", " Walk, eat and sleep; that is all of it."],
};

const MOST_REASONS = 2;

/** A session by what is usual is only for who trains as much. */
const IF_LESS = " If you train less, walk instead.";

/** What the rest of the day is for and why, as a sentence. */
export function sayDay({ kind, because }: Pick<Day, "kind" | "because">): string {
  const [lead, end] = LEADS[kind];
  const isGuessed = kind === "session" && because.some(({ what }) => what === "training-guessed");
  const reasons = sayList(because.slice(0, MOST_REASONS).map(sayDayReason), "and");
  return `${lead} ${reasons}.${isGuessed ? IF_LESS : end}`;
}

const CHECKS: Readonly<Record<Piece["check"], string>> = {
  good: "only if your check is good",
  middling: "also if your check is middling",
  bad: "whatever the check says",
};

/** From which answer of the check on a piece is meant. */
export const sayPieceCheck = ({ check }: Pick<Piece, "check">): string => CHECKS[check];

/** What goes first when time is short, as a sentence; nothing where nothing can go. */
export function sayLeaveOut({
  pieces,
  leaveOutFirst,
}: Pick<Day, "pieces" | "leaveOutFirst">): string | undefined {
  const titles = leaveOutFirst.flatMap((id) => pieces.find((piece) => piece.id === id)?.title ?? []);
  const [first, second] = titles.map((title) => `“${title}”`);
  if (first === undefined) return undefined;
  return `Short of time? Leave out ${first}${second === undefined ? "" : `, then ${second}`}.`;
}
