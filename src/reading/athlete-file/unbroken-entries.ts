import * as z from "zod";
import type { UnbrokenBest } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { answerWord } from "../quantities/answer-word.ts";
import { readCount } from "../quantities/count.ts";
import { takeDateOff } from "../quantities/date-behind.ts";
import { CHECKED } from "../quantities/doubt.ts";
import { readLength } from "../quantities/length.ts";
import { plainText } from "../quantities/plain-text.ts";
import { readMass } from "../quantities/mass.ts";
import { ask, reject, take, type Reading } from "../quantities/reading.ts";
import { readTime } from "../quantities/time.ts";
import { UNBROKEN_OVER_ELITE } from "../quantities/plausible.ts";
import { inMetres, type Mass } from "../../models/quantity.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { tellReading } from "../fields/take-reading.ts";
import type { AthleteContext } from "./context.ts";
import { resolveMovement } from "./resolve-movement.ts";

export const writtenUnbroken = z
  .record(z.string(), z.union([z.string(), z.null()]))
  .describe(
    "best sets without a break by movement: `pull-up: 22`, with a load `thruster: 21 at 43 kg`; `?` for not known, `none` for cannot",
  );

type UnbrokenEntries = {
  readonly unbroken: readonly UnbrokenBest[];
  readonly cannot: readonly string[];
};

/** Reads the best sets; none and not known are kept apart. */
export function readUnbroken(
  written: z.output<typeof writtenUnbroken>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): UnbrokenEntries {
  const unbroken: UnbrokenBest[] = [];
  const cannot: string[] = [];
  const seen = new Map<string, string>();
  for (const [name, given] of Object.entries(written)) {
    const text = given === null ? null : plainText(given);
    const movement = resolveMovement(ctx, context.findMovement, name, { path: [name], at: "name" })?.movement;
    const earlier = movement && seen.get(movement.id);
    if (movement) seen.set(movement.id, name);
    if (earlier !== undefined) {
      const problem = `this movement stands here twice, also as "${earlier}"`;
      tellRefusal(ctx, { path: [name], at: "name", problem, remedy: "Keep the better of the two lines." });
    }
    const word = text === null ? "unknown" : withHelp(text) ? "unclear" : answerWord(text);
    if (word === "cannot" && movement) cannot.push(movement.id);
    if (word === "unclear") {
      tellRefusal(ctx, {
        path: [name],
        severity: "question",
        problem: "this can mean not known or cannot, and those are different plans",
        allowed: "a whole number, `?` for not known, `none` for cannot",
        remedy: "Write `?` or `none`, whichever is meant, or the number.",
      });
    }
    if (word !== undefined || text === null) continue;
    const { amount, done } = inItsStyle(
      takeDateOff(text.replace(CHECKED, ""), context.dates).core,
      movement,
      context,
    );
    const set = plausibleSet(readSet(amount, done?.counts ?? []), text, done);
    const judged = withItsLoad(set, done);
    tellReading(ctx, judged, { path: [name] });
    if (judged.ok && done) unbroken.push({ movement: done.id, ...judged.value });
  }
  return { unbroken, cannot };
}

/** Done with a band or another's help, which says nothing of the movement itself. */
const withHelp = (text: string): boolean => /\b(?:band(?:ed|s)?|assist\w*|negatives?|jumping)\b/i.test(text);

/**
 * A word for the way a set was done: `12 (kipping)` is the movement itself where that is one of its styles, `12 strict` the
 * strict movement where the library has one.
 */
function inItsStyle(
  text: string,
  movement: Movement | undefined,
  { findMovement }: AthleteContext,
): { readonly amount: string; readonly done: Movement | undefined } {
  const [, amount, word = ""] = /^(\D*\d+\s*(?:reps?)?)[\s,]*\(?\s*(\p{L}+)\s*\)?$/iu.exec(text) ?? [];
  if (amount === undefined || movement === undefined) return { amount: text, done: movement };
  if (/^strict$/i.test(word)) {
    const strict = findMovement(`strict ${movement.name}`);
    if (strict.kind === "found") return { amount, done: strict.movement };
  }
  const styles = movement.choices.flatMap(({ options }) =>
    options.flatMap(({ name }) => name.toLowerCase().split(" ")),
  );
  const isStyle = styles.includes(word.toLowerCase().replace(/^kipping$/, "kip"));
  return isStyle ? { amount, done: movement } : { amount: text, done: movement };
}

/** A load on a movement done without one is refused. */
function withItsLoad(set: Reading<Set>, done: Movement | undefined): Reading<Set> {
  if (!set.ok || done === undefined) return set;
  if (set.value.load !== undefined && done.loading === undefined)
    return reject(`no load is lifted in a ${done.name}`, "a whole number such as `22`");
  return set;
}

/** Where the best do fewer, a few more are no wonder. */
const LEAST_BEST = 10;

/** Asks about a set longer than the best do, and refuses one that nobody does; `checked` behind it keeps what is rare. */
function plausibleSet(set: Reading<Set>, text: string, movement: Movement | undefined): Reading<Set> {
  const known = movement?.pace.unbroken.elite;
  const best = known === undefined ? undefined : Math.max(known, LEAST_BEST);
  if (!set.ok || best === undefined || set.value.load !== undefined || !movement?.counts.includes("reps"))
    return set;
  const { reps } = set.value;
  const most = Math.round(best * UNBROKEN_OVER_ELITE.usual);
  if (reps <= most) return set;
  const allowed = `a whole number up to ${most}`;
  if (reps > best * UNBROKEN_OVER_ELITE.possible) {
    return reject(`nobody has done ${reps} without a break`, allowed);
  }
  return CHECKED.test(text)
    ? set
    : ask(`${reps} without a break is more than the best do`, [`${text.trim()} checked`], allowed);
}

type Set = { readonly reps: number; readonly load?: Mass };

/** A set in reps; of a way also in metres, of a hold in seconds. */
function readSet(text: string, counts: Movement["counts"]): Reading<Set> {
  const [, amount = text, loadText] = /^(.+?)\s*(?:\bat\b|@|\bwith\b)\s*(.+)$/i.exec(text) ?? [];
  const count = readCount(amount);
  const length = !count.ok && counts.includes("metres") ? readLength(amount) : undefined;
  const held = !count.ok && counts.includes("seconds") ? readTime(amount) : undefined;
  const reps =
    length?.ok === true ? take(inMetres(length.value)) : held?.ok === true ? take<number>(held.value) : count;
  if (loadText === undefined || !reps.ok)
    return reps.ok ? { ...reps, value: { reps: reps.value } } : withLoads(reps);
  const load = readMass(loadText);
  return load.ok ? take({ reps: reps.value, load: load.value }) : load;
}

const withLoads = <T>(reading: Reading<T> & { readonly ok: false }): Reading<Set> =>
  reading.severity === "question"
    ? reading
    : reject(
        reading.problem,
        "a whole number such as `22`, with a load `21 at 43 kg`, `?` for not known, `none` for cannot",
      );
