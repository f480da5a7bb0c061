import type { PartPlan } from "../models/plan/plan.ts";
import { sayAfterMiss, sayAfterMissShort } from "../wording/after-miss.ts";
import { ONLY_IF_WELL, sayLiftFigure } from "../wording/lift-words.ts";
import { sayOtherUnit } from "../wording/mass.ts";
import { sayNumber } from "../wording/number.ts";
import { clockShift } from "../wording/part-clock.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayPerSide, sayPlateStep } from "../wording/plates.ts";
import { sayClock } from "../wording/time.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { PIECE_GAP, type KeyPanel, type KeySetting } from "./key-panel.ts";
import { boxWidth, keyRow, keyWidth, smallWidth } from "./key-row.ts";
import { panelHeading, type HeadingWord } from "./panel-heading.ts";
import { setParagraph } from "./paragraph.ts";
import type { Measured } from "./sheet-node.ts";
import { together } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

type Lift = NonNullable<PartPlan["lifting"]>["lifts"][number];
type Attempt = Lift["attempts"][number];

/** Capitals of the plates, larger than running text: they are read while loading the bar. */
const PLATE_CAPITALS = 3;
/** What to do after a miss, where it finds no column of its own, as a share of the key figures. */
const MISS_SHARE = 0.5;
const MISS_LEADING = 1.55;
const PLATE_LEADING = 1.6;
/** Room the plates need at least to stand beside the figures, millimetres. */
const LEAST_PLATES = 26;
/** Between the plates and what to do after a miss. */
const WORD_GAP = 3;

/**
 * The panel of one lift: for each attempt its load and the clock at which to start it, under them the plates of one
 * side and what to do after a miss.
 */
export function attemptPanel(
  part: PartPlan,
  lift: Lift,
  setting: KeySetting,
  setter: Setter,
): KeyPanel | undefined {
  const { attempts } = lift;
  const [first] = attempts;
  if (!first) return undefined;
  const { capitals, wide, heads } = setting;
  const gap = capitals * PIECE_GAP;
  const shift = clockShift(part);
  const { box, loadWidth, clockWidth, missWidth } = columnWidths(lift, shift, setting, setter);
  const clockLeft = box + gap + loadWidth + gap;
  const width = clockLeft + clockWidth + (wide ? gap + missWidth : 0);
  const rows = attempts.map((attempt) => {
    const figures = keyRow(
      { text: sayNumber(attempt.number, 0) },
      box,
      [
        { text: sayLiftFigure(attempt, lift), ...unitIn(attempt, lift), width: loadWidth },
        { text: sayClock(attempt.clock + shift), width: clockWidth },
        ...(wide ? [{ text: sayAfterMissShort(attempt.afterMiss, lift), width: missWidth }] : []),
      ],
      capitals,
      setter,
    );
    return wide
      ? withPlates(
          figures,
          attempt,
          { left: width + gap, setting, plates: platesOf(attempt, lift, setting.units) },
          setter,
        )
      : withWords(figures, wordsOf(attempt, lift, shift, setting, setter), capitals);
  });
  const words: readonly HeadingWord[] = wide
    ? [
        { text: sayPart(part.name), left: 0 },
        { text: "load", left: box + gap },
        { text: "clock", left: clockLeft },
        { text: MISSED, left: clockLeft + clockWidth + gap },
      ]
    : [{ text: `${sayPart(part.name)} ${lift.name}`, left: 0 }];
  return {
    width: wide ? width + gap + LEAST_PLATES : width,
    heading: panelHeading(words, { capitals: heads, width }, setter),
    rows,
  };
}

/** Widths of the boxes and of the columns beside them. */
function columnWidths(
  lift: Lift,
  shift: number,
  { capitals, heads }: KeySetting,
  setter: Setter,
): Readonly<Record<"box" | "loadWidth" | "clockWidth" | "missWidth", number>> {
  const { attempts } = lift;
  const widest = (widthOf: (attempt: Attempt) => number): number => Math.max(...attempts.map(widthOf));
  return {
    box: boxWidth(
      attempts.map((attempt) => sayNumber(attempt.number, 0)),
      capitals,
      setter,
    ),
    loadWidth: widest((attempt) =>
      keyWidth(sayLiftFigure(attempt, lift), unitOf(attempt, lift), capitals, setter),
    ),
    clockWidth: widest(({ clock }) => keyWidth(sayClock(clock + shift), undefined, capitals, setter)),
    missWidth: Math.max(
      smallWidth(MISSED, heads, setter),
      widest(({ afterMiss }) => keyWidth(sayAfterMissShort(afterMiss, lift), undefined, capitals, setter)),
    ),
  };
}

/** Head of the column that says what to load after a miss. */
const MISSED = "missed";

/** A share of the reader's own best has no unit. */
const unitOf = ({ load }: Attempt, { ofOwnBest }: Lift): string | undefined =>
  ofOwnBest ? undefined : load.mass.unit;

const unitIn = (attempt: Attempt, lift: Lift): { readonly unit?: string } => {
  const unit = unitOf(attempt, lift);
  return unit === undefined ? {} : { unit };
};

/** The load in the other unit where the reader needs it, and the plates of one side. */
const platesOf = ({ load }: Attempt, { ofOwnBest }: Lift, units: KeySetting["units"]): string =>
  ofOwnBest ? "of your own best" : [sayOtherUnit(load, units), sayPerSide(load)].filter(Boolean).join(": ");

/** Words under the figures: the load in the other unit where the reader needs it, plates, and what to do after a miss; on one line where both fit. */
function wordsOf(
  attempt: Attempt,
  lift: Lift,
  shift: number,
  { columnWidth: width, units, wide, capitals }: KeySetting,
  setter: Setter,
): Measured {
  const plates = platesOf(attempt, lift, units);
  const miss = setParagraph(
    wide
      ? []
      : [
          ...(attempt.onlyIfWell ? [{ text: `${ONLY_IF_WELL}; ` }] : []),
          { text: `missed: ${sayAfterMiss(attempt.afterMiss, shift, lift)}` },
        ],
    Math.max(TEXT_CAPITALS, capitals * MISS_SHARE),
    width,
    setter,
    MISS_LEADING,
  );
  const side = setParagraph(plates ? [{ text: plates, strong: true }] : [], PLATE_CAPITALS, width, setter);
  const beside = side.lines <= 1 && miss.lines <= 1 && side.widest + WORD_GAP + miss.widest <= width;
  const missAt = beside
    ? {
        x: side.lines === 0 ? 0 : side.widest + WORD_GAP,
        y: 0,
      }
    : { x: 0, y: side.height };
  return {
    height: beside ? Math.max(side.height, miss.height) : side.height + miss.height,
    place: (x, y) => ({
      marks: [],
      nodes: [
        {
          tag: "TR",
          children: [
            { tag: "TD", shapes: side.at(x, y) },
            { tag: "TD", shapes: miss.at(x + missAt.x, y + missAt.y) },
          ],
        },
      ],
    }),
  };
}

/** The plates of one side, and which of them to change, behind the figures, on as many small lines as they need. */
function withPlates(
  figures: Measured,
  attempt: Attempt,
  {
    left,
    setting,
    plates: said,
  }: { readonly left: number; readonly setting: KeySetting; readonly plates: string },
  setter: Setter,
): Measured {
  const change = attempt.change && sayPlateStep(attempt.change);
  const runs = [
    ...(said ? [{ text: said, strong: true }] : []),
    ...(change && said ? [{ text: `(${change})` }] : []),
    ...(attempt.onlyIfWell ? [{ text: ONLY_IF_WELL }] : []),
  ];
  const room = Math.max(setting.columnWidth - left, LEAST_PLATES);
  const plates = setParagraph(runs, PLATE_CAPITALS, room, setter, PLATE_LEADING);
  return {
    height: Math.max(figures.height, plates.height),
    place: (x, y) =>
      together([
        figures.place(x, y),
        {
          marks: [],
          nodes: [
            {
              tag: "TR",
              children: [
                {
                  tag: "TD",
                  shapes: plates.at(x + left, y + Math.max(0, (figures.height - plates.height) / 2)),
                },
              ],
            },
          ],
        },
      ]),
  };
}

function withWords(figures: Measured, words: Measured, capitals: number): Measured {
  return {
    height: figures.height + words.height + capitals * 0.2,
    place: (x, y) => together([figures.place(x, y), words.place(x, y + figures.height)]),
  };
}
