import type { Place } from "../../models/fault.ts";
import type { Path } from "../yaml/open-yaml.ts";
import type { EffortStep, Passes, RestStep, Step } from "../../models/workout.ts";
import { contradiction } from "./block-contradiction.ts";
import { passesOf } from "./block-passes.ts";
import { readBlockClauses, type BlockClauses } from "./block-phrase.ts";
import { blockOf, type ReadStep } from "./build-block.ts";
import { readEffortLine } from "./effort-line.ts";
import { isLooseClause, LOOSE_CLAUSE } from "./loose-clause.ts";
import { tell, tellText, type Trouble } from "./notation-fault.ts";
import type { LineSetting, PassesOfBlock, Reading } from "./reading.ts";
import { isRest, readRestLine } from "./rest-phrase.ts";
import { spellWords, type DivisionWord } from "./spell-words.ts";
import { tokensOf, writtenBy, type TextSource, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** What reading the work of one division needs beside the phrases. */
export type WorkReading = Reading & {
  readonly words: readonly DivisionWord[];
  readonly placeAt: (source: TextSource) => Place;
  /** Notes trouble with a step that was read. */
  readonly tellStep: (step: Step, trouble: Trouble) => void;
};

/**
 * Reads the entries of a list of work (or one entry alone) at a path of the file. Faults are noted; what has none is
 * returned.
 */
export function readSteps(
  value: unknown,
  path: Path,
  setting: LineSetting,
  reading: WorkReading,
): readonly ReadStep[] {
  if (Array.isArray(value)) {
    return value.flatMap((item: unknown, index) => readStep(item, [...path, index], setting, reading));
  }
  return readStep(value, path, setting, reading);
}

function readStep(
  value: unknown,
  path: Path,
  setting: LineSetting,
  reading: WorkReading,
): readonly ReadStep[] {
  if (typeof value === "string") return readLine({ text: value, path, isName: false }, setting, reading);
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    return readBlock(value as Readonly<Record<string, unknown>>, path, setting, reading);
  }
  tellText(
    reading.faults,
    { text: "", path, isName: false },
    value === null || value === undefined ? EMPTY : NESTED,
  );
  return [];
}

const EMPTY: Trouble = {
  problem: "nothing is written here",
  allowed: "a line such as `10 thruster at 43 kg`, or a block such as `3 rounds:`",
  remedy: "Write the line, or delete the hyphen.",
};

const NESTED: Trouble = {
  problem: "a list inside a list has no name",
  allowed: "a block such as `3 rounds:`",
  remedy: "Give the block its name, for example `- 3 rounds:`, with the list below it.",
};

function readLine(source: TextSource, setting: LineSetting, reading: WorkReading): readonly Step[] {
  const tokens = spellWords(tokensOf(source), reading.words, reading.byName);
  if (tokens.length === 0) {
    tellText(reading.faults, source, EMPTY);
    return [];
  }
  const place = reading.placeAt(source);
  if (isNothing(tokens)) return [];
  const colonless = blockWithoutColon(tokens, reading);
  if (colonless.length > 0) {
    tell(reading.faults, colonless, tokens, missingColon(writtenBy(colonless)));
    return [];
  }
  if (isRest(tokens)) return restSteps(tokens, source, place, reading);
  if (isLooseClause(tokens)) {
    tell(reading.faults, tokens, tokens, LOOSE_CLAUSE);
    return [];
  }
  const line = readEffortLine(tokens, setting, reading);
  if (line === undefined) return [];
  const step: EffortStep = { kind: "effort", place, written: source.text, ...line };
  return [step];
}

/**
 * The name of a block whose colon was left out: what stands below it then runs on behind it, hyphens and all
 * (`3 rounds - 10 burpee`).
 */
function blockWithoutColon(tokens: readonly Token[], reading: WorkReading): readonly Token[] {
  const hyphen = tokens.findIndex(
    (token, index) =>
      token.text === "-" && tokens[index - 1]?.kind === "word" && tokens[index + 1] !== undefined,
  );
  const name = tokens.slice(0, Math.max(hyphen, 0));
  if (name.length === 0) return [];
  return readBlockClauses(name, { ...reading, faults: [] }) === undefined ? [] : name;
}

const missingColon = (name: string): Trouble => ({
  problem: "the colon behind the name of a block is missing",
  allowed: `\`- ${name}:\` with the lines of the block below it, further in`,
  remedy: `Write \`${name}:\`.`,
});

/** A word of `by division:` may stand for a line that some division leaves out. */
const isNothing = (tokens: readonly Token[]): boolean =>
  tokens.length === 1 && (tokens[0]?.text === "nothing" || tokens[0]?.text === "none");

function restSteps(
  tokens: readonly Token[],
  source: TextSource,
  place: Place,
  reading: WorkReading,
): readonly RestStep[] {
  const rest = readRestLine(tokens, reading.faults);
  return rest === undefined ? [] : [{ kind: "rest", place, written: source.text, ...rest }];
}

function readBlock(
  value: Readonly<Record<string, unknown>>,
  path: Path,
  setting: LineSetting,
  reading: WorkReading,
): readonly ReadStep[] {
  const names = Object.keys(value);
  const [name, second] = names;
  if (name === undefined) {
    tellText(reading.faults, { text: "", path, isName: false }, EMPTY);
    return [];
  }
  if (second !== undefined) {
    tellText(reading.faults, { text: second, path: [...path, second], isName: true }, TWO_NAMES);
    return [];
  }
  const source: TextSource = { text: name, path: [...path, name], isName: true };
  const inside = value[name];
  const tokens = spellWords(tokensOf(source), reading.words, reading.byName);
  // `rest: 1:00` says the same as `rest 1:00`.
  if (tokens.length === 1 && tokens[0]?.text === "rest" && typeof inside === "string") {
    const words = tokensOf({ text: inside, path: source.path, isName: false });
    return restSteps(
      [...tokens, ...words],
      { ...source, text: `rest ${inside}` },
      reading.placeAt(source),
      reading,
    );
  }
  return readNamedBlock(source, tokens, inside, setting, reading);
}

const TWO_NAMES: Trouble = {
  problem: "two blocks stand in one entry",
  allowed: "one block in each entry of the list",
  remedy: "Begin it with a hyphen at the same depth as the block before.",
};

function readNamedBlock(
  source: TextSource,
  tokens: readonly Token[],
  inside: unknown,
  setting: LineSetting,
  reading: WorkReading,
): readonly ReadStep[] {
  const empty = inside === null || inside === undefined || (Array.isArray(inside) && inside.length === 0);
  if (empty) {
    tellText(reading.faults, source, emptyBlock(source.text, tokens));
    return [];
  }
  const before = reading.faults.length;
  const clauses = readBlockClauses(tokens, reading);
  const inner = clauses === undefined ? ANYTHING_GOES : settingInside(clauses, inside, setting);
  const steps = readSteps(inside, source.path, inner, reading);
  if (clauses === undefined || !fits(clauses, source, reading)) return [];
  const block = blockOf(clauses, steps, source, reading.placeAt(source), reading.faults);
  const untold = reading.faults.slice(before).every((fault) => fault.severity === "notice");
  return untold && block !== undefined ? [block] : [];
}

/** Inside a block that could not be read, nothing is told that only follows from that. */
const ANYTHING_GOES: LineSetting = {
  passes: [{ count: "endless", isLadder: false }],
  inLadder: true,
  bareIsMax: true,
  lifting: false,
};

function emptyBlock(name: string, tokens: readonly Token[]): Trouble {
  if (isRest(tokens)) {
    return {
      problem: "a rest is a line, not a block",
      remedy: `Write \`- ${name}\` without a colon at its end.`,
    };
  }
  return (
    tradeWordRemedy(name) ?? {
      problem: "the block has nothing in it",
      allowed: "lines or blocks, each with a hyphen, below the name of the block and further in",
      remedy: "Write the work of the block below it; if this is a line, take away the colon at its end.",
    }
  );
}

function settingInside(clauses: BlockClauses, inside: unknown, setting: LineSetting): LineSetting {
  const single = !Array.isArray(inside) || inside.length === 1;
  const passes = passesOf(clauses);
  const isLadder = passes.kind === "ladder" || passes.kind === "open-ladder";
  const count = clauses.carriesOn === true ? "endless" : countOf(passes);
  const own = count === undefined ? [] : [{ count, isLadder }];
  // Rounds of a window: the window's own rounds have no end.
  const inWindow = clauses.lasts !== undefined && typeof clauses.rounds === "number" ? [ENDLESS] : [];
  return {
    ...setting,
    passes: [...inWindow, ...own, ...setting.passes],
    inLadder: setting.inLadder || isLadder,
    bareIsMax: clauses.on !== undefined || (clauses.lasts !== undefined && single),
  };
}

const ENDLESS: PassesOfBlock = { count: "endless", isLadder: false };

function countOf(passes: Passes): PassesOfBlock["count"] | undefined {
  switch (passes.kind) {
    case "once":
      return undefined;
    case "rounds":
      return passes.count > 1 ? passes.count : undefined;
    case "ladder":
      return passes.amounts.length;
    default:
      return "endless";
  }
}

/** Tells clauses that contradict one another. */
function fits(clauses: BlockClauses, source: TextSource, reading: Reading): boolean {
  const trouble = contradiction(clauses);
  if (trouble !== undefined) tellText(reading.faults, source, trouble);
  return trouble === undefined;
}
