import { dev } from "astro";
import { type CommonOptions, makeCommand, ROOT, readPort, run, surroundingsOf } from "./command.ts";
import { SHOWN_OPENLY } from "../site/shown-openly.ts";
import { readChecked } from "./read-checked.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & { readonly port: string };

await run(
  makeCommand("dev", "Shows the site while you write; a page changes when its file is saved.")
    .option("--port <number>", "port of this computer", "4321")
    .action(async (options: Options) => {
      const port = readPort(options.port);
      const surroundings = surroundingsOf(options);
      tellFaults(() => readChecked(surroundings, (text) => process.stderr.write(`${text}\n`)));
      Object.assign(process.env, {
        RIGSHEET_DATA: surroundings.dataFolder,
        RIGSHEET_DATE: surroundings.date,
        [SHOWN_OPENLY]: "yes",
        ASTRO_TELEMETRY_DISABLED: "1",
        ASTRO_DEV_BACKGROUND: "0",
      });
      const server = await dev({ root: ROOT, logLevel: "warn", server: { host: "localhost", port } });
      console.log(
        `Pages are shown unlocked, to you alone: http://localhost:${server.address.port}${surroundings.base}`,
      );
      console.log("Stop with Ctrl-C.");
    }),
);

/** Faults do not keep the site from being shown: what is right is shown, and a mended file shows at once. */
function tellFaults(read: () => unknown): void {
  try {
    read();
  } catch (error) {
    process.stderr.write(visibleText(`${error instanceof Error ? error.message : String(error)}\n\n`));
  }
}
