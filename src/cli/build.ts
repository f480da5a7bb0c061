import { InvalidArgumentError, Option } from "commander";
import { readShard, type Shard } from "../site/shard.ts";
import { AUDIENCES } from "../site/surroundings.ts";
import { buildAndSay, type BuildOptions } from "./build-and-say.ts";
import { makeCommand, run, USUAL_FOLDER } from "./command.ts";
import { readThreads } from "./read-threads.ts";

await run(
  makeCommand("build", "Makes the site. A build that fails leaves the last good one in place.")
    .addOption(
      new Option(
        "--audience <who>",
        "gym: the strategy pages alone, no athlete is read (RIGSHEET_AUDIENCE)",
      ).choices(AUDIENCES),
    )
    .option("--out <folder>", "folder the site is put into", USUAL_FOLDER)
    .option("--strict", "make nothing at all where any file has faults")
    .option("--threads <number>", "threads to work in; as many as there are cores, up to six", readThreads)
    .option(
      "--shard <part>",
      "make one of several parts, such as 2/8 for the second of eight; npm run merge puts them together",
      shardAsked,
    )
    .action((options: BuildOptions) => buildAndSay(options)),
);

function shardAsked(written: string): Shard {
  const shard = readShard(written);
  if (shard) return shard;
  throw new InvalidArgumentError("Write which part of how many, such as 2/8 for the second of eight.");
}
