import { stringify } from "yaml";
import { schemaLine } from "./editor-schemas.ts";

/** Kinds of files one can start from. */
export const STARTING_KINDS = ["athlete", "workout"] as const;
export type StartingKind = (typeof STARTING_KINDS)[number];

/** A file that passes the check as it is, with a remark at every entry that may be added. */
export function startingFile(kind: StartingKind, name: string): string {
  // On one line however long it is: in lines it would end the entry.
  const said = stringify(name, { lineWidth: 0 }).trim();
  return kind === "athlete" ? athlete(said) : workout(said);
}

const athlete = (name: string): string => `${schemaLine("athlete", "../")}name: ${name}
level: regular                 # new, regular, competitor or elite: change it first
# Everything below is optional. Take the # away where you know it.
# division: women
# body mass: 63 kg
# height: 170 cm
# born: 1991
# gym: harbour                 # a file of content/gyms
# lifts:
#   back squat: 110 kg
#   clean and jerk: {best: 82.5 kg, tested: 2026-10-03}
# efforts:
#   - row 2000 m in 7:05.4
#   - 84 burpees in 7:00
# unbroken: {pull-up: 22, toes-to-bar: 18}
# cannot: [ring muscle-up]
# limits: none                 # or: [{joint: knee, avoid: [impact, deep knee bend]}]
# group: evening               # or several: [evening, team blue]
# starts: {some-workout: 2026-11-28 18:40}
# shares: [name, target]       # what may stand on the share image
# note: Words for this athlete alone.
`;

const workout = (title: string): string => `---
${schemaLine("workout", "../../")}title: ${title}
for time: cap 12:00            # or amrap: 9:00, on the clock: 16:00, max load: 6:00
work:
  - 3 rounds:
      - 350 m run, counts 1
      - 14 push press at 42.5/30 kg
      - 17 box step-over to 60/50 cm
# competition: some-name       # a file of content/competitions
# standards: [Knee to the floor]
# coach sets:                  # your last word
#   - {for: everyone, target: 9:30, sets: {push press: 7-7}}
#   - {for: new, warm up: 25 min, say: "Break early."}
---

Write to your athletes here, in your own words. <Target /> shows everybody their own.
`;
