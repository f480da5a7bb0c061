import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import sirv from "sirv";
import { hasCode } from "./has-code.ts";

/** A running server: where it answers, and what stops it. */
export type Serving = { readonly address: string; readonly server: Server };

/**
 * Serves a folder under a path on this computer only, as a dumb host would: files by their ending, `index.html` for
 * folders, `404.html` for the rest.
 *
 * @throws an Error when there is no such folder or the port is taken.
 */
export async function serveFolder(folder: string, base: string, port: number): Promise<Serving> {
  if (!existsSync(folder))
    throw new Error(`There is no folder ${folder} yet. Build first, with the same --out: npm run build`);
  if (!statSync(folder).isDirectory())
    throw new Error(`${folder} is a file and no folder of a site. Name the folder with --out.`);
  // Every request looks at the disk again: a build replaces the folder as a whole.
  const files = sirv(folder, {
    dev: true,
    extensions: ["html"],
    setHeaders: (response) => response.setHeader("cache-control", "no-cache"),
    onNoMatch: (_request, response) => {
      sayNotThere(folder, response);
    },
  });
  const server = createServer((request, response) => {
    const path = request.url ?? "/";
    if (!path.startsWith(base)) {
      sayNotThere(folder, response);
      return;
    }
    request.url = `/${path.slice(base.length)}`;
    files(request, response);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error) => {
      const why = hasCode(error, "EACCES") ? "may not be used by you" : "is taken";
      reject(new Error(`Port ${port} ${why} on this computer. Name another with --port.`));
    });
    server.listen(port, "127.0.0.1", resolve);
  });
  return { address: `http://localhost:${(server.address() as AddressInfo).port}`, server };
}

function sayNotThere(folder: string, response: ServerResponse): void {
  const page = join(folder, "404.html");
  response.writeHead(404, { "content-type": "text/html;charset=utf-8", "cache-control": "no-cache" });
  response.end(existsSync(page) ? readFileSync(page) : "Nothing here.");
}
