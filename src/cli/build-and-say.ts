import { relative, resolve } from "node:path";
import { visibleText } from "../models/visible-text.ts";
import { buildShard, buildSite } from "../site/build-site.ts";
import { settleFormerAthletes } from "../site/former-athletes.ts";
import { readOrMakeSecret } from "../site/secret.ts";
import type { Shard } from "../site/shard.ts";
import type { Audience } from "../site/surroundings.ts";
import { type CommonOptions, ROOT, surroundingsOf } from "./command.ts";
import { counted } from "./counted.ts";
import { progressLine } from "./progress-line.ts";
import { readChecked, readUsable } from "./read-checked.ts";
import { sayBuilt } from "./say-built.ts";
import { sayFormer } from "./say-former.ts";
import { sayUnmade } from "./say-unmade.ts";

/** What commands that make a site are asked for. */
export type BuildOptions = CommonOptions & {
  readonly audience?: Audience;
  readonly out: string;
  readonly strict?: true;
  readonly threads?: number;
  /** Makes this part alone. */
  readonly shard?: Shard;
  /** Folders of parts that are put together. */
  readonly shards?: readonly string[];
};

/** Makes a site, or a part of one, and says what was made, on the output; what was not, on the error output. */
export async function buildAndSay(options: BuildOptions): Promise<void> {
  const started = performance.now();
  const { audience, shard, shards, threads } = options;
  const surroundings = surroundingsOf(options, audience ? { RIGSHEET_AUDIENCE: audience } : {});
  const tell = (text: string): unknown => process.stderr.write(`${visibleText(text)}\n`);
  const { data, faults } = options.strict
    ? { data: readChecked(surroundings, tell), faults: [] }
    : readUsable(surroundings, tell);
  const secret = surroundings.audience === "gym" ? undefined : readOrMakeSecret(surroundings);
  const former = secret ? settleFormerAthletes(surroundings.dataFolder, data) : [];
  if (former.length > 0) tell(`${sayFormer(former)}\n`);
  const target = resolve(ROOT, options.out);
  const line = progressLine(process.stderr);
  const strict = options.strict === true;
  const request = { surroundings, data, target, strict, threads, shards, progress: line.show };
  const folder = relative(process.cwd(), target) || target;
  if (shard) {
    const { failed, made } = await buildShard(request, shard).finally(line.clear);
    console.log(
      `Shard ${shard.number} of ${shard.of} in ${folder}/, ${counted(made, "brief")} made anew. It is no site yet: npm run merge puts all of them together.`,
    );
    endWith(sayUnmade({ data, made: { failed, kept: 0 }, faults }));
    return;
  }
  const made = await buildSite(request).finally(line.clear);
  const seconds = (performance.now() - started) / 1000;
  console.log(visibleText(sayBuilt({ data, surroundings, made, secret, folder, seconds })));
  endWith(sayUnmade({ data, made, faults }));
}

function endWith(unmade: string | undefined): void {
  if (unmade === undefined) return;
  process.stderr.write(`\n${unmade}\n`);
  process.exitCode = 1;
}
