import type { WarmUpBlock, WarmUpStage } from "../../models/library.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import { allHold, type Verdict } from "../conditions/holds.ts";
import type { Situation } from "../conditions/situation.ts";

/** A block as this athlete gets it: its words filled in, and the movement it is for where it is for one. */
export type PickedBlock = { readonly block: WarmUpBlock; readonly id: string; readonly say: string };

export type DroppedBlock = { readonly title: string; readonly why: "no-time" | "limit" | "no-equipment" };

export type PickInput = {
  readonly blocks: readonly WarmUpBlock[];
  readonly situation: Situation;
  readonly movements: readonly AtMovement[];
  readonly avoids: (block: WarmUpBlock) => boolean;
  /** Longest stretch held still that may stand in it, seconds. */
  readonly longestStill: number;
  /** Fills in the words for one movement; undefined where the movement is not primed. */
  readonly forMovement: (say: string, at: AtMovement) => string | undefined;
  /** Whether a block for the whole workout has something to speak of. */
  readonly forWorkout: (say: string) => boolean;
  /** Most blocks of each stage. */
  readonly most: Readonly<Record<WarmUpStage, number>>;
};

type Candidate = PickedBlock & { readonly dropped?: DroppedBlock["why"] };

/**
 * Picks the blocks of a warm-up, stage by stage: those whose conditions hold, the most needed first (lowest priority
 * number, then the more particular, the longer, by id), up to the most of each stage. A block that does what the athlete
 * keeps away from is dropped; one that wants equipment the gym does not list is told only where its stage stays empty.
 */
export function pickBlocks(input: PickInput): {
  readonly picked: readonly PickedBlock[];
  readonly dropped: readonly DroppedBlock[];
} {
  const candidates = [...input.blocks].sort(byNeed).flatMap((block) => candidatesFrom(block, input));
  const picked: PickedBlock[] = [];
  const dropped: DroppedBlock[] = [];
  const countOf = (stage: WarmUpStage): number => picked.filter((each) => each.block.stage === stage).length;
  for (const { dropped: why, ...candidate } of candidates) {
    const { stage, title } = candidate.block;
    if (why === "no-equipment" || countOf(stage) >= input.most[stage]) continue;
    if (why === undefined) picked.push(candidate);
    else dropped.push({ title, why });
  }
  for (const { dropped: why, block } of candidates) {
    if (why === "no-equipment" && countOf(block.stage) === 0) dropped.push({ title: block.title, why });
  }
  return { picked, dropped };
}

function candidatesFrom(block: WarmUpBlock, input: PickInput): readonly Candidate[] {
  if ((block.holdsStill ?? 0) > input.longestStill) return [];
  if (!block.perMovement) {
    const why = reasonAgainst(block, input.situation, input);
    if (!input.forWorkout(block.say) || why === "conditions") return [];
    return [{ block, id: block.id, say: block.say, ...(why !== undefined && { dropped: why }) }];
  }
  return input.movements.flatMap((at) => {
    const say = input.forMovement(block.say, at);
    const why = reasonAgainst(block, at.situation, input);
    if (say === undefined || why === "conditions") return [];
    return [{ block, id: `${block.id}-${at.movement.id}`, say, ...(why !== undefined && { dropped: why }) }];
  });
}

function reasonAgainst(
  block: WarmUpBlock,
  situation: Situation,
  { avoids }: PickInput,
): DroppedBlock["why"] | "conditions" | undefined {
  const { holds, verdicts } = allHold(block.when, situation);
  if (holds) return avoids(block) ? "limit" : undefined;
  const failing = verdicts.filter((verdict) => !verdict.holds);
  return failing.every(asksForEquipment) ? "no-equipment" : "conditions";
}

const asksForEquipment = ({ condition, known }: Verdict): boolean =>
  known && condition.kind === "fact" && condition.fact === "gym-has" && condition.holds;

function byNeed(one: WarmUpBlock, other: WarmUpBlock): number {
  return (
    one.priority - other.priority ||
    other.when.length - one.when.length ||
    other.time.usual - one.time.usual ||
    (one.id < other.id ? -1 : Number(one.id > other.id))
  );
}
