// English of figures: the units that languages write in different ways.
import type { DisplayStatements } from "../../display/unit-words.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<DisplayStatements> = define;

/** How `display` writes units, in American English. A difference of temperature reads as °F or °C. */
export const display: CatalogueOf<DisplayStatements> = /* @__PURE__ */ catalogue("en-US", {
  "display.unit.Δ°F": "{count} °F",
  "display.unit.Δ°C": "{count} °C",
  "display.unit.micron": { by: "count", one: "{count} micron", other: "{count} microns" },
  "display.unit.micron/min": {
    by: "count",
    one: "{count} micron/min",
    other: "{count} microns/min",
  },
  "display.unit.micron·L/s": "{count} micron·L/s",
  "display.unit.Pa abs": "{count} Pa abs",
  "display.unit.inHg": "{count} inHg",
  "display.unit.inHg gauge": "{count} inHg gauge",
  "display.unit.inHg abs": "{count} inHg abs",
  "display.unit.inH2O": "{count} inH2O",
  "display.unit.in": "{count} in",
  "display.unit.ft": "{count} ft",
  "display.unit.in²": "{count} in²",
  "display.unit.ft²": "{count} ft²",
  "display.unit.in³": "{count} in³",
  "display.unit.ft³": "{count} ft³",
  "display.unit.gal": "{count} gal",
  "display.unit.gal/h": "{count} gal/h",
  "display.unit.cfm": "{count} cfm",
  "display.unit.oz": "{count} oz",
  "display.unit.lb": "{count} lb",
  "display.unit.oz/ft": "{count} oz/ft",
  "display.unit.lb/ft": "{count} lb/ft",
  "display.unit.lb/ft³": "{count} lb/ft³",
  "display.unit.lb/1000 ft³": "{count} lb/1000 ft³",
  "display.unit.lb/h": "{count} lb/h",
  "display.unit.g/yr": "{count} g/yr",
  "display.unit.oz/yr": "{count} oz/yr",
  "display.unit.ft/min": "{count} ft/min",
  "display.unit.ft·lb": "{count} ft·lb",
  "display.unit.Ω/kft": "{count} Ω/kft",
  "display.unit.ton": { by: "count", one: "{count} ton", other: "{count} tons" },
  "display.unit.d": { by: "count", one: "{count} day", other: "{count} days" },
  "display.unit.fraction": "{count}",
});
