import type { Plan } from "../models/plan/plan.ts";
import { afterBlock, selfCheckBlock } from "./blocks-after.ts";
import { cautionBlock, withheldBlock } from "./blocks-care.ts";
import { choiceBlock, gapsBlock, standardsBlock, setUpBlock, warmUpBlock } from "./blocks-before.ts";
import {
  basisBlock,
  countBlock,
  finishBlock,
  loadsBlock,
  missingBlock,
  rulesBlock,
  sharpenBlock,
  workBlock,
} from "./blocks-work.ts";
import { placesBlock } from "./blocks-places.ts";
import type { Block, Detail } from "./block.ts";

/** The blocks of the lower half, in the order in which they are read. */
export const BLOCK_IDS = [
  "withheld",
  "work",
  "warm-up",
  "gaps",
  "set-up",
  "standards",
  "count",
  "choices",
  "loads",
  "finish",
  "places",
  "rules",
  "missing",
  "cautions",
  "self-check",
  "after",
  "basis",
  "sharpen",
] as const;
export type BlockId = (typeof BLOCK_IDS)[number];

/** The detail of each block that is not told in full. */
export type Brevity = Readonly<Partial<Record<BlockId, Detail | "dropped">>>;

type MakeBlock = (plan: Plan, detail: Detail) => Block | undefined;

const MAKERS: Readonly<Record<BlockId, MakeBlock>> = {
  withheld: withheldBlock,
  work: workBlock,
  "warm-up": warmUpBlock,
  gaps: gapsBlock,
  "set-up": setUpBlock,
  standards: standardsBlock,
  count: countBlock,
  choices: choiceBlock,
  loads: loadsBlock,
  finish: finishBlock,
  places: placesBlock,
  rules: rulesBlock,
  missing: missingBlock,
  cautions: cautionBlock,
  "self-check": selfCheckBlock,
  after: afterBlock,
  basis: basisBlock,
  sharpen: sharpenBlock,
};

/**
 * What is given up in the lower half when it does not fit, the least important first; each step keeps those before it.
 * What is withheld and the cautions are never given up.
 */
export const LOWER_CONCESSIONS: readonly Brevity[] = [
  { places: "short" },
  { basis: "short" },
  { sharpen: "dropped" },
  { basis: "dropped" },
  { cautions: "short" },
  { places: "dropped" },
  { after: "short" },
  { "warm-up": "short" },
  { gaps: "short" },
  { cautions: "shorter" },
  { choices: "short" },
  { work: "short" },
  { standards: "short" },
  { after: "dropped" },
  { rules: "dropped" },
  { "warm-up": "shorter" },
  { "self-check": "short" },
  { "self-check": "dropped" },
  { choices: "dropped" },
  { missing: "dropped" },
  { "set-up": "dropped" },
  { count: "dropped" },
  { finish: "short" },
  { work: "dropped" },
  { standards: "dropped" },
  { loads: "dropped" },
  { finish: "dropped" },
  { gaps: "dropped" },
  { "warm-up": "shortest" },
  { "warm-up": "dropped" },
];

/** What is told in full, in short or not at all after concessions; a later one of the same block counts. */
export const brevityAfter = (concessions: readonly Brevity[]): Brevity =>
  Object.assign({}, ...concessions) as Brevity;

/** One block of a plan in a detail; nothing where it has no content. */
export const blockOf = (plan: Plan, id: BlockId, detail: Detail): Block | undefined =>
  MAKERS[id](plan, detail);
