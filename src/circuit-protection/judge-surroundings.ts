// What else has to be right around the circuit: voltage drop, service receptacle, residual-current device?
// Follows NFPA 70, 210.19, 210.63(A); CSA C22.1, 8-102; IEC 60364-4-41, 411.3.3, 411.5; AS/NZS 3000, 2.6.3.2, 3.6.2.
// Does not cover ground-fault protection by 210.8(F): judge-ground-fault.ts.
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { clauseOf, type Finding, judged, noted, open } from "./findings.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { type CircuitProtectionStatement, say, verbatim } from "./statements.ts";

/** The voltage drop: a duty or a recommendation, by rule set. */
export function judgeDrop({ rules, input }: CheckedCircuit, { drop }: CircuitSizes): Finding[] {
  if (drop === undefined) return [];
  const { running, limit, longestRun, conductorWithinLimit: within } = drop;
  const ok = isAtLeast(longestRun.si, input.wiring.length?.si ?? 0);
  // The sentence needs two decimals; the result keeps them all.
  const values = {
    drop: percent(Number(running.ratio.in(percent).toFixed(2))),
    limit: new Quantity(limit.si, percent),
  };
  if (!ok && !rules.voltageDrop.mandatory) {
    return [noted(say("circuit-protection.voltage-drop-recommended", values))];
  }
  return judged(rules, ["voltage-drop"], "voltage-drop", ok, {
    met: say("circuit-protection.voltage-drop-met", values),
    broken: say("circuit-protection.voltage-drop-above-limit", values),
    actions: [
      within
        ? say("circuit-protection.fit-conductor-for-drop", { size: verbatim(within) })
        : say("circuit-protection.shorten-run", { longest: longestRun }),
    ],
  });
}

/** 210.63(A): a receptacle near the unit, not fed from the load side of its disconnect. */
export function judgeReceptacle({ rules, installed }: CheckedCircuit): Finding[] {
  const { serviceReceptacle: outlet } = installed;
  const { receptacleWithin, lengthUnit } = rules;
  if (outlet === undefined || receptacleWithin === undefined) return [];
  const limit = lengthUnit(receptacleWithin / lengthUnit.scale);
  const { distance, onLoadSide } = outlet;
  const decided = (ok: boolean, broken: CircuitProtectionStatement) =>
    judged(rules, ["service-receptacle"], "service-receptacle", ok, {
      met: say("circuit-protection.receptacle-met", { distance, limit }),
      broken,
      actions: [say("circuit-protection.add-receptacle", { limit })],
    });
  const near = isAtMost(distance.si, receptacleWithin);
  return [
    ...decided(near, say("circuit-protection.receptacle-too-far", { distance, limit })),
    ...(onLoadSide ? decided(false, say("circuit-protection.receptacle-on-load-side")) : []),
  ];
}

const sensitive = 0.03; // A

/** The most that a residual-current device may be rated for, in A: on every circuit up to a rating, or in a TT system. */
export function residualLimit(
  { rules, input }: CheckedCircuit,
  { ahead }: CircuitSizes,
): number | undefined {
  const { residualCurrent: rule } = rules;
  const { occupancy = "dwelling", earthing } = input;
  if (rule === "TT") return earthing === "TN" ? undefined : sensitive;
  return rule && ahead <= rule.upTo && occupancy !== "other" ? sensitive : undefined;
}

/** A residual-current device: for every circuit up to a rating, or in a TT system, which needs it to disconnect. */
export function judgeResidualCurrent(circuit: CheckedCircuit, sizes: CircuitSizes): Finding[] {
  const { rules, input, installed } = circuit;
  if (residualLimit(circuit, sizes) === undefined) return [];
  const { residualCurrent: fitted } = installed;
  const clause = verbatim(clauseOf(rules, "residual-current"));
  const limit = ampere(sensitive);
  const inTT = rules.residualCurrent === "TT";
  const decided = (ok: boolean, said: CircuitProtectionStatement) =>
    judged(rules, ["residual-current"], "residual-current", ok, {
      met: said,
      broken: said,
      actions: [say("circuit-protection.fit-residual-current", { limit })],
    });
  const unknown = inTT && input.earthing === undefined;
  if (fitted && isAtMost(fitted.si, sensitive)) {
    return decided(true, say("circuit-protection.residual-current-met", { rated: fitted }));
  }
  // In a TT system a less sensitive one may disconnect in time; the loop decides, which is not judged here.
  if (fitted === undefined || unknown || (fitted && inTT)) {
    const state = unknown
      ? say("circuit-protection.state-earthing")
      : say("circuit-protection.fit-residual-current", { limit });
    return [open(say("circuit-protection.residual-current-not-stated", { clause }), state)];
  }
  const broken = fitted
    ? say("circuit-protection.residual-current-too-high", { rated: fitted, limit })
    : say("circuit-protection.residual-current-missing", { clause });
  return decided(false, broken);
}
