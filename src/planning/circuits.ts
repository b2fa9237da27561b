// Which breaker or fuses, conductor, grounding and disconnect for each circuit, and how far does its voltage drop?
// Follows circuit-protection by the adopted rules. Does not cover fault levels and permits.
import type { Single } from "../assessment/statement.ts";
import {
  type CircuitAssessment,
  type CircuitInput,
  circuitFromNameplate,
} from "../circuit-protection/index.ts";
import { type Circuit, circuitRulesNamed } from "../commissioning/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { type Job, stated } from "./job.ts";
import type { PlanCheck } from "./plan.ts";
import { check, item, type Share, shareOf, together } from "./share.ts";
import { say, verbatim } from "./statements.ts";

/** All circuits. */
export function circuitShare(job: Job): Share {
  const { circuits = [] } = job.record.power ?? {};
  const own: readonly Circuit[] = circuits.length > 0 ? circuits : [{}];
  return together(own.map((one, i) => shareOfOne(job, one, i)));
}

function shareOfOne(job: Job, circuit: Circuit, place: number): Share {
  const path = `power.circuits[${place}]`;
  const { voltage, phases } = job.record.power ?? {};
  const [plate, at] = circuit.plate
    ? [circuit.plate, `${path}.plate`]
    : [job.equipment, "equipment"];
  const { rules: name } = circuit;
  const rules = name && circuitRulesNamed(name, job.rules);
  const called = circuit.name === undefined ? place + 1 : verbatim(circuit.name);
  if (name && !rules) {
    const said = say("planning.rules-not-passed", { circuit: called, rules: verbatim(name) });
    return { ask: [{ ...said, path: `${path}.rules`, changes: ["circuit"] }] };
  }
  const needs = {
    [`${path}.rules`]: rules,
    [`${at}.minimumCircuitAmpacity`]: plate.minimumCircuitAmpacity,
    [`${at}.maximumOvercurrentProtection`]: plate.maximumOvercurrentProtection,
    "power.voltage": voltage,
    "power.phases": phases,
    [`${path}.wiring`]: circuit.wiring,
    [`${path}.wiring.length`]: circuit.wiring?.length,
  };
  const make = () =>
    sized(circuit, called, path, (fitted) => {
      const { minimumCircuitAmpacity, maximumOvercurrentProtection, protectionMarking } = plate;
      return circuitFromNameplate(
        stated({
          rules,
          minimumCircuitAmpacity,
          maximumOvercurrentProtection,
          protectionMarking,
          ratedLoadCurrent: plate.ratedLoadCurrent,
          lockedRotorCurrent: circuit.plate ? undefined : job.equipment.lockedRotorCurrent,
          supply: stated<CircuitInput["supply"]>({
            voltage,
            phases,
            system: job.record.power?.system,
          }),
          wiring: circuit.wiring,
          powerFactor: circuit.powerFactor,
          occupancy: circuit.occupancy,
          sharedWith: circuit.sharedWith?.[0] && circuit.sharedWith,
          earthing: circuit.earthing,
          equipment: circuit.feeds,
          date: circuit.at?.slice(0, 10),
          installed: fitted,
        }),
      );
    });
  return shareOf("circuit", needs, make, { wiring: `${path}.wiring`, supply: "power.voltage" });
}

/** Sizes by ampacity, and the next conductor that keeps the drop where that one does not. */
function sized(
  circuit: Circuit,
  called: Single,
  path: string,
  circuitWith: (installed: CircuitInput["installed"]) => CircuitAssessment,
): Share {
  const least = circuitWith(circuit.installed as CircuitInput["installed"]);
  const { conductor, voltageDrop } = least;
  const within = voltageDrop?.conductorWithinLimit;
  const larger = conductor && within && within !== conductor.size && !circuit.installed?.conductor;
  const found = larger
    ? circuitWith({ ...(circuit.installed as CircuitInput["installed"]), conductor: within })
    : least;
  const { device, disconnect, equipmentGrounding: grounding, sources } = found;
  const on = { circuit: called };
  const { minimumRating, madeSize = minimumRating, nonFusedAllowed } = disconnect;
  const ratings = { least: minimumRating, made: madeSize };
  const kinds =
    device.kind === "fuse"
      ? (["planning.device.fuse"] as const)
      : (["planning.device.breaker", "planning.device.fuse"] as const);
  const dropped = { ...on, ...dropOf(voltageDrop) };
  const said = [
    say("planning.device", { ...on, ratings: device.ratings, kinds, poles: device.poles }),
    ...(conductor
      ? [
          say("planning.conductor", {
            ...on,
            size: verbatim(conductor.size),
            usable: conductor.usable,
          }),
        ]
      : []),
    ...(larger
      ? [
          say("planning.conductor-for-drop", {
            ...dropped,
            size: verbatim(within),
            smallest: verbatim(conductor.size),
          }),
        ]
      : []),
    ...(grounding ? [say("planning.grounding", { ...on, size: verbatim(grounding.size) })] : []),
    say(nonFusedAllowed ? "planning.disconnect" : "planning.fused-disconnect", {
      ...on,
      ...ratings,
    }),
  ];
  return {
    bring: said.map((one) => item("circuit", one, sources, path)),
    check: dropChecks(found, called, path),
    cautions: found.cautions,
  };
}

const rounded = (ratio: Quantity<"ratio">) => percent(Number(ratio.in(percent).toFixed(2)));

const dropOf = (drop: CircuitAssessment["voltageDrop"]) => ({
  drop: rounded(drop?.running.ratio ?? percent(0)),
  limit: rounded(drop?.limit ?? percent(0)),
});

function dropChecks(
  { voltageDrop, sources }: CircuitAssessment,
  circuit: Single,
  path: string,
): PlanCheck[] {
  if (!voltageDrop) return [];
  const { drop, limit } = dropOf(voltageDrop);
  const within = voltageDrop.running.ratio.si <= voltageDrop.limit.si * (1 + 1e-9);
  const { starting } = voltageDrop;
  const said = say(`planning.drop-${within ? "within" : "above"}`, { circuit, drop, limit });
  return [
    check(within ? "pass" : "fail", "circuit", said, sources, path),
    ...(starting
      ? [
          check(
            "inconclusive",
            "circuit",
            say("planning.drop-at-start", { circuit, drop: rounded(starting.ratio) }),
            sources,
            path,
          ),
        ]
      : []),
  ];
}
