import type { Plan } from "../../models/plan/plan.ts";

type SelfCheck = NonNullable<Plan["after"]>["selfCheck"];

/** Answers a self-check can come to, best first. */
export const CHECK_ANSWERS = ["good", "middling", "bad"] as const;
export type CheckAnswer = (typeof CHECK_ANSWERS)[number];

/**
 * The short self-check printed on the sheet, and how its answers add up. Questions by how the athlete feels, as no
 * measure was found that tells more on the same day; judgement.
 */
export const SELF_CHECK: SelfCheck = [
  {
    id: "sharp-pain",
    question: "Any sharp or sudden pain?",
    good: "no",
    bad: "yes: rest, and have it looked at by somebody licensed",
  },
  { id: "soreness", question: "How sore are you?", good: "hardly", bad: "stairs or a coat are hard work" },
  {
    id: "breath",
    question: "Is your breath back to normal?",
    good: "long since",
    bad: "still quick, or I cough",
  },
  { id: "mood", question: "Do you feel like moving?", good: "yes", bad: "not at all" },
  {
    id: "sum",
    question: "How do the answers add up?",
    good: "a good check, with all answers here",
    bad: "a bad check, with two answers here or any sharp pain; with one it is middling",
  },
];
