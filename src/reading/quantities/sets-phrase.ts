import { reject, take, type Reading } from "./reading.ts";

/** Sets as a coach writes them: sizes in order, one alone to be repeated; in one round where it is named. */
type SetsPhrase = { readonly sizes: readonly number[]; readonly round?: number };

const ALLOWED = "sizes in order such as `5-5-5`, or one for all such as `5`; `7-7 in round 2` for one round";
const PHRASE = /^(?:sets of\s+)?(\d{1,3}(?:\s*[-–+/]\s*\d{1,3})*)s?(?:\s+in\s+round\s+(\d{1,3}))?$/i;

/** Reads `5-5-5`, `5`, `sets of 5`, `7-7 in round 2`. @example readSetsPhrase("6-4 in round 2") // => { ok: true, value: { sizes: [6, 4], round: 2 }, approximate: false } */
export function readSetsPhrase(text: string): Reading<SetsPhrase> {
  const [, written, round] = PHRASE.exec(text.trim()) ?? [];
  if (written === undefined) return reject("these are no sets", ALLOWED);
  const sizes = written.split(/\s*[-–+/]\s*/).map(Number);
  if (sizes.some((size) => size === 0) || round === "0")
    return reject("there is no set of nothing, and rounds count from 1", ALLOWED);
  return take({ sizes, ...(round === undefined ? {} : { round: Number(round) }) });
}
