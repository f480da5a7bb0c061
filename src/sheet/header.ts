import { textAt } from "../charts/shapes.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayMoment } from "../wording/date.ts";
import { sayEightInTen, sayGoal } from "../wording/goal.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { setParagraph, type SetParagraph } from "./paragraph.ts";
import type { Measured, SheetNode } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Sizes tried for title and name, millimetres of capitals; the first at which two lines hold them is taken. */
const TITLE_CAPITALS = [5.4, 4.6, 3.9, 3.3, 2.9] as const;
const NAME_CAPITALS = [3.6, 3.1, TEXT_CAPITALS] as const;

/** Who it is for and when it starts, under the title; where heat is cared for, that too. */
function whoOf({ athlete, start, cautions }: Plan): string {
  const who = athlete.anonymous ? athlete.name : `${athlete.name}, ${athlete.division}`;
  const heat = cautions.some(({ id }) => id.startsWith("heat-")) ? "heat" : undefined;
  return [who, start && sayMoment(start.local), heat].filter((text) => text !== undefined).join(" · ");
}

function fitted(
  text: string,
  ladder: readonly number[],
  width: number,
  strong: boolean,
  setter: Setter,
): SetParagraph {
  const tried = ladder.map((capitals) => setParagraph([{ text, strong }], capitals, width, setter));
  return (
    tried.find((paragraph) => paragraph.lines <= 2) ??
    tried[tried.length - 1] ??
    setParagraph([], 3, width, setter)
  );
}

/** The goal is larger than the key figures, unless it would take more than half of the width. */
const goalGrowth = (figure: string, width: number, capitals: number, setter: Setter): number =>
  setter.measure(figure, setter.sizeFor(capitals * 1.45, true), true) > width / 2 ? 1 : 1.45;

/** The head of the sheet: title and name on the left, the goal large on the right. `capitals` is the size of key figures. */
export function sheetHeader(plan: Plan, width: number, capitals: number, setter: Setter): Measured {
  const goal = sayGoal(plan);
  const figureCapitals = capitals * (goal ? goalGrowth(goal.figure, width, capitals, setter) : 1);
  const figureSize = setter.sizeFor(figureCapitals, true);
  const unitSize = setter.sizeFor(Math.max(TEXT_CAPITALS, 3), false);
  const smallSize = setter.sizeFor(TEXT_CAPITALS, false);
  const unit = goal?.unit ?? "";
  const unitGap = unit ? figureCapitals * 0.12 : 0;
  const rangeText = goal?.range ? sayEightInTen(goal.range) : "";
  const labelWidth = goal ? setter.measure(goal.label, smallSize, false) + figureCapitals * 0.2 : 0;
  const figureWidth = goal
    ? setter.measure(goal.figure, figureSize, true) + unitGap + setter.measure(unit, unitSize, false)
    : 0;
  const goalWidth = Math.max(labelWidth + figureWidth, setter.measure(rangeText, smallSize, false));
  const titleWidth = width - goalWidth - (goal ? 6 : 0);
  const title = fitted(plan.workout.title, TITLE_CAPITALS, titleWidth, true, setter);
  const who = fitted(whoOf(plan), NAME_CAPITALS, titleWidth, false, setter);
  const goalHeight = goal ? figureCapitals + TEXT_CAPITALS * 2.1 : 0;
  return {
    height: Math.max(title.height + who.height, goalHeight),
    place: (x, y) => {
      const right = x + width;
      const goalNodes: readonly SheetNode[] = goal
        ? [
            {
              tag: "P",
              shapes: [
                textAt(right - figureWidth - labelWidth, y + figureCapitals, `${goal.label} `, smallSize),
                textAt(right - figureWidth, y + figureCapitals, `${goal.figure} `, figureSize, {
                  strong: true,
                }),
                ...(unit ? [textAt(right, y + figureCapitals, unit, unitSize, { anchor: "end" })] : []),
                textAt(right, y + figureCapitals + TEXT_CAPITALS * 1.75, rangeText, smallSize, {
                  anchor: "end",
                }),
              ],
            },
          ]
        : [];
      return {
        marks: [],
        nodes: [
          { tag: "H1", shapes: title.at(x, y) },
          { tag: "P", shapes: who.at(x, y + title.height) },
          ...goalNodes,
        ],
      };
    },
  };
}
