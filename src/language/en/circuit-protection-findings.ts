// English of the assumptions and findings of the verdict on a circuit.
import type { CircuitProtectionFindings } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionFindings> = define;

/** Assumptions and findings of the verdict on a circuit, in American English. */
export const circuitProtectionFindings: CatalogueOf<CircuitProtectionFindings> =
  /* @__PURE__ */ catalogue("en-US", {
    "circuit-protection.marking-assumed": "The nameplate is taken to allow breakers.",
    "circuit-protection.service-assumed": "The service is taken as {system}.",
    "circuit-protection.ambient-assumed": "Ambient temperature along the run: {ambient} assumed.",
    "circuit-protection.terminations-assumed": "The terminals are taken as not marked for 75 °C.",
    "circuit-protection.cable-assumed": "The cable is taken as not type NM.",
    "circuit-protection.roof-assumed": "The run is taken as not close above a roof.",
    "circuit-protection.conductors-assumed": "At most 3 current-carrying conductors are assumed.",
    "circuit-protection.circuits-assumed": "The cable is taken as run alone.",
    "circuit-protection.rated-load-assumed":
      "The rated-load current is taken as the minimum circuit ampacity, {ampacity}.",
    "circuit-protection.voltage-marking-assumed":
      "The breaker is taken as marked {marking} or higher.",
    "circuit-protection.compressor-inferred":
      "The circuit is taken to feed a compressor: only a motor gives a maximum of {maximum} on {ampacity}.",
    "circuit-protection.ground-fault-not-adopted": "{clause} is not adopted here, as entered.",
    "circuit-protection.not-stated": "Not given, so not checked: {parts}.",
    "circuit-protection.not-judged": "Not part of this check: {parts}.",
    "circuit-protection.heater-below-50-kw": "The heaters are taken as below 50 kW in all.",
    "circuit-protection.not-a-usual-size": "{maximum} is not a standard size.",
    "circuit-protection.maximum-confirmed":
      "A maximum of {maximum} is unusually high for {ampacity}. It was read twice and taken as printed.",
    "circuit-protection.rated-load-low":
      "A minimum circuit ampacity of {ampacity} belongs to more than {load}: the rated load is the sum of compressor and fans. {ampacity} was used instead.",
    "circuit-protection.device-not-standard": "{rating} is not a standard size of {device}.",
    "circuit-protection.no-standard-device-between":
      "No standard size lies between {ampacity} and {maximum}. The next size down may trip in normal use.",
    "circuit-protection.hacr-mark":
      "The breaker has no HACR mark. Breakers are tested for it today, but some inspectors require the mark.",
    "circuit-protection.curve": "Curve {curve} may trip when a compressor starts.",
    "circuit-protection.start-may-trip":
      "The starting current, {locked}, is above {from}, where the breaker may trip at once.",
    "circuit-protection.working-space-recommended":
      "Working space recommended: {depth} deep, {width} wide, {height} high.",
    "circuit-protection.voltage-drop-recommended":
      "Voltage drop {drop}, above the recommended {limit}.",
    "circuit-protection.verified":
      "Checked by {by} against {clause}, {rules}, on {date}: not checked here.",
    "circuit-protection.from-memory": "Passed by rules quoted from memory. Check them: {clauses}.",
    "circuit-protection.rules-older":
      "The rule set was last checked on {reviewed}, before the work of {date}. Look for newer rules.",
    "circuit-protection.ground-fault-required":
      "{clause} requires ground-fault protection here. States changed it: check the adopted text.",
    "circuit-protection.ground-fault-class-c":
      "{clause} also allows a listed class C device, with a warning on the disconnect.",
    "circuit-protection.ground-fault-exempt":
      "{clause} requires ground-fault protection here from {from} on. The circuit is dated {date}; where the permit or the adopted text counts another day, that one decides.",
    "circuit-protection.advice": "{advice} ({clause}).",
    "circuit-protection.calculated-not-marked":
      "Calculated figures do not take the place of the nameplate.",
    "circuit-protection.shared-circuit": {
      by: "count",
      one: "{count} other load shares this circuit.",
      other: "{count} other loads share this circuit.",
    },
  });
