// From the nameplate to the circuit: device, conductors, grounding, disconnect, voltage drop, and does what is
// fitted pass? Follows NFPA 70 (2020, 2023, 2026), Article 440 with 110, 210, 240, 250, 310; IEC 60364; CSA C22.1.
// Does not cover fault levels, surge protection, load calculation of the service, or permits.
import { type Assessment, statement } from "../assessment/assessment.ts";
import { objectOf, oneOf } from "../quantity/check.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { assumedWiring } from "./assumed-wiring.ts";
import { checkDevice } from "./check-device.ts";
import { checkDisconnect } from "./check-disconnect.ts";
import { amperesOf, rulesOf } from "./checks.ts";
import { type CircuitDrop, circuitDrop } from "./circuit-drop.ts";
import type { CircuitInput, InstalledCircuit } from "./circuit-input.ts";
import { breakerConnection, type Connection } from "./connection.ts";
import { type EquipmentGrounding, equipmentGrounding } from "./equipment-grounding.ts";
import { type CircuitPart, judge, noFindings, verdict } from "./findings.ts";
import { isEnough, minimumConductor } from "./minimum-conductor.ts";
import { type PermittedDevices, permittedDevices } from "./permitted-devices.ts";
import { readNameplate } from "./read-nameplate.ts";
import { type RequiredDisconnect, requiredDisconnect } from "./required-disconnect.ts";
import type { RuleFamily } from "./rules/circuit-rules.ts";
import { switchedCurrent } from "./switched-current.ts";
import { sizesOf } from "./table.ts";
import { type UsableAmpacity, usableAmpacity } from "./usable-ampacity.ts";
import { workCautions } from "./work-cautions.ts";

/**
 * The circuit of a unit, and the verdict on what is fitted.
 *
 * Source: NFPA 70 (2023), Article 440; IEC 60364-4-43:2008.
 */
export interface CircuitAssessment<F extends RuleFamily = RuleFamily>
  extends Assessment<CircuitPart> {
  /** Name of the rules. */
  readonly rules: string;
  /** Permitted breakers or fuses, with poles and voltage marking. */
  readonly device: PermittedDevices & Connection;
  /** Smallest conductor, with every step. */
  readonly conductor: UsableAmpacity<F>;
  /** The fitted conductor as it runs, where it is stated. */
  readonly fittedConductor?: UsableAmpacity<F>;
  /** Equipment grounding (protective) conductor. */
  readonly equipmentGrounding: EquipmentGrounding<F>;
  /** Disconnect at the unit. */
  readonly disconnect: RequiredDisconnect;
  /** Voltage drop, where the length is stated. */
  readonly voltageDrop?: CircuitDrop<F>;
}

/**
 * The branch circuit of an air conditioner or heat pump from its nameplate, and whether what is fitted passes.
 *
 * Breaker or fuses: the largest standard size up to the marked maximum, never above it. Conductors: usable
 * ampacity at least the marked minimum circuit ampacity, which already holds the 125 %. Under metric rules the
 * device also has to protect the cable, so the smallest standard size is proposed.
 *
 * Assumes, and lists as assumptions, what is not stated: the service, 30 °C, up to three loaded conductors,
 * unmarked terminations, either kind of device, rated-load current equal to the minimum circuit ampacity.
 *
 * @param input - Rules, the two figures of the plate (above 0), supply, wiring, and what is fitted.
 * @returns The circuit and the verdict: `fail` when something stated does not comply, `inconclusive` until
 * device and conductor are stated, else `pass`.
 * @throws {@link InvalidInputError} when the maximum is below the minimum ampacity ("MOP below MCA") or a
 * field is not what it should be; {@link OutOfRangeError} beyond the tables.
 *
 * Cautions: mains can kill. Nameplate and manufacturer's instructions first (110.3(B)); the adopted code and
 * the authority having jurisdiction override this; for a licensed electrician, de-energised and verified.
 *
 * Source: NFPA 70 (2023), 110.14(C), 240.4, 240.6(A), 250.122, 310.15, 440.4(B), 440.12, 440.14, 440.22,
 * 440.35; IEC 60364-4-43:2008, 433.1; CSA C22.1, Section 28.
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
 *   installed: { device: { kind: "breaker", rating: ampere(50), poles: 2 }, conductor: "10 AWG" },
 * });
 * circuit.device.rating.toString(); // => 50 A
 * circuit.conductor.size; // => 10 AWG
 * circuit.outcome; // => pass
 * ```
 */
export function circuitFromNameplate<F extends RuleFamily>(
  input: CircuitInput<F>,
): CircuitAssessment<F> {
  const rules = rulesOf(input);
  const { supply, wiring, equipment = "motor-compressor", lockedRotorCurrent } = input;
  const { installed = {} as InstalledCircuit<F>, occupancy = "dwelling" } = input;
  objectOf("installed", installed);
  oneOf("equipment", equipment, ["motor-compressor", "other"]);
  oneOf("occupancy", occupancy, ["dwelling", "other"]);
  const findings = noFindings();
  const { assumptions, cautions } = findings;
  if (lockedRotorCurrent !== undefined) amperesOf("lockedRotorCurrent", lockedRotorCurrent);
  const plate = readNameplate(input, findings);
  const { ampacity, maximum, marking } = plate;
  const connection = breakerConnection({ rules, supply });
  const { phases } = supply;
  const permitted = permittedDevices(rules, ampacity, maximum, marking);
  const { device, conductor: fitted, equipmentGrounding: fittedGrounding, disconnect } = installed;
  for (const [name, part] of Object.entries({ device, disconnect })) {
    if (part !== undefined) objectOf(`installed.${name}`, part);
  }
  const given = disconnect?.fuse;
  const fuse = given === undefined ? given : amperesOf("installed.disconnect.fuse", given);
  const sizes = sizesOf(rules);
  if (fitted !== undefined) oneOf("installed.conductor", fitted, sizes);
  if (fittedGrounding !== undefined) {
    oneOf("installed.equipmentGrounding", fittedGrounding, sizes);
  }

  if (!supply.system) {
    assumptions.push(
      statement("service", "The service is {system}.", { system: connection.system }),
    );
  }
  const assumed = assumedWiring(rules, wiring);
  if (assumed) assumptions.push(statement("wiring", "Wiring: {assumed}.", { assumed }));

  if (device && !(device.poles && device.voltageRating)) {
    assumptions.push(
      statement(
        "device-marking",
        "The device has {poles} poles or more, marked {voltageRating} or higher.",
        {
          poles: connection.poles,
          voltageRating: connection.voltageRating,
        },
      ),
    );
  }
  if (device) checkDevice(findings, input, plate, connection, device, fuse);
  else findings.open.push(statement("device-not-stated", "State the fitted device to check it."));
  if (permitted.ratings.length === 0 && !device) {
    const text = "No standard size from {ampacity} to {maximum}.";
    const values = { ampacity: ampere(ampacity), maximum: ampere(maximum) };
    if (rules.deviceProtectsConductor) judge(findings, false, "device-rating", text, values);
    else cautions.push(statement("device-below-ampacity", text, values));
  }

  // A breaker above the marked maximum may feed fuses that keep it; then it protects the wire by 240.4.
  const tooLarge = device && device.rating.si > maximum;
  const feeder = tooLarge && fuse !== undefined && fuse <= maximum;
  const deviceRating = device && (!tooLarge || feeder) ? device.rating : permitted.rating;
  const demand = {
    rules,
    wiring,
    phases,
    deviceRating,
    ampacity: input.minimumCircuitAmpacity,
    device: device?.kind ?? (marking === "fuse only" ? "fuse" : "breaker"),
    equipment: feeder ? "other" : equipment,
  } as const;
  const conductor = minimumConductor(demand);
  const fittedConductor = fitted && usableAmpacity({ ...demand, size: fitted });
  if (fittedConductor) {
    judge(
      findings,
      isEnough(demand, fittedConductor.size, fittedConductor.usable.si),
      "conductor",
      "{size} carries {usable} here; {ampacity} needed, behind {rating}.",
      {
        size: fittedConductor.size,
        usable: fittedConductor.usable,
        ampacity: input.minimumCircuitAmpacity,
        rating: deviceRating,
      },
    );
  } else {
    findings.open.push(
      statement("conductor-not-stated", "State the fitted conductor to check it."),
    );
  }

  const grounding = equipmentGrounding({
    rules,
    material: wiring.material,
    deviceRating,
    minimumConductor: conductor.size,
    conductor: fitted ?? conductor.size,
  });
  if (fittedGrounding) {
    judge(
      findings,
      sizes.indexOf(fittedGrounding) >= sizes.indexOf(grounding.size),
      "equipment-grounding",
      "Grounding conductor {fitted}, at least {size}.",
      { fitted: fittedGrounding, size: grounding.size },
    );
  }

  const { condition = 3 } = disconnect?.workingSpace ?? {};
  const load = switchedCurrent(input, ampacity, findings);
  const nonFusedAllowed = marking !== "fuse only" || device?.kind === "fuse";
  const required = requiredDisconnect(
    rules,
    {
      current: load,
      fuses: fuse ?? (nonFusedAllowed ? 0 : permitted.rating.si),
      nonFusedAllowed,
      toGround: connection.voltsToGround,
    },
    oneOf("installed.disconnect.workingSpace.condition", condition, [1, 2, 3]),
  );
  if (disconnect) {
    checkDisconnect(findings, disconnect, required, maximum, rules.workingSpace?.required === true);
  }
  const drop = circuitDrop(input, fitted ?? conductor.size, conductor.size, findings);
  const { groundFault } = rules;
  if (
    groundFault &&
    occupancy !== "other" &&
    phases === 1 &&
    connection.voltsToGround <= groundFault.toGround &&
    deviceRating.si <= groundFault.rating
  ) {
    cautions.push(groundFault.advice);
  }
  cautions.push(...rules.advice, ...workCautions);
  return {
    ...verdict(findings),
    sources: rules.citations,
    rules: rules.name,
    device: { ...permitted, ...connection },
    conductor,
    ...(fittedConductor && { fittedConductor }),
    equipmentGrounding: grounding,
    disconnect: required,
    ...(drop && { voltageDrop: drop }),
  };
}
