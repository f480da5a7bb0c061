import { nearestName } from "../../models/nearest.ts";
import type { Score } from "../../models/workout.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import type { TextSource } from "./token.ts";
import { ownEntry } from "../../models/own-entry.ts";

const score = (kind: Score["kind"], of?: Score["of"], restCounts = true): Score => ({
  kind,
  ...(of === undefined ? {} : { of }),
  restCounts,
});

/** Every way a score is written, the ways the manual teaches first. */
const SCORES: Readonly<Record<string, Score>> = {
  time: score("time"),
  "time without rest": score("time", undefined, false),
  reps: score("reps"),
  "rounds and reps": score("rounds-and-reps"),
  load: score("load"),
  "sum of loads": score("sum-of-loads"),
  "load x reps": score("load-times-reps"),
  calories: score("calories"),
  metres: score("metres"),
  "lowest interval": score("lowest-interval"),
  "highest interval": score("highest-interval"),
  "sum of lowest": score("sum-of-lowest"),
  "slowest interval": score("slowest-interval", "time"),
  "fastest interval": score("highest-interval", "time"),
  "intervals completed": score("intervals-completed"),
};

const ALSO: Readonly<Record<string, string>> = {
  "total time": "time",
  "time with rest": "time",
  "time of work": "time without rest",
  "working time": "time without rest",
  "time without the rest": "time without rest",
  "sum of intervals": "time without rest",
  "total reps": "reps",
  "rounds + reps": "rounds and reps",
  rounds: "rounds and reps",
  "rounds plus reps": "rounds and reps",
  "heaviest load": "load",
  "heaviest lift": "load",
  "max load": "load",
  weight: "load",
  "total load": "sum of loads",
  "total of loads": "sum of loads",
  "reps x load": "load x reps",
  "load times reps": "load x reps",
  "total calories": "calories",
  cals: "calories",
  "total metres": "metres",
  "total meters": "metres",
  meters: "metres",
  distance: "metres",
  "lowest round": "lowest interval",
  "fewest reps": "lowest interval",
  "highest round": "highest interval",
  "best interval": "highest interval",
  "best round": "highest interval",
  "slowest round": "slowest interval",
  "fastest round": "fastest interval",
  "rounds completed": "intervals completed",
  "intervals done": "intervals completed",
  "minutes completed": "intervals completed",
};

const OF_SOME_LINES = {
  problem: "which lines count for the score is said on the lines",
  allowed: "`score: reps`, with `, counts 0` behind every line that does not count",
  remedy: "Write `score: reps`, and `, counts 0` behind the lines that do not count.",
};

/** Reads what is scored. A fault lists what can be; undefined then. */
export function readScore(source: TextSource, faults: Faults): Score | undefined {
  const words = source.text.trim().toLowerCase().replace(/\s+/g, " ").replace(/×/g, "x");
  const plain = ownEntry(ALSO, words) ?? words;
  const found = ownEntry(SCORES, plain);
  if (found !== undefined) return found;
  if (/^(total |max )?(reps|calories|metres|meters) (of|on|in|at)\b|^max reps\b/.test(words)) {
    tellText(faults, source, OF_SOME_LINES);
    return undefined;
  }
  const names = Object.keys(SCORES);
  const nearest = nearestName(words, names);
  tellText(faults, source, {
    problem: "this is not a score that can be planned for",
    allowed: names.join(", "),
    nearest,
    remedy:
      nearest === undefined
        ? "Write one of these; if the event adds penalties or points, plan for the score before them."
        : `Write \`score: ${nearest}\`, or another of these.`,
  });
  return undefined;
}
