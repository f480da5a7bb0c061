import { stringify } from "yaml";

/** Kinds of files one can start from. */
export const STARTING_KINDS = ["athlete", "workout"] as const;
export type StartingKind = (typeof STARTING_KINDS)[number];

/** A file that passes the check as it is, with a remark at every entry that may be added. */
export function startingFile(kind: StartingKind, name: string): string {
  const said = stringify(name).trim();
  return kind === "athlete" ? athlete(said) : workout(said);
}

const athlete = (name: string): string => `name: ${name}
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
# starts: {some-workout: 2026-11-28 18:40}
# shares: [name, target]       # what may stand on the share image
# note: Words for this athlete alone.
`;

const workout = (title: string): string => `---
title: ${title}
for time: cap 12:00            # or amrap: 9:00, on the clock: 16:00, max load: 6:00
work:
  - 3 rounds:
      - 400 m run
      - 15 thruster at 43/29 kg
      - 12 pull-up
# competition: some-name       # a file of content/competitions
# standards: [Knee to the floor]
# coach sets:                  # your last word
#   - {for: new, warm up: 25 min, say: "Break early."}
---

Write to your athletes here, in your own words. <Target /> shows everybody their own.
`;
