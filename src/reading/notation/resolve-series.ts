import { tell, type Faults } from "./notation-fault.ts";
import type { Entry, Series } from "./number-series.ts";
import type { Token } from "./token.ts";

/** For whom a text is read: the division's number among all divisions, in the order of slash values. */
export type ForDivision = { readonly index: number; readonly divisions: readonly string[] };

/**
 * The entries that hold for one division, one per round. Values between slashes belong to the divisions in order;
 * hyphens part rounds inside them (`95-115-135/65-75-85 lb`), or around them (`20/16-15/12-10/8`).
 * Undefined with a fault noted where the numbers of values and divisions differ.
 */
export function forDivision(series: Series, who: ForDivision, faults: Faults): readonly Entry[] | undefined {
  const count = who.divisions.length;
  const bySlash = grouped(series, "/");
  if (bySlash.length === 1) return series.entries;
  if (bySlash.length === count) return bySlash[who.index];
  const byRound = grouped(series, "-");
  if (byRound.length > 1 && byRound.every((group) => group.length === 1 || group.length === count)) {
    return byRound.map((group) => group[who.index] ?? group[0]).filter((entry) => entry !== undefined);
  }
  tellCount(bySlash.length, series.tokens, who, faults);
  return undefined;
}

/** Notes that slashes part more or fewer values than there are divisions. */
export function tellCount(values: number, tokens: readonly Token[], who: ForDivision, faults: Faults): void {
  const { divisions } = who;
  tell(faults, tokens, tokens, {
    problem:
      divisions.length === 1
        ? `${values} values for one division: a slash parts values by division`
        : `${values} values for ${divisions.length} divisions`,
    allowed:
      divisions.length === 1
        ? "one value"
        : `one value for all, or ${divisions.length} with slashes between, in the order ${divisions.join(", ")}`,
    remedy: looksLikeRounds(tokens)
      ? "Rounds are parted by hyphens, such as 21-15-9; a slash parts divisions."
      : "Give every division its value, name the divisions under `divisions:`, or use a word of `by division:`.",
  });
}

const looksLikeRounds = (tokens: readonly Token[]): boolean =>
  tokens.every((token) => token.kind === "number" || token.text === "/") && tokens.length > 4;

function grouped(series: Series, separator: "-" | "/"): readonly (readonly Entry[])[] {
  const groups: Entry[][] = [[]];
  for (const [index, entry] of series.entries.entries()) {
    if (index > 0 && series.separators[index - 1] === separator) groups.push([]);
    groups.at(-1)?.push(entry);
  }
  return groups;
}
