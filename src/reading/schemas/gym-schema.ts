import * as z from "zod";
import type { Bar, NamedGym, PlatePairs } from "../../models/gym.ts";
import { SEX_WORDS } from "../../models/sex-words.ts";
import { nearestName } from "../../models/nearest.ts";
import { inKilograms, type Mass } from "../../models/quantity.ts";
import { readMass, sayMass } from "../quantities/mass.ts";
import { plainText } from "../quantities/plain-text.ts";
import { within } from "../quantities/plausible.ts";
import { ask, reject, take, type Reading } from "../quantities/reading.ts";
import { tellRefusal } from "../yaml/refuse.ts";
import { ERG_KINDS, type ErgKind } from "../../models/vocabulary.ts";
import { known, listField } from "../fields/list-field.ts";
import { countField, lengthField, massField, timeField, yesNoField } from "../fields/quantity-field.ts";
import { takeReading, tellReading } from "../fields/take-reading.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { spaced, wordField, wordOf, type Synonyms } from "../fields/word-field.ts";
import { ownEntry } from "../../models/own-entry.ts";

type Written<T> = Omit<T, "id">;

/** Kilograms a bar, a plate of a pair and a collar can weigh (judgement: from toy to the heaviest made). */
const BAR = [2, 40] as const;
const PLATE = [0.1, 50] as const;
const COLLAR = [0.05, 3] as const;
const MOST_PAIRS = 40;

const FOR = ["everyone", "female", "male"] as const;
const FOR_SYNONYMS: Synonyms<(typeof FOR)[number]> = { ...SEX_WORDS, all: "everyone" };
const ERG_NAMES: Readonly<Record<string, ErgKind>> = {
  rower: "row",
  rowers: "row",
  "ski erg": "ski",
  skier: "ski",
  skis: "ski",
  bike: "bike-erg",
  "air bikes": "air-bike",
  "fan bike": "air-bike",
  "bike ergs": "bike-erg",
};

const barObject = z.strictObject({
  id: nameField.optional().describe("a short name of your own; left out, the mass is the name"),
  mass: weighing(BAR, "a bar").describe("the mass of the empty bar, such as `20 kg`"),
  for: wordField(FOR, FOR_SYNONYMS)
    .default("everyone")
    .describe("who lifts with it: everyone, female or male"),
  "counts as": massField
    .optional()
    .describe("what the rules count it as, where that differs: `35 lb` for a bar of 15 kg"),
});

const bar = z
  .union([z.string(), barObject])
  .transform((written, ctx): Omit<Bar, "id"> & { readonly id?: string } => {
    if (typeof written !== "string") {
      const { id, mass, for: whom, "counts as": countsAs } = written;
      return {
        ...(id === undefined ? {} : { id }),
        mass,
        for: whom,
        ...(countsAs === undefined ? {} : { countsAs }),
      };
    }
    const [, text = written, who] =
      /^(.*?(?:\d|kg|lb|#)\.?)\s*(?:,|for\b)?\s*(?:for\s+)?(everyone|all|wo?men|fe?male)?$/i.exec(
        plainText(written),
      ) ?? [];
    const mass = takeReading(ctx, weighed(readMass(text), BAR, "a bar"));
    return {
      mass,
      for: wordOf(FOR, who ?? "everyone") ?? FOR_SYNONYMS[(who ?? "").toLowerCase()] ?? "everyone",
    };
  });

/** A mass that a thing of this kind can have. */
function weighing(bounds: readonly [number, number], what: string) {
  return z.string().transform((text, ctx): Mass => takeReading(ctx, weighed(readMass(text), bounds, what)));
}

function weighed(mass: Reading<Mass>, bounds: readonly [number, number], what: string): Reading<Mass> {
  if (!mass.ok || within(inKilograms(mass.value), bounds)) return mass;
  const problem = `${what} does not weigh ${sayMass(mass.value)}`;
  const allowed = `a mass from ${bounds[0]} kg to ${bounds[1]} kg`;
  const other: Mass = { value: mass.value.value, unit: mass.value.unit === "kg" ? "lb" : "kg" };
  return within(inKilograms(other), bounds)
    ? ask(problem, [sayMass(other)], allowed)
    : reject(problem, allowed);
}

/** `2 pairs`, `1 pair`, `2`; `4 plates` are two pairs. */
function readPairs(text: string): Reading<number> {
  const allowed = "a number of pairs such as `2 pairs`";
  const match = /^(\d+)\s*(pairs?|plates?|pcs|pieces|x)?$/i.exec(plainText(text));
  if (!match) return reject("this is not a number of pairs", allowed);
  const count = Number(match[1]);
  const inPlates = /^(?:pl|pc|pi)/i.test(match[2] ?? "");
  if (inPlates && count % 2 === 1) {
    return ask(
      "plates are loaded in pairs, and one of these has no partner",
      [`${(count - 1) / 2} pairs`],
      allowed,
    );
  }
  const pairs = inPlates ? count / 2 : count;
  return pairs <= MOST_PAIRS
    ? take(pairs)
    : reject(`one athlete cannot have more than ${MOST_PAIRS} pairs`, allowed);
}

const PLATES =
  "plates one athlete can have, size and number of pairs: `25 kg: 2 pairs`; kg and lb may be mixed";

const plates = z
  .record(z.string(), z.string())
  .describe(PLATES)
  .transform((written, ctx) => {
    const all = Object.entries(written).flatMap(
      ([size, text]): (PlatePairs & { readonly name: string })[] => {
        const plate = weighed(readMass(size), PLATE, "a plate");
        const pairs = readPairs(text);
        if (!plate.ok) {
          const { severity, problem, allowed, remedy } = plate;
          tellRefusal(ctx, { path: [size], at: "name", severity, problem, allowed, remedy });
        }
        tellReading(ctx, pairs, { path: [size] });
        return plate.ok && pairs.ok ? [{ name: size, plate: plate.value, pairs: pairs.value }] : [];
      },
    );
    for (const [index, { plate, name }] of all.entries()) {
      const earlier = all.slice(0, index).find((other) => sayMass(other.plate) === sayMass(plate));
      if (earlier) {
        const problem = `this size stands here twice, also as "${earlier.name}"`;
        tellRefusal(ctx, {
          path: [name],
          at: "name",
          problem,
          remedy: "Keep one of the two lines, with all pairs in it.",
        });
      }
    }
    const heaviestFirst = all.toSorted((one, other) => inKilograms(other.plate) - inKilograms(one.plate));
    return heaviestFirst
      .filter(({ pairs }) => pairs > 0)
      .map(({ plate, pairs }): PlatePairs => ({ plate, pairs }));
  });

const ergs = z.record(z.string(), countField).transform((written, ctx) => {
  const counts: [ErgKind, number][] = [];
  for (const [name, count] of Object.entries(written)) {
    const kind = wordOf(ERG_KINDS, name) ?? ownEntry(ERG_NAMES, name.toLowerCase());
    if (kind !== undefined) counts.push([kind, count]);
    else {
      const nearest = nearestName(name, ERG_KINDS);
      tellRefusal(ctx, {
        path: [name],
        at: "name",
        problem: "there is no machine of this name",
        allowed: ERG_KINDS.map(spaced).join(", "),
        nearest: nearest === undefined ? undefined : spaced(nearest),
        remedy: "Write one of the names allowed; other things belong under `equipment`.",
      });
    }
  }
  return Object.fromEntries(counts);
});

/** The file of a gym, `content/gyms/*.yaml`. */
export const gymSchema = z
  .strictObject({
    name: nameField.describe("the name of the gym"),
    bars: listField(bar)
      .pipe(z.array(z.custom<Omit<Bar, "id"> & { readonly id?: string }>()).min(1))
      .describe("the bars: `20 kg`, `15 kg for women`, or `{id: short, mass: 15 kg, for: female}`"),
    collar: known(weighing(COLLAR, "a collar")).describe("the mass of one collar, such as `2.5 kg`"),
    "collars count": yesNoField
      .default(false)
      .describe("whether collars count for the load by the rules: `yes` or `no`; no if left out"),
    plates: plates.describe(PLATES),
    ergs: ergs
      .optional()
      .describe("machines and how many of each: `{row: 6, ski: 2}`; row, ski, bike erg, air bike"),
    equipment: listField(textField, { split: true })
      .default([])
      .describe("what else there is, in free words: `[rack, pins, bumper plates, rings, rope]`"),
    "between stations": lengthField
      .optional()
      .describe("the way between two stations, such as `3 m`; 3 m if left out"),
    "plate change": known(timeField).describe(
      "how long one person needs to change one pair of plates, collars included: `12 s`",
    ),
  })
  .transform((written, ctx): Written<NamedGym> => {
    const { name, bars, collar, plates: pairs, ergs: machines = {}, equipment } = written;
    const named = bars.map((each) => ({ ...each, id: each.id ?? barName(each) }));
    for (const [index, { id }] of named.entries()) {
      if (named.findIndex((other) => other.id === id) < index) {
        tellRefusal(ctx, {
          path: ["bars", index],
          found: id,
          problem: "another bar has the same name",
          remedy: "Give each bar an `id` of its own.",
        });
      }
    }
    const change = written["plate change"];
    return {
      name,
      bars: named,
      ...(collar === undefined ? {} : { collar }),
      collarsCount: written["collars count"],
      plates: pairs,
      ergs: machines,
      equipment,
      between: written["between stations"] ?? { value: USUAL_WAY, unit: "m" },
      ...(change === undefined ? {} : { plateChange: change }),
    };
  });

/** Metres between two stations where the gym's file does not say (judgement: a few steps on a usual floor). */
const USUAL_WAY = 3;

const barName = ({ mass, for: whom }: Omit<Bar, "id">): string =>
  whom === "everyone" ? sayMass(mass) : `${sayMass(mass)} ${whom}`;
