/** What the browser's own database holds: openers of pages, and logs of days. */
type StoreName = "openers" | "days";

const STORES: readonly StoreName[] = ["openers", "days"];
const VERSION = 2;

function openStore(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open("rigsheet", VERSION);
    request.onupgradeneeded = () => {
      for (const name of STORES)
        if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
    };
    request.onsuccess = () => {
      // A page of an older edition that stands open must not keep a newer one waiting.
      request.result.onversionchange = () => {
        request.result.close();
      };
      resolve(request.result);
    };
    request.onblocked = () => {
      reject(new Error("another page holds the store"));
    };
    request.onerror = () => {
      reject(request.error ?? new Error("no store"));
    };
  });
}

/** Does one thing in one of the stores, and waits until it stands on the device. */
export async function inStore<T>(
  name: StoreName,
  mode: IDBTransactionMode,
  use: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await openStore();
  try {
    const transaction = database.transaction(name, mode, { durability: "strict" });
    const request = use(transaction.objectStore(name));
    return await new Promise<T>((resolve, reject) => {
      transaction.oncomplete = () => {
        resolve(request.result);
      };
      transaction.onabort = () => {
        reject(transaction.error ?? request.error ?? new Error("no answer"));
      };
    });
  } finally {
    database.close();
  }
}

/** Takes something out of a store; a browser that keeps nothing has nothing to take out. */
export async function dropFrom(name: StoreName, key: string): Promise<void> {
  try {
    await inStore(name, "readwrite", (store) => store.delete(key) as IDBRequest<unknown>);
  } catch {
    // Nothing was kept.
  }
}
