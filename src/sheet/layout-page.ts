import { sayGym } from "../wording/gym-name.ts";
import { lineBetween, textAt } from "../charts/shapes.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayDate } from "../wording/date.ts";
import { LEAST_CAPITALS, TEXT_CAPITALS } from "./figure-size.ts";
import { CONCESSIONS, FAR_CONCESSIONS, type Fullness, GROWTH, WIDE } from "./fullness.ts";
import { layoutLower, leastLowerHeight } from "./lower-half.ts";
import { MARGIN, PAPER_SIZES, type Frame, type Paper } from "./paper.ts";
import { together, type Placed, type SheetPage } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";
import { layoutUpper } from "./upper-half.ts";

/** A page with what the layout decided, so that tests and callers can see it. */
export type LaidOutPage = SheetPage & {
  /** Capital height of the key figures, millimetres. */
  readonly keyCapitals: number;
  /** Whether the upper half alone serves, so that the sheet may be folded. */
  readonly folds: boolean;
};

const HALF_GAP = 4;
const FOOTER = TEXT_CAPITALS * 1.9;

/**
 * Lays a plan out on one page. The upper half holds what is needed mid-workout, with key figures of at least `least`
 * millimetres; where it cannot, the page is not folded and the key figures take the room they need from below; where that
 * is not enough either, only what can be read from far away is shown. Gives
 * nothing when even that does not fit: then the sheet is meant to be read from too far away.
 */
export function layoutPage(
  plan: Plan,
  paper: Paper,
  least: number,
  link: string | undefined,
  setter: Setter,
): LaidOutPage | undefined {
  const { width, height } = PAPER_SIZES[paper];
  const inside = { x: MARGIN.side, width: width - 2 * MARGIN.side };
  const capitals = Math.max(least, LEAST_CAPITALS);
  const fold = height / 2;
  const bottom = height - MARGIN.bottom - FOOTER;
  const folded: Frame = { ...inside, y: MARGIN.top, height: fold - MARGIN.top - HALF_GAP * 0.7 };
  const material = { width: inside.width, link, setter, everyRound: true };
  const roomAbove = (keepsWarmUp: boolean): number =>
    bottom - MARGIN.top - HALF_GAP - leastLowerHeight(plan, material, keepsWarmUp);
  const tries = triesOf(folded.height, { withWarmUp: roomAbove(true), without: roomAbove(false) });
  const found = firstOf(tries, ({ height: room, concessions, folds }) => {
    const laidOut = layoutUpper(plan, { ...folded, height: room }, capitals, setter, {
      concessions,
      // Where the page is not folded, what is spared goes to what stands below.
      growths: folds ? GROWTH : [1],
    });
    return laidOut && { ...laidOut, folds };
  });
  if (!found) return undefined;
  const { folds, ...upper } = found;
  const top = folds ? fold + HALF_GAP : upper.bottom + HALF_GAP;
  const below = { ...inside, y: top, height: bottom - top };
  const lower = layoutLower(plan, below, { ...material, everyRound: upper.everyRound });
  if (!lower) return undefined;
  const marks = folds ? foldMark(fold, width) : [];
  return {
    ...together([
      upper,
      { marks, nodes: [] },
      lower,
      footer(plan, { ...inside, y: height - MARGIN.bottom, height: 0 }, folds, setter),
    ]),
    width,
    height,
    title: sheetTitle(plan),
    keyCapitals: upper.capitals,
    folds,
  };
}

/** One way to lay the upper half out: whether it folds, the height it has, and what it may leave out. */
type Attempt = {
  readonly folds: boolean;
  readonly height: number;
  readonly concessions: readonly Fullness[];
};

/** The ways the upper half is tried in, in order: on the half page, or on a page not folded with the warm-up below it or without. */
function triesOf(
  half: number,
  unfolded: { readonly withWarmUp: number; readonly without: number },
): readonly Attempt[] {
  const onHalf = (concessions: readonly Fullness[]): Attempt => ({ folds: true, height: half, concessions });
  const onWhole = (concessions: readonly Fullness[], height: number): Attempt => ({
    folds: false,
    height,
    // What it says during the work as small as it may be, so that much stays for what is read before.
    concessions: concessions === WIDE ? WIDE.slice(2) : concessions,
  });
  const { withWarmUp, without } = unfolded;
  const everyRow = CONCESSIONS.filter(({ every }) => every === "row");
  const withTape = everyRow.filter(({ tape }) => tape > 0);
  const keepingRows = [WIDE, withTape, everyRow];
  return [
    // As long as every round has its line the warm-up stays, before large thresholds and the tape do.
    ...keepingRows.flatMap((each) => [onHalf(each), onWhole(each, withWarmUp)]),
    ...keepingRows.map((each) => onWhole(each, without)),
    ...[CONCESSIONS, FAR_CONCESSIONS].flatMap((each) => [
      onHalf(each),
      onWhole(each, withWarmUp),
      onWhole(each, without),
    ]),
  ];
}

/** The first result there is, in order; later ones are not asked for. */
function firstOf<Try, Result>(
  tries: readonly Try[],
  attempt: (one: Try) => Result | undefined,
): Result | undefined {
  for (const one of tries) {
    const result = attempt(one);
    if (result !== undefined) return result;
  }
  return undefined;
}

/** The title in the file's properties. A band of athletes is named by what it is, never like a person. */
const sheetTitle = ({ athlete, workout }: Plan): string =>
  athlete.anonymous ? `${workout.title}: strategy sheet` : `${workout.title}: sheet of ${athlete.name}`;

function foldMark(y: number, width: number): Placed["marks"] {
  return [lineBetween([0, y], [width, y], "ink", 0.2, true)];
}

function footer(plan: Plan, { x, y, width }: Frame, folds: boolean, setter: Setter): Placed {
  const size = setter.sizeFor(TEXT_CAPITALS, false);
  const made = `Plan of ${sayDate(plan.date)} for ${plan.gym.assumed ? "any gym" : sayGym(plan.gym)}`;
  const right = folds ? "Print at 100%, fold at the dashes" : "Print at 100%";
  return {
    marks: [],
    nodes: [
      { tag: "P", shapes: [textAt(x, y, made, size)] },
      { tag: "P", shapes: [textAt(x + width, y, right, size, { anchor: "end" })] },
    ],
  };
}
