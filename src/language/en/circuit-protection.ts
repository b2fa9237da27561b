// English of the circuit: sentences and words.
import type {
  CircuitProtectionStatements,
  CircuitProtectionWord,
} from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = CircuitProtectionStatements & Words<CircuitProtectionWord>;
const catalogue: Define<Said> = define;

/** What `circuit-protection` says, in American English. */
export const circuitProtection: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "circuit-protection.device-rating-met":
    "The {device} is {rating}: within the nameplate maximum of {limit}.",
  "circuit-protection.device-too-large":
    "The {device} is too large: {rating}, nameplate maximum {limit}.",
  "circuit-protection.device-below-load":
    "The {device} is too small: {rating}, and the unit draws {load}.",
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
  "circuit-protection.no-standard-device":
    "No standard size lies between {ampacity} and {maximum}.",
  "circuit-protection.maximum-too-high":
    "A maximum of {maximum} is more than belongs to {ampacity}.",
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
  "circuit-protection.grounding-wire-missing":
    "The raceway on the roof is the only grounding path ({clause}).",
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
  "circuit-protection.disconnect-clear": "The disconnect is clear of nameplate and access panels.",
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
  "circuit-protection.receptacle-met": "The service receptacle is {distance} away, within {limit}.",
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
  "circuit-protection.not-confirmed":
    "Not confirmed for {rules}: {point} ({clause}). It decides nothing.",
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

  "circuit-protection.marking-assumed": "The nameplate is taken to allow breakers.",
  "circuit-protection.service-assumed": "The service is taken as {system}.",
  "circuit-protection.ambient-assumed": "Ambient temperature along the run: {ambient} assumed.",
  "circuit-protection.terminations-assumed": "The terminals are taken as not marked for 75 °C.",
  "circuit-protection.cable-assumed": "The cable is taken as not type NM.",
  "circuit-protection.roof-assumed": "The run is taken as not close above a roof.",
  "circuit-protection.conductors-assumed": "At most 3 loaded conductors together are assumed.",
  "circuit-protection.circuits-assumed": "No other circuit beside the cable is assumed.",
  "circuit-protection.rated-load-assumed":
    "The rated-load current is taken as the minimum circuit ampacity, {ampacity}.",
  "circuit-protection.voltage-marking-assumed":
    "The breaker is taken as marked {marking} or higher.",
  "circuit-protection.compressor-inferred":
    "The circuit is taken to feed a compressor: only a motor gives a maximum of {maximum} on {ampacity}.",
  "circuit-protection.not-stated": "Not given, so not checked: {parts}.",
  "circuit-protection.not-judged": "Not part of this check: {parts}.",
  "circuit-protection.heater-below-50-kw": "The heaters are taken as below 50 kW in all.",

  "circuit-protection.not-a-usual-size": "{maximum} is not a standard size.",
  "circuit-protection.maximum-confirmed":
    "A maximum of {maximum} is more than belongs to {ampacity}. It was read twice and taken as printed.",
  "circuit-protection.rated-load-low":
    "A rated load of {load} is less than belongs to {ampacity}. {ampacity} was used instead.",
  "circuit-protection.device-not-standard": "{rating} is not a standard size of {device}.",
  "circuit-protection.no-standard-device-between":
    "No standard size lies between {ampacity} and {maximum}. The next size down may trip in normal use.",
  "circuit-protection.hacr-mark":
    "The breaker has no HACR mark. Breakers are tested for it today, but some inspectors require the mark.",
  "circuit-protection.curve": "Curve {curve} may trip when a compressor starts.",
  "circuit-protection.start-may-trip":
    "The start of {locked} is above {from}, where the breaker may trip at once.",
  "circuit-protection.working-space-recommended":
    "Working space recommended: {depth} deep, {width} wide, {height} high.",
  "circuit-protection.voltage-drop-recommended":
    "Voltage drop {drop}, above the recommended {limit}.",
  "circuit-protection.from-memory": "Passed by rules quoted from memory. Check them: {clauses}.",
  "circuit-protection.rules-older":
    "The rule set was last checked on {reviewed}, before the work of {date}. Look for newer rules.",
  "circuit-protection.ground-fault-required":
    "{clause} requires ground-fault protection here. States changed it: check the adopted text.",
  "circuit-protection.ground-fault-class-c":
    "{clause} also allows a listed class C device, with a warning on the disconnect.",
  "circuit-protection.ground-fault-exempt":
    "{clause} requires ground-fault protection here from {from} on.",
  "circuit-protection.ground-fault-by-date":
    "{clause} requires ground-fault protection here for work from {from} on. The date of the work was not given.",
  "circuit-protection.advice": "{advice} ({clause}).",
  "circuit-protection.calculated-not-marked":
    "Calculated figures do not take the place of the nameplate.",
  "circuit-protection.shared-circuit": {
    by: "count",
    one: "{count} other load shares this circuit.",
    other: "{count} other loads share this circuit.",
  },

  "circuit-protection.fit-at-most": "Install a breaker or fuses of {limit} or less.",
  "circuit-protection.fit-between": "Install a breaker or fuses from {from} to {to}.",
  "circuit-protection.fit-fuses": "Install fuses, for example in the disconnect.",
  "circuit-protection.fit-poles": "Install a breaker with {needed} poles.",
  "circuit-protection.fit-marking": "Install a breaker marked {needed} or higher.",
  "circuit-protection.ask-manufacturer": "Ask the manufacturer.",
  "circuit-protection.read-nameplate-again": "Read the nameplate again.",
  "circuit-protection.state-maximum": "Enter the largest fuse from the nameplate or manual.",
  "circuit-protection.state-device": "Enter the installed breaker or fuse.",
  "circuit-protection.state-poles": "Enter the poles of the breaker.",
  "circuit-protection.state-marking": "Enter the voltage marking of the breaker.",
  "circuit-protection.state-conductor": "Enter the installed conductor.",
  "circuit-protection.state-equipment":
    "Enter what the circuit feeds: a compressor, or something else such as a heater.",
  "circuit-protection.state-largest-load": "Enter the rated-load current of the largest load.",
  "circuit-protection.size-conductor-elsewhere":
    "Have the conductor sized by {clause} and the local rules.",
  "circuit-protection.fit-conductor": "Install {size} or larger.",
  "circuit-protection.fit-larger-conductor": "Install a larger conductor.",
  "circuit-protection.fit-aluminum-terminals": "Use terminals or connectors marked for aluminum.",
  "circuit-protection.look-at-terminals": "Look at the marking of all terminals.",
  "circuit-protection.fit-grounding": "Install a grounding conductor of {size} or larger.",
  "circuit-protection.fit-grounding-area": "Install a grounding conductor of {area} mm² or more.",
  "circuit-protection.state-fault-energy":
    "Enter the fault current and clearing time, or the device’s let-through energy.",
  "circuit-protection.fit-grounding-wire":
    "Install an equipment grounding conductor of the wire type.",
  "circuit-protection.fit-disconnect": "Install a disconnect of {needed} or more.",
  "circuit-protection.fit-disconnect-fuses": "Install fuses of {limit} or less in the disconnect.",
  "circuit-protection.move-disconnect":
    "Move the disconnect: within sight, readily accessible, clear of the unit’s panels.",
  "circuit-protection.move-disconnect-within": "Move the disconnect to within {limit}.",
  "circuit-protection.fit-lockable-disconnect": "Install a disconnect that can be locked open.",
  "circuit-protection.clear-space":
    "Clear the working space: {depth} deep, {width} wide, {height} high.",
  "circuit-protection.add-receptacle":
    "Install a service receptacle within {limit}, ahead of the unit’s disconnect.",
  "circuit-protection.fit-conductor-for-drop": "Install {size} or larger for the voltage drop.",
  "circuit-protection.shorten-run": "Shorten the run to {longest} or less.",
  "circuit-protection.fit-residual-current":
    "Install a residual-current device of {limit} or less, of a type that the manual allows.",
  "circuit-protection.state-earthing":
    "Enter the earthing system of the supply, TN or TT, and the residual-current device.",
  "circuit-protection.ask-authority": "Have it checked by the text of {rules}, {clause}.",

  "circuit-protection.device.breaker": "breaker",
  "circuit-protection.device.fuse": "fuse",
  "circuit-protection.section.run": "run from the panel",
  "circuit-protection.section.whip": "whip",
  "circuit-protection.point.marked-values": "figures of the nameplate",
  "circuit-protection.point.device-ratings": "standard ratings",
  "circuit-protection.point.poles": "poles",
  "circuit-protection.point.voltage-marking": "voltage marking",
  "circuit-protection.point.overload": "protection of the conductor",
  "circuit-protection.point.ampacity": "ampacity",
  "circuit-protection.point.terminations": "temperature of the terminals",
  "circuit-protection.point.sheathed-cable": "limit of sheathed cable",
  "circuit-protection.point.ambient": "ambient temperature",
  "circuit-protection.point.grouping": "conductors together",
  "circuit-protection.point.rooftop": "run above a roof",
  "circuit-protection.point.aluminum-terminals": "terminals for aluminum",
  "circuit-protection.point.grounding": "grounding conductor",
  "circuit-protection.point.enlarged-grounding": "grounding beside enlarged conductors",
  "circuit-protection.point.disconnect-rating": "rating of the disconnect",
  "circuit-protection.point.disconnect-place": "place of the disconnect",
  "circuit-protection.point.working-space": "working space",
  "circuit-protection.point.voltage-drop": "voltage drop",
  "circuit-protection.point.residual-current": "residual-current device",
  "circuit-protection.point.service-receptacle": "service receptacle",
  "circuit-protection.point.rooftop-raceway": "raceway on a roof",
  "circuit-protection.point.compressor": "protection of a compressor",
  "circuit-protection.advice.enclosure-tool-or-lock":
    "A disconnect that exposes live parts when opened must need a tool to open or be lockable",
  "circuit-protection.advice.enclosure-locked":
    "A disconnect that exposes live parts when opened must be locked or need a tool to open",
  "circuit-protection.advice.surge-protection":
    "Dwelling services require a surge-protective device",
  "circuit-protection.advice.buried-cable-residual-current":
    "A cable less than 50 mm deep in a wall requires a 30 mA residual-current device",
  "circuit-protection.advice.own-circuit":
    "Manuals and codes commonly require a circuit of its own for the unit",
  "circuit-protection.advice.notifiable-work":
    "A new circuit in a dwelling has to be notified in England and Wales",
  "circuit-protection.advice.gas-clearance":
    "Arcing equipment and gas meters, vents or relief openings must be kept apart",
  "circuit-protection.unjudged.equipment-grounding": "grounding conductor",
  "circuit-protection.unjudged.disconnect": "disconnect",
  "circuit-protection.unjudged.voltage-drop": "voltage drop",
  "circuit-protection.unjudged.service-receptacle": "service receptacle",
  "circuit-protection.unjudged.in-sight": "disconnect within sight",
  "circuit-protection.unjudged.near-enough": "distance of the disconnect",
  "circuit-protection.unjudged.accessible": "access to the disconnect",
  "circuit-protection.unjudged.not-in-the-way": "disconnect clear of panels",
  "circuit-protection.unjudged.lockable": "disconnect lockable",
  "circuit-protection.unjudged.not-on-unit": "disconnect not on the unit",
  "circuit-protection.unjudged.working-space": "working space",
  "circuit-protection.unjudged.short-circuit-rating": "short-circuit current rating",
  "circuit-protection.unjudged.horsepower-rating": "horsepower rating of the disconnect",
  "circuit-protection.unjudged.fault-loop": "fault loop and disconnection time",
  "circuit-protection.unjudged.breaking-capacity": "breaking capacity",
  "circuit-protection.cause.device-rating": "wrong breaker or fuse size",
  "circuit-protection.cause.device-kind": "breaker instead of fuses",
  "circuit-protection.cause.device-poles": "too few poles",
  "circuit-protection.cause.device-voltage": "voltage marking too low",
  "circuit-protection.cause.conductor": "conductor too small",
  "circuit-protection.cause.terminals": "terminals not for aluminum",
  "circuit-protection.cause.equipment-grounding": "grounding conductor",
  "circuit-protection.cause.disconnect-rating": "disconnect too small",
  "circuit-protection.cause.disconnect-fuse": "wrong fuses in the disconnect",
  "circuit-protection.cause.disconnect-place": "place of the disconnect",
  "circuit-protection.cause.working-space": "working space too small",
  "circuit-protection.cause.service-receptacle": "service receptacle",
  "circuit-protection.cause.voltage-drop": "voltage drop too high",
  "circuit-protection.cause.residual-current": "residual-current device",
  "circuit-protection.cause.ampacity-too-low": "marked ampacity too low",
  "circuit-protection.cause.protection-too-high": "marked protection too high",

  "circuit-protection.check-service": "Check voltage, phases and system against the service.",
  "circuit-protection.maximum-below-ampacity":
    "MOP below MCA: the nameplate is misread, or the figures belong to two units.",
});
