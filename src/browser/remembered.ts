/** How long a device opens a page without its key after the reader asked for it. */
const DAYS_KEPT = 45;
const MILLISECONDS_A_DAY = 86_400_000;

type Kept = { readonly opener: CryptoKey; readonly until: number };

const STORE = "openers";

/** The browser's own database. The opener in it can be used but not read out. */
function openStore(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open("rigsheet", 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => {
      resolve(request.result);
    };
    request.onerror = () => {
      reject(request.error ?? new Error("no store"));
    };
  });
}

async function inStore<T>(
  mode: IDBTransactionMode,
  use: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await openStore();
  try {
    const request = use(database.transaction(STORE, mode).objectStore(STORE));
    return await new Promise<T>((resolve, reject) => {
      request.onsuccess = () => {
        resolve(request.result);
      };
      request.onerror = () => {
        reject(request.error ?? new Error("no answer"));
      };
    });
  } finally {
    database.close();
  }
}

/** The opener this device keeps for a page, unless its time is over. Nothing where the browser keeps nothing. */
export async function rememberedOpener(address: string, now: number): Promise<CryptoKey | undefined> {
  try {
    const kept =
      (await inStore("readonly", (store) => store.get(address) as IDBRequest<Kept | undefined>)) ?? undefined;
    if (!kept || kept.until >= now) return kept?.opener;
    await forgetOpener(address);
    return undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the opener of a page on this device. Says whether it could. */
export async function rememberOpener(address: string, opener: CryptoKey, now: number): Promise<boolean> {
  const kept: Kept = { opener, until: now + DAYS_KEPT * MILLISECONDS_A_DAY };
  try {
    await inStore("readwrite", (store) => store.put(kept, address));
    return true;
  } catch {
    return false;
  }
}

/** Forgets the opener of a page. */
export async function forgetOpener(address: string): Promise<void> {
  try {
    await inStore("readwrite", (store) => store.delete(address) as IDBRequest<unknown>);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
