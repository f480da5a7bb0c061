import type { Reader } from "../components/reader.ts";
import * as words from "../components/words/show-word.ts";
import { sayDate, sayTimeOfDay } from "../wording/date.ts";
import { ownEntry } from "../models/own-entry.ts";
import { messageWords } from "./message-words.ts";

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
export const MESSAGE_WORDS: Readonly<Record<string, Show>> = {
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

/** The message to one athlete. The template was checked. */
export function writeMessage(template: string, reader: One, link: string): string {
  let message = "";
  let from = 0;
  for (const { whole, offset, name, written } of messageWords(template)) {
    const show = ownEntry(MESSAGE_WORDS, name);
    if (!show) continue;
    message += template.slice(from, offset) + show(reader, written, link);
    from = offset + whole.length;
  }
  return `${message}${template.slice(from)}`.trim();
}
