import { takeDoubtOff } from "../quantities/doubt.ts";
import { readDate, type DateOrder } from "../quantities/date.ts";
import { BIRTH_YEAR, within } from "../quantities/plausible.ts";
import { ask, askFor, reject, take, type Reading } from "../quantities/reading.ts";

const ALLOWED = "a year of birth such as `1991`";
const CENTURIES = [1900, 2000] as const;
/** Years that two digits may stand for; before them an age is likelier (judgement). */
const SHORT_YEARS = [1945, 2018] as const;

/** Reads a year of birth: `1991`, or a whole date of birth. An age is no year, since it is only true for a year. */
export function readBirthYear(text: string, order?: DateOrder): Reading<number> {
  const plain = takeDoubtOff(text).core;
  const short = /^'?(\d\d)$/.exec(plain);
  if (short) {
    const years = CENTURIES.map((century) => century + Number(short[1])).filter((year) =>
      within(year, SHORT_YEARS),
    );
    return ask("this may be a year without its century, or an age", years.map(String), ALLOWED);
  }
  if (/years?|y\/?o\b|^age/i.test(plain))
    return askFor("an age is only true for a year", ALLOWED, `Write ${ALLOWED}.`);
  const written = /^(\d{1,2}[-/.]\d{1,2}[-/.])'?(\d\d)$/.exec(plain);
  if (written) {
    // In a whole date the two digits are a year for certain; of which century nobody alive leaves open but the very young and old.
    const years = CENTURIES.map((century) => century + Number(written[2])).filter((year) =>
      within(year, SHORT_YEARS),
    );
    const [only] = years;
    return only !== undefined && years.length === 1
      ? readBirthYear(`${written[1] ?? ""}${only}`, order)
      : ask("the year has no century", years.map(String), ALLOWED);
  }
  const numbers = /^\d{1,2}[-/.]\d{1,2}[-/.](\d{4})$/.exec(plain);
  if (numbers) {
    const day = readDate(plain, order);
    return day.ok || day.severity === "question"
      ? readBirthYear(numbers[1] ?? "", order)
      : ask(day.problem, [numbers[1] ?? ""], ALLOWED);
  }
  const date = /^\d{4}$/.test(plain) ? undefined : readDate(plain, order);
  if (date?.ok === false) return reject("this is not a year", ALLOWED);
  const year = date ? Number(date.value.slice(0, 4)) : Number(plain);
  if (!within(year, BIRTH_YEAR.possible)) return reject(`nobody who trains was born in ${year}`, ALLOWED);
  return take(year);
}
