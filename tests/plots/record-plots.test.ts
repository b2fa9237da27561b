import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  pressureTestPlot,
  recordPlots,
  supplyVoltagePlot,
  vacuumDecayPlot,
} from "hvac-install-math/plots";
import {
  atmosphereAtAltitude,
  degC,
  hour,
  isInvalidInputError,
  kelvin,
  kPag,
  m,
  micron,
  pascalAbsolute,
  psi,
  psia,
} from "hvac-install-math/quantity";
import { htmlReport } from "hvac-install-math/report";
import { acceptancePolicies } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { type Change, changed } from "../commissioning/changed.ts";
import { complete } from "../commissioning/complete-record.ts";
import { threeHeads } from "../commissioning/three-heads.ts";
import { metric, reader } from "./samples.ts";

const drawn = (record: InstallationRecord, options = reader) =>
  recordPlots(record, assessInstallation(record), options);

describe("the pictures of a record", () => {
  it("are those of its modules, by what the record holds and what was found of it", () => {
    const { pressureTests = [], evacuations = [], instruments } = complete;
    const [start, end] = pressureTests[0]?.readings ?? [];
    const { testGauge: pressure, gasThermometer: temperature } = instruments ?? {};
    const test = {
      start,
      end,
      atmosphere: atmosphereAtAltitude(m(1520)),
      instruments: { pressure, temperature },
    };
    const log = { ...evacuations[0], policy: acceptancePolicies.splitManualB };
    const found = assessInstallation(complete).steps.map(({ checks }) => checks[0]?.assessment);
    const [hold, decay, room, supply, ...more] = drawn(complete);
    expect([hold?.step, decay?.step, room?.step, supply?.step, more]).toEqual([
      "pressure-test",
      "evacuation",
      "room-limit",
      "supply",
      [],
    ]);
    const own = { ...reader, width: 360 };
    expect(hold?.svg).toBe(pressureTestPlot(test as never, found[2] as never, own));
    expect(decay?.svg).toBe(vacuumDecayPlot(log as never, found[3] as never, own));
    expect(supply?.svg).toBe(supplyVoltagePlot(found[8] as never, own));
    // factory charge 39.5 oz and the added 1.76 oz, as the rule asks: 2 lb 9.3 oz
    expect(room?.svg).toContain("charge 2 lb 9.3 oz, limit");
  });

  it("are in the reader's units", () => {
    const si = recordPlots(complete, assessInstallation(complete), metric);
    expect(si[0]?.svg).toContain(`Pressure, ${kPag.symbol}`);
    expect(si[0]?.svg).toContain(`Gas temperature, ${degC.symbol}`);
    expect(si[1]?.svg).toContain(`Pressure, ${pascalAbsolute.symbol}`);
    const units = { temperature: kelvin, absolutePressure: micron };
    const own = recordPlots(complete, assessInstallation(complete), { ...metric, units });
    expect(own[0]?.svg).toContain("Gas temperature, K");
    expect(own[1]?.svg).toContain("Pressure, microns");
  });

  it.each<[string, Change]>([
    [
      "of two readings without their times",
      {
        "pressureTests[0].readings[0].elapsed": undefined,
        "pressureTests[0].readings[1].elapsed": undefined,
      },
    ],
    [
      "of absolute readings",
      {
        "pressureTests[0].readings[0].pressure": psia(512),
        "pressureTests[0].readings[1].pressure": psia(501.5),
      },
    ],
    ["of a measured atmosphere", { site: { atmosphere: psia(12.2) } }],
    ["in copper tubes", { "pressureTests[0].wall": "copper" }],
  ])("show a test %s", (_, changes) => {
    const record = changed(changes);
    expect(drawn(record).map(({ step }) => step)).toContain("pressure-test");
  });

  it("are none where nothing was judged, such as at an altitude that is unknown or has no air", () => {
    expect(drawn({ version: 2 })).toEqual([]);
    for (const site of [undefined, { altitude: m(15_200) }]) {
      expect(drawn(changed({ site })).map(({ step }) => step)).toEqual([
        "evacuation",
        "room-limit",
        "supply",
      ]);
    }
  });

  it("show the tightest of several rooms, and give each of several tests an id of its own", () => {
    const all = recordPlots(threeHeads, assessInstallation(threeHeads), reader);
    expect(all.filter(({ step }) => step === "room-limit")).toHaveLength(1);
    const [test] = complete.pressureTests ?? [];
    const twice = { ...complete, pressureTests: [test ?? {}, test ?? {}] };
    const ids = drawn(twice).flatMap(({ svg }) =>
      [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id),
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain("pressure-test-plot-2-title");
  });

  it("are named by the runs that several tests cover, or by their number", () => {
    const [test = {}] = threeHeads.pressureTests ?? [];
    const [evacuation = {}] = threeHeads.evacuations ?? [];
    const [first = "", ...others] = (threeHeads.runs ?? []).map(({ name = "" }) => name);
    const record = {
      ...threeHeads,
      pressureTests: [
        { ...test, covers: [first] },
        { ...test, covers: others },
      ],
      evacuations: [evacuation, { ...evacuation, covers: others }],
    };
    const named = drawn(record).slice(0, 4);
    expect(named.map(({ title }) => title)).toEqual([
      `Nitrogen pressure test ${first}`,
      `Nitrogen pressure test ${others.join(", ")}`,
      "Vacuum decay after isolation 1",
      `Vacuum decay after isolation ${others.join(", ")}`,
    ]);
    for (const { title, svg } of named) expect(svg).toContain(`-title">${title}</title>`);
    expect(drawn(complete)[0]?.title).toBe("Nitrogen pressure test");
    // Of one test the temperatures have a panel of their own.
    expect(drawn(complete)[0]?.svg).toContain("Gas temperature");
    for (const { svg } of named) expect(svg).not.toContain("Gas temperature");
  });

  it("show a log of three readings as one, with the limit that was agreed for it", () => {
    const [test = {}] = complete.pressureTests ?? [];
    const [start = {}, end = {}] = test.readings ?? [];
    const readings = [start, { ...start, elapsed: hour(1) }, { ...end, elapsed: hour(24) }];
    const log = { ...test, readings, criterion: { maximumDrop: psi(4), per: hour(24) } };
    const [hold] = drawn({ ...complete, pressureTests: [log] });
    expect(hold?.svg).toContain("3 readings over 24 h");
    // A limit that grows with time begins where the explained pressure does.
    const first = (role: string) =>
      new RegExp(`<path d="(M[^"L]*)L[^"]*" fill="none" stroke="var\\(--plot-${role}`).exec(
        hold?.svg ?? "",
      )?.[1];
    expect(first("limit")).toBe(first("model"));
  });

  it("show the same room whichever is recorded first, where several are judged", () => {
    const { runs = [] } = threeHeads;
    const room = (record: InstallationRecord) =>
      drawn(record).find(({ step }) => step === "room-limit")?.svg;
    expect(room(threeHeads)).toBeDefined();
    for (const order of [
      [2, 1, 0],
      [1, 2, 0],
      [1, 0, 2],
    ])
      expect(room({ ...threeHeads, runs: order.map((i) => runs[i] ?? {}) })).toBe(room(threeHeads));
  });

  it("have the ids of the caller's prefix, so that several records stand on one page", () => {
    const idsOf = (id?: string) =>
      drawn(complete, { ...reader, id } as never).flatMap(({ svg }) =>
        [...svg.matchAll(/ (?:id|aria-labelledby)="([^"]+)"/g)].flatMap(([, ids = ""]) =>
          ids.split(" "),
        ),
      );
    const [first, second] = [idsOf("job-1"), idsOf("job-2")];
    for (const id of first) expect(id).toMatch(/^job-1-/);
    expect(first.filter((id) => second.includes(id) || idsOf().includes(id))).toEqual([]);
    expect(() => idsOf("1 job")).toThrow("letters, digits, - and _");
  });

  it("say nothing in psi, °F or ounces under SI, nor in kPa, °C or grams under inch-pound", () => {
    for (const record of [complete, threeHeads]) {
      const text = (options: typeof reader) =>
        recordPlots(record, assessInstallation(record), options)
          .map(({ svg }) => svg.replace(/<[^>]+>/g, " "))
          .join(" ");
      expect(text(metric)).not.toMatch(/\bpsi|°F|\d (oz|lb|micron)/);
      expect(text(reader)).not.toMatch(/\bkPa|\bPa\b|°C|\d k?g\b/);
    }
  });

  it("go into the report as they are", () => {
    const page = htmlReport(complete, { ...metric, plots: recordPlots });
    for (const { svg } of recordPlots(complete, assessInstallation(complete), metric)) {
      expect(page).toContain(svg);
    }
  });

  it.each([
    [[undefined, assessInstallation(complete), metric], "record"],
    [[complete, undefined, metric], "assessment"],
    [[complete, {}, metric], "assessment.steps"],
    [[complete, { steps: [null] }, metric], "assessment.steps[0].checks"],
    [[complete, assessInstallation(complete), undefined], "options"],
    [[complete, assessInstallation(complete), { ...metric, system: "metric" }], "options.system"],
    [[complete, assessInstallation(complete), { system: "SI" }], "language"],
  ])("are refused by name where an argument is none (%#)", (given, argument) => {
    let refused: unknown;
    try {
      recordPlots(...(given as Parameters<typeof recordPlots>));
    } catch (error) {
      refused = isInvalidInputError(error) && error.argument;
    }
    expect(refused).toBe(argument);
  });
});
