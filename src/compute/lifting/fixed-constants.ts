import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of attempts that a coach cannot set: they say how the model is used, not what somebody can do. */
export const LIFTING_FIXED = {
  buildStepInRounds: {
    value: 0.05,
    unit: "share",
    does: "how far below a ladder's first load each load of a build in rounds lies",
    source: "no measurement found",
    confidence: "judgement",
  },
  lightestInRounds: {
    value: 0.7,
    unit: "share",
    does: "lightest load of a build in rounds over the first of the ladder",
    source: "no measurement found",
    confidence: "judgement",
  },
  oneLift: {
    value: 15,
    unit: "seconds",
    does: "time of a lift where only that says when the next window opens",
    source: "no measurement found",
    confidence: "judgement",
  },
  onTime: {
    value: 20,
    unit: "seconds",
    does: "delay of a lift that leaves the starts after it as they are",
    source: "no measurement found",
    confidence: "judgement",
  },
  worthBeside: {
    value: 1e-4,
    unit: "load asked for a kilogram",
    does: "worth of a kilogram beside reaching the load asked for",
    source: "small enough never to outweigh it",
    confidence: "judgement",
  },
  placesPerKilogram: {
    value: 0.01,
    unit: "places a kilogram",
    does: "worth of a kilogram beside the places it passes",
    source: "small enough never to outweigh one",
    confidence: "judgement",
  },
  closerSteps: {
    value: 0.6,
    unit: "share",
    does: "steps of a ladder that has little way to go, over the usual ones",
    source: "no measurement found",
    confidence: "judgement",
  },
  worthOneMore: {
    value: 0.002,
    unit: "share",
    does: "gain, of the strength, that one more attempt must bring",
    source: "no measurement found",
    confidence: "judgement",
  },
  repsInDoubt: {
    value: 4,
    unit: "reps",
    does: "reps of a set after the first that make its best doubtful at most",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;
