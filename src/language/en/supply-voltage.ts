// English of the supply: sentences and words.
import type {
  SupplyVoltageStatements,
  SupplyVoltageWord,
} from "../../supply-voltage/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = SupplyVoltageStatements & Words<SupplyVoltageWord>;
const catalogue: Define<Said> = define;

/** What `supply-voltage` says, in American English. */
export const supplyVoltage: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "supply-voltage.within-nameplate": {
    by: "readings",
    one: "Voltage {low}: within the unit’s range, {minimum} to {maximum}.",
    other: "Voltage {low} to {high}: within the unit’s range, {minimum} to {maximum}.",
  },
  "supply-voltage.would-have-failed": "A reading {beyond} beyond a limit would have failed.",
  "supply-voltage.board-at-risk":
    "Voltage too high: {high}, above {ceiling}. The control boards are at risk.",
  "supply-voltage.no-voltage": "No voltage: {low}. That does not prove the circuit dead.",
  "supply-voltage.phase-missing": "A phase is missing, or one was read to neutral: {lines}.",
  "supply-voltage.leg-missing":
    "{low} is about half of {nominal}: a leg is missing, or it was read to neutral.",
  "supply-voltage.uneven-to-ground":
    "The lines are uneven to ground, {lines}: the neutral or the ground may be open.",
  "supply-voltage.plate-does-not-fit":
    "A {minimum} to {maximum} unit does not match a {nominal} supply.",
  "supply-voltage.high-supply": "Voltage too high: {high}; unit maximum {maximum}.",
  "supply-voltage.low-supply": "Voltage too low: {low}; unit minimum {minimum}.",
  "supply-voltage.sag-under-load":
    "Voltage too low only under load: {low}; unit minimum {minimum}.",
  "supply-voltage.dip-not-marked":
    "The log dips to {low}, below the unit minimum of {minimum}. Whether the unit was starting was not given.",
  "supply-voltage.meter-cannot-tell": {
    by: "readings",
    one: "Too close to call: {low} is near a limit of {minimum} to {maximum}.",
    other: "Too close to call: {low} to {high} is near a limit of {minimum} to {maximum}.",
  },
  "supply-voltage.within-standard": {
    by: "readings",
    one: "Voltage {low}: within {range} of {standard}, {minimum} to {maximum}.",
    other: "Voltage {low} to {high}: within {range} of {standard}, {minimum} to {maximum}.",
  },
  "supply-voltage.too-close-to-standard": {
    by: "readings",
    one: "Too close to call: {low} is near a limit of {range} of {standard}, {minimum} to {maximum}.",
    other:
      "Too close to call: {low} to {high} is near a limit of {range} of {standard}, {minimum} to {maximum}.",
  },
  "supply-voltage.outside-standard": {
    by: "readings",
    one: "Voltage {low}: outside {range} of {standard}, {minimum} to {maximum}.",
    other: "Voltage {low} to {high}: outside {range} of {standard}, {minimum} to {maximum}.",
  },
  "supply-voltage.outside-at-times": {
    by: "readings",
    one: "Voltage {low}: at times outside {range} of {standard}, {minimum} to {maximum}.",
    other:
      "Voltage {low} to {high}: at times outside {range} of {standard}, {minimum} to {maximum}.",
  },
  "supply-voltage.standard-not-stated":
    "Which range the utility must keep was not given for {nominal}.",
  "supply-voltage.week-within":
    "{within} of {means} ten-minute means are within ±10 %; outside: {outside10}. Outside +10/−15 %: {outside15}.",
  "supply-voltage.week-outside":
    "Only {within} of {means} ten-minute means are within ±10 %; outside: {outside10}. Outside +10/−15 %: {outside15}.",
  "supply-voltage.week-so-far":
    "So far {within} of {means} ten-minute means are within ±10 %; outside: {outside10}. Outside +10/−15 %: {outside15}.",
  "supply-voltage.week-incomplete": "The log is {missing} short of a week.",
  "supply-voltage.week-meter-cannot-tell":
    "The error of the meter reaches across a limit of the week.",
  "supply-voltage.unbalance-within":
    "Voltage unbalance {unbalance}, within {limit}; derating factor {factor}, windings {rise} hotter.",
  "supply-voltage.unbalance-above": "Voltage unbalance too high: {unbalance}; limit {limit}.",
  "supply-voltage.unbalance-too-close":
    "Too close to call: voltage unbalance {unbalance}, limit {limit}.",
  "supply-voltage.unbalance-above-5-percent":
    "Voltage unbalance {unbalance}: no motor may run above 5 %.",
  "supply-voltage.line-without-current": "A line carries no current under load: a phase is lost.",
  "supply-voltage.current-unbalance-within": "Current unbalance {unbalance}, within {limit}.",
  "supply-voltage.current-unbalance-above":
    "Current unbalance too high: {unbalance}; limit {limit}.",
  "supply-voltage.full-load-enough":
    "At {current} expect {there}: above the unit minimum of {minimum}.",
  "supply-voltage.full-load-too-low":
    "At {current} expect {there}: below the unit minimum of {minimum}.",
  "supply-voltage.full-load-too-close":
    "At {current} expect {there}: too close to the unit minimum of {minimum}.",
  "supply-voltage.full-load-far-off":
    "At {current} expect {there}, below the unit minimum of {minimum}. The reading was taken at less than half of that current.",
  "supply-voltage.full-load-impossible":
    "The sag leaves no voltage at {current}; unit minimum {minimum}.",

  "supply-voltage.ten-percent":
    "The nameplate prints no range, so ±10 % of the rated voltages was used.",
  "supply-voltage.exact-meter": "No meter accuracy was given, so the readings are taken as exact.",
  "supply-voltage.moment-only": "The readings stand for their moment only.",
  "supply-voltage.no-sag": "Not read both at rest and under load, so the sag is not known.",
  "supply-voltage.standard-assumed": "Standard used for {nominal}: {standard}.",
  "supply-voltage.judged-as":
    "{nominal} is a nameplate voltage here; the service was taken as {as}.",
  "supply-voltage.no-range-at-unit":
    "No range at the unit in {standard}, so only the nameplate was used.",
  "supply-voltage.unbalance-limit": "Limit of voltage unbalance: {limit}.",
  "supply-voltage.currents-not-judged":
    "Currents without a state are not judged. Mark them as rest or load.",
  "supply-voltage.starts-found": {
    by: "count",
    one: "{count} start was found in the log by its current.",
    other: "{count} starts were found in the log by their current.",
  },
  "supply-voltage.starts-unseen":
    "The log has a reading every {interval}: the dip of a start can lie between two.",

  "supply-voltage.start-dip": "Starting pulls the supply down to {dip}.",
  "supply-voltage.large-sag": "A sag of {share} points to undersized wire or a bad connection.",
  "supply-voltage.rise-under-load":
    "{load} under load is more than 5 % above the {rest} at rest. Check which reading is which, and the neutral.",
  "supply-voltage.transformer-tap": "If the unit has a control transformer, set its tap to {near}.",
  "supply-voltage.narrow-plate": "A {near} unit has little margin on {nominal}.",
  "supply-voltage.limited-time": "Allowed for a limited time only: {range}. Have it corrected.",
  "supply-voltage.drop-to-unit": "Allow for the voltage drop to the unit: 3 % is {drop}.",
  "supply-voltage.derate": "Above 1 % of unbalance a motor must be derated.",
  "supply-voltage.uneven-supply": "Above 3 % of unbalance at no load, tell the utility.",
  "supply-voltage.line-grounded": "One line is at ground, as in a corner-grounded delta.",
  "supply-voltage.from-memory": "Quoted from memory: {standard}. Check its range.",

  "supply-voltage.do-not-energize": "Do not energize the unit.",
  "supply-voltage.find-missing-line": "Find the missing line and have it repaired.",
  "supply-voltage.check-neutral": "Have the neutral and the grounding checked.",
  "supply-voltage.match-unit-and-supply":
    "Check the nameplate and the service. They do not belong together.",
  "supply-voltage.check-wiring":
    "Look for undersized wire or a bad connection between the service and the unit.",
  "supply-voltage.read-at-service": "Read the voltage at the service entrance too.",
  "supply-voltage.call-utility": "Call the utility.",
  "supply-voltage.mark-starts": "Mark the readings taken while the unit was starting.",
  "supply-voltage.measure-better": "Measure again with a meter of ±{needed} or better.",
  "supply-voltage.log-near-limit":
    "Log the voltage through a day. No meter can tell a supply this near a limit.",
  "supply-voltage.measure-finer": "Measure again with a meter of finer resolution.",
  "supply-voltage.measure-at-full-load": "Measure again with the unit at full load.",
  "supply-voltage.state-standard":
    "Enter the standard of the supply, or the range that the utility promises.",
  "supply-voltage.log-longer": "Log {missing} longer, with a reading every minute or more often.",
  "supply-voltage.even-out-load": "Find the uneven load and spread the single-phase loads.",

  "supply-voltage.name.japan-article-38": "the Japanese ordinance (article 38)",
  "supply-voltage.name.stated-supply": "the utility",
  "supply-voltage.name.only-range": "the range",
  "supply-voltage.name.utilization-range": "the utilization range",
  "supply-voltage.name.range-a": "Range A",
  "supply-voltage.name.range-b": "Range B",
  "supply-voltage.readings.one": "one reading",
  "supply-voltage.readings.several": "several readings",
  "supply-voltage.cause.board-at-risk": "voltage dangerously high",
  "supply-voltage.cause.no-voltage": "no voltage",
  "supply-voltage.cause.leg-missing": "leg missing",
  "supply-voltage.cause.phase-missing": "phase missing",
  "supply-voltage.cause.uneven-to-ground": "lines uneven to ground",
  "supply-voltage.cause.plate-does-not-fit": "unit does not match the supply",
  "supply-voltage.cause.high-supply": "voltage too high",
  "supply-voltage.cause.low-supply": "voltage too low",
  "supply-voltage.cause.sag-under-load": "sag under load",
  "supply-voltage.cause.sag-at-full-load": "sag at full load",
  "supply-voltage.cause.unbalance": "voltage unbalance",
  "supply-voltage.cause.current-unbalance": "current unbalance",
  "supply-voltage.cause.outside-standard": "supply outside its range",

  "supply-voltage.times-in-order":
    "Enter a time with every reading, in the order they were taken, or with none.",
  "supply-voltage.state-connection": "Enter the voltage of the connection that is made.",
  "supply-voltage.do-not-run-motor": "Do not run a motor above 5 % unbalance.",
  "supply-voltage.line-to-neutral": "This looks like line to neutral. Measure between the lines.",
});
