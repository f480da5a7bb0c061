import type { RecoveryOption, SessionSlot } from "../../models/library.ts";
import { SESSION_SLOTS } from "../../models/library.ts";
import type { Muscle } from "../../models/vocabulary.ts";
import { allHold } from "../conditions/holds.ts";
import { type Situation, withMore } from "../conditions/situation.ts";
import type { AfterNumbers } from "./constants.ts";
import { type DayKind, dayKindOf } from "./day-kind.ts";
import type { After, PlanAfterInput } from "./plan-after.ts";
import { workOf } from "./piece-work.ts";
import { CHECK_ANSWERS, type CheckAnswer } from "./self-check.ts";

type Day = After["day"];
type Piece = Day["pieces"][number];

/** Breath recovers within the hour, so it does not keep a piece from the same day. */
const QUICKLY_BACK: readonly Muscle[] = ["lungs"];

/** What a day of each kind may hold, and how many pieces of each slot. */
const ROOM: Readonly<Record<DayKind, Room>> = {
  session: {
    loosen: 1,
    strength: 1,
    gymnastics: 2,
    "easy-work": 1,
    skill: 2,
    "easy-end": 1,
    mobility: 1,
    film: 1,
  },
  light: { walk: 1, loosen: 1, skill: 1, film: 1 },
  between: { walk: 1 },
  rest: { walk: 1, film: 1 },
};

/** What a light day takes of a slot must be easy. */
const ONLY_EASY: readonly DayKind[] = ["light", "between", "rest"];

/** A piece before it is counted against the time there is. */
type Candidate = { readonly piece: Piece; readonly keep: number };

/**
 * The rest of the day as one thing: rest, the time between two starts, something light, or a session in its order.
 *
 * Left out is what loads muscles that have just worked (unless it is easy), what does or lifts what the athlete keeps away
 * from, and a lift whose light load this gym cannot make. What may still come goes first in its slot. While the pieces are
 * longer than the day has room for, the one with the highest `keep` goes. Rest is always open; where it comes first, it
 * stands first.
 */
export function planDay(input: PlanAfterInput, numbers: AfterNumbers): Day {
  const { kind, because } = dayKindOf(input.situation, input.hoursAreStated, numbers);
  const room = roomFor(kind, because, input, numbers);
  const candidates = SESSION_SLOTS.flatMap((slot) => piecesOf(slot, kind, room, input, numbers));
  const kept = withinTime(candidates, minutesFor(kind, input.situation, numbers));
  const rest = input.library.recovery
    .filter((option) => option.kind === "rest")
    .map((option) => pieceFrom(option, "bad", []));
  const pieces = kept.map(({ piece }) => piece);
  return {
    kind,
    because: [...because],
    minutes: pieces.reduce((sum, piece) => sum + (piece.minutes ?? 0), 0),
    pieces: kind === "rest" ? [...rest, ...pieces] : [...pieces, ...rest],
    leaveOutFirst: kept
      .filter(({ keep }) => keep > 1)
      .sort((one, other) => other.keep - one.keep)
      .map(({ piece }) => piece.id),
  };
}

function minutesFor(kind: DayKind, { numbers: known }: Situation, numbers: AfterNumbers): number {
  if (kind !== "session") return numbers.lightMinutes;
  const usual = ((known["training-hours"] ?? 0) * 60) / numbers.daysOfTraining;
  return Math.min(numbers.longestSession, usual * numbers.sessionShare);
}

const WITHOUT_SKILL: readonly Day["because"][number]["what"][] = [
  "evening",
  "starts",
  "tomorrow",
  "long",
  "training-guessed",
];

type Room = Readonly<Partial<Record<SessionSlot, number>>>;

/**
 * The room of a day: a skill is kept inside easy work, so a light day with one has easy work in place of the walk; after an evening
 * start, and between two days of starts, nobody goes back to a skill.
 */
function roomFor(kind: DayKind, because: Day["because"], input: PlanAfterInput, numbers: AfterNumbers): Room {
  const room: Room = ROOM[kind];
  if (kind !== "light") return room;
  if (because.some(({ what }) => WITHOUT_SKILL.includes(what))) return { ...room, skill: 0 };
  const inEasyWork: Room = { ...room, walk: 0, "easy-work": 1 };
  const has = (slot: SessionSlot): boolean => piecesOf(slot, kind, inEasyWork, input, numbers).length > 0;
  if (!has("skill")) return room;
  return has("easy-work") ? inEasyWork : { ...room, skill: 0 };
}

function piecesOf(
  slot: SessionSlot,
  kind: DayKind,
  room: Room,
  input: PlanAfterInput,
  numbers: AfterNumbers,
): readonly Candidate[] {
  const most = room[slot] ?? 0;
  return input.library.recovery
    .filter((option) => option.kind === "same-day" && option.slot === slot && isKind(option, input))
    .filter((option) => option.easy || !ONLY_EASY.includes(kind))
    .flatMap((option): readonly Candidate[] => {
      const check = worstAnswer(option, input.situation);
      const work = workOf(option, input, numbers);
      if (check === undefined || work === undefined) return [];
      return [{ piece: pieceFrom(option, check, work), keep: option.keep ?? 1 }];
    })
    .sort((one, other) => one.keep - other.keep || (one.piece.id < other.piece.id ? -1 : 1))
    .slice(0, most);
}

/** Whether a piece is kind to what has just worked and to what is kept away from. */
function isKind(option: RecoveryOption, { situation, withholding }: PlanAfterInput): boolean {
  if (option.stresses.some((stress) => withholding.stresses.has(stress))) return false;
  if (option.easy) return true;
  const taxed = situation.facts.taxes ?? [];
  return !option.muscles.some((muscle) => !QUICKLY_BACK.includes(muscle) && taxed.includes(muscle));
}

/** The worst answer of the self-check at which the piece and all better answers hold; undefined when none does. */
function worstAnswer(option: RecoveryOption, situation: Situation): CheckAnswer | undefined {
  const holdsAt = (answer: CheckAnswer): boolean =>
    allHold(option.when, withMore(situation, { facts: { "self-check": [answer] } })).holds;
  const firstThatFails = CHECK_ANSWERS.findIndex((answer) => !holdsAt(answer));
  return firstThatFails === -1 ? CHECK_ANSWERS.at(-1) : CHECK_ANSWERS[firstThatFails - 1];
}

/** Takes out what is kept least, of equals the last, until the rest fits. What is kept most always stays. */
function withinTime(candidates: readonly Candidate[], most: number): readonly Candidate[] {
  let kept = [...candidates];
  const total = (): number => kept.reduce((sum, { piece }) => sum + (piece.minutes ?? 0), 0);
  while (total() > most) {
    const least = Math.max(...kept.map(({ keep }) => keep));
    if (least <= 1) break;
    const gone = kept.findLast(({ keep }) => keep === least);
    kept = kept.filter((each) => each !== gone);
  }
  return kept;
}

function pieceFrom(option: RecoveryOption, check: CheckAnswer, work: Piece["work"]): Piece {
  const { id, title, say, less, minutes, effort, slot, source } = option;
  return {
    id,
    title,
    say,
    ...(slot !== undefined && { slot }),
    ...(less !== undefined && { less }),
    check,
    work: [...work],
    ...(minutes !== undefined && { minutes }),
    ...(effort !== undefined && { effort }),
    source,
  };
}
