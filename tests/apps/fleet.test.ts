// The example fleet: every record judged once, whatever is stopped or killed on the way.
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { appendFileSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, expect, it } from "vitest";

const fleet = join(import.meta.dirname, "../../examples/fleet");
const folder = mkdtempSync(join(tmpdir(), "fleet-"));
/** How a script is started: by node itself, so that what is killed is what works. */
const command = (script: string, args: readonly string[]) => [
  "--import",
  pathToFileURL(join(fleet, "node_modules/tsx/dist/loader.mjs")).href,
  join(fleet, script),
  ...args,
];
const options = {
  cwd: folder,
  env: { ...process.env, TSX_TSCONFIG_PATH: join(fleet, "tsconfig.json") },
} as const;
const run = (script: string, ...args: string[]) =>
  execFileSync(process.execPath, command(script, args), { ...options, encoding: "utf8" });

/** The records that a table counts: those of its first part, by outcome before and after. */
const counted = (table: string) => {
  const [, part = ""] = /Outcome before and after\n([\s\S]*?)\n\n/.exec(table) ?? [];
  return part.split("\n").reduce((sum, row) => sum + Number.parseInt(row, 10), 0);
};

const children: ChildProcess[] = [];
afterEach(() => {
  for (const child of children.splice(0)) child.kill("SIGKILL");
});

it("goes on where it was stopped, judges what cannot be read as such, and each record once", () => {
  const whole = run("main.ts", "--count", "75", "--records", "a.ndjson");
  expect(counted(whole)).toBe(75);
  // The exception of NFPA 70-2023, 210.8(F), for listed units with power conversion ended on September 1, 2026.
  expect(whole).toMatch(/What is said now[\s\S]*circuit-protection\.ground-fault-required/);
  const results = join(folder, "a.ndjson.nfpa-70-2023.nfpa-70-2023.2026-09-01.done");
  const lines = readFileSync(results, "utf8").trimEnd().split("\n");
  // As a run leaves it that was stopped in the middle of writing its third line.
  writeFileSync(results, `${lines.slice(0, 2).join("\n")}\n${lines[2]?.slice(0, 40)}`);
  const rest = run("main.ts", "--count", "75", "--records", "a.ndjson");
  expect(rest).toContain("50 were done before");
  expect(rest.split("\n\n").slice(0, 3)).toEqual(whole.split("\n\n").slice(0, 3));

  appendFileSync(join(folder, "a.ndjson"), '{"version":2,"odd":1}\n');
  const again = run("main.ts", "--records", "a.ndjson", "--again", "--workers", "1");
  expect(counted(again)).toBe(76);
  expect(again).toMatch(/^ +1 {2}unreadable -> unreadable$/m);
});

const freePort = () =>
  new Promise<number>((found) => {
    const server = createServer().listen(0, () => {
      const address = server.address();
      server.close(() => found(typeof address === "object" && address ? address.port : 0));
    });
  });

const start = (file: string, args: readonly string[]) => {
  const child = spawn(file, args, { ...options, stdio: ["ignore", "pipe", "inherit"] });
  children.push(child);
  return child;
};

/** What a process prints, until it has printed something. */
const printed = (child: ChildProcess, wanted: RegExp) =>
  new Promise<string>((found, lost) => {
    let text = "";
    child.stdout?.on("data", (data) => {
      text += data;
      if (wanted.test(text)) found(text);
    });
    child.once("close", () => lost(new Error(`it ended with: ${text}`)));
  });

it("loses nothing when one of two machines is killed", async () => {
  const port = String(await freePort());
  const redis = `redis://127.0.0.1:${port}`;
  const server = start("redis-server", ["--port", port, "--save", "", "--dir", folder]);
  await printed(server, /Ready to accept connections/);
  const workers = [0, 1].map(() =>
    start(process.execPath, command("queue-worker.ts", ["--redis", redis])),
  );
  const queue = start(
    process.execPath,
    command("queue.ts", ["--redis", redis, "--count", "100", "--records", "b.ndjson"]),
  );
  const table = printed(queue, /records judged/);
  const [first] = workers as [ChildProcess, ChildProcess];
  await printed(first, /done/); // it is at its next portion now
  first.kill("SIGKILL");
  expect(counted(await table)).toBe(100);
  expect(await table).toContain("100 records judged");
});
