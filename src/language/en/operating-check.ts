// English of gauge readings on a running unit: sentences and words.
import type {
  OperatingCheckStatements,
  OperatingCheckWord,
} from "../../operating-check/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = OperatingCheckStatements & Words<OperatingCheckWord>;
const catalogue: Define<Said> = define;

/** What `operating-check` says, in American English. */
export const operatingCheck: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "operating-check.by-superheat": "Fixed orifice: the charge is checked by superheat.",
  "operating-check.by-subcooling": "Thermostatic valve: the charge is checked by subcooling.",
  "operating-check.no-target":
    "Inverter or electronic valve: there is no superheat or subcooling to charge by.",
  "operating-check.no-target-in-heating":
    "Heating: superheat and subcooling targets are for cooling.",
  "operating-check.superheat-below-floor":
    "Superheat {superheat}: below the minimum of {least}. Liquid can reach the compressor.",
  "operating-check.superheat-near-floor":
    "Superheat {superheat}: too close to the minimum of {least} to exclude liquid at the compressor.",

  "operating-check.gauge-set-suits": "Gauge and hose suit {pressure}.",
  "operating-check.above-hose-rating": "{pressure} is above the hose’s working pressure, {limit}.",
  "operating-check.destroys-gauge": "{pressure} destroys a gauge whose scale ends at {limit}.",
  "operating-check.beyond-scale": "{pressure} cannot be read: the scale ends at {limit}.",

  "operating-check.within-window": "Pressure {pressure}: within {from} to {to}.",
  "operating-check.below-window": "Pressure {pressure}: below {from} to {to}.",
  "operating-check.above-window": "Pressure {pressure}: above {from} to {to}.",
  "operating-check.other-side": "Pressure {pressure}: outside {from} to {to}. It fits the {side}.",
  "operating-check.too-close-to-call":
    "Too close to call: pressure {pressure}, expected {from} to {to}.",
  "operating-check.approach-range-wide":
    "An approach anywhere from {low} to {high} lets a faulty unit pass. At most {widest} apart is usable.",
  "operating-check.approach-at-rest":
    "An approach from {low} to {high} lets a unit at rest pass. At least {least} is usable.",

  "operating-check.as-printed": "Gauge and hose are sound and as printed on them.",
  "operating-check.steady-full-speed":
    "The unit runs steadily at full speed. Line losses are left out.",
  "operating-check.approaches-as-stated": "The approaches are as entered.",
  "operating-check.expands-outdoors": "The refrigerant expands in the outdoor unit.",
  "operating-check.exact-gauge": "No accuracy was given, so the reading is taken as exact.",

  "operating-check.mode-first":
    "Check the mode first. In heating the vapor port shows discharge pressure, which destroys a low-side gauge.",
  "operating-check.hoses-lose-refrigerant":
    "Each hose loses refrigerant. Connect only with a reason.",
  "operating-check.not-the-charge": "No pressure proves the charge right. Weigh it.",

  "operating-check.weigh-the-charge": "Weigh the charge in, by the nameplate and the manual.",
  "operating-check.stop-liquid":
    "Do not let the unit run like this. Check airflow and filters, then the charge.",
  "operating-check.read-near-floor-again":
    "Raise the superheat until it is clearly above {least}, or read again with better probes.",
  "operating-check.use-rated-hose": "Use a hose with a working pressure of {pressure} or more.",
  "operating-check.use-larger-gauge": "Use a gauge whose scale reaches {pressure}.",
  "operating-check.check-mode-and-port":
    "Check which mode the unit runs in and which port the hose is on.",
  "operating-check.find-the-cause":
    "Check filters, coils, fans and both air temperatures, then read again.",
  "operating-check.use-better-gauge": "Read again with a gauge of ±{needed} or better.",
  "operating-check.read-again-later": "Let the unit run steadily and read again.",
  "operating-check.state-approach": "Enter the approach that the manufacturer states.",

  "operating-check.side.low": "low side",
  "operating-check.side.high": "high side",
  "operating-check.cause.low": "below target",
  "operating-check.cause.high": "above target",
  "operating-check.cause.liquid-to-compressor": "liquid can reach the compressor",
  "operating-check.cause.hose-rating": "hose rated too low",
  "operating-check.cause.gauge-scale": "gauge too small",
  "operating-check.cause.retard-only": "cannot be read on this gauge",
  "operating-check.cause.below-window": "pressure too low",
  "operating-check.cause.above-window": "pressure too high",
  "operating-check.cause.other-side": "other side or mode",
});
