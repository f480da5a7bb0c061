import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse, stringify } from "yaml";

/** Entries that name workouts which the bench does without. */
const OF_WORKOUTS = ["starts", "results", "coach"];

/**
 * A data folder with the demonstration's content, one of its workouts, and so many athletes: the demonstration's over and
 * over, each with lifts and a body mass of their own.
 */
export function writeCrew(folder: string, root: string, workout: string, count: number): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, "athletes"), { recursive: true });
  cpSync(join(root, "content"), join(folder, "content"), { recursive: true });
  for (const name of readdirSync(join(folder, "content/workouts"))) {
    if (name !== `${workout}.mdx`) rmSync(join(folder, "content/workouts", name));
  }
  const patterns = readdirSync(join(root, "athletes"))
    .sort()
    .map((name) => parse(readFileSync(join(root, "athletes", name), "utf8")) as Record<string, unknown>);
  for (let at = 0; at < count; at++) {
    const pattern = patterns[at % patterns.length] ?? {};
    const own = Object.entries(pattern).filter(([entry]) => !OF_WORKOUTS.includes(entry));
    const factor = 0.92 + 0.01 * (Math.floor(at / patterns.length) % 9);
    const scaled = own.map(
      ([entry, value]) => [entry, isMass(entry) ? scale(value, factor) : value] as const,
    );
    const athlete = { ...Object.fromEntries(scaled), name: `${String(pattern["name"])} ${at + 1}` };
    writeFileSync(
      join(folder, "athletes", `athlete-${String(at + 1).padStart(5, "0")}.yaml`),
      stringify(athlete),
    );
  }
}

const isMass = (entry: string): boolean => entry === "lifts" || entry === "body mass";

/** Every mass in a value, times a factor, to whole units. */
function scale(value: unknown, factor: number): unknown {
  if (typeof value === "string") {
    return value.replace(/(\d+(?:[.,]\d+)?)(?= ?(?:kg|lb))/g, (mass) =>
      String(Math.round(Number(mass.replace(",", ".")) * factor)),
    );
  }
  if (Array.isArray(value)) return value.map((each) => scale(each, factor));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([entry, each]) => [entry, scale(each, factor)]));
}
