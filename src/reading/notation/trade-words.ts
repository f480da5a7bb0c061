import type { Trouble } from "./notation-fault.ts";

type Entry = {
  readonly pattern: RegExp;
  readonly problem: string;
  /** From the words, so that the numbers proposed are those written. */
  readonly remedy: (words: string) => string;
};

const entry = (pattern: RegExp, problem: string, remedy: string | ((words: string) => string)): Entry => ({
  pattern,
  problem,
  remedy: typeof remedy === "string" ? () => remedy : remedy,
});

/** `EMOM 10`, `E2MOM x 6`, `every minute for 10` as a block with its own numbers. */
function everyBlock(words: string): string {
  const minutes = Number(/\be(\d+)mom\b/.exec(words)?.[1] ?? 1);
  const times = /\bx\s*(\d+)/.exec(words)?.[1];
  const length = /\b(?:e\d*mom|minute)\b\D*?(\d+)/.exec(words)?.[1];
  const rounds = times ?? (length === undefined ? undefined : String(Math.floor(Number(length) / minutes)));
  const block = `every ${minutes}:00, ${rounds ?? "10"} rounds:`;
  const own = rounds === undefined ? ", with your own number of rounds" : "";
  return `Write \`on the clock: as written\`, and in the work a block \`${block}\`${own}.`;
}

/** `5 RFT` as a block with its number. */
function roundsBlock(words: string): string {
  const rounds = /(\d+)\s*(?:rft|rounds?)/.exec(words)?.[1];
  const own = rounds === undefined ? ", with your own number of rounds" : "";
  return `Write \`for time:\` in the part and a block \`${rounds ?? "3"} rounds:\` in the work${own}.`;
}

/** Words coaches say for which the notation has plainer ones, and words for work that cannot be planned here. */
const TRADE_WORDS: readonly Entry[] = [
  entry(
    /\b(partners?|teams?|teammates?|synchro\w*|synchroni[sz]ed|relay|you go,? i go|ygig)\b/,
    "this is work of several people, and a plan here is for one athlete: who works when in a team is not known",
    "Plan one member's share as a workout of its own, with rests where the others work.",
  ),
  entry(
    /\be(\d*)mom\b|\bon the minute\b|\bevery minute\b/,
    "work that starts anew on a fixed clock is written with `every`",
    everyBlock,
  ),
  entry(
    /\btabata\b/,
    "work and rest in turn are written with `on` and `off`",
    "Write a block `0:20 on, 0:10 off, 8 rounds:` in a part `on the clock: as written`.",
  ),
  entry(
    /\bdeath by\b/,
    "work that grows each minute until it is missed is written with `every` and `or out`",
    "Write `on the clock: open`, and in the work a block `every 1:00, 1 up by 1, or out:`.",
  ),
  entry(
    /\b(chipper|circuit)\b/,
    "a row of movements needs no word: lines are done in the order written",
    "Write one line for each movement under `work:`.",
  ),
  entry(/\b(rft|rounds? for time)\b/, "that it is for time is said once for the part", roundsBlock),
  entry(
    /^rest$/,
    "a rest between parts is said by the part after it",
    "Write `starts: 2:00 after a` in the next part, or `starts: at 9:00`.",
  ),
  entry(
    /^(scal\w*|rx|versions?|options?)$/,
    "other versions are divisions of their own",
    "Name them under `divisions:`, and give each its values with slashes or under `by division:`.",
  ),
  entry(
    /^(notes?|comments?|description|remarks?|rules?)$/,
    "remarks have no entry of this name",
    "Write rules and standards under `standards:`, and everything else as text below the second line of hyphens.",
  ),
  entry(
    /^(rounds|reps|sets|exercises|movements|workout|wod)$/,
    "what is done stands as a list under `work:`",
    "Write `work:` with a line for each movement, and rounds as a block `- 3 rounds:` in it.",
  ),
  entry(
    /^cap$|\b(time cap|timecap|tc)\b/,
    "the cap of a part stands with its kind",
    "Write it behind the kind, such as `for time: cap 12:00`.",
  ),
  entry(
    /\b(for load|for max load|\d*rm|one rep max|max weight|heaviest|establish|(find|build to) a heavy)\b/,
    "lifting for load is a kind of part",
    "Write `max load:` with its time in the part, such as `max load: 6:00`, and the lift in its work: `1 clean and jerk`, or `3 front squat` for three reps.",
  ),
  entry(
    /\b(for reps|for quality|not for time|for max reps)\b/,
    "what is counted stands under `score`",
    "Write `score: reps` in the part; work without a score needs no plan.",
  ),
  entry(
    /\badd(ing)? \d|\bplus \d+ (reps?|each|every)|\bincreas\w+|\bascending\b|\bdescending\b/,
    "numbers that change by round are written with `up by` or `down by`, or as a list",
    "Write `3 up by 3:` for a block, `at 60 kg up by 5 kg` for a load, or all numbers with hyphens between.",
  ),
  entry(
    /\bas (far|much) as possible\b/,
    "what is done as often or as far as possible is written with `max`",
    "Write `max metres row` or `max calories row`, with its time: `max metres row in 10:00`.",
  ),
  entry(
    /\b(superset|giant set)\b/,
    "lines in a block of rounds already follow one another without rest",
    "Write a block `3 rounds:` with the lines in it.",
  ),
  entry(
    /\b(laps?|lengths?|blocks?|pools?|gym lengths?)\b/,
    "how far this is stands nowhere, so no time can be planned for it",
    "Write the distance, such as `400 m run`.",
  ),
  entry(
    /\bevery (minute|\d)/,
    "work that is done by the clock inside other work is a block that holds both",
    "Write a block `every 1:00, until 60 thruster:` with a line for what is done each time and a line `max thruster` with its load.",
  ),
  entry(
    /\bfailure\b/,
    "how many come in a set to failure shows only then",
    "Write a number that is aimed at, or `max` with a time: `max pull-up in 1:00`.",
  ),
  entry(
    /\b(remaining|(time|clock) (that is |which is )?(left|over)|(rest|end) of the (time|clock))\b|\buntil\b/,
    "work for the time that is left is a line `max`, the last of its list, without more words",
    "Write `- max burpee` as the last line: it goes on until the part or the block around it is over; for another time write `max burpee in 2:00`.",
  ),
  entry(
    /\bbonus\b|\bafter the cap\b/,
    "what counts behind the cap follows other rules than the work before it",
    "Write the work to the cap as one part, and what may be done after it as another part with `starts:` and a score of its own; how both are set off against each other goes under `standards:`.",
  ),
  entry(
    /\b(penalty|penalties|each break|every break|per break|if you drop|every time|each time)\b/,
    "work that depends on what goes wrong cannot be planned",
    "Say it under `standards:`; if the rule asks for sets without a break, add `, unbroken` to the line.",
  ),
  entry(
    /\b(min|minute) ?\d\b|\bodd\b|\beven\b/,
    "minutes in turn are written as one block",
    "Write a block such as `every 1:00, 5 rounds, in turn:`, with your own number of rounds and one line for each minute.",
  ),
];

/**
 * What to say where one of the trade's words stands in for what the notation writes otherwise; undefined for other
 * words.
 */
export function tradeWordRemedy(words: string): Trouble | undefined {
  const plain = words.toLowerCase();
  const known = TRADE_WORDS.find(({ pattern }) => pattern.test(plain));
  return known && { problem: known.problem, remedy: known.remedy(plain) };
}
