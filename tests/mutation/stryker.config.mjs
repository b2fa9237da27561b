// How many changes to the code do the tests notice? One module at a time:
//   MODULE=quantity npm run mutation
// A change to a text is not tried: the words of codes are held by the compiler and by the codecs of src/wire, and
// sentences for people are free. A mutant that outlives all tests is listed in survivors.md with its reason.
const { MODULE } = process.env;
// The tests of the codecs are those of shapes. A catalogue is held by the compiler: of language, what works on them.
const files =
  { wire: "{wire,shapes}/**/*", language: "language/{*,fr/typeset}" }[MODULE] ?? `${MODULE}/**/*`;
// A codec or an analysis is made by the first test that needs it and kept: which tests use it, coverage does not tell.
const sharing = ["wire", "vacuum-decay"];

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
  mutate: [`src/${files}.ts`, "!src/**/index.ts", "!src/**/{data,generate,generated}/**"],
  mutator: { excludedMutations: ["StringLiteral"] },
  coverageAnalysis: sharing.includes(MODULE) ? "off" : "perTest",
  ignoreStatic: !["quantity", "language", ...sharing].includes(MODULE), // what they hold is made when they are loaded
  disableTypeChecks: false,
  concurrency: Number(process.env.CONCURRENCY ?? 2),
  timeoutMS: 10_000,
  timeoutFactor: 4, // a busy machine is no endless loop
  tempDirName: "tests/.generated/mutation",
  ignorePatterns: ["dist", "docs", "tests/.generated", "tests/runtimes", "coverage"],
  reporters: ["progress-append-only", "clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `tests/.generated/mutation-${MODULE}.json` },
  thresholds: { high: 95, low: 90, break: 90 },
};
