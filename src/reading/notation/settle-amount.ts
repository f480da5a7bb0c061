import type { Movement } from "../../models/movement.ts";
import { inMetres, seconds, type Length } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Amount, ByRound, EffortAmount } from "../../models/workout.ts";
import { amountUnitOf, type WrittenAmount } from "./amount.ts";
import { tell } from "./notation-fault.ts";
import { secondsOf, type Entry } from "./number-series.ts";
import type { LineSetting, Reading } from "./reading.ts";
import { byRound } from "./rounds.ts";
import type { Token } from "./token.ts";
import type { Unit } from "./unit.ts";

/** The amount of a line for its movements, checked against what they are counted in. Undefined with a fault noted. */
export function settleAmount(
  written: WrittenAmount,
  movements: readonly Movement[],
  setting: LineSetting,
  reading: Reading,
  around: readonly Token[],
): EffortAmount | undefined {
  switch (written.kind) {
    case "values":
      return settleValues(written, movements, setting, reading);
    case "max": {
      const unit = unitFor(written.unit, written.tokens, movements, reading, around);
      return unit && { kind: "max", unit };
    }
    case "unit":
    case "none": {
      const given = written.kind === "unit" ? written.unit : undefined;
      if (!setting.inLadder && !setting.bareIsMax && !(setting.lifting && given === undefined)) {
        tell(reading.faults, written.tokens, around, {
          problem: "how much is to be done is not said",
          allowed:
            "`10 burpee`, `400 m run`, `20 cal row`, `max burpee`; in a block such as `21-15-9:` the block says it",
          remedy: "Write the amount before the movement.",
        });
        return undefined;
      }
      if (setting.lifting && !setting.inLadder) return one("reps");
      const unit = unitFor(given, written.tokens, movements, reading, around);
      return unit && { kind: setting.inLadder ? "ladder" : "max", unit };
    }
  }
}

const one = (unit: AmountUnit): EffortAmount => ({
  kind: "counted",
  amount: { kind: "same", value: { value: 1, unit } },
});

function settleValues(
  written: WrittenAmount & { readonly kind: "values" },
  movements: readonly Movement[],
  setting: LineSetting,
  reading: Reading,
): EffortAmount | undefined {
  const { values } = written;
  const [first] = values.entries;
  if (first === undefined) return undefined;
  const isTime = first.isClock || first.unit?.kind === "time";
  if (isTime && !movements.every(isHeld)) {
    return settleMaxFor(first.counted, written, movements, reading);
  }
  const amounts: Amount[] = [];
  for (const entry of [...values.entries, ...(values.step ? [values.step.entry] : [])]) {
    const amount = amountOf(entry, first.unit, movements, reading);
    if (amount === undefined) return undefined;
    amounts.push(amount);
  }
  const settled: ByRound<Amount> | undefined = byRound(amounts, values, setting, reading, (step) => ({
    ...step,
    value: step.value * (values.step?.sign ?? 1),
  }));
  return settled && { kind: "counted", amount: settled };
}

/** A hold is counted in seconds before anything else; on other movements a time is one to fill. */
const isHeld = (movement: Movement): boolean => movement.counts[0] === "seconds";

/** The unit `max` is counted in: the one given, or the only one the movement has. */
function unitFor(
  given: AmountUnit | undefined,
  tokens: readonly Token[],
  movements: readonly Movement[],
  reading: Reading,
  around: readonly Token[],
): AmountUnit | undefined {
  const possible = openUnitsOf(movements);
  if (given !== undefined) {
    if (possible.includes(given)) return given;
    tellUnit(tokens, given, movements, reading, around);
    return undefined;
  }
  if (possible.includes("reps")) return "reps";
  if (possible.length === 1) return possible[0];
  tell(reading.faults, tokens, around, {
    problem: `${movements[0]?.name ?? "it"} can be counted in ${possible.join(" or ")}, and which is not said`,
    allowed: possible.join(", "),
    remedy: `Write the unit before the movement, for example \`max ${possible[0] ?? "calories"} ${movements[0]?.name ?? "row"}\`.`,
  });
  return undefined;
}

function settleMaxFor(
  counted: AmountUnit | undefined,
  written: WrittenAmount & { readonly kind: "values" },
  movements: readonly Movement[],
  reading: Reading,
): EffortAmount | undefined {
  const { values, tokens } = written;
  const unit = unitFor(counted, tokens, movements, reading, tokens);
  const [only] = values.entries;
  if (unit === undefined || only === undefined) return undefined;
  if (values.entries.length > 1 || values.step !== undefined) {
    tell(reading.faults, tokens, tokens, {
      problem: "a time to fill must be the same in every round",
      allowed: "`max burpee in 1:00`",
      remedy: "Write the rounds out, each with its own time.",
    });
    return undefined;
  }
  return { kind: "max-for", time: seconds(secondsOf(only)), unit };
}

/** As unitsOf, without the time somebody is merely under way. */
const openUnitsOf = (movements: readonly Movement[]): readonly AmountUnit[] =>
  unitsOf(movements).filter((unit) => unit !== "seconds" || movements.every(isHeld));

const unitsOf = (movements: readonly Movement[]): readonly AmountUnit[] =>
  (movements[0]?.counts ?? []).filter((unit) =>
    movements.every((movement) => movement.counts.includes(unit)),
  );

function amountOf(
  entry: Entry,
  fallback: Unit | undefined,
  movements: readonly Movement[],
  reading: Reading,
): Amount | undefined {
  const unit = entry.unit ?? fallback;
  const counted: AmountUnit | undefined = entry.isClock ? "seconds" : unit ? amountUnitOf(unit) : "reps";
  const possible = unitsOf(movements);
  if (counted === undefined || !possible.includes(counted)) {
    tellUnit(
      entry.tokens,
      unit === undefined && !entry.isClock ? undefined : (counted ?? "other"),
      movements,
      reading,
    );
    return undefined;
  }
  if (entry.value <= 0 || (counted === "reps" && !Number.isInteger(entry.value))) {
    tell(reading.faults, entry.tokens, entry.tokens, {
      problem: counted === "reps" ? "reps come in whole numbers from 1" : "an amount must be over 0",
      remedy: "Correct the number.",
    });
    return undefined;
  }
  if (counted === "seconds") return { value: secondsOf(entry), unit: "seconds" };
  if (unit?.kind !== "length") return { value: entry.value, unit: counted };
  const written: Length = { value: entry.value * unit.times, unit: unit.unit };
  const value = inMetres(written);
  return { value, unit: "metres", ...(written.unit === "m" ? {} : { written }) };
}

const UNIT_EXAMPLES: Readonly<Record<AmountUnit, string>> = {
  reps: "10",
  calories: "20 cal",
  metres: "400 m",
  seconds: "30 s",
};

function tellUnit(
  tokens: readonly Token[],
  found: AmountUnit | "other" | undefined,
  movements: readonly Movement[],
  reading: Reading,
  around: readonly Token[] = tokens,
): void {
  const name = movements.map((movement) => movement.name).join(" or ");
  if (found === "other" && movements.some((movement) => movement.loading !== undefined)) {
    tell(reading.faults, tokens, around, {
      problem: `a load before ${name} is no amount of it`,
      allowed: `\`10 ${movements[0]?.name ?? ""} at 43 kg\``,
      remedy: `Write the load behind the movement: \`${movements[0]?.name ?? ""} at ...\`.`,
      atUse: true,
    });
    return;
  }
  const examples = openUnitsOf(movements)
    .map((unit) => `\`${UNIT_EXAMPLES[unit]} ${movements[0]?.name ?? ""}\``)
    .join(", ");
  tell(reading.faults, tokens, around, {
    problem:
      found === undefined
        ? `a number alone does not say in what ${name} is counted`
        : `${name} is not counted in ${found === "other" ? "this unit" : found}`,
    allowed: openUnitsOf(movements).join(", "),
    remedy: `Write ${examples}.`,
    atUse: true,
  });
}
