import type { Plan } from "../models/plan/plan.ts";
import type { Fact, Metric } from "../models/condition.ts";
import { kilograms, massIn, type MassUnit } from "../models/quantity.ts";
import { capitalised } from "./basis.ts";
import { fillReason } from "./choice-reason.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";
import { sayClock } from "./time.ts";

type Choice = Plan["choices"][number];
type Reason = Choice["because"][number];
type SayValue = (value: number, units: MassUnit) => string;

const unit =
  (word: string, decimals = 0): SayValue =>
  (value) =>
    `${sayNumber(value, decimals)}${NO_BREAK_SPACE}${word}`;
const count: SayValue = (value) => sayNumber(value, 0);
const share: SayValue = (value) => sayShare(value);

const METRIC_PHRASES: Readonly<Partial<Record<Metric, { readonly name: string; readonly say: SayValue }>>> = {
  age: { name: "your age", say: count },
  "body-mass": {
    name: "your body mass",
    say: (value, units) => unit(units)(massIn(units, kilograms(value)).value, units),
  },
  height: { name: "your height", say: (value) => `${sayNumber(value * 100, 0)}${NO_BREAK_SPACE}cm` },
  "load-share": { name: "the load as a share of your best lift", say: share },
  "ratio-to-parent": { name: "your best of this style as a share of your best of any style", say: share },
  unbroken: { name: "your best unbroken set", say: count },
  "set-share": { name: "one visit as a share of your best unbroken set", say: share },
  amount: { name: "the number of reps in one visit", say: count },
  "total-amount": { name: "the number of reps in the whole workout", say: count },
  "usual-amount": { name: "what you are used to in a session", say: count },
  "seconds-per-unit": { name: "your pace", say: unit("s a rep", 1) },
  "pace-share": { name: "your pace against that of a regular", say: share },
  "planned-set": { name: "your largest planned set", say: count },
  visits: { name: "how often the part comes to it", say: count },
  "part-minutes": { name: "the length of this part", say: unit("min") },
  "training-hours": { name: "your hours of training a week", say: count },
  "workout-minutes": { name: "the length of the work", say: unit("min") },
  "work-rest-ratio": { name: "work over rest", say: (value) => sayNumber(value, 1) },
  "window-minutes": { name: "the time for the lift", say: unit("min") },
  "hours-to-next": { name: "time to your next start", say: unit("h") },
  "hours-to-deadline": { name: "time to the deadline", say: unit("h") },
  wbgt: { name: "the heat (WBGT)", say: unit("°C") },
  "starts-today": { name: "the number of your starts today", say: count },
  "warm-up-minutes": { name: "your time to warm up", say: unit("min") },
  "days-unaccustomed": { name: "the number of days since you last did it", say: count },
  "times-usual": {
    name: "the work of it against what you are used to",
    say: (value) => `${sayNumber(value, 1)}×`,
  },
  "hours-since-start": { name: "time since your last start", say: unit("h") },
  "start-hour": { name: "the hour of your start", say: (value) => sayClock(value * 60) },
};

/** What a fact says about its word; `#` stands for the word. The second is the same denied. */
const FACT_PHRASES: Readonly<Partial<Record<Fact, readonly [string, string]>>> = {
  movement: ["the workout holds #", "the workout holds no #"],
  "movement-kind": ["the workout holds # work", "the workout holds no # work"],
  taxes: ["the work tires the #", "the work spares the #"],
  stress: ["the work brings #", "the work brings no #"],
  place: ["the part has it #", "the part does not have it #"],
  "limit-joint": ["you state a limit at the #", "you state no limit at the #"],
  "limit-condition": ["you state #", "you do not state #"],
  "limit-stress": ["your limits rule out #", "your limits allow #"],
  habit: ["your habit: #", "it is not your habit: #"],
  stiff: ["your # is stiff", "your # is not stiff"],
  planned: ["the plan takes it so: #", "the plan does not take it so: #"],
  needs: ["the workout needs this: #", "the workout does not need this: #"],
  level: ["your level: #", "your level is not #"],
  recovery: ["your recovery is #", "your recovery is not #"],
  prefers: ["you prefer #", "you do not prefer #"],
  format: ["the format is #", "the format is not #"],
  "gym-has": ["your gym has #", "your gym has no #"],
  sex: ["reference values: #", "reference values: not #"],
  cannot: ["you cannot do # yet", "you can do #"],
  ending: ["you are expected to end so: #", "you are not expected to end so: #"],
  "may-come": ["# may still come", "# will not come"],
  retry: ["another try is #", "another try is not #"],
  "self-check": ["your self-check is #", "your self-check is not #"],
};

/** Facts whose word is yes or no, said for yes and for no. */
const YES_NO_PHRASES: Readonly<Partial<Record<Fact, readonly [string, string]>>> = {
  lifted: ["it is lifted for load", "it is not lifted for load"],
  "has-lift": ["a lift is part of it", "no lift is part of it"],
  "needs-catching": ["a miss lands on you unless it is caught", "a miss cannot land on you"],
  "set-known": ["your best unbroken set is known", "your best unbroken set is not known"],
  "best-guessed": ["your best lift is a guess", "your best lift is no guess"],
  "best-known": ["your best lift is known", "your best lift is not known"],
  competition: ["it belongs to a competition", "it belongs to no competition"],
  sharing: ["you share the equipment while warming up", "you have the equipment to yourself"],
  acclimatised: ["you are used to the heat", "you are not used to the heat"],
  limiter: ["it limits you here", "it does not limit you here"],
  retry: ["another try is planned", "no other try is planned"],
  "sharp-pain": ["there is sharp pain", "there is no sharp pain"],
};

const COMPARISONS: Readonly<Record<string, string>> = {
  "at-least": "at least",
  over: "over",
  "at-most": "at most",
  under: "under",
};

const isMetric = (what: string): what is Metric => Object.hasOwn(METRIC_PHRASES, what);
const isFact = (what: string): what is Fact =>
  Object.hasOwn(FACT_PHRASES, what) || Object.hasOwn(YES_NO_PHRASES, what);
const asWords = (name: string | number): string => String(name).replaceAll("-", " ");

/**
 * The number or fact that decided, as a fragment: what, the reader's own value, and the bound it was held against.
 *
 * @example sayReason({ what: "unbroken", value: 14, is: "under", threshold: 20 }, "kg") // => "your best unbroken set is 14 (under 20)"
 */
export function sayReason({ what, value, is, threshold }: Reason, units: MassUnit): string {
  if (isMetric(what) && typeof value === "number") {
    const metric = METRIC_PHRASES[what];
    const say = metric?.say ?? count;
    const bound =
      typeof threshold === "number" ? ` (${COMPARISONS[is] ?? asWords(is)} ${say(threshold, units)})` : "";
    return `${metric?.name ?? asWords(what)} is ${say(value, units)}${bound}`;
  }
  const denied = /\bnot\b/.test(is.replaceAll("-", " "));
  if (isFact(what) && (value === "yes" || value === "no")) {
    const answer = YES_NO_PHRASES[what]?.[(value === "yes") === denied ? 1 : 0];
    if (answer !== undefined) return answer;
  }
  const words = isFact(what) ? FACT_PHRASES[what]?.[denied ? 1 : 0] : undefined;
  if (words !== undefined && value !== undefined) return words.replace("#", asWords(value));
  return [asWords(what), denied ? "is not" : "is", ...(value === undefined ? [] : [asWords(value)])].join(
    " ",
  );
}

/** Facts of a limit speak for themselves; the others do where they have words of their own. */
const DECIDED: Readonly<Partial<Record<Choice["decidedBy"], string>>> = {
  limit: "Your stated limit decides",
  preference: "You prefer it",
};

/**
 * Why an option was picked, as a sentence: the reason of the trade with the athlete's number, or the limit or wish that
 * decided. Nothing where there is nothing to say but that it is usual.
 */
export function sayBecause(choice: Choice, units: MassUnit): string | undefined {
  const decided = DECIDED[choice.decidedBy];
  if (decided === undefined) return choice.reason && fillReason(choice.reason, units);
  const reasons = choice.because.map((reason) => sayReason(reason, units));
  return reasons.length > 0 && choice.decidedBy === "limit"
    ? `${capitalised(sayList(reasons))}.`
    : `${decided}.`;
}

/** Stands over the choices that decide little. */
export const LITTLE_HANGS_ON = "Little hangs on these";

/** What a choice is about, as a heading. Reads `Deadlifts and hang power cleans`. */
export const sayAbout = ({ movementName, alsoFor = [] }: Pick<Choice, "movementName" | "alsoFor">): string =>
  capitalised(sayList([movementName, ...alsoFor.map(({ name }) => name)]));

/** From which load on another option suits, as a sentence; nothing where one option does for all. */
export const sayChangeAt = ({ changesAt }: Pick<Choice, "changesAt">, units: MassUnit): string | undefined =>
  changesAt &&
  `From ${sayLoad(changesAt.load, units)} on ${changesAt.to.name}: ${lowerFirst(changesAt.to.say)}`;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
