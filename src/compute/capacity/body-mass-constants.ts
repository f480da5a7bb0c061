import type { ModelConstants } from "../../models/model-constant.ts";

/** Body mass where an athlete states none, and what it does to paces of which only a level is known. */
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
  massOnRuns: {
    value: 0.3,
    unit: "exponent",
    range: [0, 1],
    does: "power with which time over a distance run grows with body mass, where no run of the athlete is known",
    source: "times over 3200 m go with mass to 0.3 (quoted by Vanderburgh et al. 1996); a third by geometry",
    confidence: "published",
  },
  massOnPower: {
    value: 2 / 3,
    unit: "exponent",
    range: [0, 1],
    does: "power with which the work given to a machine grows with body mass, where no result at it is known",
    source:
      "speed of a rowing machine goes with two ninths of mass, by the fan law (Vanderburgh et al. 1996)",
    confidence: "published",
  },
  massOnReps: {
    value: 1 / 3,
    unit: "exponent",
    range: [0, 1],
    does: "power with which reps that carry the body grow slower and sets of them smaller with body mass",
    source:
      "tests of supporting body weight, such as chin-ups, go with mass to minus a third (Markovic and Jaric 2004)",
    confidence: "published",
  },
} as const satisfies ModelConstants;

export type BodyMassConstants = Readonly<Record<keyof typeof BODY_MASS_CONSTANTS, number>>;
