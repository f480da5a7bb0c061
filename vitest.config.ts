import { defineConfig } from "vitest/config";

// Plain vitest, without Astro's own configuration: pages are tested as built, everything else needs no Astro.
export default defineConfig({
  test: {
    environment: "node",
    include: ["tests/**/*.test.ts"],
    testTimeout: 30_000,
  },
});
