import { defineConfig } from "vitest/config";

// Plain vitest, without Astro's own configuration: pages are tested as built, everything else needs no Astro.
export default defineConfig({
  test: {
    environment: "node",
    include: ["tests/**/*.test.ts"],
    // The source keeps no state in its modules, so files of tests may share them: loading them anew for each file
    // took more than half of the time of all tests.
    isolate: false,
    testTimeout: 60_000,
  },
});
