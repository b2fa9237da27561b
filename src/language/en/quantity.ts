// English of the kinds of quantity, and of what to do about a quantity that cannot be.

import type { QuantityHint } from "../../quantity/hints.ts";
import type { Kind } from "../../quantity/kinds.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<`quantity.kind.${Kind}` | QuantityHint>;
const catalogue: Define<Said> = define;

/** The kinds of quantity, in American English. */
export const quantity: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "quantity.kind.temperature": "temperature",
  "quantity.kind.gaugePressure": "gauge pressure",
  "quantity.kind.absolutePressure": "absolute pressure",
  "quantity.kind.temperatureDifference": "temperature difference",
  "quantity.kind.pressureDifference": "pressure difference",
  "quantity.kind.length": "length",
  "quantity.kind.area": "area",
  "quantity.kind.volume": "volume",
  "quantity.kind.mass": "mass",
  "quantity.kind.massPerLength": "mass per length",
  "quantity.kind.density": "density",
  "quantity.kind.duration": "time",
  "quantity.kind.speed": "speed",
  "quantity.kind.angle": "angle",
  "quantity.kind.ratio": "ratio",
  "quantity.kind.massFlow": "mass flow",
  "quantity.kind.volumeFlow": "volume flow",
  "quantity.kind.throughput": "leak rate",
  "quantity.kind.pressureRate": "rate of pressure change",
  "quantity.kind.voltage": "voltage",
  "quantity.kind.current": "current",
  "quantity.kind.resistance": "resistance",
  "quantity.kind.resistancePerLength": "resistance per length",
  "quantity.kind.power": "power",
  "quantity.kind.torque": "torque",
  "quantity.kind.specificEnergy": "energy per mass",
  "quantity.kind.specificHeat": "specific heat",
  "quantity.below-vacuum":
    "A gauge cannot read below a perfect vacuum. Check the atmosphere and the gauge’s zero.",
  "quantity.station-pressure-as-is": "A station pressure is used as it is.",
});
