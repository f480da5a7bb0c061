import type { Plan } from "../models/plan/plan.ts";
import { measureBlock, type Detail } from "./block.ts";
import {
  BLOCK_IDS,
  LOWER_CONCESSIONS,
  blockOf,
  brevityAfter,
  type BlockId,
  type Brevity,
} from "./block-list.ts";
import type { Frame } from "./paper.ts";
import { qrCode } from "./qr-code.ts";
import { together, type Measured, type Placed } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

const COLUMN_GAP = 7;
const BLOCK_GAP = 2.2;

/** What the lower half is made of besides the plan: the width it has, the link of the QR code, and the setter. */
type LowerMaterial = {
  readonly width: number;
  readonly link: string | undefined;
  readonly setter: Setter;
  /** Whether the upper half has a box to tick for every round; else they stand here. */
  readonly everyRound: boolean;
};

const columnWidthOf = (width: number): number => (width - COLUMN_GAP) / 2;

const codeOf = ({ link, setter }: LowerMaterial): ReturnType<typeof qrCode> | undefined =>
  link === undefined ? undefined : qrCode(link, "everything, on your page", setter);

/**
 * Lays out everything that is read before and after the work in two columns, blocks whole and in reading order. Gives up
 * blocks in the declared order until the rest fits, then takes back, the most important first, whatever still finds
 * room. Nothing when even what may not be given up does not fit. The QR code stands in the lower right corner.
 */
export function layoutLower(plan: Plan, frame: Frame, material: LowerMaterial): Placed | undefined {
  const columnWidth = columnWidthOf(frame.width);
  const code = codeOf(material);
  const blocksAfter = measuredBlocks(plan, material);
  const arranged = fewestConcessions((concessions) =>
    shareOut(blocksAfter(concessions), frame.height, code?.height ?? 0),
  );
  if (!arranged) return undefined;
  return together([
    placeDown(arranged.left, frame.x, frame.y),
    placeDown(arranged.right, frame.x + columnWidth + COLUMN_GAP, frame.y),
    ...(code ? [code.place(frame.x + frame.width - code.width, frame.y + frame.height - code.height)] : []),
  ]);
}

/** The height that what may not be given up needs, and the warm-up if it is to be kept, millimetres. */
export function leastLowerHeight(plan: Plan, material: LowerMaterial, keepsWarmUp: boolean): number {
  const given = LOWER_CONCESSIONS.filter((each) => !keepsWarmUp || each["warm-up"] !== "dropped");
  const blocks = measuredBlocks(plan, material)(given);
  const under = codeOf(material)?.height ?? 0;
  const arranged = shareOut(blocks, Number.MAX_VALUE, under);
  return arranged ? highest(arranged, under) : 0;
}

/** The blocks that stay after concessions, in reading order; each is measured once in each of its details. */
function measuredBlocks(
  plan: Plan,
  { width, setter, everyRound }: LowerMaterial,
): (concessions: readonly Brevity[]) => readonly Measured[] {
  const known = new Map<string, Measured | undefined>();
  const measured = (id: BlockId, detail: Detail): Measured | undefined => {
    const key = `${id} ${detail}`;
    if (!known.has(key)) {
      const block = blockOf(plan, id, detail);
      known.set(key, block && measureBlock(block, columnWidthOf(width), setter));
    }
    return known.get(key);
  };
  return (concessions) => {
    const brevity = brevityAfter(concessions);
    return BLOCK_IDS.flatMap((id) => {
      const detail = brevity[id] ?? "full";
      const block = detail === "dropped" || (id === "count" && everyRound) ? undefined : measured(id, detail);
      return block ? [block] : [];
    });
  };
}

type Arrangement = { readonly left: readonly Measured[]; readonly right: readonly Measured[] };

function fewestConcessions(
  arrange: (concessions: readonly Brevity[]) => Arrangement | undefined,
): Arrangement | undefined {
  const counts = Array.from({ length: LOWER_CONCESSIONS.length + 1 }, (_, count) => count);
  const needed = counts.find((count) => arrange(LOWER_CONCESSIONS.slice(0, count)));
  if (needed === undefined) return undefined;
  let made = LOWER_CONCESSIONS.slice(0, needed);
  for (const concession of [...made].reverse()) {
    const fewer = made.filter((each) => each !== concession);
    if (arrange(fewer)) made = fewer;
  }
  return arrange(made);
}

const heightOf = (blocks: readonly Measured[]): number =>
  blocks.reduce((sum, block) => sum + block.height, 0) + BLOCK_GAP * Math.max(0, blocks.length - 1);

/** Height of the higher column. */
const highest = ({ left, right }: Arrangement, underRight: number): number =>
  Math.max(
    heightOf(left),
    heightOf(right) + underRight + (underRight > 0 && right.length > 0 ? BLOCK_GAP : 0),
  );

/**
 * Shares blocks out to two columns of a height, `underRight` of it taken in the right one. Reading order down the left
 * and on down the right where that fits; else any sharing out that does, order kept within each column, and of those
 * the one with the most even columns.
 */
function shareOut(blocks: readonly Measured[], height: number, underRight: number): Arrangement | undefined {
  const fitting = (candidates: readonly Arrangement[]): Arrangement | undefined =>
    candidates
      .map((candidate) => ({ candidate, high: highest(candidate, underRight) }))
      .filter(({ high }) => high <= height)
      .sort((a, b) => a.high - b.high)[0]?.candidate;
  const inOrder = Array.from({ length: blocks.length + 1 }, (_, at) => ({
    left: blocks.slice(0, at),
    right: blocks.slice(at),
  }));
  const total = blocks.reduce((sum, block) => sum + block.height, 0);
  if (total > 2 * height - underRight) return undefined;
  return (
    fitting(inOrder) ??
    fitting(
      Array.from({ length: 2 ** blocks.length }, (_, mask) => ({
        left: blocks.filter((_block, index) => Math.floor(mask / 2 ** index) % 2 === 0),
        right: blocks.filter((_block, index) => Math.floor(mask / 2 ** index) % 2 === 1),
      })),
    )
  );
}

function placeDown(blocks: readonly Measured[], x: number, y: number): Placed {
  let top = y;
  return together(
    blocks.map((block) => {
      const placed = block.place(x, top);
      top += block.height + BLOCK_GAP;
      return placed;
    }),
  );
}
