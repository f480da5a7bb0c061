import type { Checked, Fault } from "../../models/fault.ts";
import { nearestName } from "../../models/nearest.ts";
import { readTime } from "../quantities/time.ts";
import type { SourceFile } from "../files/source-file.ts";
import { measureOf, type Measure } from "./measure-of.ts";
import { faultAt, type CsvRemark } from "./open-csv.ts";

/** What lines `# name: value` above the header say of the whole table. */
export type Remarks = {
  readonly unit?: Measure;
  readonly cap?: number;
  /** What the number behind `CAP+` is. */
  readonly capPlus?: "left" | "done";
  readonly totalReps?: number;
  readonly repsPerRound?: number;
  readonly division?: string;
};

const NAMES = ["unit", "cap", "cap+", "total reps", "reps per round", "division"] as const;

/** Reads the remarks that mean something; a remark without a colon is only for people. */
export function readRemarks(file: SourceFile, written: ReadonlyMap<string, CsvRemark>): Checked<Remarks> {
  const faults: Fault[] = [];
  let remarks: Remarks = {};
  for (const [name, { value, line }] of written) {
    if (value === "") continue;
    const read = readRemark(name, value);
    if (read === undefined) {
      const nearest = nearestName(name, NAMES);
      // Sentences with a colon in them are for people as well.
      if (nearest === undefined && name.includes(" ")) continue;
      const remedy = "Correct the remark, or leave the colon out if it is only for people.";
      const more = { allowed: ALLOWED, ...(nearest === undefined || nearest === name ? {} : { nearest }) };
      faults.push(
        faultAt(file, line, `${name}: ${value}`, "this remark cannot be read", { remedy, ...more }),
      );
    } else remarks = { ...remarks, ...read };
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: remarks, notices: [] };
}

const ALLOWED =
  "`# unit: kg`, `# cap: 20:00`, `# CAP+: reps left`, `# CAP+: reps done`, `# total reps: 225`, `# reps per round: 30`, `# division: women`";

function readRemark(name: string, value: string): Remarks | undefined {
  switch (name.replace(/\s*\+$/, "+")) {
    case "unit": {
      const unit = measureOf(value.toLowerCase());
      return unit && { unit };
    }
    case "cap": {
      const cap = readTime(value);
      return cap.ok ? { cap: cap.value } : undefined;
    }
    case "cap+":
      return /left|missing|remaining/i.test(value)
        ? { capPlus: "left" }
        : /done|completed/i.test(value)
          ? { capPlus: "done" }
          : undefined;
    case "total reps":
      return /^\d+$/.test(value) ? { totalReps: Number(value) } : undefined;
    case "reps per round":
      return /^[1-9]\d*$/.test(value) ? { repsPerRound: Number(value) } : undefined;
    case "division":
      return { division: value };
    default:
      return undefined;
  }
}
