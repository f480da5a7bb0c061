/**
 * The text a coach writes below the entries of a workout, as a tree. It is made from the parsed text and drawn piece by
 * piece; at no moment is there a program in it that could run.
 */
export type CoachText = readonly TextNode[];

/** Words as they are shown, or an element with more inside. */
export type TextNode = string | TextElement;

/** An element of HTML where the name is in small letters; a word with the reader's own numbers where it has a capital. */
export type TextElement = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | boolean>>;
  readonly children: CoachText;
};
