// @ts-check
import { defineConfig } from "astro/config";
import { join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { devGuard } from "./src/site/dev-guard.ts";
import { workerPlugin } from "./src/site/worker-plugin.ts";

const root = fileURLToPath(new URL(".", import.meta.url));
// Compiled code no longer stands where its source did, and asks the environment instead.
process.env.RIGSHEET_ROOT = root;
const { RIGSHEET_OUT, RIGSHEET_BASE, RIGSHEET_SITE } = process.env;

// While it renders, Astro loads its own modules from the output folder, and Node finds their packages only
// inside the project. A build meant for elsewhere is made in here first and moved when it has succeeded.
if (RIGSHEET_OUT && relative(root, resolve(RIGSHEET_OUT)).startsWith("..")) {
  throw new Error(
    `RIGSHEET_OUT is "${RIGSHEET_OUT}", which lies outside the project. ` +
      `Astro can only build inside it: use a folder such as .rigsheet/out and move that afterwards.`,
  );
}

export default defineConfig({
  output: "static",
  ...(RIGSHEET_OUT ? { outDir: `${resolve(RIGSHEET_OUT)}/` } : {}),
  ...(RIGSHEET_BASE ? { base: RIGSHEET_BASE } : {}),
  ...(RIGSHEET_SITE ? { site: RIGSHEET_SITE } : {}),
  trailingSlash: "always",
  build: { format: "directory" },
  prerenderConflictBehavior: "error",
  // Astro's default ("jsx") glues a word to the inline element on the next line.
  compressHTML: true,
  devToolbar: { enabled: false },
  // No text is drawn by the framework; its colouring of code would only warn that the content policy forbids it.
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "img-src 'self' data: blob:",
        "worker-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  vite: {
    // The pages need the program's own files and packages; everything people wrote is read by the program.
    server: {
      cors: false,
      fs: { strict: true, allow: [join(root, "src"), join(root, "node_modules")] },
    },
    build: {
      // A page opens in one round trip: scripts stand in it, and fonts are files, which the content policy wants.
      assetsInlineLimit: (file) => /\.m?js$/.test(file),
    },
    plugins: [workerPlugin(root), devGuard(RIGSHEET_BASE || "/")],
  },
});
