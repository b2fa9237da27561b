// Records that tempt a report to tell more than they prove.

import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { ampere, degF, hour, inch, micron, oz, psig, second } from "hvac-install-math/quantity";
import { htmlReport, markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { assessInstallation, rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";

const { equipment, power, charge } = complete;
const [pressureTest] = complete.pressureTests ?? [];
const [evacuation] = complete.evacuations ?? [];
const [run] = complete.runs ?? [];
const ofRun = (own: object) => ({ ...complete, runs: [{ ...run, ...own }] });
const without = (...keys: (keyof InstallationRecord)[]): InstallationRecord =>
  Object.fromEntries(
    Object.entries(complete).filter(([key]) => !keys.includes(key as never)),
  ) as never;
const readings = (count: number, of: (i: number) => { elapsed: unknown; pressure: unknown }) =>
  Array.from({ length: count }, (_, i) => of(i)) as unknown as typeof log;
const log = evacuation?.readings ?? [];

const tempting: Readonly<Record<string, InstallationRecord>> = {
  "no vacuum": without("evacuations"),
  "an empty vacuum log": { ...complete, evacuations: [{ ...evacuation, readings: [] }] },
  "a vacuum log of two rows": {
    ...complete,
    evacuations: [{ ...evacuation, readings: log.slice(0, 2) }],
  },
  "a vacuum that ends at 500.4 micron": {
    ...complete,
    evacuations: [
      {
        ...evacuation,
        readings: readings(61, (i) => ({ elapsed: second(20 * i), pressure: micron(500.4) })),
      },
    ],
  },
  "no pressure test": without("pressureTests"),
  "a pressure test without a criterion": {
    ...complete,
    pressureTests: [{ readings: pressureTest?.readings ?? [] }],
  },
  "a test at 0 psig": {
    ...complete,
    pressureTests: [
      {
        ...pressureTest,
        readings: [
          { pressure: psig(0), temperature: degF(70), elapsed: hour(0) },
          { pressure: psig(0), temperature: degF(70), elapsed: hour(14) },
        ],
      },
    ],
  },
  "a hold short by 0.3 s": {
    ...complete,
    pressureTests: [
      {
        ...pressureTest,
        readings: [
          { pressure: psig(500), temperature: degF(70), elapsed: hour(0) },
          { pressure: psig(489.3), temperature: degF(60), elapsed: second(43_199.7) },
        ],
      },
    ],
  },
  "a test above the marked pressure by 0.04 psi": {
    ...complete,
    equipment: { ...equipment, lowestMarkedPressure: psig(499.96) },
  },
  "no instruments": without("instruments"),
  "no room": ofRun({ room: undefined }),
  "a joint without torque": ofRun({ joints: [{ kind: "flare", tube: "1/4" }] }),
  "one joint of four": ofRun({ joints: run?.joints?.slice(0, 1) ?? [] }),
  "a charge of 1 lb, short of a hair": { ...complete, charge: { ...charge, added: oz(15.97) } },
  "power before its proof": { ...complete, power: { ...power, energizedAt: "2026-05-05T12:00" } },
  "valves before the vacuum": { ...complete, valves: { openedAt: "2026-05-05T10:59" } },
  "valves without a date of the test": {
    ...without("pressureTests"),
    valves: { openedAt: "2026-05-06" },
  },
  "no operation": without("operation"),
  "nothing but operation": { version: 2, operation: complete.operation ?? [] },
  "a breaker above the plate": {
    ...complete,
    equipment: { ...equipment, maximumOvercurrentProtection: ampere(19.96) },
  },
  "a run of which only the length is known": ofRun({
    tubing: { length: run?.tubing?.length ?? inch(1) },
  }),
};

describe.each(Object.entries(tempting))("%s", (_, record) => {
  const judged = assessInstallation(record);
  const markdown = markdownReport(record, { language: english, system: "inch-pound", rules });
  const page = htmlReport(record, { language: english, system: "inch-pound", rules });

  it("is no pass, in title, heading and steps", () => {
    expect(judged.outcome).not.toBe("pass");
    expect(markdown).not.toMatch(/^## Verdict: \*\*PASS/m);
    expect(page).not.toMatch(/<title>PASS|<h2 id="head-verdict">Verdict <strong class="mark pass"/);
    const passed = judged.steps.filter(
      ({ outcome, state, blockedBy }) =>
        outcome === "pass" && state === "done" && blockedBy.length === 0,
    );
    expect(markdown.match(/^### \d+\\?\. .*\*\*PASS\*\*$/gm) ?? []).toHaveLength(passed.length);
  });

  it("shows as released what is released, and nothing else", () => {
    const released = judged.holds.filter(({ state }) => state === "released");
    expect(markdown.match(/^- \*\*RELEASED\*\* /gm) ?? []).toHaveLength(released.length);
    if (released.length < judged.holds.length) expect(markdown).not.toContain("Nothing is held");
  });

  it("never says that a figure breaks a limit that reads the same", () => {
    const twice =
      /(\d[\d.]* (?:psig|psi|A|V|micron|oz|h|min|s)) (?:is above the limit of|is asked for; only|; the lowest marked is) \1/;
    expect(markdown).not.toMatch(twice);
    expect(markdown).not.toMatch(/1 lb 16|12 in\b.* ft|60 min|60 s\b|-0\.0\b/);
  });
});

it("tells a hair from the limit in the reader's units", () => {
  const said = (name: string, system: "inch-pound" | "SI") =>
    markdownReport(tempting[name] as InstallationRecord, { language: english, system, rules });
  expect(said("a hold short by 0.3 s", "SI")).toContain("11 h 59 min 59.7 s; 12 h required");
  const marked = "a test above the marked pressure by 0.04 psi";
  expect(said(marked, "inch-pound")).toContain(
    "reached 500.00 psig: above the lowest marked pressure, 499.96 psig",
  );
  const breaker = said("a breaker above the plate", "inch-pound");
  expect(breaker).toContain("The breaker is too large: 20.00 A, nameplate maximum 19.96 A");
  expect(said(marked, "SI")).toContain(
    "reached 3447.4 kPag: above the lowest marked pressure, 3447.1 kPag",
  );
});

it("says at the hold points what was waived and not proved", () => {
  const waivers = [
    { step: "room-limit", reason: "no-enclosed-room", by: "N. N.", at: "2026-05-04" },
  ] as const;
  const record = { ...ofRun({ room: undefined }), waivers };
  const markdown = markdownReport(record, { language: english, system: "SI", rules });
  expect(markdown).toContain("no enclosed room");
});
