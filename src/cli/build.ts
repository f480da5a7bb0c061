import { relative, resolve } from "node:path";
import { InvalidArgumentError, Option } from "commander";
import { buildSite } from "../site/build-site.ts";
import { settleFormerAthletes } from "../site/former-athletes.ts";
import { readOrMakeSecret } from "../site/secret.ts";
import { AUDIENCES, type Audience } from "../site/surroundings.ts";
import { type CommonOptions, makeCommand, ROOT, run, surroundingsOf } from "./command.ts";
import { progressLine } from "./progress-line.ts";
import { readChecked, readUsable } from "./read-checked.ts";
import { sayBuilt } from "./say-built.ts";
import { sayFormer } from "./say-former.ts";
import { sayUnmade } from "./say-unmade.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & {
  readonly audience?: Audience;
  readonly out: string;
  readonly strict?: true;
  readonly threads?: number;
};

await run(
  makeCommand("build", "Makes the site. A build that fails leaves the last good one in place.")
    .addOption(
      new Option(
        "--audience <who>",
        "gym: the strategy pages alone, no athlete is read (RIGSHEET_AUDIENCE)",
      ).choices(AUDIENCES),
    )
    .option("--out <folder>", "folder the site is put into", "dist")
    .option("--strict", "make nothing at all where any file has faults")
    .option("--threads <number>", "threads to work in; as many as there are cores, up to six", readThreads)
    .action(async (options: Options) => {
      const started = performance.now();
      const { audience } = options;
      const surroundings = surroundingsOf(options, audience ? { RIGSHEET_AUDIENCE: audience } : {});
      const tell = (text: string): unknown => process.stderr.write(`${text}\n`);
      const { data, faults } = options.strict
        ? { data: readChecked(surroundings, tell), faults: [] }
        : readUsable(surroundings, tell);
      const secret = surroundings.audience === "gym" ? undefined : readOrMakeSecret(surroundings);
      const former = secret ? settleFormerAthletes(surroundings.dataFolder, data) : [];
      if (former.length > 0) tell(`${sayFormer(former)}\n`);
      const target = resolve(ROOT, options.out);
      const progress = progressLine(process.stderr);
      const made = await buildSite({
        surroundings,
        data,
        target,
        strict: options.strict === true,
        threads: options.threads,
        progress: progress.show,
      }).finally(progress.clear);
      const seconds = (performance.now() - started) / 1000;
      const shown = relative(process.cwd(), target) || target;
      console.log(visibleText(sayBuilt({ data, surroundings, made, secret, folder: shown, seconds })));
      const unmade = sayUnmade({ data, made, faults });
      if (unmade === undefined) return;
      tell(`\n${unmade}`);
      process.exitCode = 1;
    }),
);

function readThreads(written: string): number {
  const threads = /^\d{1,2}$/.test(written) ? Number(written) : 0;
  if (threads >= 1) return threads;
  throw new InvalidArgumentError("Write a whole number from 1 to 99.");
}
