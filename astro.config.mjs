// @ts-check
import mdx from "@astrojs/mdx";
import { satteri } from "@astrojs/markdown-satteri";
import { defineConfig } from "astro/config";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL(".", import.meta.url));
const { RIGSHEET_DATA, RIGSHEET_OUT, RIGSHEET_BASE, RIGSHEET_SITE } = process.env;

/** The folder that holds content/ and athletes/; it may lie outside this project. */
const dataFolder = RIGSHEET_DATA ? resolve(RIGSHEET_DATA) : root;

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
  integrations: [mdx()],
  markdown: {
    // Coaches write 5'30" and 3--5; curled quotes and dashes would change what was meant.
    processor: satteri({ features: { smartPunctuation: false } }),
    // The highlighter writes inline styles, which the content security policy refuses.
    syntaxHighlight: false,
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "img-src 'self' data: blob:",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  vite: {
    server: { fs: { allow: [root, dataFolder] } },
    plugins: [
      {
        name: "rigsheet-watch-data-folder",
        configureServer(server) {
          server.watcher.add([resolve(dataFolder, "content"), resolve(dataFolder, "athletes")]);
        },
      },
    ],
  },
});
