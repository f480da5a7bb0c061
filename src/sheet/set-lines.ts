import { textAt } from "../charts/shapes.ts";
import type { Shape } from "../charts/drawing.ts";
import type { PartPlan } from "../models/plan/plan.ts";
import { saySets, setsAsWritten } from "../wording/sets.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { PIECE_GAP, WORD_PITCH } from "./key-panel.ts";
import type { Measured, SheetNode } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;

/** Rounds in which a movement is broken in the same way. */
type SetGroup = { readonly rounds: string; readonly sets: string };

/** The sets of a movement over the rounds, neighbouring rounds of equal sets together. */
export function groupSets(pacing: Pacing, short: string): readonly SetGroup[] {
  const said = pacing.rounds.flatMap(({ round, label }) => {
    const rows = pacing.rows.filter((row) => row.round === round && row.short === short);
    return rows.length === 0
      ? []
      : [{ label, sets: rows.map((row) => saySets(setsAsWritten(row))).join(" + ") }];
  });
  const groups: { first: string; last: string; sets: string }[] = [];
  for (const { label, sets } of said) {
    const group = groups.at(-1);
    if (group?.sets === sets) group.last = label;
    else groups.push({ first: label, last: label, sets });
  }
  return groups.map(({ first, last, sets }) => ({
    rounds: first === last ? first : `${first}–${last}`,
    sets,
  }));
}

/** A line of key figures that says, for one movement, which sets hold in which rounds; goes on below where it is too long. */
export function setLine(
  short: string,
  groups: readonly SetGroup[],
  width: number,
  capitals: number,
  setter: Setter,
): Measured {
  const small = setter.sizeFor(TEXT_CAPITALS, true);
  const size = setter.sizeFor(capitals, true);
  const gap = capitals * PIECE_GAP;
  const pieces = groups.map(({ rounds, sets }, index) => {
    const label = index === 0 ? `${short}, ${rounds}` : rounds;
    const labelWidth = setter.measure(label, small, true);
    return { label, sets, labelWidth, width: labelWidth + gap * 0.4 + setter.measure(sets, size, true) };
  });
  const lines: (typeof pieces)[] = [];
  for (const piece of pieces) {
    const line = lines.at(-1);
    const used = line?.reduce((sum, each) => sum + each.width + gap, 0) ?? Number.POSITIVE_INFINITY;
    if (line && used + piece.width <= width) line.push(piece);
    else lines.push([piece]);
  }
  return {
    height: lines.length * capitals * WORD_PITCH,
    place: (x, y) => {
      const shapes = lines.flatMap((line, index) => {
        let left = x;
        const baseline = y + index * capitals * WORD_PITCH + capitals;
        return line.flatMap((piece): readonly Shape[] => {
          const at = left;
          left += piece.width + gap;
          return [
            textAt(at, baseline, `${piece.label} `, small, { strong: true }),
            textAt(at + piece.labelWidth + gap * 0.4, baseline, `${piece.sets} `, size, { strong: true }),
          ];
        });
      });
      const node: SheetNode = { tag: "P", shapes };
      return { marks: [], nodes: [node] };
    },
  };
}
