// French (of Canada) of the kinds of quantity, and of what to do about a quantity that cannot be.

import type { QuantityHint } from "../../quantity/hints.ts";
import type { Kind } from "../../quantity/kinds.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<`quantity.kind.${Kind}` | QuantityHint>;
const catalogue: Define<Said> = defineFrench;

/** The kinds of quantity, in French. */
export const quantity: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "quantity.kind.temperature": "température",
  "quantity.kind.gaugePressure": "pression manométrique",
  "quantity.kind.absolutePressure": "pression absolue",
  "quantity.kind.temperatureDifference": "écart de température",
  "quantity.kind.pressureDifference": "différence de pression",
  "quantity.kind.length": "longueur",
  "quantity.kind.area": "superficie",
  "quantity.kind.volume": "volume",
  "quantity.kind.mass": "masse",
  "quantity.kind.massPerLength": "masse par longueur",
  "quantity.kind.density": "masse volumique",
  "quantity.kind.duration": "durée",
  "quantity.kind.speed": "vitesse",
  "quantity.kind.angle": "angle",
  "quantity.kind.ratio": "rapport",
  "quantity.kind.massFlow": "débit massique",
  "quantity.kind.volumeFlow": "débit volumique",
  "quantity.kind.throughput": "débit de fuite",
  "quantity.kind.pressureRate": "vitesse de variation de la pression",
  "quantity.kind.voltage": "tension",
  "quantity.kind.current": "courant",
  "quantity.kind.resistance": "résistance",
  "quantity.kind.resistancePerLength": "résistance par longueur",
  "quantity.kind.power": "puissance",
  "quantity.kind.torque": "couple de serrage",
  "quantity.kind.specificEnergy": "énergie par masse",
  "quantity.kind.specificHeat": "chaleur massique",
  "quantity.below-vacuum":
    "Aucun manomètre ne peut indiquer moins que le vide parfait. Vérifiez la pression atmosphérique et le zéro du manomètre.",
  "quantity.station-pressure-as-is": "La pression mesurée sur place s’emploie telle quelle.",
});
