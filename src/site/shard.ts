import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { fromUtf8, utf8 } from "../lock/bytes.ts";
import { sealSecret } from "../lock/derive.ts";
import { lock, openWith } from "../lock/envelope.ts";
import { type BriefCache, placeFile } from "./brief-cache.ts";
import { BuildFailure } from "./build-failure.ts";

/** Part of a build that one of several machines makes: the second of eight. */
export type Shard = { readonly number: number; readonly of: number };

const SEAL = "shard";
const PAGES = "pages";
const STEP = 256;
const MOST = 1000;

const sealField = z.strictObject({
  number: z.int(),
  of: z.int(),
  from: z.string().describe("mark of everything the whole site is made from"),
});

/** Reads `2/8`. Nothing where it is no part of a whole. */
export function readShard(written: string): Shard | undefined {
  const [number = 0, of = 0] = /^(\d{1,4})\/(\d{1,4})$/.exec(written)?.slice(1).map(Number) ?? [];
  return number >= 1 && number <= of && of <= MOST ? { number, of } : undefined;
}

/**
 * Whether an athlete belongs to a shard: by a hash of the id alone, so that everybody stays where they are when others come
 * or go.
 */
export function isInShard(athlete: string, { number, of }: Shard): boolean {
  return createHash("sha256").update(athlete).digest().readUInt32BE(0) % of === number - 1;
}

/** Puts entries of a cache into a folder as a shard, with the mark of what the whole site is made from, sealed. */
export async function writeShard(
  folder: string,
  { cache, addresses, from, shard }: ShardContent,
): Promise<void> {
  for (const address of addresses) copyEntry(join(cache.folder, address), join(folder, PAGES, address));
  const content = { name: SEAL, bytes: utf8(JSON.stringify({ ...shard, from })), step: STEP };
  writeFileSync(join(folder, SEAL), await lock(content, { key: cache.key }));
}

type ShardContent = {
  readonly cache: BriefCache;
  readonly addresses: readonly string[];
  readonly from: string;
  readonly shard: Shard;
};

const hasSeal = (folder: string): boolean => existsSync(join(folder, SEAL));

/** An address of a locked page, by which its entry is called. */
const ADDRESS = /^[0-9A-Z]{16}$/;

/** Whether a folder holds a shard and nothing else, so that another may take its place. */
function isShardAlone(folder: string): boolean {
  const pages = join(folder, PAGES);
  return (
    hasSeal(folder) &&
    statSync(join(folder, SEAL)).isFile() &&
    readdirSync(folder).every((name) => name === SEAL || name === PAGES) &&
    (!existsSync(pages) ||
      (statSync(pages).isDirectory() && readdirSync(pages).every((name) => ADDRESS.test(name))))
  );
}

/**
 * Takes what shards hold into a cache, after they were found to be all of one build of these files.
 *
 * @throws BuildFailure that tells what does not fit.
 */
export async function adoptShards(
  folders: readonly string[],
  cache: BriefCache,
  from: string,
): Promise<void> {
  const shards = await Promise.all(
    folders.map(async (folder) => ({ folder, ...(await openSeal(folder, cache)) })),
  );
  const troubles = troublesOf(shards, from);
  if (troubles.length > 0) throw new BuildFailure(`The shards do not make a site.\n${troubles.join("\n")}`);
  for (const { folder } of shards) {
    const pages = join(folder, PAGES);
    for (const address of existsSync(pages) ? readdirSync(pages) : []) {
      const fresh = join(cache.folder, `${address}.${process.pid}.new`);
      copyEntry(join(pages, address), fresh);
      rmSync(join(cache.folder, address), { recursive: true, force: true });
      renameSync(fresh, join(cache.folder, address));
    }
  }
}

type Opened = { readonly folder: string; readonly seal?: z.infer<typeof sealField> | undefined };

async function openSeal(folder: string, { key }: BriefCache): Promise<Omit<Opened, "folder">> {
  if (!hasSeal(folder))
    throw new BuildFailure(
      `${folder} holds no shard. Make it with npm run build -- --shard 1/2 --out ${folder}.`,
    );
  try {
    const opened = await openWith(
      SEAL,
      Uint8Array.from(readFileSync(join(folder, SEAL))),
      await sealSecret(key),
    );
    return { seal: opened.ok ? sealField.parse(JSON.parse(fromUtf8(opened.bytes))) : undefined };
  } catch {
    return {};
  }
}

/** Everything that keeps shards from making one site, a line each. */
function troublesOf(shards: readonly Opened[], from: string): readonly string[] {
  const unopened = shards.filter(({ seal }) => seal === undefined);
  const seals = shards.flatMap(({ folder, seal }) => (seal ? [{ folder, ...seal }] : []));
  const of = seals[0]?.of ?? 0;
  const uneven = seals.filter((one) => one.of !== of);
  const others = seals.filter((one) => one.from !== from);
  const fitting = seals.filter((one) => one.of === of);
  const numbers = fitting.map(({ number }) => number);
  const missing = Array.from({ length: of }, (_, index) => index + 1).filter(
    (number) => !numbers.includes(number),
  );
  const twice = fitting.filter(({ number }, at) => numbers.indexOf(number) < at);
  return [
    ...unopened.map(({ folder }) => `  ${folder}: made with another site secret, or damaged.`),
    ...uneven.map((one) => `  ${one.folder}: is one of ${one.of} shards, the first named one of ${of}.`),
    ...others.map(
      ({ folder }) =>
        `  ${folder}: made from other files, by another version of the program, for another day or another place on the host.`,
    ),
    ...twice.map(({ folder, number }) => `  ${folder}: shard ${number} of ${of} is named twice.`),
    ...(unopened.length === 0 ? missing.map((number) => `  Shard ${number} of ${of} is missing.`) : []),
  ];
}

function copyEntry(from: string, to: string): void {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(to, { recursive: true, mode: 0o700 });
  for (const name of readdirSync(from)) placeFile(join(from, name), join(to, name));
}

/**
 * Makes sure that a folder may be replaced by a shard: it must be missing or empty, or hold another shard and nothing else.
 *
 * @throws BuildFailure where something would be lost.
 */
export function settleShardTarget(target: string): void {
  if (existsSync(target) && readdirSync(target).length > 0 && !isShardAlone(target)) {
    throw new BuildFailure(`${target} holds something that is no shard. Name another folder with --out.`);
  }
}

/** Puts a finished shard in its place. */
export function placeShard(fresh: string, target: string): void {
  settleShardTarget(target);
  rmSync(target, { recursive: true, force: true });
  mkdirSync(join(target, ".."), { recursive: true });
  cpSync(fresh, target, { recursive: true });
}
