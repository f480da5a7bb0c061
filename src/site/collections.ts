import { isAbsolute, join, relative } from "node:path";
import type { Loader, LoaderContext } from "astro/loaders";
import type { Usable } from "../models/data.ts";
import { sayFaults } from "../reading/say-fault.ts";
import { entriesOf, type Kind, KINDS, PERSONAL, type StoredEntry } from "./entries.ts";
import { HANDED, takeHanded } from "./handed-data.ts";
import { entriesOfReading, READING } from "./last-reading.ts";
import { loadUsable } from "./load-data.ts";
import { readOrMakeSecret } from "./secret.ts";
import { sealEntries } from "./sealed-entries.ts";
import type { Surroundings } from "./surroundings.ts";

/** Milliseconds to wait for an editor to finish writing several files. */
const SETTLE = 60;

type Collection = Kind | typeof READING;
type Fill = (read: Usable) => Promise<void>;

/**
 * A loader for each kind of thing people write, and one for what the reading came to. All of them come from one reading of
 * all files, because names in one file lead to another. What has faults is left out; where nothing can be used a build stops
 * with every fault told, and while developing the last good data stays. A mended file shows at once.
 */
export function checkedLoaders(surroundings: Surroundings): Readonly<Record<Collection, Loader>> {
  const fills = new Map<Collection, Fill>();
  let reading: Usable | undefined;
  const read = (): Usable => (reading ??= readOnce(surroundings));
  const refresh = async (logger: LoaderContext["logger"]): Promise<void> => {
    const before = reading?.value;
    const { value, faults, notices } = readOnce(surroundings);
    const shown = value ?? before;
    reading = { ...(shown ? { value: shown } : {}), faults, notices };
    const kept = value ? "" : "\n\nThe pages show what was there before.";
    if (faults.length > 0) logger.error(`\n${sayFaults(faults)}${kept}`);
    for (const fill of fills.values()) await fill(reading);
  };
  const loaderOf = (collection: Collection): Loader => ({
    name: `rigsheet-${collection}`,
    async load(context) {
      // The first loader to come watches for all.
      if (context.watcher && fills.size === 0)
        watch(context.watcher, surroundings, () => refresh(context.logger));
      const fill: Fill = (usable) => fillStore(collection, usable, context, surroundings);
      fills.set(collection, fill);
      const { value, faults } = read();
      if (!value && !context.watcher) throw new Error(sayFaults(faults));
      if (!value && fills.size === 1) context.logger.error(`\n${sayFaults(faults)}`);
      return fill(read());
    },
  });
  const all: readonly Collection[] = [...KINDS, READING];
  return Object.fromEntries(all.map((one) => [one, loaderOf(one)])) as Record<Collection, Loader>;
}

/** What a build has read and checked already, else all files. */
function readOnce(surroundings: Surroundings): Usable {
  const handed = process.env[HANDED];
  return handed ? { value: takeHanded(handed), faults: [], notices: [] } : loadUsable(surroundings);
}

/** Puts what was read of a collection into the store. */
async function fillStore(
  collection: Collection,
  read: Usable,
  context: LoaderContext,
  surroundings: Surroundings,
): Promise<void> {
  const entries =
    collection === READING ? entriesOfReading(read) : read.value ? entriesOf(collection, read.value) : [];
  const stored = await asStored(collection, entries, surroundings);
  const { store } = context;
  const ids = new Set(stored.map(({ id }) => id));
  for (const id of store.keys()) if (!ids.has(id)) store.delete(id);
  for (const { id, ...data } of stored)
    store.set({ id, data, digest: context.generateDigest(JSON.stringify(data)) });
}

async function asStored(
  collection: Collection,
  entries: readonly StoredEntry[],
  surroundings: Surroundings,
): Promise<readonly StoredEntry[]> {
  const isPersonal = collection === READING || PERSONAL.includes(collection);
  if (!isPersonal || surroundings.audience === "gym" || entries.length === 0) return entries;
  return sealEntries(entries, readOrMakeSecret(surroundings).bytes);
}

function watch(
  watcher: NonNullable<LoaderContext["watcher"]>,
  { dataFolder }: Surroundings,
  changed: () => Promise<void>,
): void {
  const folders = ["content", "athletes"].map((name) => join(dataFolder, name));
  let timer: NodeJS.Timeout | undefined;
  watcher.add(folders);
  watcher.on("all", (_event, path) => {
    const ours = folders.some((folder) => {
      const inside = relative(folder, path);
      return !inside.startsWith("..") && !isAbsolute(inside);
    });
    if (!ours) return;
    clearTimeout(timer);
    timer = setTimeout(() => void changed(), SETTLE);
  });
}
