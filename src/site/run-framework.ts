import { HANDED } from "./handed-data.ts";
import { SHOWN_OPENLY } from "./shown-openly.ts";
import type { Surroundings } from "./surroundings.ts";

/** What the framework renders from, and where to. */
export type FrameworkRun = Pick<Surroundings, "root" | "dataFolder" | "base" | "origin" | "date"> & {
  /** The folder pages are rendered into. */
  readonly fresh: string;
  /** The file that holds what it may know. */
  readonly handed: string;
};

/** Renders the public pages. It changes the environment of its process, which is to be its own. */
export async function runFramework(run: FrameworkRun): Promise<void> {
  setEnvironment(run);
  const { build } = await import("astro");
  // Its own lines would print every address; what has to be said is said by us.
  await build({ root: run.root, logLevel: "silent" });
}

/** Astro reads its configuration from files and the environment; this is the way to hand it ours. */
function setEnvironment({ dataFolder, base, origin, date, fresh, handed }: FrameworkRun): void {
  Object.assign(process.env, {
    RIGSHEET_OUT: fresh,
    RIGSHEET_DATA: dataFolder,
    RIGSHEET_BASE: base,
    RIGSHEET_SITE: origin ?? "",
    RIGSHEET_AUDIENCE: "gym",
    RIGSHEET_DATE: date,
    [HANDED]: handed,
    [SHOWN_OPENLY]: "",
    NODE_ENV: "production",
    ASTRO_TELEMETRY_DISABLED: "1",
  });
}
