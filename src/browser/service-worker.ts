/// <reference lib="webworker" />
// Keeps locked pages readable without network. It sees only what the host sends, which is locked; it has no key, opens
// nothing and stores nothing of its own accord: pages put themselves into the store.
// The file is handed out with its types taken off, so it stands alone and imports nothing.

const scope = self as unknown as ServiceWorkerGlobalScope;
const store = "rigsheet-locked-1";
/** Milliseconds to wait for a network that is there but does not answer. */
const patience = 4000;

scope.addEventListener("install", (event) => {
  event.waitUntil(scope.skipWaiting());
});

scope.addEventListener("activate", (event) => {
  event.waitUntil(scope.clients.claim());
});

scope.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== scope.location.origin) return;
  event.respondWith(answer(request));
});

/** From the network while it answers, else from the store; a page that changed on the host is renewed in the store. */
async function answer(request: Request): Promise<Response> {
  const kept = await (await caches.open(store)).match(request, { ignoreVary: true });
  if (!kept) return request.mode === "navigate" ? fetch(request).catch(noNetwork) : fetch(request);
  // What has a mark of its content in its name never changes.
  if (/\/_astro\//.test(request.url)) return kept;
  const fresh = renewed(request);
  const late = new Promise<Response>((resolve) => setTimeout(resolve, patience, kept));
  return Promise.race([fresh.catch(() => kept), late]);
}

/** What a page says that is neither on the network nor in the store. */
const noNetwork = (): Response =>
  new Response(
    '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">' +
      "<title>There is no network</title><h1>There is no network</h1><p>This page is not kept on this device, because " +
      "it was not opened here before. Your link is fine: open it again once you have a network.</p></html>",
    { status: 503, headers: { "content-type": "text/html; charset=utf-8" } },
  );

async function renewed(request: Request): Promise<Response> {
  const response = await fetch(request);
  if (response.ok) await (await caches.open(store)).put(request, response.clone());
  return response;
}
