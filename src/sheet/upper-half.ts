import { drawTape } from "../charts/tape.ts";
import type { PartPlan, Plan } from "../models/plan/plan.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayStations } from "../wording/stations.ts";
import { attemptPanel } from "./attempt-panel.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { flowColumns, placeColumns } from "./flow-columns.ts";
import { CONCESSIONS, type Fullness, GROWTH } from "./fullness.ts";
import { sheetHeader } from "./header.ts";
import type { KeyPanel, KeySetting } from "./key-panel.ts";
import { moveDrawing } from "../charts/move-shape.ts";
import { essentialNotes, notesOf, setNotes } from "./notes.ts";
import type { Frame } from "./paper.ts";
import { brokenMovements } from "./round-lines.ts";
import { roundPanel } from "./round-panel.ts";
import { groupSets, setLine } from "./set-lines.ts";
import { together, type Measured, type Placed } from "./sheet-node.ts";
import { sideBySide } from "./side-by-side.ts";
import { stationPanel } from "./station-panel.ts";
import type { Setter } from "./type-setting.ts";

const MOST_COLUMNS = 5;
const COLUMN_GAP = 7;
const SECTION_GAP = 2.4;
/** Room to spare is shared out between the sections, up to this much each. */
const MOST_EXTRA_GAP = 4.5;

/** The upper half as it stands on the page: what it shows, and where its last line ends. */
type UpperHalf = Placed & {
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
  {
    concessions,
    growths,
  }: { readonly concessions: readonly Fullness[]; readonly growths: readonly number[] } = {
    concessions: CONCESSIONS,
    growths: GROWTH,
  },
): UpperHalf | undefined {
  const header = sheetHeader(plan, frame.width, least, setter);
  const notes = notesOf(plan);
  for (const fullness of concessions) {
    const head = [header, ...tapeOf(plan, frame.width, fullness.tape, setter)];
    const shown = fullness.notes === "essential" ? essentialNotes(notes) : notes.slice(0, fullness.notes);
    const foot = setNotes(
      shown,
      frame.width,
      fullness.wide
        ? least * (fullness.smallNotes ? SMALL_NOTES : 1)
        : Math.min(least * COLUMN_NOTES, MOST_NOTES),
      setter,
    );
    const at = (growth: number): UpperHalf | undefined => {
      const capitals = least * growth;
      const tail = [...setLinesOf(plan, fullness, frame.width, capitals, setter), foot];
      const placed = arrange({ plan, fullness, frame }, capitals, { head, tail }, setter);
      return placed && { ...placed, capitals, everyRound: fullness.every === "row" };
    };
    const found = largestThatFits(growths, at);
    if (found) return found;
  }
  return undefined;
}

/** The first of ascending ease; where not even the last fits, which is the easiest, the others are not tried. */
function largestThatFits<Result>(
  growths: readonly number[],
  at: (growth: number) => Result | undefined,
): Result | undefined {
  const easiest = growths.at(-1);
  const least = easiest === undefined ? undefined : at(easiest);
  if (least === undefined) return undefined;
  for (const growth of growths.slice(0, -1)) {
    const result = at(growth);
    if (result !== undefined) return result;
  }
  return least;
}

type Around = { readonly head: readonly Measured[]; readonly tail: readonly Measured[] };

/** Head, key figures and tail one under another, room to spare shared out between them; nothing when they do not fit. */
function arrange(
  { plan, fullness, frame }: { readonly plan: Plan; readonly fullness: Fullness; readonly frame: Frame },
  capitals: number,
  { head, tail }: Around,
  setter: Setter,
): (Placed & { readonly bottom: number }) | undefined {
  const shown = tail.filter((section) => section.height > 0);
  const taken = [...head, ...shown].reduce((sum, section) => sum + section.height + SECTION_GAP, 0);
  const key = keyFigures(
    plan,
    fullness,
    { width: frame.width, height: frame.height - taken },
    capitals,
    setter,
  );
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
  { width, height: room }: Pick<Frame, "width" | "height">,
  capitals: number,
  setter: Setter,
): Measured | undefined {
  for (let columns = 1; columns <= (fullness.wide ? 1 : MOST_COLUMNS); columns += 1) {
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
  const wide = fullness.wide ?? false;
  const heads = wide && !fullness.smallHeads ? capitals : Math.max(TEXT_CAPITALS, capitals * COLUMN_HEADS);
  const setting: KeySetting = { capitals, heads, columnWidth, units, wide };
  return plan.parts
    .flatMap((part) => [
      ...workPanels(part, fullness, setting, setter),
      ...(part.lifting?.lifts ?? []).map((lift) => {
        const attempts = fullness.opener ? lift.attempts.slice(0, 1) : lift.attempts;
        return attemptPanel(part, { ...lift, attempts }, setting, setter);
      }),
    ])
    .filter((panel) => panel !== undefined);
}

/** The clocks of a part, and what its rounds are made of: beside them where that fits, else above them and smaller. */
function workPanels(
  part: PartPlan,
  fullness: Fullness,
  setting: KeySetting,
  setter: Setter,
): readonly (KeyPanel | undefined)[] {
  const { pacing } = part;
  // Where there is one round, the sets can only stand beside the movement they belong to.
  const oneRound = (pacing?.rounds.length ?? 0) <= 1;
  const sets = fullness.sets === "beside" || (fullness.sets === "lines" && oneRound);
  const rounds = roundPanel(part, { sets, every: fullness.every }, setting, setter);
  // What gives up the tape for want of room gives this up too.
  if (!pacing || !rounds || oneRound || fullness.tape === 0) return [rounds];
  const { capitals, columnWidth, wide } = setting;
  const heading = wide ? "each round" : `${sayPart(part.name)} each round`;
  const sizes = wide ? STATION_SHARES : STATION_SHARES.slice(-1);
  const stations = sizes.map((share) =>
    stationPanel(
      sayStations(pacing),
      heading,
      wide ? capitals * share : Math.min(capitals * share, MOST_STATION),
      setter,
    ),
  );
  if (!wide) return [...stations, rounds];
  const beside = stations.find((panel) => panel && rounds.width + COLUMN_GAP + panel.width <= columnWidth);
  return beside ? [sideBySide(rounds, beside, COLUMN_GAP)] : [...stations.slice(-1), rounds];
}

/** Capitals of thresholds in one column that must leave room, as a share of the key figures. */
const SMALL_NOTES = 0.65;
/** Capitals of thresholds where the figures already need columns, as a share of the key figures. */
const COLUMN_NOTES = 0.5;
/** There they grow no further than this, nor does what a round is made of, millimetres: the clocks need the room. */
const MOST_NOTES = 4.4;
const MOST_STATION = 5.3;
/** Capitals of heads over narrow columns, as a share of the key figures. */
const COLUMN_HEADS = 0.6;

/** Capitals of what a round is made of, as shares of the key figures, the first that finds room. */
const STATION_SHARES = [1, 0.8, 0.6] as const;
