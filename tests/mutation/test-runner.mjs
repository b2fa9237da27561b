// Stryker's test runner for this house. Vitest loads some three hundred files anew for every mutant; here all tests of a
// module are bundled once, and each mutant gets a process of its own, which runs the tests that reach it until one fails.
// So a mutant in what is made at load time, or made once and kept, is tried like any other, and one that never ends is
// stopped by the time of the processor that it takes, which a busy machine does not change.
import { spawn } from "node:child_process";
import { appendFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { INSTRUMENTER_CONSTANTS } from "@stryker-mutator/api/core";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { bundle } from "./bundle.mjs";
import { testsOf } from "./tests-of.mjs";

const { CONCURRENCY = "2", MODULE } = process.env;
const child = join(import.meta.dirname, "try-tests.mjs");
const namespace = INSTRUMENTER_CONSTANTS.NAMESPACE;
const idOf = (file, index) => `${file}#${index}`;

class BundledTests {
  script = join(process.cwd(), "mutated-tests.cjs");
  secondsFile = join(process.cwd(), "mutated-tests.json");
  /** What a run that is broken off has found so far. */
  resultsFile = join(process.cwd(), `../../mutation-${MODULE}.ndjson`);
  kills = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.files = testsOf(process.cwd(), MODULE);
    if (!existsSync(this.script)) await bundle(process.cwd(), this.files, this.script);
  }

  /** Each test alone in a process: so what the first of them would make for all is reached by each that rests on it. */
  async dryRun() {
    const wanted = Object.fromEntries(this.files.map((file) => [file, "all"]));
    const { tests, failure, error } = await this.run({ wanted, keep: true });
    const problem = error ?? failure?.message;
    if (problem !== undefined) return { status: "error", errorMessage: problem };
    writeFileSync(this.resultsFile, "");
    const left = Object.entries(tests).flatMap(([file, count]) =>
      Array.from({ length: count }, (_, index) => ({ file, index })),
    );
    const results = [];
    const perTest = {};
    const next = async () => {
      for (let test = left.shift(); test !== undefined; test = left.shift()) {
        const { file, index } = test;
        const id = idOf(file, index);
        const { seconds, failure, reached, error } = await this.run({
          wanted: { [file]: [index] },
        });
        const message = error ?? failure?.message;
        perTest[id] = reached ?? {};
        results.push({
          id,
          name: id,
          fileName: file,
          timeSpentMs: (seconds ?? 0) * 1000,
          ...(message === undefined ? { status: 0 } : { status: 1, failureMessage: message }),
        });
      }
    };
    await Promise.all(Array.from({ length: Number(CONCURRENCY) }, next));
    const seconds = Object.fromEntries(
      results.map(({ id, timeSpentMs }) => [id, timeSpentMs / 1000]),
    );
    writeFileSync(this.secondsFile, JSON.stringify(seconds));
    return { status: "complete", tests: results, mutantCoverage: { static: {}, perTest } };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const answer = await this.tried(activeMutant, testFilter, hitLimit);
    const { fileName, location, mutatorName, replacement } = activeMutant;
    const file = fileName.slice(fileName.lastIndexOf("/src/") + 1);
    const result = { status: answer.status, file, location, mutatorName, replacement };
    appendFileSync(this.resultsFile, `${JSON.stringify(result)}\n`);
    return answer;
  }

  async tried({ id, fileName }, tests, hitLimit) {
    const { wanted, seconds } = this.inOrder(tests, fileName);
    const task = { wanted, mutant: id, hitLimit };
    const { failure, hitCount, error } = await this.run(task, 5 + 4 * seconds);
    const endless = hitCount > hitLimit || error === "SIGXCPU" || error === "SIGKILL";
    if (endless) return { status: "timeout", reason: error ?? `reached ${hitCount} times` };
    const nrOfTests = tests.length;
    if (failure === undefined && error === undefined) return { status: "survived", nrOfTests };
    const { file, message } = failure ?? { file: tests[0].split("#")[0], message: error };
    const kills = this.kills.get(fileName);
    kills.set(file, (kills.get(file) ?? 0) + 1);
    return { status: "killed", killedBy: [idOf(file, 0)], failureMessage: message, nrOfTests };
  }

  /** First the files that are quick and noticed other changes of the same source. */
  inOrder(tests, source) {
    this.seconds ??= JSON.parse(readFileSync(this.secondsFile, "utf8"));
    if (!this.kills.has(source)) this.kills.set(source, new Map());
    const kills = this.kills.get(source);
    const byFile = new Map();
    for (const id of tests) {
      const [file, index] = id.split("#");
      const of = byFile.get(file) ?? { seconds: 0, wanted: [] };
      of.seconds += this.seconds[id];
      of.wanted.push(Number(index));
      byFile.set(file, of);
    }
    const rank = ([file, { seconds }]) => seconds / (0.1 + (kills.get(file) ?? 0));
    const sorted = [...byFile].sort((a, b) => rank(a) - rank(b));
    return {
      wanted: Object.fromEntries(sorted.map(([file, { wanted }]) => [file, wanted])),
      seconds: sorted.reduce((sum, [, { seconds }]) => sum + seconds, 0),
    };
  }

  /** A process that took more than these seconds of the processor is ended. */
  run(task, seconds = 3600) {
    const limited = ["-c", `ulimit -t ${Math.ceil(seconds)}; exec "$@"`, "bash"];
    const told = JSON.stringify({ script: this.script, namespace, ...task });
    const started = spawn("bash", [...limited, process.execPath, child, told], {
      stdio: ["ignore", "ignore", "pipe", "pipe"],
    });
    const out = { 2: "", 3: "" };
    for (const fd of [2, 3])
      started.stdio[fd].on("data", (data) => {
        out[fd] += data;
      });
    return new Promise((resolve) => {
      started.on("close", (code, signal) => {
        if (code === 0 && out[3] !== "") resolve(JSON.parse(out[3]));
        else resolve({ error: signal ?? (out[2].slice(-2000) || `exit ${code}`) });
      });
    });
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "bundled", BundledTests)];
