// The packed package on every runtime that the README claims.
import { execFileSync } from "node:child_process";
import { copyFileSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { beforeAll, describe, expect, inject, it } from "vitest";
import { launch, serve, troubles } from "../browser/chromium.ts";
import { installed, versions } from "./installed.ts";

const consumer = inject("consumer");
const at = (name: string) => join(consumer, name);

/** Runs a command where the package is installed; everything that it prints. */
const run = (command: string, ...args: string[]) =>
  execFileSync(command, args, {
    cwd: consumer,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, DENO_DIR: at("deno"), DENO_NO_UPDATE_CHECK: "1" },
  });

/** Bundles code as an app would, its dependencies with it. */
const bundled = (contents: string, outfile: string, format: "esm" | "iife") =>
  build({
    stdin: { contents, resolveDir: consumer },
    bundle: true,
    minify: true,
    target: "es2022",
    format,
    outfile: at(outfile),
    tsconfigRaw: {},
    logLevel: "error",
  });

beforeAll(async () => {
  copyFileSync(join(import.meta.dirname, "suite.js"), at("suite.js"));
  writeFileSync(at("package.json"), `{"type":"module"}`);
  writeFileSync(at("run.js"), `import { report } from "./suite.js"; console.log(report());`);
  await build({
    stdin: {
      contents: `import { report } from "./suite.js"; console.log(report());`,
      resolveDir: consumer,
    },
    bundle: true,
    packages: "external",
    format: "cjs",
    outfile: at("run.cjs"),
    tsconfigRaw: {},
  });
  await bundled(
    `import { report } from "./suite.js"; globalThis.answer = report();`,
    "script.js",
    "iife",
  );
  await bundled(
    `import { report } from "./suite.js"; export default { test() { console.log(report()); } };`,
    "worker.js",
    "esm",
  );
});

/** Every claim holds; a runtime without Intl leaves out the two that need it. */
function expectAll(printed: string, hasIntl = true): void {
  const [report = "nothing"] = /\{"tried".*\}/.exec(printed) ?? [];
  expect(JSON.parse(report), printed).toEqual({ tried: hasIntl ? 34 : 32, failures: [] });
}

describe.each(["node20", "node22", "node24", "node26"])("on %s", (name) => {
  const node = () => installed(`${name}/bin/node`);

  it("is the version that is pinned", () => {
    expect(run(node(), "--version").trim()).toBe(`v${versions[name]}`);
  });

  it.each(["run.js", "run.cjs"])("all claims hold, %s", (file) => expectAll(run(node(), file)));
});

it.each(["run.js", "run.cjs"])("all claims hold on Bun, %s", (file) => {
  expectAll(run(installed("@oven/bun-linux-x64-baseline/bin/bun"), "--no-install", file));
});

it("all claims hold on Deno, in its sandbox", () => {
  const deno = installed("@deno/linux-x64-glibc/deno");
  expectAll(run(deno, "run", "--no-remote", "--no-prompt", "run.js"));
});

it("all claims hold on workerd", () => {
  const config = `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = (services = [(name = "main", worker = .suite)]);
const suite :Workerd.Worker = (
  modules = [(name = "worker.js", esModule = embed "worker.js")],
  compatibilityDate = "2026-01-01"
);`;
  writeFileSync(at("worker.capnp"), config);
  const workerd = installed("@cloudflare/workerd-linux-64/bin/workerd");
  expectAll(run(workerd, "test", "worker.capnp"));
});

it("all claims but those on Intl hold on QuickJS, which has none", async () => {
  const { getQuickJS } = (await import(
    pathToFileURL(installed("quickjs-emscripten/dist/index.mjs")).href
  )) as { getQuickJS: () => Promise<QuickJS> };
  const context = (await getQuickJS()).newContext();
  const { value, error } = context.evalCode(`${readFileSync(at("script.js"), "utf8")};answer`);
  expectAll(String(context.dump(value ?? error)), false);
});

/** The little of QuickJS that is used here. */
interface QuickJS {
  newContext(): {
    evalCode(code: string): { value?: unknown; error?: unknown };
    dump(handle: unknown): unknown;
  };
}

it("all claims hold in Chromium", async () => {
  writeFileSync(
    at("index.html"),
    `<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Suite</title><script src="script.js"></script></html>`,
  );
  const browser = await launch();
  const { address, close } = await serve(consumer);
  try {
    const page = await browser.newPage();
    const found = troubles(page);
    await page.goto(address);
    expectAll(await page.evaluate("answer"));
    expect(found).toEqual([]);
  } finally {
    await browser.close();
    close();
  }
});

it("compiles with Hermes, which cannot run it here", { timeout: 300_000 }, () => {
  const compiler = installed("hermes-compiler/hermesc/linux64-bin/hermesc");
  run(compiler, "-emit-binary", "-O", "-w", "-out", "script.hbc", "script.js");
  expect(statSync(at("script.hbc")).size).toBeGreaterThan(100_000);
});
