// English of reasons and assumptions of the verdict on an installation.
import type { CommissioningReasons } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningReasons> = define;

/** Why the verdict is what it is, and what it assumes, in American English. */
export const commissioningReasons: CatalogueOf<CommissioningReasons> = /* @__PURE__ */ catalogue(
  "en-US",
  {
    "commissioning.not-recorded": "Not recorded: {fields}.",
    "commissioning.unusable-value": "The value for {field} cannot be used: {value}.",
    "commissioning.unusable-part": "What is recorded for {field} cannot be used.",
    "commissioning.value-too-low":
      "The value for {field} is too low: {value}; at least {limit} allowed.",
    "commissioning.value-not-above":
      "The value for {field} is too low: {value}; more than {limit} required.",
    "commissioning.value-too-high":
      "The value for {field} is too high: {value}; at most {limit} allowed.",
    "commissioning.value-not-below":
      "The value for {field} is too high: {value}; less than {limit} required.",
    "commissioning.too-few-entries":
      "Too few entries for {field}: {count}; at least {limit} required.",
    "commissioning.too-many-entries":
      "Too many entries for {field}: {count}; at most {limit} allowed.",
    "commissioning.waived": "Not checked: waived by {by}, {at}: {why}.",
    "commissioning.waived-for-run": "Run {run} not checked: waived by {by}, {at}: {why}.",
    "commissioning.waived-by-nobody": "The waiver does not count: nobody is named.",
    "commissioning.waived-twice": "The step is waived more than once.",
    "commissioning.waiver-contradicted": "The step is waived, but this is recorded: {field}.",
    "commissioning.waiver-without-reason":
      "The waiver does not count without a reason. This step takes: {fits}.",
    "commissioning.waiver-does-not-fit":
      "The reason does not fit the step: {reason}. This step takes: {fits}.",
    "commissioning.waiver-needs-a1":
      "The room may be left unchecked only for a refrigerant of safety class A1.",
    "commissioning.waiver-needs-heating-only":
      "The drain may be waived only for a unit that never cools.",
    "commissioning.falls-away": "Not needed: {construction}.",
    "commissioning.construction-contradicted":
      "This is recorded, although it is not needed ({construction}): {field}.",
    "commissioning.run-not-covered": "Run {run} is not covered.",
    "commissioning.unknown-run": "No run is called {run}.",
    "commissioning.order-not-shown": {
      by: "hold",
      "open-valves": "The times do not show that the checks passed before the valves were opened.",
      "add-charge": "The times do not show that the checks passed before refrigerant was added.",
      other: "The times do not show that the checks passed before the unit was energized.",
    },
    "commissioning.line-other-than-port":
      "The {line}, {diameter}, does not match its port, {port} in. Is there an adapter, or is the diameter wrong?",
    "commissioning.line-with-adapter":
      "The {line}, {diameter}, is on a {port} in port, with an adapter.",
    "commissioning.indoor-lift-within":
      "Height between the indoor units {lift}: within the {most} maximum.",
    "commissioning.indoor-lift-above":
      "Height between the indoor units {lift}: above the {most} maximum.",
    "commissioning.connected-within":
      "The indoor units together have {total}: within the limit of {limit}.",
    "commissioning.connected-enough":
      "The indoor units together have {total}; at least {limit} required.",
    "commissioning.connected-above":
      "The indoor units together have {total}: above the limit of {limit}.",
    "commissioning.connected-below":
      "The indoor units together have {total}: below the limit of {limit}.",
    "commissioning.indoor-lift-too-close":
      "Too close to call: the height between the indoor units is {lift}, the maximum {most}.",
    "commissioning.total-length-within": "Total length {total}: within the {most} maximum.",
    "commissioning.total-length-above": "Total length {total}: above the {most} maximum.",
    "commissioning.total-length-too-close":
      "Too close to call: the total length is {total}, the maximum {most}.",
    "commissioning.fewer-joints-than-ends":
      "Joints entered: {count}. Two lines have at least four. Is one left out?",
    "commissioning.manual-silent":
      "The manual gives no test pressure. The required one comes from: {standing}.",
    "commissioning.blend-fed-as-liquid": "The blend was charged as liquid.",
    "commissioning.blend-fed-as-vapor":
      "The blend was charged as vapor, so its composition may have shifted.",
    "commissioning.drain-fall":
      "The drain falls {fall} from the pan to its end; at least {needed} required.",
    "commissioning.drain-falls-straight": "The drain falls straight down.",
    "commissioning.usual-air-difference":
      "The manual’s range was not given. The usual one is taken: {low} to {high}.",
    "commissioning.air-difference-within": {
      by: "mode",
      cooling: "The air is cooled by {difference}: within {low} to {high}.",
      other: "The air is heated by {difference}: within {low} to {high}.",
    },
    "commissioning.air-difference-outside": {
      by: "mode",
      cooling: "The air is cooled by {difference}: outside {low} to {high}.",
      other: "The air is heated by {difference}: outside {low} to {high}.",
    },
    "commissioning.air-difference-too-close": {
      by: "mode",
      cooling: "Too close to call: the air is cooled by {difference}; required: {low} to {high}.",
      other: "Too close to call: the air is heated by {difference}; required: {low} to {high}.",
    },
    "commissioning.air-the-other-way": {
      by: "mode",
      cooling:
        "While cooling, the supply air is {difference} warmer than the return air. Are the two swapped?",
      other:
        "While heating, the supply air is {difference} colder than the return air. Are the two swapped?",
    },
    "commissioning.not-at-full-speed":
      "The compressor did not run at full speed, so air and current prove nothing.",
    "commissioning.current-within": "Current {current}: within {most}, the {field}.",
    "commissioning.current-within-deviation":
      "Current {current}: above {most}, the {field}, by no more than the 15% that its standard allows.",
    "commissioning.current-above-plate": "Current {current}: above {most}, the {field}.",
    "commissioning.current-too-close":
      "Too close to call: current {current}; nameplate {most}, the {field}.",
    "commissioning.current-odd":
      "Current {current} at full speed: far below {rated}, the {field}. Is a digit missing?",
    "commissioning.current-unusual":
      "Current {current}: usual at full load is {low} to {rated}, half to all of the {field}.",
    "commissioning.rules-not-passed":
      "The circuit was not checked: rule set {rules} was not supplied.",
    "commissioning.done-before-proof": {
      by: "hold",
      "open-valves": "The valves were opened {at}, before a check dated {proof}.",
      "add-charge": "Refrigerant was added {at}, before a check dated {proof}.",
      other: "The unit was energized {at}, before a check dated {proof}.",
    },
    "commissioning.done-without-proof": {
      by: "hold",
      "open-valves": "The valves were opened before these passed: {steps}.",
      "add-charge": "Refrigerant was added before these passed: {steps}.",
      other: "The unit was energized before these passed: {steps}.",
    },
    "commissioning.held": {
      by: "hold",
      "open-valves": "Keep the valves closed until this passes: {steps}.",
      "add-charge": "Add no refrigerant until this passes: {steps}.",
      other: "Keep the power off until this passes: {steps}.",
    },
    "commissioning.released": {
      by: "hold",
      "open-valves": "The valves may be opened: every check before it passed.",
      "add-charge": "Refrigerant may be added: every check before it passed.",
      other: "The unit may be energized: every check before it passed.",
    },
    "commissioning.left-to-verify":
      "Energized. Left to be checked by the text of the standard: {steps}.",
    "commissioning.released-by-declaration": {
      by: "hold",
      "open-valves": "The valves may be opened. Not applicable, so not checked: {steps}.",
      "add-charge": "Refrigerant may be added. Not applicable, so not checked: {steps}.",
      other: "The unit may be energized. Not applicable, so not checked: {steps}.",
    },
    "commissioning.older-than-work":
      "The reading of {read} is older than work dated {at}, and proves nothing about it.",
    "commissioning.rework-not-ordered":
      "Work dated {at} may have been done after the reading of {read}, which then proves nothing about it.",
    "commissioning.begun-before-work":
      "The readings that ended {read} began before work dated {at}, and prove nothing about it.",
    "commissioning.lines-swapped":
      "The liquid line, {liquid}, is recorded as wider than the vapor line, {vapor}.",
    "commissioning.joints-complete": {
      by: "count",
      one: "The only joint is recorded.",
      other: "All {count} joints are recorded.",
    },
    "commissioning.joints-incomplete": "Joints recorded: {recorded} of {count}.",
    "commissioning.joint-recorded-twice": "Recorded more than once: joint {joints}.",
    "commissioning.joint-defect": "The inspection found a defect.",
    "commissioning.joint-inspected": "The inspection found no defect.",
    "commissioning.brazed-with-nitrogen": "Brazed with nitrogen flowing.",
    "commissioning.brazed-without-nitrogen": "Brazed without nitrogen flow.",
    "commissioning.no-flare-of-line":
      "No flare on the {line}, {diameter}, is recorded. Sizes recorded, in inches: {tubes}. Is an entry copied, or is there an adapter?",
    "commissioning.held-long-enough": "Held for {held}; {required} required.",
    "commissioning.held-too-short": "Held for only {held}; {required} required.",
    "commissioning.within-marked-pressure":
      "The test reached {pressure}: within the lowest marked pressure, {limit}.",
    "commissioning.above-marked-pressure":
      "The test reached {pressure}: above the lowest marked pressure, {limit}.",
    "commissioning.test-pressure-reached": "Tested at {pressure}; at least {limit} required.",
    "commissioning.test-pressure-too-low": "Tested at only {pressure}; at least {limit} required.",
    "commissioning.test-below-refrigerant":
      "Tested at {pressure}: below the {own} that {refrigerant} has at rest at {temperature}.",
    "commissioning.stands-outdoors":
      "No room was recorded, so the whole unit is taken as standing outdoors. A room that it stands in has to be recorded: its charge is held against it.",
    "commissioning.nothing-added": "Nothing was added: the manual asks for nothing at this length.",
    "commissioning.weighed-within":
      "The added charge, {added}, is within {tolerance} of the required {asked}.",
    "commissioning.weighed-outside":
      "The added charge, {added}, is more than {tolerance} away from the required {asked}.",
    "commissioning.weighed-too-close":
      "Too close to call: the added charge is {added}; required: {asked} within {tolerance}.",
    "commissioning.above-maximum-charge":
      "The total charge, {total}, is above the maximum, {most}.",
    "commissioning.near-maximum-charge":
      "Too close to call: the total charge is {total}; the maximum is {most}.",
    "commissioning.tolerance-too-wide":
      "The tolerance, {tolerance}, is too wide for a charge of {whole}: above a tenth of it.",
    "commissioning.valves-opened": "The valves were opened {at}.",
    "commissioning.water-drained": "Water poured into the pan drained correctly.",
    "commissioning.water-did-not-drain": "Water poured into the pan did not drain correctly.",
    "commissioning.exact-scale": "No accuracy was given for the scale, so it is taken as exact.",
    "commissioning.joints-undated":
      "Joints without a date are taken as made before the tests: {joints}.",
    "commissioning.calibration-taken-for-granted":
      "Without dates of reading and calibration, these are taken as calibrated: {fields}.",
  },
);
