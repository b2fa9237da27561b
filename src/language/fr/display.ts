// French (of Canada) of figures: the units that languages write in different ways.
import type { DisplayStatements } from "../../display/unit-words.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<DisplayStatements> = defineFrench;

/** How `display` writes units, in French. A difference of temperature reads as °F or °C. */
export const display: CatalogueOf<DisplayStatements> = /* @__PURE__ */ catalogue("fr-CA", {
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
  "display.unit.inHg gauge": "{count} inHg (g)",
  "display.unit.inHg abs": "{count} inHg abs",
  "display.unit.inH2O": "{count} inH2O",
  "display.unit.in": "{count} po",
  "display.unit.ft": "{count} pi",
  "display.unit.in²": "{count} po²",
  "display.unit.ft²": "{count} pi²",
  "display.unit.in³": "{count} po³",
  "display.unit.ft³": "{count} pi³",
  "display.unit.gal": "{count} gal",
  "display.unit.gal/h": "{count} gal/h",
  "display.unit.cfm": "{count} pi³/min",
  "display.unit.oz": "{count} oz",
  "display.unit.lb": "{count} lb",
  "display.unit.oz/ft": "{count} oz/pi",
  "display.unit.lb/ft": "{count} lb/pi",
  "display.unit.lb/ft³": "{count} lb/pi³",
  "display.unit.lb/1000 ft³": "{count} lb/1000 pi³",
  "display.unit.lb/h": "{count} lb/h",
  "display.unit.g/yr": "{count} g/an",
  "display.unit.oz/yr": "{count} oz/an",
  "display.unit.ft/min": "{count} pi/min",
  "display.unit.ft·lb": "{count} pi-lb",
  "display.unit.Ω/kft": "{count} Ω/1000 pi",
  "display.unit.ton": {
    by: "count",
    one: "{count} tonne de réfrigération",
    other: "{count} tonnes de réfrigération",
  },
  "display.unit.d": { by: "count", one: "{count} jour", other: "{count} jours" },
  "display.unit.fraction": "{count}",
});
