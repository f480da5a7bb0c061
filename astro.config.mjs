// @ts-check
import { defineConfig } from "astro/config";
import { relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { workerPlugin } from "./src/site/worker-plugin.ts";

const root = fileURLToPath(new URL(".", import.meta.url));
// Compiled code no longer stands where its source did, and asks the environment instead.
process.env.RIGSHEET_ROOT = root;
const { RIGSHEET_DATA, RIGSHEET_OUT, RIGSHEET_BASE, RIGSHEET_SITE } = process.env;

/** The folder that holds content/ and athletes/; it may lie outside this project. */
const dataFolder = RIGSHEET_DATA ? resolve(RIGSHEET_DATA) : root;

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
    server: { fs: { allow: [root, dataFolder] } },
    build: {
      // A page opens in one round trip: scripts stand in it, and fonts are files, which the content policy wants.
      assetsInlineLimit: (file) => /\.m?js$/.test(file),
    },
    plugins: [workerPlugin(root)],
  },
});
