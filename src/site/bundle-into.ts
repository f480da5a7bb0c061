import { join } from "node:path";

const ENTRY = "src/site/brief-worker.ts";
/** The name of the file it becomes. */
export const BUNDLE = "maker.mjs";

/** Bundles the program that makes briefs. Packages stay outside, where Node finds them from the project's folder; Astro's own would not run twice. */
export async function bundleInto(root: string, folder: string): Promise<void> {
  const [{ build }, { getViteConfig }] = await Promise.all([import("vite"), import("astro/config")]);
  const configure = getViteConfig({ root }, { root, logLevel: "silent" });
  const config = await configure({ mode: "production", command: "build" });
  await build({
    ...config,
    configFile: false,
    logLevel: "error",
    mode: "production",
    publicDir: false,
    ssr: { external: ["astro", "tinypool"] },
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: true,
      minify: false,
      rolldownOptions: {
        input: { maker: join(root, ENTRY) },
        external: [/^astro(?:\/|$)/],
        output: { entryFileNames: BUNDLE, codeSplitting: false },
      },
    },
  });
}
