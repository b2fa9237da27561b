// What a reader meets first, and what stays out of a report without its appendix.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { recordPlots } from "hvac-install-math/plots";
import { isInvalidInputError } from "hvac-install-math/quantity";
import { htmlReport, markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { threeHeads } from "../commissioning/three-heads.ts";
import { root } from "../examples/run-copy.ts";
import { failing, half, rich } from "./rich-record.ts";

const options = { language: english, system: "inch-pound", rules, appendix: false } as const;
const heads = (text: string) => [...text.matchAll(/^## (.*)$/gm)].map(([, head]) => head);
const example = (name: string) => readInstallation(`${root}/examples/${name}`).record;

describe("a report without its appendix", () => {
  it("tells verdict, actions, hold points and steps in this order, and says that the appendix is left out", () => {
    expect(heads(markdownReport(failing, options))).toEqual([
      "Verdict: **FAIL**",
      "Do this next",
      "Hold points",
      "Steps at a glance",
      "Step by step",
      "Cautions",
      "Limits of this report",
    ]);
    expect(markdownReport(failing, options)).toContain("The appendix was left out");
    const whole = markdownReport(failing, { ...options, appendix: true });
    expect(heads(whole).at(-1)).toBe("Appendix: figures, assumptions, records and sources");
    expect(whole).not.toContain("The appendix was left out");
  });

  it("numbers the actions in their order", () => {
    const text = markdownReport(failing, options);
    const [, actions = ""] = text.split("## Do this next\n\n");
    const lines = actions.split("\n\n")[0]?.split("\n") ?? [];
    expect(lines.length).toBeGreaterThan(2);
    lines.forEach((line, i) => {
      expect(line.startsWith(`${i + 1}. `)).toBe(true);
    });
  });

  it("shows a step that passed but waits for another as one that does not count yet, never as a pass", () => {
    const page = htmlReport(failing, options);
    for (const [, tone, word] of page.matchAll(/class="mark (\w+)">([^<]*not count yet)</g)) {
      expect([tone, word]).toEqual(["open", "PASS, does not count yet"]);
    }
    expect(page).toContain("PASS, does not count yet");
    expect(page).toMatch(/does not count yet<\/\w+> \(waits for: /);
  });

  it.each<[string, InstallationRecord]>([
    ["complete", complete],
    ["rich", rich],
    ["failing", failing],
    ["half", half],
    ["three heads", threeHeads],
    ["empty", { version: 2 }],
  ])("has nothing empty, no code and no path in it: %s", (_, record) => {
    for (const appendix of [true, false]) {
      const text = markdownReport(record, { ...options, appendix });
      expect(text).not.toMatch(/\[\d+\]|\bruns\.|\breport\.|undefined|NaN|\{\w+\}/);
      expect(text).not.toMatch(/No (site|nameplate|manual|photo|instrument)|Nothing was amended/);
      expect(text).not.toMatch(/\d\.?\d*E[−-]?\d/);
      const lines = text.split("\n").filter(Boolean);
      lines.forEach((line, i) => {
        if (!line.startsWith("## ")) return;
        expect(lines[i + 1]?.startsWith("## ") ?? true, line).toBe(false);
      });
    }
  });

  it.each(["worked-install", "failing-install", "half-finished-install", "three-heads"])(
    "draws %s with its pictures, however many tests it has",
    (name) => {
      const page = htmlReport(example(name), { ...options, plots: recordPlots });
      expect(page).toContain("<svg ");
    },
  );

  it("puts runs side by side", () => {
    const text = markdownReport(example("three-heads"), options);
    expect(text).toMatch(/^\| Check \| Run A \| Run B \| Run C \|$/m);
  });

  it("has a column for each run, and none for each field of one", () => {
    const text = markdownReport(example("three-heads"), { ...options, appendix: true });
    for (const [head] of text.matchAll(/^\|.*Run A.*\|$/gm)) {
      expect(head.match(/Run A/g)).toHaveLength(1);
    }
    const [, plate] = text.split("*Run C*");
    expect(plate).toContain("| Port | C | record |");
  });

  it("keeps a probability to the digits that a model deserves", () => {
    const text = markdownReport(example("failing-install"), { ...options, appendix: true });
    expect(text).toContain("| Probability that the drop is within the limit | less than 0.1 % |");
  });

  it("refuses an option that is none", () => {
    const wrong = () => markdownReport(complete, { ...options, appendix: "no" as never });
    expect(wrong).toThrow();
    try {
      wrong();
    } catch (error) {
      expect(isInvalidInputError(error) && error.argument).toBe("options.appendix");
    }
  });
});
