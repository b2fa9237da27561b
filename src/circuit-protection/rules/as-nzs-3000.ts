// What do the rules of Australia and New Zealand say, as far as they are confirmed?
// Follows AS/NZS 3000:2018, 2.5.3.1, 2.6.3.2, 3.6.2, 4.19, table 5.1, in presentations of its changes and newsletters.
// Does not cover the ampacity of conductors (AS/NZS 3008.1.1): one transcription alone, so a size is never judged.
import { ohmPerKm } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { CircuitRules } from "./circuit-rules.ts";
import {
  breakerRatings,
  breakerTripping,
  fuseRatings,
  iec60228,
  metricVoltageRatings,
  overloadMargins,
} from "./metric-tables.ts";
import { citationsOf, clause } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

const shared = (): CircuitRules["points"] => ({
  "marked-values": clause("nameplate and manufacturer's instructions"),
  "device-ratings": clause("IEC 60898-1, 5.3.2"),
  overload: clause("2.5.3.1"),
  ampacity: clause("AS/NZS 3008.1.1", "missing"),
  grounding: clause("5.3.3, table 5.1", "secondary"),
  "disconnect-rating": clause("4.19", "missing"),
  "disconnect-place": clause("4.19, 1.4.6"),
  "voltage-drop": clause("3.6.2"),
});

const rules = (
  name: string,
  points: CircuitRules["points"],
  residualCurrent: NonNullable<CircuitRules["residualCurrent"]>,
): CircuitRules<"metric"> => ({
  family: "metric",
  name,
  source: "as-nzs-3000",
  reviewed: "2026-11-29",
  onlyConfirmed: true,
  points,
  citations: citationsOf("as-nzs-3000", points),
  ratings: { breaker: breakerRatings, fuse: fuseRatings },
  smallestRating: 6,
  proposes: "smallest",
  ampacityFactor: 1,
  deviceProtectsConductor: true,
  // 2.5.3.1: a fuse up to 0.9 Iz.
  ampacityPerRating: {
    breaker: overloadMargins.breaker,
    fuse: [[Number.POSITIVE_INFINITY, 1 / 0.9]],
  },
  systems: [{ name: "230/400 V", phases: 3, lineToLine: 400, lineToNeutral: 230, toGround: 230 }],
  voltageRatings: metricVoltageRatings, // not judged: no point of its own
  ambient: { columns: ["70 °C", "90 °C"], rows: [[1000, 1, 1]] }, // no ampacity is derived from it
  adjustment: { bunched: [[Number.POSITIVE_INFINITY, 1]] },
  // Table 5.1, copper.
  grounding: {
    by: "line",
    table: [
      ["1 mm²", "1 mm²"],
      ["1.5 mm²", "1.5 mm²"],
      ["2.5 mm²", "2.5 mm²"],
      ["4 mm²", "2.5 mm²"],
      ["6 mm²", "2.5 mm²"],
      ["10 mm²", "4 mm²"],
      ["16 mm²", "6 mm²"],
      ["25 mm²", "6 mm²"],
      ["35 mm²", "10 mm²"],
      ["50 mm²", "16 mm²"],
    ],
    adiabatic: false,
  },
  // 4.19 with 1.4.6: lockable, within arm's reach (1.25 m), not on the unit.
  disconnect: {
    factor: 1,
    of: "sum",
    sizes: [20, 32, 40, 63],
    within: 1.25,
    wants: ["lockable", "notOnUnit"],
  },
  conductors: iec60228,
  resistanceUnit: ohmPerKm,
  lengthUnit: m,
  resistanceAt: 20,
  operatingTemperature: 75, // V-75 insulation
  temperatureCoefficient: { copper: 0.00393, aluminum: 0.00403 }, // IEC 60228, from memory
  voltageDrop: { branch: [[Number.POSITIVE_INFINITY, 0.05]], total: 0.05, mandatory: true },
  residualCurrent,
  tripping: breakerTripping,
  advice: [{ name: "gas-clearance", clause: "4.19" }],
});

/**
 * Australian rules as far as they are confirmed: the isolating switch, residual-current devices of final subcircuits
 * up to 32 A in dwellings, the voltage drop. The size of the conductors is asked for and not judged, so that no circuit
 * passes by these rules alone.
 *
 * The regulator of the state and the network operator override it.
 *
 * Source: AS/NZS 3000:2018, 2.6.3.2.2, 3.6.2, 4.19.
 */
export const asNzs3000Australia: CircuitRules<"metric"> = /* @__PURE__ */ ruleSet(() =>
  rules(
    "AS/NZS 3000 (Australia)",
    { ...shared(), "residual-current": clause("2.6.3.2.2") },
    { upTo: 32 },
  ),
);

/**
 * New Zealand's rules as far as they are confirmed: the isolating switch and the voltage drop. Whether a fixed unit
 * needs a residual-current device was read in a forum only.
 *
 * The regulator and the network operator override it.
 *
 * Source: AS/NZS 3000:2018, 3.6.2, 4.19.
 */
export const asNzs3000NewZealand: CircuitRules<"metric"> = /* @__PURE__ */ ruleSet(() =>
  rules(
    "AS/NZS 3000 (New Zealand)",
    { ...shared(), "residual-current": clause("2.6.3.2", "secondary") },
    { upTo: 32 },
  ),
);
