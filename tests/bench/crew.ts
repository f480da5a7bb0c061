import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

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
    .map((name) => blocksOf(readFileSync(join(root, "athletes", name), "utf8")));
  for (let at = 0; at < count; at++) {
    const pattern = patterns[at % patterns.length] ?? [];
    const factor = 0.92 + 0.01 * (Math.floor(at / patterns.length) % 9);
    const own = pattern
      .filter((block) => !OF_WORKOUTS.some((entry) => block.startsWith(`${entry}:`)))
      .map((block) => (block.startsWith("name:") ? `${block.trimEnd()} ${at + 1}\n` : scaled(block, factor)));
    writeFileSync(join(folder, "athletes", `athlete-${String(at + 1).padStart(5, "0")}.yaml`), own.join(""));
  }
}

/** The entries of a file as it is written, each with the lines below it. */
const blocksOf = (text: string): readonly string[] => text.split(/^(?=[a-z])/m);

/** Every mass in the entries that tell the athlete's own, times a factor, to whole units. */
const scaled = (block: string, factor: number): string =>
  /^(?:lifts|body mass):/.test(block)
    ? block.replace(/\d+(?:[.,]\d+)?(?= ?(?:kg|lb))/g, (mass) =>
        String(Math.round(Number(mass.replace(",", ".")) * factor)),
      )
    : block;
