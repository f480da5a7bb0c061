import type { Place } from "../../models/fault.ts";
import type { BlockStep, BlockWindow, Passes, Step } from "../../models/workout.ts";
import { passesOf } from "./block-passes.ts";
import { beyond, passesIn } from "./check-bounds.ts";
import type { BlockClauses } from "./block-phrase.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import type { TextSource } from "./token.ts";

/** A step as read; a buy-in or cash-out is still marked, for the part to see. */
export type ReadStep = Step & { readonly once?: "buy-in" | "cash-out" };

/** The block that a name and the steps inside it make. Undefined with a fault noted where they do not fit together. */
export function blockOf(
  clauses: BlockClauses,
  steps: readonly ReadStep[],
  source: TextSource,
  place: Place,
  faults: Faults,
): ReadStep | undefined {
  const inTurn = clauses.inTurn ?? (clauses.on !== undefined && steps.length > 1 && steps.every(isBare));
  const base = { kind: "block" as const, place, written: source.text, anyOrder: clauses.anyOrder ?? false };
  const untilDone = doneStep(clauses, steps, source, faults);
  if (untilDone === "fault") return undefined;
  const passes = intervalsIn(clauses, inTurn ? steps.length : 1, source, faults);
  if (passes === undefined) return undefined;
  // Before anything walks through them.
  const tooMany = beyond("rounds", passesIn(passes));
  if (tooMany) {
    tellText(faults, source, tooMany);
    return undefined;
  }
  const rounds = typeof clauses.rounds === "number" ? clauses.rounds : undefined;
  const inner: BlockStep = {
    ...base,
    passes: clauses.lasts === undefined ? passes : { kind: "open-rounds" },
    ...windowOf(clauses),
    inTurn,
    elimination: clauses.orOut ?? false,
    ...(clauses.by === undefined ? {} : { by: clauses.by }),
    ...(clauses.cap === undefined ? {} : { cap: clauses.cap }),
    ...(clauses.restBetween === undefined ? {} : { restBetween: clauses.restBetween }),
    ...(untilDone === undefined ? {} : { untilDone }),
    unbroken: clauses.unbroken ?? false,
    tieBreak: clauses.tieBreak ?? false,
    steps,
  };
  const marked = clauses.once === "buy-in" || clauses.once === "cash-out" ? { once: clauses.once } : {};
  if (clauses.lasts === undefined || rounds === undefined) return { ...inner, ...marked };
  // `3 rounds, amrap 4:00, rest 2:00 between`: the rounds are of the window.
  const { restBetween, by, ...window } = inner;
  return {
    ...base,
    passes: { kind: "rounds", count: rounds },
    inTurn: false,
    elimination: false,
    ...(by === undefined ? {} : { by }),
    ...(restBetween === undefined ? {} : { restBetween }),
    anyOrder: false,
    unbroken: false,
    tieBreak: false,
    steps: [window],
  };
}

const isBare = (step: ReadStep): boolean =>
  step.kind === "effort" && step.pieces.every(({ amount }) => amount.kind === "max");

function windowOf(clauses: BlockClauses): { readonly window?: BlockWindow } {
  const { every, on, off, lasts } = clauses;
  if (every !== undefined) return { window: { kind: "every", time: every } };
  if (on !== undefined && off !== undefined) {
    return { window: { kind: "on-off", on, off, carriesOn: clauses.carriesOn ?? false } };
  }
  return lasts === undefined ? {} : { window: { kind: "lasts", time: lasts } };
}

function intervalsIn(
  clauses: BlockClauses,
  entries: number,
  source: TextSource,
  faults: Faults,
): Passes | undefined {
  const { inAll, every } = clauses;
  if (inAll === undefined || every === undefined) return passesOf(clauses);
  const count = inAll / (every * Math.max(entries, 1));
  if (Number.isInteger(count) && count > 0) return { kind: "rounds", count };
  tellText(faults, source, {
    problem: "the length in all is no whole number of rounds of these intervals",
    allowed: "`every 1:00 for 10:00`",
    remedy: "Write the number of rounds: `every 1:00, 10 rounds`.",
  });
  return undefined;
}

function doneStep(
  clauses: BlockClauses,
  steps: readonly ReadStep[],
  source: TextSource,
  faults: Faults,
): BlockStep["untilDone"] | "fault" | undefined {
  const { untilDone } = clauses;
  if (untilDone === undefined) return undefined;
  const step = steps.findIndex(
    (candidate) =>
      candidate.kind === "effort" &&
      candidate.pieces.some((piece) => piece.movements.includes(untilDone.movement)),
  );
  if (step !== -1) return { step, amount: untilDone.amount };
  if (steps.length > 0) {
    tellText(faults, source, {
      problem: "the movement that must be done is no line of the block",
      allowed: "`every 1:00, until 100 thruster` with a line `max thruster at 43 kg` in it",
      remedy: "Write a line with that movement in the block.",
    });
  }
  return "fault";
}
