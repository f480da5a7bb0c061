/** Name of the store of locked pages; the worker beside uses the same. */
const KEPT_PAGES = "rigsheet-locked-1";

/**
 * Keeps what a page is made of on this device, as it came: locked, with its style, script and fonts. Says whether it
 * could. Nothing that was opened is ever kept.
 *
 * @param besides addresses the page will ask for later, and must find without network
 */
export async function keepPage(worker: string, besides: readonly string[]): Promise<boolean> {
  if (!("serviceWorker" in navigator) || !("caches" in globalThis)) return false;
  try {
    await navigator.serviceWorker.register(worker);
    const store = await caches.open(KEPT_PAGES);
    await Promise.all([...addressesOf(document), ...besides].map((address) => keep(store, address)));
    return true;
  } catch {
    return false;
  }
}

/** The page itself without its key, and every style, script and font it asked for. */
function addressesOf({ baseURI }: Document): readonly string[] {
  const own = new URL(baseURI);
  own.hash = "";
  const parts = performance
    .getEntriesByType("resource")
    .map(({ name }) => name)
    .filter((name) => name.startsWith(own.origin) && /\.(css|js|woff2)$/.test(new URL(name).pathname));
  return [own.href, ...new Set(parts)];
}

async function keep(store: Cache, address: string): Promise<void> {
  const response = await fetch(address, { cache: "force-cache" });
  if (response.ok) await store.put(address, response);
}

/** Keeps a locked file after it was fetched, so that it can be saved again without network. */
export async function keepFile(address: string, response: Response): Promise<void> {
  try {
    await (await caches.open(KEPT_PAGES)).put(address, response);
  } catch {
    // Keeping is a courtesy; a full or private device does without.
  }
}

/** Forgets a page and its files. */
export async function forgetPage(pageUrl: string): Promise<void> {
  try {
    const store = await caches.open(KEPT_PAGES);
    const requests = await store.keys();
    const own = requests.filter(({ url }) => url.startsWith(pageUrl));
    await Promise.all(own.map((request) => store.delete(request)));
  } catch {
    // Nothing was kept.
  }
}
