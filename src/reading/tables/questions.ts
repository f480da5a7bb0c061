/** A question about a table. Its text says everything, so that an answer belongs to it as long as the cell stays as it is. */
export type Question = {
  /** For whom it is: a name, or nothing where it is about the whole table. */
  readonly who?: string;
  readonly text: string;
  /** The cell it is about, `crew.xlsx!D17`. */
  readonly cell: string;
  readonly proposals: readonly string[];
};

const ARROW = "=>";
export type Answers = ReadonlyMap<string, string>;

/** The whole of a question as a line to send. */
export const sayQuestion = ({ who, text }: Question): string =>
  who === undefined ? text : `${who}: ${text}`;

/** The list of questions to be answered behind the arrows; answered ones stay below, so that nobody is asked twice. */
export function writeQuestions(questions: readonly Question[], answers: Answers, command: string): string {
  const open = questions.filter((question) => !answers.has(sayQuestion(question)));
  const of = (whole: boolean) => open.filter(({ who }) => (who === undefined) === whole);
  const line = (question: Question): string => `${sayQuestion(question)} [${question.cell}] ${ARROW} `;
  const people = [...new Set(of(false).map(({ who = "" }) => who))];
  return [
    "# Questions about your table. Each line can be sent as it is.",
    `# Write what is right behind the ${ARROW} of a line: one of the readings, another value, or ? for not known.`,
    `# Then run it again: ${command}`,
    ...(open.length === 0 ? ["", "# Nothing is open."] : []),
    ...(of(true).length > 0 ? ["", "# For you, about the whole table", ...of(true).map(line)] : []),
    ...people.flatMap((who) => [
      "",
      `# ${who}`,
      ...of(false)
        .filter((one) => one.who === who)
        .map(line),
    ]),
    ...(answers.size > 0
      ? ["", "# Answered", ...[...answers].map(([text, answer]) => `${text} [answered] ${ARROW} ${answer}`)]
      : []),
    "",
  ].join("\n");
}

/** Reads the answers back: whatever stands behind an arrow, by the text of the question. */
export function readAnswers(text: string): Answers {
  const answers = new Map<string, string>();
  for (const line of text.split(/\r\n|\n|\r/)) {
    const [, question, answer = ""] = /^(.*) \[[^\]]*\] =>\s*(.*)$/.exec(line) ?? [];
    if (question !== undefined && !line.startsWith("#") && answer.trim() !== "")
      answers.set(question, answer.trim());
  }
  return answers;
}

const UNIT_ALONE = /^(?:kgs?|kilos?|lbs?|pounds?|cm|m|in|ft|s|sec|seconds?|min|minutes?)$/i;

/**
 * What a cell says after an answer: `yes` stands for the first reading, a unit for the reading in it, anything else for
 * itself. Nothing for `?`.
 */
export function answered(raw: string, answer: string, proposals: readonly string[]): string {
  const [first] = proposals;
  if (/^(?:yes|y|ja|oui|si|sí|ok|right|correct)$/i.test(answer) && first !== undefined) return first;
  if (/^(?:\?|unknown|not known|don't know)$/i.test(answer)) return "";
  if (!UNIT_ALONE.test(answer)) return answer;
  const unit = answer.toLowerCase().replace(/s$/, "");
  return proposals.find((one) => one.toLowerCase().endsWith(` ${unit}`)) ?? `${raw} ${answer}`;
}

/** `a`, `b` or `c`. */
export function sayChoice(proposals: readonly string[]): string {
  if (proposals.length < 2) return proposals[0] ?? "";
  return `${proposals.slice(0, -1).join(", ")} or ${proposals.at(-1) ?? ""}`;
}
