import { appendFileSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { differences, keepWhatAgrees } from "./agree.ts";
import { noteOfChange } from "./note-of-change.ts";
import { pinnedWorkouts } from "./pinned-plans.ts";

// Makes the pinned plans again and, where a cause is given, notes the change: npm run pin -- "why the numbers moved"
const cause = process.argv.slice(2).join(" ").trim();
const workouts = pinnedWorkouts();
const moved = workouts.flatMap(({ name, kept, now }) => {
  const lines = differences(kept, now);
  return lines.length > 0 ? [{ name, lines }] : [];
});

for (const { path, kept, now } of workouts) {
  const text = keepWhatAgrees(kept, now);
  if (text === kept) continue;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

const plans = fileURLToPath(new URL("plans/", import.meta.url));
for (const file of readdirSync(plans, { recursive: true, encoding: "utf8" })) {
  const gone = file.endsWith(".txt") && !workouts.some(({ name }) => `${name}.txt` === file);
  if (gone) rmSync(plans + file);
}

if (moved.length === 0) {
  console.log("Every pinned number is as it was kept.");
} else {
  const note = noteOfChange(cause || "(no cause given)", moved);
  if (cause) appendFileSync(fileURLToPath(new URL("CHANGES.md", import.meta.url)), `\n${note}`);
  console.log(note);
  console.log(
    cause
      ? "Noted in tests/pinned/CHANGES.md."
      : 'Not noted, which is right after a merge only. Else: git checkout tests/pinned/plans, then npm run pin -- "the cause".',
  );
}
