// Does npm start plan, judge and report, and say first what fails?
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { root } from "./run-copy.ts";

const folder = join(root, "examples/failing-install");

describe("npm start", () => {
  it("judges by the word, or without it", () => {
    expect(run(["judge", folder])).toEqual(run([folder]));
  });

  it("reports as Markdown, with the appendix or without", () => {
    const { exitCode, output } = run(["report", folder]);
    expect(exitCode).toBe(1);
    expect(output).toMatch(/^# Installation report: /);
    expect(output).toContain("\n## Appendix: ");
    expect(run(["report", folder, "--no-appendix"]).output).not.toContain("\n## Appendix: ");
  });

  it("tells the verdict, what decides it, what to do and what is held before the steps, what fails first", () => {
    const { output } = run(["judge", folder]);
    const places = [
      "\nOverall: FAIL",
      "\nWhat decides\n",
      "\nWhat to do next\n",
      "\nHold points\n",
      "\n   1. Line run ...",
      "\n3. Pressure test: FAIL\n",
      "\n8. Circuit: FAIL\n",
      "\n7. Valves: INCONCLUSIVE\n",
      "\n1. Line run: PASS\n",
      "\nCautions\n",
    ].map((text) => output.indexOf(text));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it("says of a step that passed too early that it does not count yet", () => {
    expect(run([folder]).output).toMatch(/^ +4\. Evacuation \.+ PASS \(does not count yet\)$/m);
  });
});
