import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";
import { briefText } from "../../src/cli/brief-text.ts";
import { makePlan } from "../../src/compute/make-plan.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import type { SourceFile } from "../../src/reading/files/source-file.ts";
import { readData } from "../../src/reading/read-data.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";

/** A situation as the table tells it. */
export type AdviceSituation = {
  readonly is: string;
  readonly athlete: string;
  readonly workout: string;
  /** What stands in the files, where athlete and workout are not of the table. */
  readonly written?: { readonly athlete: string; readonly workout: string };
  readonly with?: Readonly<Record<string, string>>;
  readonly day?: {
    readonly at?: string;
    readonly next?: string;
    readonly gym?: string;
    readonly "may come"?: readonly string[];
  };
  readonly must?: readonly string[];
  readonly "must not"?: readonly string[];
};

type Table = {
  readonly athletes: Readonly<Record<string, string>>;
  readonly workouts: Readonly<Record<string, string>>;
  readonly situations: readonly AdviceSituation[];
};

const root = fileURLToPath(new URL("../..", import.meta.url));
export const table = parse(readFileSync(`${root}/tests/cases/advice-situations.yaml`, "utf8")) as Table;

const GYMS: Readonly<Record<string, string>> = {
  hall: "name: Hall\nbars: [20 kg, {id: short, mass: 15 kg, for: female}]\nplates: {25 kg: 3 pairs, 20 kg: 2 pairs, 15 kg: 2 pairs, 10 kg: 2 pairs, 5 kg: 2 pairs, 2.5 kg: 2 pairs, 1.25 kg: 1 pair, 0.5 kg: 1 pair}\nergs: {row: 4}\nequipment: [rack, pins, bumper plates]",
  "bare rack":
    "name: Bare\nbars: [20 kg]\nplates: {20 kg: 5 pairs, 10 kg: 2 pairs, 5 kg: 2 pairs, 2.5 kg: 2 pairs}\nequipment: [rack]",
  pounds:
    "name: Pounds\nbars: [45 lb]\nplates: {45 lb: 4 pairs, 25 lb: 2 pairs, 15 lb: 1 pair, 10 lb: 2 pairs, 5 lb: 2 pairs, 2.5 lb: 1 pair}\nequipment: [bumper plates]",
};
const idOf = (name: string): string => name.replaceAll(" ", "-");
const file = (path: string, text: string): SourceFile => ({ path, text });

function library(): readonly SourceFile[] {
  return ["movements", "warm-ups", "recovery", "cautions"].flatMap((folder) =>
    readdirSync(`${root}/content/${folder}`).map((name) =>
      file(`content/${folder}/${name}`, readFileSync(`${root}/content/${folder}/${name}`, "utf8")),
    ),
  );
}

/** A flow map with entries put in or replaced, as the file of an athlete. */
function athleteText(situation: AdviceSituation, id: string): string {
  const day = situation.day ?? {};
  const written = (situation.written?.athlete ?? table.athletes[situation.athlete])?.slice(1, -1) ?? "";
  const own = Object.entries(situation.with ?? {});
  const lines = [
    `name: ${situation.athlete} ${id}`,
    ...splitEntries(written).filter((entry) => own.every(([key]) => !entry.startsWith(`${key}:`))),
    ...own.map(([key, value]) => `${key}: ${value}`),
    ...(day.gym === "unknown" ? [] : [`gym: ${idOf(day.gym ?? "hall")}`]),
    ...(day.at === undefined
      ? []
      : [
          `starts: {${id}: 2026-11-28 ${day.at} UTC${day.next === undefined ? "" : `, other: 2026-11-28 ${day.next} UTC`}}`,
        ]),
  ];
  return lines.join("\n");
}

/** The entries of a flow map, parted at the commas outside of braces and brackets. */
function splitEntries(text: string): readonly string[] {
  let depth = 0;
  const entries = [""];
  for (const sign of text) {
    if ("{[".includes(sign)) depth += 1;
    if ("}]".includes(sign)) depth -= 1;
    if (sign === "," && depth === 0) entries.push("");
    else entries.push(`${entries.pop() ?? ""}${sign}`);
  }
  return entries.map((entry) => entry.trim()).filter((entry) => entry !== "");
}

function workoutText(situation: AdviceSituation, id: string): string {
  const coming = situation.day?.["may come"] !== undefined;
  return `---\ntitle: ${situation.workout.replaceAll(",", "")}\n${coming ? `competition: cup-${id}\n` : ""}${situation.written?.workout ?? table.workouts[situation.workout] ?? ""}\n---\n`;
}

function filesOf(situation: AdviceSituation, id: string): readonly SourceFile[] {
  const coming = situation.day?.["may come"];
  return [
    file(`athletes/${id}.yaml`, athleteText(situation, id)),
    file(`content/workouts/${id}.mdx`, workoutText(situation, id)),
    ...(coming === undefined
      ? []
      : [
          file(
            `content/competitions/cup-${id}.yaml`,
            `name: Cup\nzone: UTC\nopens: 2026-11-26 18:00\ncloses: 2026-11-30 20:00\nmay come: [${coming.join(", ")}]`,
          ),
        ]),
  ];
}

/** The plans of situations, in order, by the real doors of reading and computing. */
export function plansOf(situations: readonly AdviceSituation[]): readonly Plan[] {
  const own = [
    ...Object.entries(GYMS).map(([name, text]) => file(`content/gyms/${idOf(name)}.yaml`, text)),
    file("content/workouts/other.mdx", "---\ntitle: Other\nfor time:\nwork: [500 m row]\n---\n"),
    ...situations.flatMap((situation, at) => filesOf(situation, `s${at}`)),
  ];
  const read = readData(library(), own);
  if (!read.ok) throw new Error(sayFaults(read.faults));
  const { value: data } = read;
  return situations.map((_, at) => {
    const athlete = data.athletes.find(({ id }) => id === `s${at}`);
    const workout = data.workouts.find(({ id }) => id === `s${at}`);
    if (!athlete || !workout) throw new Error(`situation ${at} was not read`);
    return makePlan({ athlete, workout, data, date: "2026-11-27" });
  });
}

/** What a brief holds as marks; see the head of the table. */
export function marksOf(plan: Plan): readonly string[] {
  const things = plan.setUp.flatMap((line) => (line.kind === "equipment" ? line.things : []));
  return [
    ...plan.choices.flatMap((choice) => [`choice:${choice.id}`, `choice:${choice.id}=${choice.pick.id}`]),
    ...plan.cautions.map(({ id }) => `caution:${id}`),
    ...(plan.warmUp?.steps ?? []).map(({ id }) => `warm-up:${id}`),
    ...(plan.warmUp?.before ?? []).map(({ id }) => `before:${id}`),
    ...(plan.warmUp?.gaps ?? []).flatMap(({ lift }) => (lift ? [`warm-up-again:${lift.movement}`] : [])),
    ...things.map(({ what }) => `set-out:${what}`),
    ...(plan.after ? [`day:${plan.after.day.kind}`] : []),
    ...(plan.after?.day.pieces ?? []).map(({ id }) => `piece:${id}`),
    ...(plan.after?.steps ?? []).map(({ id }) => `step:${id}`),
    ...plan.withheld.flatMap(({ movement }) => (movement === undefined ? [] : [`withheld:${movement}`])),
    ...plan.parts
      .flatMap((part) => part.pacing?.rows ?? [])
      .flatMap(({ movement }) => (movement === undefined ? [] : [`instead:${movement}`])),
    ...(plan.limits ?? []).flatMap(({ note }) => (note === undefined ? [] : [`limit:${note}`])),
  ];
}

/** Whether a brief holds a mark; `says:` is looked for in the words of the whole brief. */
export function holdsMark(plan: Plan, mark: string): boolean {
  if (!mark.startsWith("says:")) return marksOf(plan).includes(mark);
  const words = briefText(plan).replaceAll(/\s+/g, " ").replaceAll("\u00a0", " ").toLowerCase();
  return words.includes(mark.slice("says:".length).toLowerCase());
}
