// Runs tests of the bundle in this process until one fails, and writes what happened to descriptor 3.
import { existsSync, readFileSync, writeFileSync, writeSync } from "node:fs";
import { createRequire } from "node:module";
import { Script } from "node:vm";

const { script, wanted, namespace, mutant, hitLimit, keep } = JSON.parse(process.argv[2]);
const state = { hitCount: 0, hitLimit, activeMutant: mutant };
globalThis[namespace] = state;

const cache = `${script}.cache`;
const compiled = new Script(`((require, module) => {${readFileSync(script, "utf8")}\n})`, {
  filename: script,
  ...(existsSync(cache) ? { cachedData: readFileSync(cache) } : {}),
});
const module = {};
compiled.runInThisContext()(createRequire(script), module);
const { load, startTests } = module.exports;

const testsIn = (task) => (task.type === "test" ? [task] : task.tasks.flatMap(testsIn));
const tests = {};
let failure;
const runner = {
  config: {
    root: process.cwd(),
    setupFiles: [],
    sequence: { concurrent: false, shuffle: false, hooks: "stack", setupFiles: "list", seed: 1 },
    maxConcurrency: 1,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    retry: 0,
    tags: [],
    strictTags: false,
    passWithNoTests: true,
  },
  importFile: (path) => load[path](),
  onCollected([file]) {
    const chosen = wanted[file.filepath];
    tests[file.filepath] = testsIn(file).length;
    if (chosen !== "all")
      for (const [index, test] of testsIn(file).entries())
        if (!chosen.includes(index)) test.mode = "skip";
  },
  onBeforeRunTask(test) {
    if (failure !== undefined) test.mode = "skip";
  },
  onAfterRunTask(test) {
    if (test.result?.state === "fail")
      failure ??= {
        file: test.file.filepath,
        message: `${test.name}: ${test.result.errors?.[0]?.message}`,
      };
  },
};

const before = process.cpuUsage();
for (const path of Object.keys(wanted)) {
  const [file] = await startTests([path], runner);
  if (file.result?.state === "fail")
    failure ??= { file: path, message: file.result.errors?.[0]?.message ?? "cannot be loaded" };
  if (failure !== undefined) break;
}
if (keep) writeFileSync(cache, compiled.createCachedData());
const { user, system } = process.cpuUsage(before);
const { hitCount, mutantCoverage } = state;
const reached = mutantCoverage?.static;
writeSync(3, JSON.stringify({ tests, failure, hitCount, reached, seconds: (user + system) / 1e6 }));
process.exit();
