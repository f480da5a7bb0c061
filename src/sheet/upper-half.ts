import { drawTape } from "../charts/tape.ts";
import type { Plan } from "../models/plan/plan.ts";
import { attemptPanel } from "./attempt-panel.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { flowColumns, placeColumns } from "./flow-columns.ts";
import { sheetHeader } from "./header.ts";
import type { KeyPanel } from "./key-panel.ts";
import { moveDrawing } from "../charts/move-shape.ts";
import { essentialNotes, notesOf, setNotes } from "./notes.ts";
import type { Frame } from "./paper.ts";
import { brokenMovements, type RoundDetail } from "./round-lines.ts";
import { roundPanel } from "./round-panel.ts";
import { groupSets, setLine } from "./set-lines.ts";
import { together, type Measured, type Placed } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** How much the upper half shows: sets, rounds, how many notes (or the essential ones), the height of the tape in millimetres. */
type Fullness = {
  readonly sets: "beside" | "lines" | "none";
  readonly every: RoundDetail["every"];
  readonly notes: number | "essential";
  readonly tape: number;
  /** Only the first attempt of each lift, where they would stand too large. */
  readonly opener?: boolean;
};

/**
 * What the upper half shows, from the fullest to the barest: notes go and the tape grows thinner, then sets move from
 * beside the clocks into a line of their own, then the tape goes, then only the checkpoints stay, last only a few of
 * these. Key figures are never made smaller.
 */
export const CONCESSIONS: readonly Fullness[] = [
  { sets: "beside", every: "row", notes: 8, tape: 13 },
  { sets: "beside", every: "row", notes: 5, tape: 11 },
  { sets: "beside", every: "row", notes: 3, tape: 9 },
  { sets: "beside", every: "row", notes: "essential", tape: 9 },
  { sets: "beside", every: "row", notes: "essential", tape: 6 },
  { sets: "lines", every: "row", notes: 5, tape: 11 },
  { sets: "lines", every: "row", notes: 3, tape: 9 },
  { sets: "lines", every: "row", notes: "essential", tape: 6 },
  { sets: "beside", every: "row", notes: "essential", tape: 0 },
  { sets: "lines", every: "row", notes: "essential", tape: 0 },
  { sets: "lines", every: "checkpoint", notes: 4, tape: 9 },
  { sets: "lines", every: "checkpoint", notes: "essential", tape: 6 },
  { sets: "lines", every: "checkpoint", notes: "essential", tape: 0 },
  { sets: "none", every: "checkpoint", notes: 1, tape: 0 },
  { sets: "none", every: "few", notes: 1, tape: 0 },
];

/** What is still shown where a sheet is read from so far away that not even a few checkpoints fit a whole page. */
export const FAR_CONCESSIONS: readonly Fullness[] = [
  { sets: "none", every: "few", notes: 0, tape: 0 },
  { sets: "none", every: "last", notes: 0, tape: 0 },
  { sets: "none", every: "last", notes: 0, tape: 0, opener: true },
];

/** Growth tried where there is room to spare, largest first. */
const GROWTH = [1.7, 1.55, 1.4, 1.3, 1.2, 1.1, 1] as const;
const MOST_COLUMNS = 5;
const COLUMN_GAP = 7;
const SECTION_GAP = 2.4;
/** Room to spare is shared out between the sections, up to this much each. */
const MOST_EXTRA_GAP = 4.5;

/** The upper half as it stands on the page: what it shows, and where its last line ends. */
export type UpperHalf = Placed & {
  readonly bottom: number;
  readonly capitals: number;
  /** Whether every round has its line. */
  readonly everyRound: boolean;
};

/**
 * Lays out what is needed mid-workout in a frame: head, tape, key figures, notes. Takes the fullest arrangement that
 * fits with key figures of at least `least` millimetres, and among those the largest figures. Nothing when none fits.
 */
export function layoutUpper(
  plan: Plan,
  frame: Frame,
  least: number,
  setter: Setter,
  concessions: readonly Fullness[] = CONCESSIONS,
): UpperHalf | undefined {
  const header = sheetHeader(plan, frame.width, least, setter);
  const notes = notesOf(plan);
  for (const fullness of concessions) {
    const head = [header, ...tapeOf(plan, frame.width, fullness.tape, setter)];
    const shown = fullness.notes === "essential" ? essentialNotes(notes) : notes.slice(0, fullness.notes);
    const foot = setNotes(shown, frame.width, setter);
    for (const growth of GROWTH) {
      const capitals = least * growth;
      const tail = [...setLinesOf(plan, fullness, frame.width, capitals, setter), foot];
      const placed = arrange(plan, fullness, frame, capitals, { head, tail }, setter);
      if (placed) return { ...placed, capitals, everyRound: fullness.every === "row" };
    }
  }
  return undefined;
}

type Around = { readonly head: readonly Measured[]; readonly tail: readonly Measured[] };

/** Head, key figures and tail one under another, room to spare shared out between them; nothing when they do not fit. */
function arrange(
  plan: Plan,
  fullness: Fullness,
  frame: Frame,
  capitals: number,
  { head, tail }: Around,
  setter: Setter,
): (Placed & { readonly bottom: number }) | undefined {
  const shown = tail.filter((section) => section.height > 0);
  const taken = [...head, ...shown].reduce((sum, section) => sum + section.height + SECTION_GAP, 0);
  const key = keyFigures(plan, fullness, frame.width, frame.height - taken, capitals, setter);
  if (!key) return undefined;
  const sections = [...head, ...(key.height > 0 ? [key] : []), ...shown];
  const spare = frame.height - taken - key.height;
  const gap = SECTION_GAP + Math.min(MOST_EXTRA_GAP, Math.max(0, spare / sections.length));
  let y = frame.y;
  const placed = sections.map((section) => {
    const at = section.place(frame.x, y);
    y += section.height + gap;
    return at;
  });
  return { ...together(placed), bottom: y - gap };
}

function tapeOf(plan: Plan, width: number, strip: number, setter: Setter): readonly Measured[] {
  if (strip === 0) return [];
  const size = { width, textSize: setter.sizeFor(TEXT_CAPITALS, false), measure: setter.measure };
  const drawing = drawTape(plan, size, strip);
  if (!drawing) return [];
  return [
    {
      height: drawing.height,
      place: (x, y) => ({
        marks: [],
        nodes: [
          {
            tag: "Figure",
            shapes: moveDrawing(drawing, x, y),
            alt: drawing.textAlternative,
            box: { x, y, width: drawing.width, height: drawing.height },
          },
        ],
      }),
    },
  ];
}

function setLinesOf(
  plan: Plan,
  { sets }: Fullness,
  width: number,
  capitals: number,
  setter: Setter,
): readonly Measured[] {
  if (sets !== "lines") return [];
  return plan.parts.flatMap(({ pacing }) =>
    pacing && pacing.rounds.length > 1
      ? brokenMovements(pacing).map((short) =>
          setLine(short, groupSets(pacing, short), width, capitals, setter),
        )
      : [],
  );
}

/** The key figures in as few columns as hold them. */
function keyFigures(
  plan: Plan,
  fullness: Fullness,
  width: number,
  room: number,
  capitals: number,
  setter: Setter,
): Measured | undefined {
  for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
    const columnWidth = (width - COLUMN_GAP * (columns - 1)) / columns;
    const panels = panelsOf(plan, fullness, capitals, columnWidth, setter);
    if (panels.length === 0) return { height: 0, place: () => together([]) };
    if (panels.some((panel) => panel.width > columnWidth)) return undefined;
    const flowed = flowColumns(panels, columns, room);
    if (flowed) {
      const height = Math.max(...flowed.map((column) => column.height));
      return { height, place: (x, y) => placeColumns(flowed, x, y, columnWidth, COLUMN_GAP) };
    }
  }
  return undefined;
}

function panelsOf(
  plan: Plan,
  fullness: Fullness,
  capitals: number,
  columnWidth: number,
  setter: Setter,
): readonly KeyPanel[] {
  const { units } = plan.athlete;
  return plan.parts
    .flatMap((part) => {
      // Where there is one round, the sets can only stand beside the movement they belong to.
      const oneRound = (part.pacing?.rounds.length ?? 0) <= 1;
      const sets = fullness.sets === "beside" || (fullness.sets === "lines" && oneRound);
      return [
        roundPanel(part, { sets, every: fullness.every }, capitals, setter),
        ...(part.lifting?.lifts ?? []).map((lift) => {
          const attempts = fullness.opener ? lift.attempts.slice(0, 1) : lift.attempts;
          return attemptPanel(part, { ...lift, attempts }, { capitals, columnWidth, units }, setter);
        }),
      ];
    })
    .filter((panel) => panel !== undefined);
}
