// What is told and not judged: assumptions, dates of the rules, further duties?
// Follows NFPA 70, 230.67, 440.11, and the rule set's own advice.
// Does not cover what decides: the files named judge-… do.
import { degC } from "../quantity/units/temperature.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { assumed, type Finding, noted } from "./findings.ts";
import { say, type Unjudged, verbatim } from "./statements.ts";
import type { AwgWiring, MetricWiring } from "./wiring.ts";

/** Everything that was taken because it was not stated, and what is never judged. */
export function circuitAssumptions({
  rules,
  input,
  connection,
  installed,
}: CheckedCircuit): Finding[] {
  const { supply, wiring } = input;
  const found: Finding[] = [];
  if (!supply.system) {
    found.push(
      assumed(say("circuit-protection.service-assumed", { system: verbatim(connection.system) })),
    );
  }
  if (rules.ampacity) found.push(...wiringAssumptions(rules.family, wiring));
  const missing = listed([
    [installed.equipmentGrounding === undefined, "equipment-grounding"],
    [installed.disconnect === undefined, "disconnect"],
    [wiring.length === undefined, "voltage-drop"],
    [
      rules.receptacleWithin !== undefined && installed.serviceReceptacle === undefined,
      "service-receptacle",
    ],
  ]);
  if (missing.length) found.push(assumed(say("circuit-protection.not-stated", { parts: missing })));
  const never = listed([
    [rules.family === "awg", "short-circuit-rating"],
    [rules.family === "awg", "horsepower-rating"],
    [rules.family === "metric", "breaking-capacity"],
    [rules.family === "metric", "fault-loop"],
    [rules.points["service-receptacle"]?.standing === "missing", "service-receptacle"],
  ]);
  found.push(assumed(say("circuit-protection.not-judged", { parts: never })));
  return found;
}

const listed = (parts: readonly (readonly [boolean, Unjudged])[]) =>
  parts.flatMap(([is, name]) => (is ? [`circuit-protection.unjudged.${name}` as const] : []));

/** What the tables were read with. */
function wiringAssumptions(
  family: "awg" | "metric",
  wiring: CheckedCircuit["input"]["wiring"],
): Finding[] {
  const {
    ambient,
    method,
    cable,
    aboveRoof,
    terminations,
    currentCarryingConductors,
    groupedCircuits,
  } = wiring as Partial<AwgWiring & MetricWiring>;
  const found: Finding[] = [];
  if (!ambient) {
    const celsius = method === "D1" || method === "D2" ? 20 : 30;
    found.push(assumed(say("circuit-protection.ambient-assumed", { ambient: degC(celsius) })));
  }
  if (family === "metric") {
    if (!groupedCircuits) found.push(assumed(say("circuit-protection.circuits-assumed")));
    return found;
  }
  if (!terminations) found.push(assumed(say("circuit-protection.terminations-assumed")));
  if (!cable) found.push(assumed(say("circuit-protection.cable-assumed")));
  if (!aboveRoof) found.push(assumed(say("circuit-protection.roof-assumed")));
  if (!currentCarryingConductors) {
    found.push(assumed(say("circuit-protection.conductors-assumed")));
  }
  return found;
}

/** The age of the rule set, and duties that are only told. */
export function circuitAdvice({ rules, input, date }: CheckedCircuit): Finding[] {
  const found: Finding[] = [];
  const { reviewed, advice } = rules;
  if (date !== undefined && date > reviewed) {
    const dates = { reviewed: verbatim(reviewed), date: verbatim(date) };
    found.push(noted(say("circuit-protection.rules-older", dates)));
  }
  const { occupancy = "dwelling" } = input;
  for (const { name, clause } of advice) {
    if (name === "surge-protection" && occupancy === "other") continue;
    found.push(
      noted(
        say("circuit-protection.advice", {
          advice: `circuit-protection.advice.${name}`,
          clause: verbatim(clause),
        }),
      ),
    );
  }
  return found;
}
