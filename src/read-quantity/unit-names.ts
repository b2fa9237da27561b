// What do people type for a unit, besides its symbol? The names that a field of a form has to know.
// Follows common practice, no source; the symbols are the unit catalogue's. English, Spanish and French
// stand side by side: no name of one is another unit in the other. A pound is a mass, whatever gauges are said to read.
// Does not cover every way to write a unit, nor compound ones: field-text knows more names.

/**
 * Names by symbol, separated by `|`. A space or an accent may be left out, a name may end in a point, and case does
 * not matter, nor the s of a plural, unless the name begins with `=`: mPa is not MPa.
 */
export const commonNames = {
  "°F": "°F|℉|F|deg F|degrees F|Fahrenheit",
  "°C": "°C|℃|C|deg C|degrees C|Celsius",
  "Δ°F": "Δ°F|ΔF|F°",
  "Δ°C": "Δ°C|ΔC|C°",
  K: "=K|kelvin",
  psi: "psi",
  kPa: "kPa",
  MPa: "=MPa|=MPA",
  bar: "bar|bars",
  mbar: "=mbar|=mBar|hPa|=millibar",
  inHg: 'inHg|in Hg|"Hg|inches Hg|inch Hg',
  inH2O: 'inH2O|in H2O|"H2O|in wc|"wc|in wg|"wg',
  micron: "micron|micrones|micra|=um|=µm|=umHg|=µmHg|=mTorr|=mtorr",
  ft: "ft|foot|feet|'|pie|pied|pi",
  in: "in|inch|inches|\"|''|pulg|pulgada|pouce|po",
  m: "=m|metre|meter",
  mm: "=mm|=MM|millimetre|millimeter",
  L: "L|litre|liter",
  lb: "lb|lbs|pound|libra|livre",
  oz: "oz|ozs|ounce|onza|once",
  kg: "kg|kgs|kilo",
  g: "=g|gram",
  s: "=s|sec|second",
  min: "min|minute|minuto",
  h: "=h|hr|hrs|hour|hora|heure",
  d: "=d|day|dia|jour",
  V: "V|volt|V AC|V DC",
  A: "A|amp|ampere",
  Ω: "Ω|ohm",
  W: "W|watt",
  kW: "kW|kilowatt",
  N·m: "N·m|Nm|N m|N-m",
  ft·lb: "ft·lb|ft-lb|ft lb|lb·ft|lb-ft|ft·lbf|ft-lbf|ft-lbs|lb·pie|pi-lb",
  "°": "°|deg|degree",
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
