import type { Condition, Metric } from "./condition.ts";
import type { Length, Mass, Seconds } from "./quantity.ts";
import type {
  AmountUnit,
  Confidence,
  Equipment,
  ErgKind,
  Level,
  MovementKind,
  Muscle,
  Sex,
  Stress,
} from "./vocabulary.ts";

/** A number with where it comes from and how far it can be trusted. */
export type Sourced<T> = { readonly value: T; readonly source: string; readonly confidence: Confidence };

/**
 * Reference pace of a movement for somebody of a level, at the reference load.
 * `steady`: seconds per unit that could be held for about twenty minutes of this movement alone, breaks included.
 * `fastest`: seconds per unit of the quickest clean cycle when fresh.
 * `unbroken`: units usually possible in one set when fresh.
 */
export type ReferencePace = {
  readonly steady: Readonly<Record<Level, number>>;
  readonly fastest: Readonly<Record<Level, number>>;
  readonly unbroken: Readonly<Record<Level, number>>;
  /** Factor on seconds per unit by sex, 1 where no difference is known. */
  readonly bySex: Readonly<Record<Sex, number>>;
  readonly source: string;
  readonly confidence: Confidence;
};

/** What a gap in a reason stands for. */
export const REASON_GAPS = {
  pace: "seconds-per-unit",
  amount: "amount",
  total: "total-amount",
  set: "planned-set",
  "best set": "unbroken",
  "load share": "load-share",
  minutes: "part-minutes",
  age: "age",
  height: "height",
  "body mass": "body-mass",
} as const satisfies Readonly<Record<string, Metric>>;
export type ReasonGap = keyof typeof REASON_GAPS;

/** The names of the gaps in a reason, in order. */
export const gapsIn = (text: string): readonly string[] =>
  [...text.matchAll(/\{([^}]*)\}/g)].map((match) => match[1] ?? "");

export type MovementOption = {
  readonly id: string;
  readonly name: string;
  /** What to do, second person, one sentence. */
  readonly say: string;
  /** Conditions that favour the option; the first option whose conditions all hold is taken, the last needs none. */
  readonly when: readonly Condition[];
  /** Why it suits, one sentence with `{pace}` and other gaps of {@link REASON_GAPS} for the athlete's own numbers. */
  readonly because?: string;
  /** When to go over to the other option mid-workout. */
  readonly switchWhen?: string;
  /** What to try in the warm-up when it is close. */
  readonly test?: string;
  /** Stresses this option adds, for stated limits. */
  readonly adds: readonly Stress[];
};

/** A choice a movement offers: grip, stance, catch, break style, footwork. */
export type MovementChoice = {
  readonly id: string;
  readonly question: string;
  /** Present where little hangs on it: gear, a hand, what training settles. */
  readonly worth?: "little";
  /** Asked only where all of these hold. */
  readonly when?: readonly Condition[];
  readonly options: readonly MovementOption[];
};

export type Movement = {
  readonly id: string;
  readonly name: string;
  readonly plural: string;
  /** A short form for the sheet, at most 12 characters. */
  readonly short: string;
  readonly aliases: readonly string[];
  readonly kind: MovementKind;
  /** Units in which an amount may be given; the first is the usual one. */
  readonly counts: readonly AmountUnit[];
  /** Share from 0 to 1 of how much each muscle is taxed by a typical set. */
  readonly taxes: Readonly<Partial<Record<Muscle, number>>>;
  readonly stresses: readonly Stress[];
  /** Pace in the first unit of `counts`. */
  readonly pace: ReferencePace;
  /** How dear it is to speed up: cost rises with rate to this power (over 1). */
  readonly kappa: Sourced<number>;
  /** Seconds to get ready for the first rep on arriving: chalk, strapping in, picking up. */
  readonly setUp: Sourced<Seconds>;
  readonly erg?: ErgKind;
  /** Metres of one rep where a distance is counted in steps or reps. */
  readonly metresPerRep?: number;
  /** Present where a load is lifted. */
  readonly loading?: {
    /** `bar`: one barbell; `pair`: one in each hand; `single`: one object; `worn`; `sled`. */
    readonly held: "bar" | "pair" | "single" | "worn" | "sled";
    /** Whether a single best lift of it is meaningful. */
    readonly lift: boolean;
    /** The load the reference pace is meant for, by sex; of a pair, the mass of one piece. */
    readonly reference: Readonly<Record<Sex, Mass>>;
    /** Best lift of this movement as a share of the best of other movements, nearest relation first. */
    readonly ratios: readonly { readonly of: string; readonly ratio: Sourced<number> }[];
    /** Typical best lift of a man as a share of body mass by level, all pieces together, for athletes without lifts. */
    readonly typical: Readonly<Record<Level, number>>;
    /** Whether a missed lift lands on the lifter unless pins, spotters or bumpers are used. */
    readonly needsCatching: boolean;
  };
  readonly height?: Readonly<Record<Sex, Length>>;
  readonly choices: readonly MovementChoice[];
  /** What must stand ready for it beside what its kind needs. */
  readonly needs?: readonly Equipment[];
  /** What a judge looks at, the most often lost first. */
  readonly standards: readonly string[];
  /** Movements an athlete may do instead when they cannot or must not do this one, nearest first. */
  readonly easier: readonly string[];
  /** The level from which on an athlete of whom nothing else is known can be counted on to have the skill; absent where everybody has. */
  readonly sureFrom?: Readonly<Record<Sex, Level>>;
  /** The general movement this one is a style of, if any. */
  readonly styleOf?: string;
  /** The movement it becomes for who must not kip: slower, in smaller sets, and counted all the same. */
  readonly withoutKipping?: string;
};
