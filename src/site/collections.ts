import { isAbsolute, join, relative } from "node:path";
import type { Loader, LoaderContext } from "astro/loaders";
import type { Data, Usable } from "../models/data.ts";
import { sayFaults } from "../reading/say-fault.ts";
import { entriesOf, type Kind, KINDS, PERSONAL } from "./entries.ts";
import { HANDED, takeHanded } from "./handed-data.ts";
import { loadUsable } from "./load-data.ts";
import { readOrMakeSecret } from "./secret.ts";
import { sealEntries } from "./sealed-entries.ts";
import type { Surroundings } from "./surroundings.ts";

/** Milliseconds to wait for an editor to finish writing several files. */
const SETTLE = 60;

type Fill = (data: Data) => Promise<void>;

/**
 * A loader for each kind of thing people write. All of them come from one reading of all files, because names in one file
 * lead to another. What has faults is left out; where nothing can be used a build stops with every fault told, and while
 * developing the last good data stays. A mended file shows at once.
 */
export function checkedLoaders(surroundings: Surroundings): Readonly<Record<Kind, Loader>> {
  const fills = new Map<Kind, Fill>();
  let reading: Usable | undefined;
  const read = (): Usable => (reading ??= readOnce(surroundings));
  const refresh = async (logger: LoaderContext["logger"]): Promise<void> => {
    reading = undefined;
    const { value, faults } = read();
    const kept = value ? "" : "\n\nThe pages show what was there before.";
    if (faults.length > 0) logger.error(`\n${sayFaults(faults)}${kept}`);
    if (value) for (const fill of fills.values()) await fill(value);
  };
  const loaderOf = (kind: Kind): Loader => ({
    name: `rigsheet-${kind}`,
    async load(context) {
      // The first loader to come watches for all.
      if (context.watcher && fills.size === 0)
        watch(context.watcher, surroundings, () => refresh(context.logger));
      const fill: Fill = (data) => fillStore(kind, data, context, surroundings);
      fills.set(kind, fill);
      const { value, faults } = read();
      if (value) return fill(value);
      if (!context.watcher) throw new Error(sayFaults(faults));
      if (fills.size === 1) context.logger.error(`\n${sayFaults(faults)}`);
    },
  });
  return Object.fromEntries(KINDS.map((kind) => [kind, loaderOf(kind)])) as Record<Kind, Loader>;
}

/** What a build has read and checked already, else all files. */
function readOnce(surroundings: Surroundings): Usable {
  const handed = process.env[HANDED];
  return handed ? { value: takeHanded(handed), faults: [], notices: [] } : loadUsable(surroundings);
}

async function fillStore(
  kind: Kind,
  data: Data,
  context: LoaderContext,
  surroundings: Surroundings,
): Promise<void> {
  const { store } = context;
  const entries = entriesOf(kind, data);
  const stored =
    PERSONAL.includes(kind) && surroundings.audience !== "gym" && entries.length > 0
      ? await sealEntries(entries, readOrMakeSecret(surroundings).bytes)
      : entries;
  const ids = new Set(stored.map(({ id }) => id));
  for (const id of store.keys()) if (!ids.has(id)) store.delete(id);
  for (const { id, ...data } of stored) {
    store.set({ id, data, digest: context.generateDigest(JSON.stringify(data)) });
  }
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
