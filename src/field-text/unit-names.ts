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
 * by `|`, in the form of {@link commonNames}: `+` stands for the s of a plural. A name may end in a point.
 */
type Row = readonly [units: readonly AnyUnit[], names: string];

// Units that people type and the catalogue leaves out; the answer comes in the unit beside them.
const micrometre = /* @__PURE__ */ unit("length", "µm", 1e-6);
const inchPerFoot = /* @__PURE__ */ unit("ratio", "in/ft", 1, 12);
const mmPerM = /* @__PURE__ */ unit("ratio", "mm/m", 1e-3);
const literPerMinute = /* @__PURE__ */ unit("volumeFlow", "L/min", 1e-3, 60);
const inchPound = /* @__PURE__ */ unit("torque", "in·lb", [0.45359237, 9.80665, 0.0254]);
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
  [millivolt, u.volt],
  [milliohm, u.ohm],
  [kiloohm, u.ohm],
  [megohm, u.ohm],
]);

const psiNames = `${c.psi}|lb/in2|lbf/in2|pound+ per square inch|lb/pulg2|libra+ por pulgada cuadrada|lb/po2|livre+ par pouce carré`;
const inHgNames = `${c.inHg}|inches of mercury|in mercury|pulgada+ de mercurio|pouce+ de mercure`;

/** Inch-pound units. */
export const inchPoundNames: readonly Row[] = /* @__PURE__ */ inchPoundRows();
/** SI units and those used with them, and units that belong to neither. */
export const metricNames: readonly Row[] = /* @__PURE__ */ metricRows();

function inchPoundRows(): Row[] {
  return [
    [
      [u.degF, u.deltaF],
      `${c["°F"]}|degree+ Fahrenheit|°Fahrenheit|grado+ Fahrenheit|degré+ F|degré+ Fahrenheit`,
    ],
    [[u.deltaF], `${c["Δ°F"]}|Δ℉|delta F|delta °F|delta deg F|F degrees|F deg`],
    [[u.psig], gauge(psiNames)],
    [[u.psia], absolute(psiNames)],
    [[u.psi], `${psiNames}|psid`],
    [[u.inHgGauge], `inHg gauge|${gauge(inHgNames)}`],
    [[u.inHgAbsolute], `inHg abs|${absolute(inHgNames)}`],
    [[u.inHg], inHgNames],
    [
      [u.inchWater],
      `${c.inH2O}|iwc|in water|inches wc|inches of water|inches H2O|inches water column|pulgada+ de agua|pouce+ d'eau`,
    ],
    [[u.inch], `${c.in}|''`],
    [[u.ft], c.ft],
    [
      [u.sqft],
      "ft2|sq ft|sq feet|square ft|square foot|square feet|pie2|pies2|pie+ cuadrado+|pi2|pied+ carré+",
    ],
    [
      [u.sqin],
      "in2|sq in|square in|square inch|square inches|pulg2|pulgada+ cuadrada+|po2|pouce+ carré+",
    ],
    [[u.cuft], "ft3|cu ft|cubic ft|cubic foot|cubic feet|pie3|pies3|pie+ cúbico+|pi3|pied+ cube+"],
    [
      [u.cuin],
      "in3|cu in|cubic in|cubic inch|cubic inches|pulg3|pulgada+ cúbica+|po3|pouce+ cube+",
    ],
    [[u.gallon], "gal|gallon+|galón|galones|US gal|US gallon+"],
    [[u.lb], `${c.lb}|lbm`],
    [[u.oz], c.oz],
    [
      [u.ozPerFt],
      "oz/ft|oz/foot|oz per ft|oz per foot|ounce+ per foot|oz/pie|onza+ por pie|oz/pi|once+ par pied",
    ],
    [
      [u.lbPerFt],
      "lb/ft|lbs/ft|lb per ft|lb per foot|pound+ per foot|lb/pie|libra+ por pie|lb/pi|livre+ par pied",
    ],
    [[u.lbPerCuft], "lb/ft3|lb/cu ft|lb per cu ft|pound+ per cubic foot|lb/pie3|lb/pi3"],
    [[u.lbPer1000Cuft], "lb/1000 ft3|lb/1000 cu ft|lb per 1000 ft3|lb per 1000 cu ft"],
    [
      [u.lbPerHour],
      "lb/h|lb/hr|lbs/h|lbs/hr|lb per hour|pound+ per hour|libra+ por hora|livre+ par heure",
    ],
    [[u.ftPerMinute], "ft/min|fpm|ft per min|feet per minute|pie/min|pi/min"],
    [[u.cfm], "cfm|ft3/min|cu ft/min|cubic feet per minute|pie3/min|pi3/min|PCM"],
    [[u.gallonPerHour], "gal/h|gal/hr|gph|gal per hour|gallon+ per hour"],
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
    [[u.tonRefrigeration], "ton+|ton+ of refrigeration|TR"],
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
    [
      [u.degC, u.deltaC],
      `${c["°C"]}|degree+ Celsius|°Celsius|grado+ Celsius|degré+ C|degré+ Celsius`,
    ],
    [[u.deltaC], `${c["Δ°C"]}|Δ℃|delta C|delta °C|delta deg C|C degrees|C deg`],
    [[u.kelvin, u.deltaK], c.K],
    [[u.deltaK], "=ΔK|delta kelvin+|=delta K"],
    [[u.kPag], gauge(`${c.kPa}|kilopascal+`)],
    [[u.kPaa], absolute(`${c.kPa}|kilopascal+`)],
    [[u.kPa], `${c.kPa}|kPad|kilopascal+`],
    [[u.MPag], gauge(c.MPa)],
    [[u.MPaa], absolute(c.MPa)],
    [[u.MPa], `${c.MPa}|megapascal+`],
    [[u.barg], gauge(c.bar)],
    [[u.bara], absolute(c.bar)],
    [[u.bar], `${c.bar}|bard`],
    [[u.mbara], absolute(c.mbar)],
    [[u.mbar], `${c.mbar}`],
    [[u.pascalAbsolute], absolute("Pa|pascal+")],
    [[u.pascal], "Pa|pascal+"],
    [[u.torr, u.torrDifference], "torr"],
    [[u.torrDifference], "Δtorr|delta torr"],
    [[u.micron, u.micronDifference, micrometre], "micron+|micrón|micrones|micra+|=um|=µm"],
    [
      [u.micron, u.micronDifference],
      "=umHg|=µmHg|=um Hg|=µm Hg|micron+ Hg|micron+ of mercury|=mTorr|=mtorr|millitorr",
    ],
    [[u.micronDifference], "Δmicron+|delta micron+"],
    [[u.m], `${c.m}|mètre+`],
    [[u.cm], "cm|centimetre+|centimeter+|centímetro+|centimètre+"],
    [[u.mm], `${c.mm}|milímetro+|millimètre+`],
    [[micrometre], "micrometre+|micrometer+"],
    [[u.m2], "=m2|sq m|square metre+|square meter+|metro+ cuadrado+|mètre+ carré+"],
    [[u.mm2], "=mm2|sq mm|square millimetre+|square millimeter+"],
    [[u.m3], "=m3|cu m|cubic metre+|cubic meter+|metro+ cúbico+|mètre+ cube+"],
    [[u.liter], c.L],
    [[u.mL], "=mL|=ml|cc|cm3|millilitre+|milliliter+|mililitro+"],
    [[u.kg], `${c.kg}|kilogram+|kilogramo+|kilogramme+`],
    [[u.g], c.g],
    [[u.mg], "=mg|milligram+|miligramo+|milligramme+"],
    [[u.kgPerM], "=kg/m|kg per metre|kg per meter"],
    [
      [u.gPerM],
      "=g/m|g per metre|g per meter|gram+ per metre|gram+ per meter|gramo+ por metro|gramme+ par mètre",
    ],
    [[u.kgPerM3], "=kg/m3|kg per cubic metre|kg per cubic meter"],
    [[u.gPerM3], "=g/m3|g per cubic metre|g per cubic meter"],
    [[u.second], `${c.s}|seg`],
    [[u.minute], c.min],
    [[u.hour], c.h],
    [[u.day], c.d.replace("dia", "día")],
    [[u.mPerSecond], "=m/s|=m/sec|metre+ per second|meter+ per second"],
    [[u.radian], "rad|radian+"],
    [[u.degreeAngle], `${c["°"]}|grado+|degré+`],
    [[u.fraction], "fraction"],
    [[u.percent], `${c["%"]}|percent|por ciento|pour cent`],
    [[u.ppm], "ppm"],
    [[mmPerM], "=mm/m|mm per metre|mm per meter"],
    [[u.kgPerSecond], "kg/s|kg/sec"],
    [[u.kgPerHour], "kg/h|kg/hr|kg per hour"],
    [[u.gPerYear], "=g/yr|=g/year|=g/a|=g/año|=g/an|g per year|gram+ per year"],
    [[u.ozPerYear], "oz/yr|oz/year|oz/a|oz/año|oz/an|oz per year|ounce+ per year"],
    [[u.m3PerSecond], "=m3/s|=m3/sec"],
    [[u.m3PerHour], "=m3/h|=m3/hr|cubic metre+ per hour|cubic meter+ per hour"],
    [[u.literPerSecond], "L/s|L/sec|litre+ per second|liter+ per second"],
    [[literPerMinute], "L/min|lpm|litre+ per minute|liter+ per minute"],
    [[u.literPerHour], "L/h|L/hr|lph|litre+ per hour|liter+ per hour"],
    [[u.paM3PerS], "Pa·m3/s|Pa m3/s"],
    [[u.mbarLiterPerSecond], "=mbar·L/s|=mbar·l/s|=mbar L/s|=mbar l/s"],
    [[u.atmCm3PerSecond], "atm·cm3/s|atm cm3/s|atm·cc/s|atm cc/s"],
    [[u.micronLiterPerSecond], "micron·L/s|micron L/s|micron·l/s"],
    [[u.pascalPerSecond], "Pa/s|Pa/sec"],
    [[u.micronPerMinute], "micron+/min|micron+ per minute|µmHg/min|umHg/min"],
    [[u.kPaPerHour], "kPa/h|kPa/hr|kPa per hour"],
    [[u.volt], c.V],
    [[millivolt], "=mV|millivolt+"],
    [[u.ampere], `${c.A}|ampère+`],
    [[u.milliampere], "=mA|milliamp+|miliamperio+|milliampère+"],
    [[u.ohm], c["Ω"]],
    [[milliohm], "=mΩ|=mohm|milliohm+"],
    [[kiloohm], "kΩ|kohm|kilohm+"],
    [[megohm], "=MΩ|=Mohm|megohm+"],
    [[u.ohmPerKm], "Ω/km|ohm/km|ohms/km|ohm per km|ohms per km"],
    [[u.watt], `${c.W}|vatio+`],
    [[u.kW], `${c.kW}|kilovatio+`],
    [[u.newtonMeter], `${c["N·m"]}|Nm|newton metre+|newton meter+`],
    [[u.kJPerKg], "kJ/kg"],
    [[u.kJPerKgK], "kJ/(kg·K)|kJ/(kg K)|kJ/kg·K|kJ/kg-K|kJ/kgK"],
  ];
}
