import type { Condition } from "../models/vocabulary.ts";

const NAMES: Readonly<Record<Condition, string>> = {
  pregnancy: "pregnancy",
  "after-birth": "the time after a birth",
  heart: "your heart",
  "high-blood-pressure": "high blood pressure",
  asthma: "asthma",
  diabetes: "diabetes",
  epilepsy: "epilepsy",
  hernia: "a hernia",
  concussion: "a concussion",
  "past-rhabdomyolysis": "an earlier breakdown of muscle",
  "past-heat-illness": "an earlier illness in the heat",
  "sickle-cell-trait": "sickle cell trait",
  "recent-illness": "an illness not long ago",
  "advised-by-doctor": "advice of your doctor",
};

/** A stated condition in the athlete's language. */
export const sayCondition = (condition: Condition): string => NAMES[condition];
