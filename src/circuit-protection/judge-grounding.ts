// Is the fitted grounding (protective) conductor enough?
// Follows NFPA 70 (2023), 250.122, 440.9; CSA C22.1, 10-614, 10-616; IEC 60364-5-54, 543.1; BS 7671, 543.1.
// Does not cover the connection at its ends, and raceways as grounding path beyond 440.9.
import { energyOf, factorOf } from "./adiabatic.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { clauseOf, type Finding, judged, open, toVerify } from "./findings.ts";
import type { RuleFamily, SizeOf } from "./rules/index.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { say, verbatim } from "./statements.ts";
import { areaOf } from "./table.ts";
import type { AwgWiring, MetricWiring } from "./wiring.ts";

/** Judges the grounding conductor, and a roof's raceway that takes its place. */
export function judgeGrounding<F extends RuleFamily>(
  circuit: CheckedCircuit<F>,
  { grounding }: CircuitSizes<F>,
): Finding[] {
  const { rules, installed } = circuit;
  const { equipmentGrounding: fitted } = installed;
  if (fitted === undefined) return judgeRaceway(circuit);
  if (grounding === undefined) return [];
  const enough = areaOf(rules, fitted) >= areaOf(rules, grounding.size) * 0.999;
  const byEnergy = !enough && rules.grounding?.by === "line" && rules.grounding.adiabatic;
  if (byEnergy) return judgeByEnergy(circuit, fitted, grounding.size);
  const size = verbatim(grounding.size);
  const enlarged = grounding.areaFactor > 1 && rules.grounding?.by === "device";
  const values = { fitted: verbatim(fitted), size };
  const actions = [say("circuit-protection.fit-grounding", { size })];
  // Enough for the device, not for the enlarged conductors: only what fails by every reading fails. By the exception of
  // 250.122(B), in the editions from 2020 on (from memory), a qualified person may have sized it.
  if (enlarged && !enough && areaOf(rules, fitted) >= areaOf(rules, grounding.tableSize) * 0.999) {
    const clause = clauseOf(rules, "enlarged-grounding");
    const where = { size, clause: verbatim(clause) };
    const said = grounding.ambiguous
      ? say("circuit-protection.grounding-two-readings", where)
      : say("circuit-protection.grounding-by-exception", { ...where, ...values });
    const open = toVerify(rules, clause, "equipment-grounding", said);
    return [{ ...open, actions: [...actions, ...open.actions] }];
  }
  const points = enlarged
    ? (["grounding", "enlarged-grounding"] as const)
    : (["grounding"] as const);
  return judged(rules, points, "equipment-grounding", enough, {
    met: say("circuit-protection.grounding-met", values),
    broken: say("circuit-protection.grounding-too-small", values),
    actions,
  });
}

/** Below the table's size the adiabatic equation decides, with the heat of the fault. */
function judgeByEnergy<F extends RuleFamily>(
  { rules, input, installed }: CheckedCircuit<F>,
  fitted: SizeOf<F>,
  size: SizeOf<F>,
): Finding[] {
  const { fault, groundingMaterial } = installed;
  const named = verbatim(fitted);
  if (fault === undefined) {
    return [
      open(
        say("circuit-protection.grounding-needs-energy", { fitted: named, size: verbatim(size) }),
        say("circuit-protection.state-fault-energy"),
        say("circuit-protection.fit-grounding", { size: verbatim(size) }),
      ),
    ];
  }
  const { material, insulation } = input.wiring as MetricWiring;
  const factor = factorOf({ material: groundingMaterial ?? material, insulation });
  const needed = Math.sqrt(energyOf("installed.fault", fault)) / factor;
  const area = Number(needed.toPrecision(3));
  return judged(rules, ["grounding"], "equipment-grounding", areaOf(rules, fitted) >= needed, {
    met: say("circuit-protection.grounding-by-energy-met", { fitted: named, area }),
    broken: say("circuit-protection.grounding-by-energy-short", { fitted: named, area }),
    actions: [say("circuit-protection.fit-grounding-area", { area })],
  });
}

/** 440.9: on a roof a metal raceway with compression fittings does not do alone. */
function judgeRaceway({ rules, input, installed }: CheckedCircuit): Finding[] {
  const { clause: text } = rules.points["rooftop-raceway"] ?? {};
  const onRoof = (input.wiring as AwgWiring).aboveRoof !== undefined;
  if (!installed.groundingByRaceway || !onRoof || text === undefined) return [];
  const clause = verbatim(text);
  const actions = [say("circuit-protection.fit-grounding-wire")];
  const { compressionFittings } = installed;
  if (compressionFittings === undefined) {
    const asked = say("circuit-protection.raceway-fittings-not-stated", { clause });
    return [open(asked, say("circuit-protection.look-at-fittings"), ...actions)];
  }
  return judged(rules, ["rooftop-raceway"], "equipment-grounding", !compressionFittings, {
    met: say("circuit-protection.raceway-fittings-met", { clause }),
    broken: say("circuit-protection.grounding-wire-missing", { clause }),
    actions,
  });
}
