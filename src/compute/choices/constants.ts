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
} as const satisfies ModelConstants;
