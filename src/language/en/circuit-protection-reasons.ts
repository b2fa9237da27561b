// English of the reasons of the verdict on a circuit.
import type { CircuitProtectionReasons } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionReasons> = define;

/** Reasons of the verdict on a circuit, in American English. */
export const circuitProtectionReasons: CatalogueOf<CircuitProtectionReasons> =
  /* @__PURE__ */ catalogue("en-US", {
    "circuit-protection.device-rating-met":
      "The {device} is {rating}: within the nameplate maximum of {limit}.",
    "circuit-protection.device-too-large":
      "The {device} is too large: {rating}, nameplate maximum {limit}.",
    "circuit-protection.device-below-load":
      "The {device} is too small: {rating}, and the unit draws {load}.",
    "circuit-protection.device-below-loads":
      "The {device} is too small: {rating}, and the loads on this circuit draw {load}.",
    "circuit-protection.device-below-ampacity":
      "The {device} is {rating}, below the minimum circuit ampacity of {ampacity}. It may trip in normal use.",
    "circuit-protection.device-kind-met": "The nameplate allows a {device}.",
    "circuit-protection.fuse-required":
      "The nameplate allows fuses only. A breaker alone is not enough.",
    "circuit-protection.poles-met": "Poles installed: {poles}; required: {needed}.",
    "circuit-protection.poles-too-few": "Too few poles. Installed: {poles}; required: {needed}.",
    "circuit-protection.poles-not-stated": "The number of poles was not given. Required: {needed}.",
    "circuit-protection.voltage-marking-met": "The voltage marking {marking} is high enough.",
    "circuit-protection.voltage-marking-too-low":
      "The voltage marking {marking} is too low: {system} requires {needed}.",
    "circuit-protection.voltage-marking-not-stated":
      "The voltage marking was not given, and {system} does not allow every marking.",
    "circuit-protection.device-not-stated": "The installed breaker or fuse was not given.",
    "circuit-protection.device-allowed": {
      by: "poles",
      one: "Allowed: {ratings:or} {kinds:or}, {poles} pole.",
      other: "Allowed: {ratings:or} {kinds:or}, {poles} poles.",
    },
    "circuit-protection.allowed": {
      by: "poles",
      one: "Allowed: {ratings:or} {kinds:or}, {poles} pole; conductors of at least {size} behind {rating}.",
      other:
        "Allowed: {ratings:or} {kinds:or}, {poles} poles; conductors of at least {size} behind {rating}.",
    },
    "circuit-protection.no-standard-device":
      "No standard size lies between {ampacity} and {maximum}.",
    "circuit-protection.maximum-too-high":
      "A maximum of {maximum} is too high for an ampacity of {ampacity}.",
    "circuit-protection.maximum-not-stated": "The largest fuse allowed was not given.",
    "circuit-protection.conductor-met":
      "{size} ({section}) carries {usable}; {ampacity} required, behind {rating}.",
    "circuit-protection.conductor-too-small":
      "{size} ({section}) is too small behind {rating}: it carries {usable}; {ampacity} required.",
    "circuit-protection.conductor-unprotected":
      "{size} ({section}) carries {usable}: {rating} does not protect it.",
    "circuit-protection.conductor-not-stated": "The installed conductor was not given.",
    "circuit-protection.conductor-not-judged":
      "{size} is not judged: the table is not confirmed ({clause}).",
    "circuit-protection.equipment-not-stated":
      "{size} behind {rating} is allowed for a compressor circuit only. What the circuit feeds was not given.",
    "circuit-protection.aluminum-terminals-met": "The terminals are marked for aluminum.",
    "circuit-protection.aluminum-terminals-missing": "The terminals are not marked for aluminum.",
    "circuit-protection.aluminum-terminals-not-stated":
      "Aluminum conductors: whether the terminals are marked for aluminum was not given.",
    "circuit-protection.grounding-met": "Grounding conductor {fitted}; {size} required.",
    "circuit-protection.grounding-too-small":
      "The grounding conductor is too small: {fitted}; {size} required.",
    "circuit-protection.grounding-by-energy-met":
      "Grounding conductor {fitted}: the fault requires {area} mm².",
    "circuit-protection.grounding-by-energy-short":
      "Grounding conductor {fitted}: too small for the fault, which requires {area} mm².",
    "circuit-protection.grounding-needs-energy":
      "Grounding conductor {fitted} is below the {size} of the table. Only the fault energy can show that it is enough.",
    "circuit-protection.grounding-two-readings":
      "{clause} can be read two ways for enlarged conductors. The stricter requires {size}.",
    "circuit-protection.grounding-by-exception":
      "{fitted} is enough for the device, but {clause} requires {size} beside circuit conductors larger than needed. Its exception lets a qualified person size it.",
    "circuit-protection.grounding-wire-missing":
      "The raceway on the roof is the only grounding path ({clause}).",
    "circuit-protection.raceway-fittings-not-stated":
      "The raceway on the roof is the only grounding path. With compression fittings that is not enough ({clause}).",
    "circuit-protection.raceway-fittings-met":
      "The raceway on the roof has no compression fittings: it may be the grounding path ({clause}).",
    "circuit-protection.disconnect-rating-met": "Disconnect {rating}; {needed} required.",
    "circuit-protection.disconnect-too-small":
      "The disconnect is too small: {rating}; {needed} required.",
    "circuit-protection.largest-load-not-stated":
      "Disconnect {rating}: enough or not depends on the largest load. {needed} is always enough.",
    "circuit-protection.disconnect-fuse-met": "Fuses in the disconnect: {fuse}, within {limit}.",
    "circuit-protection.disconnect-fuse-too-large":
      "The fuses in the disconnect are too large: {fuse}; at most {limit} allowed.",
    "circuit-protection.disconnect-in-sight": "The disconnect is within sight of the unit.",
    "circuit-protection.disconnect-out-of-sight": "The disconnect is not within sight of the unit.",
    "circuit-protection.disconnect-near": "The disconnect is {distance} away, within {limit}.",
    "circuit-protection.disconnect-too-far":
      "The disconnect is too far away: {distance}; at most {limit} allowed.",
    "circuit-protection.disconnect-accessible": "The disconnect is readily accessible.",
    "circuit-protection.disconnect-not-accessible": "The disconnect is not readily accessible.",
    "circuit-protection.disconnect-clear":
      "The disconnect is clear of nameplate and access panels.",
    "circuit-protection.disconnect-in-the-way":
      "The disconnect covers the nameplate or hangs on an access panel.",
    "circuit-protection.disconnect-lockable": "The disconnect can be locked open.",
    "circuit-protection.disconnect-not-lockable": "The disconnect cannot be locked open.",
    "circuit-protection.disconnect-off-unit": "The disconnect is not mounted on the unit.",
    "circuit-protection.disconnect-on-unit": "The disconnect is mounted on the unit.",
    "circuit-protection.working-space-met":
      "The working space is at least {depth} deep, {width} wide and {height} high.",
    "circuit-protection.working-space-short":
      "The working space is too small. Required: {depth} deep, {width} wide, {height} high.",
    "circuit-protection.receptacle-met":
      "The service receptacle is {distance} away, within {limit}.",
    "circuit-protection.receptacle-too-far":
      "The service receptacle is too far away: {distance}; at most {limit} allowed.",
    "circuit-protection.receptacle-on-load-side":
      "The service receptacle is fed from the load side of the unit’s disconnect.",
    "circuit-protection.voltage-drop-met": "Voltage drop {drop}, within {limit}.",
    "circuit-protection.voltage-drop-above-limit":
      "The voltage drop is too high: {drop}; at most {limit} allowed.",
    "circuit-protection.residual-current-met": "Residual-current device {rated} installed.",
    "circuit-protection.residual-current-missing":
      "A residual-current device is required ({clause}).",
    "circuit-protection.residual-current-too-high":
      "The residual-current device is not sensitive enough: {rated}; at most {limit} allowed.",
    "circuit-protection.residual-current-not-stated":
      "Whether a residual-current device is required and enough is open ({clause}).",
    "circuit-protection.ground-fault-met": "Ground-fault protection {rated} installed ({clause}).",
    "circuit-protection.ground-fault-missing":
      "{clause} requires ground-fault protection here. None is installed.",
    "circuit-protection.ground-fault-open":
      "{clause} requires ground-fault protection here, unless the adopted text differs. Neither is shown.",
    "circuit-protection.ground-fault-not-stated":
      "{clause} requires ground-fault protection here. Whether it is installed was not given.",
    "circuit-protection.ground-fault-by-date":
      "{clause} requires ground-fault protection here for work from {from} on. The date of the work was not given.",
    "circuit-protection.found-not-to-comply":
      "{by} found on {date} that the circuit does not comply with {clause}, {rules}.",
    "circuit-protection.clause-not-asked-for":
      "Verified, but not asked for: {clause}. It is judged here, or this circuit does not need it.",
    "circuit-protection.not-confirmed":
      "Not confirmed for {rules}: {point} ({clause}). It does not count.",
    "circuit-protection.ampacity-fits":
      "Minimum circuit ampacity: {marked} marked, {ampacity} from the parts.",
    "circuit-protection.ampacity-too-low":
      "The marked ampacity is too low: {marked}; the parts require {ampacity}.",
    "circuit-protection.ampacity-unexplained":
      "The marked ampacity of {marked} is above the {ampacity} of the parts.",
    "circuit-protection.protection-fits":
      "Overcurrent protection: {maximum} marked, at most {ceiling} from the parts.",
    "circuit-protection.protection-too-high":
      "The marked protection is too high: {maximum}; the parts allow {ceiling}.",
    "circuit-protection.next-size-down": "{calculated} is not a standard size: next size down.",
    "circuit-protection.heater-needs-more": "Below 125 % of the heater: next size up, {rating}.",
    "circuit-protection.smallest-rating": "Never below {rating}.",
    "circuit-protection.ampacity-needs-more": "Below the minimum circuit ampacity: {rating}.",
  });
