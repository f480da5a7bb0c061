import type { Data, Unmade } from "../models/data.ts";
import type { Fault } from "../models/fault.ts";
import { visibleText } from "../models/visible-text.ts";
import type { SiteMade } from "../site/build-site.ts";
import { counted } from "./counted.ts";

type Left = {
  readonly data: Data;
  readonly made: Pick<SiteMade, "failed" | "kept">;
  readonly faults: readonly Fault[];
};

/** What could not be made and why, one line each; nothing where everything was made and no file has faults. */
export function sayUnmade({ data, made, faults }: Left): string | undefined {
  const { unmade, athletes, workouts } = data;
  const { failed, kept } = made;
  if (unmade.length + failed.length === 0) {
    const files = [...new Set(faults.map(({ place }) => place.file))];
    return files.length === 0
      ? undefined
      : `Made without ${files.join(", ")}; what is wrong there stands above.`;
  }
  const nameOf = (id: string): string => athletes.find((one) => one.id === id)?.name ?? id;
  const titleOf = (id: string): string => workouts.find((one) => one.id === id)?.title ?? id;
  const lines = [
    "Not made this time:",
    ...unmade.map((one) => `  ${sayOne(one)}`),
    ...failed.map(({ athlete, workout, file, problem }) =>
      file === undefined
        ? `  ${nameOf(athlete)}, ${titleOf(workout)}: the program failed (${problem}). Please report it with both files.`
        : `  ${file}, for ${nameOf(athlete)}, ${titleOf(workout)}: ${problem}`,
    ),
    ...(kept > 0
      ? [`${counted(kept, "brief")} of the build before stay as they were; the board says of which day.`]
      : []),
    "Everything else was made. Mend what is named above and build again; --strict makes nothing where anything is wrong.",
  ];
  // A name that was refused for its control signs stands here too.
  return visibleText(lines.join("\n"));
}

function sayOne({ kind, name, file, why }: Unmade): string {
  const [first] = why;
  const own = why.filter(({ place }) => place.file === file);
  const where = own.length > 0 || kind === "brief" ? file : `${file} needs ${first?.place.file ?? ""}`;
  const more = why.length > 1 ? `, and ${counted(why.length - 1, "more fault")}` : "";
  const line = own.length > 0 ? `:${first?.place.line}:${first?.place.column}` : "";
  const at = first
    ? `${where === file ? line : `:${first.place.line}:${first.place.column}`}: ${first.problem}`
    : "";
  return `${name} (${where}${at}${more})`;
}
