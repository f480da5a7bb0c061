import type { APIRoute } from "astro";

/** Locked pages ask not to be listed; for that they must be allowed to be fetched, and none may be named here. */
export const GET: APIRoute = () => new Response("User-agent: *\nAllow: /\n");
