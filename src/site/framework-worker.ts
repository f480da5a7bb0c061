import { bundleInto } from "./bundle-into.ts";
import { explained } from "./explain.ts";
import { type FrameworkRun, runFramework } from "./run-framework.ts";

// A build that is stopped or killed leaves nobody to work for.
process.once("disconnect", () => process.exit(1));

/** Renders the public pages, in this process. */
export const render = (run: FrameworkRun): Promise<void> => explained(runFramework(run));

/** Bundles the program of the threads, in this process. */
export const bundle = ({ root, folder }: { readonly root: string; readonly folder: string }): Promise<void> =>
  explained(bundleInto(root, folder));
