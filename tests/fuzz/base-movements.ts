import type { SourceFile } from "../../src/reading/files/source-file.ts";

/** A movement with as little as it needs: the fuzzer reads it thousands of times. */
const movement = (id: string, entries: string): SourceFile => ({
  path: `content/movements/${id}.mdx`,
  text: `---
${entries}
speeding up: {power: 1.3, source: our judgement, confidence: judgement}
set up: {time: 4 s, source: our judgement, confidence: judgement}
---

Say it simply.
`,
});

const PACED = "source: our judgement\n  confidence: judgement";

export const MOVEMENTS: readonly SourceFile[] = [
  movement(
    "pull-up",
    `name: pull-up
plural: pull-ups
short: pull-up
also: [kipping pull-up]
kind: gymnastics
counts: [reps]
taxes: {pull: 100%, grip: 90%, lungs: 60%}
stresses: [hard grip, high rep pulling]
pace:
  steady: {new: 7.5, regular: 4.2, competitor: 2.8, elite: 2.15}
  fastest: {new: 1.6, regular: 1.35, competitor: 1.1, elite: 0.95}
  unbroken: {new: 6, regular: 18, competitor: 35, elite: 50}
  by sex: {female: 1.25, male: 1}
  ${PACED}
choices:
  - id: pull-up-style
    question: Which way do you pull?
    when: [amount over 1]
    options:
      - id: butterfly
        name: butterfly kip
        say: Keep the circle small.
        when: [level competitor or level elite, unbroken at least 15]
        because: "Your best set is {best set}."
        switch when: Change when two reps only just count.
        adds: [kipping]
      - id: kipping
        name: kipping
        say: Keep the same beat.
        because: It is the way whose last rep still looks like the first.
        switch when: Come down as soon as the swing stalls.
standards: [Chin over the bar]`,
  ),
  movement(
    "thruster",
    `name: thruster
plural: thrusters
short: thruster
kind: barbell
counts: [reps]
taxes: {legs: 90%, press: 70%, lungs: 100%}
stresses: [overhead, deep knee bend]
pace:
  steady: {new: 7.7, regular: 5.4, competitor: 3.8, elite: 2.92}
  fastest: {new: 2.5, regular: 2.1, competitor: 1.8, elite: 1.55}
  unbroken: {new: 8, regular: 18, competitor: 35, elite: 60}
  by sex: {female: 1.05, male: 1}
  ${PACED}
load:
  held: bar
  best lift: yes
  reference: {female: 65 lb, male: 95 lb}
  from other lifts:
    - {of: clean and jerk, ratio: 0.83, source: our judgement, confidence: judgement}
  typical best: {new: 0.73, regular: 0.91, competitor: 1.16, elite: 1.4}
  lands on the lifter: no`,
  ),
  movement(
    "clean-and-jerk",
    `name: clean and jerk
plural: clean and jerks
short: C&J
also: [C&J]
kind: barbell
counts: [reps]
taxes: {legs: 80%, hips and back: 90%, press: 60%, grip: 70%, lungs: 90%}
stresses: [overhead, loaded hinge, fall risk]
pace:
  steady: {new: 14, regular: 9.4, competitor: 6.6, elite: 5}
  fastest: {new: 4.6, regular: 3.8, competitor: 3.1, elite: 2.6}
  unbroken: {new: 1, regular: 4, competitor: 10, elite: 24}
  by sex: {female: 1.05, male: 1}
  ${PACED}
load:
  held: bar
  best lift: yes
  reference: {female: 95 lb, male: 135 lb}
  typical best: {new: 0.88, regular: 1.1, competitor: 1.4, elite: 1.7}
  lands on the lifter: no`,
  ),
  movement(
    "row",
    `name: row
plural: rows
short: row
also: [rower]
kind: erg
erg: row
counts: [metres, calories, seconds]
taxes: {legs: 70%, hips and back: 60%, pull: 50%, lungs: 100%}
pace:
  steady: {new: 2:24 per 500 m, regular: 2:06 per 500 m, competitor: 1:53 per 500 m, elite: 1:46 per 500 m}
  fastest: {new: 1:55 per 500 m, regular: 1:38 per 500 m, competitor: 1:27 per 500 m, elite: 1:20 per 500 m}
  unbroken: {new: 2000, regular: 5000, competitor: 10000, elite: 10000}
  by sex: {female: 1.13, male: 1}
  ${PACED}`,
  ),
];
