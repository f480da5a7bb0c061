import { nearestName } from "../../models/nearest.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import type { ReadPart } from "./read-part.ts";
import type { TextSource } from "./token.ts";

/** Scores that are counts of something done, which can be added to one another. */
const COUNTS: readonly ScoreKind[] = [
  "reps",
  "rounds-and-reps",
  "calories",
  "metres",
  "lowest-interval",
  "highest-interval",
  "sum-of-lowest",
];
const LOADS: readonly ScoreKind[] = ["load", "sum-of-loads"];

/** Reads which parts are added to one score: `a + b`. */
export function readTotal(
  source: TextSource | undefined,
  parts: readonly ReadPart[],
  names: readonly string[],
  faults: Faults,
): readonly string[] | undefined {
  if (source === undefined) return undefined;
  const written = source.text.split("+").map((name) => name.trim());
  const found = written.map((name) => names.find((part) => part.toLowerCase() === name.toLowerCase()));
  const unknown = written[found.indexOf(undefined)];
  const weight = written.find((name) => /^\d+(?:[.,]\d+)?\s*[x×*]|[x×*]\s*\d+(?:[.,]\d+)?$/i.test(name));
  if (weight !== undefined) {
    tellText(faults, source, {
      problem: `"${weight}" gives one part more weight, and a total here adds every score once`,
      allowed: `\`${names.join(" + ")}\``,
      remedy:
        "Leave `total:` out, so that each part is planned for its own score, and say the weights under `standards:`.",
    });
    return undefined;
  }
  if (unknown !== undefined) {
    tellText(faults, source, {
      problem: `no part is called "${unknown}"`,
      allowed: names.join(", "),
      nearest: nearestName(unknown, names),
      remedy: `Write the names of parts with + between, for example \`${names.join(" + ")}\`.`,
    });
    return undefined;
  }
  const total = found.filter((name) => name !== undefined);
  const kinds = total.map((name) => groupOf(parts.find((part) => part.name === name)?.score.kind));
  if (total.length < 2 || new Set(total).size < total.length) {
    tellText(faults, source, {
      problem: "a total needs two parts or more, each once",
      remedy: "Leave `total:` out where every part has a score of its own.",
    });
  } else if (parts.length === names.length && new Set(kinds).size > 1) {
    tellText(faults, source, {
      problem: `these scores are of different kinds (${kinds.join(", ")}), and their sum would plan for nothing real`,
      remedy: "Leave `total:` out, so that each part is planned for its own score.",
    });
  }
  return total;
}

function groupOf(kind: ScoreKind | undefined): string {
  if (kind === undefined) return "";
  if (COUNTS.includes(kind)) return "reps";
  return LOADS.includes(kind) ? "loads" : kind;
}
