// English of the line set: sentences and words.
import type { LineSetStatements, LineSetWord } from "../../line-set/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = LineSetStatements & Words<LineSetWord>;
const catalogue: Define<Said> = define;

/** What `line-set` says, in American English. */
export const lineSet: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "line-set.rate-unit": "Check the unit: g/m, oz/ft or lb/ft.",
  "line-set.viscosity-unit": "In µPa·s: 100 µPa·s = 0.0001 Pa·s.",

  "line-set.within-maximum": "{figure} {value}: within the {limit} maximum.",
  "line-set.above-maximum": "{figure} {value}: above the {limit} maximum.",
  "line-set.near-maximum":
    "{figure} {value} ± {uncertainty}: too close to the {limit} maximum to call.",
  "line-set.above-minimum": "{figure} {value}: at least {limit}, as required.",
  "line-set.below-minimum": "{figure} {value}: below the {limit} minimum.",
  "line-set.near-minimum":
    "{figure} {value} ± {uncertainty}: too close to the {limit} minimum to call.",
  "line-set.kept-as-measured":
    "{figure} {value} ± {uncertainty}: as measured, within the {limit} allowed.",
  "line-set.bends-within-maximum": {
    by: "count",
    one: "{count} bend: within the {most} allowed.",
    other: "{count} bends: within the {most} allowed.",
  },
  "line-set.bends-above-maximum": {
    by: "count",
    one: "{count} bend: above the {most} allowed.",
    other: "{count} bends: above the {most} allowed.",
  },
  "line-set.bends-not-counted": "The bends were not counted; at most {most} allowed.",
  "line-set.bend-length-not-counted":
    "The bends were not counted; each adds {bend} to the equivalent length.",

  "line-set.add":
    "By the rule, add {charge}: the line is {length}, {difference} more than the pre-charged {preCharged}, at {rate}.",
  "line-set.take-out":
    "By the rule, take out {charge}: the line is {length}, {difference} less than the pre-charged {preCharged}, at {rate}.",
  "line-set.nothing-to-add":
    "By the rule, add nothing: the factory charge covers {length} of line ({preCharged} pre-charged).",
  "line-set.short-line-rule-not-known":
    "The line, {length}, is {difference} shorter than the pre-charged {preCharged}. The short-line rule is not known.",
  "line-set.allowances": "Allowances: {mass}.",
  "line-set.nothing-to-add-in-all": "By the rule, add nothing: the total is {total}.",
  "line-set.total-not-known":
    "The factory charge was not given, so the total was not checked against {limit}.",

  "line-set.rate-plausible":
    "The rate, {rate}, is {ratio} times a full line, {full}: within the plausible {low} to {high}.",
  "line-set.rate-implausible":
    "The rate, {rate}, is {ratio} times a full line, {full}: outside the plausible {low} to {high}.",
  "line-set.rate-fits-other-device":
    "The rate, {rate}, is {ratio} times a full line, {full}. With the expansion there, {low} to {high} is plausible.",
  "line-set.two-phase-liquid-line":
    "A rate below a full line is right where the liquid expands outdoors: the line then carries liquid and vapor.",
  "line-set.rate-too-high": "The rate, {rate}, is above a full line.",
  "line-set.rate-per-foot": "The figure would fit as a rate per foot. Was it read as per meter?",
  "line-set.rate-per-meter": "The figure would fit as a rate per meter. Was it read as per foot?",

  "line-set.subcooling-enough": "Subcooling {available}: {needed} required for a loss of {loss}.",
  "line-set.subcooling-too-low":
    "Subcooling {available}: below the {needed} required for a loss of {loss}. The liquid flashes.",
  "line-set.subcooling-near":
    "Subcooling {available} ± {uncertainty}: too close to call. {needed} required for a loss of {loss}.",
  "line-set.subcooling-not-known":
    "The subcooling is not known; {needed} required for a loss of {loss}.",
  "line-set.liquid-velocity-within":
    "Liquid velocity {velocity}: within the {least} to {most} of piping guides.",
  "line-set.liquid-velocity-high":
    "Liquid velocity {velocity}: above the {most} maximum of piping guides.",
  "line-set.liquid-velocity-low":
    "Liquid velocity {velocity}: below the {least} minimum of piping guides. A wide line holds more charge.",
  "line-set.loss-not-known": "The pressure loss is not known; at most {limit} allowed.",
  "line-set.oil-returns":
    "Vapor velocity at minimum capacity {velocity}: at least {least}, as required for oil return.",
  "line-set.oil-stays":
    "Vapor velocity at minimum capacity {velocity}: too low to lift oil, which needs {oil}.",
  "line-set.oil-return-open-riser":
    "Vapor velocity at minimum capacity {velocity}: below the {least} required, although oil rises from {oil}.",
  "line-set.oil-return-open-level":
    "Vapor velocity at minimum capacity {velocity}: below the {least} required for oil return.",
  "line-set.vapor-noise":
    "Vapor velocity at full capacity {velocity}: above the {most} maximum. It is noisy.",

  "line-set.stock-length": "{stock} is the shortest stock length that covers {needed}.",
  "line-set.surplus-to-cut": "Surplus to cut off: {surplus}.",
  "line-set.coil-to-minimum":
    "To coil flat by the outdoor unit, to reach the minimum: {coiled}. The charge counts {installed}.",
  "line-set.coil-surplus":
    "Surplus to coil flat by the outdoor unit: {coiled}. The charge counts {installed}.",
  "line-set.no-stock-length": "Length needed {needed}: above the longest stock length, {longest}.",
  "line-set.items-fit": "The items fit and fill {fill} of the opening.",
  "line-set.opening-too-small": "The opening is too small. A sleeve of {sleeve} takes the items.",
  "line-set.no-layout-found":
    "No layout was found, and none is ruled out. A sleeve of {sleeve} takes the items.",
  "line-set.to-recover": "Refrigerant to recover: {mass}. It leaves {keep} in the system.",
  "line-set.to-add": "Refrigerant to add: {mass}. It brings the system to {keep}.",
  "line-set.charge-not-known": "The charge in the system is not known.",
  "line-set.cylinder-too-small": "The cylinder has room for {room}; {mass} has to come out.",

  "line-set.limits-of-the-manual":
    "The limits are those of this unit’s manual. Others were not checked.",
  "line-set.maximum-length-not-checked":
    "The manual’s maximum length was not given and not checked.",
  "line-set.minimum-length-not-checked":
    "The manual’s minimum length was not given and not checked.",
  "line-set.room-limit-not-checked": "The room’s charge limit was not given and not checked.",
  "line-set.saturated-liquid": "The line is full of saturated liquid at its temperature.",
  "line-set.no-heat-gain": "The liquid line takes up no heat.",
  "line-set.expansion-indoors": "The liquid expands at the indoor unit.",
  "line-set.liquid-only": "The line carries liquid only.",
  "line-set.loss-not-checked": "The limit of the pressure loss was not given and not checked.",
  "line-set.same-density": "Vapor density is the same at both capacities.",
  "line-set.guide-minimum-velocity": "Minimum vapor velocity of piping guides: {least}.",
  "line-set.guide-maximum-velocity": "Maximum vapor velocity of piping guides: {most}.",
  "line-set.no-slack": "No slack for measuring and making ends.",
  "line-set.no-service-loop": "No service loop.",
  "line-set.round-and-stiff": "The items are straight, round and not squeezed.",
  "line-set.no-clearance": "No room is kept for pulling the items through.",
  "line-set.charge-as-labeled": "The charge in the system is as labeled.",
  "line-set.cylinder-not-checked": "The cylinder’s room was not given and not checked.",

  "line-set.charge-after-tests":
    "Weigh the charge in, and only after the pressure test and the evacuation have passed.",
  "line-set.no-kinks":
    "Bend with a bender, without kinks. Coil flat so no oil collects. Keep the ends sealed.",
  "line-set.drain-falls-outward": "The drain must fall outward through the opening. Seal it.",
  "line-set.drilling":
    "Before drilling, look for wires and pipes in the wall. De-energize what is near.",
  "line-set.overfilled-cylinder":
    "Weigh the recovery cylinder and never overfill it: it can burst when it warms up.",
  "line-set.mixed-refrigerants": "Never mix refrigerants in a cylinder.",
  "line-set.never-vent": "Never vent refrigerant. Licensed technicians only.",

  "line-set.measure-better": "Measure again, more accurately: {figure}.",
  "line-set.shorten-line":
    "Shorten the line to {limit} or less, or install a unit that allows it. No charge makes up for it.",
  "line-set.lengthen-line": "Install at least {limit} of line, or a unit that allows less.",
  "line-set.reduce-height":
    "Reduce the height difference to {limit} or less, or install a unit that allows it.",
  "line-set.fewer-bends": {
    by: "most",
    one: "Run the line with {most} bend or none.",
    other: "Run the line with {most} bends or fewer.",
  },
  "line-set.count-bends": "Count the bends and enter the number.",
  "line-set.enter-short-line-rule":
    "Ask the manual whether a short line means taking some out, and enter it.",
  "line-set.reduce-charge":
    "Do not add this charge. Shorten the line, or find a room and unit that allow more than {limit}.",
  "line-set.enter-factory-charge": "Enter the factory charge from the nameplate.",
  "line-set.read-rate-again": "Read the nameplate again: tube, rate, unit.",
  "line-set.enter-expansion-device":
    "Find out whether liquid expands indoors or outdoors, and enter it.",
  "line-set.measure-subcooling": "Measure the subcooling at the outdoor unit and enter it.",
  "line-set.reduce-loss":
    "Reduce the pressure loss: a wider or shorter liquid line, as the manual allows.",
  "line-set.no-extra-charge": "Do not add refrigerant to make up for it.",
  "line-set.wider-liquid-line": "Install a wider liquid line, as the manual allows.",
  "line-set.ask-line-size": "Ask the manual whether this tube size is allowed.",
  "line-set.enter-loss": "Work out the loss of friction, rise and fittings, and enter it.",
  "line-set.smaller-riser": "Install a smaller riser or oil traps, as the manual allows.",
  "line-set.ask-oil-return": "Ask the manual how the unit returns oil at minimum capacity.",
  "line-set.wider-vapor-line": "Install a wider vapor line, as the manual allows.",
  "line-set.other-stock": "Find a set of {needed} to {limit}, or one that may be cut.",
  "line-set.take-from-roll": "Take tube from a roll, or braze two sets together.",
  "line-set.larger-opening": "Make a sleeve of {sleeve} or more, or a larger duct.",
  "line-set.recover-all": "Recover all of the refrigerant and weigh it.",
  "line-set.charge-by-weight": "Then charge {keep} by weight.",
  "line-set.other-cylinder": "Use a cylinder with room for {mass} or more.",

  "line-set.figure.length": "Length",
  "line-set.figure.equivalent-length": "Equivalent length",
  "line-set.figure.height-difference": "Height difference",
  "line-set.figure.height-difference-outdoor-above": "Height difference (outdoor unit above)",
  "line-set.figure.total-charge": "Total charge",
  "line-set.figure.added-charge": "Added charge",
  "line-set.figure.pressure-loss": "Pressure loss",
  "line-set.figure.subcooling": "Subcooling",
  "line-set.cause.per-foot-taken-as-per-meter": "rate per foot read as per meter",
  "line-set.cause.per-meter-taken-as-per-foot": "rate per meter read as per foot",
});
