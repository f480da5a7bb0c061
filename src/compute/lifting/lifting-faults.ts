import type { Fault, Place } from "../../models/fault.ts";

/** A part is to be lifted for load, but nothing in it is a lift. */
export const noLiftFault = (place: Place, part: string, movements: readonly string[]): Fault => ({
  place,
  found: movements.join(", "),
  problem: `part ${part} is lifted for load, but no best lift can be derived of ${
    movements.length === 0 ? "anything in it" : movements.join(" or ")
  }`,
  allowed: "movements of which a single best lift means something",
  remedy: "Name a lift in the part, or say `best lift: yes` in the file of the movement.",
  severity: "fault",
});

/** The plates cannot go up by the steps that are set. Kilograms. */
export const stepsFault = (place: Place, part: string, opener: number, jump: number): Fault => ({
  place,
  found: `steps of ${kilogramsInWords(jump)}`,
  problem: `no load lies ${kilogramsInWords(jump)} over the opener of ${kilogramsInWords(opener)} of part ${part} with these plates`,
  allowed: "steps that the plates of the gym make from the opener",
  remedy: "Set other steps or another opener, or add smaller plates to the gym's file.",
  severity: "fault",
});

/** Lifted for load, but not on a bar: nothing says which loads there are. */
export const noBarFault = (place: Place, part: string, lift: string): Fault => ({
  place,
  found: lift,
  problem: `part ${part} is lifted for load in the ${lift}, which is done without a bar, and no file says which loads there are`,
  allowed: "lifts with a bar",
  remedy:
    "Choose the attempts yourself: open with what you make nine times in ten, and go up by the smallest step.",
  severity: "fault",
});

/** The window closes before one lift could be made. Seconds. */
export const shortWindowFault = (place: Place, part: string, length: number, needed: number): Fault => ({
  place,
  found: `${Math.round(length)} s`,
  problem:
    length > 0
      ? `the window of part ${part} leaves ${Math.round(length)} s, too short for one lift`
      : `the window of part ${part} has closed before it can begin`,
  allowed: `${Math.ceil(needed)} s or more for getting to the bar and one lift`,
  remedy:
    "Give the window more time or the part before it less work, or let a lift begun before the end count.",
  severity: "fault",
});

/** Even the empty bar is more than should be opened with. Kilograms. */
export const heavyBarFault = (place: Place, lift: string, bar: number, opener: number): Fault => ({
  place,
  found: `bar of ${kilogramsInWords(bar)}`,
  problem: `the empty bar of ${kilogramsInWords(bar)} is heavier than what should be opened with in the ${lift}, ${kilogramsInWords(opener)}`,
  allowed: `a bar of at most ${kilogramsInWords(opener)}`,
  remedy: "Add a lighter bar to the gym's file, or a heavier result of the lift to the athlete's.",
  severity: "fault",
});

const kilogramsInWords = (kilograms: number): string => `${Math.round(kilograms * 10) / 10} kg`;
