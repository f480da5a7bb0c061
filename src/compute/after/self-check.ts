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
    good: "No.",
    bad: "Yes: rest, and have it looked at by somebody licensed.",
  },
  { id: "soreness", question: "How sore are you?", good: "Hardly.", bad: "Stairs or a coat are hard work." },
  {
    id: "breath",
    question: "Is your breath back to normal?",
    good: "Long since.",
    bad: "Still quick, or I cough.",
  },
  { id: "mood", question: "Do you feel like moving?", good: "Yes.", bad: "Not at all." },
  {
    id: "sum",
    question: "Your check is",
    good: "good, when all answers stand here.",
    bad: "middling with one here; bad with two, or with any sharp pain.",
  },
];
