// Every question of a plan names what it changes: no more, and nothing that goes missing is left out.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { type InstallationPlan, planInstallation } from "hvac-install-math/planning";
import { literPerHour, mm } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { pathsOf, put, type Segment, textOf } from "../commissioning/mutated-record.ts";
import { planned } from "./installations.ts";

const plan = (record: InstallationRecord) => planInstallation(record, { rules });
const answered = (name: string) =>
  changed(
    {
      "plan.pump": literPerHour(3600),
      "plan.insulation": mm(13),
      "plan.drainDiameter": mm(18),
      "plan.cableDiameter": mm(9),
    },
    planned[name] as InstallationRecord,
  );

/** What may be left unsaid, so that nobody asks for it when its line is gone. */
const optional: Readonly<Record<string, string>> = {
  "equipment.manual.run.minimumLength": "a manual that prints none has none",
  "plan.hold": "the hold that shows the leak is said without it",
  "plan.slack": "none is kept",
  "plan.serviceLoop": "none is kept",
  "runs[0].drain.panPressure": "0 at most wall units",
};
/** Answers that change nothing as long as they agree with the plan. */
const agreeing = /testPressure$|\.ports(\.|$)/;

const pathText = (path: readonly Segment[]) =>
  path
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .slice(1);

/** The lines of each part of a plan, by code and with their figures. */
function partsOf({ bring, set, check }: InstallationPlan) {
  const parts = new Map<string, { codes: Set<string>; lines: string[] }>();
  for (const { part, code, values } of [...bring, ...set, ...check]) {
    const own = parts.get(part) ?? { codes: new Set(), lines: [] };
    own.codes.add(code);
    own.lines.push(textOf([code, values]));
    parts.set(part, own);
  }
  return parts;
}

describe.each(["Heron Cabin", "Three Finches", "Quick Wren"])("%s", (name) => {
  const record = answered(name);
  const whole = plan(record);
  const before = partsOf(whole);
  const known = new Set(whole.ask.map(({ path }) => path));
  const fields = pathsOf(record).filter(
    ([first, , third]) => !(first === "runs" && third === undefined),
  );

  it("asks for every field that takes a line away, and names the part of that line", () => {
    const silent: string[] = [];
    const idle: string[] = [];
    for (const path of fields) {
      const field = pathText(path);
      // What the whole system is built of changes the questions themselves.
      if (/^(version|equipment|equipment\.construction|pressureTests.*|operation.*)$/.test(field))
        continue;
      const left = plan(put(record, path, undefined) as InstallationRecord);
      const after = partsOf(left);
      const asked = left.ask.filter((one) => !known.has(one.path));
      const named = new Set(asked.flatMap(({ changes }) => changes as readonly string[]));
      for (const [part, { codes }] of before) {
        const lost = [...codes].filter((code) => !after.get(part)?.codes.has(code));
        if (lost.length > 0 && !named.has(part) && !(field in optional))
          silent.push(`${field}: ${lost} of ${part}`);
      }
      const isLeaf = asked.length === 1 && asked[0]?.path === field;
      for (const part of isLeaf ? named : []) {
        const same = textOf(before.get(part)?.lines) === textOf(after.get(part)?.lines);
        if (same && !agreeing.test(field)) idle.push(`${field}: ${part}`);
      }
    }
    expect(silent).toEqual([]);
    expect(idle).toEqual([]);
  }, 60_000);
});
