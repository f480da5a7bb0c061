import type { Reader } from "../components/reader.ts";
import * as words from "../components/words/show-word.ts";
import { sayDate, sayTimeOfDay } from "../wording/date.ts";
import { nearestName } from "../models/nearest.ts";

/** The message where the coach has written none of their own. */
export const USUAL_MESSAGE = `Hi <FirstName />, your brief for <Workout /> is ready.
Start: <Start />. Aim at <Target />.
<Link />
`;

/** A reader for whom there is a plan. */
type One = Reader & { readonly kind: "one" };
type Show = (reader: One, written: Readonly<Record<string, string>>, link: string) => string;

const shown =
  (show: (written: Readonly<Record<string, string>>, reader: Reader) => { readonly text: string }): Show =>
  (reader, written) =>
    show(written, reader).text;

/** Words of a message: those of a workout's text that show one value, and who, when and where. */
const WORDS: Readonly<Record<string, Show>> = {
  Name: ({ plan }) => plan.athlete.name,
  FirstName: ({ plan }) => plan.athlete.name.split(" ")[0] ?? "",
  Workout: ({ plan }) => plan.workout.title,
  Start: ({ plan: { start } }) =>
    start === undefined ? "not set yet" : `${sayDate(start.local)}, ${sayTimeOfDay(start.local)}`,
  Link: (_reader, _written, link) => link,
  Target: shown(words.showTarget),
  Split: shown(words.showSplit),
  Half: shown(words.showHalf),
  Sets: shown(words.showSets),
  FirstLift: shown(words.showFirstLift),
  Load: shown(words.showLoad),
};

const WORD = /<([A-Za-z]+)((?:\s+[a-z]+="[^"]*")*)\s*\/?>/g;

/**
 * What is wrong in a template of messages, each with its line: a word that does not exist. Words around other text, such as
 * those for some readers only, have no place in a message.
 */
export function checkMessage(template: string): readonly string[] {
  return template.split("\n").flatMap((line, index) =>
    [...line.matchAll(WORD)].flatMap(([, name = ""]) => {
      if (Object.hasOwn(WORDS, name)) return [];
      const nearest = nearestName(name, Object.keys(WORDS));
      const remedy =
        nearest === undefined ? `Write one of ${Object.keys(WORDS).join(", ")}.` : `Write <${nearest} />.`;
      return [`line ${index + 1}: there is no word <${name} /> for messages. ${remedy}`];
    }),
  );
}

/** The message to one athlete. The template was checked. */
export function writeMessage(template: string, reader: One, link: string): string {
  return template
    .replace(WORD, (whole, name: string, attributes: string) => {
      const written = Object.fromEntries(
        [...attributes.matchAll(/([a-z]+)="([^"]*)"/g)].map(
          ([, key = "", value = ""]) => [key, value] as const,
        ),
      );
      return Object.hasOwn(WORDS, name) ? (WORDS[name]?.(reader, written, link) ?? whole) : whole;
    })
    .trim();
}
