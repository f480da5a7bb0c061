import { readMass } from "../quantities/mass.ts";
import { readClock } from "../quantities/time.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import type { AttemptBounds } from "../../models/workout.ts";
import { forEverybody, type ByDivision } from "./by-division.ts";
import { beyond } from "./check-bounds.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import type { TextSource } from "./token.ts";

const ALLOWED =
  "`rising`, `open with 80/50 kg`, `up by 5 kg`, `rest at least 1:30`, `first lift after 2:00`, `at most 4`, with commas between";

/**
 * Reads what rules or coach set for the attempts of a part lifted for load, by division: `rising, open with 80/50 kg, up by
 * 5 kg, rest at least 1:30, first lift after 2:00, at most 4`. Undefined where nothing is set or something could not be read.
 */
export function readAttemptBounds(
  source: TextSource,
  divisions: readonly string[],
  isLifted: boolean,
  faults: Faults,
): Readonly<Record<string, AttemptBounds>> | undefined {
  if (source.text.trim() === "") return undefined;
  if (!isLifted) {
    tellText(faults, source, {
      problem: "only a part that is lifted for load has attempts",
      remedy: "Take the entry out, or say `max load:` for the kind of the part.",
    });
    return undefined;
  }
  const before = faults.length;
  const phrases = source.text
    // A comma between digits is a decimal one.
    .split(/,(?!\d)/)
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== "");
  const said = phrases.map((phrase) => boundsOf(phrase, divisions, source, faults));
  if (faults.length > before) return undefined;
  const settled = divisions.map(
    (division, index) =>
      [division, Object.assign({}, ...said.map((bounds) => bounds[index])) as AttemptBounds] as const,
  );
  if (settled.some(([, { jump, opener }]) => jump !== undefined && opener === undefined)) {
    tellText(faults, source, {
      problem: "fixed steps need a load to open with",
      allowed: ALLOWED,
      remedy: "Add `open with` and the first load.",
    });
    return undefined;
  }
  return Object.fromEntries(settled);
}

/** What one phrase sets for each division; nothing with a fault noted. */
function boundsOf(
  phrase: string,
  divisions: readonly string[],
  source: TextSource,
  faults: Faults,
): ByDivision<AttemptBounds> {
  const told = (trouble: Trouble): ByDivision<AttemptBounds> => {
    faults.push({ ...trouble, source, offset: Math.max(0, source.text.indexOf(phrase)), found: phrase });
    return forEverybody(divisions, {});
  };
  if (/^(?:loads )?rising$/i.test(phrase)) return forEverybody(divisions, { rising: true });
  const most = /^at most (\d+)(?: attempts)?$/i.exec(phrase);
  const rest = /^rest at least (\S+)$/i.exec(phrase);
  const first = /^first (?:lift )?after (\S+)$/i.exec(phrase);
  const wait = rest ?? first;
  const time = wait && readClock(wait[1] ?? "");
  const trouble =
    (most && beyond("attempts", Number(most[1]))) ?? (time?.ok === true && beyond("rest", time.value));
  if (trouble) return told(trouble);
  if (most) return forEverybody(divisions, { attempts: Number(most[1]) });
  if (time?.ok === true)
    return forEverybody(divisions, rest ? { smallestRest: time.value } : { firstRest: time.value });
  const opener = massesOf(/^open (?:with|at) (.+)$/i.exec(phrase)?.[1], divisions);
  const jump = massesOf(/^up by (.+)$/i.exec(phrase)?.[1], divisions);
  const beyondLoad = [
    ...(opener ?? []).map((mass) => beyond("opener", inKilograms(mass))),
    ...(jump ?? []).map((mass) => beyond("jump", inKilograms(mass))),
  ].find((one) => one !== undefined);
  if (beyondLoad) return told(beyondLoad);
  if (opener) return opener.map((mass) => ({ opener: mass }));
  return jump ? jump.map((mass) => ({ jump: mass })) : told(NOTHING_SET);
}

const NOTHING_SET: Trouble = {
  problem: "this sets nothing for the attempts",
  allowed: ALLOWED,
  remedy: "Write it in one of these ways; loads carry their unit, and slashes part divisions.",
};

/** The load of each division, of one for all or of one for each with slashes between and the unit at the end. */
function massesOf(text: string | undefined, divisions: readonly string[]): ByDivision<Mass> | undefined {
  if (text === undefined) return undefined;
  const values = text.split("/").map((value) => value.trim());
  if (values.length !== 1 && values.length !== divisions.length) return undefined;
  const unit = /[a-z#]+\.?$/i.exec(text.trim())?.[0] ?? "";
  const masses = values.flatMap((value) => {
    const mass = readMass(/[a-z#]/i.test(value) ? value : `${value} ${unit}`, {});
    return mass.ok && mass.value.value > 0 ? [mass.value] : [];
  });
  if (masses.length < values.length) return undefined;
  const [shared] = masses;
  return shared !== undefined && values.length === 1 ? forEverybody(divisions, shared) : masses;
}
