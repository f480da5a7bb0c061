/** Feet and inches in plain signs: `5'7"`, `5' 7.5`, `5ft7`, `5 ft 7 in`, `5 foot 7 inches`, `6 ft`, `6'`. */
const FEET_AND_INCHES =
  /^(\d+)\s*(?:'|ft\.?|foot|feet|f)\s*(?:,|and)?\s*(?:(\d+(?:[.,]\d+)?|\d+ \d\/\d+)\s*(?:"|in\.?|inch|inches|ins)?)?$/i;

/** Reads feet with inches behind them; nothing where the text has another form. Inches may have a fraction. */
export function feetAndInches(core: string): { readonly feet: number; readonly inches: number } | undefined {
  const match = FEET_AND_INCHES.exec(core);
  if (!match) return undefined;
  const [whole = "0", fraction] = (match[2] ?? "0").split(" ");
  const [above = "0", below = "1"] = (fraction ?? "0").split("/");
  return { feet: Number(match[1]), inches: Number(whole.replace(",", ".")) + Number(above) / Number(below) };
}

export const INCHES_PER_FOOT = 12;

/** Feet and inches as people write them. @example sayFeet(67) // => "5'7\"" */
export const sayFeet = (inches: number): string =>
  `${Math.floor(inches / INCHES_PER_FOOT)}'${inches % INCHES_PER_FOOT}"`;
