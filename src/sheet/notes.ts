import type { PartPlan, Plan } from "../models/plan/plan.ts";
import { sayAmount } from "../wording/amount.ts";
import { capitalised } from "../wording/basis.ts";
import { sayEnding } from "../wording/ending.ts";
import { sayGuide } from "../wording/guide.ts";
import { sayIfThenPair } from "../wording/if-then.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayRoundOf } from "../wording/round-name.ts";
import { clockShift } from "../wording/part-clock.ts";
import { sayClock } from "../wording/time.ts";
import { setParagraph, type Run } from "./paragraph.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** What a line under the key figures is about, the most important first: the order in which they stand and are kept. */
const NOTE_KINDS = ["tie-break", "thresholds", "ending", "guide", "unbroken"] as const;
type NoteKind = (typeof NOTE_KINDS)[number];

type Note = { readonly kind: NoteKind; readonly runs: readonly Run[] };

/** Capitals of these lines, millimetres. */
const NOTE_CAPITALS = 3.3;

/** The lines under the key figures, the most important first: the moments to know, and what to do when it goes otherwise. */
export function notesOf(plan: Plan): readonly Note[] {
  const notes = plan.parts.flatMap((part): readonly Note[] => {
    const { pacing } = part;
    if (!pacing) return [];
    const context = { units: plan.athlete.units, perRound: pacing.perRound };
    const moments = [...Map.groupBy(pacing.ifThen, ({ row }) => row).values()];
    const ifThens = moments.flatMap((pair): readonly Note[] => {
      const said = sayIfThenPair(pair, pacing, context, clockShift(part));
      return said
        ? [
            {
              kind: "thresholds",
              runs: [
                { text: capitalised(said.moment.replace(/^the /, "")), strong: true },
                { text: said.say },
              ],
            },
          ]
        : [];
    });
    const ending = sayEnding(pacing, context);
    const guide = sayGuide(pacing, part === plan.parts.at(-1));
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
  const [row] = rows;
  const only = rows.length === 1 && row ? row : undefined;
  const round = only && sayRoundOf(pacing, only.round);
  const text = only
    ? `after ${sayAmount(only)} ${only.short}${round ? ` of ${round}` : ""}, ${sayClock(only.end + clockShift(part))}`
    : "clock at each thick box";
  return [
    {
      kind: "tie-break",
      runs: [{ text: "Tie-break", strong: true }, { text }],
    },
  ];
}

/** Those that are read during the work, from the distance of the rig. */
const RIG_KINDS = ["tie-break", "thresholds"] as const satisfies readonly NoteKind[];

/** The notes no sheet goes without: how a tie is broken and what to do when it goes otherwise, one of each. */
export const essentialNotes = (notes: readonly Note[]): readonly Note[] =>
  RIG_KINDS.flatMap((kind) => notes.filter((note) => note.kind === kind).slice(0, 1));

/** Distance of lines as a multiple of capitals: large ones need less between them. */
const RIG_LEADING = 1.5;

/** Notes set one under another; those read during the work with capitals of `capitals` millimetres. */
export function setNotes(notes: readonly Note[], width: number, capitals: number, setter: Setter): Measured {
  const paragraphs = notes.map(({ kind, runs }) => {
    const large = RIG_KINDS.some((each) => each === kind);
    return setParagraph(
      runs,
      large ? capitals : NOTE_CAPITALS,
      width,
      setter,
      ...(large ? [RIG_LEADING] : []),
    );
  });
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
