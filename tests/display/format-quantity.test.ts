import { type FormatQuantityOptions, formatQuantity, shownUnit } from "hvac-install-math/display";
import * as u from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

type Loose = (quantity: unknown, options: unknown) => string;
const format = formatQuantity as Loose;
const inchPound = (quantity: unknown, rest = {}) =>
  format(quantity, { system: "inch-pound", ...rest });
const si = (quantity: unknown, rest = {}) => format(quantity, { system: "SI", ...rest });

describe("inch-pound lengths", () => {
  it.each([
    [u.inch(0.25), "1/4 in"],
    [u.inch(0.312), "5/16 in"],
    [u.inch(0.375), "3/8 in"],
    [u.inch(0.875), "7/8 in"],
    [u.inch(1), "1 in"],
    [u.inch(1.125), "1-1/8 in"],
    [u.inch(2.625), "2-5/8 in"],
    [u.inch(1 / 8), "1/8 in"],
    [u.inch(9 / 64), "9/64 in"],
    [u.inch(1 / 16), "0.063 in"],
    [u.mm(9.52), "3/8 in"],
    [u.inch(0.032), "0.032 in"],
    [u.inch(0.03), "0.030 in"],
    [u.mm(0.8), "0.031 in"],
    [u.inch(0.0003), "0.00030 in"],
    [u.inch(2.9), "2.900 in"],
    [u.inch(2.9999), "3 in"],
    [u.inch(3.1), "3-1/8 in"],
    [u.inch(11.9375), "11-15/16 in"],
    [u.inch(11.96), "11-15/16 in"],
    [u.inch(11.97), "1 ft"],
    [u.inch(11.99), "1 ft"],
    [u.inch(23.99), "2 ft"],
    [u.ft(12.5), "12 ft 6 in"],
    [u.ft(25), "25 ft"],
    [u.m(7.5), "24 ft 7-1/4 in"],
    [u.inch(-0.375), "−3/8 in"],
    [u.inch(-1.125), "−1-1/8 in"],
    [u.inch(-11.99), "−1 ft"],
    [u.inch(-13.5), "−1 ft 1-1/2 in"],
    [u.inch(0), "0 in"],
    [u.inch(-0), "0 in"],
    [u.inch(0.001), "0.0010 in"],
    [u.ft(0.005), "0.060 in"], // 12 in to the foot
    // From 100 ft whole inches
    [u.inch(1199.75), "99 ft 11-3/4 in"],
    [u.inch(1200.75), "100 ft 1 in"],
    [u.ft(2e6), "2000000 ft"],
    [u.ft(1e9), "1000000000.00 ft"],
  ])("%s is shown as %s", (quantity, expected) => expect(inchPound(quantity)).toBe(expected));

  it("follow the resolution", () => {
    expect(inchPound(u.inch(0.375), { resolution: u.inch(0.001) })).toBe("0.375 in");
    expect(inchPound(u.inch(5), { resolution: u.inch(0.001) })).toBe("5.000 in");
    expect(inchPound(u.ft(21.54), { resolution: u.inch(1 / 16) })).toBe("21 ft 6-1/2 in");
    expect(inchPound(u.ft(21.54), { resolution: u.inch(1 / 2) })).toBe("21 ft 6-1/2 in");
    expect(inchPound(u.ft(21.54), { resolution: u.inch(1) })).toBe("21 ft 6 in");
    expect(inchPound(u.inch(11.6), { resolution: u.inch(1) })).toBe("1 ft");
    expect(inchPound(u.inch(0.1), { resolution: u.inch(1 / 4) })).toBe("0 in");
    expect(inchPound(u.inch(-0.1), { resolution: u.inch(1 / 4) })).toBe("0 in");
    expect(inchPound(u.ft(21.54), { resolution: u.ft(0.1) })).toBe("21.5 ft");
    expect(inchPound(u.ft(21.54), { resolution: u.ft(1) })).toBe("22 ft");
    expect(inchPound(u.ft(21.54), { resolution: u.ft(1 / 12) })).toBe("21.54 ft"); // a step in feet: decimal feet
  });

  it("come in one unit when it is named", () => {
    expect(inchPound(u.ft(21.5), { unit: u.ft })).toBe("21.50 ft");
    expect(inchPound(u.ft(21.5), { unit: u.m })).toBe("6.55 m");
    expect(si(u.m(3), { unit: u.ft, resolution: u.ft(0.5) })).toBe("10.0 ft");
  });
});

describe("pounds and ounces", () => {
  it.each([
    [u.oz(52.5), "3 lb 4.5 oz"],
    [u.oz(15.94), "15.9 oz"],
    [u.oz(15.97), "1 lb"],
    [u.oz(31.96), "2 lb"],
    [u.oz(31.94), "1 lb 15.9 oz"],
    [u.lb(3), "3 lb"],
    [u.oz(4.5), "4.5 oz"],
    [u.oz(4), "4.0 oz"],
    [u.oz(0.052), "0.052 oz"],
    [u.oz(0.998), "1.00 oz"],
    [u.oz(-20), "−1 lb 4 oz"],
    [u.oz(-15.97), "−1 lb"],
    [u.kg(1.5), "3 lb 4.9 oz"],
    [u.oz(0), "0.0 oz"],
    [u.oz(-0.04), "−0.040 oz"],
    [u.lb(0.001), "0.016 oz"], // 16 oz to the pound
    [u.lb(1e9), "1000000000.00 lb"],
  ])("%s is shown as %s", (quantity, expected) => expect(inchPound(quantity)).toBe(expected));

  it("follow the resolution", () => {
    expect(inchPound(u.oz(40.3), { resolution: u.oz(1) })).toBe("2 lb 8 oz");
    expect(inchPound(u.oz(15.6), { resolution: u.oz(1) })).toBe("1 lb");
    expect(inchPound(u.oz(0.6), { resolution: u.oz(1) })).toBe("1 oz");
    expect(inchPound(u.oz(-0.4), { resolution: u.oz(1) })).toBe("0 oz");
    expect(inchPound(u.lb(1e7), { resolution: u.oz(8) })).toBe("10000000 lb");
    expect(inchPound(u.oz(40.3), { resolution: u.oz(0.25) })).toBe("2 lb 8.25 oz");
    expect(inchPound(u.oz(40), { resolution: u.lb(0.1) })).toBe("2.5 lb");
    expect(inchPound(u.kg(1.5), { resolution: u.g(1) })).toBe("3.307 lb");
  });
});

describe("hours, minutes and seconds", () => {
  it.each([
    [u.minute(90), "1 h 30 min"],
    [u.second(3599.4), "59 min 59 s"],
    [u.second(3599.6), "1 h"],
    [u.second(59.6), "1 min"],
    [u.second(5.25), "5.3 s"],
    [u.second(9.97), "10 s"],
    [u.second(5), "5 s"],
    [u.second(1), "1 s"],
    [u.minute(0.005), "0.30 s"], // 60 s to the minute
    [u.second(1e9), "277777 h 46 min 40 s"],
    [u.second(3.6e9), "1000000.00 h"],
    [u.second(0.002), "0.0020 s"],
    [u.day(1), "24 h"],
    [u.minute(-90), "−1 h 30 min"],
    [u.second(0), "0 s"],
  ])("%s is shown as %s", (quantity, expected) => {
    expect(inchPound(quantity)).toBe(expected);
    expect(si(quantity)).toBe(expected);
  });
  it("follow the resolution", () => {
    expect(si(u.minute(93), { resolution: u.minute(5) })).toBe("1 h 35 min");
    expect(si(u.second(-1), { resolution: u.minute(1) })).toBe("0 s");
    expect(si(u.second(0.4), { resolution: u.minute(1) })).toBe("0 s");
    expect(si(u.second(1e7), { resolution: u.minute(5) })).toBe("2777 h 45 min");
  });
});

describe("readings", () => {
  it.each([
    [u.psig(118), "118.0 psig", "814 kPag"],
    [u.psig(-0.04), "0.0 psig", "0 kPag"],
    [u.psig(-0.06), "−0.1 psig", "0 kPag"],
    [u.psig(0.003), "0.0 psig", "0 kPag"],
    [u.barg(8.137), "118.0 psig", "8.14 barg"],
    [u.MPag(0.8137), "118.0 psig", "0.814 MPag"],
    [u.inHgGauge(-20), "−20.0 inHg gauge", "−68 kPag"],
    [u.micron(500.4), "500 micron", "66.7 Pa abs"],
    [u.pascalAbsolute(66.7), "500 micron", "66.7 Pa abs"],
    [u.torr(0.5), "0.50 torr", "66.7 Pa abs"],
    [u.psia(0.01), "0.010 psia", "68.9 Pa abs"],
    [u.kPaa(0.04), "300 micron", "0.040 kPaa"],
    [u.torr(0.004), "0.0040 torr", "0.53 Pa abs"],
    [u.micron(0.4), "0.4 micron", "0.053 Pa abs"],
    [u.deltaF(0.04), "0.04 Δ°F", "0.02 K"],
    [u.psia(14.696), "14.7 psia", "101.3 kPaa"],
    [u.kPaa(101.325), "14.7 psia", "101.3 kPaa"],
    [u.mbara(1013.25), "14.7 psia", "1013.3 mbara"],
    [u.degF(72), "72.0 °F", "22.2 °C"],
    [u.degC(-40), "−40.0 °F", "−40.0 °C"],
    [u.degF(-200), "−200.0 °F", "−128.9 °C"],
    // Absolute zero, −459.67 °F and −273.15 °C (SI Brochure, 9th ed.), is not rounded to what is colder.
    [u.kelvin(0), "−459.6 °F", "0.00 K"],
    [u.degC(-273.15), "−459.6 °F", "−273.1 °C"],
    [u.kelvin(295.15), "71.6 °F", "295.15 K"],
    [u.deltaF(10), "10.0 Δ°F", "5.6 K"],
    [u.deltaC(5), "9.0 Δ°F", "5.0 Δ°C"],
    [u.psi(3), "3.0 psi", "20.7 kPa"],
    [u.psi(0.0432), "0.043 psi", "298 Pa"],
    [u.inchWater(0.5), "0.50 inH2O", "125 Pa"],
    [u.percent(2), "2.0 %", "2.0 %"],
    [u.ppm(3), "3.00 ppm", "3.00 ppm"],
    [u.paM3PerS(1.5e-7), "1.48E−6 atm·cm³/s", "1.5E−7 Pa·m³/s"],
    [u.btuPerHour(12_000), "12000 Btu/h", "3.52 kW"],
    [u.ozPerFt(0.16), "0.160 oz/ft", "14.9 g/m"],
    [u.sqft(168), "168.0 ft²", "15.61 m²"],
    [u.mL(49), "2.990 in³", "49.00 mL"],
    [u.volt(230), "230.0 V", "230.0 V"],
    [u.degreeAngle(45), "45.0 °", "45.0 °"],
    // NIST SP 811 (2008), appendix B.8, for the factors
    [u.kgPerM3(40), "2.50 lb/ft³", "40.0 kg/m³"],
    [u.lbPerCuft(70), "70.0 lb/ft³", "1121.3 kg/m³"],
    [u.kgPerM3(0.3), "18.7 lb/1000 ft³", "0.300 kg/m³"],
    [u.gPerM3(300), "18.7 lb/1000 ft³", "300 g/m³"],
    [u.mPerSecond(4), "787 ft/min", "4.00 m/s"],
    [u.ftPerMinute(900), "900 ft/min", "4.57 m/s"],
    [u.kgPerHour(120), "264.6 lb/h", "120.0 kg/h"],
    [u.ozPerYear(0.2), "0.20 oz/yr", "5.7 g/yr"],
    [u.kgPerSecond(0.03), "238.1 lb/h", "0.0300 kg/s"],
    [u.cfm(4), "4.00 cfm", "6.80 m³/h"],
    [u.literPerHour(1.2), "0.317 gal/h", "1.20 L/h"],
    [u.literPerSecond(2), "4.24 cfm", "2.00 L/s"],
    [u.m3PerSecond(0.5), "1059 cfm", "0.500 m³/s"],
    [u.psiPerHour(1.5), "1.50 psi/h", "2.873 Pa/s"],
    [u.micronPerMinute(10), "10 micron/min", "0.0222 Pa/s"],
    [u.kPaPerHour(12), "1.74 psi/h", "12.00 kPa/h"],
    [u.ohmPerKft(1.24), "1.240 Ω/kft", "4.07 Ω/km"],
    [u.newtonMeter(50), "36.9 ft·lb", "50.0 N·m"],
    [u.btuPerLb(85), "85.0 Btu/lb", "197.7 kJ/kg"],
    [u.btuPerLbF(0.4), "0.400 Btu/(lb·°F)", "1.675 kJ/(kg·K)"],
    [u.psig(1e300), "1E300 psig", "6.89475729317E300 kPag"],
    [u.psig(5e11), "5E11 psig", "3.44737864658E12 kPag"],
    [u.micron(1e12), "1E12 micron", "133322368.4 kPaa"], // 101 325/760 Pa to the torr,
    [u.psi(1.2e-5), "0.000012 psi", "0.083 Pa"],
    [u.psi(1.234e-6), "1.23E−6 psi", "0.0085 Pa"],
    [u.sqft(0), "0 ft²", "0 mm²"],
    // The unit that was entered is kept in its own system, and else the larger from 25 000 micron, 1 kPa.
    [u.g(1500), "3 lb 4.9 oz", "1500 g"],
    [u.cm(250), "8 ft 2-7/16 in", "250.0 cm"],
    [u.micron(25_000).as(u.kPaa), "0.48 psia", "3.3 kPaa"],
    [u.kPa(1).as(u.psi), "0.15 psi", "1.0 kPa"],
  ])("%s is shown as %s and %s", (quantity, imperial, metric) => {
    expect(inchPound(quantity)).toBe(imperial);
    expect(si(quantity)).toBe(metric);
  });

  it("follow the gauge", () => {
    expect(inchPound(u.psig(118.37), { resolution: u.psi(1) })).toBe("118 psig");
    expect(inchPound(u.psig(118.37), { resolution: u.psi(0.1) })).toBe("118.4 psig");
    expect(inchPound(u.psig(118.37), { resolution: u.psi(0.5) })).toBe("118.5 psig");
    expect(inchPound(u.psig(118.37), { resolution: u.psi(5) })).toBe("120 psig");
    expect(inchPound(u.psig(118.37), { resolution: u.psi(1 / 3) })).toBe("118.4 psig"); // the step below
    expect(inchPound(u.psig(5e13), { resolution: u.psi(100) })).toBe("5E13 psig");
    expect(si(u.degC(-273.15), { resolution: u.deltaC(0.05) })).toBe("−273.15 °C");
    expect(si(u.psig(118.37), { resolution: u.psi(0.5) })).toBe("816 kPag"); // 1 kPa, the step below 3.4
    expect(si(u.psig(118.37), { resolution: u.bar(0.02) })).toBe("8.16 barg");
    expect(inchPound(u.psia(0.02), { resolution: u.micronDifference(10) })).toBe("1030 micron");
    expect(inchPound(u.micron(512), { resolution: u.micronDifference(25) })).toBe("500 micron");
  });

  it("are written in the person's numbers, without thousands marks", () => {
    expect(si(u.kg(1.488), { locale: "de" })).toBe("1,488 kg");
    expect(si(u.degC(-5.5), { locale: "sv" })).toBe("−5,5 °C");
    expect(inchPound(u.psig(-0.04), { locale: "de" })).toBe("0,0 psig");
    expect(inchPound(u.micron(12_345), { locale: "en-US" })).toBe("12345 micron");
    expect(inchPound(u.micron(12_345), { locale: "de" })).toBe("12345 micron");
    expect(si(u.degC(22.5), { locale: "ar-EG" })).toBe("٢٢٫٥ °C");
    expect(inchPound(u.inch(1.125), { locale: "hi-IN-u-nu-deva" })).toBe("१-१/८ in");
    // Unicode and ISO 80000-1 have U+2212 for a negative number; Intl writes a hyphen in most locales.
    expect(si(u.degC(-5.5), { locale: "en-US" })).toBe("−5.5 °C");
    expect(si(u.degC(-5.5), { locale: "de" })).toBe("−5,5 °C");
    expect(inchPound(u.oz(-52.5), { locale: "fr" })).toBe("−3 lb 4,5 oz");
  });
});

describe("the one unit of an axis or a column", () => {
  it.each<[u.AnyQuantity, unknown, unknown]>([
    [u.inch(11), u.inch, u.mm],
    [u.ft(1), u.ft, u.mm],
    [u.inch(3000), u.ft, u.m],
    [u.oz(20), u.oz, u.g],
    [u.oz(80), u.lb, u.kg],
    [u.minute(0.5), u.second, u.second],
    [u.second(60), u.minute, u.minute],
    [u.hour(5), u.hour, u.hour],
    [u.day(3), u.hour, u.hour],
    [u.micron(500), u.micron, u.pascalAbsolute],
    [u.torr(0.5), u.torr, u.pascalAbsolute],
    [u.barg(8), u.psig, u.barg],
  ])("%s has one of its size", (quantity, imperial, metric) => {
    expect(shownUnit(quantity as never, { system: "inch-pound" })).toBe(imperial);
    expect(shownUnit(quantity as never, { system: "SI" })).toBe(metric);
  });

  it("is the reader's own where there is one, of its kind", () => {
    const show = shownUnit as unknown as (quantity: unknown, options: unknown) => unknown;
    expect(show(u.psig(118), { system: "SI", units: { gaugePressure: u.psig } })).toBe(u.psig);
    expect(show(u.psig(118), { system: "SI", units: { gaugePressure: undefined } })).toBe(u.kPag);
    const wrong = { system: "SI", units: { gaugePressure: u.psi } };
    expect(() => show(u.psig(118), wrong)).toThrow(/^options\.units\.gaugePressure/);
  });
});

describe("wrong arguments", () => {
  const options: FormatQuantityOptions<"gaugePressure"> = { system: "SI" };
  it.each([
    [undefined, options, /^quantity/],
    [118, options, /^quantity/],
    [{ kind: "gaugePressure", value: 118, unit: "psig" }, options, /^quantity/],
    [u.psig(1), undefined, /^options\.system/],
    [u.psig(1), null, /^options\.system/],
    [u.psig(1), { system: "metric" }, /inch-pound, SI/],
    [u.psig(1), { ...options, locale: "not a locale" }, /^options\.locale/],
    [u.psig(1), { ...options, locale: "xx" }, /^options\.locale/],
    [u.psig(1), { ...options, locale: ["de"] }, /^options\.locale/],
    [u.psig(1), { ...options, language: { locale: "en" } }, /^options\.language/],
    [u.psig(1), { ...options, language: { locale: "en", messages: null } }, /^options\.language/],
    [u.psig(1), { ...options, language: { locale: "en", messages: "m" } }, /^options\.language/],
    [u.psig(1), { ...options, language: { messages: {} } }, /^options\.language/],
    [u.psig(1), { ...options, unit: u.psia }, /^options\.unit/],
    [u.psig(1), { ...options, unit: "psig" }, /^options\.unit/],
    [u.psig(1), { ...options, resolution: u.psig(1) }, /^options\.resolution/],
    [u.psig(1), { ...options, resolution: u.psi(0) }, /^options\.resolution.*more than 0 psi/],
    [u.psig(1), { ...options, resolution: u.psi(-1) }, /^options\.resolution/],
    [u.psig(1), { ...options, resolution: 0.1 }, /^options\.resolution/],
  ])("%s with %o", (quantity, wrong, says) => {
    expect(() => format(quantity, wrong)).toThrow(u.InvalidInputError);
    expect(() => format(quantity, wrong)).toThrow(says);
  });

  it("leaves the options as they are", () => {
    const frozen = Object.freeze({ system: "SI", locale: "de" } as const);
    expect(formatQuantity(u.degC(22.5), frozen)).toBe("22,5 °C");
  });
});
