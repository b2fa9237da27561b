// Where does this wiring read the tables? Column, temperature and factors, and the points of the rules that it uses.
// Follows NFPA 70 (2023), 110.14(C), 310.15, 334.80; CSA C22.1, 4-004, 4-006; IEC 60364-5-52:2009, 523, annex B.
// Does not cover interpolation: the printed row, or the next one on the safe side, is used.

import { numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { type BrokenBound, OutOfRangeError } from "../quantity/errors.ts";
import { isAtMost } from "../quantity/limit.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { degC } from "../quantity/units/temperature.ts";
import { countOf, materialOf } from "./checks.ts";
import type { CircuitRules, PrintedTable, RuleFamily, RulePoint, WiringOf } from "./rules/index.ts";
import { cell, step } from "./table.ts";
import type { AwgWiring, InstallationMethod, MetricWiring } from "./wiring.ts";

/** Where the wiring reads the tables, and the points of the rules that its ampacity rests on. */
export interface Route {
  readonly column: string;
  readonly limitColumn?: string;
  readonly celsius: number;
  readonly ambientFactor: number;
  readonly adjustmentFactor: number;
  readonly points: readonly RulePoint[];
}

const insulations = ["60 °C", "75 °C", "90 °C"] as const;
const methods: readonly InstallationMethod[] = [
  "A1",
  "A2",
  "B1",
  "B2",
  "C",
  "D1",
  "D2",
  "E",
  "A",
  "100",
  "101",
  "102",
  "103",
];

/** Checks the wiring and says where it reads the tables. `rating`: of the device ahead, 0 where unknown. */
export function routeOf<F extends RuleFamily>(
  rules: CircuitRules<F>,
  wiring: WiringOf<F>,
  phases: 1 | 3,
  rating: number,
  path = "wiring",
): Route {
  const { material, length, stranding } = objectOf(path, wiring);
  materialOf(`${path}.material`, material);
  oneOf<string>(`${path}.insulation`, wiring.insulation, rules.ambient.columns);
  if (length !== undefined) siOf(`${path}.length`, length, "length", { above: 0 });
  if (stranding !== undefined) oneOf(`${path}.stranding`, stranding, ["solid", "stranded"]);
  return rules.family === "awg"
    ? awgRoute(rules, wiring as AwgWiring, rating, path)
    : metricRoute(rules, wiring as MetricWiring, phases, path);
}

/** By wire gauge: the insulation's own column, capped by those of terminals and cable. */
function awgRoute(rules: CircuitRules, wiring: AwgWiring, rating: number, path: string): Route {
  const { material, insulation, ambient, conduit, cable = "other", aboveRoof } = wiring;
  const { currentCarryingConductors = 3 } = wiring;
  if (conduit !== undefined) oneOf(`${path}.conduit`, conduit, ["PVC", "aluminum", "steel"]);
  const points: RulePoint[] = ["ampacity", "terminations"];
  let celsius =
    ambient === undefined ? 30 : siOf(`${path}.ambient`, ambient, "temperature") - 273.15;
  const { terminations = step("deviceRating", rules.terminations ?? [], rating) } = wiring;
  // The cap never reads a hotter column than the insulation's.
  const limits: string[] = [
    oneOf(`${path}.terminations`, terminations, ["60 °C", "75 °C"]),
    insulation,
  ];
  if (oneOf(`${path}.cable`, cable, ["NM", "other"]) === "NM") {
    points.push("sheathed-cable");
    if (rules.sheathedCableColumn) limits.push(rules.sheathedCableColumn); // 334.80
  }
  if (aboveRoof !== undefined) {
    points.push("rooftop");
    const height = siOf(`${path}.aboveRoof`, aboveRoof, "length", { min: 0 });
    if (rules.rooftop && height < rules.rooftop.below) celsius += rules.rooftop.adder;
  }
  const together = countOf(`${path}.currentCarryingConductors`, currentCarryingConductors);
  const ambientFactor = factorAt(`${path}.ambient`, degC, rules.ambient, insulation, celsius);
  const adjustmentFactor = step(
    `${path}.currentCarryingConductors`,
    rules.adjustment.bunched ?? [],
    together,
  );
  if (ambientFactor !== 1) points.push("ambient");
  if (adjustmentFactor !== 1) points.push("grouping");
  const limit = insulations.find((one) => limits.includes(one));
  return {
    column: `${material} ${insulation}`,
    limitColumn: `${material} ${limit}`,
    celsius,
    ambientFactor,
    adjustmentFactor,
    points,
  };
}

/** By method of installation: air or ground, grouping, soil, thermal insulation around the cable. */
function metricRoute(
  rules: CircuitRules,
  wiring: MetricWiring,
  phases: 1 | 3,
  path: string,
): Route {
  const { material, insulation, ambient, groupedCircuits = 1, grouping = "bunched" } = wiring;
  const { soilResistivity = 2.5, insulationLength } = wiring;
  const method = oneOf(`${path}.method`, wiring.method, methods);
  oneOf(`${path}.grouping`, grouping, ["bunched", "single layer", "perforated tray"]);
  const buried = method === "D1" || method === "D2";
  const reference = buried ? 20 : 30; // B.52.15; B.52.14
  const points: RulePoint[] = ["ampacity"];
  const celsius =
    ambient === undefined ? reference : siOf(`${path}.ambient`, ambient, "temperature") - 273.15;
  const table = buried && rules.groundAmbient ? rules.groundAmbient : rules.ambient;
  const ambientFactor = factorAt(`${path}.ambient`, degC, table, insulation, celsius);
  const together = countOf(`${path}.groupedCircuits`, groupedCircuits);
  const arrangement = buried ? method : grouping;
  let adjustmentFactor = step(
    `${path}.groupedCircuits`,
    rules.adjustment[arrangement] ?? rules.adjustment.bunched ?? [],
    together,
  );
  if (buried && rules.soil) {
    const limits = { min: 0.7, max: rules.soil.rows.at(-1)?.[0] ?? 3 };
    numberOf(`${path}.soilResistivity`, soilResistivity, limits);
    const at = `${path}.soilResistivity`;
    adjustmentFactor *= factorAt(at, Number, rules.soil, method, soilResistivity);
  }
  if (insulationLength !== undefined) {
    const meters = siOf(`${path}.insulationLength`, insulationLength, "length", { above: 0 });
    points.push(isAtMost(meters, 0.4) ? "thermal-insulation" : "grouping"); // 523.9 gives 0.5 above
    adjustmentFactor *= step(`${path}.insulationLength`, rules.thermalInsulation ?? [], meters);
  }
  if (ambientFactor !== 1) points.push("ambient");
  if (adjustmentFactor !== 1) points.push("grouping");
  return {
    column: `${material} ${insulation} ${method} ${phases === 3 ? 3 : 2}`,
    celsius,
    ambientFactor,
    adjustmentFactor,
    points,
  };
}

/** The factor of the first row that reaches a temperature or resistivity. */
function factorAt(
  argument: string,
  unit: (figure: number) => BrokenBound["limit"],
  table: PrintedTable<number>,
  column: string,
  at: number,
): number {
  const rows = table.rows.filter(([upTo]) => cell(table, upTo, column) !== null);
  const row = rows.find(([upTo]) => twelveDigits(at) <= upTo);
  if (row) return Number(cell(table, row[0], column));
  const [value, limit] = [unit(twelveDigits(at)), unit(rows.at(-1)?.[0] ?? 0)];
  throw new OutOfRangeError({
    argument,
    value: `${value}`,
    allowed: `at most ${limit} for ${column}`,
    bound: { value, is: "max", limit } as BrokenBound,
  });
}
