import { nearestName } from "../../models/nearest.ts";
import { tellText, type Faults } from "./notation-fault.ts";
import type { WrittenPart } from "./written-part.ts";

/** `part a`, `by the result of part a`: nothing but another part. */
const OTHER_PART =
  /^(?:by )?(?:(?:the )?(?:better |best )?(?:result|score|time|place) (?:of|in) )?part (\S+?)\.?$/i;

/**
 * The earlier part whose result breaks ties of this one, where its entry `tie-break` says nothing but that. Every other
 * note is for people, and read no further.
 */
export function readTieBreakPart(
  { entries, path, earlier }: WrittenPart,
  faults: Faults,
): string | undefined {
  const text = entries["tie-break"];
  if (typeof text !== "string") return undefined;
  const name = OTHER_PART.exec(text.trim())?.[1];
  if (name === undefined) return undefined;
  const names = earlier.map((part) => part.name);
  const found = names.find((known) => known.toLowerCase() === name.toLowerCase());
  if (found !== undefined) return found;
  tellText(
    faults,
    { text, path: [...path, "tie-break"], isName: false },
    {
      problem: `no earlier part is called "${name}"`,
      allowed:
        names.length === 0 ? "a note in your own words" : names.map((known) => `part ${known}`).join(", "),
      nearest: nearestName(name, names),
      remedy: "Name a part that is done before this one, or say in your own words how ties are broken.",
    },
  );
  return undefined;
}
