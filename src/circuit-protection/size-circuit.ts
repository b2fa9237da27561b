// Which sizes does this circuit need, and what do the fitted ones carry? Worked out before anything is judged.
// Follows the rule set; 240.4(G) for compressor circuits, 240.4 where a breaker feeds fuses at the unit.
// Does not cover whether what is fitted is right: the files named judge-… do.

import { frozen } from "../quantity/frozen.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { type CircuitDrop, circuitDrop } from "./circuit-drop.ts";
import type { DeviceKind, EquipmentKind } from "./circuit-kinds.ts";
import { type EquipmentGrounding, groundingOf } from "./equipment-grounding.ts";
import { beyondTable, type PlainDemand, smallestConductor } from "./minimum-conductor.ts";
import { type PermittedDevices, permittedDevices } from "./permitted-devices.ts";
import { type RequiredDisconnect, requiredDisconnect } from "./required-disconnect.ts";
import type { Route } from "./route.ts";
import type { RuleFamily } from "./rules/index.ts";
import { ampacityOf, type UsableAmpacity } from "./usable-ampacity.ts";

/** What a section of the circuit is and has to do. */
export interface SizedSection<F extends RuleFamily> {
  readonly route: Route;
  readonly demand: PlainDemand;
  /** The smallest conductor that does; missing where no table gives one. */
  readonly smallest?: UsableAmpacity<F> | undefined;
  /** The fitted one; missing where none is stated or no table gives it. */
  readonly fitted?: UsableAmpacity<F> | undefined;
}

/** The sizes of a circuit. */
export interface CircuitSizes<F extends RuleFamily = RuleFamily> {
  readonly permitted: PermittedDevices;
  /** What the circuit feeds, and how that is known. */
  readonly equipment: {
    readonly kind: EquipmentKind;
    readonly by: "input" | "nameplate" | "unknown";
  };
  /** Rating of the device ahead in A: the fitted one where it may stand there. */
  readonly ahead: number;
  readonly run: SizedSection<F>;
  readonly whip?: SizedSection<F> | undefined;
  readonly grounding?: EquipmentGrounding<F> | undefined;
  readonly disconnect: RequiredDisconnect;
  /** What runs together in A, and how it is known. */
  readonly load: { readonly amperes: number; readonly by: "input" | "ampacity" | "disbelieved" };
  readonly drop?: CircuitDrop<F> | undefined;
}

/** Works out every size. */
export function sizeCircuit<F extends RuleFamily>(circuit: CheckedCircuit<F>): CircuitSizes<F> {
  const { rules, input, plate, installed, fuse } = circuit;
  const permitted = permittedDevices(rules, plate);
  const equipment = equipmentOf(circuit);
  const { device } = installed;
  // A breaker above the marked maximum may feed fuses that keep it; then it protects the wire by 240.4.
  const tooLarge = device !== undefined && device.rating.si > plate.maximum;
  const feeds = tooLarge && fuse !== undefined && fuse <= plate.maximum;
  const ahead = device && (!tooLarge || feeds) ? device.rating.si : permitted.rating.si;
  const kind = device?.kind ?? (plate.marking === "fuse only" ? "fuse" : "breaker");
  const demand = (rating: number, by: DeviceKind, feeds: EquipmentKind): PlainDemand => ({
    ampacity: plate.ampacity,
    rating,
    device: by,
    equipment: feeds,
    material: input.wiring.material,
  });
  const run = sectionOf(
    circuit,
    circuit.routeBehind(ahead),
    demand(ahead, kind, feeds ? "other" : equipment.kind),
    installed.conductor,
  );
  const whip =
    installed.whip &&
    sectionOf(
      circuit,
      circuit.whipBehind(fuse ?? ahead),
      {
        ...demand(fuse ?? ahead, fuse === undefined ? kind : "fuse", equipment.kind),
        material: circuit.whipWiring.material,
      },
      installed.whip.conductor,
    );
  const load = loadOf(circuit);
  const conductor = installed.conductor ?? run.smallest?.size;
  const grounding =
    conductor && groundingFor(circuit, run, ahead, equipment.by === "unknown", conductor);
  const drop =
    conductor && circuitDrop(circuit, conductor, run.smallest?.size ?? conductor, load.amperes);
  return frozen({
    permitted,
    equipment,
    ahead,
    run,
    ...(whip && { whip }),
    ...(grounding && { grounding }),
    disconnect: disconnectFor(circuit, permitted, load.amperes),
    load,
    ...(drop && { drop }),
  });
}

/**
 * What the circuit feeds. Where it is not stated, a nameplate whose maximum is 1.3 times its ampacity or more shows a
 * motor as the largest load: by UL 1995, 37.14 and 37.15, maximum − ampacity is at most that motor's current, so that
 * the motor is at least half of the load. A heater's nameplate never gets there. Else: the safe side.
 */
function equipmentOf({ rules, input, plate }: CheckedCircuit): CircuitSizes["equipment"] {
  if (input.equipment !== undefined) return { kind: input.equipment, by: "input" };
  if (rules.deviceProtectsConductor) return { kind: "motor-compressor", by: "input" };
  const shows = plate.shared === 0 && plate.maximum >= 1.3 * (plate.own + plate.rounding);
  return shows ? { kind: "motor-compressor", by: "nameplate" } : { kind: "other", by: "unknown" };
}

/** One section with its smallest and its fitted conductor. */
function sectionOf<F extends RuleFamily>(
  { rules }: CheckedCircuit<F>,
  route: Route,
  demand: PlainDemand,
  size: CheckedCircuit<F>["installed"]["conductor"],
): SizedSection<F> {
  const smallest = rules.ampacity && smallestConductor(rules, route, demand);
  const fitted = size && ampacityOf(rules, route, size);
  const table = rules.ampacity?.some(({ columns }) => columns.includes(route.column));
  if (table && !smallest && !fitted) {
    throw beyondTable("minimumCircuitAmpacity", rules, demand);
  }
  return { route, demand, ...(smallest && { smallest }), ...(fitted && { fitted }) };
}

/** The sum that runs together: stated, unless it is less than belongs to the ampacity; else the ampacity itself. */
function loadOf({ rules, plate }: CheckedCircuit): CircuitSizes["load"] {
  const { statedLoad: stated, own, rounding, sharedCurrent } = plate;
  const with_ = (amperes: number) => twelveDigits(amperes + sharedCurrent);
  if (stated === undefined) return { amperes: with_(own), by: "ampacity" };
  // UL 1995, 37.14: MCA ≤ 1.25 × the sum, so that less than MCA/1.25 is not all of it.
  const believed =
    rules.ampacityFactor === 1 || isAtLeast(stated, (own - rounding) / rules.ampacityFactor);
  return believed
    ? { amperes: with_(stated), by: "input" }
    : { amperes: with_(own), by: "disbelieved" };
}

/** The grounding conductor; enlargement counts from the smallest conductor that carries the load at all. */
function groundingFor<F extends RuleFamily>(
  { rules, input, installed }: CheckedCircuit<F>,
  { route, demand }: SizedSection<F>,
  ahead: number,
  unknown: boolean,
  conductor: NonNullable<CheckedCircuit<F>["installed"]["conductor"]>,
): EquipmentGrounding<F> | undefined {
  const { material } = input.wiring;
  // What is not known to be fed is taken as a compressor here: that asks for more.
  const carrying = { ...demand, ...(unknown && { equipment: "motor-compressor" as const }) };
  const minimum = rules.ampacity && smallestConductor(rules, route, carrying);
  const { groundingMaterial = material } = installed;
  return groundingOf(rules, {
    material,
    groundingMaterial,
    rating: ahead,
    minimum: minimum?.size ?? conductor,
    conductor,
  });
}

function disconnectFor(
  { rules, plate, input, installed, fuse, connection }: CheckedCircuit,
  permitted: PermittedDevices,
  load: number,
): RequiredDisconnect {
  const { device, disconnect } = installed;
  const nonFusedAllowed = plate.marking !== "fuse only" || device?.kind === "fuse";
  return requiredDisconnect(
    rules,
    {
      load,
      largest: input.largestLoadCurrent?.si,
      fuses: fuse ?? (nonFusedAllowed ? 0 : permitted.rating.si),
      nonFusedAllowed,
      toGround: connection.voltsToGround,
    },
    disconnect?.workingSpace?.condition ?? 3,
  );
}
