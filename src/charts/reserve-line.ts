import type { Plan } from "../models/plan/plan.ts";
import { sayList } from "../wording/number.ts";
import { sayShare } from "../wording/share.ts";
import { sayClock } from "../wording/time.ts";
import { pathThrough, type Drawing, type DrawingSize, type Shape } from "./drawing.ts";
import { scaleLinear } from "./scale.ts";
import { lineBetween, textAt } from "./shapes.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/**
 * The reserve left over the clock, full at the top and empty at the bottom, with the ends of rounds ticked below and
 * the round where it gets hard marked. Gives nothing where the reserve was not computed.
 */
export function drawReserve(pacing: Pacing, size: DrawingSize, height: number): Drawing | undefined {
  const known = pacing.rows.flatMap(({ end, reserve }) =>
    reserve === undefined ? [] : [{ clock: end, reserve }],
  );
  const last = known.at(-1);
  if (!last) return undefined;
  const { width, textSize, measure } = size;
  const thin = textSize * 0.07;
  const gutter = measure("empty", textSize, false) + textSize * 0.5;
  const [top, bottom] = [textSize, height - textSize * 1.6];
  const x = scaleLinear([0, pacing.duration], [gutter, width - textSize * 0.5]);
  const y = scaleLinear([0, 1], [bottom, top]);
  const curve = [{ clock: 0, reserve: 1 }, ...known].map(
    ({ clock, reserve }) => [x(clock), y(reserve)] as const,
  );
  const hard = pacing.rounds.find((round) => round.round === pacing.hard?.round);
  return {
    width,
    height,
    shapes: [
      textAt(0, top + textSize * 0.34, "full", textSize),
      textAt(0, bottom + textSize * 0.34, "empty", textSize),
      lineBetween([gutter, bottom], [width, bottom], "ink", thin),
      ...pacing.rounds.map(({ end }) =>
        lineBetween([x(end), bottom], [x(end), bottom + textSize * 0.3], "ink", thin),
      ),
      ...(hard
        ? hardMark(
            { from: x(hard.start), to: x(hard.end), bottom, top },
            `hard from ${sayClock(hard.start)}`,
            size,
          )
        : []),
      { kind: "path", d: pathThrough(curve, false), stroke: "ink", strokeWidth: textSize * 0.16 },
      textAt(width, height - textSize * 0.2, sayClock(pacing.duration), textSize, {
        anchor: "end",
        strong: true,
      }),
    ],
    textAlternative: inWords(pacing, last),
  };
}

function hardMark(
  { from, to, bottom, top }: Readonly<Record<"from" | "to" | "bottom" | "top", number>>,
  text: string,
  { width, textSize, measure }: DrawingSize,
): readonly Shape[] {
  const fits = from + measure(text, textSize, false) + textSize * 0.4 <= width;
  const x = fits ? from + textSize * 0.4 : from - textSize * 0.4;
  return [
    lineBetween([from, bottom], [from, top], "ink", textSize * 0.1, true),
    lineBetween([from, bottom], [to, bottom], "ink", textSize * 0.3),
    textAt(x, top + textSize * 0.7, text, textSize, { anchor: fits ? "start" : "end" }),
  ];
}

function inWords(pacing: Pacing, last: { readonly clock: number; readonly reserve: number }): string {
  const ends = pacing.rounds.flatMap(({ lastRow, label }) => {
    const reserve = pacing.rows.find((row) => row.index === lastRow)?.reserve;
    return reserve === undefined ? [] : [`${label}: ${sayShare(reserve)}`];
  });
  const rounds = ends.length > 1 ? ` After each round: ${sayList(ends)}.` : "";
  return `Reserve left over the clock, from full to ${sayShare(last.reserve)} at ${sayClock(last.clock)}.${rounds}`;
}
