import type { Level } from "../vocabulary.ts";
import type { Debrief } from "./debrief.ts";
import type { Plan } from "./plan.ts";

/** What a review reads of a plan: who it is for, the results held against it, and what its lines of work are called. */
export type Reviewable = {
  readonly athlete: Pick<Plan["athlete"], "name" | "level">;
  readonly debriefs?: Plan["debriefs"];
  readonly parts: readonly {
    readonly name: string;
    readonly pacing?:
      { readonly rows: readonly { readonly index: number; readonly name: string }[] } | undefined;
  }[];
};

/** How far plans were off for some group: mean over its results, as a share of time; above 0 where it took longer than planned. */
export type Bias = { readonly slower: number; readonly count: number };

/** One athlete's result of a part against the plan. */
export type ReviewedResult = {
  readonly name: string;
  readonly level: Level;
  readonly unit: Debrief["unit"];
  readonly planned: number;
  readonly done: number;
  readonly standing: Debrief["standing"];
  readonly scaled: boolean;
  /** What the units count, how many a round holds, and the result as it was logged. */
  readonly score?: Debrief["score"];
  readonly perRound?: Debrief["perRound"];
  readonly logged: NonNullable<Plan["debriefs"]>[number]["logged"];
};

/** How good the plans of one part were, over everybody with a result of it. */
export type Review = {
  readonly part: string;
  readonly results: readonly ReviewedResult[];
  /** Of results done as prescribed: how many, how many inside the range of their plan, the bias and the mean size of an error. */
  readonly counted: number;
  readonly inside: number;
  readonly all: Bias;
  readonly size: number;
  readonly levels: readonly (Bias & { readonly level: Level })[];
  /** By movement, beside the bias of all the work, where lines were timed. */
  readonly movements: readonly (Bias & { readonly name: string })[];
};
