// Is the outlet protected against ground faults where the clause asks for it on the day of the work?
// Follows NFPA 70, 210.8(F), by ground-fault.ts; trip currents of class A and class C by UL 943, from memory.
// Does not cover local law: states amended or deleted the clause, so nothing fails before the adopted text is stated.
import { isAtMost } from "../quantity/limit.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { assumed, type Finding, judged, noted, open } from "./findings.ts";
import { groundFaultAnswer } from "./ground-fault.ts";
import { notAdopted } from "./rules/ground-fault-rule.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { type CircuitProtectionStatement, say, verbatim } from "./statements.ts";

// Largest current, in A, at which a device of the class has to trip.
const classA = 0.006;
const specialPurpose = 0.02; // class C

/**
 * Ground-fault protection by the date of the work. Where the clause is in force a stated device passes; without one the
 * adopted text is asked for, and a text that is stated to ask for it fails a circuit that is stated to have none.
 */
export function judgeGroundFault(
  { rules, input, installed, date, connection }: CheckedCircuit,
  { ahead }: CircuitSizes,
): Finding[] {
  const { groundFault: rule } = rules;
  if (!rule) return [];
  const clause = verbatim(rules.points["ground-fault"]?.clause ?? "");
  const { occupancy = "dwelling", powerConversion = true, groundFaultText: text, supply } = input;
  if (text === notAdopted) {
    return [assumed(say("circuit-protection.ground-fault-not-adopted", { clause }))];
  }
  const toGround = connection.voltsToGround;
  const reach = { rating: ahead, toGround, phases: supply.phases, occupancy };
  const by = { date, powerConversion, text };
  const { answer, from = "", classC } = groundFaultAnswer(rule, reach, by);
  const dated = { clause, from: verbatim(from) };
  if (answer === "outside") return [];
  if (answer === "exempt") return [noted(say("circuit-protection.ground-fault-exempt", dated))];
  const special = classC ? [noted(say("circuit-protection.ground-fault-class-c", { clause }))] : [];
  if (answer === "by-date") {
    return [noted(say("circuit-protection.ground-fault-by-date", dated)), ...special];
  }
  const { residualCurrent: fitted } = installed;
  const trip = classC ? specialPurpose : classA;
  const limit = ampere(trip);
  const decided = (ok: boolean, said: CircuitProtectionStatement) =>
    judged(rules, ["ground-fault"], "residual-current", ok, {
      met: said,
      broken: said,
      actions: [say("circuit-protection.fit-ground-fault", { limit })],
    });
  if (fitted && isAtMost(fitted.si, trip)) {
    const met = say("circuit-protection.ground-fault-met", { rated: fitted, clause });
    return [...decided(true, met), { as: "memory", clause: "UL 943" }];
  }
  const told = [noted(say("circuit-protection.ground-fault-required", { clause })), ...special];
  if (text === undefined) {
    const state = say("circuit-protection.state-ground-fault", { clause, limit });
    return [open(say("circuit-protection.ground-fault-open", { clause }), state), ...told];
  }
  if (fitted === undefined) return told;
  const broken = fitted
    ? say("circuit-protection.residual-current-too-high", { rated: fitted, limit })
    : say("circuit-protection.ground-fault-missing", { clause });
  return [...decided(false, broken), ...told];
}
