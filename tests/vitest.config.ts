import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const resolve = {
  alias: [
    { find: /^hvac-install-math$/, replacement: `${root}src/index.ts` },
    { find: /^hvac-install-math\/(.+)$/, replacement: `${root}src/$1/index.ts` },
  ],
};

/** Tests of the built package; those of the source beside them run with the library. */
const packageTests = [
  "api",
  "built-tree-shaking",
  "import-effects",
  "import-time",
  "published-package",
  "sizes",
  "two-copies",
].map((name) => `tests/package/${name}.test.ts`);

/** What measures time or sizes: counting the lines that run would only disturb it. */
const measured = ["tests/package/**", "tests/faults/logs.test.ts", "tests/**/speed.test.ts"];

const config: ViteUserConfig = defineConfig({
  root,
  resolve,
  test: {
    testTimeout: 60_000,
    maxWorkers: "100%", // vitest leaves one core idle, which is half of two
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      exclude: ["src/tsup.config.ts", "src/*/generate/**"], // tools of the house, not of the package
      reporter: ["text", "json-summary"],
      reportsDirectory: "tests/.generated/coverage",
      thresholds: { lines: 97, branches: 96, functions: 97 },
    },
    projects: [
      {
        root,
        resolve,
        test: {
          name: "library",
          setupFiles: "tests/fixed-seed.ts",
          include: ["tests/**/*.test.ts"],
          exclude: [
            ...packageTests,
            "tests/studies/**",
            "tests/browser/**",
            "tests/runtimes/**",
            "tests/apps/**",
            "tests/.generated/**", // copies that a mutation run left behind
            ...(process.argv.includes("--coverage") ? measured : []),
          ],
          testTimeout: 60_000,
          isolate: false, // each file loading the library anew takes longer than its tests
        },
      },
      {
        root,
        test: {
          name: "package",
          include: packageTests,
          globalSetup: "tests/package/build.ts",
          testTimeout: 120_000,
        },
      },
      {
        root,
        resolve,
        test: {
          name: "studies",
          include: ["tests/studies/**/*.study.test.ts"],
          testTimeout: 1_800_000,
        },
      },
      {
        root,
        test: {
          name: "runtimes",
          include: ["tests/runtimes/*.test.ts"],
          globalSetup: "tests/package/build.ts",
          testTimeout: 120_000,
        },
      },
      {
        root,
        resolve,
        test: {
          name: "apps",
          include: ["tests/apps/*.test.ts"],
          testTimeout: 600_000,
        },
      },
      {
        root,
        resolve,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.browser.test.ts"],
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});

export default config;
