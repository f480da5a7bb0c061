import type { Fault } from "../../models/fault.ts";
import { takeDoubtOff } from "../quantities/doubt.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { faultAt } from "./open-csv.ts";
import type { Base, ReadScore, RowKind, ScoreReading } from "./score-reading.ts";
import type { ScoreText } from "./score-text.ts";
import { whyNoLoad } from "./sort-scores.ts";

/** The value of a row, on the side of the cap its text and its column say. */
export function readValue(
  text: string,
  score: ScoreText["score"],
  kind: RowKind,
  base: Base,
  reading: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  switch (score.kind) {
    case "time":
      return { ...base, side: "finished", kind: "time", value: score.seconds };
    case "reps":
      if (reading.hasTimes || kind === "capped" || kind === "time")
        return { ...base, side: "capped", value: score.amount };
      return { ...base, side: "finished", kind: "reps", value: score.amount };
    case "calories":
    case "metres":
      return { ...base, side: "finished", kind: score.kind, value: score.amount };
    case "load":
      return loadOf(score.value, score.unit, base, true);
    case "bare":
      return bareValue(
        kind === "load" ? (score.decimal ?? score.number) : score.number,
        text,
        kind,
        base,
        reading,
      );
    case "no-result":
      return kind === "load"
        ? { ...base, side: "left-out", reason: "not given" }
        : { ...base, side: "left-out", reason: "not done" };
    default:
      return { ...base, side: "left-out", reason: "could not be read" };
  }
}

function bareValue(
  value: number,
  text: string,
  kind: RowKind,
  base: Base,
  { file, measure, remarks }: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  switch (kind) {
    case "time":
      if (remarks.cap !== undefined && value > remarks.cap)
        return { ...base, side: "left-out", reason: "later than the cap" };
      return { ...base, side: "finished", kind: "time", value };
    case "capped":
      return { ...base, side: "capped", value };
    case "text": {
      const problem = "this number does not say what it counts";
      const remedy = `Write \`${takeDoubtOff(text).core} reps\`, or a time such as \`11:47\`, or name the column by its unit.`;
      return { fault: faultAt(file, base.line, text, problem, { remedy, severity: "question" }) };
    }
    case "load": {
      const unit =
        measure.kind === "load"
          ? measure.unit
          : remarks.unit?.kind === "load"
            ? remarks.unit.unit
            : undefined;
      if (unit !== undefined) return loadOf(value, unit, base, false);
      const remedy = "Call the column `load kg` or `load lb`, or put the unit behind each number.";
      return {
        fault: faultAt(file, base.line, text, "the unit of this load is missing", {
          remedy,
          severity: "question",
          allowed: "kg or lb",
        }),
      };
    }
    default:
      return { ...base, side: "finished", kind, value };
  }
}

function loadOf(value: number, unit: MassUnit, base: Base, stated: boolean): ReadScore {
  const reason = whyNoLoad(value, unit, base.group);
  if (reason !== undefined) return { ...base, side: "left-out", reason };
  return { ...base, side: "finished", kind: "load", value, ...(stated ? { unit } : {}) };
}

/** Rounds and reps are reps once the file says how many a round has. */
export function inRounds(
  { rounds, reps }: { readonly rounds: number; readonly reps: number },
  base: Base,
  text: string,
  { file, remarks: { repsPerRound } }: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  if (repsPerRound !== undefined)
    return { ...base, side: "finished", kind: "reps", value: rounds * repsPerRound + reps };
  const problem = "rounds and reps cannot be compared without the number of reps in a round";
  const remedy =
    "Write a line `# reps per round: 30`, with your number, above the header, or the reps in all.";
  return { fault: faultAt(file, base.line, text, problem, { remedy, severity: "question" }) };
}

/** Whether a number at the cap is done or left turns the ranking around, so the score or the file must say it. */
export function atTheCap(
  { number, is }: { readonly number: number; readonly is?: "left" },
  base: Base,
  text: string,
  { file, remarks }: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  const { totalReps } = remarks;
  const capPlus = is ?? remarks.capPlus;
  if (capPlus === "done") return { ...base, side: "capped", value: number };
  if (capPlus === "left" && totalReps !== undefined && totalReps >= number) {
    return { ...base, side: "capped", value: totalReps - number };
  }
  const problem =
    capPlus === "left"
      ? "without the number of all reps, reps left cannot be told from reps done"
      : "the number behind the cap can be reps left or reps done, and the two turn the ranking around";
  const remedy =
    capPlus === "left"
      ? "Write a line `# total reps: 225`, with your number, above the header."
      : "Write a line `# CAP+: reps left` or `# CAP+: reps done` above the header, whichever is meant; one answer settles the file.";
  return { fault: faultAt(file, base.line, text, problem, { remedy, severity: "question" }) };
}
