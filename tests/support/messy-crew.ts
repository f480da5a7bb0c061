import { createRandom } from "../../src/numerics/random.ts";

/** A table with the verdict of every cell: what stands in the file, `asked`, `refused`, or nothing. */
export type MessyTable = { readonly text: string; readonly verdicts: Readonly<Record<string, string>> };

/** How a value may be written, and what becomes of it. Worked out by hand, from the manual; not by the reader. */
type Spelling = (value: number) => readonly [written: string, verdict: string | undefined];

const LIFTS: readonly Spelling[] = [
  (kg) => [`${kg}`, `${kg} kg`],
  (kg) => [`${kg}`, `${kg} kg`],
  (kg) => [`${kg} kg`, `${kg} kg`],
  (kg) => [`${kg}kg`, `${kg} kg`],
  (kg) => [`${kg - 0.5}`.replace(".", ","), `${kg - 0.5} kg`],
  (kg) => [`~${kg}`, `~${kg} kg`],
  (kg) => [` ${kg} `, `${kg} kg`],
  (kg) => [`${kg} (2026-05-02)`, `${kg} kg (2026-05-02)`],
];
const ODD_LIFTS: readonly Spelling[] = [
  (kg) => [`${kg}-${kg + 5}`, "asked"],
  (kg) => [`5x${kg - 10}`, "asked"],
  () => ["#N/A", "refused"],
  () => ["999", "refused"],
  () => ["80% FS", "refused"],
  () => ["?", undefined],
  () => ["", undefined],
];
const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
const ROWS: readonly Spelling[] = [
  (s) => [clock(s), `row 2000 m in ${clock(s)}`],
  (s) => [`${Math.floor(s / 60)}m${s % 60}s`, `row 2000 m in ${clock(s)}`],
  (s) => [`${Math.floor(s / 60)}'${String(s % 60).padStart(2, "0")}"`, `row 2000 m in ${clock(s)}`],
  (s) => [`~${clock(s)}`, `row 2000 m in ~${clock(s)}`],
];
const ODD_ROWS: readonly Spelling[] = [
  (s) => [clock(s).replace(":", "."), "asked"],
  (s) => [`under ${clock(s)}`, "asked"],
  (s) => [`${clock(Math.round(s / 4))}/500m`, "asked"],
  () => ["#REF!", "refused"],
  () => ["", undefined],
];
const SETS: readonly Spelling[] = [
  (n) => [`${n}`, `${n}`],
  (n) => [`${n} reps`, `${n}`],
  () => ["none", "none"],
];
const ODD_SETS: readonly Spelling[] = [
  () => ["x", "asked"],
  () => ["n/a", undefined],
  () => ["many", "asked"],
];
const MASSES: readonly Spelling[] = [(kg) => [`${kg}`, `${kg} kg`], (kg) => [`${kg} kg`, `${kg} kg`]];
const ODD_MASSES: readonly Spelling[] = [
  () => ["6515", "asked"],
  () => ["4", "refused"],
  () => ["", undefined],
];

const FIRST = ["Ada", "Béla", "Çelik", "Dace", "Einar", "Finn", "Gösta", "Hana", "Ilse", "Jörn"];
const LAST = ["Aalto", "Brek", "Corvo", "Dahl", "Esk", "Fjord", "Grau", "Holt", "Irga", "Jasny"];
const TAIL = ["", " I", " II", " III", " IV", " V", " VI", " VII", " VIII", " IX", " X"];

/** A semicolon table of athletes with one odd cell in twelve, the same for the same seed. */
export function messyCrew(count: number, seed: number): MessyTable {
  const random = createRandom(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random.uniform() * list.length)] as T;
  const verdicts: Record<string, string> = {};
  const spell = (usual: readonly Spelling[], odd: readonly Spelling[], value: number) =>
    pick(random.uniform() < 1 / 12 ? odd : usual)(value);
  const lines = Array.from({ length: count }, (_, index) => {
    const name = `${FIRST[index % 10] ?? ""} ${LAST[Math.floor(index / 10) % 10] ?? ""}${TAIL[Math.floor(index / 100)] ?? ""}`;
    const mass = 55 + Math.floor(random.uniform() * 30);
    const squat = Math.round(mass * (1.3 + random.uniform() * 0.3));
    const cells: readonly (readonly [string, string | undefined])[] = [
      [name, undefined],
      ["regular", "regular"],
      spell(MASSES, ODD_MASSES, mass),
      spell(LIFTS, ODD_LIFTS, squat),
      spell(LIFTS, ODD_LIFTS, Math.round(squat * 0.7)),
      spell(ROWS, ODD_ROWS, 420 + Math.floor(random.uniform() * 100)),
      spell(SETS, ODD_SETS, 5 + Math.floor(random.uniform() * 20)),
    ];
    cells.forEach(([, verdict], column) => {
      if (verdict !== undefined) verdicts[`${"ABCDEFG"[column] ?? ""}${index + 2}`] = verdict;
    });
    return cells
      .map(([written]) => (/[";\n]/.test(written) ? `"${written.replaceAll('"', '""')}"` : written))
      .join(";");
  });
  return {
    text: ["Name;Level;Weight (kg);Back squat (kg);C&J (kg);2k row;max pull-ups", ...lines].join("\r\n"),
    verdicts,
  };
}
