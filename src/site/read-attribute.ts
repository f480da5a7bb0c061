import { movementFinder } from "../reading/names/find-movement.ts";
import { nearestName } from "../models/nearest.ts";
import { readCount } from "../reading/quantities/count.ts";
import { readShare } from "../reading/quantities/share.ts";
import { MASS_UNITS } from "../models/quantity.ts";
import { CONDITIONS, HABITS, JOINTS, LEVELS, SEXES, STRESSES } from "../models/vocabulary.ts";
import { type AttributeKind, listed } from "../models/words.ts";
import type { TextContext } from "./text-context.ts";

/** What is wrong with a value, in the parts of a fault. */
export type ValueFault = {
  readonly problem: string;
  readonly allowed?: string;
  readonly nearest?: string;
  readonly remedy: string;
};

/** Words that stand for a stated limit in a text. */
const LIMIT_WORDS: readonly string[] = ["any", ...JOINTS, ...CONDITIONS, ...STRESSES];

/** A smaller share of a best lift is a slip: nobody loads it (judgement). */
const LEAST_SHARE = 0.01;
const NO_SHARE: ValueFault = {
  problem: "a share of nothing is no load",
  allowed: "a share from 1% to 200%",
  remedy: "Write the share of the best lift that is meant, such as `70%`.",
};

/** Tells what is wrong with the value of an attribute, or nothing. */
export function faultOfValue(
  kind: AttributeKind,
  value: string,
  { movements, parts, divisions, done }: TextContext,
): ValueFault | undefined {
  switch (kind) {
    case "movement":
      return movementFault(value, movements);
    case "movement-of-workout":
      return movementFault(value, movements) ?? notDone(value, movements, done);
    case "share": {
      const read = readShare(value);
      if (!read.ok) return { problem: read.problem, allowed: read.allowed, remedy: read.remedy };
      return read.value < LEAST_SHARE ? NO_SHARE : undefined;
    }
    case "count": {
      const read = readCount(value);
      return read.ok ? undefined : { problem: read.problem, allowed: read.allowed, remedy: read.remedy };
    }
    case "part":
      return parts && notAmong([value.trim().toLowerCase()], parts);
    case "levels":
      return notAmong(listed(value), LEVELS);
    case "divisions":
      return divisions && notAmong(listed(value), divisions);
    case "units":
      return notAmong(listed(value), MASS_UNITS);
    case "sexes":
      return notAmong(listed(value), SEXES);
    case "habits":
      return notAmong(listed(value), HABITS);
    case "limits":
      return notAmong(listed(value), LIMIT_WORDS);
  }
}

function notAmong(words: readonly string[], allowed: readonly string[]): ValueFault | undefined {
  const known = new Set(allowed.map((word) => word.toLowerCase()));
  const wrong = words.find((word) => !known.has(word));
  if (words.length > 0 && wrong === undefined) return undefined;
  const nearest = nearestName(wrong ?? "", allowed);
  return {
    problem: wrong === undefined ? "nothing is named here" : `"${wrong}" is not among what can be named here`,
    allowed: allowed.join(", "),
    ...(nearest === undefined ? {} : { nearest }),
    remedy: "Write names that are allowed, with commas between them.",
  };
}

/** A number of the reader's own for a movement nobody does in this workout would stay empty on every page. */
function notDone(
  value: string,
  movements: TextContext["movements"],
  done: TextContext["done"],
): ValueFault | undefined {
  const found = movementFinder(movements)(value);
  if (done === undefined || found.kind !== "found" || done.has(found.movement.id)) return undefined;
  const names = [...done].map((id) => movements.get(id)?.name ?? id);
  return {
    problem: "nobody does this movement in the workout, so there is no number of it to show",
    allowed: names.join(", "),
    remedy: "Write a movement of the workout, or say it in words of your own.",
  };
}

function movementFault(value: string, movements: TextContext["movements"]): ValueFault | undefined {
  const found = movementFinder(movements)(value);
  if (found.kind === "found") return undefined;
  if (found.kind === "either") {
    const names = found.movements.map(({ name }) => name);
    return {
      problem: "this can mean more than one movement",
      allowed: names.join(", "),
      remedy: `Write ${names.map((name) => `"${name}"`).join(" or ")}.`,
    };
  }
  return {
    problem: "no movement has this name",
    ...(found.nearest === undefined ? {} : { nearest: found.nearest }),
    remedy: "Write the name of a movement, or add the movement to content/movements.",
  };
}

/** Tells where a round is named to which nobody comes, in the part that is named or in any. */
export function faultOfRound(
  round: string,
  part: string | undefined,
  { rounds }: TextContext,
): ValueFault | undefined {
  const read = readCount(round);
  if (!read.ok || rounds === undefined) return undefined;
  const named = [...rounds].filter(
    ([name]) => part === undefined || name.toLowerCase() === part.trim().toLowerCase(),
  );
  const most = named.reduce((found, [, count]) => Math.max(found, count), 0);
  if (named.length === 0 || read.value <= most) return undefined;
  const where = part === undefined ? "the workout" : `part ${part.trim().toLowerCase()}`;
  return {
    problem: `nobody comes to round ${read.value} of ${where}`,
    allowed: most > 1 ? `a round from 1 to ${most}` : "1, the only round",
    remedy: "Write a round that is done.",
  };
}
