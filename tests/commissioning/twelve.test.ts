// Sound installations pass, with few cautions; each of them broken in five ways does not.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { ampere, degF, ft, MPag, newtonMeter, oz, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { casaQuattroFloor, sound } from "./twelve.ts";

/** Five ways to break an installation whose circuit is made on site. */
const split: readonly (readonly [string, Change])[] = [
  [
    "a nut far too loose",
    { "runs[0].joints[0]": { kind: "flare", tube: "1/4", torque: newtonMeter(5) } },
  ],
  ["a gauge that fell by a leak", { "pressureTests[0].readings[1].pressure": MPag(2.9) }],
  ["a joint that nobody recorded", { "runs[0].joints[3]": undefined }],
  ["far too much refrigerant", { "charge.added": oz(40) }],
  ["a breaker that is too large", { "power.circuits[0].installed.device.rating": ampere(90) }],
];
/** Five ways to break one whose circuit came closed. */
const closed: readonly (readonly [string, Change])[] = [
  [
    "air the other way round",
    { "operation[0].airSide.supplyAir": degF(20), "operation[0].mode": "heating" },
  ],
  ["no reading at full speed", { "operation[0].airSide.fullSpeed": false }],
  ["a breaker that is too large", { "power.circuits[0].installed.device.rating": ampere(90) }],
  ["a supply far too high", { "power.supply.readings[0].voltage": volt(330) }],
  ["power before the circuit was inspected", { "power.energizedAt": "2026-05-06T11:00" }],
];
const waysOf = ({ equipment }: InstallationRecord) =>
  (equipment?.construction ?? "split") === "split" ? split : closed;

describe.each(Object.entries(sound))("%s", (_, record) => {
  const result = assessInstallation(record);

  it("is sound and passes", () => {
    const open = result.deciding.filter(({ code }) => !/waived|falls-away/.test(code));
    const said = open.map(
      (one) => `${one.step} ${one.part}: ${explain(one as never, english)} ${result.missing}`,
    );
    expect(said).toEqual([]);
    expect(result.outcome).toBe("pass");
    expect(result.actions).toEqual([]);
  });

  it("carries at most 15 cautions, findings first and who governs last", () => {
    const kinds = result.cautions.map(({ kind }) => kind);
    expect(kinds.length).toBeLessThanOrEqual(15);
    expect(kinds.at(-1)).toBe("governing");
    expect(kinds.indexOf("danger")).toBeGreaterThan(kinds.lastIndexOf("finding"));
  });

  it.each(waysOf(record))("does not pass with %s", (__, changes) => {
    const broken = assessInstallation(changed(changes, record));
    expect(broken.outcome).not.toBe("pass");
    expect(broken.actions.length).toBeGreaterThan(0);
  });
});

it("a floor unit with the charge of four heads in an office of 9 m² fails", () => {
  const { cause, reasons } = assessInstallation(casaQuattroFloor);
  expect(cause).toBe("room-limit");
  expect(reasons[0]?.part).toBe("runs[2].room");
});

it("a length typed in the other unit is asked about", () => {
  const record = changed(
    { "runs[0].tubing.lift": ft(200) },
    sound["Heron Cabin"] as InstallationRecord,
  );
  const codes = assessInstallation(record).reasons.map(({ code }) => code);
  expect(codes).toContain("commissioning.lift-above-length");
});
