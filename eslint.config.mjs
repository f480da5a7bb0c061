import js from "@eslint/js";
import { defineConfig } from "eslint/config";
import { configs } from "typescript-eslint";

export default defineConfig({
  files: ["src/**/*.ts", "tests/**/*.ts"],
  extends: [js.configs.recommended, configs.strictTypeChecked],
  languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
  rules: {
    // `import { type A }` still runs the file when types are only erased; `import type` does not.
    // Declarations of what is everywhere may name a type in place: an import would make a module of them.
    "@typescript-eslint/consistent-type-imports": ["error", { disallowTypeAnnotations: false }],
    "@typescript-eslint/no-import-type-side-effects": "error",
    // Numbers are what these texts are made of.
    "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
  },
});
