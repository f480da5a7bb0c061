import { plainText } from "../quantities/plain-text.ts";
import { asked, type CellReading, refused } from "./cell-reading.ts";
import { type CellContext, fromFile } from "./from-file.ts";
import type { Meaning } from "./meaning.ts";
import { mendText } from "./mend-text.ts";
import { readEffort, readEfforts } from "./read-effort.ts";
import { readEntry } from "./read-entry.ts";
import { readResult } from "./read-result.ts";
import { sayLift, sayUnbroken } from "./say-values.ts";

const FAILED_FORMULA = /^#(?:REF!|N\/A|VALUE!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA)/i;

/** What stands for the cell above in lists written by hand. */
const DITTO = /^(?:["″”“〃]|''|-\s*["″”]\s*-|ditto|dito|dto\.?|same|idem|as above)$/i;

/** Signs beyond which a cell is a text of its own, and no value. */
const LONGEST_CELL = 2000;

/** Reads a cell by what its column holds. `unit` is that of the column for numbers without one. */
export function readCell(
  meaning: Meaning,
  written: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  const text = written.trim();
  if (text === "" || meaning.kind === "passed over" || meaning.kind === "unclear") return { kind: "nothing" };
  if (FAILED_FORMULA.test(text))
    return refused(
      "a formula of the table failed here, and what stood there is lost",
      "Type the value itself.",
    );
  if (/^=\s*[\w(+-]/.test(text))
    return refused("this is a formula, and what comes of it is not said", "Type the value itself.");
  if (DITTO.test(text))
    return refused(
      "this says the same as the cell above, and rows may have been sorted since",
      "Type the value itself.",
    );
  const mended = mendText(text);
  if (mended.kind === "lost")
    return refused(
      "letters were lost when the table was saved",
      "Type the text again, or save the table as UTF-8.",
    );
  if (text.length > LONGEST_CELL)
    return refused(
      `the cell holds ${text.length} signs`,
      `Keep it under ${LONGEST_CELL}, or pass the column over.`,
    );
  if (mended.kind === "garbled") return asked("letters were garbled when the table was saved", [mended.text]);
  return readPlain(meaning, betweenAsRange(text), unit, context);
}

/** `between 80 and 85` is a range. */
const betweenAsRange = (text: string): string =>
  text.replace(/^between\s+(\S+)\s+and\s+(.+)$/i, "$1-$2").replace(/^from\s+(\d\S*)\s+to\s+(.+)$/i, "$1-$2");

function readPlain(
  meaning: Meaning,
  text: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  switch (meaning.kind) {
    case "entry":
      return readEntry(meaning.entry, text, meaning.unit ?? unit, context);
    case "lift":
      return readLift(meaning, text, unit, context);
    case "unbroken":
      return fromFile(
        { unbroken: { [meaning.movement]: text } },
        context,
        ({ unbroken: [set], cannot: [no] }) => {
          if (set) {
            // `12 strict` in a column of pull-ups is a set of strict ones.
            const done = context.findMovement(set.movement);
            const key = done.kind === "found" ? done.movement.name : meaning.movement;
            return [{ entry: "unbroken", key, value: sayUnbroken(set, unitOfSets(key, context)) }];
          }
          return no === undefined ? [] : [{ entry: "unbroken", key: meaning.movement, value: "none" }];
        },
      );
    case "effort":
      return readEffort(meaning, text, unit, context);
    case "efforts":
      return readEfforts(meaning.movement, text, context);
    case "start":
      return fromFile({ starts: { [meaning.workout]: text } }, context, ({ starts: [start] }) =>
        start
          ? [
              {
                entry: "starts",
                key: meaning.workout,
                value: `${start.at.replace("T", " ")}${start.zone === undefined ? "" : ` ${start.zone}`}`,
              },
            ]
          : [],
      );
    case "result":
    case "attempts":
    case "splits":
      return readResult(meaning, text, unit, { ...context, score: meaning.score }, (entry) =>
        fromFile({ results: [entry] }, context, ({ results: [result] }) =>
          result ? [{ entry: "results", listed: true, value: entry }] : [],
        ),
      );
    default:
      return { kind: "nothing" };
  }
}

function readLift(
  meaning: Meaning & { readonly kind: "lift" },
  written: string,
  unit: string | undefined,
  context: CellContext,
): CellReading {
  // In a file a zero is typed on purpose; in a table it fills a cell as often as it says that a lift cannot be done.
  if (/^0+(?:[.,]0+)?(?:\s*(?:kgs?|lbs?))?$/i.test(plainText(written)))
    return asked("a zero can mean not known or cannot, and those are different plans", ["?", "none"]);
  const { movement, reps } = meaning;
  const loadUnit = meaning.unit ?? unit;
  const name = `${movement}${reps === undefined ? "" : ` ${reps}RM`}${loadUnit === undefined ? "" : ` (${loadUnit})`}`;
  const text = meaning.estimated && /^\d/.test(written) ? `~${written}` : written;
  const value =
    context.tested === undefined || /\(.*\d.*\)|\d{4}-\d\d-\d\d/.test(text)
      ? text
      : { best: text, tested: context.tested };
  return fromFile({ lifts: { [name]: value } }, context, ({ lifts: [lift], cannot: [no] }) => {
    if (lift) return [{ entry: "lifts", key: movement, value: sayLift(lift) }];
    return no === undefined ? [] : [{ entry: "lifts", key: movement, value: "none" }];
  });
}

/** What stands behind the number of a best set: a way has metres, a hold seconds, all others reps without a word. */
const unitOfSets = (name: string, { findMovement }: CellContext): string => {
  const found = findMovement(name);
  const unit = found.kind === "found" ? found.movement.counts[0] : undefined;
  return unit === "metres" ? " m" : unit === "seconds" ? " s" : "";
};
