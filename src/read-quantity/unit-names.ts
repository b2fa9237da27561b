// What do people type for a unit, besides its symbol? The names that a field of a form has to know.
// Follows common practice, no source; the symbols are the unit catalogue's.
// Does not cover every way to write a unit, nor compound ones: field-text knows more names.

/**
 * Names by symbol, separated by `|`. A space in a name may be left out, a name may end in a point, and case does
 * not matter unless the name begins with `=`: mPa is not MPa.
 */
export const commonNames = {
  "°F": "°F|℉|F|degF|deg F|degrees F|Fahrenheit",
  "°C": "°C|℃|C|degC|deg C|degrees C|Celsius",
  "Δ°F": "Δ°F|ΔF|F°",
  "Δ°C": "Δ°C|ΔC|C°",
  K: "=K|kelvin|kelvins",
  psi: "psi",
  kPa: "kPa",
  MPa: "=MPa|=MPA",
  bar: "bar|bars",
  mbar: "=mbar|=mBar|hPa|=millibar",
  inHg: 'inHg|in Hg|"Hg|inches Hg|inch Hg',
  inH2O: 'inH2O|in H2O|"H2O|in wc|inwc|"wc|in wg|"wg',
  micron: "micron|microns|=um|=µm|=umHg|=µmHg|=mTorr|=mtorr",
  ft: "ft|foot|feet|'",
  in: "in|inch|inches|\"|''",
  m: "=m|metre|metres|meter|meters",
  mm: "=mm|=MM|millimetre|millimetres|millimeter|millimeters",
  L: "L|litre|litres|liter|liters",
  lb: "lb|lbs|pound|pounds",
  oz: "oz|ozs|ounce|ounces",
  kg: "kg|kgs|kilo|kilos",
  g: "=g|gram|grams",
  s: "=s|sec|secs|second|seconds",
  min: "min|mins|minute|minutes",
  h: "=h|hr|hrs|hour|hours",
  d: "=d|day|days",
  V: "V|volt|volts|VAC|V AC|VDC|V DC",
  A: "A|amp|amps|ampere|amperes",
  Ω: "Ω|ohm|ohms",
  W: "W|watt|watts",
  kW: "kW|kilowatt|kilowatts",
  N·m: "N·m|Nm|N m|N-m",
  ft·lb: "ft·lb|ft-lb|ft lb|lb·ft|lb-ft|ft·lbf|ft-lbf|ft-lbs",
  "°": "°|deg|degree|degrees",
  "%": "%|percent|per cent|pct",
} as const;

/** Gauge and absolute names of a pressure unit; `=` is kept where case matters. */
function named(names: string, endings: string): string {
  return names
    .split("|")
    .flatMap((name) => endings.split("|").map((ending) => name + ending))
    .join("|");
}

/** The names of a gauge pressure, from those of its difference. */
export const gauge = (names: string): string => named(names, "g|(g)| g|-g| gauge| gage|(gauge)");

/** The names of an absolute pressure, from those of its difference. */
export const absolute = (names: string): string => named(names, "a|(a)| a|-a| abs| absolute|(abs)");

/** The names of a unit; its symbol alone where it has no others. */
export function namesOf(symbol: string): string {
  return Object.hasOwn(commonNames, symbol)
    ? commonNames[symbol as keyof typeof commonNames]
    : `=${symbol}`;
}
