// The rooms of a plan, each line whole. Lower flammability limit of R-32 0.307 kg/m³; 1.8 m is the height of a wall unit
// (IEC 60335-2-40:2018, annex GG); 0.42 kg/m³ of R-410A by a multi-split manual. Every record is invented.
import type { Equipment, Run } from "hvac-install-math/commissioning";
import { g, m, m2, m3 } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { partOf } from "./part.ts";

const plan = (runs: readonly Run[], equipment: Equipment) =>
  partOf("room", { version: 2, equipment: { refrigerant: "R-32", ...equipment }, runs });
const none = { bring: [], set: [], check: [], ask: [] };
const asked = (field: string) =>
  `runs[0].room.${field}: ask-of-runs, changes part.room, field field.runs.room.${field}, runs 1`;
const iec = "[iec-60335-2-40-2018 GG.1, GG.2 + iec-60335-2-40-2018 + jcgm-106-2012 8.3]";

describe("a monobloc", () => {
  it("keeps its charge outdoors", () => {
    const mono = { construction: "monobloc", factoryCharge: g(900) } as const;
    expect(plan([], mono)).toEqual({
      ...none,
      set: ["outdoor-zone, charge 900 g [manufacturer-manuals]"],
    });
    expect(plan([], { ...mono, factoryCharge: undefined })).toEqual({
      ...none,
      ask: ["equipment.factoryCharge: ask, changes part.room, field field.equipment.factoryCharge"],
    });
  });

  it("that has a room is held against it like any other", () => {
    const room = { floorArea: m2(40), place: "wall" } as const;
    const { set, check, ask } = plan([{}, { room }], {
      construction: "monobloc",
      factoryCharge: g(900),
    });
    // 6 m³ · 0.307 kg/m³ = 1842 g ask for no room; 2.5 · 0.307^(5/4) · 1.8 · 40^(1/2) = 6504 g are the most for 40 m².
    expect({ set, check, ask }).toEqual({
      set: [],
      check: [
        `pass: runs[1]: room-does-not-matter, charge 900 g, limit 1842 g ${iec}`,
        `pass: runs[1]: within-limit, charge 900 g, limit 6504 g ${iec}`,
      ],
      ask: [asked("floorArea"), asked("place")],
    });
  });
});

describe("a room", () => {
  it("is asked for by floor and place where the refrigerant burns, by volume where it does not", () => {
    expect(plan([{}], { factoryCharge: g(900) }).ask).toEqual([asked("floorArea"), asked("place")]);
    const safe = { refrigerant: "R-410A", factoryCharge: g(3000) };
    expect(plan([{}, { serves: "branch-box" }], safe).ask).toEqual([asked("volume")]);
    // 30 m³ · 0.42 kg/m³ = 12.6 kg.
    expect(plan([{ room: { volume: m3(30) } }], safe)).toEqual({
      ...none,
      check: [
        "pass: runs[0]: within-limit, charge 3000 g, limit 12600 g [manufacturer-manuals a multi-split manual: 0.42 kg/m³ + jcgm-106-2012 8.3]",
      ],
    });
  });

  it("waits for the refrigerant, and for a charge that can be", () => {
    expect(plan([{ room: {} }], { refrigerant: undefined, factoryCharge: g(3000) }).ask).toEqual([
      "equipment.refrigerant: ask, changes part.pressure-test + part.charge + part.room + part.operation, field field.equipment.refrigerant",
    ]);
    const room = { floorArea: m2(40), place: "wall" } as const;
    expect(plan([{ room }], { factoryCharge: g(-3) }).ask).toEqual([
      "equipment.factoryCharge: unusable, field field.equipment.factoryCharge, value -3 g",
    ]);
    const high = { floorArea: m2(40), installationHeight: m(99) };
    expect(plan([{ room: high }], { factoryCharge: g(3000) }).ask).toEqual([
      "runs[0].room.installationHeight: unusable, field field.runs.room.installationHeight, value 99 m",
    ]);
  });
});
