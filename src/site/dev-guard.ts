import { existsSync, realpathSync } from "node:fs";
import { join, relative } from "node:path";
import type { Plugin } from "vite";

/** Where the server answers: this computer alone, under names that no other site can take. */
const HERE = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/;

/**
 * What a page may ask the server for while developing, beside pages themselves: code of the program and of packages, and
 * what the bundler makes of them. Every other path is answered as one that does not exist: the site secret, files of
 * athletes and anything else on the disk are read by the program and never handed out.
 */
const ALLOWED = [
  /^\/@vite\/(client|env)$/,
  // Scripts and styles of pages; other modules of the framework hold what was read from the files.
  /^\/@id\/(__x00__)?(astro:scripts|astro|vite)\/[\w@./-]+$/,
  /^\/src\/(browser|lock|models|numerics|compute|wording|charts|styles|fonts|components|layouts|pages|calendar)\/[^.][\w./[\]-]*$/,
  /^\/node_modules\/(?!\.(?!vite\/))[\w@./-]+\.(m?js|css|woff2|map)$/,
  /^\/_(astro|image)\b/,
];

const PAGES = /^\/(?:$|\?|404|robots\.txt$|favicon\.ico$|b\/|strategy\/)/;

/** Whether a path may be answered while developing. `base` is the path of the site on its host. */
export function isServed(url: string, base: string): boolean {
  const path = plainPath(url);
  if (path === undefined || path.includes("..") || /\/\.(?!vite\/)/.test(path)) return false;
  const inside = path.startsWith(base) ? `/${path.slice(base.length)}` : path;
  // With `?raw` and the like the bundler would hand out a file as it is.
  if (/[?&](raw|url|inline|worker|sharedworker|import&raw)\b/.test(url) && !PAGES.test(inside)) return false;
  return PAGES.test(inside) || [inside, path].some((each) => ALLOWED.some((pattern) => pattern.test(each)));
}

/** Whether a path leads through a link on the disk: what it would hand out stands somewhere else. */
export function isLinked(url: string, base: string, root: string): boolean {
  const path = plainPath(url) ?? "/";
  return [path, `/${path.slice(base.length)}`].some((each) => {
    const file = join(root, each);
    return (
      each.startsWith("/src/") &&
      existsSync(file) &&
      relative(realpathSync(root), realpathSync(file)) !== each.slice(1)
    );
  });
}

/** The path of an address with every sign written out; nothing where it cannot be read or would be read twice. */
function plainPath(url: string): string | undefined {
  try {
    const path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "");
    return /[\\%\0]/.test(path) || path.startsWith("//") ? undefined : path;
  } catch {
    return undefined;
  }
}

/** Whether a request comes from a page of this server, or from nobody's page at all. */
export function isOwnRequest(headers: Readonly<Record<string, string | string[] | undefined>>): boolean {
  const one = (name: string): string => String(headers[name] ?? "");
  if (!HERE.test(one("host"))) return false;
  if (one("origin") !== "" && one("origin") !== `http://${one("host")}`) return false;
  return !["cross-site", "same-site"].includes(one("sec-fetch-site"));
}

/** Keeps the server for developing from handing out anything but the site, and to nobody but its own pages. */
export function devGuard(base: string): Plugin {
  return {
    name: "rigsheet-dev-guard",
    enforce: "pre",
    configureServer(server) {
      const { root } = server.config;
      server.middlewares.use((request, response, next) => {
        const url = request.url ?? "/";
        if (isOwnRequest(request.headers) && isServed(url, base) && !isLinked(url, base, root)) {
          response.setHeader("cross-origin-resource-policy", "same-origin");
          next();
          return;
        }
        response.writeHead(404, { "content-type": "text/plain" }).end("Nothing here.");
      });
    },
  };
}
