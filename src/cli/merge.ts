import { resolve } from "node:path";
import { buildAndSay, type BuildOptions } from "./build-and-say.ts";
import { makeCommand, run, USUAL_FOLDER } from "./command.ts";
import { readThreads } from "./read-threads.ts";

await run(
  makeCommand("merge", "Puts the parts of a build made on several machines together to one site.")
    .argument("<shards...>", "folders made by npm run build -- --shard")
    .option("--out <folder>", "folder the site is put into", USUAL_FOLDER)
    .option("--strict", "make nothing at all where any file has faults")
    .option("--threads <number>", "threads to work in; as many as there are cores, up to six", readThreads)
    .allowExcessArguments(true)
    .action((shards: readonly string[], options: BuildOptions) =>
      buildAndSay({ ...options, audience: "everyone", shards: shards.map((folder) => resolve(folder)) }),
    ),
);
