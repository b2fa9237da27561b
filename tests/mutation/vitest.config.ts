import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const root = fileURLToPath(new URL("../..", import.meta.url));
const { MODULE } = process.env;

/** What failed last or is small runs first: the first failure settles a mutant, and the long tests rarely have to run. */
class SmallFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { cache } = this.ctx;
    const rank = ({ moduleId }: TestSpecification): number => {
      const last = cache.getFileTestResults(`:${moduleId.slice(root.length)}`);
      return last?.failed === true ? -1 : (last?.duration ?? statSync(moduleId).size);
    };
    return [...files].sort((a, b) => rank(a) - rank(b));
  }
}

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
    include: [
      `tests/${MODULE === "wire" ? "{wire,shapes}" : MODULE}/**/*.test.ts`,
      `tests/language/${MODULE}.test.ts`, // whether what it says has all of its values
      ...(existsSync(`${root}tests/published/${MODULE}.json`)
        ? ["tests/published/published.test.ts"]
        : []),
    ],
    // Thousands of simulated logs and times on a clock say little for what they cost, mutant by mutant; a changed
    // source weighs more than the code that is shipped. What is generated takes minutes and none of the code that is
    // changed here.
    exclude: [
      "tests/*/{simulated*,speed,size,long-log,generated}.test.ts",
      "tests/wire/{codecs,zod}.test.ts", // 250 codecs over one walk, which the others take too
    ],
    sequence: { sequencer: SmallFirst },
    isolate: false, // the files are run again for every mutant
    testTimeout: 60_000,
  },
});

export default config;
