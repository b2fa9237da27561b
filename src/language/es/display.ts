// Spanish (of the Americas) of figures: the units that languages write in different ways.
import type { DisplayStatements } from "../../display/unit-words.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<DisplayStatements> = define;

/** How `display` writes units, in Spanish. A difference of temperature reads as °F or °C. */
export const display: CatalogueOf<DisplayStatements> = /* @__PURE__ */ catalogue("es-419", {
  "display.unit.Δ°F": "{count} °F",
  "display.unit.Δ°C": "{count} °C",
  "display.unit.micron": { by: "count", one: "{count} micrón", other: "{count} micrones" },
  "display.unit.micron/min": {
    by: "count",
    one: "{count} micrón/min",
    other: "{count} micrones/min",
  },
  "display.unit.micron·L/s": "{count} micrón·L/s",
  "display.unit.Pa abs": "{count} Pa abs",
  "display.unit.inHg": "{count} inHg",
  "display.unit.inHg gauge": "{count} inHg (g)",
  "display.unit.inHg abs": "{count} inHg abs",
  "display.unit.inH2O": "{count} inH2O",
  "display.unit.in": "{count} pulg",
  "display.unit.ft": { by: "count", one: "{count} pie", other: "{count} pies" },
  "display.unit.in²": "{count} pulg²",
  "display.unit.ft²": "{count} pie²",
  "display.unit.in³": "{count} pulg³",
  "display.unit.ft³": "{count} pie³",
  "display.unit.gal": "{count} gal",
  "display.unit.gal/h": "{count} gal/h",
  "display.unit.cfm": "{count} pie³/min",
  "display.unit.oz": "{count} oz",
  "display.unit.lb": "{count} lb",
  "display.unit.oz/ft": "{count} oz/pie",
  "display.unit.lb/ft": "{count} lb/pie",
  "display.unit.lb/ft³": "{count} lb/pie³",
  "display.unit.lb/1000 ft³": "{count} lb/1000 pie³",
  "display.unit.lb/h": "{count} lb/h",
  "display.unit.g/yr": "{count} g/año",
  "display.unit.oz/yr": "{count} oz/año",
  "display.unit.ft/min": "{count} pie/min",
  "display.unit.ft·lb": "{count} lb·pie",
  "display.unit.Ω/kft": "{count} Ω/1000 pie",
  "display.unit.ton": "{count} TR",
  "display.unit.d": { by: "count", one: "{count} día", other: "{count} días" },
  "display.unit.fraction": "{count}",
});
