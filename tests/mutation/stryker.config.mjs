// How many changes to the code do the tests notice? One module at a time:
//   MODULE=quantity npm run mutation
// A change to a text is not tried: the words of codes are held by the compiler and by the codecs of src/wire, and
// sentences for people are free. A mutant that outlives all tests is listed in survivors.md with its reason.
const { MODULE } = process.env;
const folder = MODULE === "wire" ? "{wire,shapes}" : MODULE; // the tests of the codecs are those of shapes

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
  mutate: [
    `src/${folder}/**/*.ts`,
    `!src/${folder}/**/index.ts`,
    `!src/${folder}/{data,generate,generated}/**`,
  ],
  mutator: { excludedMutations: ["StringLiteral"] },
  coverageAnalysis: "perTest",
  ignoreStatic: MODULE !== "quantity", // the unit catalogue is made when it is loaded
  disableTypeChecks: false,
  concurrency: Number(process.env.CONCURRENCY ?? 2),
  timeoutMS: 10_000,
  tempDirName: "tests/.generated/mutation",
  ignorePatterns: ["dist", "docs", "tests/.generated", "tests/runtimes", "coverage"],
  reporters: ["progress-append-only", "clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `tests/.generated/mutation-${MODULE}.json` },
  thresholds: { high: 95, low: 90, break: 90 },
};
