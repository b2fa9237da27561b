import fc from "fast-check";
import {
  atmosphereAtAltitude,
  degC,
  equals,
  InvalidInputError,
  inHgAbsolute,
  m,
  mbar,
  mbara,
  OutOfRangeError,
  pascal,
  psig,
  standardAtmosphere,
  stationPressure,
} from "hvac-install-math/quantity";
import { expect, test } from "vitest";

const denver = { seaLevelPressure: mbara(1016), altitude: m(1609) };

test("the setting of the standard atmosphere gives the standard atmosphere at every altitude", () => {
  fc.assert(
    fc.property(fc.double({ min: -500, max: 5500, noNaN: true }), (height) => {
      const { pressure } = stationPressure({
        seaLevelPressure: standardAtmosphere,
        altitude: m(height),
        reduction: "altimeter-setting",
      });
      expect(equals(pressure, atmosphereAtAltitude(m(height)), pascal(0.01))).toBe(true);
    }),
  );
});

test("at sea level the report is the station pressure, however it was reduced", () => {
  for (const reduction of ["altimeter-setting", "mean-sea-level", undefined] as const) {
    const report = {
      seaLevelPressure: mbara(998),
      altitude: m(0),
      ...(reduction && { reduction }),
    };
    const { pressure, expandedUncertainty } = stationPressure(report);
    expect(pressure.in(mbara)).toBeCloseTo(998, 9);
    expect(expandedUncertainty.in(mbar)).toBeLessThan(2);
  }
});

test("warm air weighs less, so that less of a mean sea-level pressure is taken off", () => {
  const at = (temperature: number) =>
    stationPressure({ ...denver, reduction: "mean-sea-level", temperature: degC(temperature) });
  expect(at(35).pressure > at(-20).pressure).toBe(true);
});

test("the less is known, the wider the uncertainty, and it spans what was left open", () => {
  const temperature = degC(-20); // far from the standard atmosphere, so that the two differ
  const setting = stationPressure({ ...denver, reduction: "altimeter-setting" });
  const map = stationPressure({ ...denver, reduction: "mean-sea-level", temperature });
  const cold = stationPressure({ ...denver, reduction: "mean-sea-level" });
  const either = stationPressure({ ...denver, temperature });
  expect(map.expandedUncertainty > setting.expandedUncertainty).toBe(true);
  expect(cold.expandedUncertainty > map.expandedUncertainty).toBe(true);
  for (const one of [setting, map]) {
    const off = one.pressure.minus(either.pressure).in(mbar);
    expect(Math.abs(off)).toBeLessThan(either.expandedUncertainty.in(mbar));
  }
});

test("ten meters of altitude make about 1.2 hPa, as limits of error combine (JCGM 100:2008, 4.3.7)", () => {
  const report = { ...denver, altitude: m(0), reduction: "altimeter-setting" as const };
  const exact = stationPressure({ ...report, altitudeAccuracy: m(0) });
  const rough = stationPressure({ ...report, altitudeAccuracy: m(100) });
  // 100 Pa of the report and 30 Pa of the cockpit; then 100 m of 12 Pa beside them
  expect(exact.expandedUncertainty.in(pascal)).toBeCloseTo(2 * Math.sqrt((100 ** 2 + 30 ** 2) / 3));
  const whole = 2 * Math.sqrt((100 ** 2 + 30 ** 2 + 1204 ** 2) / 3);
  expect(rough.expandedUncertainty.in(pascal) / whole).toBeCloseTo(1, 2);
});

test("answers in the unit of the report and leaves nothing to change", () => {
  const found = stationPressure({ seaLevelPressure: inHgAbsolute(30.05), altitude: m(300) });
  expect(found.pressure.unit.symbol).toBe("inHg abs");
  expect(found.expandedUncertainty.unit.symbol).toBe("inHg");
  expect(Object.isFrozen(found)).toBe(true);
});

test("refuses a station pressure in place of a report, and what is out of range", () => {
  const wrong = { ...denver, seaLevelPressure: mbara(834) };
  expect(() => stationPressure(wrong)).toThrow(
    /834 mbara.*at least 850 mbara.*station-pressure-as-is/,
  );
  expect(() => stationPressure({ ...denver, altitude: m(9000) })).toThrow(OutOfRangeError);
  expect(() => stationPressure({ ...denver, seaLevelPressure: psig(0) as never })).toThrow(
    InvalidInputError,
  );
  expect(() => stationPressure({ ...denver, reduction: "QFE" as never })).toThrow(/reduction/);
  expect(() => stationPressure(undefined as never)).toThrow(/report/);
});
