import type { Movement } from "../../models/movement.ts";
import { lengthUnit } from "../quantities/length.ts";
import { ask, reject, take, type Reading } from "../quantities/reading.ts";
import { sayNumber, writtenNumber } from "../quantities/written-number.ts";
import { inMetres } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import { wrongPace } from "./effort-pace.ts";
import type { EffortText } from "./effort-text.ts";

/** An amount of an effort, in the unit it is computed in and as it was written. */
export type Amount = { readonly amount: number; readonly unit: AmountUnit; readonly written: string };

/** What the facts before in the same line have settled. */
export type Last = { readonly movement: Movement; readonly unit: AmountUnit };

/** How an effort is written, for messages. */
export const EFFORT_FORM =
  "an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`";

/** The amount of an effort in a unit the movement is counted in; `2,000 m` is settled by the time, where it can be. */
export function amountOf(cut: EffortText, movement: Movement, last: Last | undefined): Reading<Amount> {
  const written = writtenNumber(cut.amount);
  if (written.kind === "none") return reject("this is not a number", EFFORT_FORM);
  if (written.kind === "one") return inUnit(written.value, cut, movement, last);
  const readings = [written.grouped, written.decimal].map((value) => ({
    value,
    amount: inUnit(value, cut, movement, last),
  }));
  const { time } = cut;
  const possible = readings.filter(
    ({ amount }) => amount.ok && (!time.ok || wrongPace(movement, amount.value, time.value) === undefined),
  );
  const [only, another] = possible;
  if (only?.amount.ok === true && !another) {
    const said = `${sayNumber(only.value)} ${cut.unit}`.trim();
    return take(only.amount.value, false, { problem: `read as ${said}`, readAs: said });
  }
  const proposals = readings.map(({ value }) => `${sayNumber(value)} ${cut.unit}`.trim());
  return ask("the sign in the number may group thousands or begin decimals", proposals, EFFORT_FORM);
}

function inUnit(value: number, cut: EffortText, movement: Movement, last: Last | undefined): Reading<Amount> {
  if (value <= 0) return reject("an amount is more than nothing", EFFORT_FORM);
  const written = `${sayNumber(value)} ${cut.unit}`.trim();
  const length = cut.unit === "" ? undefined : lengthUnit(cut.unit);
  if (length) {
    const metres = inMetres({ value: value * length[1], unit: length[0] });
    return counted(movement, { amount: metres, unit: "metres", written });
  }
  if (/^(?:k?cals?|calories?)$/i.test(cut.unit))
    return counted(movement, { amount: value, unit: "calories", written });
  if (cut.unit === "" && !movement.counts.includes("reps")) return withoutUnit(movement, value, last);
  return Number.isInteger(value)
    ? counted(movement, { amount: value, unit: "reps", written: String(value) })
    : reject("repetitions are whole", EFFORT_FORM);
}

/** A bare number of a machine or a run: metres where the same line has spoken of metres before, else a question. */
function withoutUnit(movement: Movement, value: number, last: Last | undefined): Reading<Amount> {
  const written = `${value} m`;
  if (last?.unit === "metres" && last.movement === movement) {
    return take({ amount: value, unit: "metres", written }, false, {
      problem: `read as ${written}`,
      readAs: written,
    });
  }
  const problem = `the unit is missing; a ${movement.name} is counted in ${movement.counts.join(" or ")}`;
  const units = movement.counts.flatMap((unit) =>
    unit === "metres" ? [written] : unit === "calories" ? [`${value} cal`] : [],
  );
  return ask(problem, units, EFFORT_FORM);
}

function counted(movement: Movement, amount: Amount): Reading<Amount> {
  if (movement.counts.includes(amount.unit)) return take(amount);
  const units = movement.counts.join(" or ");
  const problem = `a ${movement.name} is counted in ${units}, not in ${amount.unit}`;
  return reject(problem, EFFORT_FORM, `Write the amount in ${units}.`);
}
