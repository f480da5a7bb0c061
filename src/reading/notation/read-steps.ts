import type { Path } from "../yaml/open-yaml.ts";
import type { EffortStep, Passes, RestStep, Step } from "../../models/workout.ts";
import { contradiction } from "./block-contradiction.ts";
import { passesOf } from "./block-passes.ts";
import { readBlockClauses, type BlockClauses } from "./block-phrase.ts";
import { blockOf, type ReadStep } from "./build-block.ts";
import { byDivision, forEverybody, readByDivision, type ByDivision, type Read } from "./by-division.ts";
import { readEffortLine } from "./effort-line.ts";
import { isLooseClause, LOOSE_CLAUSE } from "./loose-clause.ts";
import { tell, tellText, type Trouble } from "./notation-fault.ts";
import type { LineSetting, PassesOfBlock, Reading } from "./reading.ts";
import { isRest, readRestLine } from "./rest-phrase.ts";
import { tokensOf, writtenBy, type TextSource, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";
import { readText, type WorkReading } from "./work-reading.ts";

/** The steps that an entry makes for one division. */
type ReadSteps = Read<readonly ReadStep[]>;

const NOTHING_READ: ReadSteps = { value: [], isWhole: false };

/**
 * Reads the entries of a list of work (or one entry alone) at a path of the file: steps for each division, in the setting of
 * each. Faults are noted; what has none is returned. Every entry is read once for all divisions that read it alike, and
 * they share its steps.
 */
export function readSteps(
  value: unknown,
  path: Path,
  settings: ByDivision<LineSetting>,
  reading: WorkReading,
): ByDivision<ReadSteps> {
  if (!Array.isArray(value)) return readStep(value, path, settings, reading);
  const entries = value.map((item: unknown, index) => readStep(item, [...path, index], settings, reading));
  const entriesOf = (division: number): readonly ReadSteps[] =>
    entries.map((entry) => entry[division] ?? NOTHING_READ);
  return byDivision(reading.divisions, entriesOf, (division) => ({
    value: entriesOf(division).flatMap((entry) => entry.value),
    isWhole: entriesOf(division).every((entry) => entry.isWhole),
  }));
}

function readStep(
  value: unknown,
  path: Path,
  settings: ByDivision<LineSetting>,
  reading: WorkReading,
): ByDivision<ReadSteps> {
  if (typeof value === "string") {
    const source: TextSource = { text: value, path, isName: false };
    const line = (tokens: readonly Token[], setting: LineSetting, own: Reading): readonly Step[] =>
      stepsOfLine(source, tokens, setting, { ...own, placeAt: reading.placeAt });
    return readText(source, settings, reading, line);
  }
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    return readBlock(value as Readonly<Record<string, unknown>>, path, settings, reading);
  }
  const trouble = value === null || value === undefined ? EMPTY : NESTED;
  tellText(reading.faults, { text: "", path, isName: false }, trouble);
  return forEverybody(reading.divisions, NOTHING_READ);
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

function stepsOfLine(
  source: TextSource,
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading & Pick<WorkReading, "placeAt">,
): readonly Step[] {
  if (tokens.length === 0) {
    tellText(reading.faults, source, EMPTY);
    return [];
  }
  if (isNothing(tokens)) return [];
  const colonless = blockWithoutColon(tokens, reading);
  if (colonless.length > 0) {
    tell(reading.faults, colonless, tokens, missingColon(writtenBy(colonless)));
    return [];
  }
  const place = reading.placeAt(source);
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
function blockWithoutColon(tokens: readonly Token[], reading: Reading): readonly Token[] {
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
  place: RestStep["place"],
  reading: Reading,
): readonly RestStep[] {
  const rest = readRestLine(tokens, reading.faults);
  return rest === undefined ? [] : [{ kind: "rest", place, written: source.text, ...rest }];
}

function readBlock(
  value: Readonly<Record<string, unknown>>,
  path: Path,
  settings: ByDivision<LineSetting>,
  reading: WorkReading,
): ByDivision<ReadSteps> {
  const { divisions, faults } = reading;
  const [name, second] = Object.keys(value);
  if (name === undefined || second !== undefined) {
    const odd = second ?? "";
    if (second === undefined) tellText(faults, { text: odd, path, isName: false }, EMPTY);
    else tellText(faults, { text: odd, path: [...path, odd], isName: true }, TWO_NAMES);
    return forEverybody(divisions, NOTHING_READ);
  }
  const source: TextSource = { text: name, path: [...path, name], isName: true };
  const inside = value[name];
  const heads = readText(source, forEverybody(divisions, undefined), reading, (tokens, _, own) =>
    headOf(source, tokens, inside, { ...own, placeAt: reading.placeAt }),
  );
  if (!heads.some((head) => head.value?.kind === "block")) return heads.map(stepsOfHead);
  const inner = byDivision(
    divisions,
    (index) => [heads[index], settings[index]],
    (index) => innerSetting(heads[index]?.value, inside, settings[index] ?? ANYTHING_GOES),
  );
  const steps = readSteps(inside, source.path, inner, reading);
  const keysOf = (index: number): readonly unknown[] => [heads[index], steps[index]];
  const blocks = readByDivision(divisions, keysOf, faults, (index, own) => {
    const [head, within] = [heads[index], steps[index]];
    const clauses = head?.value?.kind === "block" && head.value.fits ? head.value.clauses : undefined;
    if (clauses === undefined || head === undefined || within === undefined) return undefined;
    const block = blockOf(clauses, within.value, source, reading.placeAt(source), own);
    return head.isWhole && within.isWhole ? block : undefined;
  });
  return byDivision(
    divisions,
    (index) => [blocks[index], heads[index]],
    (index) => {
      const block = blocks[index];
      if (heads[index]?.value?.kind === "rest") return stepsOfHead(heads[index]);
      return block?.isWhole === true && block.value !== undefined
        ? { value: [block.value], isWhole: true }
        : NOTHING_READ;
    },
  );
}

/** The name of an entry as one division reads it: a block, or a rest, whose time may stand where a block has its work. */
type Head =
  | { readonly kind: "block"; readonly clauses: BlockClauses | undefined; readonly fits: boolean }
  | { readonly kind: "rest"; readonly steps: readonly RestStep[] };

/** Undefined with a fault noted where there is nothing below the name. */
function headOf(
  source: TextSource,
  tokens: readonly Token[],
  inside: unknown,
  reading: Reading & Pick<WorkReading, "placeAt">,
): Head | undefined {
  // `rest: 1:00` says the same as `rest 1:00`.
  if (tokens.length === 1 && tokens[0]?.text === "rest" && typeof inside === "string") {
    const words = tokensOf({ text: inside, path: source.path, isName: false });
    const written = { ...source, text: `rest ${inside}` };
    const steps = restSteps([...tokens, ...words], written, reading.placeAt(source), reading);
    return { kind: "rest", steps };
  }
  if (inside === null || inside === undefined || (Array.isArray(inside) && inside.length === 0)) {
    tellText(reading.faults, source, emptyBlock(source.text, tokens));
    return undefined;
  }
  const clauses = readBlockClauses(tokens, reading);
  return { kind: "block", clauses, fits: clauses !== undefined && fits(clauses, source, reading) };
}

const stepsOfHead = (head: Read<Head | undefined> | undefined): ReadSteps =>
  head?.value?.kind === "rest" ? { value: head.value.steps, isWhole: head.isWhole } : NOTHING_READ;

const innerSetting = (head: Head | undefined, inside: unknown, setting: LineSetting): LineSetting =>
  head?.kind === "block" && head.clauses !== undefined
    ? settingInside(head.clauses, inside, setting)
    : ANYTHING_GOES;

const TWO_NAMES: Trouble = {
  problem: "two blocks stand in one entry",
  allowed: "one block in each entry of the list",
  remedy: "Begin it with a hyphen at the same depth as the block before.",
};

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
