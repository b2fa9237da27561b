// From the nameplate to the circuit: device, conductors, grounding, disconnect, voltage drop, and does what is
// fitted pass? Follows NFPA 70 (2020, 2023, 2026), CSA C22.1, IEC 60364, BS 7671, AS/NZS 3000, Japan's Interpretation.
// Does not cover fault levels, load calculation of the service, or permits.
import type { Assessment } from "../assessment/assessment.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { askForFitted } from "./ask-for-fitted.ts";
import { checkCircuit } from "./check-circuit.ts";
import { circuitAdvice, circuitAssumptions } from "./circuit-advice.ts";
import type { CircuitDrop } from "./circuit-drop.ts";
import type { CircuitInput } from "./circuit-input.ts";
import type { Connection } from "./connection.ts";
import type { EquipmentGrounding } from "./equipment-grounding.ts";
import { unconfirmedOf, verdictOf } from "./findings.ts";
import { judgeConductors } from "./judge-conductor.ts";
import { judgeDevice } from "./judge-device.ts";
import { judgeDisconnect } from "./judge-disconnect.ts";
import { groundFaultTrip, judgeGroundFault } from "./judge-ground-fault.ts";
import { judgeGrounding } from "./judge-grounding.ts";
import { judgeNameplate } from "./judge-nameplate.ts";
import {
  judgeDrop,
  judgeReceptacle,
  judgeResidualCurrent,
  residualLimit,
} from "./judge-surroundings.ts";
import type { PermittedDevices } from "./permitted-devices.ts";
import type { RequiredDisconnect } from "./required-disconnect.ts";
import type { RuleFamily } from "./rules/index.ts";
import { sizeCircuit } from "./size-circuit.ts";
import type { CircuitPart, CircuitProtectionStatement } from "./statements.ts";
import type { UsableAmpacity } from "./usable-ampacity.ts";
import { verified } from "./verification.ts";

/**
 * The circuit of a unit, and the verdict on what is fitted.
 *
 * Source: NFPA 70 (2023), Article 440; IEC 60364-4-43:2008.
 */
export interface CircuitAssessment<F extends RuleFamily = RuleFamily>
  extends Assessment<CircuitPart, CircuitProtectionStatement> {
  /** Name of the rules. */
  readonly rules: string;
  /** Permitted breakers or fuses, with poles and voltage marking. */
  readonly device: PermittedDevices & Connection;
  /** Smallest conductor, with every step; left out where the rules have no confirmed table for it. */
  readonly conductor?: UsableAmpacity<F> | undefined;
  /** The fitted conductor as it runs, where it is stated. */
  readonly fittedConductor?: UsableAmpacity<F> | undefined;
  /** The whip as it runs, where one is stated. */
  readonly fittedWhip?: UsableAmpacity<F> | undefined;
  /** Equipment grounding (protective) conductor; left out where the rules have no table for it. */
  readonly equipmentGrounding?: EquipmentGrounding<F> | undefined;
  /** Disconnect at the unit. */
  readonly disconnect: RequiredDisconnect;
  /** Clauses that are left to be checked by their text: whoever did says so in `verifications`. */
  readonly toVerify: readonly string[];
  /** Largest residual or trip current that protects the circuit, where the rules ask for a device, or may. */
  readonly residualCurrent?: Quantity<"current"> | undefined;
  /** Voltage drop, where the length is stated. */
  readonly voltageDrop?: CircuitDrop<F> | undefined;
}

/**
 * The branch circuit of an air conditioner or heat pump from its nameplate, and whether what is fitted passes.
 *
 * **What to pass in.** The rules of the place, the two figures of the plate, the supply and the wiring; what is fitted,
 * for a verdict. **What comes back.** Sizes of breaker or fuses, conductor, grounding and disconnect, the drop, and the
 * verdict with its actions.
 *
 * **How.** Breaker or fuses: the largest standard size up to the marked maximum, never above it. Conductors: usable
 * ampacity at least the marked minimum circuit ampacity, which already holds the 125 %. Under metric rules the
 * device also has to protect the cable, so the smallest standard size is proposed.
 *
 * Assumes, and lists as assumptions, what is not stated: the service, 30 °C, up to three loaded conductors,
 * unmarked terminations, either kind of device, rated-load current equal to the minimum circuit ampacity. What the
 * circuit feeds is read off a nameplate whose maximum shows a motor as the largest load; else a conductor that is
 * enough only for a compressor leaves the outcome open.
 *
 * A point of the rules that rests on memory passes with a finding that says so; in Canada, the United Kingdom,
 * Australia, New Zealand and Japan a point that is not confirmed by two texts decides nothing and leaves the outcome
 * open, with its clause (`cause` is "not-confirmed" where nothing else is open). Who has checked such a clause by the
 * text of the standard says so in `verifications`: a finding then names the person in place of the question.
 *
 * @param input - Rules, the two figures of the plate (above 0), supply, wiring, and what is fitted.
 * @returns The circuit and the verdict: `fail` when something stated does not comply, `inconclusive` until
 * device and conductor are stated, with what is allowed, else `pass`.
 * @throws {@link InvalidInputError} when the maximum is below the minimum ampacity ("MOP below MCA") or a
 * field is not what it should be; {@link OutOfRangeError} beyond the tables.
 *
 * Cautions: line voltage can kill. Nameplate and manufacturer's instructions first (110.3(B)); the adopted code and
 * the authority having jurisdiction override this; for a licensed electrician, de-energized and verified.
 *
 * Where 210.8(F) asks for ground-fault protection on the date of the work, or the date is not stated, the outcome stays
 * open until the device is stated, or that the clause is not adopted.
 *
 * Source: NFPA 70 (2023), 110.14(C), 210.8(F), 240.4, 240.6(A), 250.122, 310.15, 440.4(B), 440.12, 440.14, 440.22,
 * 440.35; CSA C22.1, 4-006, 8-102, 10-614, 14-104, Section 28; IEC 60364-4-43:2008, 433.1; BS 7671, table 4D5; AS/NZS
 * 3000, 4.19; Japan, Interpretation, art. 17.
 *
 * @example
 * ```ts
 * import { circuitFromNameplate, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere, volt } from "hvac-install-math/quantity";
 *
 * const circuit = circuitFromNameplate({
 *   rules: nec2023,
 *   minimumCircuitAmpacity: ampere(31.4),
 *   maximumOvercurrentProtection: ampere(50),
 *   supply: { voltage: volt(240), phases: 1 },
 *   wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C" },
 *   date: "2026-03-02",
 *   installed: { device: { kind: "breaker", rating: ampere(50), poles: 2 }, conductor: "10 AWG" },
 * });
 * circuit.device.rating.toString(); // => 50 A
 * circuit.conductor?.size; // => 10 AWG
 * circuit.outcome; // => pass
 * ```
 */
export function circuitFromNameplate<F extends RuleFamily>(
  input: CircuitInput<F>,
): CircuitAssessment<F> {
  const circuit = checkCircuit(input);
  const sizes = sizeCircuit(circuit);
  const { rules, connection } = circuit;
  const { permitted, run, whip, grounding, disconnect, drop } = sizes;
  const findings = [
    ...judgeNameplate(circuit, sizes),
    ...askForFitted(circuit, sizes),
    ...judgeDevice(circuit, sizes),
    ...judgeConductors(circuit, sizes),
    ...judgeGrounding(circuit, sizes),
    ...judgeDisconnect(circuit, sizes),
    ...judgeDrop(circuit, sizes),
    ...judgeReceptacle(circuit),
    ...judgeResidualCurrent(circuit, sizes),
    ...judgeGroundFault(circuit, sizes),
    ...circuitAssumptions(circuit),
    ...circuitAdvice(circuit),
  ];
  const answered = verified(rules.name, findings, input.verifications ?? []);
  const residual = residualLimit(circuit, sizes) ?? groundFaultTrip(circuit, sizes);
  return frozen({
    ...verdictOf(answered, rules.citations),
    rules: rules.name,
    device: { ...permitted, ...connection },
    ...(run.smallest && { conductor: run.smallest }),
    ...(run.fitted && { fittedConductor: run.fitted }),
    ...(whip?.fitted && { fittedWhip: whip.fitted }),
    ...(grounding && { equipmentGrounding: grounding }),
    disconnect,
    toVerify: [...new Set(unconfirmedOf(answered).map(({ clause }) => clause))],
    ...(residual && { residualCurrent: ampere(residual) }),
    ...(drop && { voltageDrop: drop }),
  });
}
