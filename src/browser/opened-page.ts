/** A page that was opened: where it stands, what opens its files, and the worker that keeps it. */
export type OpenedPage = { readonly address: string; readonly opener: CryptoKey; readonly worker: string };
