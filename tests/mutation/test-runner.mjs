// Stryker's test runner for this house. Vitest loads some three hundred files anew for every mutant; here all tests of a
// module are bundled once, and each mutant gets a process of its own, which runs the test files that reach it until one
// of their tests fails. So a mutant in what is made at load time, or made once and kept, is tried like any other, and one
// that never ends is stopped by the time of the processor that a test file takes, which a busy machine does not change.
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { appendFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { INSTRUMENTER_CONSTANTS } from "@stryker-mutator/api/core";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { bundle } from "./bundle.mjs";
import { testsOf } from "./tests-of.mjs";

const { MODULE, PART = "0/1", KNOWN } = process.env;
const [part, parts] = PART.split("/").map(Number);
const child = join(import.meta.dirname, "try-tests.mjs");
const namespace = INSTRUMENTER_CONSTANTS.NAMESPACE;

const linesOf = (file) => readFileSync(file, "utf8").trim().split("\n").map(JSON.parse);
const keyOf = ({ file, source, location, mutatorName, replacement }) =>
  JSON.stringify([file, source, location, mutatorName, replacement]);

class BundledTests {
  script = join(process.cwd(), "mutated-tests.cjs");
  secondsFile = join(process.cwd(), "mutated-tests.json");
  /** What a run that is broken off has found so far. */
  resultsFile = join(process.cwd(), `../../mutation-${MODULE}.ndjson`);
  /** What an earlier run killed: it dies of the same tests as long as its source is the same. */
  known = new Set(
    KNOWN
      ? linesOf(KNOWN)
          .filter(({ status }) => status !== "survived")
          .map(keyOf)
      : [],
  );
  /** By source, how many of its changes each test file has noticed first. */
  kills = new Map();
  sources = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.files = testsOf(process.cwd(), MODULE);
    if (!existsSync(this.script)) await bundle(process.cwd(), this.files, this.script);
  }

  /** A file counts as one test: what its first test makes once and keeps, all of them may rest on. */
  async dryRun() {
    writeFileSync(this.resultsFile, "");
    await this.run({ files: this.files, keep: true });
    const tests = [];
    const perTest = {};
    for (const file of this.files) {
      const { seconds = 0, reached = {}, failure, error } = await this.run({ files: [file] });
      const failureMessage = error ?? failure?.message;
      const status = failureMessage === undefined ? 0 : 1;
      const timeSpentMs = seconds * 1000;
      tests.push({ id: file, name: file, fileName: file, timeSpentMs, status, failureMessage });
      perTest[file] = reached;
    }
    const seconds = tests.map(({ id, timeSpentMs }) => [id, timeSpentMs / 1000]);
    writeFileSync(this.secondsFile, JSON.stringify(Object.fromEntries(seconds)));
    return { status: "complete", tests, mutantCoverage: { static: {}, perTest } };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const { id, fileName, location, mutatorName, replacement } = activeMutant;
    if (Number(id) % parts !== part) return { status: "error", errorMessage: "in another part" };
    const file = fileName.slice(fileName.lastIndexOf("/src/") + 1);
    const mutant = { file, source: this.sourceOf(file), location, mutatorName, replacement };
    const answer = this.known.has(keyOf(mutant))
      ? { status: "killed", killedBy: [], failureMessage: "by an earlier run", nrOfTests: 0 }
      : await this.tried(activeMutant, testFilter, hitLimit);
    appendFileSync(this.resultsFile, `${JSON.stringify({ status: answer.status, ...mutant })}\n`);
    return answer;
  }

  /** What a source is known by, as it is before it is changed. */
  sourceOf(file) {
    if (!this.sources.has(file)) {
      const text = readFileSync(join(process.cwd(), "../../../..", file));
      this.sources.set(file, createHash("sha256").update(text).digest("hex").slice(0, 16));
    }
    return this.sources.get(file);
  }

  async tried({ id, fileName }, reaching, hitLimit) {
    this.seconds ??= JSON.parse(readFileSync(this.secondsFile, "utf8"));
    if (!this.kills.has(fileName)) this.kills.set(fileName, new Map());
    const kills = this.kills.get(fileName);
    // First what is quick and noticed other changes of the same source.
    const rank = (file) => this.seconds[file] / (0.1 + (kills.get(file) ?? 0));
    const files = [...reaching].sort((a, b) => rank(a) - rank(b));
    const allowed = files.map((file) => 5 + 4 * this.seconds[file]);
    const { failure, hitCount, error } = await this.run({ files, allowed, mutant: id, hitLimit });
    const endless = hitCount > hitLimit || error === "SIGKILL";
    if (endless) return { status: "timeout", reason: error ?? `reached ${hitCount} times` };
    const nrOfTests = files.length;
    if (failure === undefined && error === undefined) return { status: "survived", nrOfTests };
    const { file, message } = failure ?? { file: files[0], message: error };
    kills.set(file, (kills.get(file) ?? 0) + 1);
    return { status: "killed", killedBy: [file], failureMessage: message, nrOfTests };
  }

  /** Runs test files in a process of their own, which ends itself where one takes longer than it is allowed. */
  run(task) {
    const told = JSON.stringify({ script: this.script, namespace, ...task });
    const started = spawn(process.execPath, [child, told], {
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
