import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayNotSet } from "./coach-word-not-set.ts";
import { sayKilograms } from "./mass.ts";
import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";
import { isTime, sayWholeScore } from "./score.ts";
import { sayClock, sayDuration } from "./time.ts";

type Word = NonNullable<Plan["coachWord"]>;
type PacedWord = Word["paced"][number];

/** What the coach's word means beside the athlete's own numbers, a sentence each. */
export const sayCoachWord = (word: Word, units: MassUnit): readonly string[] => [
  ...(word.say === undefined ? [] : [word.say]),
  ...word.paced.flatMap((paced) => sayPaced(paced, word.paced.length > 1, units)),
  ...word.lifts.flatMap((lift) => sayLift(lift, word.sets, units)),
  ...word.notSet.map((not) => sayNotSet(not, units)),
];

/** Things that change what is lifted; without one of them there is nothing to say of a lift. */
const OF_LIFTS: Word["sets"] = [
  "opener",
  "jump",
  "heaviest",
  "lifts",
  "liftRest",
  "firstLiftAfter",
  "target",
];

function sayLift(
  {
    part,
    expected,
    expectedWithout,
    opener,
    openerWithout,
    heaviest,
    heaviestWithout,
    aimed,
  }: Word["lifts"][number],
  sets: Word["sets"],
  units: MassUnit,
): readonly string[] {
  if (!sets.some((kind) => OF_LIFTS.includes(kind))) return [];
  const say = (kilograms: number): string => sayKilograms(kilograms, units);
  const first =
    opener === undefined || openerWithout === undefined || opener === openerWithout
      ? ""
      : `opens with ${say(opener)} where the numbers say ${say(openerWithout)}; `;
  const most =
    heaviest === undefined || heaviestWithout === undefined || heaviestWithout <= heaviest
      ? ""
      : `nothing over ${say(heaviest)} where the numbers go to ${say(heaviestWithout)}; `;
  const aim = aimed === undefined ? "" : `aims at ${say(aimed.load)}, made on ${sayDays(aimed.chance)}; `;
  const difference = Math.round((expected - expectedWithout) * 10) / 10;
  const means =
    Math.abs(difference) < 0.5
      ? "the best lift to expect stays the same"
      : `the best lift to expect is ${say(expected)}, ${say(Math.abs(difference))} ${difference < 0 ? "less" : "more"} than without`;
  return [`Set by your coach in part ${part}: ${first}${most}${aim}${means}.`];
}

function sayPaced(paced: PacedWord, several: boolean, units: MassUnit): readonly string[] {
  const where = several ? ` in part ${paced.part}` : "";
  return [...sayAimed(paced, where, units), ...sayFirst(paced, where), ...sayCosts(paced, where, units)];
}

/** `8:00 is 4 % faster than your numbers: 1 day in 5.` */
function sayAimed({ aimed, score, perRound }: PacedWord, where: string, units: MassUnit): readonly string[] {
  if (aimed === undefined) return [];
  const { asked, own, chance, ifTried } = aimed;
  const say = (value: number): string => sayWholeScore(score, value, { units, perRound });
  const share = isTime(score) ? own / asked - 1 : asked / own - 1;
  const percent = `${sayNumber(Math.abs(share) * 100, 0)}${NO_BREAK_SPACE}%`;
  const [harder, easier] = isTime(score) ? ["faster", "slower"] : ["more", "less"];
  const against =
    Math.abs(share) < 0.005
      ? "is what your numbers say"
      : `is ${percent} ${share > 0 ? harder : easier} than your numbers (${say(own)})`;
  const tried =
    ifTried === undefined || ifTried < own + 1
      ? ""
      : ` A usual day begun at that pace ends about ${sayClock(ifTried)}.`;
  return [`Target set by your coach${where}: ${say(asked)} ${against}: ${sayDays(chance)}.${tried}`];
}

/** Chances as days: nearly every day, so many in ten, one in so many, hardly any. @example sayDays(0.2) // => "1\u00a0day in\u00a05" */
export function sayDays(chance: number): string {
  if (chance >= 0.95) return "nearly every day";
  if (chance < 0.03) return "hardly any day";
  if (chance < 0.28) return `1${NO_BREAK_SPACE}day in${NO_BREAK_SPACE}${Math.round(1 / chance)}`;
  return `${Math.round(chance * 10)}${NO_BREAK_SPACE}days in${NO_BREAK_SPACE}10`;
}

function sayFirst({ first }: PacedWord, where: string): readonly string[] {
  if (first === undefined) return [];
  const { seconds, planned, own } = first;
  const held =
    planned >= seconds - 0.5
      ? `the plan does it in ${sayClock(planned)} anyway`
      : `the numbers would do it in ${sayClock(planned)}`;
  const over =
    own === undefined || own <= seconds + 0.5
      ? ""
      : `; faster than ${sayClock(own)} the numbers do not get through to the end`;
  return [`Set by your coach${where}: the first round not faster than ${sayClock(seconds)}; ${held}${over}.`];
}

/** `Set by your coach: pull-up in sets of 5-5-5 costs about 9 s.` */
function sayCosts({ costs, score }: PacedWord, where: string, units: MassUnit): readonly string[] {
  const said = costs.map(({ kind, name = "", sizes, rest, cost, inSeconds }) => {
    const what = {
      sets: `${name} in ${sizes?.length === 1 ? `sets of ${sizes[0] ?? ""}` : (sizes?.join("-") ?? "")}`,
      rests: `${name} with ${sayDuration(rest ?? 0)} between sets`,
      pace: `the pace on ${name}`,
      "first-round": "the slower first round",
    }[kind];
    return `${what} ${sayCost(cost, inSeconds ? "time" : score, units)}`;
  });
  return said.length === 0 ? [] : [`Set by your coach${where}: ${sayList(said)}.`];
}

function sayCost(cost: number, score: PacedWord["score"], units: MassUnit): string {
  const whole = Math.round(Math.abs(cost));
  if (whole < 1) return "costs no time";
  const kind = score === "rounds-and-reps" ? "reps" : score;
  const amount = isTime(score) ? sayDuration(whole) : sayWholeScore(kind, whole, { units });
  return `${cost > 0 ? "costs" : "gains"} about ${amount}`;
}
