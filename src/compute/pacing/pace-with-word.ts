import type { TargetWord } from "../../models/coach-word.ts";
import type { HeldFirst, NotSet } from "../../models/plan/coach-word.ts";
import type { Seconds } from "../../models/quantity.ts";
import { rulesFor } from "../motion/rules.ts";
import { paceAtTarget } from "./pace-at-target.ts";
import { pacePart } from "./pace-part.ts";
import type { PacedPart, PartInput } from "./paced-part.ts";
import type { WayWord } from "./set-by-coach.ts";

/** What a coach sets of one part that is paced. */
export type PartWord = {
  readonly way: WayWord;
  readonly firstRound?: Seconds;
  readonly target?: TargetWord;
};

/** A first round is as long as asked for when it is nearer than this, seconds; tried so many times. */
const NEAR = 0.5;
const TRIES = 8;

/**
 * Paces a part around what the coach set: sets, rests and paces first, then the first round held back where it would be faster than
 * allowed, then the whole of it for the target. Each is told beside the athlete's own numbers, and what cannot be is told as not set.
 */
export function paceWithWord(input: PartInput, { way: wanted, firstRound, target }: PartWord): PacedPart {
  const { input: set, given } = givenWay(input, wanted);
  if (given.kind === "not-paced") return given;
  const held = firstRound === undefined ? given : holdFirst(set, given, firstRound);
  if (target === undefined) return held;
  const { beginning } = rulesFor(input.capacity, input.overrides);
  return paceAtTarget(held, target, beginning, (scale) =>
    again(set, scale(input.capacity), held, firstRound),
  );
}

/** Factors on the time of the work whose pace is left open, tried where a pace that is set asks for slower work around it. */
const SLOWER_AROUND = [1.12, 1.35];

/** What a part is paced with, and what comes of it. */
type Given = { readonly input: PartInput; readonly given: PacedPart };

/** The part with sets and paces as set; where one is not kept in the end, without it, and that is told. */
function givenWay(input: PartInput, wanted: WayWord): Given {
  const first = pacedWith({ ...input, way: wanted });
  const all = slowedAround(first);
  const notKept = notKeptOf(all.given);
  if (notKept.length === 0) return all;
  const without = (kind: NotSet["kind"]): ReadonlySet<string> =>
    new Set(notKept.flatMap((not) => (not.kind === kind && "movement" in not ? [not.movement] : [])));
  const [sets, paces] = [without("sets-too-much"), without("pace-not-held")];
  const way: WayWord = {
    sets: (wanted.sets ?? []).filter(({ movement }) => !sets.has(movement)),
    paces: (wanted.paces ?? []).filter(({ movement }) => !paces.has(movement)),
  };
  const fewer = slowedAround(pacedWith({ ...input, way }));
  if (fewer.given.kind === "not-paced") return fewer;
  const notSet = [...notKept, ...(fewer.given.word?.notSet ?? [])];
  return { ...fewer, given: { ...fewer.given, word: { ...fewer.given.word, notSet } } };
}

const pacedWith = (input: PartInput): Given => ({ input, given: pacePart(input) });

/** Where a pace is not held, the same with the rest of the work slow enough for it; as it was where that does not help. */
function slowedAround(paced: Given): Given {
  if (!notKeptOf(paced.given).some(({ kind }) => kind === "pace-not-held")) return paced;
  for (const aroundSlower of SLOWER_AROUND) {
    const slower = pacedWith({ ...paced.input, aroundSlower });
    if (notKeptOf(slower.given).length === 0) return slower;
  }
  return paced;
}

const notKeptOf = (given: PacedPart): readonly NotSet[] =>
  given.kind === "paced" ? (given.word?.notSet ?? []).filter(isNotKept) : [];

const isNotKept = ({ kind }: NotSet): boolean => kind === "sets-too-much" || kind === "pace-not-held";

type Paced = Extract<PacedPart, { kind: "paced" }>;

/** The same with another capacity; a first round that was held back stays so. */
function again(
  input: PartInput,
  capacity: PartInput["capacity"],
  held: Paced,
  firstRound: Seconds | undefined,
): PacedPart {
  const scaled: PartInput = { ...input, capacity };
  const paced = pacePart(scaled);
  return paced.kind === "paced" && firstRound !== undefined && held.word?.first !== undefined
    ? holdFirst(scaled, paced, firstRound)
    : paced;
}

/** The part with its first round no faster than allowed; the ceiling told is the coach's. */
function holdFirst(input: PartInput, own: Paced, allowed: Seconds): Paced {
  const [first, second] = own.pacing.rounds;
  const not = (kind: "one-round" | "clock-ends-the-round"): Paced => withWord(own, { notSet: [{ kind }] });
  if (first === undefined || second === undefined) return not("one-round");
  if (own.pacing.ceiling?.score !== undefined) return not("clock-ends-the-round");
  let paced = own;
  let slower = 1;
  for (let tries = 0; tries < TRIES; tries += 1) {
    const seconds = paced.pacing.rounds[0]?.seconds ?? allowed;
    if (seconds >= allowed - NEAR && (slower === 1 || seconds <= allowed + NEAR)) break;
    slower *= allowed / seconds;
    if (slower <= 1) break;
    const next = pacePart({ ...input, firstSlower: slower });
    if (next.kind === "not-paced") break;
    paced = next;
  }
  const ceiling = own.pacing.ceiling;
  const told: HeldFirst = {
    round: first.round,
    seconds: allowed,
    planned: first.seconds,
    ...(ceiling === undefined ? {} : { own: ceiling.seconds }),
  };
  const pacing = { ...paced.pacing, ceiling: { round: first.round, seconds: allowed } };
  return withWord({ ...paced, pacing }, { first: told });
}

const withWord = (
  paced: Paced,
  more: { readonly first?: HeldFirst; readonly notSet?: readonly NotSet[] },
): Paced => ({
  ...paced,
  word: {
    ...paced.word,
    ...(more.first === undefined ? {} : { first: more.first }),
    notSet: [...(paced.word?.notSet ?? []), ...(more.notSet ?? [])],
  },
});
