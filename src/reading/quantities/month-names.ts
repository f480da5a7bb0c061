/** Months by the first letters of their names, in the languages of those who type dates. */
const MONTHS: readonly (readonly string[])[] = [
  ["jan", "ene", "gen", "янв", "sty"],
  ["feb", "fév", "fev", "фев", "lut"],
  ["mar", "mär", "mrt", "maa", "мар"],
  ["apr", "avr", "abr", "апр", "kwi"],
  ["may", "mai", "mei", "mag", "maj", "май"],
  ["jun", "juin", "giu", "июн", "cze"],
  ["jul", "juil", "lug", "июл", "lip"],
  ["aug", "août", "aout", "ago", "авг", "sie"],
  ["sep", "set", "сен", "wrz"],
  ["oct", "okt", "ott", "out", "окт", "paź"],
  ["nov", "ноя", "lis"],
  ["dec", "dez", "déc", "dic", "дек", "gru"],
];

/** The month, 1 to 12, of a name written out or cut short; nothing for other words. */
export function monthOf(word: string): number | undefined {
  const name = word.toLowerCase().replace(/\.$/, "");
  if (name.length < 3) return undefined;
  const index = MONTHS.findIndex((starts) => starts.some((start) => name.startsWith(start)));
  return index === -1 ? undefined : index + 1;
}

/** English names, for what is told. */
export const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
