import * as z from "zod";
import type { LiftResult } from "../../models/athlete.ts";
import type { FoundMovement } from "../names/find-movement.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import { answerWord } from "../quantities/answer-word.ts";
import { takeDateOff } from "../quantities/date-behind.ts";
import { readTestDay } from "../quantities/date.ts";
import { takeDoubtOff } from "../quantities/doubt.ts";
import { type LiftEffort, sayLiftEffort, takeEffortOff } from "../quantities/effort-behind.ts";
import { readLiftSet, sayLiftSet, type LiftSet } from "../quantities/lift-set.ts";
import { sayMass } from "../quantities/mass.ts";
import { heaviestLift, LIGHTEST_BARBELL, LIGHTEST_LOAD } from "../quantities/plausible.ts";
import { ask, askFor, reject, type Reading } from "../quantities/reading.ts";
import { slips } from "../quantities/slip.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { tellReading } from "../fields/take-reading.ts";
import { wordField } from "../fields/word-field.ts";
import type { AthleteContext } from "./context.ts";
import { resolveMovement } from "./resolve-movement.ts";

const liftObject = z.strictObject({
  best: z.string().optional().describe("the load, or reps x load, such as `110 kg` or `3 x 100 kg`"),
  load: z.string().optional().describe("the same as `best`; one of the two"),
  tested: z.string().nullable().optional().describe("the day of the test, such as `2026-10-03`"),
  effort: wordField(["true-max", "easy"] as const, { max: "true-max", "all out": "true-max" })
    .optional()
    .describe("`true max` where it was the most there was, `easy` where more would have gone"),
});
const liftEntry = z.union([z.string(), z.null(), liftObject]);

/** Lifts by movement as written: one result, or a list of them. */
export const writtenLifts = z
  .record(z.string(), z.union([liftEntry, z.array(liftEntry)]))
  .describe(
    "best lifts by movement: `back squat: 110 kg`, reps x load `3 x 100 kg`, on top of body mass `BW+20 kg`, with a day `{best: 82.5 kg, tested: 2026-10-03}`, with what you saw `110 kg true max` or `110 kg easy`; `?` for not known, `none` for cannot",
  );

type LiftEntries = { readonly lifts: readonly LiftResult[]; readonly cannot: readonly string[] };

/** Reads all lifts; faults are told at their own entries. */
export function readLifts(
  written: z.output<typeof writtenLifts>,
  ctx: z.RefinementCtx,
  context: AthleteContext,
): LiftEntries {
  const lifts: LiftResult[] = [];
  const cannot: string[] = [];
  const seen = new Map<string, string>();
  for (const [name, entry] of Object.entries(written)) {
    const found = resolveMovement(ctx, context.findLift, name, { path: [name], at: "name" });
    const { movement } = found ?? {};
    const earlier = movement && seen.get(movement.id);
    if (movement && earlier !== undefined) {
      tellRefusal(ctx, {
        path: [name],
        at: "name",
        problem: `this movement stands here twice, also as "${earlier}"`,
        remedy: "Keep one name, and put its results in a list: `[110 kg, 3 x 100 kg]`.",
      });
    }
    if (movement) seen.set(movement.id, name);
    const results = Array.isArray(entry) ? entry : [entry];
    for (const [index, result] of results.entries()) {
      const path = Array.isArray(entry) ? [name, index] : [name];
      const read = readEntry(result, path, ctx, context, found);
      if (read === "cannot" && movement) cannot.push(movement.id);
      if (read !== undefined && read !== "cannot") lifts.push(read);
    }
  }
  return { lifts, cannot };
}

function readEntry(
  entry: z.output<typeof liftEntry>,
  path: readonly PropertyKey[],
  ctx: z.RefinementCtx,
  context: AthleteContext,
  found: (FoundMovement & { readonly kind: "found" }) | undefined,
): LiftResult | "cannot" | undefined {
  if (entry === null) return undefined;
  const key = typeof entry === "string" ? undefined : entry.best === undefined ? "load" : "best";
  const text = typeof entry === "string" ? entry : (entry.best ?? entry.load);
  const textPath = key === undefined ? path : [...path, key];
  if (
    typeof entry !== "string" &&
    (text === undefined || (entry.best !== undefined && entry.load !== undefined))
  ) {
    tellRefusal(ctx, {
      path,
      problem: text === undefined ? "the load is missing" : "`best` and `load` say the same thing twice",
      allowed: "`{best: 82.5 kg, tested: 2026-10-03}`",
      remedy: text === undefined ? "Add `best: ...`." : "Keep one of the two.",
    });
    return undefined;
  }
  if (text === undefined) return undefined;
  const word = answerWord(text);
  if (word === "unknown") return undefined;
  if (word === "cannot") return "cannot";
  if (word === "unclear") {
    tellRefusal(ctx, { path: textPath, ...UNCLEAR });
    return undefined;
  }
  const { core, effort, date: written } = takeApart(text, context);
  const set = readLiftSet(core, {
    ...found?.label,
    plausible: isLift(found?.movement),
    likely: context.units,
  });
  const said = (typeof entry === "string" ? undefined : entry.effort) ?? effort;
  const judged = judgeEffort(judge(set, core, found?.movement), said);
  const date = typeof entry === "string" ? written : dateOf(entry.tested, context);
  const datePath = typeof entry === "string" ? path : [...path, "tested"];
  tellReading(ctx, typeof entry === "string" ? withDate(judged, date) : judged, { path: textPath });
  // A date taken from the same text is told with it.
  if (date && (typeof entry !== "string" || !date.ok)) tellReading(ctx, date, { path: datePath });
  if (!judged.ok || !found) return undefined;
  const { load, reps, added, inReserve } = judged.value;
  return {
    movement: found.movement.id,
    load,
    reps,
    ...(added ? { added: true as const } : {}),
    inReserve,
    ...(date?.ok === true ? { date: date.value } : {}),
    approximate: judged.approximate,
    ...(said === undefined ? {} : { effort: said }),
  };
}

const UNCLEAR = {
  severity: "question",
  problem: "this can mean not known or cannot, and those are different plans",
  allowed: "a load, `?` for not known, `none` for cannot",
  remedy: "Write `?` or `none`, whichever is meant, or the load.",
} as const;

/** A result without its date and what is said of it, in whichever order they stand behind the load. */
function takeApart(
  text: string,
  context: AthleteContext,
): ReturnType<typeof takeDateOff> & ReturnType<typeof takeEffortOff> {
  const last = takeEffortOff(text);
  const behind = takeDateOff(last.core, context.dates);
  return last.effort === undefined
    ? { ...behind, ...takeEffortOff(behind.core) }
    : { ...behind, ...last, core: behind.core };
}

/** Of reps it is said how many were left; a single was all there was, or easy. */
function judgeEffort(set: Reading<LiftSet>, effort: LiftEffort | undefined): Reading<LiftSet> {
  if (!set.ok || effort === undefined) return set;
  const { reps, inReserve } = set.value;
  if (effort === "easy" && (reps > 1 || inReserve > 0)) {
    const left = { ...set.value, inReserve: inReserve > 0 ? inReserve : LEFT_WHEN_EASY };
    return ask(
      "how many more reps would have gone?",
      [sayLiftSet(left)],
      "reps x load with the effort behind it, such as `3 x 100 kg @8`",
    );
  }
  if (effort === "true-max" && inReserve > 0)
    return ask(
      "a true max leaves no rep",
      [sayLiftSet(set.value), `${sayLiftSet({ ...set.value, inReserve: 0 })} ${sayLiftEffort(effort)}`],
      "`true max` or the effort such as `@8`, not both",
    );
  return set;
}

/** Reps proposed as left of a set that was easy: effort 7 of 10. */
const LEFT_WHEN_EASY = 3;

/** In one text, how the date was read is told together with how the load was. */
function withDate(set: Reading<LiftSet>, date: Reading<string> | undefined): Reading<LiftSet> {
  if (!set.ok || date?.ok !== true || (!set.told && !date.told)) return set;
  const problem = [set.told?.problem, date.told?.problem].filter((part) => part !== undefined).join("; ");
  const approximately = set.approximate ? "~" : "";
  return { ...set, told: { problem, readAs: `${approximately}${sayLiftSet(set.value)} (${date.value})` } };
}

function dateOf(tested: string | null | undefined, context: AthleteContext): Reading<string> | undefined {
  if (tested === undefined || tested === null || answerWord(tested) === "unknown") return undefined;
  return readTestDay(tested, context.dates);
}

const LIFT_FORM = "a load such as `110 kg`, or reps x load such as `3 x 100 kg`";

const isLift =
  (movement: Movement | undefined) =>
  (kg: number): boolean =>
    kg <= heaviestLift(movement?.name ?? "") && kg >= lightest(movement);

/** A lift that was checked may be so much heavier than the heaviest known. Judgement. */
const RECORDS_FALL = 1.1;

const lightest = (movement: Movement | undefined): number =>
  movement?.kind === "barbell" ? LIGHTEST_BARBELL : LIGHTEST_LOAD;

/** Asks about or refuses a load nobody lifts in this movement, and a load for a movement without one. */
function judge(set: Reading<LiftSet>, text: string, movement: Movement | undefined): Reading<LiftSet> {
  if (!set.ok || !movement) return set;
  const { load, added, reps } = set.value;
  const allowed = "a load with kg or lb that somebody can have lifted";
  if (!movement.loading && !added) {
    const problem = `no load is lifted in a ${movement.name}`;
    const adds = `${reps === 1 ? "" : `${reps} x `}BW+${sayMass(load)}`;
    return ask(problem, [adds], "a load on top of body mass such as `BW+20 kg`");
  }
  if (movement.loading?.held === "bar" && added) {
    return askFor(
      "on a bar the whole load counts, whatever the body weighs",
      LIFT_FORM,
      "Write the load itself, with kg or lb.",
    );
  }
  if (movement.loading?.held === "pair" && reps === 2 && !added && /^2\s*[x×*]/i.test(text)) {
    const problem = "this can be two reps or two pieces";
    return ask(
      problem,
      [`2 reps at ${sayMass(load)}`, sayMass(load)],
      "the load of one piece, with reps in front if more than one",
    );
  }
  const plausible = isLift(movement);
  if (added || plausible(inKilograms(load))) return set;
  const isRare = inKilograms(load) <= heaviestLift(movement.name) * RECORDS_FALL;
  if (isRare && takeDoubtOff(text).checked) return set;
  const light = inKilograms(load) < lightest(movement);
  const problem = light
    ? `${sayMass(load)} is lighter than any bar`
    : `${sayMass(load)} is more than anybody has lifted in a ${movement.name}`;
  const proposals = light
    ? []
    : meant(load, plausible).map((mass) => sayLiftSet({ ...set.value, load: mass }));
  return proposals.length > 0
    ? ask(problem, proposals, allowed)
    : reject(problem, allowed, "Write the load that was lifted, or `?` if it is not known.");
}

function meant(load: Mass, plausible: (kg: number) => boolean): readonly Mass[] {
  const otherUnit: Mass = { value: load.value, unit: "lb" };
  const candidates = [
    ...(load.unit === "kg" && slips(load.value).length > 0 ? [otherUnit] : []),
    ...slips(load.value).map((value) => ({ value, unit: load.unit })),
  ];
  return candidates.filter((mass) => plausible(inKilograms(mass)));
}
