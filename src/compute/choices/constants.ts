import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of choosing between the options of a movement. */
export const CHOICE_CONSTANTS = {
  closeCall: {
    value: 0.05,
    unit: "share",
    range: [0, 0.5],
    does: "share of its threshold within which a number decides nothing surely",
    source:
      "best lifts and max sets are known to some 5 % (Engel et al. 2019, 10.3389/fphys.2019.00460: CV 3.5-4.1 % of a tested squat, 3.9-7.3 % of a test workout; abstract)",
    confidence: "judgement",
  },
  mainChoicesOfPart: {
    value: 4,
    unit: "count",
    range: [1, 20],
    does: "choices of one part that are told in full; the rest stands behind them",
    source: "what an athlete keeps in mind of a talk before the start",
    confidence: "judgement",
  },
  mainChoices: {
    value: 6,
    unit: "count",
    range: [1, 30],
    does: "choices of a whole brief that are told in full",
    source: "what an athlete keeps in mind of a talk before the start, two parts of it",
    confidence: "judgement",
  },
  worthOfLittle: {
    value: 0.3,
    unit: "share",
    range: [0, 1],
    does: "weight of a choice on which little hangs against one that moves seconds",
    source: "gear and hand position cost a few seconds a workout, footwork and sets a few seconds a round",
    confidence: "judgement",
  },
  worthOfUnsure: {
    value: 1.3,
    unit: "share",
    range: [1, 3],
    does: "weight of a choice that is close and wants a try in the warm-up",
    source: "what is clear the athlete does unasked",
    confidence: "judgement",
  },
  worthOfUsual: {
    value: 0.6,
    unit: "share",
    range: [0, 1],
    does: "weight of a choice no number of the athlete decided",
    source: "the usual way needs no telling",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;
