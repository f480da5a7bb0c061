import type { PartPlan, Plan } from "../models/plan/plan.ts";

type Entry = { readonly word: string; readonly meaning: string };

const anyPart =
  (holds: (part: PartPlan) => boolean) =>
  (plans: readonly Plan[]): boolean =>
    plans.some((plan) => plan.parts.some(holds));

/** Words a member who never competed may not know, with where they occur. */
const WORDS: readonly (Entry & { readonly occurs: (plans: readonly Plan[]) => boolean })[] = [
  {
    word: "For time",
    meaning: "All of the work, as fast as you can. Your time is your score.",
    occurs: anyPart(({ format }) => format === "for-time"),
  },
  {
    word: "AMRAP",
    meaning: "As many rounds and reps as possible until the clock runs out. What you got done is your score.",
    occurs: anyPart(({ format }) => format === "amrap"),
  },
  {
    word: "Cap",
    meaning: "The clock at which the work stops, finished or not.",
    occurs: anyPart(({ pacing }) => pacing?.cap !== undefined),
  },
  {
    word: "Set",
    meaning: "Reps done without putting down or coming off. 7-5 means seven, a short rest, then five.",
    occurs: anyPart(({ pacing }) => pacing?.rows.some(({ sets }) => sets.length > 1) ?? false),
  },
  {
    word: "8 days in 10",
    meaning:
      "Nobody has the same day twice. The same athlete ends between these two results on eight days of ten; one day is better still, one worse.",
    occurs: (plans) => plans.some(({ headline }) => headline.result !== undefined),
  },
  {
    word: "Reserve",
    meaning:
      "What you can do beyond the effort you could hold for twenty minutes. It empties while you work harder than that and fills again while you rest.",
    occurs: anyPart(({ pacing }) => pacing?.hard !== undefined || pacing?.margin !== undefined),
  },
  {
    word: "Half of the work",
    meaning:
      "Marked on the tape: what is left costs as much as what was done, whatever the count of reps says.",
    occurs: anyPart(({ pacing }) => pacing?.half !== undefined),
  },
  {
    word: "Best lift",
    meaning: "The heaviest you can lift once on a good day. 70% of 100 kg is 70 kg.",
    occurs: anyPart(({ lifting }) => lifting !== undefined),
  },
  {
    word: "A side",
    meaning: "The plates on each end of the bar, from the inside out.",
    occurs: (plans) => plans.some(({ loads }) => loads.some(({ load }) => load.perSide !== undefined)),
  },
  {
    word: "Tie-break",
    meaning: "A time noted on the way; it decides between equal results.",
    occurs: anyPart(({ pacing }) => pacing?.rows.some(({ tieBreak }) => tieBreak) ?? false),
  },
];

/** The words that these plans use, with what they mean. */
export const glossaryOf = (plans: readonly Plan[]): readonly Entry[] =>
  WORDS.filter(({ occurs }) => occurs(plans)).map(({ word, meaning }) => ({ word, meaning }));
