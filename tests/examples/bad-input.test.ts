import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { change, copyOf, runQuietly } from "./run-copy.ts";

let folder = "";
beforeEach(() => {
  folder = copyOf("worked-install");
});

describe("bad input ends with exit code 2, writes nothing and names", () => {
  const message = (...args: string[]) => {
    const { exitCode, errors } = runQuietly(folder, ...args);
    expect(exitCode).toBe(2);
    return errors;
  };

  it("a folder without a record", () => {
    const empty = join(folder, "empty");
    mkdirSync(empty);
    expect(run([empty])).toMatchObject({ exitCode: 2, output: "" });
    expect(run([empty]).errors).toMatch(/^record\.json: cannot be read in /);
    expect(run([join(folder, "nowhere")]).errors).toMatch(/^record\.json: cannot be read in /);
  });

  it("JSON that is broken", () => {
    change(folder, "record.json", "{", "{,");
    expect(message()).toMatch(/^record\.json, record: /);
  });

  it("a field that is misspelt", () => {
    change(folder, "record.json", '"jointCount"', '"jointsCount"');
    expect(message()).toMatch(
      /^record\.json, runs\[0\]\.tubing\.jointsCount: 4; allowed: .*jointCount/,
    );
  });

  it("a newer version of the format", () => {
    change(folder, "record.json", '"version": 2', '"version": 3');
    expect(message()).toMatch(/^record\.json, version: 3; allowed: at most 2/);
  });

  it("a unit of another kind", () => {
    change(folder, "record.json", '"value": 1520, "unit": "m"', '"value": 1520, "unit": "psig"');
    expect(message()).toMatch(/^record\.json, site\.altitude.*psig/);
  });

  it("a number that no site can have, beside all that could be judged", () => {
    change(folder, "record.json", '"value": 1520', '"value": 15200');
    const { exitCode, output, errors } = runQuietly(folder);
    expect(exitCode).toBe(2);
    expect(errors).toMatch(/^record\.json, site\.altitude: .*15200 m; at most 11000 m/);
    expect(output).toMatch(/^ +9\. Supply \.+ PASS$/m);
    expect(output.split("\n").at(-1)).toBe("Overall: INCONCLUSIVE");
  });

  it("an unknown refrigerant", () => {
    change(folder, "record.json", "R-410A", "R-999");
    expect(message()).toMatch(/^record\.json, equipment\.refrigerant: .*R-999/m);
  });

  it("a maximum overcurrent protection below the minimum circuit ampacity", () => {
    const from = /("maximumOvercurrentProtection": .*"value": )20/;
    change(folder, "record.json", from, "$110");
    expect(message()).toMatch(
      /^record\.json, equipment\.maximumOvercurrentProtection: .*10 A; at least 12\.4 A allowed\. MOP below MCA/,
    );
  });

  it("a line of a log with a value too few", () => {
    change(folder, "nitrogen-hold.csv", /^15,.*$/m, "15,499.0");
    expect(message()).toBe("nitrogen-hold.csv: Line 6 has 2 cells. Expected: 3.");
  });

  it("a cell that is not a number", () => {
    change(folder, "vacuum-decay.csv", /^10,.*$/m, "10,OL");
    expect(message()).toMatch(
      /^vacuum-decay\.csv: Line 5, pressure \[micron\]: “OL” is not a number/,
    );
  });

  it("a word that is none of the states", () => {
    change(folder, "supply.csv", /^0,rest/m, "0,asleep");
    expect(message()).toMatch(/^supply\.csv: Line 3, state: “asleep” is none of the stated words/);
  });

  it("an absolute unit where the gauge reads above the atmosphere", () => {
    change(folder, "nitrogen-hold.csv", "[psig]", "[psia]");
    expect(message()).toBe("nitrogen-hold.csv: No column was found for pressure.");
  });

  it("a reading that the model cannot follow, by its line in the log", () => {
    change(folder, "nitrogen-hold.csv", /^15,([\d.]+),.*$/m, "15,$1,900");
    expect(message()).toMatch(/^nitrogen-hold\.csv, line 6, temperature: .*900 °F; at most /);
  });

  it("a column that is missing", () => {
    change(folder, "vacuum-decay.csv", "pressure [micron]", "pressure");
    expect(message()).toBe("vacuum-decay.csv: No column was found for pressure.");
  });

  it("a log of another name", () => {
    writeFileSync(join(folder, "vacum.csv"), "elapsed [s],pressure [micron]\n0,300\n");
    expect(message()).toMatch(/^vacum\.csv: no such log; allowed: nitrogen-hold\.csv, /);
  });

  it("readings that stand in two places", () => {
    change(
      folder,
      "record.json",
      '"policy": "splitManualB"',
      '"readings": [], "policy": "splitManualB"',
    );
    expect(message()).toBe(
      "vacuum-decay.csv: record.json has evacuations[0].readings too; keep one of the two",
    );
  });

  it("an option that is not known", () => {
    expect(message("--units", "cubits")).toMatch(/^--units "cubits"; usage: /);
    expect(message("--unit", "SI")).toMatch(/usage: npm start/);
    expect(message("--report", "report.pdf")).toMatch(/^--report "report\.pdf"; usage: /);
    expect(message("elsewhere")).toMatch(/one folder too many/);
  });
});

describe("a log that is missing", () => {
  it("leaves its step undecided, which is exit code 1", () => {
    rmSync(join(folder, "vacuum-decay.csv"));
    const { exitCode, output } = runQuietly(folder);
    expect(exitCode).toBe(1);
    expect(output).toMatch(/^ +4\. Evacuation \.+ INCONCLUSIVE \(not all recorded\)$/m);
    expect(output).toMatch(/not recorded: vacuum readings/);
  });
});

describe("evidence that cannot decide", () => {
  it("ends with exit code 1", () => {
    change(folder, "record.json", /("maximumDrop": .*"value": )4/, "$10.1");
    const { exitCode, output } = runQuietly(folder);
    expect(exitCode).toBe(1);
    expect(output.split("\n").at(-1)).toBe("Overall: INCONCLUSIVE");
  });
});
