import type { PartPlan, Plan } from "../models/plan/plan.ts";
import { sayRow } from "../wording/amount.ts";
import { sayEnding } from "../wording/ending.ts";
import { sayGuide } from "../wording/guide.ts";
import { sayIfThen } from "../wording/if-then.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayRoundOf } from "../wording/round-name.ts";
import { clockShift } from "../wording/part-clock.ts";
import { sayClock } from "../wording/time.ts";
import { setParagraph, type Run } from "./paragraph.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** What a line under the key figures is about, the most important first: the order in which they stand and are kept. */
const NOTE_KINDS = ["tie-break", "too-slow", "ending", "guide", "unbroken", "too-fast"] as const;
type NoteKind = (typeof NOTE_KINDS)[number];

export type Note = { readonly kind: NoteKind; readonly runs: readonly Run[] };

/** Capitals of these lines, millimetres. */
const NOTE_CAPITALS = 3.3;

/** The lines under the key figures, the most important first: the moments to know, and what to do when it goes otherwise. */
export function notesOf(plan: Plan): readonly Note[] {
  const notes = plan.parts.flatMap((part): readonly Note[] => {
    const { pacing } = part;
    if (!pacing) return [];
    const context = { units: plan.athlete.units, perRound: pacing.perRound };
    const ifThens = pacing.ifThen.map((ifThen): Note => {
      const shifted = { ...ifThen, clock: ifThen.clock + clockShift(part) };
      const { when, then } = sayIfThen(shifted, pacing, context);
      const isBehind = ifThen.when === "later-than" || ifThen.when === "fewer-than";
      const kind = isBehind ? "too-slow" : "too-fast";
      return { kind, runs: [{ text: `${when} →`, strong: true }, { text: then }] };
    });
    const ending = sayEnding(pacing, context);
    const guide = sayGuide(pacing);
    const isBroken = pacing.rows.some((row) => row.sets.length > 1);
    return [
      ...ifThens,
      ...tieBreaks(part, pacing),
      ...(ending === undefined ? [] : [{ kind: "ending", runs: [{ text: ending }] } as const]),
      ...(guide === undefined ? [] : [{ kind: "guide", runs: [{ text: guide }] } as const]),
      ...(isBroken
        ? []
        : [{ kind: "unbroken", runs: [{ text: `${sayPart(part.name)}: every set unbroken.` }] } as const]),
    ];
  });
  return NOTE_KINDS.flatMap((kind) => notes.filter((note) => note.kind === kind));
}

function tieBreaks(part: PartPlan, pacing: NonNullable<PartPlan["pacing"]>): readonly Note[] {
  const rows = pacing.rows.filter((row) => row.tieBreak);
  if (rows.length === 0) return [];
  const moments = rows.map((row) => {
    const round = sayRoundOf(pacing, row.round);
    return `after the ${sayRow(row)}${round ? ` of ${round}` : ""}, plan ${sayClock(row.end + clockShift(part))}`;
  });
  const text = moments.length > 3 ? "at the end of every round with a thick box" : moments.join("; ");
  return [
    {
      kind: "tie-break",
      runs: [{ text: "Tie-break: read the clock", strong: true }, { text: `${text}.` }],
    },
  ];
}

/** The notes no sheet goes without: how a tie is broken and what to do when it goes too slowly, one of each. */
export const essentialNotes = (notes: readonly Note[]): readonly Note[] =>
  (["tie-break", "too-slow"] as const).flatMap((kind) =>
    notes.filter((note) => note.kind === kind).slice(0, 1),
  );

/** Notes set one under another. */
export function setNotes(notes: readonly Note[], width: number, setter: Setter): Measured {
  const paragraphs = notes.map((note) => setParagraph(note.runs, NOTE_CAPITALS, width, setter));
  return {
    height: paragraphs.reduce((sum, paragraph) => sum + paragraph.height, 0),
    place: (x, y) => {
      let top = y;
      const nodes = paragraphs.map((paragraph) => {
        const shapes = paragraph.at(x, top);
        top += paragraph.height;
        return { tag: "P" as const, shapes };
      });
      return { marks: [], nodes };
    },
  };
}
