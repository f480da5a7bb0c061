import fc from "fast-check";

/** Some work as it is written, with what it comes to, worked out here and not by the program. */
export type MadeWork = {
  /** Lines of YAML for a list of work, without indentation. */
  readonly lines: readonly string[];
  readonly reps: number;
  readonly visits: number;
};

const plainMovements = ["burpee", "pull-up", "air squat", "toes-to-bar", "double-under"];

const line = fc
  .record({
    amount: fc.integer({ min: 1, max: 60 }),
    movement: fc.constantFrom(...plainMovements),
    sides: fc.boolean(),
    tieBreak: fc.boolean(),
  })
  .map(({ amount, movement, sides, tieBreak }): MadeWork => {
    const clauses = [...(sides ? ["each side"] : []), ...(tieBreak ? ["tie-break"] : [])];
    return {
      lines: [`- ${[`${amount} ${movement}`, ...clauses].join(", ")}`],
      reps: sides ? 2 * amount : amount,
      visits: 1,
    };
  });

const indented = (work: MadeWork): readonly string[] => work.lines.map((text) => `    ${text}`);

const joined = (works: readonly MadeWork[]): MadeWork => ({
  lines: works.flatMap((work) => work.lines),
  reps: works.reduce((sum, work) => sum + work.reps, 0),
  visits: works.reduce((sum, work) => sum + work.visits, 0),
});

const rounds = (inside: fc.Arbitrary<MadeWork>): fc.Arbitrary<MadeWork> =>
  fc.tuple(fc.integer({ min: 1, max: 5 }), inside, fc.boolean()).map(([count, work, rest]) => ({
    lines: [`- ${count} rounds${rest ? ", rest 1:00 between" : ""}:`, ...indented(work)],
    reps: count * work.reps,
    visits: count * work.visits,
  }));

/** A ladder whose first line has no amount of its own. */
const ladder = (inside: fc.Arbitrary<MadeWork>): fc.Arbitrary<MadeWork> =>
  fc
    .tuple(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 2, maxLength: 5 }), inside)
    .map(([numbers, work]) => ({
      lines: [`- ${numbers.join("-")}:`, "    - burpee", ...indented(work)],
      reps: numbers.reduce((sum, number) => sum + number, 0) + numbers.length * work.reps,
      visits: numbers.length * (1 + work.visits),
    }));

const listOf = (entry: fc.Arbitrary<MadeWork>): fc.Arbitrary<MadeWork> =>
  fc.array(entry, { minLength: 1, maxLength: 3 }).map(joined);

/** More than this in a part the check refuses. */
const MOST_REPS = 10_000;

/** Lists of lines, rounds and ladders, nested up to three deep, with no more reps than a part may hold. */
export const arbitraryWork: fc.Arbitrary<MadeWork> = listOf(
  fc.oneof(
    line,
    rounds(listOf(fc.oneof(line, rounds(listOf(line)), ladder(listOf(line))))),
    ladder(listOf(fc.oneof(line, rounds(listOf(line))))),
  ),
).filter(({ reps }) => reps <= MOST_REPS);
