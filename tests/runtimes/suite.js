// One set of claims for every runtime, in plain JavaScript: what the library computes, refuses and stores.
// Each figure is pinned to a source outside the project; the sources stand beside them.
import { explain } from "hvac-install-math/assessment";
import {
  circuitFromNameplate,
  maximumOvercurrentProtection,
  minimumCircuitAmpacity,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { assessInstallation } from "hvac-install-math/commissioning";
import { formatQuantity } from "hvac-install-math/display";
import { parseQuantity } from "hvac-install-math/field-text";
import { english } from "hvac-install-math/language/en";
import { vacuumDecayPlot } from "hvac-install-math/plots";
import { assessPressureTest, expectedTestPressure } from "hvac-install-math/pressure-test";
import * as q from "hvac-install-math/quantity";
import * as r from "hvac-install-math/refrigerants";
import { markdownReport } from "hvac-install-math/report";
import {
  acceptancePolicies,
  assessVacuumDecay,
  tubeConductance,
  waterSaturationPressure,
} from "hvac-install-math/vacuum-decay";
import { jsonSchemaOf, recordCodec } from "hvac-install-math/wire";

const near = (ours, theirs, within) => Math.abs(ours - theirs) <= within;
const refusal = (run) => {
  try {
    run();
  } catch (error) {
    return error;
  }
  return undefined;
};
const refuses = (run, name, argument) => {
  const error = refusal(run);
  return q.isInvalidInputError(error) && error.name === name && error.argument === argument;
};

/** A nitrogen hold over a cold night; invented readings. */
const hold = (end) => ({
  start: { pressure: q.psig(500), temperature: q.degF(64), elapsed: q.hour(0) },
  end: { pressure: q.psig(end), temperature: q.degF(46), elapsed: q.hour(10) },
  atmosphere: q.atmosphereAtAltitude(q.ft(5000)),
  instruments: {
    pressure: { accuracy: q.psi(2.5), resolution: q.psi(0.1) },
    temperature: { accuracy: q.deltaF(0.5), followsGasWithin: q.deltaF(0.7) },
  },
  criterion: { maximumDrop: q.psi(4) },
});

/** 300 to 800 micron in 10 minutes, in a straight line; invented readings. */
const decay = {
  readings: Array.from({ length: 121 }, (_, i) => ({
    elapsed: q.second(5 * i),
    pressure: q.micron(300 + (500 * i) / 120),
  })),
  ambient: q.degC(20),
  volume: q.liter(3),
  policy: acceptancePolicies.commonPractice500,
};

/** An installation as an app stores it; invented. */
const record = {
  version: 2,
  name: "Invented site",
  runs: [{ tubing: { length: q.ft(36), lift: q.ft(9), outdoorUnit: "below" } }],
  equipment: { manual: { run: { maximumLength: q.ft(66), maximumLift: q.ft(33) } } },
};

const loads = [
  { kind: "compressor", current: q.ampere(17.6) },
  { kind: "motor", current: q.ampere(1.5) },
];

/** Claims that need nothing beyond ECMAScript. */
export const plainClaims = {
  "a psi in pascal, NIST SP 811 (2008), B.8": () => near(q.psi(1).in(q.pascal), 6894.757, 0.0005),
  "a cfm, NIST SP 811 (2008), B.8": () => near(q.cfm(1).in(q.m3PerSecond), 0.0004719474, 5e-11),
  "212 °F is 100 °C, NIST SP 811 (2008), B.8": () => near(q.degF(212).in(q.degC), 100, 1e-9),
  "a point less a point is a difference": () =>
    q.degF(95).minus(q.degF(75)).kind === "temperatureDifference",
  "the atmosphere at 5000 ft, U.S. Standard Atmosphere, 1976, eq. 33a": () =>
    near(q.atmosphereAtAltitude(q.ft(5000)).in(q.pascalAbsolute), 84307, 1),
  "a number prints the same everywhere": () =>
    q.psig(118).toString(q.kPag, 1) === "813.6 kPag" && `${q.psig(0.1 + 0.2)}` === "0.3 psig",
  "JSON and back": () =>
    q.equals(
      q.fromJSON(JSON.parse(JSON.stringify(q.micron(500)))),
      q.micron(500),
      q.micronDifference(1e-9),
    ),
  "no gauge plus absolute pressure": () =>
    refuses(() => q.psig(118).plus(q.psia(14.7)), "InvalidInputError", "plus"),
  "no altitude above the model": () =>
    refuses(() => q.atmosphereAtAltitude(q.ft(90000)), "OutOfRangeError", "altitude"),
  "no temperature below absolute zero": () => q.isInvalidInputError(refusal(() => q.degC(-300))),

  "R-32 at 20 °C, Tillner-Roth & Yokozeki (1997), evaluated with CoolProp": () =>
    near(r.bubblePressure(r.R32, q.degC(20)).in(q.pascalAbsolute), 1474565.80241, 1),
  "R-32 liquid at 0 °C, Tillner-Roth & Yokozeki (1997), evaluated with CoolProp": () =>
    near(r.saturatedLiquidDensity(r.R32, q.degC(0)).in(q.kgPerM3), 1055.25787845, 0.001),
  "R-410A at 110 °F, Lemmon (2003), evaluated outside": () =>
    near(
      q.toGauge(r.bubblePressure(r.R410A, q.degF(110)), q.standardAtmosphere).in(q.psig),
      366.5,
      0.051,
    ),
  "R-454B dew at 0 °C, mixture model of Bell (2023), evaluated with CoolProp": () =>
    near(r.dewPressure(r.R454B, q.degC(0)).in(q.pascalAbsolute), 732422.34193, 1),
  "subcooling at 355 psig and 95 °F, manual of a split heat pump": () =>
    near(
      r
        .subcooling(r.R410A, {
          pressure: q.psig(355),
          atmosphere: q.standardAtmosphere,
          lineTemperature: q.degF(95),
        })
        .in(q.deltaF),
      13,
      0.5,
    ),

  "nitrogen 500 psig from 95 to 65 °F, Span et al. (2000)": () =>
    near(
      expectedTestPressure({
        pressure: q.psig(500),
        temperature: q.degF(95),
        laterTemperature: q.degF(65),
        atmosphere: q.standardAtmosphere,
      }).in(q.psig),
      470.03,
      0.03,
    ),
  "a hold that only cooled passes, one that lost 20 psi fails": () =>
    assessPressureTest(hold(480.6)).outcome === "pass" &&
    assessPressureTest(hold(460)).outcome === "fail",
  "a verdict explains itself": () =>
    assessPressureTest(hold(460)).reasons.every((reason) =>
      /^[A-Z].*\.$/.test(explain(reason, english)),
    ),
  "input stays as it was": () => {
    const input = Object.freeze(hold(480.6));
    const before = JSON.stringify(input);
    assessPressureTest(input);
    return JSON.stringify(input) === before;
  },

  "water at 20 °C, Wagner & Pruss (2002), eq. 2.5": () =>
    near(waterSaturationPressure(q.degC(20)).in(q.pascalAbsolute), 2339.2, 0.1),
  "ice at −20 °C, IAPWS R14-08(2011), eq. 6": () =>
    near(waterSaturationPressure(q.degC(-20)).in(q.pascalAbsolute), 103.24, 0.01),
  "molecular conductance of a tube, vacuum know-how book, 7.3.2": () =>
    near(
      tubeConductance({
        bore: q.m(0.07),
        length: q.m(2.47),
        meanPressure: q.pascalAbsolute(1e-3),
        temperature: q.kelvin(293.15),
        gas: "nitrogen",
      }).molecular.in(q.m3PerSecond),
      0.017123,
      3.5e-5,
    ),
  "3 L from 300 to 800 micron in 10 min leak 3.333e-4 Pa·m³/s, Q = V Δp/Δt": () =>
    near(assessVacuumDecay(decay).leakThroughput.value.in(q.paM3PerS), 3.333e-4, 3.4e-7),

  "nameplate ampacity 23.5 A, manual of single-phase condensers": () =>
    near(minimumCircuitAmpacity(loads).in(q.ampere), 23.5, 0.05),
  "nameplate maximum 40 A, manual of single-phase condensers": () =>
    maximumOvercurrentProtection(loads).in(q.ampere) === 40,
  "10 AWG for 30 A, trade journal code quiz (NEC 2011: 440.32)": () =>
    circuitFromNameplate({
      rules: nec2023,
      minimumCircuitAmpacity: q.ampere(30),
      maximumOvercurrentProtection: q.ampere(40),
      supply: { voltage: q.volt(240), phases: 1 },
      wiring: { material: "copper", insulation: "60 °C", terminations: "60 °C" },
    }).conductor.size === "10 AWG",

  "an installation judged before and after its way through JSON": () => {
    const copy = recordCodec.parse(recordCodec.stringify(record));
    const [before, after] = [record, copy].map((one) =>
      assessInstallation(one, { rules: [nec2023] }),
    );
    return JSON.stringify(before) === JSON.stringify(after) && before.outcome === "inconclusive";
  },
  "no unknown field in a stored record": () =>
    q.isInvalidInputError(refusal(() => recordCodec.parse('{"version":1,"odd":1}'))),
  "the schema of a record is data": () => typeof jsonSchemaOf(recordCodec) === "object",
  "a plot is SVG text": () =>
    vacuumDecayPlot(decay, assessVacuumDecay(decay), { language: english, system: "SI" })
      .trimStart()
      .startsWith("<svg"),
  "a figure in the reader's units": () =>
    formatQuantity(q.psig(118), { system: "SI" }) === "814 kPag",
  "a report names the site": () =>
    markdownReport(record, { language: english, rules: [nec2023], system: "SI" }).startsWith(
      "# Installation report: Invented site",
    ),
};

/** Claims that use Intl, which a small engine may lack. */
export const intlClaims = {
  "typed text to a quantity, yard and pound agreement of 1959": () =>
    near(parseQuantity("12 ft 6 in + 9 ft", { kind: "length" }).in(q.m), 6.5532, 1e-9),
  "a decimal comma": () =>
    parseQuantity("0,5 bar", { kind: "pressureDifference", locale: "de" }).in(q.kPa) === 50,
};

/** Tries the claims; the answer names those that do not hold. */
export function failuresOf(claims) {
  return Object.entries(claims).flatMap(([claim, holds]) => {
    try {
      return holds() === true ? [] : [claim];
    } catch (error) {
      return [`${claim}: ${error}`];
    }
  });
}

/** What a runtime says when it is done, as one line of text. */
export function report(hasIntl = typeof Intl === "object") {
  const tried = hasIntl ? { ...plainClaims, ...intlClaims } : plainClaims;
  return JSON.stringify({ tried: Object.keys(tried).length, failures: failuresOf(tried) });
}
