// Slips that leave a record believable as a whole: a year, a prefix, an instrument of which nothing is known.
import { ampere, kPaa, m, oz, percent } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";

const codes = (changes: Change) => {
  const { cautions, reasons } = assessInstallation(changed(changes));
  return [...cautions, ...reasons].map(({ code }) => code.replace("commissioning.", ""));
};

// NFPA 70, 210.8(F): the duty begins on a day; three months before the rest of the work is common practice, no source.
it("doubts a circuit that is dated more than three months before the first other work", () => {
  expect(codes({})).not.toContain("circuit-long-before");
  expect(codes({ "power.circuits[0].at": "2025-09-15T12:00" })).toContain("circuit-long-before");
  const early = assessInstallation(changed({ "power.circuits[0].at": "2025-09-15T12:00" }));
  expect(early.cautions.find(({ code }) => code.endsWith("long-before"))?.values).toMatchObject({
    circuit: { verbatim: "2025-09-15" },
    first: { verbatim: "2026-05-04" },
  });
  expect(codes({ "power.circuits[0].at": "2026-04-15T12:00" })).not.toContain(
    "circuit-long-before",
  );
});

// ISO/IEC 17025:2017 asks for identity and calibration; without limits of error besides, nothing is known of a reading.
it("notes an instrument of which neither accuracy nor serial number nor calibration is recorded", () => {
  expect(codes({})).not.toContain("instrument-unknown");
  for (const name of ["scale", "torqueWrench"]) {
    expect(codes({ [`instruments.${name}`]: { name: "invented" } })).toContain(
      "instrument-unknown",
    );
  }
  const known = { accuracy: oz(0.2) };
  expect(codes({ "instruments.scale": known })).not.toContain("instrument-unknown");
});

it.each<[string, object]>([
  ["scale", { accuracy: oz(0.2) }],
  ["torqueWrench", { relativeAccuracy: percent(4) }],
  ["clampMeter", { accuracyOfReading: percent(2) }],
  ["scale", { serialNumber: "7" }],
  ["scale", { calibratedOn: "2026-01-10" }],
  ["scale", { calibrationDue: "2027-01-10" }],
  ["tape", {}], // trusted as it is
  ["level", {}],
])("takes one figure as enough to know of an instrument: %s with %j", (name, known) => {
  const own = { [`instruments.${name}`]: { name: "invented", ...known } };
  const read = { "operation[0].airSide.current": ampere(8) };
  expect(codes({ ...own, ...read })).not.toContain("instrument-unknown");
});

it("names the instrument of which nothing is known", () => {
  const { cautions } = assessInstallation(changed({ "instruments.scale": { name: "invented" } }));
  expect(cautions.find(({ code }) => code.endsWith("instrument-unknown"))?.values).toEqual({
    fields: ["commissioning.field.instruments.scale"],
  });
});

// U.S. Standard Atmosphere 1976: 843 hPa at 1520 m.
it("asks for hPa where a barometer shows ten times what belongs to the altitude", () => {
  expect(codes({ "site.atmosphere": kPaa(843) })).toContain("barometer-in-hectopascal");
  expect(codes({ "site.atmosphere": kPaa(80) })).toContain("barometer-odd");
});

// U.S. Standard Atmosphere 1976: the lowest layer ends at 11 km. A slip of the altitude is asked about; it must not take
// the verdict on all else with it.
it("asks about an altitude beyond the atmosphere that is known, beside a barometer", () => {
  const found = codes({ "site.altitude": m(18_000), "site.atmosphere": kPaa(84.3) });
  expect(found).toContain("altitude-odd");
  expect(found).not.toContain("barometer-odd");
});
