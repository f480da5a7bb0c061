import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { Remember } from "../reading/files/remember.ts";
import type { SourceFile } from "../reading/files/source-file.ts";
import { codeStamp } from "./code-stamp.ts";
import { digestOf } from "./digest.ts";
import { seal, sealKey, unseal } from "./seal.ts";
import { OWN_FOLDER, prepareOwnFolder, readOrMakeSecret } from "./secret.ts";
import type { Surroundings } from "./surroundings.ts";
import { writeBytes } from "./write-safely.ts";

/** What was read before, and a way to keep it for the next time. */
type ReadMemory = { readonly remember: Remember; readonly save: () => void };

/** What is kept with the program: the library and the typical athletes of a few data folders that are worked with in turn. */
const MOST_KEPT = 8;
/** The name of what is kept of athletes. */
const NAME = "read";

/**
 * What was read of files before, as long as they and the program are the same. The library is kept with the program, since it
 * tells of nobody. Athletes are kept beside the secret and locked with it; where there is none yet, or not everything is read,
 * they are read anew. Whatever is wrong with what was kept, it is read anew.
 */
export function openReadMemory(places: Surroundings, isWhole: boolean): ReadMemory {
  const { root, dataFolder, audience } = places;
  const code = codeStamp(root);
  const key = isWhole && audience !== "gym" ? keyFor(places) : undefined;
  const file = join(dataFolder, OWN_FOLDER, "cache", NAME);
  const kept = key ? opened(file, key) : new Map<string, unknown>();
  const used = new Map<string, unknown>();
  const known = new WeakMap<readonly SourceFile[], string>();
  const markOf = (files: readonly SourceFile[]): string => {
    const mark = known.get(files) ?? digestOf(files);
    known.set(files, mark);
    return mark;
  };
  return {
    remember: (what, from, make) => {
      const mark = digestOf([code, what, from.map(markOf)]);
      if (what === "library") return rememberedLibrary(join(root, OWN_FOLDER, "library"), mark, make);
      if (!key) return make();
      const value = kept.has(mark) ? (kept.get(mark) as ReturnType<typeof make>) : make();
      used.set(mark, value);
      return value;
    },
    save: () => {
      if (!key || (used.size === kept.size && [...used.keys()].every((mark) => kept.has(mark)))) return;
      quietly(() => {
        prepareOwnFolder(dataFolder);
        mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
        writeBytes(file, seal(NAME, serialize(used), key));
      });
    },
  };
}

function rememberedLibrary<T>(folder: string, mark: string, make: () => T): T {
  const file = join(folder, mark);
  const before = quietly(() =>
    existsSync(file) ? (deserialize(readFileSync(file)) as { readonly value: T }) : undefined,
  );
  if (before) return before.value;
  const value = make();
  quietly(() => {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const kept = readdirSync(folder)
      .map((name) => ({ name, at: statSync(join(folder, name)).mtimeMs }))
      .toSorted((one, other) => other.at - one.at);
    for (const { name } of kept.slice(MOST_KEPT - 1)) rmSync(join(folder, name));
    writeBytes(file, serialize({ value }));
  });
  return value;
}

/** The key of what is kept of athletes; nothing where no secret was made yet. */
function keyFor(places: Surroundings): Uint8Array | undefined {
  const { dataFolder, secret } = places;
  if (secret === undefined && !existsSync(join(dataFolder, OWN_FOLDER, "secret"))) return undefined;
  // A secret that cannot be used is told by whoever needs it.
  const bytes = quietly(() => readOrMakeSecret(places).bytes);
  return bytes && sealKey(bytes, "key of what was read");
}

function opened(file: string, key: Uint8Array): ReadonlyMap<string, unknown> {
  const read = quietly((): unknown =>
    existsSync(file) ? deserialize(unseal(NAME, readFileSync(file), key)) : undefined,
  );
  return read instanceof Map ? (read as ReadonlyMap<string, unknown>) : new Map<string, unknown>();
}

/** Does what may fail without harm. */
function quietly<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
