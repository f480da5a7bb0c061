import { readMass } from "../quantities/mass.ts";
import { readClock } from "../quantities/time.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import type { AttemptBounds } from "../../models/workout.ts";
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
  const bounds = divisions.map((_, index) =>
    phrases.reduce<AttemptBounds>(
      (all, phrase) => ({ ...all, ...boundOf(phrase, index, divisions, source, faults) }),
      {},
    ),
  );
  if (faults.length > before) return undefined;
  const settled = bounds.map((bound, index) => [divisions[index] ?? "", bound] as const);
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

function boundOf(
  phrase: string,
  index: number,
  divisions: readonly string[],
  source: TextSource,
  faults: Faults,
): AttemptBounds {
  if (/^(?:loads )?rising$/i.test(phrase)) return { rising: true };
  const most = /^at most (\d+)(?: attempts)?$/i.exec(phrase);
  const rest = /^rest at least (\S+)$/i.exec(phrase);
  const first = /^first (?:lift )?after (\S+)$/i.exec(phrase);
  const wait = rest ?? first;
  const time = wait && readClock(wait[1] ?? "");
  const trouble =
    (most && beyond("attempts", Number(most[1]))) ?? (time?.ok === true && beyond("rest", time.value));
  if (trouble) {
    tellOnce(phrase, trouble, source, faults);
    return {};
  }
  if (most) return { attempts: Number(most[1]) };
  if (time?.ok === true) return rest ? { smallestRest: time.value } : { firstRest: time.value };
  const opener = massOf(/^open (?:with|at) (.+)$/i.exec(phrase)?.[1], index, divisions.length);
  const jump = massOf(/^up by (.+)$/i.exec(phrase)?.[1], index, divisions.length);
  const beyondLoad =
    (opener && beyond("opener", inKilograms(opener))) ?? (jump && beyond("jump", inKilograms(jump)));
  if (beyondLoad) {
    tellOnce(phrase, beyondLoad, source, faults);
    return {};
  }
  if (opener) return { opener };
  if (jump) return { jump };
  tellOnce(phrase, NOTHING_SET, source, faults);
  return {};
}

const NOTHING_SET: Trouble = {
  problem: "this sets nothing for the attempts",
  allowed: ALLOWED,
  remedy: "Write it in one of these ways; loads carry their unit, and slashes part divisions.",
};

/** Each phrase is read once for every division. */
function tellOnce(phrase: string, trouble: Trouble, source: TextSource, faults: Faults): void {
  if (faults.some((fault) => fault.source.path === source.path && fault.found === phrase)) return;
  faults.push({ ...trouble, source, offset: Math.max(0, source.text.indexOf(phrase)), found: phrase });
}

/** The load of a division, of one for all or of one for each with slashes between and the unit at the end. */
function massOf(text: string | undefined, index: number, divisions: number): Mass | undefined {
  if (text === undefined) return undefined;
  const values = text.split("/").map((value) => value.trim());
  if (values.length !== 1 && values.length !== divisions) return undefined;
  const unit = /[a-z#]+\.?$/i.exec(text.trim())?.[0] ?? "";
  const own = values.length === 1 ? text : (values[index] ?? "");
  const mass = readMass(/[a-z#]/i.test(own) ? own : `${own} ${unit}`, {});
  return mass.ok && mass.value.value > 0 ? mass.value : undefined;
}
