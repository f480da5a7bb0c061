import { readFileSync } from "node:fs";
import type { SourceFile } from "../../src/reading/files/source-file.ts";
import { ROOT } from "../support/run-command.ts";
import { MOVEMENTS } from "./base-movements.ts";

/** A small folder of which one file is changed: the file, what stands around it, and how often it is taken. */
export type Base = {
  readonly file: SourceFile;
  readonly around: readonly SourceFile[];
  readonly weight: number;
};

const file = (path: string, text: string): SourceFile => ({ path, text });
const workout = (name: string, entries: string, text = ""): SourceFile =>
  file(`content/workouts/${name}.mdx`, `---\ntitle: ${name}\n${entries}\n---\n${text}\n`);

const library = (folder: string, name: string): SourceFile => {
  const path = `content/${folder}/${name}.mdx`;
  return file(path, readFileSync(`${ROOT}/${path}`, "utf8"));
};

const GYM = file(
  "content/gyms/shed.yaml",
  `name: Shed
bars:
  - 20 kg
  - {id: short, mass: 15 kg, for: female, counts as: 35 lb}
collar: 2.5 kg
collars count: no
plates: {20 kg: 2 pairs, 10 kg: 2 pairs, 5 kg: 1 pair, 2.5 kg: 1 pair, 45 lb: 1 pair}
ergs: {row: 2}
equipment: [rack, bumper plates, rig]
between stations: 4 m
plate change: 12 s
`,
);

const COMPETITION = file(
  "content/competitions/cup.yaml",
  `name: Cup
zone: Europe/Oslo
opens: 2026-11-25 19:30
closes: 2026-11-29 21:30
counts: best
ties: [The earlier time wins.]
may come: [row]
rules:
  - Film without a cut.
bar counts: as weighed
loading: help allowed
briefing: 5 min
`,
);

const FIELD = file(
  "content/fields/crowd.csv",
  `# total reps: 90
# cap: 9:00
division,score,count
women,5:47,3
women,6:58,2
women,71 reps,1
women,28 reps short,2
men,4:40,5
men,not done,1
`,
);

const SETTINGS = file(
  "content/settings.yaml",
  `title: Lantern
read at: 1.5 m
gym: shed
dates: day first
seed: 7
zone: Europe/Oslo
overrides: {openerChance: 0.93, smallestRest: 75, spareShare: 0.7, breakShortest: 5, finishFrom: 0.85, usualLength: 1800}
`,
);

const SMALL = workout(
  "small",
  "competition: cup\nfield: crowd\nfor time: cap 9:00\nwork:\n  - 3 rounds:\n      - 13 cal row\n      - 17 thruster at 35/25 kg",
);

const PLAIN = file("athletes/ana.yaml", "name: Ana\nlevel: regular\ndivision: women\nbody mass: 63 kg\n");

const WORKOUTS: readonly SourceFile[] = [
  SMALL,
  workout(
    "amrap",
    "divisions: [men, women]\namrap: 6:00\nwork:\n  - 4 up by 2:\n      - clean and jerk at 115/80 lb\n      - cal row\nscore: reps",
    'Aim at <Target /> and <Split round="1" />.\n\n<Only level="new">Slowly.</Only>\n\n- a **list**',
  ),
  workout(
    "intervals",
    "on the clock: as written\nwork:\n  - every 3:00, 3 rounds:\n      - 14/11 cal row\n      - 9 pull-up, unbroken\nscore: slowest interval",
  ),
  workout(
    "two-parts",
    `summary: Two at once.
competition: cup
parts:
  - name: a
    amrap: 5:00
    work:
      - 260/220 m row, counts 10
      - 8 thruster at 43/29 kg, tie-break
    score: reps
    minimum work: 20 reps
  - name: b
    starts: 1:00 after a
    max load: until 12:00
    work: [1 clean and jerk]
    loading: alone
    late lift: counts
    opening bar: empty
    attempts: open with 60/40 kg, rising, at most 4, up by 5 kg
    tie-break: part a
objective: highest lift
coach sets:
  - {for: everyone, warm up: 25 min, say: Breathe.}
  - {for: ana, open with: 40 kg, up by: 2.5 kg}`,
  ),
  workout(
    "ladder",
    "for time: cap 8:00, 1 s per missing rep\nwork:\n  - by 3:00, tie-break:\n      - 2 rounds:\n          - 9 pull-up\n          - 6-4 thruster at 40-50/30-35 kg\n  - rest 1:00\n  - 12-9, by +2:30:\n      - pull-up\n      - 5 thruster at 60% of clean and jerk",
  ),
  workout("death-by", "on the clock: open\nwork:\n  - every 1:00, 3 up by 2, or out:\n      - pull-up"),
  workout(
    "divisions",
    `divisions: [men, women, masters women]
by division:
  bar: {men: 50 kg, women: 35 kg, masters women: 25 kg}
  pulling: {men: thruster at 40 kg, others: pull-up}
wearing: 8/6/6 kg vest
amrap: 6:00
work:
  - 7 thruster at bar
  - 5 pulling
  - 200 m row, counts 1 per 10 m
standards: [Chin over the bar]
equipment: [barbell, rower]`,
  ),
  workout(
    "windows",
    "max load: as written\nwork:\n  - every 2:40, 3 rounds, cap 0:25:\n      - 1 clean and jerk",
  ),
  workout("attempts", "max load: no limit, 3 attempts\nwork: [2 clean and jerk]\nattempts: rising"),
  workout(
    "on-off",
    "on the clock: as written\nwork:\n  - 0:40 on, 0:20 off, 4 rounds:\n      - max pull-up\n      - max calories row\nscore: reps",
  ),
  workout(
    "any-order",
    "for time:\nwork:\n  - 400 m row\n  - any order:\n      - 40 pull-up\n      - 30 thruster at 43/29 kg\n  - rest at least 1:00\n  - max thruster in 1:00 at 43/29 kg\nearly:\n  - who: first heat\n    division: men\n    after: line\n    splits: [1:32, 4:01, 8:12]",
  ),
];

const ATHLETES: readonly SourceFile[] = [
  PLAIN,
  file(
    "athletes/zoe.yaml",
    `name: Zoë Ångström
share name: Zoë Å.
level: competitor
division: women
sex: female
units: kg
body mass: 63 kg
height: 5'7"
born: 1991
lifts:
  clean and jerk: {best: 82.5 kg, tested: 2026-10-03}
  thruster: [70 kg, 3 x 65 kg]
efforts:
  - row 2000 m in 7:05.4
  - 2k row 7:08, 5k ~19:50
  - {effort: 62 pull-ups in 4:00, tested: 2026-05-10}
unbroken: {pull-up: 22, thruster: 21 at 43 kg}
recovery: usual
habits: [starts too fast, slow transitions]
trains: 9 h a week
stiff: [hip]
limits:
  - joint: shoulder
    avoid: [kipping]
    cleared: [pull-up]
    until: 2026-12-31
    note: Strict hanging work is fine.
gym: shed
warm up: 40 min
heat: {wbgt: 28, acclimatised: no}
retry: planned
starts: {small: 2026-11-28 18:40}
shares: [name, target]
results:
  - {workout: small, date: 2026-11-26, time: 5:41, splits: [1:02, 1:40, 2:50, 3:30, 4:30, 5:41], felt: hard}
note: Bring the long belt.
coach sets: {small: {warm up: 30 min, say: Hold back.}}
`,
  ),
];

const LIBRARY: readonly SourceFile[] = [
  library("warm-ups", "ankle-rocks"),
  library("recovery", "easy-spin"),
  library("cautions", "two-misses"),
  ...MOVEMENTS.slice(0, 2),
];

const BAND = file(
  "content/bands/regular-women.yaml",
  "title: Regular, women\norder: 2\nprofile:\n  level: regular\n  sex: female\n  division: women\n  body mass: 64 kg\n  lifts: {clean and jerk: 60 kg}\n",
);

const FOLDER = [...MOVEMENTS, GYM, COMPETITION, FIELD, SMALL, PLAIN];

/** All of the small folder, for texts that stand beside its files. */
export const WHOLE_FOLDER: readonly SourceFile[] = FOLDER;
export const MESSAGE_PATH = "content/message.txt";

const base = (weight: number, changed: SourceFile, around: readonly SourceFile[] = FOLDER): Base => ({
  file: changed,
  around: around.filter(({ path }) => path !== changed.path),
  weight,
});

/** Every kind of file a person writes, each inside a folder that is right without a change. */
export const BASES: readonly Base[] = [
  ...WORKOUTS.map((one) => base(4, one, [...MOVEMENTS, GYM, COMPETITION, FIELD, PLAIN])),
  ...ATHLETES.map((one) => base(10, one, [...MOVEMENTS, GYM, COMPETITION, FIELD, SMALL])),
  ...LIBRARY.map((one) => base(2, one)),
  base(4, GYM),
  base(3, COMPETITION),
  base(4, FIELD),
  base(3, SETTINGS),
  base(3, BAND),
];

/** Tables as people have them, for the intake. */
export const TABLES: readonly string[] = [
  'Name,Sex,DOB,Ht,Weight (kg),C&J (kg),2k row,max pull-ups,Injuries\nAna,F,3/4/1991,5\'7",63,"82,5",7:45,22,none\nBo,M,1988,182,84,120 kg,7:05.4,n/a,L shoulder sore\n',
  "\uFEFFNom;Poids;Épaulé-jeté;Small\r\nZoé;61,5;82,5;5:41\r\nLéa;58;70;71 reps\r\n",
  "Name\tLevel\tDivision\tThruster 3RM\tBW\nAda\tregular\twomen\t3x60\t64 kg\nCy\telite\tmen\t185 lb\t190 lb\n",
];

/** Logs as a brief writes them, for athletes and workouts of the folder. */
export const LOGS: readonly string[] = [
  `# Ana, small
results:
  - workout: small
    athlete: ana
    date: 2026-11-27
    time: 5:41
    splits: [1:02, 1:40, 2:50, 3:30, 4:30, 5:41]
    felt: hard
    note: "The second row was slow: next time easier."
`,
  "results:\n  - {workout: small, athlete: ana, date: 2026-11-27, reps: 71, splits: [1:02, '?', 3:25]}\n",
  "# Ana stopped before anything was done: dizzy\n",
];

/** Messages in a coach's own words. */
export const MESSAGES: readonly string[] = [
  'Hi <FirstName />, <Workout /> starts at <Start />.\nAim at <Target />, at <Split round="2" /> after two; half by <Half />.\n<Link />\n',
  '<Name />: thruster in <Sets of="thruster" round="1" />, open with <FirstLift />, <Load of="clean and jerk" share="70%" />. <Link />\n',
];
