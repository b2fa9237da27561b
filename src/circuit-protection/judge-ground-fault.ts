// Is the outlet protected against ground faults where the clause asks for it on the day of the work?
// Follows NFPA 70, 210.8(F), by ground-fault.ts; trip currents of class A and class C by UL 943, from memory.
// Does not cover local law: states amended or deleted the clause, so nothing fails before the adopted text is stated.
import { isAtMost } from "../quantity/limit.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { assumed, clauseOf, type Finding, judged, noted, open } from "./findings.ts";
import { type GroundFaultAnswer, groundFaultAnswer } from "./ground-fault.ts";
import { notAdopted } from "./rules/index.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { type CircuitProtectionStatement, say, verbatim } from "./statements.ts";

// Largest current, in A, at which a device of the class has to trip.
const classA = 0.006;
const specialPurpose = 0.02; // class C

/** What the clause says to this circuit; `undefined` where the rules have none. */
function answerTo(
  { rules, input, date, connection }: CheckedCircuit,
  { ahead }: CircuitSizes,
): GroundFaultAnswer | undefined {
  const { occupancy = "dwelling", powerConversion = true, groundFaultText: text, supply } = input;
  const toGround = connection.voltsToGround;
  const reach = { rating: ahead, toGround, phases: supply.phases, occupancy };
  return (
    rules.groundFault &&
    groundFaultAnswer(rules.groundFault, reach, { date, powerConversion, text })
  );
}

const tripOf = ({ classC }: GroundFaultAnswer) => (classC ? specialPurpose : classA);

/** The largest trip current that protects this circuit, in A, where the clause asks for it or may. */
export function groundFaultTrip(circuit: CheckedCircuit, sizes: CircuitSizes): number | undefined {
  const found = answerTo(circuit, sizes);
  return found && ["required", "by-date"].includes(found.answer) ? tripOf(found) : undefined;
}

/**
 * Ground-fault protection by the date of the work. Where the clause is in force, or may be because the date is not known,
 * a stated device passes; without one the date, the adopted text and the device are asked for, and a text that is stated
 * to ask for it fails a circuit that is stated to have none.
 */
export function judgeGroundFault(circuit: CheckedCircuit, sizes: CircuitSizes): Finding[] {
  const { rules, input, installed } = circuit;
  const found = answerTo(circuit, sizes);
  if (!found) return [];
  const clause = verbatim(clauseOf(rules, "ground-fault"));
  const { groundFaultText: text } = input;
  if (text === notAdopted) {
    return [assumed(say("circuit-protection.ground-fault-not-adopted", { clause }))];
  }
  const { answer, from = "", classC } = found;
  const dated = { clause, from: verbatim(from) };
  if (answer === "outside") return [];
  if (answer === "exempt") {
    const date = verbatim(input.date ?? "");
    return [noted(say("circuit-protection.ground-fault-exempt", { ...dated, date }))];
  }
  const { residualCurrent: fitted } = installed;
  const limit = ampere(tripOf(found));
  const decided = (ok: boolean, said: CircuitProtectionStatement) =>
    judged(rules, ["ground-fault"], "residual-current", ok, {
      met: said,
      broken: said,
      actions: [say("circuit-protection.fit-ground-fault", { limit })],
    });
  if (fitted && isAtMost(fitted.si, limit.si)) {
    const met = say("circuit-protection.ground-fault-met", { rated: fitted, clause });
    return [...decided(true, met), { as: "memory", clause: "UL 943" }];
  }
  const special = classC ? [noted(say("circuit-protection.ground-fault-class-c", { clause }))] : [];
  const state = say("circuit-protection.state-ground-fault", { clause, limit });
  if (answer === "by-date") {
    const asked = say("circuit-protection.ground-fault-by-date", dated);
    return [open(asked, say("circuit-protection.state-date"), state), ...special];
  }
  const told = [noted(say("circuit-protection.ground-fault-required", { clause })), ...special];
  if (text === undefined) {
    return [open(say("circuit-protection.ground-fault-open", { clause }), state), ...told];
  }
  if (fitted === undefined) {
    const asked = say("circuit-protection.ground-fault-not-stated", { clause });
    return [open(asked, state), ...special];
  }
  const broken = fitted
    ? say("circuit-protection.residual-current-too-high", { rated: fitted, limit })
    : say("circuit-protection.ground-fault-missing", { clause });
  return [...decided(false, broken), ...told];
}
