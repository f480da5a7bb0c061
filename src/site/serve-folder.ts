import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join, normalize, sep } from "node:path";
import { ownEntry } from "../models/own-entry.ts";

const TYPES: Readonly<Record<string, string>> = {
  bin: "application/octet-stream",
  css: "text/css; charset=utf-8",
  html: "text/html; charset=utf-8",
  ics: "text/calendar; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  pdf: "application/pdf",
  png: "image/png",
  txt: "text/plain; charset=utf-8",
  woff2: "font/woff2",
};

/** A running server: where it answers, and what stops it. */
export type Serving = { readonly address: string; readonly server: Server };

/**
 * Serves a folder under a path on this computer only, as a dumb host would: files by their ending, `index.html` for
 * folders, `404.html` for the rest.
 *
 * @throws an Error when there is no such folder or the port is taken.
 */
export async function serveFolder(folder: string, base: string, port: number): Promise<Serving> {
  if (!existsSync(folder)) throw new Error(`There is no folder ${folder} yet. Build first: npm run build`);
  const server = createServer((request, response) => {
    const path = pathOf(request.url ?? "/");
    const file = path?.startsWith(base) ? fileAt(folder, path.slice(base.length)) : undefined;
    const shown = file ?? join(folder, "404.html");
    const body = existsSync(shown) ? readFileSync(shown) : "Nothing here.";
    response.writeHead(file === undefined ? 404 : 200, {
      "content-type": ownEntry(TYPES, shown.split(".").at(-1) ?? "") ?? "application/octet-stream",
      "cache-control": "no-cache",
    });
    response.end(body);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", () => {
      reject(new Error(`Port ${port} is taken on this computer. Name another with --port.`));
    });
    server.listen(port, "127.0.0.1", resolve);
  });
  return { address: `http://localhost:${(server.address() as AddressInfo).port}`, server };
}

/** The path of a request, or nothing where it is written in a way nobody can read. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
}

/** The file a path stands for, never outside the folder. */
function fileAt(folder: string, path: string): string | undefined {
  const inside = normalize(join(folder, path));
  if (inside !== folder && !inside.startsWith(folder + sep) && `${inside}${sep}` !== folder + sep)
    return undefined;
  const file = path === "" || path.endsWith("/") ? join(inside, "index.html") : inside;
  return existsSync(file) && statSync(file).isFile() ? file : undefined;
}
