// What do people type for a unit, besides its symbol? The names that a field of a form has to know.
// Follows common practice, no source; the symbols are the unit catalogue's. English, Spanish and French
// stand side by side: no name of one is another unit in the other. A pound is a mass, whatever gauges are said to read.
// Does not cover every way to write a unit, nor compound ones: field-text knows more names.

/**
 * Names by symbol, separated by `|`. A space or an accent may be left out, and case does not matter unless the name
 * begins with `=`: mPa is not MPa. A word with `+` behind it has a plural in s: see {@link spelled}.
 */
export const commonNames = {
  "°F": "°F|F|deg F|degree+ F|Fahrenheit|grado+ F|degre+ F",
  "°C": "°C|C|deg C|degree+ C|Celsius|grado+ C|degre+ C",
  "Δ°F": "Δ°F|ΔF|F°",
  "Δ°C": "Δ°C|ΔC|C°",
  K: "=K|kelvin+",
  psi: "psi",
  kPa: "kPa",
  MPa: "=MPa|=MPA",
  bar: "bar+",
  mbar: "=mbar|=mBar|hPa|=millibar+",
  inHg: 'inHg|in Hg|"Hg|inches Hg|inch Hg',
  inH2O: 'inH2O|in H2O|"H2O|in wc|"wc|in wg|"wg',
  micron: "micron+|micrones|micra+|=um|=µm|=umHg|=µmHg|=mTorr|=mtorr",
  ft: "ft|foot|feet|'|pie+|pied+|pi",
  in: 'in|inch|inches|"|pulg|pulgada+|pouce+|po',
  m: "=m|metre+|meter+|metro+",
  mm: "=mm|=MM|millimetre+|millimeter+",
  L: "L|litre+|liter+|litro+",
  lb: "lb+|pound+|libra+|livre+",
  oz: "oz+|ounce+|onza+|once+",
  kg: "kg+|kilo+",
  g: "=g|gram+|gramo+|gramme+",
  s: "=s|sec+|second+|segundo+|seconde+",
  min: "min+|minute+|minuto+",
  h: "=h|hr+|hour+|hora+|heure+",
  d: "=d|day+|dia+|jour+",
  V: "V|volt+|V AC|V DC|voltio+",
  A: "A|amp+|ampere+|amperio+",
  Ω: "Ω|ohm+|ohmio+",
  W: "W|watt+",
  kW: "kW|kilowatt+",
  N·m: "N·m|N m|N-m",
  ft·lb: "ft·lb|ft-lb|ft lb|lb·ft|lb-ft|ft·lbf|ft-lbf|ft-lbs|lb·pie|pi-lb",
  "°": "°|deg|degree+",
  "%": "%|per cent|pct",
} as const;

/** The spellings of a name: `onza+ por pie` is onza por pie and onzas por pie. */
export const spelled = (name: string): string[] =>
  name.includes("+") ? [name.replaceAll("+", ""), name.replaceAll("+", "s")] : [name];

/** Names with each of the endings. */
const named = (names: string, endings: string): string =>
  names
    .split("|")
    .flatMap(spelled)
    .flatMap((name) => endings.split("|").map((ending) => name + ending))
    .join("|");

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
