// Runs test files of the bundle in this process until one fails, and writes what happened to descriptor 3.
import { existsSync, readFileSync, writeFileSync, writeSync } from "node:fs";
import { createRequire } from "node:module";
import { Script } from "node:vm";
import { Worker } from "node:worker_threads";

const { script, files, allowed, namespace, mutant, hitLimit, keep } = JSON.parse(process.argv[2]);
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

const used = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};
const end = new Float64Array(new SharedArrayBuffer(8));
if (allowed) {
  // A thread beside the tests, as one of them may never come back.
  const watch = () => {
    const end = require("node:worker_threads").workerData;
    setInterval(() => {
      const { user, system } = process.cpuUsage();
      if ((user + system) / 1e6 > end[0]) process.kill(process.pid, "SIGKILL");
    }, 100);
  };
  end[0] = Infinity;
  new Worker(`(${watch})()`, { eval: true, workerData: end });
}

const before = used();
for (const [i, path] of files.entries()) {
  end[0] = used() + (allowed?.[i] ?? 0);
  const [file] = await startTests([path], runner);
  if (file.result?.state === "fail")
    failure ??= { file: path, message: file.result.errors?.[0]?.message ?? "cannot be loaded" };
  if (failure !== undefined) break;
}
if (keep) writeFileSync(cache, compiled.createCachedData());
const { hitCount, mutantCoverage } = state;
const reached = mutantCoverage?.static;
writeSync(3, JSON.stringify({ failure, hitCount, reached, seconds: used() - before }));
process.exit();
