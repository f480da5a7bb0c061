import { plainText } from "../quantities/plain-text.ts";
import { readMass } from "../quantities/mass.ts";
import { readTime } from "../quantities/time.ts";
import { writtenNumber } from "../quantities/written-number.ts";
import type { MassUnit } from "../../models/quantity.ts";

/** A score as published, understood as far as its own text goes. */
export type ScoreText = {
  readonly scaled: boolean;
  readonly score:
    | { readonly kind: "time"; readonly seconds: number }
    | { readonly kind: "reps" | "calories" | "metres"; readonly amount: number }
    | { readonly kind: "load"; readonly value: number; readonly unit: MassUnit }
    /** At the cap; `is` where the text says whether the number is done or left. */
    | { readonly kind: "cap-plus"; readonly number: number; readonly is?: "left" }
    /** `decimal` where the sign in the number may begin decimals instead of grouping thousands. */
    | { readonly kind: "bare"; readonly number: number; readonly decimal?: number }
    /** Rounds done and reps of the next one. */
    | { readonly kind: "rounds"; readonly rounds: number; readonly reps: number }
    /** Stopped by the cap; how much was done is not said. */
    | { readonly kind: "cap-alone" }
    | { readonly kind: "no-result" }
    | { readonly kind: "unreadable" };
};

/** An `s` behind a bare number are seconds; behind a hyphen, a bracket, a unit or a time it says scaled. */
const SCALED =
  /(?:(?:\s*[-(,]\s*|\s+)(?:sc|scaled|foundations?)|\s*[-(,]\s*s|(?<=reps?|cals?|kgs?|lbs?|:\d\d(?:\.\d+)?)\s+s)\)?\.?$/i;
const PRESCRIBED = /(?:\s*[-(,]\s*|\s+)(?:rx'?d?|prescribed)\)?$/i;
/** The time of a tie-break told beside the score. */
const TIE_BREAK = /(?:\s*[-,/]?\s*\(?(?:tb|tie-?break)\W*|\s*\()\d{1,2}:\d\d(?:[.,]\d+)?\)?$/i;
const NO_RESULT =
  /^(?:|0|-+|n\/?a|dn[fsc]|ds?q|wd|w\/d|withdrawn|cut|absent|no (?:score|result|rep)|not done|none|\?)$/i;
const CAP_ALONE = /^(?:cap|capped|tc|time ?cap(?:ped)?)$/i;
const CAP_PLUS = /^(?:cap|tc|c|time ?cap|\d{1,2}:\d\d(?::\d\d)?)\s*\+\s*(\d+)(?:\s*reps?)?$/i;
const REPS_LEFT = /^(\d+)\s*(?:reps?\s*)?(?:short|left|missing)$/i;
const ROUNDS =
  /^(\d{1,3})(?:\s*(?:rounds?|rds?|r)\s*(?:[+,&]|and)?\s*(?:(\d{1,4})\s*(?:reps?)?)?|\s*\+\s*(\d{1,4})\s*(?:reps?)?)$/i;

/** Reads `11:47`, `186 reps`, `28 reps short`, `171 reps scaled`, `CAP+28`, `12:00+28`, `5+12`, `185 lb`, `0`. */
export function readScoreText(text: string): ScoreText {
  const plain = plainText(text);
  const scaled = SCALED.test(plain);
  const core = plain.replace(SCALED, "").replace(PRESCRIBED, "").replace(TIE_BREAK, "").trim();
  return { scaled, score: scoreOf(core) };
}

function scoreOf(core: string): ScoreText["score"] {
  if (NO_RESULT.test(core)) return { kind: "no-result" };
  if (CAP_ALONE.test(core)) return { kind: "cap-alone" };
  const rounds = ROUNDS.exec(core);
  if (rounds) return { kind: "rounds", rounds: Number(rounds[1]), reps: Number(rounds[2] ?? rounds[3] ?? 0) };
  const capPlus = CAP_PLUS.exec(core);
  if (capPlus) return { kind: "cap-plus", number: Number(capPlus[1]) };
  const short = REPS_LEFT.exec(core);
  if (short) return { kind: "cap-plus", number: Number(short[1]), is: "left" };
  const amount = /^([\d.,' ]+?)\s*(reps?|cals?|calories|m|metres|meters)$/i.exec(core);
  if (amount) {
    const number = writtenNumber(amount[1] ?? "");
    if (number.kind === "none") return { kind: "unreadable" };
    const word = (amount[2] ?? "").toLowerCase();
    const kind = word.startsWith("r") ? "reps" : word.startsWith("c") ? "calories" : "metres";
    return { kind, amount: number.kind === "one" ? number.value : number.grouped };
  }
  if (/(?:kgs?|lbs?|#|pounds?)\.?$/i.test(core)) {
    const mass = readMass(core);
    return mass.ok ? { kind: "load", ...mass.value } : { kind: "unreadable" };
  }
  const number = writtenNumber(core);
  if (number.kind === "either" && number.grouped > 0)
    return { kind: "bare", number: number.grouped, decimal: number.decimal };
  if (number.kind === "one" && number.value >= 0) {
    return number.value === 0 ? { kind: "no-result" } : { kind: "bare", number: number.value };
  }
  const time = /[:a-z'"]/i.test(core) ? readTime(core) : undefined;
  return time?.ok === true ? { kind: "time", seconds: time.value } : { kind: "unreadable" };
}
