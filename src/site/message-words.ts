/** A word of a message as it is written: where it stands, its name and its attributes. */
export type MessageWord = {
  readonly whole: string;
  /** Where it begins in the template. */
  readonly offset: number;
  readonly name: string;
  readonly written: Readonly<Record<string, string>>;
  /** What stands behind the name and is no `name="value"`; empty where all is well. */
  readonly rest: string;
  /** Whether it ends with its end sign on the same line. */
  readonly closed: boolean;
};

/** A word, with quotes as keyboards make them; a line ends it where its end sign was forgotten. */
const WORD = /<([A-Za-z]+)(?![\w@.:])([^<>\n]*)>?/g;
const ATTRIBUTE = /([a-z]+)\s*=\s*(?:"([^"]*)"|'([^']*)'|[“”„]([^“”„]*)[“”])/g;

/** The words in a template of messages, in order. An address such as `<ana@example.org>` is none. */
export const messageWords = (template: string): readonly MessageWord[] =>
  [...template.matchAll(WORD)].map((match) => {
    const [whole, name = "", behind = ""] = match;
    const closed = whole.endsWith(">");
    const attributes = closed ? behind.replace(/\/\s*$/, "") : "";
    const pairs = [...attributes.matchAll(ATTRIBUTE)].map(
      ([, key = "", ...values]) => [key, values.find(Boolean) ?? ""] as const,
    );
    const rest = attributes.replaceAll(ATTRIBUTE, "").trim();
    return {
      whole: closed ? whole : `<${name}`,
      offset: match.index,
      name,
      written: Object.fromEntries(pairs),
      rest,
      closed,
    };
  });
