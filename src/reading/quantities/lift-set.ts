import type { Mass, MassUnit } from "../../models/quantity.ts";
import { takeDoubtOff } from "./doubt.ts";
import { bothUnits, sayMass, readMass, type MassContext } from "./mass.ts";
import { plainText } from "./plain-text.ts";
import { takeRemarkOff } from "./remark.ts";
import { ask, askFor, reject, take, type Reading, type Told } from "./reading.ts";
import { sayNumber } from "./written-number.ts";
import { undoConversion } from "./undo-conversion.ts";

/** A set with a load: how many reps, and how many more would have gone. */
export type LiftSet = {
  readonly reps: number;
  readonly load: Mass;
  /** The load hangs on the body, on top of its own mass. */
  readonly added: boolean;
  readonly inReserve: number;
};

const ALLOWED = "a load such as `110 kg`, or reps x load such as `3 x 100 kg`";
/** Effort on the usual scale to 10, where 10 leaves no rep. */
const FULL_EFFORT = 10;
const MOST_REPS_OF_A_SET = 100;

const LABEL =
  /^(?:e?(\d+)\s*RM|PR|PB|best|max|heavy single|single)\s*[:=]?\s+|\s+(?:\(?(\d+)\s*RM\)?|PR|PB|single)$/gi;
const EFFORT =
  /\s*[,(]?\s*(?:@\s*(?:RPE\s*)?(\d(?:[.,]5)?|1\d)(?!\s*(?:kg|lb|%|#|\d))|RPE\s*(\d+(?:[.,]5)?)|RIR\s*(\d+)|(\d+)\s*(?:RIR|in reserve|left|in the tank))\)?$/i;

/** What stands between reps and load; a hyphen would be a range. */
const BY = String.raw`\s*(?:[x×*]|reps?\s*(?:x|at|@|with|of)?|at|@|of|for)\s*`;
const SETS =
  /^(\d+)\s*[x×*]\s*(\d+)(?:\s*[x×*]\s*|\s*@\s*|\s+(?:at|of|with|reps at)\s+|\s+)(?=[~+]?\d|BW|body)(.+)$/i;
const SETS_BEHIND = /^(\S.*?)\s*(?:,|:|x|×)?\s+(\d+)\s*[x×*]\s*(\d+)$/i;
const SETS_LISTED = /^(.+?)\s*[:x]\s*(\d+(?:\s*[,/]\s*\d+)+)$/i;
const REPS_FIRST = new RegExp(`^(\\d+)${BY}(.+)$`, "i");
const LOAD_FIRST = /^(.+?)\s*(?:[x×*]|for|,)\s*(\d+)\s*(?:reps?)?$/i;
const LOAD_FIRST_SPACED = /^(.*\D)\s+(\d+)\s*reps?$/i;

/**
 * Reads a lift: `110 kg`, reps x load (`3 x 100 kg`, `100 kg x 3`, `5RM 85 kg`, `150 kg x 5 @8`), a load on top of body
 * mass (`BW+20 kg`). The unit marks the load; two numbers without one are asked about, since both orders are in use. Of
 * several sets the best one counts and this is told. A share of a best is refused. `reps` is what the heading says.
 */
export function readLiftSet(
  text: string,
  context: MassContext & { readonly reps?: number | undefined } = {},
): Reading<LiftSet> {
  const labelled = takeRemarkOff(plainText(text))
    .replace(/\bkilos?\b/gi, "kg")
    .replace(/\b(?:a )?(double|triple)\b/gi, (word) => (/double/i.test(word) ? "2" : "3"));
  let reps = context.reps ?? 1;
  let core = labelled
    .replace(LABEL, (_all, before?: string, after?: string) => {
      reps = Number(before ?? after ?? reps);
      return " ";
    })
    .trim();
  const estimated = /^e\d*RM/i.test(labelled);
  const effort = EFFORT.exec(core);
  core = core.replace(EFFORT, "").trim();
  const inReserve = reserveOf(effort);
  if (inReserve === undefined) return reject("effort goes from 1 to 10", "an effort such as `@8`");
  if (/%/.test(core))
    return reject(
      "a share of a best is a plan, not a result",
      ALLOWED,
      "Write the load that was lifted, or leave the line out.",
    );
  if (
    /\b(?:[x×*]\s*)?(?:BW|body ?weight|body ?mass)\s*$/i.test(core) &&
    /\d/.test(core.replace(/^\d+\s*(?:x|reps?)\s*/i, ""))
  ) {
    return askFor("a multiple of body mass is no load", ALLOWED, "Write the load itself, with kg or lb.");
  }
  return readForm(core, { reps, inReserve, estimated, context });
}

type Form = {
  readonly reps: number;
  readonly inReserve: number;
  readonly estimated: boolean;
  readonly context: MassContext;
};

function readForm(core: string, form: Form): Reading<LiftSet> {
  const several = readSeveral(core, form);
  if (several) return several;
  const repsFirst = REPS_FIRST.exec(core);
  const loadFirst = LOAD_FIRST.exec(core) ?? LOAD_FIRST_SPACED.exec(core);
  const saysReps = /^(.+?)\s*[x×*]\s*(\d+)\s*reps?$/i.exec(core);
  if (saysReps && form.context.unit !== undefined)
    return readOne(saysReps[1] ?? "", Number(saysReps[2]), form);
  if (repsFirst && !startsWithUnit(repsFirst[2] ?? "")) {
    const [, count = "", load = ""] = repsFirst;
    if (!hasUnit(load) && !hasUnit(core)) return askForOrder(count, load, form);
    if (hasUnit(load)) return readOne(load, Number(count), form);
  }
  if (loadFirst && hasUnit(loadFirst[1] ?? ""))
    return readOne(loadFirst[1] ?? "", Number(loadFirst[2]), form);
  return readLoose(core, form) ?? readOne(core, form.reps, form);
}

/** Two numbers whose parts nobody can tell. */
function readLoose(core: string, form: Form): Reading<LiftSet> | undefined {
  const two = /^([\d.,]+)\s*[x×*]\s*(\d+)$/i.exec(core);
  if (two) return askForOrder(two[2] ?? "", two[1] ?? "", form);
  const behind = /^(.+(?:kgs?|lbs?|#))\s+(\d+)$/i.exec(core);
  if (behind)
    return ask("the second number may be reps or sets", [`${behind[2] ?? ""} x ${behind[1] ?? ""}`], ALLOWED);
  if (!/[()]/.test(core) || hasUnit(core.replace(/\)$/, ""))) return undefined;
  const outside = core.replace(/\s*\([^()]*\)?\s*|\s*[:;=]-?[()DP]$/g, " ").trim();
  const bare = readOne(outside, form.reps, form);
  const problem = "words in brackets are not understood here";
  const remedy = "Leave them out, or write a date or a number of reps there.";
  return bare.ok ? ask(problem, [sayLiftSet(bare.value)], ALLOWED, remedy) : reject(problem, ALLOWED, remedy);
}

/** Several sets at one load: the one with most reps counts. */
function readSeveral(core: string, form: Form): Reading<LiftSet> | undefined {
  const sets = SETS.exec(core);
  const behind = SETS_BEHIND.exec(core);
  const listed = SETS_LISTED.exec(core);
  const found =
    sets !== null && hasLoad(sets[3] ?? "")
      ? { load: sets[3] ?? "", reps: Number(sets[2]) }
      : listed !== null
        ? { load: listed[1] ?? "", reps: Math.max(...(listed[2] ?? "").split(/[,/]/).map(Number)) }
        : behind !== null
          ? { load: behind[1] ?? "", reps: Number(behind[3]) }
          : undefined;
  if (!found) return undefined;
  const one = readOne(found.load, found.reps, form);
  if (!one.ok) return one;
  const problem = `of several sets the best one counts; read as ${sayLiftSet(one.value)}`;
  return { ...one, told: { problem, readAs: sayLiftSet(one.value) } };
}

function readOne(load: string, reps: number, form: Form): Reading<LiftSet> {
  if (reps < 1 || reps > MOST_REPS_OF_A_SET)
    return reject(`a set has 1 to ${MOST_REPS_OF_A_SET} reps`, ALLOWED);
  const added = /^(?:BW|body ?weight|body ?mass)?\s*\+\s*(.+)$/i.exec(load);
  const { inReserve } = form;
  if (/^(?:BW|body ?weight|body ?mass)$/i.test(load)) {
    return take({ reps, load: { value: 0, unit: form.context.unit ?? "kg" }, added: true, inReserve });
  }
  if (/^(?:BW|body ?weight|body ?mass)\s*-/i.test(load)) {
    return reject(
      "help that takes body mass away is no load",
      ALLOWED,
      "Leave the line out, and name the movement under `cannot`.",
    );
  }
  const mass = readMass(added?.[1] ?? load, form.context);
  if (!mass.ok) return prefixed(mass, added !== null ? "BW+" : "", reps);
  const original = form.context.unit === undefined || hasUnit(load) ? undoConversion(mass.value) : undefined;
  const set: LiftSet = { reps, load: original?.mass ?? mass.value, added: added !== null, inReserve };
  const told: Told | undefined = original && { problem: original.told.problem, readAs: sayLiftSet(set) };
  return take(set, mass.approximate || form.estimated, told);
}

/** A question about the load, with the proposals put back among what stood around it. */
function prefixed<T>(
  reading: Reading<T> & { readonly ok: false },
  before: string,
  reps: number,
): Reading<LiftSet> {
  const start = `${reps === 1 ? "" : `${reps} x `}${before}`;
  const remedy = reading.remedy.replace(/`(~?[\d.]+ (?:kg|lb|g))`/g, `\`${start}$1\``);
  return reading.proposal === undefined
    ? { ...reading, allowed: ALLOWED }
    : { ...reading, remedy, allowed: ALLOWED, proposal: `${start}${reading.proposal}` };
}

function askForOrder(one: string, other: string, form: Form): Reading<LiftSet> {
  const load = takeDoubtOff(other).core;
  const { unit } = form.context;
  const units: readonly MassUnit[] = unit === undefined ? bothUnits(form.context) : [unit];
  const likelyReps = Number(one) <= Number(load.replace(",", ".")) ? [one, load] : [load, one];
  return ask(
    "without a unit this can be reps x load, load x reps or sets x reps",
    units.map((each) => `${likelyReps[0] ?? ""} x ${likelyReps[1] ?? ""} ${each}`),
    ALLOWED,
  );
}

const hasUnit = (text: string): boolean =>
  /(?:kg|kgs|lbs?|pounds?|#|\dk|st)\.?\s*\??\)?$/i.test(text.trim()) || /^(?:BW|body)/i.test(text.trim());
const hasLoad = (text: string): boolean => /\d/.test(text) || hasUnit(text);
const startsWithUnit = (text: string): boolean => /^(?:kg|lb|#)/i.test(text);

function reserveOf(effort: RegExpExecArray | null): number | undefined {
  if (!effort) return 0;
  const left = effort[3] ?? effort[4];
  if (left !== undefined) return Number(left);
  const level = Number((effort[1] ?? effort[2] ?? "").replace(",", "."));
  return level >= 1 && level <= FULL_EFFORT ? FULL_EFFORT - level : undefined;
}

/** A set as it is best written. @example 3 reps at 100 kg with 2 left: "3 x 100 kg @8" */
export function sayLiftSet(set: LiftSet): string {
  const load = set.added ? (set.load.value === 0 ? "BW" : `BW+${sayMass(set.load)}`) : sayMass(set.load);
  const effort = set.inReserve === 0 ? "" : ` @${sayNumber(FULL_EFFORT - set.inReserve)}`;
  return `${set.reps === 1 ? "" : `${set.reps} x `}${load}${effort}`;
}
