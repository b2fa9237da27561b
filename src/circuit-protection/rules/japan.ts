// What do the Japanese rules say, as far as they are confirmed?
// Follows the Interpretation of the Technical Standards for Electrical Facilities, art. 17, 149; JEAC 8001 1310-1.
// Does not cover the ampacity of conductors: a size is asked for and not judged.
import { ohmPerKm } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { MetricSize } from "../conductor-size.ts";
import type { CircuitRules, PrintedTable } from "./circuit-rules.ts";
import { citationsOf, clause } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/** mm² of a wire of a diameter in mm. */
const area = (diameter: number) => (Math.PI / 4) * diameter ** 2;
/** 17.8 Ω·mm²/km: half of the 35.6 of e = 35.6·L·I/(1000·S), from memory. */
const wire = (size: MetricSize, mm2: number): PrintedTable<MetricSize>["rows"][number] => [
  size,
  mm2,
  17.8 / mm2,
];

const points = (): CircuitRules["points"] => ({
  "marked-values": clause("nameplate and manufacturer's instructions"),
  "device-ratings": clause("art. 149", "memory"),
  overload: clause("art. 149"),
  ampacity: clause("art. 146, 149", "missing"),
  grounding: clause("art. 17"),
  "disconnect-rating": clause("JEAC 8001", "missing"),
  "disconnect-place": clause("JEAC 8001", "missing"),
  "voltage-drop": clause("JEAC 8001, 1310-1"),
  "residual-current": clause("art. 36", "memory"),
});

/**
 * Japanese rules as far as they are confirmed: supply, the drop of 2 % in the branch circuit (a private code, not law),
 * grounding of class D with a wire of 1.6 mm at least. Conductor sizes are asked for and not judged, so that no circuit
 * passes by these rules alone.
 *
 * The licensed electrician and the utility override it.
 *
 * Source: Interpretation of the Technical Standards for Electrical Facilities, art. 17 and 149; JEAC 8001, 1310-1.
 */
export const japan: CircuitRules<"metric"> = /* @__PURE__ */ ruleSet(() => ({
  family: "metric",
  name: "Japan, Interpretation",
  source: "japan-interpretation",
  reviewed: "2026-11-29",
  onlyConfirmed: true,
  points: points(),
  citations: citationsOf("japan-interpretation", points()),
  ratings: { breaker: [15, 20, 30, 40, 50, 60, 75, 100], fuse: [15, 20, 30, 40, 50, 60, 75, 100] }, // from memory
  smallestRating: 15,
  proposes: "smallest",
  ampacityFactor: 1,
  deviceProtectsConductor: true,
  systems: [
    { name: "100/200 V", phases: 1, lineToLine: 200, lineToNeutral: 100, toGround: 100 },
    { name: "200 V delta", phases: 3, lineToLine: 200, toGround: 200 },
  ],
  voltageRatings: {
    columns: ["to ground", "between"],
    rows: [
      ["100 V", 100, 100],
      ["100/200 V", 100, 200],
      ["200 V", 200, 200],
    ],
  }, // not judged: no point of its own
  ambient: { columns: ["70 °C", "90 °C"], rows: [[1000, 1, 1]] }, // no ampacity is derived from it
  adjustment: { bunched: [[Number.POSITIVE_INFINITY, 1]] },
  // Art. 17: class D ground, copper of 1.6 mm at least.
  grounding: {
    by: "line",
    table: (["1.6 mm", "2.0 mm", "2.6 mm", "5.5 mm²", "8 mm²", "14 mm²"] as const).map((size) => [
      size,
      "1.6 mm",
    ]),
    adiabatic: false,
  },
  disconnect: { factor: 1, of: "sum", sizes: [20, 30, 60], wants: [] },
  conductors: {
    columns: ["area", "copper stranded"],
    rows: [
      wire("1.6 mm", area(1.6)),
      wire("2.0 mm", area(2)),
      wire("2.6 mm", area(2.6)),
      wire("5.5 mm²", 5.5),
      wire("8 mm²", 8),
      wire("14 mm²", 14),
    ],
  },
  resistanceUnit: ohmPerKm,
  lengthUnit: m,
  resistanceAt: 20,
  operatingTemperature: 20,
  temperatureCoefficient: {},
  // 1310-1: 2 % in the branch circuit up to 60 m (a trade page has the length), then 4, 5 and 6 % in all.
  voltageDrop: {
    branch: [
      [60, 0.02],
      [120, 0.04],
      [200, 0.05],
      [Number.POSITIVE_INFINITY, 0.06],
    ],
    total: 0.04,
    mandatory: false,
  },
  residualCurrent: { upTo: Number.POSITIVE_INFINITY },
  // Art. 17: class D up to 300 V. The resistance of an earth is measured at the building, and is not judged here.
  advice: [
    { name: "own-circuit", clause: "JEAC 8001" },
    { name: "earth-class-d", clause: "art. 17" },
  ],
}));
