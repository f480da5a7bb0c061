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

/** The page itself without its key, every style, script and font its head names, and those it asked for besides. */
function addressesOf(page: Document): readonly string[] {
  const own = new URL(page.baseURI);
  own.hash = "";
  const named = [
    ...[...page.querySelectorAll<HTMLLinkElement>("link[href]")].map(({ href }) => href),
    ...[...page.scripts].map(({ src }) => src),
  ];
  // Alphabets beyond the Latin one are asked for by the style alone, and only where a letter needs them.
  const asked = performance.getEntriesByType("resource").map(({ name }) => name);
  const parts = [...named, ...asked].filter(
    (address) => address.startsWith(own.origin) && /\.(css|js|woff2)$/.test(new URL(address).pathname),
  );
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
