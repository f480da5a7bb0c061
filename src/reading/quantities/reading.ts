/** How a text was read, where somebody could have meant something else. `readAs` says the same beyond doubt. */
export type Told = { readonly problem: string; readonly readAs: string };

/** A text taken as a value. `approximate` when it was written with `~`, `about` or the like. */
type Taken<T> = {
  readonly ok: true;
  readonly value: T;
  readonly approximate: boolean;
  readonly told?: Told;
};

/**
 * A text not taken. A question waits for the writer to choose a reading; `proposal` is the likeliest, where there is one.
 */
export type NotTaken = {
  readonly ok: false;
  readonly severity: "fault" | "question";
  readonly problem: string;
  readonly allowed: string;
  readonly remedy: string;
  readonly proposal?: string;
};

/** What a reader of quantities answers. Readers take a text and never throw. */
export type Reading<T> = Taken<T> | NotTaken;

/** Takes a value. */
export const take = <T>(value: T, approximate = false, told?: Told): Taken<T> => ({
  ok: true,
  value,
  approximate,
  ...(told === undefined ? {} : { told }),
});

/** Refuses a text. */
export const reject = (problem: string, allowed: string, remedy?: string): NotTaken => ({
  ok: false,
  severity: "fault",
  problem,
  allowed,
  remedy: remedy ?? `Write ${allowed}.`,
});

/** Asks for something that no reading of the text can supply. */
export const askFor = (problem: string, allowed: string, remedy: string): NotTaken => ({
  ...reject(problem, allowed, remedy),
  severity: "question",
});

/** Asks which of the proposals is meant; the first is the likeliest. `otherwise` adds a sentence to what to do. */
export function ask(
  problem: string,
  proposals: readonly string[],
  allowed: string,
  otherwise = "",
): NotTaken {
  const [proposal] = proposals;
  if (proposal === undefined) return askFor(problem, allowed, `Write ${allowed}.`);
  const written = proposals.map((each) => `\`${each}\``);
  const choice =
    written.length > 1
      ? `Write ${written.slice(0, -1).join(", ")} or ${written.at(-1) ?? ""}, whichever is meant.`
      : `Write ${written.join("")} if that is meant.`;
  const remedy = otherwise === "" ? choice : `${choice} ${otherwise}`;
  return { ok: false, severity: "question", problem, allowed, remedy, proposal };
}

/** Changes the value of a reading that was taken. */
export function mapReading<T, U>(reading: Reading<T>, change: (value: T) => U): Reading<U> {
  return reading.ok ? { ...reading, value: change(reading.value) } : reading;
}
