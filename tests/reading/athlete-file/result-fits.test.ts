import { describe, expect, it } from "vitest";
import { readFiles } from "../../../src/reading/read-data.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";
import { readSources } from "../../../src/site/load-data.ts";
import { ROOT } from "../../support/run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
const workout = (id: string, text: string) => ({
  path: `content/workouts/${id}.mdx`,
  text: `---\ntitle: ${id}\n${text}\n---\n`,
});
const own = [
  workout("sluice", "for time: cap 12:00\nwork: [100 burpee]"),
  workout("barn", "amrap: 12:00\nwork: [10 burpee, 10 air squat]"),
  workout("hoist", "max load: 6:00\nwork: [1 snatch]"),
];
const told = (result: string): string => {
  const text = `name: Ada\nlevel: regular\nresults:\n  - ${result}\n`;
  return readFiles(builtIn, [...own, { path: "athletes/ada.yaml", text }])
    .faults.map(sayFault)
    .join("\n\n");
};

describe("a result", () => {
  it.each([
    "{workout: sluice, time: 11:59}",
    "{workout: sluice, reps: 88}",
    "{workout: barn, rounds: 7 + 12}",
    "{workout: barn, reps: 152}",
    "{workout: hoist, load: 80 kg}",
    "{workout: hoist, attempts: [80 kg made]}",
  ])("fits how its part is scored: %s", (result) => {
    expect(told(result)).toBe("");
  });

  it.each([
    [
      "{workout: sluice, time: 14:00}",
      `athletes/ada.yaml:4:29: Question
  found    14:00
  because  the cap is 12:00, and nobody finishes after it
  allowed  a time up to the cap, or the \`reps\` done by then
  to do    Write the reps done by the cap as \`reps: ...\`, or correct the time.`,
    ],
    [
      "{workout: barn, time: 7:12}",
      `athletes/ada.yaml:4:27: Question
  found    7:12
  because  this part is scored by rounds and reps, and this is a time
  allowed  \`reps\`, \`rounds\`
  to do    Write what was done as \`reps: ...\` or \`rounds: ...\`.`,
    ],
    [
      "{workout: hoist, reps: 80}",
      `athletes/ada.yaml:4:28: Question
  found    80
  because  this part is scored by load, and this is a number
  allowed  \`load\`
  to do    Write what was done as \`load: ...\`.`,
    ],
  ])("that does not is asked about: %s", (result, text) => {
    expect(told(result)).toBe(text);
  });
});
