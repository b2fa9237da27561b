import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfig } from "vitest/config";
import { testsOf } from "./tests-of.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The tests of one module and its rows against outside sources. */
const config: ViteUserConfig = defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^hvac-install-math$/, replacement: `${root}src/index.ts` },
      { find: /^hvac-install-math\/(.+)$/, replacement: `${root}src/$1/index.ts` },
    ],
  },
  test: {
    setupFiles: "tests/fixed-seed.ts",
    include: testsOf(root, process.env.MODULE ?? ""),
    isolate: false,
    testTimeout: 60_000,
  },
});

export default config;
