/** Words a calm coach does not use: promises, diagnoses, orders to push through, shouting. */
const FORBIDDEN: readonly RegExp[] = [
  /\bguarantee/i,
  /\b(?:will|you'll) (?:win|succeed|beat|improve|prevent|protect|heal|cure|fix)\b/i,
  /\bprevents?\b/i,
  /\balways works?\b/i,
  /\bnever fails?\b/i,
  /\brisk[- ]free\b/i,
  /\b(?:completely|perfectly|absolutely) safe\b/i,
  /\bcures?\b|\bheals?\b|\btreats? (?:your|the) (?:injury|pain)\b/i,
  /\bdiagnos/i,
  /\byou (?:have|suffer from|are suffering from) (?:a |an )?(?:tear|tendinitis|strain|sprain|rhabdo|injury|heart attack|stroke|heat ?stroke|infection)/i,
  /\b(?:tendinitis|tendinopathy|impingement|bursitis|torn)\b/i,
  /\bno pain,? no gain\b/i,
  /(?<!instead of )\bpush(?:ing)? through\b/i,
  /\bignore (?:the |your )?pain\b/i,
  /\bcrush|\bdestroy|\bsmash|\bbeast\b/i,
  /\bmust\b/i,
  /!/,
];

/** The forbidden words found in a text. */
export const forbiddenWordsIn = (text: string): readonly string[] =>
  FORBIDDEN.flatMap((pattern) => pattern.exec(text)?.[0] ?? []);

const MOST_CHARACTERS = 290;
const MOST_WORDS_OF_A_SENTENCE = 32;

/** What keeps a text from being read aloud well. */
export function unclearIn(text: string): readonly string[] {
  const sentences = text.split(/(?<=[.?])\s+/);
  return [
    ...(text.length > MOST_CHARACTERS ? [`${text.length} characters`] : []),
    ...(/\w- \w/.test(text) ? ["a word torn apart at its hyphen"] : []),
    ...(/[.?]$/.test(text) ? [] : ["ends without a full stop"]),
    ...sentences.filter((sentence) => !/^[A-Z{]/.test(sentence)).map((each) => `begins small: ${each}`),
    ...sentences
      .filter((sentence) => sentence.split(/\s+/).length > MOST_WORDS_OF_A_SENTENCE)
      .map((each) => `long: ${each}`),
  ];
}
