import type { ModelConstants } from "../../models/model-constant.ts";

/** Body mass where an athlete states none. */
export const BODY_MASS_CONSTANTS = {
  bodyMassError: {
    value: 0.15,
    unit: "share",
    range: [0, 1],
    does: "error of a body mass that is not stated",
    source: "no measurement found",
    confidence: "judgement",
  },
  bodyMassMale: {
    value: 80,
    unit: "kilograms",
    range: [30, 200],
    does: "body mass of a man who states none",
    source: "no measurement found of athletes who compete",
    confidence: "judgement",
  },
  bodyMassFemale: {
    value: 65,
    unit: "kilograms",
    range: [30, 200],
    does: "body mass of a woman who states none",
    source: "no measurement found of athletes who compete",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

export type BodyMassConstants = Readonly<Record<keyof typeof BODY_MASS_CONSTANTS, number>>;
