import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { logs } from "../../examples/worked-install/make-logs.ts";

const root = join(import.meta.dirname, "../..");
const original = join(root, "examples/worked-install");
let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "worked-install-"));
  for (const name of readdirSync(original).filter((one) => !one.endsWith(".ts"))) {
    cpSync(join(original, name), join(folder, name));
  }
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Changes a file of the copy by replacing one text that has to be there. */
function change(name: string, from: string | RegExp, to: string): void {
  const text = readFileSync(join(folder, name), "utf8");
  const changed = text.replace(from, to);
  expect(changed).not.toBe(text);
  writeFileSync(join(folder, name), changed);
}

describe("the worked installation", () => {
  it("passes every step and ends with exit code 0", () => {
    const { exitCode, output } = run([]);
    expect(output).toMatch(/^Overall: PASS$/m);
    expect(output.match(/^\d\. .*: PASS$/gm)).toHaveLength(5);
    expect(exitCode).toBe(0);
  });

  it("says that its data is invented, and gives reasons, assumptions, cautions and sources", () => {
    const { output } = run([]);
    for (const text of ["Invented data", "assumed:", "Cautions", "Sources", "JCGM 106:2012"]) {
      expect(output).toContain(text);
    }
    expect(output).not.toMatch(/NaN|Infinity|undefined|\{\w+\}|\[object/);
  });

  it("speaks the reader's units", () => {
    expect(run([]).output).toMatch(/ psig on a gauge/);
    const metric = run(["--units", "SI"]);
    expect(metric.exitCode).toBe(0);
    expect(metric.output).toMatch(/ kPag on a gauge/);
    expect(metric.output).not.toMatch(/psi|°F/);
  });

  it("holds the logs that its generator writes", () => {
    for (const [name, make] of Object.entries(logs)) {
      expect(readFileSync(join(original, name), "utf8")).toBe(make());
    }
  });

  it("runs as a program, from anywhere", () => {
    const printed = execFileSync("npx", ["tsx", "examples/worked-install/main.ts", folder], {
      cwd: root,
      encoding: "utf8",
    });
    expect(printed).toBe(`${run([folder]).output}\n`);
  });
});

describe("an installation that is not right", () => {
  it("ends with exit code 1 when the tubing leaks", () => {
    const rows = readFileSync(join(folder, "nitrogen-hold.csv"), "utf8").split("\n");
    const leaking = rows.map((row, i) => {
      const [elapsed, pressure, temperature] = row.split(",");
      return i < 2 || !temperature
        ? row
        : [elapsed, (Number(pressure) - i * 0.15).toFixed(1), temperature].join();
    });
    writeFileSync(join(folder, "nitrogen-hold.csv"), leaking.join("\n"));
    const { exitCode, output } = run([folder]);
    expect(exitCode).toBe(1);
    expect(output).toMatch(/^1\. Nitrogen pressure test: FAIL$/m);
    expect(output).toMatch(/^Overall: FAIL$/m);
  });

  it("ends with exit code 1 when the breaker is larger than the nameplate allows", () => {
    change(
      "install.json",
      '"rating": { "value": 20, "unit": "A" }, "poles"',
      '"rating": { "value": 30, "unit": "A" }, "poles"',
    );
    const { exitCode, output } = run([folder]);
    expect(exitCode).toBe(1);
    expect(output).toMatch(/Branch circuit.*: FAIL$/m);
  });

  it("ends with exit code 1 when the evidence cannot decide", () => {
    change(
      "install.json",
      '"largestAcceptedDrop": { "value": 4',
      '"largestAcceptedDrop": { "value": 0.1',
    );
    const { exitCode, output } = run([folder]);
    expect(exitCode).toBe(1);
    expect(output).toMatch(/^Overall: UNDECIDED$/m);
  });
});

describe("bad input ends with exit code 2 and one sentence that names", () => {
  const message = (...args: string[]) => {
    const before = readdirSync(folder).join();
    const { exitCode, output } = run(args.length ? args : [folder]);
    expect(exitCode).toBe(2);
    expect(output).not.toContain("\n");
    expect(readdirSync(folder).join()).toBe(before);
    return output;
  };

  it("a folder without the file", () => {
    expect(message(join(folder, "nowhere"))).toMatch(/^install\.json: cannot be read in /);
  });

  it("a log that is missing", () => {
    rmSync(join(folder, "vacuum-decay.csv"));
    expect(message()).toMatch(/^vacuum-decay\.csv: cannot be read in /);
  });

  it("JSON that is broken", () => {
    change("install.json", "{", "{,");
    expect(message()).toMatch(/^install\.json: is not JSON/);
  });

  it("a field that is missing", () => {
    change("install.json", /"refrigerant": "R-410A",/, "");
    expect(message()).toBe(
      "install.json, equipment.refrigerant: undefined is not allowed; allowed: a text",
    );
  });

  it("an unknown refrigerant", () => {
    change("install.json", "R-410A", "R-999");
    expect(message()).toMatch(/^install\.json, equipment\.refrigerant: .*R-999.*R-?410A/);
  });

  it("a line of a log with a value too few", () => {
    change("nitrogen-hold.csv", /^15,.*$/m, "15,499.0");
    expect(message()).toBe(
      "nitrogen-hold.csv, line 6: 2 values are not allowed; allowed: 3, one per column",
    );
  });

  it("a cell that is not a number", () => {
    change("vacuum-decay.csv", /^10,.*$/m, "10,OL");
    expect(message()).toBe(
      'vacuum-decay.csv, line 5, pressure: "OL" is not allowed; allowed: a number in micron',
    );
  });

  it("an absolute unit where the gauge reads above the atmosphere", () => {
    change("nitrogen-hold.csv", "[psig]", "[psia]");
    expect(message()).toMatch(
      /^nitrogen-hold\.csv, line 3, pressure: .*psia.*a unit of .*gaugePressure/,
    );
  });

  it("a wrong unit in the input", () => {
    change("install.json", '"value": 1520, "unit": "m"', '"value": 1520, "unit": "psig"');
    expect(message()).toMatch(/^install\.json, site\.altitude: .*"psig".*a unit of .*length/);
  });

  it("a number that no site can have", () => {
    change("install.json", '"value": 1520', '"value": 15200');
    expect(message()).toMatch(
      /^install\.json, site\.altitude: altitude: 15200 m .*at most 11000 m/,
    );
  });

  it("a maximum overcurrent protection below the minimum circuit ampacity", () => {
    change(
      "install.json",
      '"maximumOvercurrentProtection": { "value": 20',
      '"maximumOvercurrentProtection": { "value": 10',
    );
    expect(message()).toMatch(/^install\.json, equipment and circuit: .*MOP below MCA/);
  });

  it("an option that is not known", () => {
    expect(message("--units", "cubits")).toMatch(/^--units "cubits" is not known; usage: /);
    expect(message("--unit", "SI")).toMatch(/usage: npm start/);
  });
});
