import { resolve } from "node:path";
import {
  makeCommand,
  ROOT,
  readPort,
  run,
  surroundingsOf,
  USUAL_FOLDER,
  type CommonOptions,
} from "./command.ts";
import { serveFolder } from "../site/serve-folder.ts";

type Options = CommonOptions & { readonly port: string; readonly out: string };

await run(
  makeCommand("preview", "Shows the finished site on this computer, locked as it will be on its host.")
    .option("--port <number>", "port of this computer", "4322")
    .option("--out <folder>", "folder of the site", USUAL_FOLDER)
    .action(async (options: Options) => {
      const { base } = surroundingsOf(options);
      const { address } = await serveFolder(resolve(ROOT, options.out), base, readPort(options.port));
      console.log(`The site as it was built: ${address}${base}`);
      console.log(`Links that open its pages here: RIGSHEET_SITE=${address} npm run links`);
      console.log("Stop with Ctrl-C.");
    }),
);
