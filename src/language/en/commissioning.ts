// English of the verdict on an installation: sentences and words. The fields of the record: record-fields.ts.
import type { CommissioningStatements } from "../../commissioning/statements.ts";
import type { CommissioningWord, FieldWord } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, join, type Words } from "../define.ts";
import { recordFields } from "./record-fields.ts";

type Said = CommissioningStatements & Words<CommissioningWord>;
const catalogue: Define<Said> = define;

const sentences: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
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
    "The {line}, {diameter}, does not have the size of its port, {port} in. Is there an adapter, or is it another diameter?",
  "commissioning.line-with-adapter":
    "The {line}, {diameter}, is on a {port} in port, with an adapter.",
  "commissioning.total-length-within": "Total length {total}: within the {most} maximum.",
  "commissioning.total-length-above": "Total length {total}: above the {most} maximum.",
  "commissioning.total-length-too-close":
    "Too close to call: the total length is {total}, the maximum {most}.",
  "commissioning.fewer-joints-than-ends":
    "Joints stated: {count}. Two lines with two ends have at least four. Is one left out?",
  "commissioning.manual-silent":
    "The manual gives no test pressure. The required one comes from: {standing}.",
  "commissioning.blend-fed-as-liquid": "The blend was charged as liquid.",
  "commissioning.blend-fed-as-vapor":
    "The blend was charged as vapor, so its composition may have shifted.",
  "commissioning.drain-falls-straight": "The drain falls straight down.",
  "commissioning.usual-air-difference":
    "The manual’s range was not given. The usual one is taken: {low} to {high}.",

  "commissioning.lift-above-length":
    "The height difference, {lift}, is larger than the line length, {length}. Is one of them in another unit?",
  "commissioning.pre-charged-above-longest":
    "The pre-charged length, {preCharged}, is above the maximum length, {longest}. Is it in another unit?",
  "commissioning.allowed-drop-large":
    "An allowed drop of {limit} is above a twentieth of the test pressure. Is it in another unit?",
  "commissioning.temperatures-apart":
    "The gas was at {test}, the evacuated system at {evacuation}: more than {usual} apart. Is one in another unit?",
  "commissioning.log-copied":
    "The readings are the same, row by row, as those of another test. Are they from this one?",
  "commissioning.altitude-odd": "An altitude of {altitude} is unusual. Is it in another unit?",
  "commissioning.barometer-odd":
    "The barometer shows {atmosphere}; at {altitude} it is about {usual}. Is it the pressure reduced to sea level?",
  "commissioning.room-height-odd":
    "Area and volume give a height of {height}; usual: {low} to {high}. Is one of them in another unit?",
  "commissioning.ceiling-odd":
    "A ceiling height of {height} is unusual; usual: {low} to {high}. Is it in another unit?",
  "commissioning.floor-area-large":
    "A floor area of {area} is large for one indoor unit; usual: up to {usual}. Is it in another unit?",
  "commissioning.volume-large":
    "A volume of {volume} is large for one indoor unit; usual: up to {usual}. Is it in another unit?",
  "commissioning.unit-high":
    "An installation height of {height} is unusual; usual: up to {usual}. Is it in another unit?",
  "commissioning.factory-charge-odd":
    "A factory charge of {charge} is unusual for {capacity}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.factory-charge-is-maximum":
    "The factory charge, {charge}, is not below the maximum charge, {most}. Is it the maximum?",
  "commissioning.total-as-added":
    "The added charge, {added}, is as much as the total should be. Is it the total?",
  "commissioning.added-large":
    "The added charge, {added}, is more than 60 % of the factory charge, {charge}. Is it in another unit?",
  "commissioning.rated-above-ampacity":
    "The rated-load current, {rated}, is above the minimum circuit ampacity, {ampacity}. Are they swapped?",
  "commissioning.protection-far-above-ampacity":
    "The maximum overcurrent protection, {protection}, is unusually high for an ampacity of {ampacity}. Is a decimal point missing?",
  "commissioning.capacity-odd":
    "A capacity of {capacity} does not fit {rated} at {voltage}. Is it in another unit?",
  "commissioning.length-odd":
    "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.volume-odd":
    "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.temperature-odd":
    "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.pressure-odd":
    "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.mass-odd":
    "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
  "commissioning.rated-as-ampacity":
    "The minimum circuit ampacity, {rated}, is the rated-load current. Are they swapped?",
  "commissioning.drain-steep":
    "A slope of {slope} is steep for a drain; usual: up to {usual}. Is it in another unit?",

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
  "commissioning.current-within":
    "Current {current}: within half and all of the rated-load current, {low} to {rated}.",
  "commissioning.current-odd":
    "Current {current}: not within half and all of the rated-load current, {low} to {rated}.",
  "commissioning.current-above-ampacity":
    "Current {current}: above the minimum circuit ampacity, {most}.",

  "commissioning.rules-not-passed": "The circuit was not checked: no rule set {rules} is at hand.",
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
    "open-valves": "Keep the valves closed until these pass: {steps}.",
    "add-charge": "Add no refrigerant until these pass: {steps}.",
    other: "Keep the power off until these pass: {steps}.",
  },
  "commissioning.released": {
    by: "hold",
    "open-valves": "The valves may be opened: every check before it passed.",
    "add-charge": "Refrigerant may be added: every check before it passed.",
    other: "The unit may be energized: every check before it passed.",
  },
  "commissioning.released-by-declaration": {
    by: "hold",
    "open-valves": "The valves may be opened. Not applicable, so not checked: {steps}.",
    "add-charge": "Refrigerant may be added. Not applicable, so not checked: {steps}.",
    other: "The unit may be energized. Not applicable, so not checked: {steps}.",
  },
  "commissioning.older-than-work":
    "The reading of {read} is older than work dated {at}, and proves nothing about it.",
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
  "commissioning.joint-defect": "The inspection found a defect.",
  "commissioning.joint-inspected": "The inspection found no defect.",
  "commissioning.brazed-with-nitrogen": "Brazed with nitrogen flowing.",
  "commissioning.brazed-without-nitrogen": "Brazed without nitrogen flow.",
  "commissioning.no-flare-of-line":
    "No flare of the {line}, {diameter}, is recorded. Sizes recorded, in inches: {tubes}. Is an entry copied, or is there an adapter?",
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
  "commissioning.weighed-within":
    "The added charge, {added}, is within {tolerance} of the required {asked}.",
  "commissioning.weighed-outside":
    "The added charge, {added}, is more than {tolerance} away from the required {asked}.",
  "commissioning.weighed-too-close":
    "Too close to call: the added charge is {added}; required: {asked} within {tolerance}.",
  "commissioning.above-maximum-charge": "The total charge, {total}, is above the maximum, {most}.",
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

  "commissioning.heed-nitrogen":
    "Use dry nitrogen only: never oxygen, compressed air or a flammable gas, which explode with oil. Feed it through a regulator and a relief device. Raise the pressure in stages, keep people clear, and stay within the lowest marked pressure. Vent it outdoors: it displaces air and suffocates.",
  "commissioning.heed-refrigerant":
    "Liquid refrigerant causes frostbite, and any refrigerant displaces air and suffocates: wear gloves and goggles, and ventilate. Never loosen, cut or braze anything under pressure. Charge only a tight, tested system, and never pressure-test with refrigerant and air. Never run a compressor in a vacuum.",
  "commissioning.heed-voltage":
    "Line voltage can kill. De-energize, lock out and verify; inverter capacitors stay charged. Licensed electricians only. Measure with a category III meter (IV at the service), proved before and after, and keep clear of live terminals and fans of a running unit.",
  "commissioning.heed-gauges":
    "Check the mode before connecting a gauge: in heating the vapor port shows discharge pressure, which destroys a low-side gauge. Each hose loses refrigerant, so connect only with a reason.",
  "commissioning.heed-drain":
    "Protect the drain from frost, sunlight, sweating and overflow above finished space. End it at indirect waste, off public ways, and let the level switch of a pump stop the unit.",
  "commissioning.tested-again": {
    by: "tests",
    one: "Done again: {step}. One earlier test is kept in the record and does not count.",
    other: "Done again: {step}. {tests} earlier tests are kept in the record and do not count.",
  },
  "commissioning.zones-mixed":
    "Some times have an offset from UTC and some have none, so their order is not certain.",
  "commissioning.air-proves-no-charge":
    "Air and current show that the unit runs, not that its charge is right.",
  "commissioning.not-signed": "Nobody has signed this record.",
  "commissioning.signed-before-change":
    "{name} signed {at}, before these were done or changed: {fields}.",
  "commissioning.amended":
    "Changed after it was recorded; the history keeps the earlier values: {fields}.",
  "commissioning.unit-unknown":
    "The model or serial number of a unit is missing: this record could be about any unit.",
  "commissioning.older-than-a-year":
    "More than a year older than the {field} of {at}: {fields}. Is it this installation, and is the year right?",
  "commissioning.opened-long-after-evacuation":
    "The valves were opened {opened}, more than a week after the evacuation of {evacuated}. What leaked in between does not show.",
  "commissioning.instrument-without-error":
    "No instrument is exact, but the accuracy is recorded as 0: {fields}.",
  "commissioning.instrument-coarse":
    "The accuracy is above 100 times the resolution: {fields}. Is one of them in another unit?",
  "commissioning.calibration-expired":
    "The calibration of the {instrument} was due {due}, before its reading of {at}.",
  "commissioning.calibrated-afterwards":
    "The {instrument} was calibrated {on}, after its reading of {at}. The certificate says nothing about it.",

  "commissioning.record-fields": "Record: {fields}.",
  "commissioning.correct-field": "Correct the value for {field}.",
  "commissioning.withdraw-waiver": "Withdraw the waiver, or correct the record.",
  "commissioning.correct-construction":
    "Correct the construction, or remove what does not belong to it.",
  "commissioning.cover-run": "Do it for run {run} too and record it: {step}.",
  "commissioning.state-times": {
    by: "hold",
    "open-valves": "Record date and time of the tests and of the opening of the valves.",
    "add-charge": "Record date and time of the tests and of the charge.",
    other: "Record date and time of the circuit inspection, the supply readings and the start.",
  },
  "commissioning.shorten-runs": "Shorten the runs to {most} or less in total.",
  "commissioning.measure-runs-better": "Measure the runs more accurately.",
  "commissioning.recover-and-charge-anew": "Recover the charge and weigh in a new one, as liquid.",
  "commissioning.read-air-again": "Read supply and return air again and correct the record.",
  "commissioning.run-at-full-speed":
    "Run the unit at full speed, or in the manual’s test mode, for 15 minutes and read again.",
  "commissioning.see-filter-and-fan": "Check filter, fan speed and doors, then read again.",
  "commissioning.state-air-difference": "Record the manual’s range of the air difference.",
  "commissioning.stop-and-find-current": "Stop the unit and find out why the current is too high.",
  "commissioning.read-current-again":
    "Read the current again at full speed and check the nameplate.",
  "commissioning.pass-rules": "Judge the record again with the rule set {rules}.",
  "commissioning.put-right": {
    by: "hold",
    "open-valves":
      "Find out how the valves came to be opened. If the date is right, recover the refrigerant and test and evacuate again.",
    "add-charge":
      "Find out how refrigerant came to be added. If the date is right, recover it and test and evacuate again.",
    other:
      "Find out how the unit came to be energized. If the date is right, de-energize it and have circuit and supply checked.",
  },
  "commissioning.finish-first": {
    by: "hold",
    "open-valves": "Close the valves and go no further until these pass: {steps}.",
    "add-charge": "Add no more refrigerant until these pass: {steps}.",
    other: "De-energize the unit until these pass: {steps}.",
  },
  "commissioning.repeat-step": "Do it again and record it: {step}.",
  "commissioning.see-which-line": "See which line is which and correct the record.",
  "commissioning.record-each-joint": {
    by: "count",
    one: "Record the joint once.",
    other: "Record each of the {count} joints once, by its own name.",
  },
  "commissioning.remake-joint": "Remake the joint and record it.",
  "commissioning.see-joints-of-line": "See the joints of the {line} and record each of them.",
  "commissioning.hold-longer": "Hold the pressure for {required} or longer.",
  "commissioning.lower-pressure":
    "Lower the pressure to {limit} or less. Ask the manufacturer about every part that was above its marking.",
  "commissioning.test-higher":
    "See the manual’s test pressure again and test at {limit} or more, within the lowest marked pressure.",
  "commissioning.correct-charge": "Correct the added charge to {asked}, within {tolerance}.",
  "commissioning.weigh-better": "Weigh the charge with a more accurate scale.",
  "commissioning.recover-down-to": "Recover refrigerant until the total is at most {most}.",
  "commissioning.state-tolerance": "Record the manufacturer’s tolerance of the charge.",
  "commissioning.clear-drain": "Clear the drain, then pour water again.",
  "commissioning.pass-what-is-on-file": "Pass what is on file under that name.",

  "commissioning.step.line-run": "line run",
  "commissioning.step.joints": "joints",
  "commissioning.step.pressure-test": "pressure test",
  "commissioning.step.evacuation": "evacuation",
  "commissioning.step.room-limit": "room limit",
  "commissioning.step.charge": "charge",
  "commissioning.step.valves": "valves",
  "commissioning.step.circuit": "circuit",
  "commissioning.step.supply": "supply",
  "commissioning.step.drain": "drain",
  "commissioning.step.operation": "operation",
  "commissioning.step-state.done": "done",
  "commissioning.step-state.partial": "not all recorded",
  "commissioning.step-state.missing": "nothing recorded",
  "commissioning.step-state.not-applicable": "not applicable",
  "commissioning.hold.open-valves": "open the valves",
  "commissioning.hold.add-charge": "add refrigerant",
  "commissioning.hold.power-on": "energize the unit",
  "commissioning.hold-state.held": "held",
  "commissioning.hold-state.released": "released",
  "commissioning.hold-state.breached": "breached",
  "commissioning.line.liquid": "liquid line",
  "commissioning.line.vapor": "vapor line",
  "commissioning.waiver.factory-line-set": "lines of fixed length came with the unit",
  "commissioning.waiver.existing-lines": "existing lines, not opened",
  "commissioning.waiver.no-enclosed-room": "no enclosed room",
  "commissioning.waiver.heats-only": "the unit never cools",
  "commissioning.construction.split": "lines joined on site",
  "commissioning.construction.quick-connect": "pre-charged lines with couplings",
  "commissioning.construction.monobloc": "refrigerant circuit sealed in the outdoor unit",
  "commissioning.standing.adopted-code": "the adopted code",
  "commissioning.standing.manufacturer": "the manufacturer",
  "commissioning.standing.common-practice": "common practice",
  "commissioning.mode.cooling": "cooling",
  "commissioning.mode.heating": "heating",
  "commissioning.check.line-run": "length and height difference",
  "commissioning.check.total-length": "total length",
  "commissioning.check.flare-wall": "wall of the flared tube",
  "commissioning.check.coupling-joint": "coupling",
  "commissioning.check.fed-as-liquid": "state of the added refrigerant",
  "commissioning.check.air-difference": "air across the indoor coil",
  "commissioning.check.running-current": "running current",
  "commissioning.check.coverage": "runs covered",
  "commissioning.check.plausibility": "plausibility",
  "commissioning.check.waiver": "waiver",
  "commissioning.check.line-sizes": "sizes of the lines",
  "commissioning.check.flare-torque": "flare torque",
  "commissioning.check.flare-turn": "turn of the flare nut",
  "commissioning.check.flare-diameter": "flare diameter",
  "commissioning.check.brazed-joint": "brazed joint",
  "commissioning.check.pressed-joint": "pressed joint",
  "commissioning.check.joint-inspected": "inspection of the joint",
  "commissioning.check.joint-count": "number of joints",
  "commissioning.check.joint-sizes": "sizes of the joints",
  "commissioning.check.pressure-test": "pressure drop",
  "commissioning.check.test-hold": "hold time",
  "commissioning.check.marked-pressure": "marked pressure",
  "commissioning.check.test-pressure": "test pressure",
  "commissioning.check.vacuum-decay": "vacuum decay",
  "commissioning.check.order": "order of the work",
  "commissioning.check.room-charge": "charge and floor area",
  "commissioning.check.room-concentration": "charge and room volume",
  "commissioning.check.additional-charge": "added charge by the manual",
  "commissioning.check.charge-rate": "added charge per length",
  "commissioning.check.weighed-charge": "weighed charge",
  "commissioning.check.valves-opened": "opening of the valves",
  "commissioning.check.circuit": "circuit",
  "commissioning.check.rules": "electrical rules",
  "commissioning.check.supply-voltage": "supply voltage",
  "commissioning.check.drain-slope": "drain slope",
  "commissioning.check.condensate-pump": "condensate pump",
  "commissioning.check.unit-pitch": "pitch of the indoor unit",
  "commissioning.check.water-drained": "water test",
  "commissioning.check.service-reading": "operating pressure",
  "commissioning.check.charge-by-gauge": "superheat or subcooling",
});

type Whole = typeof sentences | CatalogueOf<Words<FieldWord>>;

/** What `commissioning` says, with the fields of a record, in American English. */
export const commissioning: CatalogueOf<Said & Words<FieldWord>> = /* @__PURE__ */ join<Whole>([
  sentences,
  recordFields,
]);
