import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { logs } from "../../examples/worked-install/make-logs.ts";
import { copyOf, root } from "./run-copy.ts";

const steps =
  "Line run,Joints,Pressure test,Evacuation,Room limit,Charge,Valves,Circuit,Supply,Drain,Operation";

describe("the worked installation", () => {
  const { exitCode, output, errors } = run([join(root, "examples/worked-install")]);
  const lines = output.split("\n");

  it("passes every step and ends with exit code 0", () => {
    expect(exitCode).toBe(0);
    expect(errors).toBe("");
    const passed = lines.flatMap((line) => /^ *\d+\. ([\w ]+?) \.+ PASS$/.exec(line)?.[1] ?? []);
    expect(passed.join()).toBe(steps);
    expect(output.match(/^\d+\. [\w ]+: PASS$/gm)).toHaveLength(11);
  });

  it("says first and last what decides", () => {
    const place = lines.indexOf("Overall: PASS");
    expect(place).toBeGreaterThan(0);
    expect(place).toBeLessThan(8);
    expect(lines.at(-1)).toBe("Overall: PASS");
  });

  it("says that it is invented, and gives reasons, assumptions, cautions and sources", () => {
    for (const text of ["invented example", "Assumed", "Cautions", "Sources", "JCGM 106:2012"]) {
      expect(output).toContain(text);
    }
    expect(output).not.toMatch(/NaN|Infinity|undefined|\{\w+\}|\[object/);
  });

  it("lists no assumption about calibration, order or signatures: the record states them", () => {
    expect(output).not.toMatch(/count as calibrated|taken for granted|Nobody has signed/);
  });

  it.each([
    ["11 ft beyond the pre-charged 25 ft at 0.16 oz/ft are 1.76 oz", /1\.8 oz/],
    ["39.5 oz and 1.8 oz are 41.3 oz", /total charge \.+ 2 lb 9\.3 oz /],
    ["115 % of 10.1 A is 11.6 A (NFPA 70, 440.12(A)(1))", /Disconnect 30 A; 11\.6 A required/],
    [
      "12 AWG copper has a 20 A limit behind it (240.4(D))",
      /20 A: within the nameplate maximum of 20 A/,
    ],
    ["0.9 times 208 V and 1.1 times 230 V", /unit’s range, 187 V to 253 V/],
    ["1/2 in on 24 in is 2.1 %, 1/8 in per foot 1.0 %", /slope 2\.1 % ± .*: at least 1\.0 %/],
    ["168 steps of 5 min are 14 h", /Held for 14 h; 12 h required/],
    [
      "the hold starts at the highest pressure",
      /test reached 500 psig: within the lowest marked pressure, 600/,
    ],
    ["figures come with their uncertainty", /corrected drop \.+ .* psi ± .* psi \(k = 2\)/],
  ])("has its figures right: %s", (_, pattern) => {
    expect(output.replace(/\s+/g, " ")).toMatch(pattern);
  });

  it.each(["worked-install", "failing-install", "half-finished-install"])(
    "ends with the cautions of %s, each once, and its main sources, or all of them when asked",
    (name) => {
      const folder = join(root, "examples", name);
      const bullets = (text: string, part: string) =>
        (text.split(`\n${part}\n`)[1] ?? "").split("\n\n")[0]?.split("\n  - ").slice(1) ?? [];
      const shown = bullets(run([folder]).output, "Sources");
      const all = bullets(run([folder, "--all"]).output, "Sources");
      expect(new Set(all).size).toBe(all.length);
      const left = Number(/^(\d+) more: add --all/.exec(shown.pop() ?? "")?.[1]);
      expect(shown.length + left).toBe(all.length);
      expect(shown.length).toBeLessThanOrEqual(10);
      const cautions = bullets(run([folder]).output, "Cautions");
      expect(new Set(cautions).size).toBe(cautions.length);
      expect(cautions.at(-1)).toMatch(/^The nameplate, .* come first\.$/s);
    },
  );

  it("speaks the reader's units", () => {
    expect(output).toMatch(/118 psig: within/);
    const metric = run([join(root, "examples/worked-install"), "--units", "SI"]);
    expect(metric.exitCode).toBe(0);
    expect(metric.output).toMatch(/814 kPag: within/); // 118 × 6.894757
    expect(metric.output).not.toMatch(/\bpsi|°F|\boz\b/);
  });

  it("holds the logs that its generator writes", () => {
    for (const [name, make] of Object.entries(logs)) {
      expect(readFileSync(join(root, "examples", name), "utf8")).toBe(make());
    }
  });

  it("runs as a program, from anywhere, and writes nothing", () => {
    const folder = copyOf("worked-install");
    const before = readdirSync(folder).join();
    const printed = execFileSync("npx", ["tsx", "examples/worked-install/main.ts", folder], {
      cwd: root,
      encoding: "utf8",
    });
    expect(printed).toBe(`${run([folder]).output}\n`);
    expect(readdirSync(folder).join()).toBe(before);
  });
});

describe("every example", () => {
  it.each(["worked-install", "failing-install", "half-finished-install"])(
    "%s fits a terminal of 80 columns and says that it is invented",
    (name) => {
      for (const units of ["inch-pound", "SI"]) {
        const { output } = run([join(root, "examples", name), "--units", units]);
        expect(output.split("\n").filter((line) => line.length > 80)).toEqual([]);
        expect(output).toContain("invented example");
        expect(output).not.toMatch(/NaN|Infinity|undefined|\{\w+\}|\[object/);
      }
    },
  );
});
