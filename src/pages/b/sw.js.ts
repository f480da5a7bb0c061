import type { APIRoute } from "astro";
import { worker } from "virtual:rigsheet-worker";

/** The worker that keeps locked pages, at the top of the folder it may speak for. */
export const GET: APIRoute = () => new Response(worker, { headers: { "content-type": "text/javascript" } });
