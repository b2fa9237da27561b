import { minute, percent, second, volt } from "hvac-install-math/quantity";
import {
  nameplateVoltageRange,
  resistanceHeatAt,
  supplyVoltageRanges,
  voltageMonitorSettings,
} from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";

describe("voltageMonitorSettings", () => {
  it.each<[number, number[], string]>([
    [240, [208, 230], "216 V to 253 V"],
    [208, [208, 230], "187 V to 229 V"],
    [230, [230], "207 V to 253 V"],
    [208, [230], "207 V to 229 V"],
    [480, [460], "432 V to 506 V"],
  ])("on %d V for a unit of %j V: %s", (nominal, rated, window) => {
    const nameplate = { rated: rated.map(volt) };
    const set = voltageMonitorSettings({
      nameplate,
      supply: { voltage: volt(nominal), phases: 1 },
    });
    expect(`${set.lowCutOut} to ${set.highCutOut}`).toBe(window);
    expect(set.tripDelay >= second(2) && set.tripDelay <= second(10)).toBe(true);
    expect(set.reconnectDelay >= minute(3) && set.reconnectDelay <= minute(5)).toBe(true);
    expect(set.unbalanceCutOut).toBeUndefined();
  });

  it("adds the unbalance for three phases", () => {
    const supply = { voltage: volt(480), phases: 3 } as const;
    const set = voltageMonitorSettings({ nameplate: { rated: volt(460) }, supply });
    expect(set.unbalanceCutOut?.in(percent)).toBe(3);
  });

  it("leaves a window of at least a volt", () => {
    const settings = (rated: number) => () =>
      voltageMonitorSettings({
        nameplate: { rated: volt(rated) },
        supply: { voltage: volt(240), phases: 1 },
      });
    // 240 V + 10 % = 264 V; 293 V − 10 % = 264 V, 292 V − 10 % = 263 V
    expect(settings(293)).toThrow("264 V to 322 V is not allowed");
    expect(settings(292)().lowCutOut.toString()).toBe("263 V");
  });

  it("refuses a plate that does not fit", () => {
    const supply = { voltage: volt(240), phases: 1 } as const;
    expect(() => voltageMonitorSettings({ nameplate: { rated: volt(115) }, supply })).toThrow(
      "nameplate.rated: 104 V to 127 V is not allowed; allowed: a range that overlaps 240 V ±10 % (supply-voltage.match-unit-and-supply)",
    );
  });
});

describe("nameplateVoltageRange", () => {
  it("takes the rated voltages in any order, and one without a list", () => {
    const range = nameplateVoltageRange({ rated: [volt(230), volt(208)] });
    expect(range.rated.map(String)).toEqual(["208 V", "230 V"]);
    expect(range.minimum.toString()).toBe("187 V");
    expect(nameplateVoltageRange({ rated: volt(230) }).minimum.toString()).toBe("207 V");
  });

  it("takes no two connections for one, and no range that a plate cannot have (common practice, no source)", () => {
    const dual = { rated: [volt(230), volt(460)] };
    expect(() => nameplateVoltageRange(dual)).toThrow("nameplate.rated: 230 V and 460 V");
    expect(nameplateVoltageRange({ rated: [volt(200), volt(240)] }).maximum.toString()).toBe(
      "264 V",
    );
    expect(nameplateVoltageRange({ rated: [volt(200), volt(250)] }).maximum.toString()).toBe(
      "275 V",
    );
    expect(() => nameplateVoltageRange({ rated: [volt(200), volt(251)] })).toThrow("251 V");
    const printed = (minimum: number, maximum: number) => () =>
      nameplateVoltageRange({
        rated: volt(230),
        range: { minimum: volt(minimum), maximum: volt(maximum) },
      });
    expect(printed(1, 253)).toThrow("nameplate.range.minimum: 1 V");
    expect(printed(207, 1000)).toThrow("nameplate.range.maximum: 1000 V");
    expect(printed(130, 270)().printed).toBe(true); // a wide-range inverter
  });

  it("scales the ceiling from 260 V on 230 V", () => {
    const ceiling = (v: number) => nameplateVoltageRange({ rated: volt(v) }).ceiling.in(volt);
    expect([115, 230, 400, 460].map(ceiling)).toEqual([130, 260, 452, 520]);
  });
});

it("supplyVoltageRanges takes a nominal voltage within half a volt", () => {
  expect(supplyVoltageRanges({ voltage: volt(240.5), phases: 1 }, "unit")).toHaveLength(2);
  expect(supplyVoltageRanges({ voltage: volt(239.5), phases: 1 }, "unit")).toHaveLength(2);
  expect(() => supplyVoltageRanges({ voltage: volt(241), phases: 1 }, "unit")).toThrow(
    "supply.voltage: 241 V",
  );
});

it("resistanceHeatAt refuses a voltage of 0", () => {
  expect(() => resistanceHeatAt({ rated: volt(0), actual: volt(208) })).toThrow("rated: 0 V");
  expect(() => resistanceHeatAt({ rated: volt(240), actual: volt(0) })).toThrow("actual: 0 V");
});
