// English of findings and dangers of the verdict on an installation.
import type { CommissioningFindings } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningFindings> = define;

/** What a pass would hide, figures that cannot be, and the dangers, in American English. */
export const commissioningFindings: CatalogueOf<CommissioningFindings> = /* @__PURE__ */ catalogue(
  "en-US",
  {
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
    "commissioning.barometer-in-hectopascal":
      "The barometer shows {atmosphere}; at {altitude} it is about {usual}. Is it in hPa?",
    "commissioning.room-height-odd":
      "Area and volume give a height of {height}; usual: {low} to {high}. Is one of them in another unit?",
    "commissioning.ceiling-odd":
      "A ceiling height of {height} is unusual; usual: {low} to {high}. Is it in another unit?",
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
    "commissioning.area-odd":
      "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
    "commissioning.power-odd":
      "The {field} is {value}; usual: {low} to {high}. Is it in another unit?",
    "commissioning.voltage-odd":
      "The {field} is {value}; usual: {low} to {high}. Is it of this supply?",
    "commissioning.entered-twice": "The {field} is entered twice: {value}. Is one of them wrong?",
    "commissioning.grounding-thick":
      "The grounding conductor, {grounding}, is far thicker than the circuit conductors, {conductor}. Is one of them wrong?",
    "commissioning.rated-as-ampacity":
      "The minimum circuit ampacity, {rated}, is the rated-load current. Are they swapped?",
    "commissioning.drain-steep":
      "A slope of {slope} is steep for a drain; usual: up to {usual}. Is it in another unit?",
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
    "commissioning.weather-unusual":
      "It is {outdoor} outdoors, unusual for {mode}. Is it in another unit?",
    "commissioning.cable-short": "The circuit is only {length} long. Is it in another unit?",
    "commissioning.zones-mixed":
      "Some times have an offset from UTC and some have none, so their order is not certain.",
    "commissioning.air-proves-no-charge":
      "Air and current show that the unit runs, not that its charge is right.",
    "commissioning.not-signed": "Nobody has signed this record.",
    "commissioning.signed-before-change":
      "{name} signed {at}, before these were done or changed: {fields}.",
    "commissioning.amended-before-work":
      "Changed before the first work that has a date, {first}: {fields}. Are the dates right?",
    "commissioning.amended":
      "Changed after it was recorded; the history keeps the earlier values: {fields}.",
    "commissioning.unit-unknown":
      "The model or serial number of a unit is missing: this record could be about any unit.",
    "commissioning.older-than-a-year":
      "More than a year older than the {field} of {at}: {fields}. Is it this installation, and is the year right?",
    "commissioning.opened-long-after-evacuation":
      "The vacuum was last read {evacuated} and broken {opened}, more than two days later. What leaked in between does not show.",
    "commissioning.instrument-unknown":
      "Recorded without accuracy, serial number or calibration, so nothing shows how well it reads: {fields}.",
    "commissioning.circuit-long-before":
      "The circuit is dated {circuit}, more than three months before the first other work, {field}, of {first}. Rules with dates were read for that day. Is it right?",
    "commissioning.instrument-without-error":
      "No instrument is exact, but the accuracy is recorded as 0: {fields}.",
    "commissioning.instrument-coarse":
      "The accuracy is above 100 times the resolution: {fields}. Is one of them in another unit?",
    "commissioning.calibration-expired":
      "The calibration of the {instrument} was due {due}, before its reading of {at}.",
    "commissioning.calibrated-afterwards":
      "The {instrument} was calibrated {on}, after its reading of {at}. The certificate says nothing about it.",
  },
);
