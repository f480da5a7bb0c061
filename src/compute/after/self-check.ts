/** Answers a self-check can come to, best first. */
export const CHECK_ANSWERS = ["good", "middling", "bad"] as const;
export type CheckAnswer = (typeof CHECK_ANSWERS)[number];
