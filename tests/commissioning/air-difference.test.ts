// The air across the indoor coil: 8 to 14 K in cooling by manufacturers' published manuals, 10 to 30 K in heating by
// common practice, no source; the manual of the unit goes before both.
import type { AirSideReading, InstallationRecord } from "hvac-install-math/commissioning";
import { degC, deltaK } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";

/** A reading of so many degrees where the air leaves the coil, and what the check says of it. */
function judged(
  mode: "cooling" | "heating",
  enters: number,
  leaves: number,
  more: Partial<AirSideReading> = {},
  accuracy = deltaK(0),
) {
  const reading = {
    mode,
    indoorTemperature: degC(enters),
    outdoorTemperature: degC(17),
    airSide: { supplyAir: degC(leaves), fullSpeed: true, ...more },
  } as const;
  const record: InstallationRecord = {
    version: 2,
    instruments: { airThermometer: { accuracy } },
    operation: [reading],
  };
  const step = assessInstallation(record).steps.find(({ name }) => name === "operation");
  const found = step?.checks.find(({ name }) => name === "air-difference")?.assessment;
  const [first] = found?.reasons ?? [];
  return {
    outcome: found?.outcome,
    code: first?.code.replace("commissioning.", ""),
    difference: (first?.values as { difference?: unknown } | undefined)?.difference?.toString(),
    assumed: found?.assumptions.map(({ code }) => code),
    actions: found?.actions?.map(({ code }) => code.replace("commissioning.", "")),
  };
}

describe("without the manual's figures", () => {
  it.each<["cooling" | "heating", enters: number, leaves: number, code: string]>([
    ["cooling", 26, 26, "outside"], // 0 K
    ["cooling", 26, 19, "outside"], // 7 K
    ["cooling", 26, 17, "within"], // 9 K
    ["cooling", 26, 13, "within"], // 13 K
    ["cooling", 26, 11, "outside"], // 15 K
    ["heating", 20, 29, "outside"], // 9 K
    ["heating", 20, 31, "within"], // 11 K
    ["heating", 20, 49, "within"], // 29 K
    ["heating", 20, 51, "outside"], // 31 K
  ])("%s from %d °C to %d °C is %s the usual, which is assumed, and never fails", (...given) => {
    const [mode, enters, leaves, code] = given;
    const found = judged(mode, enters, leaves);
    expect(found).toEqual({
      outcome: code === "within" ? "pass" : "inconclusive",
      code: `air-difference-${code}`,
      difference: `${Math.abs(leaves - enters)} Δ°C`,
      assumed: ["commissioning.usual-air-difference"],
      actions: code === "within" ? [] : ["state-air-difference", "see-filter-and-fan"],
    });
  });
});

describe("with the manual's figures", () => {
  it("fails below the least and above the largest, and assumes nothing", () => {
    const limits = { least: deltaK(12), largest: deltaK(18) };
    expect(judged("cooling", 26, 10, limits)).toMatchObject({ outcome: "pass", assumed: [] });
    for (const leaves of [15, 7]) {
      expect(judged("cooling", 26, leaves, limits)).toMatchObject({
        outcome: "fail",
        assumed: [],
        actions: ["see-filter-and-fan"],
      });
    }
  });

  it("knows nothing of the other end where one is stated", () => {
    expect(judged("cooling", 26, 6, { least: deltaK(12) }).outcome).toBe("pass"); // 20 K
    expect(judged("cooling", 26, 24, { largest: deltaK(12) }).outcome).toBe("pass"); // 2 K
  });
});

// Two readings of one instrument of ± 1 K: u = √2 · 1 K/√3 = 0.82 K by JCGM 100:2008, 4.3.7 and 5.1.2; guarded by
// 1.645 u = 1.34 K by JCGM 106:2012, 8.3.
it("is too close to the limit to tell within the error of two readings", () => {
  const at = (leaves: number) => judged("cooling", 26, leaves, {}, deltaK(1)).code;
  expect(at(13.4)).toBe("air-difference-within"); // 12.6 K, 1.4 K below 14 K
  expect(at(13.2)).toBe("air-difference-too-close"); // 12.8 K
});

it("asks to read again where the air goes the other way, and to run at full speed where it does not", () => {
  expect(judged("cooling", 26, 29)).toMatchObject({
    outcome: "inconclusive",
    code: "air-the-other-way",
    difference: "3 Δ°C",
    actions: ["read-air-again"],
  });
  expect(judged("heating", 20, 18).code).toBe("air-the-other-way");
  expect(judged("cooling", 26, 15, { fullSpeed: false })).toMatchObject({
    outcome: "inconclusive",
    code: "not-at-full-speed",
    actions: ["run-at-full-speed"],
  });
});
