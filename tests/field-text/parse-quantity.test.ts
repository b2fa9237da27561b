import { parseQuantity } from "hvac-install-math/field-text";
import { degF, ft, inch, type Kind, micron, percent, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const read = (text: string, kind: Kind) => parseQuantity(text, { kind }).toString();

describe("lengths as the trade writes them", () => {
  it.each([
    // fractions
    ["1/4 in", "0.25 in"],
    ["3/8in", "0.375 in"],
    [" 1 / 4  in ", "0.25 in"],
    ["5/4 in", "1.25 in"],
    ["1 1/4 in", "1.25 in"],
    ["1-1/4 in", "1.25 in"],
    ["1-1/8 inch", "1.125 in"],
    ["1‐1/8 in", "1.125 in"], // U+2010 hyphen
    ["1‑1/8 in", "1.125 in"], // U+2011 non-breaking hyphen
    ["¼ in", "0.25 in"],
    ["⅜ in", "0.375 in"],
    ["⅞″", "0.875 in"],
    ["⅓ ft", "0.333333333333 ft"],
    ["1¼ in", "1.25 in"],
    ["1 ¼ in", "1.25 in"],
    ["1-¼ in", "1.25 in"],
    ["1\u00a01/4\u00a0in", "1.25 in"],
    ["1\u20091/4\u202fin", "1.25 in"],
    ["¹⁄₁₆ in", "0.0625 in"],
    ["3¹⁄₁₆ in", "3.0625 in"],
    ["1⁄4 in", "0.25 in"], // U+2044 fraction slash
    ["-1 1/4 in", "-1.25 in"],
    ["−1-1/4 in", "-1.25 in"],
    ["-¼ in", "-0.25 in"],
    ["(1/4 + 1/8) in", "0.375 in"],
    ["(1/4+1/8)″", "0.375 in"],
    ["1/4 in + 1/8 in", "0.375 in"],
    ["2 × 1/4 in", "0.5 in"],
    ["1/4 in × 2", "0.5 in"],
    ["1/2 × 1/2 in", "0.25 in"],
    // primes
    ["12'", "12 ft"],
    ["12′", "12 ft"],
    ["12’", "12 ft"],
    ["12´", "12 ft"],
    ['6"', "6 in"],
    ["6″", "6 in"],
    ["6”", "6 in"],
    ["6''", "6 in"],
    ["6’’", "6 in"],
    ["6′′", "6 in"],
    ["12'6\"", "12.5 ft"],
    ["12' 6\"", "12.5 ft"],
    ["12′ 6″", "12.5 ft"],
    ["12’6”", "12.5 ft"],
    ["12'6''", "12.5 ft"],
    ["12'-6\"", "12.5 ft"],
    ["12′‑6″", "12.5 ft"],
    ["12'-6''", "12.5 ft"],
    ["12' 7 1/2\"", "12.625 ft"],
    ["12'-7 1/2\"", "12.625 ft"],
    ["12'-7-1/2\"", "12.625 ft"],
    ["12' 7½\"", "12.625 ft"],
    ["12' 1/2\"", "12.0416666667 ft"],
    ["-12'-6\"", "-12.5 ft"],
    // feet and inches in words
    ["12 ft 6 in", "12.5 ft"],
    ["12ft6in", "12.5 ft"],
    ["12ft3in", "12.25 ft"], // not ft³
    ["12ft2in", "12.1666666667 ft"], // not ft²
    ["12 ft. 6 in.", "12.5 ft"],
    ["12 feet 6 inches", "12.5 ft"],
    ["1 foot 1 inch", "1.08333333333 ft"],
    ["12 FT 6 IN", "12.5 ft"],
    ["12 ft 6.5 in", "12.5416666667 ft"],
    ["12 ft 0 in", "12 ft"],
    ["0 ft 6 in", "0.5 ft"],
    ["-12 ft 6 in", "-12.5 ft"],
    ["−12 ft 6 in", "-12.5 ft"],
    ["+12 ft 6 in", "12.5 ft"],
    ["１２ ｆｔ ６ ｉｎ", "12.5 ft"], // full width
    // sums and multiples
    ["12 ft 6 in + 9 ft", "21.5 ft"],
    ["12 ft 6 in − 9 ft", "3.5 ft"],
    ["12 ft - 6 in", "11.5 ft"],
    ["12 ft – 6 in", "11.5 ft"], // spaced en dash
    ["12 ft−6 in", "11.5 ft"], // the minus sign itself
    ["12'−6\"", "11.5 ft"],
    ["20 ft - 12 ft 6 in", "7.5 ft"],
    ["20 ft - 12'-6\"", "7.5 ft"],
    ["20 ft − (12 ft 6 in + 1 ft)", "6.5 ft"],
    ["2 × 12 ft 6 in", "25 ft"],
    ["2 x 12 ft 6 in", "25 ft"],
    ["2x3 ft", "6 ft"],
    ["3 ft X 2", "6 ft"],
    ["3 ft * 2", "6 ft"],
    ["3 ft · 2", "6 ft"],
    ["12 ft 6 in / 2", "6.25 ft"],
    ["12 ft 6 in ÷ 2", "6.25 ft"],
    ["12 ft ÷ (1/2)", "24 ft"],
    ["(1 + 2) × 3 ft", "9 ft"],
    ["1 ft + 2 ft × 3", "7 ft"],
    ["(1 ft + 2 ft) × 3", "9 ft"],
    ["2 × (1 ft + 6 in)", "3 ft"],
    ["-(1 ft + 6 in)", "-1.5 ft"],
    ["+(1 ft)", "1 ft"],
    ["5 ft - -3 in", "5.25 ft"],
    ["50 % × 12 ft", "6 ft"],
    ["12 ft × 110 %", "13.2 ft"],
    ["6 ft ÷ 50 %", "12 ft"],
    ["12 ft × (6 ft ÷ 2 ft)", "36 ft"],
    ["((((((((((1 ft))))))))))", "1 ft"],
    // metric
    ["9.52 mm", "9.52 mm"],
    ["9.52MM", "9.52 mm"],
    ["7.5 m", "7.5 m"],
    ["1 m 20 cm", "1.2 m"],
    ["1 m 200 mm", "1.2 m"],
    ["1 m + 1 ft", "1.3048 m"],
    ["1 ft + 1 m", "4.28083989501 ft"],
    ["500 µm", "0.5 mm"],
    ["500 μm", "0.5 mm"], // U+03BC
    // numbers
    [".5 in", "0.5 in"],
    ["1e3 mm", "1000 mm"],
    ["1E-3 m", "0.001 m"],
    ["1.5×10³ mm", "1500 mm"],
    ["1.5 x 10^3 mm", "1500 mm"],
    ["1.5·10⁻³ m", "0.0015 m"],
    ["1\u202f234 mm", "1234 mm"],
    ["12\u00a0345\u00a0678.5 mm", "12345678.5 mm"],
    ["10 ft × 10", "100 ft"],
    ["007 ft", "7 ft"],
  ])("%s is %s", (text, expected) => {
    expect(read(text, "length")).toBe(expected);
  });
});

describe("other kinds as the trade writes them", () => {
  it.each<[string, Kind, string]>([
    ["118 psig", "gaugePressure", "118 psig"],
    ["118psig", "gaugePressure", "118 psig"],
    ["118 PSIG", "gaugePressure", "118 psig"],
    ["118 psi(g)", "gaugePressure", "118 psig"],
    ["118 psi (g)", "gaugePressure", "118 psig"],
    ["118 psi gauge", "gaugePressure", "118 psig"],
    ["118 psi-g", "gaugePressure", "118 psig"],
    ["118 psig + 3 psi", "gaugePressure", "121 psig"],
    ["3 psi + 118 psig", "gaugePressure", "121 psig"],
    ["118 psig − 3 psi", "gaugePressure", "115 psig"],
    ["118 psig − (118 psig − 115 psig)", "gaugePressure", "115 psig"],
    ["-10 psig", "gaugePressure", "-10 psig"],
    ["814 kPa(g)", "gaugePressure", "814 kPag"],
    ["814 kPa gauge", "gaugePressure", "814 kPag"],
    ["8.1 bar g", "gaugePressure", "8.1 barg"],
    ["0.81 MPag", "gaugePressure", "0.81 MPag"],
    ["-20 inHg gauge", "gaugePressure", "-20 inHg gauge"],
    ["-20 in. Hg gauge", "gaugePressure", "-20 inHg gauge"],
    ["14.7 psia", "absolutePressure", "14.7 psia"],
    ["14.7 psi abs", "absolutePressure", "14.7 psia"],
    ["101.3 kPa(a)", "absolutePressure", "101.3 kPaa"],
    ["1013 mbara", "absolutePressure", "1013 mbara"],
    ["1013 hPa abs", "absolutePressure", "1013 mbara"],
    ["29.92 inHg abs", "absolutePressure", "29.92 inHg abs"],
    ["500 micron", "absolutePressure", "500 micron"],
    ["500 microns", "absolutePressure", "500 micron"],
    ["500 um", "absolutePressure", "500 micron"],
    ["500 µmHg", "absolutePressure", "500 micron"],
    ["500 mTorr", "absolutePressure", "500 micron"],
    ["0.5 Torr", "absolutePressure", "0.5 torr"],
    ["66.7 Pa abs", "absolutePressure", "66.7 Pa abs"],
    ["500 micron + 200 Δmicron", "absolutePressure", "700 micron"],
    ["3 psi", "pressureDifference", "3 psi"],
    ["118 psig − 115 psig", "pressureDifference", "3 psi"],
    ["500 microns − 300 microns", "pressureDifference", "200 micron"],
    ["1 torr − 300 micron", "pressureDifference", "0.7 torr"],
    ["15 psia − 760 torr", "pressureDifference", "0.304051224487 psi"],
    ["0.5 in. w.c.", "pressureDifference", "0.5 inH2O"],
    ['0.5"wc', "pressureDifference", "0.5 inH2O"],
    ["2 in Hg", "pressureDifference", "2 inHg"],
    ['2"Hg', "pressureDifference", "2 inHg"],
    ["72 °F", "temperature", "72 °F"],
    ["72°F", "temperature", "72 °F"],
    ["72ºF", "temperature", "72 °F"], // masculine ordinal
    ["72˚F", "temperature", "72 °F"], // ring above
    ["72℉", "temperature", "72 °F"],
    ["72 F", "temperature", "72 °F"],
    ["72 deg F", "temperature", "72 °F"],
    ["72 deg. F", "temperature", "72 °F"],
    ["72 degF", "temperature", "72 °F"],
    ["72 degrees Fahrenheit", "temperature", "72 °F"],
    ["22.5 ℃", "temperature", "22.5 °C"],
    ["22.5 c", "temperature", "22.5 °C"],
    ["295 K", "temperature", "295 K"],
    ["-5 °F", "temperature", "-5 °F"],
    ["−5 °C", "temperature", "-5 °C"],
    ["+5 °C", "temperature", "5 °C"],
    ["72 °F + 5 Δ°F", "temperature", "77 °F"],
    ["72 °F + 5 F°", "temperature", "77 °F"],
    ["72 °F − 5 delta F", "temperature", "67 °F"],
    ["22 °C + 5 ΔK", "temperature", "27 °C"],
    ["(70 + 2) °F", "temperature", "72 °F"],
    ["72 °F + (95 °F − 90 °F)", "temperature", "77 °F"],
    ["10 °F", "temperatureDifference", "10 Δ°F"],
    ["10 F", "temperatureDifference", "10 Δ°F"],
    ["5 K", "temperatureDifference", "5 K"],
    ["95 °F − 75 °F", "temperatureDifference", "20 Δ°F"],
    ["10 °F + 5 °F", "temperatureDifference", "15 Δ°F"],
    ["2 × 5 °F", "temperatureDifference", "10 Δ°F"],
    ["10 °F + 5 Δ°C", "temperatureDifference", "19 Δ°F"],
    ["3 lb 4.5 oz", "mass", "3.28125 lb"],
    ["3 lbs. 4.5 ozs.", "mass", "3.28125 lb"],
    ["3 lb 4 1/2 oz", "mass", "3.28125 lb"],
    ["3lb4oz", "mass", "3.25 lb"],
    ["3 pounds 4 ounces", "mass", "3.25 lb"],
    ["3 lb - 4 oz", "mass", "2.75 lb"],
    ["2-1/2 lb", "mass", "2.5 lb"],
    ["1 kg 250 g", "mass", "1.25 kg"],
    ["1250 g", "mass", "1250 g"],
    ["0.6 oz/ft × 12 ft", "mass", "7.2 oz"],
    ["12 ft 6 in × 0.6 oz/ft", "mass", "7.5 oz"],
    ["(25 ft − 15 ft) × 0.6 oz per ft", "mass", "6 oz"],
    ["15 g/m × 3 m", "mass", "0.045 kg"],
    ["3.2 oz / 20 ft", "massPerLength", "0.16 oz/ft"],
    ["24 oz / 0.6 oz/ft", "length", "40 ft"],
    ["12 ft × 14 ft", "area", "168 ft²"],
    ["12 ft x 14 ft 6 in", "area", "174 ft²"],
    ["168 sq. ft.", "area", "168 ft²"],
    ["168 ft^2", "area", "168 ft²"],
    ["15.6 m²", "area", "15.6 m²"],
    ["12 ft × 14 ft × 8 ft", "volume", "1344 ft³"],
    ["1344 ft³ ÷ 8 ft", "area", "168 ft²"],
    ["1 h 30 min", "duration", "1.5 h"],
    ["1 h 30 min 15 s", "duration", "1.50416666667 h"],
    ["1 h 1 s", "duration", "1.00027777778 h"],
    ["90 mins", "duration", "90 min"],
    ["1/4 in per ft", "ratio", "2.08333333333 %"],
    ["1/4 in/ft", "ratio", "2.08333333333 %"],
    ['1/4"/ft', "ratio", "2.08333333333 %"],
    ["20 mm/m", "ratio", "2 %"],
    ["1/4 in ÷ (1 ft)", "ratio", "0.0208333333333 fraction"],
    ["5%", "ratio", "5 %"],
    ["1e-7 Pa·m³/s", "throughput", "1e-7 Pa·m³/s"],
    ["5×10⁻⁸ atm cc/s", "throughput", "5e-8 atm·cm³/s"],
    ["50 micron/min", "pressureRate", "50 micron/min"],
    ["0.3 psi ÷ (1 h)", "pressureRate", "0.3 psi/h"],
    ["230 V", "voltage", "230 V"],
    ["10 A × 0.5 Ω", "voltage", "5 V"],
    ["230 V × 10 A", "power", "2.3 kW"],
    ["12 000 Btu/h".replace(" ", "\u202f"), "power", "12000 Btu/h"],
    ["1-1/2 ton", "power", "1.5 ton"],
    ["5 MΩ", "resistance", "5000000 Ω"],
    ["18 ft-lb", "torque", "18 ft·lb"],
    ["18 lbf·ft", "torque", "18 ft·lb"],
    ["120 in-lb", "torque", "10 ft·lb"],
    ["24 N m", "torque", "24 N·m"],
    ["400 cfm", "volumeFlow", "400 cfm"],
    ["0.5 L/min", "volumeFlow", "0.00833333333333 L/s"],
    ["30 lb/1000 ft³", "density", "30 lb/1000 ft³"],
    ["45°", "angle", "45 °"],
    ["1 Btu/(lb·°F)", "specificHeat", "1 Btu/(lb·°F)"],
    ["4.2 kJ/(kg·K) × 5 K", "specificEnergy", "21 kJ/kg"],
  ])("%s as a %s is %s", (text, kind, expected) => {
    expect(read(text, kind)).toBe(expected);
  });
});

describe("a bare number", () => {
  it("takes the default unit when nothing in the text has a unit", () => {
    const asInch = { kind: "length", defaultUnit: inch } as const;
    expect(parseQuantity("3/8", asInch).toString()).toBe("0.375 in");
    expect(parseQuantity("1-1/8", asInch).toString()).toBe("1.125 in");
    expect(parseQuantity("1⅛", asInch).toString()).toBe("1.125 in");
    expect(parseQuantity("12 + 9", { kind: "length", defaultUnit: ft }).toString()).toBe("21 ft");
    expect(
      parseQuantity("(80 + 70) / 2", { kind: "temperature", defaultUnit: degF }).toString(),
    ).toBe("75 °F");
    expect(parseQuantity("-5", { kind: "temperature", defaultUnit: degF }).toString()).toBe(
      "-5 °F",
    );
    expect(parseQuantity("100 / 2 / 5", { kind: "ratio", defaultUnit: percent }).toString()).toBe(
      "10 %",
    );
  });

  it("leaves typed units alone", () => {
    const options = { kind: "gaugePressure", defaultUnit: psig } as const;
    expect(parseQuantity("814 kPag", options).toString()).toBe("814 kPag");
  });
});

describe("a locale", () => {
  const inLocale = (text: string, locale: string) =>
    parseQuantity(text, { kind: "absolutePressure", defaultUnit: micron, locale }).in(micron);
  it.each([
    ["de", "0,5", 0.5],
    ["de", "1,234", 1.234],
    ["de", "1.234,5", 1234.5],
    ["de", "1.234.567", 1_234_567],
    ["fr", "0,5", 0.5],
    ["fr", "1\u202f234,5", 1234.5],
    ["fr", "1 234,5", 1234.5],
    ["sv", "1\u00a0234,5", 1234.5],
    ["sv", "1,5×10^−8", 1.5e-8],
    ["en-US", "1,234", 1234],
    ["en-US", "1,234,567.5", 1_234_567.5],
    ["en-IN", "12,34,567.5", 1_234_567.5],
    ["de-CH", "1’234.5", 1234.5],
    ["de-CH", "1'234.5", 1234.5],
    ["ar-EG", "١٢٣٤٫٥", 1234.5],
    ["ar-EG", "١٬٢٣٤٫٥", 1234.5],
    ["ar-EG", "1234٫5", 1234.5],
    ["fa", "۱۲٫۵", 12.5],
    ["hi-IN-u-nu-deva", "१२.५", 12.5],
    ["es", "1,5", 1.5],
    // Unicode CLDR: Mexico writes 1,234.5, Argentina 1.234,5.
    ["es-MX", "1,250", 1250],
    ["es-AR", "1,250", 1.25],
    ["es-419", "1,234.5", 1234.5],
    ["pt-BR", "1.234,5", 1234.5],
  ])("%s reads %s as %d", (locale, text, expected) => {
    expect(inLocale(text, locale)).toBeCloseTo(expected, 9);
  });
});
