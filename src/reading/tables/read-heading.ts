import { comparable } from "../../models/nearest.ts";
import type { Movement } from "../../models/movement.ts";
import type { KnownWorkout } from "../athlete-file/context.ts";
import type { FindMovement } from "../names/find-movement.ts";
import { plainText } from "../quantities/plain-text.ts";
import { readTime } from "../quantities/time.ts";
import { HEADING_WORDS } from "./heading-words.ts";
import type { Meaning } from "./meaning.ts";

/** What a heading may name. */
export type HeadingContext = {
  readonly findMovement: FindMovement;
  readonly findLift: FindMovement;
  readonly workouts: ReadonlyMap<string, KnownWorkout>;
};

/** Units that stand in a heading: of masses, of heights, of times. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/^(?:kgs?|kilos?|kilograms?|кг)$/i, "kg"],
  [/^(?:lbs?|pounds?|#)$/i, "lb"],
  [/^(?:cms?|centimet(?:er|re)s?)$/i, "cm"],
  [/^(?:m|met(?:er|re)s?)$/i, "m"],
  [/^(?:ft|feet|')$/i, "ft"],
  [/^(?:in|inch|inches|")$/i, "in"],
  [/^(?:s|secs?|seconds?)$/i, "s"],
  [/^(?:min|mins|minutes?)$/i, "min"],
];
/** Words below or beside a heading that say how its cells are written, and no unit. */
export const SILENT =
  /^(?:mm:ss|m:ss|min:secs?|hh:mm:ss|h:mm:ss|time|reps?|cals?|ub|unbroken|max|1 ?rm|pr|pb|best|yyyy-mm-dd|yyyy)$/i;

/** The unit a word is the name of. @example unitWord("kgs") // => "kg" */
export const unitWord = (word: string): string | undefined =>
  UNITS.find(([pattern]) => pattern.test(word.trim()))?.[1];

/** Takes units and words that say nothing off a heading: `C&J (kg)`, `Row 2k [mm:ss]`, `snatch_lb`. */
function takeUnitOff(written: string): { readonly name: string; readonly unit?: string } {
  const text = plainText(written)
    .replace(/[*:]+$/, "")
    .trim();
  const bracket = /^(.*?)\s*[([{]\s*([^)\]}]*)\s*[)\]}]\s*(.*)$/.exec(text);
  if (bracket) {
    const [, before = "", inside = "", behind = ""] = bracket;
    const unit = unitWord(inside);
    if (unit !== undefined || SILENT.test(inside.trim()))
      return { name: `${before} ${behind}`.trim(), ...(unit === undefined ? {} : { unit }) };
  }
  const [, name = "", word = ""] = /^(.+?)(?:\s*[,/]\s*|\s+in\s+|[ _])\s*([a-zа-я#]+)$/i.exec(text) ?? [];
  // `Burpees in 7 min` says how long and not in what.
  const isTime = /\d$/.test(name) && /^(?:min|s)/i.test(word);
  const unit = word === "" || isTime || /^(?:m|s|in|"|')$/i.test(word) ? undefined : unitWord(word);
  return unit === undefined ? { name: text } : { name, unit };
}

const massUnit = (unit: string | undefined): { readonly unit?: "kg" | "lb" } =>
  unit === "kg" || unit === "lb" ? { unit } : {};

/** Reads what the heading of a column says it holds. */
export function readHeading(written: string, context: HeadingContext): Meaning {
  const { name, unit } = takeUnitOff(written);
  const known = HEADING_WORDS.get(comparable(name)) ?? HEADING_WORDS.get(comparable(written));
  if (known?.kind === "entry") return unit === undefined ? known : { ...known, unit };
  if (known) return known;
  if (/\b(?:goal|target|aim|wish)s?\b|%|\bpercent\b/i.test(name))
    return { kind: "passed over", why: "a goal or a share is no result" };
  return (
    ofWorkout(name, context) ??
    effortHeading(name, context) ??
    movementHeading(name, unit, context) ??
    testedHeading(name, context) ??
    startHeading(name, context) ?? {
      kind: "unclear",
      why: "the heading says nothing that is known",
      proposals: [],
    }
  );
}

function ofWorkout(name: string, { workouts }: HeadingContext): Meaning | undefined {
  const [, title = name, , kind = ""] =
    /^(.*?)\s*(-|:|,)?\s*\b(start|starts|start time|heat|attempts|lifts|splits?|round times|times by round|result|score)?$/i.exec(
      name,
    ) ?? [];
  for (const workout of workouts.values()) {
    const parts = workout.parts ?? [];
    const spellings = [workout.id, workout.title].flatMap((own) => [
      { own, part: undefined },
      ...(parts.length > 1 ? parts.map((part) => ({ own: `${own} ${part}`, part })) : []),
    ]);
    const found = spellings.find(({ own }) => comparable(own) === comparable(title));
    if (!found) continue;
    const meant = /^start|^heat/i.test(kind)
      ? "start"
      : /^attempts|^lifts/i.test(kind)
        ? "attempts"
        : /^splits?|round/i.test(kind)
          ? "splits"
          : "result";
    if (meant === "start") return { kind: meant, workout: workout.id };
    const score = workout.scores?.[found.part === undefined ? 0 : parts.indexOf(found.part)];
    return {
      kind: meant,
      workout: workout.id,
      ...(found.part === undefined ? {} : { part: found.part }),
      ...(score === undefined ? {} : { score }),
    };
  }
  return undefined;
}

/** `2k row`, `500 m row`, `1 mile run`, `7 min burpees`, `max burpees in 7:00`, `Row 2000`. */
function effortHeading(name: string, { findMovement }: HeadingContext): Meaning | undefined {
  const text = name
    .replace(/\b(?:max|best|pr|pb|time|test|tt|time trial)\b/gi, " ")
    .replace(/\s+/g, " ")
    .trim();
  const timed =
    /^(\d+(?::\d\d)?\s*-?\s*(?:min|minutes?|mins|s|sec|seconds?)?)\s*(?:of\s+|max\s+)?(.+)$/i.exec(text) ??
    undefined;
  const behind =
    /^(.+?)\s+(?:in\s+|for\s+)?(\d+(?::\d\d)?\s*-?\s*(?:min|minutes?|mins|s|sec|seconds?)?)$/i.exec(text);
  for (const [what, time] of [
    [timed?.[2], timed?.[1]],
    [behind?.[1], behind?.[2]],
  ]) {
    if (what === undefined || time === undefined || !/:|min|s$|sec/i.test(time)) continue;
    const read = readTime(time.replace("-", " "));
    const calories = /^(.*?)\s*\b(?:cals?|calories)$|^(?:cals?|calories)\s+(.*)$/i.exec(what);
    const found = findMovement(calories?.[1] ?? calories?.[2] ?? what);
    if (read.ok && found.kind === "either") {
      const proposals = found.movements.map((movement) =>
        text.replace(calories?.[1] ?? calories?.[2] ?? what, movement.name),
      );
      return { kind: "unclear", why: "the heading can stand for more than one movement", proposals };
    }
    if (read.ok && found.kind === "found") {
      const unit = calories ? "cal " : "";
      return { kind: "effort", before: "", behind: ` ${unit}${found.movement.name} in ${clock(read.value)}` };
    }
  }
  const amount =
    /^(\d[\d.,]*\s*(?:km|k|m|miles?|mi|meters?|metres?|cals?|calories)|mile)\s+(.+)$/i.exec(text) ??
    turned(/^(.+?)\s+(\d[\d.,]*\s*(?:km|k|m|miles?|mi|meters?|metres?|cals?|calories)|mile)$/i.exec(text)) ??
    turned(/^(.+?)\s+(\d{3,5})$/.exec(text));
  if (!amount) return amountAlone(text);
  const [, much = "", what = ""] = amount;
  const found = findMovement(what);
  if (found.kind !== "found") return undefined;
  const unit = /^\d{3,5}$/.test(much) ? " m" : "";
  const said = much.toLowerCase() === "mile" ? "1 mile" : `${much}${unit}`;
  return { kind: "effort", before: `${said} ${found.movement.name} in `, behind: "" };
}

const turned = (found: RegExpExecArray | null): readonly string[] | undefined =>
  found ? [found[0], found[2] ?? "", found[1] ?? ""] : undefined;

/** A distance without a movement; a mile is run. */
function amountAlone(text: string): Meaning | undefined {
  if (/^(?:1 )?mile$/i.test(text)) return { kind: "effort", before: "1 mile run in ", behind: "" };
  const [, much] = /^(\d[\d.,]*\s*(?:km|k|m|meters?|metres?))$/i.exec(text) ?? [];
  if (much === undefined) return undefined;
  const proposals = [`${much} run`, `${much} row`];
  return { kind: "unclear", why: "the heading names a distance and no movement", proposals };
}

function movementHeading(
  name: string,
  unit: string | undefined,
  { findMovement, findLift }: HeadingContext,
): Meaning | undefined {
  const wantsMax =
    /\b(?:max|unbroken|ub|longest|best set|max reps)\b/i.test(name) && !/\b(?:\d+ ?rm|kg|lb)\b/i.test(name);
  const bare = name
    .replace(
      /\b(?:max(?:imum)?|unbroken|ub|longest|best set|best|reps|current|pr|pb|est\.?|strength)\b/gi,
      " ",
    )
    .replace(/\s+/g, " ")
    .trim();
  // `muscle-ups (ring)`, `squat (front)`: what kind of it stands behind.
  const [, kind = "", which = ""] = /^([^()]+?)\s*\(([\p{L} -]+)\)$/u.exec(bare) ?? [];
  const forms = [name, bare, bare.replace(/\b1\s*-?\s*rm\b/i, "").trim(), `${which} ${kind}`.trim()].filter(
    (form) => form !== "",
  );
  const asLift = forms.map(findLift).find(({ kind }) => kind !== "none");
  const as = forms.map(findMovement).find(({ kind }) => kind !== "none");
  if (asLift?.kind === "either" || (as?.kind === "either" && asLift?.kind !== "found")) {
    const names = (asLift?.kind === "either" ? asLift : as)?.kind === "either" ? namesOf(asLift, as) : [];
    const proposals = names.map((one) => (wantsMax ? `max ${one}` : one));
    return { kind: "unclear", why: "the heading can stand for more than one movement", proposals };
  }
  if (asLift?.kind === "found" && isLift(asLift.movement, name, unit) && !wantsMax) {
    const reps = asLift.label.reps ?? repsIn(name);
    return {
      kind: "lift",
      movement: asLift.movement.name,
      ...(reps === undefined || reps === 1 ? {} : { reps }),
      ...(/\best(?:imated)?\b|\be1?rm\b/i.test(name) ? { estimated: true } : {}),
      ...massUnit(unit ?? asLift.label.unit),
    };
  }
  if (as?.kind !== "found") return undefined;
  const { movement } = as;
  const countsReps = movement.counts[0] === "reps" || movement.counts[0] === "seconds";
  if (!countsReps) {
    return wantsMax &&
      movement.counts.includes("metres") &&
      movement.erg === undefined &&
      movement.name !== "run"
      ? { kind: "unbroken", movement: movement.name }
      : { kind: "efforts", movement: movement.name };
  }
  return { kind: "unbroken", movement: movement.name };
}

const repsIn = (name: string): number | undefined => {
  const reps = /\b(\d+)\s*-?\s*RM\b/i.exec(name)?.[1];
  return reps === undefined ? undefined : Number(reps);
};

function namesOf(...all: readonly (ReturnType<FindMovement> | undefined)[]): readonly string[] {
  const either = all.find((one) => one?.kind === "either");
  return either?.kind === "either" ? either.movements.map((movement) => movement.name) : [];
}

/** A lift where a single best of it means something, or where a load is spoken of. */
const isLift = (movement: Movement, name: string, unit: string | undefined): boolean =>
  movement.loading?.lift === true ||
  unit === "kg" ||
  unit === "lb" ||
  /\b\d+\s*-?\s*RM\b|\b1rm\b/i.test(name);

/** `BS date`, `snatch tested`. */
function testedHeading(name: string, { findLift }: HeadingContext): Meaning | undefined {
  const [, what] = /^(.+?)\s*[-:]?\s*(?:date|tested|tested on|test date)$/i.exec(name) ?? [];
  const found = what === undefined ? undefined : findLift(what);
  return found?.kind === "found" ? { kind: "tested", movement: found.movement.name } : undefined;
}

/** `Start`, `heat time`: of which workout? */
const startHeading = (name: string, { workouts }: HeadingContext): Meaning | undefined =>
  /^(?:start|starts|start ?time|heat ?time|heat start|time slot|slot|startzeit|starttid)$/i.test(name)
    ? {
        kind: "unclear",
        why: "the heading does not say of which workout",
        proposals: [...workouts.values()].slice(0, MOST_PROPOSED).map(({ title }) => `${title} start`),
      }
    : undefined;

const MOST_PROPOSED = 8;

const clock = (time: number): string =>
  `${Math.floor(time / 60)}:${String(Math.round(time % 60)).padStart(2, "0")}`;
