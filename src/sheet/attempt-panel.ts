import type { PartPlan } from "../models/plan/plan.ts";
import { sayAfterMiss } from "../wording/after-miss.ts";
import { ONLY_IF_WELL, sayLiftFigure } from "../wording/lift-words.ts";
import { sayOtherUnit } from "../wording/mass.ts";
import { sayNumber } from "../wording/number.ts";
import { clockShift, sayWhichClock } from "../wording/part-clock.ts";
import { sayPart } from "../wording/part-name.ts";
import { sayPerSide } from "../wording/plates.ts";
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
  const { capitals } = setting;
  const gap = capitals * PIECE_GAP;
  const shift = clockShift(part);
  const box = boxWidth(
    attempts.map((attempt) => sayNumber(attempt.number, 0)),
    capitals,
    setter,
  );
  const loadWidth = Math.max(
    ...attempts.map((attempt) =>
      keyWidth(sayLiftFigure(attempt, lift), unitOf(attempt, lift), capitals, setter),
    ),
  );
  const clockWidth = Math.max(
    ...attempts.map((attempt) => keyWidth(sayClock(attempt.clock + shift), undefined, capitals, setter)),
  );
  const rows = attempts.map((attempt) => {
    const figures = keyRow(
      { text: sayNumber(attempt.number, 0) },
      box,
      [
        { text: sayLiftFigure(attempt, lift), ...unitIn(attempt, lift), width: loadWidth },
        { text: sayClock(attempt.clock + shift), width: clockWidth },
      ],
      capitals,
      setter,
    );
    return withWords(figures, wordsOf(attempt, lift, shift, setting, setter), capitals);
  });
  return {
    width: box + gap + loadWidth + gap + clockWidth,
    heading: panelHeading(headingOf(part, lift, box + gap + loadWidth + gap, setter), setter),
    rows,
  };
}

/** Part and lift over the loads, then what the clock is; the clock goes unsaid where the name of the lift needs the room. */
function headingOf(part: PartPlan, lift: Lift, clockLeft: number, setter: Setter): readonly HeadingWord[] {
  const name = { text: `${sayPart(part.name)} ${lift.name}`, left: 0 };
  const fits = smallWidth(name.text, TEXT_CAPITALS, setter) + TEXT_CAPITALS <= clockLeft;
  return fits ? [name, { text: sayWhichClock(part) ?? "start at", left: clockLeft }] : [name];
}

/** A share of the reader's own best has no unit. */
const unitOf = ({ load }: Attempt, { ofOwnBest }: Lift): string | undefined =>
  ofOwnBest ? undefined : load.mass.unit;

const unitIn = (attempt: Attempt, lift: Lift): { readonly unit?: string } => {
  const unit = unitOf(attempt, lift);
  return unit === undefined ? {} : { unit };
};

/** Words under the figures: the load in the other unit where the reader needs it, plates, and what to do after a miss; on one line where both fit. */
function wordsOf(
  attempt: Attempt,
  lift: Lift,
  shift: number,
  { columnWidth: width, units }: KeySetting,
  setter: Setter,
): Measured {
  const plates = lift.ofOwnBest
    ? "of your own best"
    : [sayOtherUnit(attempt.load, units), sayPerSide(attempt.load)].filter(Boolean).join(": ");
  const miss = setParagraph(
    [
      ...(attempt.onlyIfWell ? [{ text: `${ONLY_IF_WELL}; ` }] : []),
      { text: `missed: ${sayAfterMiss(attempt.afterMiss, shift, lift)}` },
    ],
    TEXT_CAPITALS,
    width,
    setter,
  );
  const side = setParagraph(plates ? [{ text: plates, strong: true }] : [], PLATE_CAPITALS, width, setter);
  const beside = side.lines <= 1 && miss.lines === 1 && side.widest + WORD_GAP + miss.widest <= width;
  const missAt = beside
    ? {
        x: side.lines === 0 ? 0 : side.widest + WORD_GAP,
        y: side.lines === 0 ? 0 : PLATE_CAPITALS - TEXT_CAPITALS,
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

function withWords(figures: Measured, words: Measured, capitals: number): Measured {
  return {
    height: figures.height + words.height + capitals * 0.2,
    place: (x, y) => together([figures.place(x, y), words.place(x, y + figures.height)]),
  };
}
