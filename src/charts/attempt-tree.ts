import type { Plan } from "../models/plan/plan.ts";
import { sayAfterMiss } from "../wording/after-miss.ts";
import { sayLiftLoad } from "../wording/lift-words.ts";
import { sayChance } from "../wording/share.ts";
import { sayClock } from "../wording/time.ts";
import type { Drawing, DrawingSize, Shape } from "./drawing.ts";
import { scaleLinear } from "./scale.ts";
import { lineBetween, squareAround, textAt } from "./shapes.ts";

type Lift = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number];
type Attempt = Lift["attempts"][number];

/**
 * The attempts of one lift from left to right, the made line in ink rising with the loads, and under each attempt the
 * branch for a miss: the load to take next, or a bar across where to stop. `shift` turns the clock of the part into the
 * one that is read. `height` wants at least ten text sizes. Gives nothing without attempts.
 */
export function drawAttempts(
  lift: Lift,
  shift: number,
  size: DrawingSize,
  height: number,
): Drawing | undefined {
  const { attempts } = lift;
  if (attempts.length === 0) return undefined;
  const { width, textSize } = size;
  const loads = attempts.map((attempt) => attempt.load.kilograms);
  const y = scaleLinear([Math.min(...loads), Math.max(...loads)], [height - textSize * 6, textSize * 2.7]);
  const at = loads.map((load, index) => [(width / loads.length) * index + textSize * 0.6, y(load)] as const);
  const made = at.slice(1).flatMap((point, index) => {
    const from = at[index];
    return from ? [lineBetween(from, point, "ink", textSize * 0.16)] : [];
  });
  const nodes = attempts.flatMap((attempt, index) => {
    const [x, top] = at[index] ?? [0, 0];
    return [
      ...node(attempt, lift, [x, top], shift, size),
      ...missBranch(attempt, lift, [x, top], height, shift, textSize),
    ];
  });
  return {
    width,
    height,
    shapes: [...made, ...nodes],
    textAlternative: attempts.map((attempt) => inWords(attempt, lift, shift)).join(" "),
  };
}

/** The words stand on paper of their own, because the made line may pass behind them. */
function node(
  attempt: Attempt,
  lift: Lift,
  [x, y]: readonly [number, number],
  shift: number,
  { textSize, measure }: DrawingSize,
): readonly Shape[] {
  const left = x - textSize * 0.35;
  const load = sayLiftLoad(attempt, lift);
  const when = `${sayClock(attempt.clock + shift)} · ${sayChance(attempt.chance)}`;
  const width = Math.max(measure(load, textSize, true), measure(when, textSize, false));
  const paper = { x: left, y: y - textSize * 2.65, width: width + textSize * 0.3, height: textSize * 2.2 };
  return [
    { kind: "rect", ...paper, fill: "paper" },
    squareAround(x, y, textSize * 0.7, "ink"),
    textAt(left, y - textSize * 1.75, load, textSize, { strong: true }),
    textAt(left, y - textSize * 0.7, when, textSize),
  ];
}

function missBranch(
  { afterMiss }: Attempt,
  lift: Lift,
  [x, y]: readonly [number, number],
  height: number,
  shift: number,
  textSize: number,
): readonly Shape[] {
  const end = height - textSize * 3.3;
  const words = ["missed:", ...branchWords(afterMiss, lift, shift)];
  return [
    lineBetween([x, y + textSize * 0.5], [x, end], "accent", textSize * 0.12, true),
    afterMiss.kind === "stop"
      ? lineBetween([x - textSize * 0.4, end], [x + textSize * 0.4, end], "accent", textSize * 0.2)
      : squareAround(x, end, textSize * 0.44, "accent"),
    ...words.map((line, index) =>
      textAt(x - textSize * 0.35, end + textSize * (1.15 + index), line, textSize, { tone: "accent" }),
    ),
  ];
}

/** What to do, in two short lines that fit a narrow column. */
function branchWords(afterMiss: Attempt["afterMiss"], lift: Lift, shift: number): readonly string[] {
  if (afterMiss.kind === "stop") return ["done"];
  const again = afterMiss.direction === "same" ? "again " : "";
  return [`${again}${sayLiftLoad(afterMiss, lift)}`, `at ${sayClock(afterMiss.clock + shift)}`];
}

function inWords(attempt: Attempt, lift: Lift, shift: number): string {
  const when = `${sayLiftLoad(attempt, lift)} at ${sayClock(attempt.clock + shift)}`;
  return `Attempt ${attempt.number}: ${when}, made ${sayChance(attempt.chance)} of the time; if missed, ${sayAfterMiss(attempt.afterMiss, shift, lift)}.`;
}
