// English of the words of the verdict on a circuit: points of a rule set, causes, advice.
import type { CircuitProtectionWord } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<CircuitProtectionWord>;
const catalogue: Define<Said> = define;

/** Words of the verdict on a circuit: points of a rule set, causes, advice, in American English. */
export const circuitProtectionWords: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "circuit-protection.device.breaker": "breaker",
  "circuit-protection.device.fuse": "fuse",
  "circuit-protection.section.run": "run from the panel",
  "circuit-protection.section.whip": "whip",
  "circuit-protection.point.marked-values": "figures of the nameplate",
  "circuit-protection.point.device-ratings": "standard ratings",
  "circuit-protection.point.poles": "poles",
  "circuit-protection.point.voltage-marking": "voltage marking",
  "circuit-protection.point.overload": "protection of the conductor",
  "circuit-protection.point.small-fuse": "fusing current of small fuses",
  "circuit-protection.point.ampacity": "ampacity",
  "circuit-protection.point.terminations": "temperature of the terminals",
  "circuit-protection.point.sheathed-cable": "limit of sheathed cable",
  "circuit-protection.point.ambient": "ambient temperature",
  "circuit-protection.point.grouping": "conductors together",
  "circuit-protection.point.thermal-insulation": "cable inside thermal insulation",
  "circuit-protection.point.rooftop": "run above a roof",
  "circuit-protection.point.aluminum-terminals": "terminals for aluminum",
  "circuit-protection.point.grounding": "grounding conductor",
  "circuit-protection.point.enlarged-grounding": "grounding beside enlarged conductors",
  "circuit-protection.point.disconnect-rating": "rating of the disconnect",
  "circuit-protection.point.disconnect-place": "place of the disconnect",
  "circuit-protection.point.working-space": "working space",
  "circuit-protection.point.voltage-drop": "voltage drop",
  "circuit-protection.point.residual-current": "residual-current device",
  "circuit-protection.point.ground-fault": "ground-fault protection",
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
  "circuit-protection.advice.earth-class-d":
    "The earth must be of class D: at most 100 Ω, or 500 Ω where a leakage breaker trips within 0.5 s",
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
  "circuit-protection.cause.not-confirmed": "clauses not confirmed",
  "circuit-protection.cause.residual-current": "residual-current device",
  "circuit-protection.cause.ampacity-too-low": "marked ampacity too low",
  "circuit-protection.cause.protection-too-high": "marked protection too high",
});
