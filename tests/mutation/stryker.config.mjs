// How many changes to the code do the tests notice? One module at a time:
//   MODULE=quantity npm run mutation
// A change to a text is not tried: the words of codes are held by the compiler and by the codecs of src/wire, and
// sentences for people are free. A mutant that outlives all tests is listed in survivors with its reason.
const { MODULE, ONLY } = process.env;
// The tests of the codecs are those of shapes. A catalogue is held by the compiler: of language, what works on them.
const files =
  { wire: "{wire,shapes}/**/*", language: "language/{*,fr/typeset}" }[MODULE] ?? `${MODULE}/**/*`;

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  plugins: ["./tests/mutation/test-runner.mjs"],
  testRunner: "bundled",
  mutate: ONLY?.split(",") ?? [
    `src/${files}.ts`,
    "!src/**/index.ts",
    "!src/**/{data,generate,generated}/**",
  ],
  mutator: { excludedMutations: ["StringLiteral"] },
  coverageAnalysis: "perTest", // by file: see test-runner.mjs
  disableTypeChecks: false,
  concurrency: Number(process.env.CONCURRENCY ?? 2),
  dryRunTimeoutMinutes: 60,
  timeoutMS: 3_600_000, // the runner ends a mutant that takes too long
  tempDirName: "tests/.generated/mutation",
  ignorePatterns: [
    "dist",
    "docs/**",
    "!docs/generate/**",
    "tests/.generated",
    "tests/runtimes",
    "coverage",
  ],
  reporters: ["progress-append-only", "clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `tests/.generated/mutation-${MODULE}.json` },
  thresholds: { high: 95, low: 90, break: 90 },
};
