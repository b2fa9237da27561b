// Spanish (of the Americas) of the kinds of quantity, and of what to do about a quantity that cannot be.

import type { QuantityHint } from "../../quantity/hints.ts";
import type { Kind } from "../../quantity/kinds.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<`quantity.kind.${Kind}` | QuantityHint>;
const catalogue: Define<Said> = define;

/** The kinds of quantity, in Spanish. */
export const quantity: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "quantity.kind.temperature": "temperatura",
  "quantity.kind.gaugePressure": "presión manométrica",
  "quantity.kind.absolutePressure": "presión absoluta",
  "quantity.kind.temperatureDifference": "diferencia de temperatura",
  "quantity.kind.pressureDifference": "diferencia de presión",
  "quantity.kind.length": "longitud",
  "quantity.kind.area": "área",
  "quantity.kind.volume": "volumen",
  "quantity.kind.mass": "masa",
  "quantity.kind.massPerLength": "masa por longitud",
  "quantity.kind.density": "densidad",
  "quantity.kind.duration": "tiempo",
  "quantity.kind.speed": "velocidad",
  "quantity.kind.angle": "ángulo",
  "quantity.kind.ratio": "proporción",
  "quantity.kind.massFlow": "caudal másico",
  "quantity.kind.volumeFlow": "caudal volumétrico",
  "quantity.kind.throughput": "tasa de fuga",
  "quantity.kind.pressureRate": "velocidad de cambio de la presión",
  "quantity.kind.voltage": "voltaje",
  "quantity.kind.current": "corriente",
  "quantity.kind.resistance": "resistencia",
  "quantity.kind.resistancePerLength": "resistencia por longitud",
  "quantity.kind.power": "potencia",
  "quantity.kind.torque": "par de apriete",
  "quantity.kind.specificEnergy": "energía por masa",
  "quantity.kind.specificHeat": "calor específico",
  "quantity.below-vacuum":
    "Ningún manómetro puede marcar menos que el vacío perfecto. Compruebe la presión atmosférica y el cero del manómetro.",
  "quantity.station-pressure-as-is": "La presión medida en el lugar se usa tal cual.",
});
