import { inKilograms, type Kilograms, type MassUnit } from "../../models/quantity.ts";
import { takeDoubtOff } from "./doubt.ts";
import { readMass, sayMass } from "./mass.ts";
import { plainText } from "./plain-text.ts";
import { BODY_MASS, isPlaceholder, within } from "./plausible.ts";
import { takeRemarkOff } from "./remark.ts";
import { ask, mapReading, reject, type Reading } from "./reading.ts";

const ALLOWED = "a body mass such as `63 kg` or `139 lb`";

/**
 * Reads the body mass of a person, in kilograms. An unusual one is asked about with the readings that are usual: the
 * other unit, a decimal sign lost. What no reading makes a body mass is refused. `checked` behind it keeps it.
 */
export function readBodyMass(text: string): Reading<Kilograms> {
  const { checked } = takeDoubtOff(text);
  const mass = readMass(takeRemarkOff(plainText(text)), { plausible: (kg) => within(kg, BODY_MASS.usual) });
  if (!mass.ok) return { ...mass, allowed: ALLOWED };
  const { value, unit } = mass.value;
  const kg = inKilograms(mass.value);
  if (within(kg, BODY_MASS.usual) || (checked && within(kg, BODY_MASS.possible)))
    return mapReading(mass, () => kg);
  const proposals = readings(value, unit);
  const said = sayMass(mass.value);
  if (within(kg, BODY_MASS.possible)) {
    return ask(`${said} is unusual for an adult`, [...proposals, `${said} checked`], ALLOWED);
  }
  const problem = `nobody weighs ${said}`;
  return proposals.length > 0 && !isPlaceholder(value)
    ? ask(problem, proposals, ALLOWED)
    : reject(problem, ALLOWED);
}

function readings(value: number, unit: MassUnit): readonly string[] {
  const other: MassUnit = unit === "kg" ? "lb" : "kg";
  const candidates = [
    { value, unit: other },
    { value: value / 10, unit },
    { value: value / 100, unit },
  ];
  // A lost decimal sign leaves at least three digits behind.
  const likely = candidates.filter((mass) => mass.value === value || value >= 400);
  return likely.filter((mass) => within(inKilograms(mass), BODY_MASS.usual)).map(sayMass);
}
