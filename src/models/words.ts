/**
 * The words a coach may use in the text of a workout to show each reader's own numbers. They are written like HTML with
 * a capital: `<Load of="clean" share="70%" />`. Check and page both take them from here.
 */

/** How the value of an attribute is read. */
export type AttributeKind =
  | "movement"
  | "movement-of-workout"
  | "share"
  | "part"
  | "count"
  | "levels"
  | "divisions"
  | "units"
  | "sexes"
  | "habits"
  | "limits";

type Attribute = { readonly kind: AttributeKind; readonly required: boolean; readonly says: string };

export type Word = {
  readonly says: string;
  /** Whether text stands between an opening and a closing word. */
  readonly around: boolean;
  readonly attributes: Readonly<Record<string, Attribute>>;
};

const part: Attribute = {
  kind: "part",
  required: false,
  says: "name of the part; the first part with such a number when left out",
};

const readers: Readonly<Record<string, Attribute>> = {
  level: { kind: "levels", required: false, says: "levels, with commas between them" },
  division: {
    kind: "divisions",
    required: false,
    says: "divisions of the workout, with commas between them",
  },
  unit: { kind: "units", required: false, says: "kg or lb, as the reader reads loads" },
  sex: { kind: "sexes", required: false, says: "female or male" },
  habit: { kind: "habits", required: false, says: "habits, with commas between them" },
  limit: {
    kind: "limits",
    required: false,
    says: "stated limits: joints, conditions or stresses, with commas between them; `any` for any at all",
  },
};

export const WORDS: Readonly<Record<string, Word>> = {
  Load: {
    says: "a load as a share of the reader's best lift, as plates can make it, never heavier",
    around: false,
    attributes: {
      of: { kind: "movement", required: true, says: "the lift" },
      share: { kind: "share", required: true, says: "share of the best lift today" },
    },
  },
  Share: {
    says: "how heavy the load of the workout is for the reader, as a share of their best lift",
    around: false,
    attributes: { of: { kind: "movement-of-workout", required: true, says: "the movement with that load" } },
  },
  Target: {
    says: "what the reader aims at",
    around: false,
    attributes: { part },
  },
  Split: {
    says: "the clock at the end of a round",
    around: false,
    attributes: { round: { kind: "count", required: true, says: "number of the round, from 1" }, part },
  },
  Half: {
    says: "the clock at which half of the work is done",
    around: false,
    attributes: { part },
  },
  Sets: {
    says: "how the reader breaks up a movement",
    around: false,
    attributes: {
      of: { kind: "movement-of-workout", required: true, says: "the movement" },
      round: { kind: "count", required: false, says: "number of the round, from 1; the first when left out" },
      part,
    },
  },
  FirstLift: {
    says: "the load to open with",
    around: false,
    attributes: { part },
  },
  Only: { says: "text for some readers only", around: true, attributes: readers },
  Except: { says: "text for all readers but some", around: true, attributes: readers },
  Withheld: {
    says: "text for readers from whom something is withheld because of a stated limit",
    around: true,
    attributes: {},
  },
};

/** What a division, a level, a limit is written between in a list. @example listed("new, regular") // => ["new", "regular"] */
export const listed = (written: string): readonly string[] =>
  written
    .split(",")
    .map((entry) => entry.trim().toLowerCase())
    .filter((entry) => entry !== "");
