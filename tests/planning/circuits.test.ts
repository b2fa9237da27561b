// Circuits and supply of a plan, line by line, without their sources: these are those of circuit-protection, which has
// them checked. Drops by the published resistances are worked in twelve.test.ts and own.test.ts.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ampere, ft, m, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { planned } from "./installations.ts";
import * as own from "./own.ts";
import { partOf } from "./part.ts";

const named = (name: string) => planned[name] as InstallationRecord;
const heron = named("Heron Cabin");
const rue = named("Rue Courte");
const quattro = named("Casa Quattro");
const loft = named("Foundry Loft");

type Changes = Readonly<Record<string, unknown>>;
const bare = (lines: readonly string[]) => lines.map((one) => one.replace(/ \[.*$/, ""));
function circuits(record: InstallationRecord, changes: Changes = {}) {
  const { bring, set, check, ask } = partOf("circuit", record, changes);
  return { bring: bare(bring), set: bare(set), check: bare(check), ask };
}
const first = "power.circuits[0]";
const breakerOrFuse = "kinds device.breaker + device.fuse";

describe("the circuits of a plan", () => {
  // NFPA 70: ampacity 15 A and 14 AWG (240.4(D)); 115 % of 12.1 A for the disconnect (440.12(A)), 13.9 A; 30 A is made.
  it("bring device, conductor, grounding and disconnect by the plate", () => {
    expect(circuits(heron)).toEqual({
      bring: [
        `${first}: device, circuit 1, ${breakerOrFuse}, poles 1, ratings 15 A + 20 A`,
        `${first}: conductor, circuit 1, size 14 AWG, usable 15 A`,
        `${first}: grounding, circuit 1, size 14 AWG`,
        `${first}: disconnect, circuit 1, least 13.91 A, made 30 A`,
      ],
      set: [],
      check: [`pass: ${first}: drop-within, circuit 1, drop 2.85 %, limit 3 %`],
      ask: [],
    });
  });

  // The 5 % of IEC 60364-5-52 leave 3 % to plan for; the next size after 1.5 mm² is 2.5 mm².
  it("bring the next conductor that keeps the drop planned for, and its grounding", () => {
    const { bring, check } = circuits(quattro);
    expect(bring.slice(1, 4)).toEqual([
      `${first}: conductor, circuit 1, size 1.5 mm², usable 19.5 A`,
      `${first}: conductor-for-drop, circuit 1, drop 4.36 %, limit 3 %, size 2.5 mm², smallest 1.5 mm²`,
      `${first}: grounding, circuit 1, size 2.5 mm²`,
    ]);
    expect(check).toEqual([`pass: ${first}: drop-within, circuit 1, drop 2.62 %, limit 5 %`]);
  });

  // 14 AWG drops 2.85 % in 45 ft, and in 300 ft 300/45 of it, 19.0 %.
  it("fail the drop of a conductor that is fitted, and bring no other", () => {
    const { bring, check } = circuits(heron, {
      [`${first}.wiring.length`]: ft(300),
      [`${first}.installed`]: { conductor: "14 AWG" },
    });
    expect(bring.join()).not.toMatch(/conductor-for-drop/);
    expect(check[0]).toMatch(
      /^fail: power\.circuits\[0\]: drop-above, circuit 1, drop (18\.9|19|19\.0)\d* %, limit 3 %$/,
    );
  });

  it("tell the drop at the start where the locked rotor is printed", () => {
    expect(circuits(own.longFeed).check).toEqual([
      `pass: ${first}: drop-within, circuit heat pump, drop 2.48 %, limit 3 %`,
      // 40 A against 10 A, four times 2.48 %
      `inconclusive: ${first}: drop-at-start, circuit heat pump, drop 9.92 %`,
    ]);
  });

  it("take the plate of the one that they feed, and call it by its name or number", () => {
    const { bring } = circuits(loft);
    // 115 % of 17.5 A and of 36 A
    expect(bring.filter((one) => /disconnect/.test(one))).toEqual([
      `${first}: disconnect, circuit 1, least 20.13 A, made 30 A`,
      "power.circuits[1]: disconnect, circuit air handler, least 41.4 A, made 60 A",
    ]);
    const unnamed = circuits(loft, { "power.circuits[1].name": undefined }).bring;
    expect(unnamed.at(-1)).toMatch(/^power\.circuits\[1\]: disconnect, circuit 2,/);
  });

  it("are fed by a fuse alone where the plate says so", () => {
    const { bring } = circuits(heron, { "equipment.protectionMarking": "fuse only" });
    expect(bring[0]).toMatch(/^power\.circuits\[0\]: device, circuit 1, kinds device\.fuse, poles/);
  });

  const ask = (path: string, changes = "part.circuit") =>
    `${path}: ask, changes ${changes}, field field.${path.replace(/\[\d\]/, "")}`;
  const siteOf = "part.circuit + part.supply";

  it("ask what an outdoor unit needs where none is recorded", () => {
    const wanted = [
      ask(`${first}.rules`),
      ask("power.voltage", siteOf),
      ask("power.phases", siteOf),
      ask(`${first}.wiring`),
      ask(`${first}.wiring.length`),
    ];
    for (const power of [undefined, {}, { circuits: [] }]) {
      expect(circuits(heron, { power })).toEqual({ bring: [], set: [], check: [], ask: wanted });
    }
  });

  it.each<[family: string, record: InstallationRecord, fields: string[]]>([
    ["rated current and largest fuse by metric rules", rue, ["ratedCurrent", "maximumFuse"]],
    [
      "ampacity and largest device by inch rules",
      heron,
      ["minimumCircuitAmpacity", "maximumOvercurrentProtection"],
    ],
  ])("ask for %s", (_, record, fields) => {
    const none = {
      "equipment.minimumCircuitAmpacity": undefined,
      "equipment.maximumOvercurrentProtection": undefined,
    };
    const asked = circuits(record, none).ask.map((one) => one.split(":")[0]);
    for (const field of fields) expect(asked).toContain(`equipment.${field}`);
    expect(asked).toHaveLength(fields.length);
  });

  // IEC 60898-1, 5.3: of 6, 8, 10, 13, 16 A those from 5.6 A to the fuse of 16 A
  it("take rated current and largest fuse of a metric plate", () => {
    const metric = {
      "equipment.minimumCircuitAmpacity": undefined,
      "equipment.maximumOvercurrentProtection": undefined,
      "equipment.ratedCurrent": ampere(5.6),
      "equipment.maximumFuse": ampere(16),
    };
    const { bring, ask: asked } = circuits(rue, metric);
    expect(bring[0]).toBe(
      `${first}: device, circuit 1, ${breakerOrFuse}, poles 1, ratings 6 A + 8 A + 10 A + 13 A + 16 A`,
    );
    expect(asked).toEqual([]);
  });

  it("ask again for wiring that can't be", () => {
    const length = circuits(heron, { [`${first}.wiring.length`]: m(-1) });
    expect(length.ask).toEqual([
      `${first}.wiring: unusable, field field.power.circuits.wiring, value -1 m`,
    ]);
    expect(length.bring).toEqual([]);
  });
});

describe("the supply of a plan", () => {
  it("asks again for voltages that can't be", () => {
    const ask = (changes: Changes) => partOf("supply", heron, changes);
    expect(ask({ "equipment.ratedVoltages": [volt(-115)] })).toEqual({
      bring: [],
      set: [],
      check: [],
      ask: ["equipment.ratedVoltages: unusable, field field.equipment.ratedVoltages, value -115 V"],
    });
  });

  // NEMA MG 1, 12.44: 10 % either way of 115 V, 103.5 V to 126.5 V
  it("sets window and monitor", () => {
    expect(partOf("supply", heron).set).toEqual([
      "voltage-window, high 127 V, low 104 V [nema-mg-1 12.44, from memory]",
      "monitor, high 127 V, low 108 V, reconnect 5 min, trip 5 s [common-practice]",
    ]);
  });
});
