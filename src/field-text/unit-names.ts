// Which words and marks do people type for a unit? The table of names.
// Follows the symbols of the unit catalogue; the other names are common practice, no source.
// Does not cover names that can mean two different things in the trade: they are refused by their absence.
import type { Kind } from "../quantity/kinds.ts";
import { type Unit, unit } from "../quantity/quantity.ts";
import * as u from "../quantity/units/index.ts";
import { absolute, commonNames as c, gauge } from "../read-quantity/unit-names.ts";

/** A unit of any kind, as the table needs it. */
export type AnyUnit = { [K in Kind]: Unit<K> }[Kind];

/**
 * The units that the names stand for (a point first, its difference second), and the names, separated
 * by `|`. A space or an accent may be left out, a name may end in a point, and case does not matter
 * unless the name begins with `=`: mPa is not MPa.
 */
type Row = readonly [units: readonly AnyUnit[], names: string];

// Units that people type and the catalogue leaves out; the answer comes in the unit beside them.
const micrometre = /* @__PURE__ */ unit("length", "µm", 1e-6);
const inchPerFoot = /* @__PURE__ */ unit("ratio", "in/ft", 1, 12);
const mmPerM = /* @__PURE__ */ unit("ratio", "mm/m", 1e-3);
const literPerMinute = /* @__PURE__ */ unit("volumeFlow", "L/min", 1e-3, 60);
const inchPound = /* @__PURE__ */ unit("torque", "in·lb", [0.45359237, 9.80665, 0.0254]);
const milliampere = /* @__PURE__ */ unit("current", "mA", 1e-3);
const millivolt = /* @__PURE__ */ unit("voltage", "mV", 1e-3);
const milliohm = /* @__PURE__ */ unit("resistance", "mΩ", 1e-3);
const kiloohm = /* @__PURE__ */ unit("resistance", "kΩ", 1e3);
const megohm = /* @__PURE__ */ unit("resistance", "MΩ", 1e6);

/** In which unit of the catalogue an answer comes that was typed in a unit outside it. */
export const homeUnits: ReadonlyMap<AnyUnit, AnyUnit> = /* @__PURE__ */ new Map<AnyUnit, AnyUnit>([
  [micrometre, u.mm],
  [inchPerFoot, u.percent],
  [mmPerM, u.percent],
  [literPerMinute, u.literPerSecond],
  [inchPound, u.ftLb],
  [milliampere, u.ampere],
  [millivolt, u.volt],
  [milliohm, u.ohm],
  [kiloohm, u.ohm],
  [megohm, u.ohm],
]);

const psiNames = `${c.psi}|lb/in2|lbf/in2|pounds per square inch|lb/pulg2|lb/po2`;
const inHgNames = `${c.inHg}|inches of mercury|in mercury`;

/** Inch-pound units. */
export const inchPoundNames: readonly Row[] = /* @__PURE__ */ inchPoundRows();
/** SI units and those used with them, and units that belong to neither. */
export const metricNames: readonly Row[] = /* @__PURE__ */ metricRows();

function inchPoundRows(): Row[] {
  return [
    [[u.degF, u.deltaF], `${c["°F"]}|degree F|degrees Fahrenheit|°Fahrenheit`],
    [[u.deltaF], `${c["Δ°F"]}|Δ℉|delta F|delta °F|delta deg F|F degrees|F deg`],
    [[u.psig], gauge(psiNames)],
    [[u.psia], absolute(psiNames)],
    [[u.psi], `${psiNames}|psid`],
    [[u.inHgGauge], gauge(inHgNames)],
    [[u.inHgAbsolute], absolute(inHgNames)],
    [[u.inHg], inHgNames],
    [
      [u.inchWater],
      `${c.inH2O}|iwc|in water|inches wc|inches of water|inches H2O|inches water column`,
    ],
    [[u.inch], c.in],
    [[u.ft], c.ft],
    [[u.sqft], "ft2|sq ft|sq feet|square ft|square foot|square feet|pie2|pies2|pi2"],
    [[u.sqin], "in2|sq in|square in|square inch|square inches|pulg2|po2"],
    [[u.cuft], "ft3|cu ft|cubic ft|cubic foot|cubic feet|pie3|pies3|pi3"],
    [[u.cuin], "in3|cu in|cubic in|cubic inch|cubic inches|pulg3|po3"],
    [[u.gallon], "gal|gallon|galon|galones|US gal|US gallon"],
    [[u.lb], `${c.lb}|lbm`],
    [[u.oz], c.oz],
    [
      [u.ozPerFt],
      "oz/ft|oz/foot|oz per ft|oz per foot|ounces per foot|ounce per foot|oz/pie|oz/pi",
    ],
    [[u.lbPerFt], "lb/ft|lbs/ft|lb per ft|lb per foot|pounds per foot|lb/pie|lb/pi"],
    [[u.lbPerCuft], "lb/ft3|lb/cu ft|lb per cu ft|pounds per cubic foot|lb/pie3|lb/pi3"],
    [[u.lbPer1000Cuft], "lb/1000 ft3|lb/1000 cu ft|lb per 1000 ft3|lb per 1000 cu ft"],
    [[u.lbPerHour], "lb/h|lb/hr|lbs/h|lbs/hr|lb per hour|pounds per hour"],
    [[u.ftPerMinute], "ft/min|fpm|ft per min|feet per minute|pie/min|pi/min"],
    [[u.cfm], "cfm|ft3/min|cu ft/min|cubic feet per minute|pie3/min|pi3/min|PCM"],
    [[u.gallonPerHour], "gal/h|gal/hr|gph|gal per hour|gallons per hour"],
    [
      [inchPerFoot],
      'in/ft|in per ft|in per foot|inch per foot|inches per foot|"/ft|"/\'|" per ft|" per foot|pulg/pie|po/pi',
    ],
    [[u.psiPerHour], "psi/h|psi/hr|psi per hour"],
    [
      [u.ohmPerKft],
      "Ω/kft|ohm/kft|ohms/kft|Ω/1000 ft|ohm/1000 ft|ohms/1000 ft|ohm per 1000 ft|ohms per 1000 ft",
    ],
    [[u.btuPerHour], "Btu/h|Btu/hr|Btuh|Btu per hour"],
    [[u.tonRefrigeration], "ton|tons of refrigeration|ton of refrigeration|TR"],
    [
      [u.ftLb],
      `${c["ft·lb"]}|lb ft|ft-lbf|ft lbf|lbf·ft|lbf-ft|lbf ft|ft lbs|foot-pounds|foot pounds`,
    ],
    [
      [inchPound],
      "in·lb|in-lb|in lb|lb·in|lb-in|in·lbf|in-lbf|lbf·in|lbf-in|in-lbs|in lbs|inch-pounds|inch pounds",
    ],
    [[u.btuPerLb], "Btu/lb|Btu per lb|Btu per pound"],
    [
      [u.btuPerLbF],
      "Btu/(lb·°F)|Btu/(lb·F)|Btu/(lb °F)|Btu/(lb F)|Btu/lb·°F|Btu/lb·F|Btu/lb-°F|Btu/lb-F|Btu/lb°F",
    ],
  ];
}

function metricRows(): Row[] {
  return [
    [[u.degC, u.deltaC], `${c["°C"]}|degree C|degrees Celsius|°Celsius`],
    [[u.deltaC], `${c["Δ°C"]}|Δ℃|delta C|delta °C|delta deg C|C degrees|C deg`],
    [[u.kelvin, u.deltaK], c.K],
    [[u.deltaK], "=ΔK|delta kelvin|=delta K"],
    [[u.kPag], gauge(`${c.kPa}|kilopascal`)],
    [[u.kPaa], absolute(`${c.kPa}|kilopascal`)],
    [[u.kPa], `${c.kPa}|kPad|kilopascal`],
    [[u.MPag], gauge(c.MPa)],
    [[u.MPaa], absolute(c.MPa)],
    [[u.MPa], `${c.MPa}|megapascal`],
    [[u.barg], gauge(c.bar)],
    [[u.bara], absolute(c.bar)],
    [[u.bar], `${c.bar}|bard`],
    [[u.mbara], absolute(c.mbar)],
    [[u.mbar], `${c.mbar}|millibars`],
    [[u.pascalAbsolute], absolute("Pa|pascal")],
    [[u.pascal], "Pa|pascal"],
    [[u.torr, u.torrDifference], "torr"],
    [[u.torrDifference], "Δtorr|delta torr"],
    [[u.micron, u.micronDifference, micrometre], "micron|micrones|micra|=um|=µm"],
    [
      [u.micron, u.micronDifference],
      "=umHg|=µmHg|=um Hg|=µm Hg|microns Hg|micron Hg|microns of mercury|=mTorr|=mtorr|millitorr",
    ],
    [[u.micronDifference], "Δmicron|delta micron"],
    [[u.m], c.m],
    [[u.cm], "cm|centimetre|centimeter"],
    [[u.mm], c.mm],
    [[micrometre], "micrometre|micrometer"],
    [[u.m2], "=m2|sq m|square metre|square meter"],
    [[u.mm2], "=mm2|sq mm|square millimetres|square millimeters"],
    [[u.m3], "=m3|cu m|cubic metre|cubic meter"],
    [[u.liter], c.L],
    [[u.mL], "=mL|=ml|cc|cm3|millilitre|milliliter"],
    [[u.kg], `${c.kg}|kilogram`],
    [[u.g], c.g],
    [[u.mg], "=mg|milligram"],
    [[u.kgPerM], "=kg/m|kg per metre|kg per meter"],
    [[u.gPerM], "=g/m|g per metre|g per meter|grams per metre|grams per meter"],
    [[u.kgPerM3], "=kg/m3|kg per cubic metre|kg per cubic meter"],
    [[u.gPerM3], "=g/m3|g per cubic metre|g per cubic meter"],
    [[u.second], c.s],
    [[u.minute], c.min],
    [[u.hour], c.h],
    [[u.day], c.d],
    [[u.mPerSecond], "=m/s|=m/sec|metres per second|meters per second"],
    [[u.radian], "rad|radian"],
    [[u.degreeAngle], c["°"]],
    [[u.fraction], "fraction"],
    [[u.percent], c["%"]],
    [[u.ppm], "ppm"],
    [[mmPerM], "=mm/m|mm per metre|mm per meter"],
    [[u.kgPerSecond], "kg/s|kg/sec"],
    [[u.kgPerHour], "kg/h|kg/hr|kg per hour"],
    [[u.gPerYear], "=g/yr|=g/year|=g/a|g per year|grams per year"],
    [[u.m3PerSecond], "=m3/s|=m3/sec"],
    [[u.m3PerHour], "=m3/h|=m3/hr|cubic metres per hour|cubic meters per hour"],
    [[u.literPerSecond], "L/s|L/sec|litres per second|liters per second"],
    [[literPerMinute], "L/min|lpm|litres per minute|liters per minute"],
    [[u.literPerHour], "L/h|L/hr|lph|litres per hour|liters per hour"],
    [[u.paM3PerS], "Pa·m3/s|Pa m3/s"],
    [[u.mbarLiterPerSecond], "=mbar·L/s|=mbar·l/s|=mbar L/s|=mbar l/s"],
    [[u.atmCm3PerSecond], "atm·cm3/s|atm cm3/s|atm·cc/s|atm cc/s"],
    [[u.micronLiterPerSecond], "micron·L/s|micron L/s|micron·l/s"],
    [[u.pascalPerSecond], "Pa/s|Pa/sec"],
    [
      [u.micronPerMinute],
      "micron/min|microns/min|micron per minute|microns per minute|µmHg/min|umHg/min",
    ],
    [[u.kPaPerHour], "kPa/h|kPa/hr|kPa per hour"],
    [[u.volt], c.V],
    [[millivolt], "=mV|millivolt"],
    [[u.ampere], c.A],
    [[milliampere], "=mA|milliamp"],
    [[u.ohm], c["Ω"]],
    [[milliohm], "=mΩ|=mohm|milliohm"],
    [[kiloohm], "kΩ|kohm|kilohm"],
    [[megohm], "=MΩ|=Mohm|megohm"],
    [[u.ohmPerKm], "Ω/km|ohm/km|ohms/km|ohm per km|ohms per km"],
    [[u.watt], c.W],
    [[u.kW], c.kW],
    [[u.newtonMeter], `${c["N·m"]}|newton metre|newton meter`],
    [[u.kJPerKg], "kJ/kg"],
    [[u.kJPerKgK], "kJ/(kg·K)|kJ/(kg K)|kJ/kg·K|kJ/kg-K|kJ/kgK"],
  ];
}
