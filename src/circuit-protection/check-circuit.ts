// Is the input what it should be? Every field of a circuit checked once, before anything is worked out.
// Follows the types of circuit-input.ts; the wiring is checked where its tables are read (route.ts).
// Does not cover whether the circuit is right: that is judged afterwards.
import { dayOf, flagOf, listOf, numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { energyOf } from "./adiabatic.ts";
import { amperesOf, materialOf, maximumOf, rulesOf } from "./checks.ts";
import type {
  CircuitInput,
  FittedDevice,
  FittedDisconnect,
  InstalledCircuit,
  ProtectionMarking,
} from "./circuit-input.ts";
import { type Connection, connectionOf } from "./connection.ts";
import { textsOf } from "./ground-fault.ts";
import { type Route, routeOf } from "./route.ts";
import type { CircuitRules, RuleFamily, WiringOf } from "./rules/circuit-rules.ts";
import { tidy } from "./standard-ratings.ts";
import { sizesOf } from "./table.ts";

/** The nameplate in A, with what shares its circuit; `maximum` is infinite where none is stated. */
export interface CheckedPlate {
  /** The unit's own ampacity. */
  readonly own: number;
  /** What the circuit has to carry. */
  readonly ampacity: number;
  readonly maximum: number;
  readonly marking: ProtectionMarking;
  /** Half of the last digit that is printed. */
  readonly rounding: number;
  /** The stated rated-load current, of the unit. */
  readonly statedLoad: number | undefined;
  readonly shared: number;
  /** What shares the circuit draws, in A. */
  readonly sharedCurrent: number;
}

/** A circuit whose fields are all what they should be. */
export interface CheckedCircuit<F extends RuleFamily = RuleFamily> {
  readonly input: CircuitInput<F>;
  readonly rules: CircuitRules<F>;
  readonly connection: Connection;
  readonly plate: CheckedPlate;
  readonly installed: InstalledCircuit<F>;
  /** Rating of fuses in the disconnect. */
  readonly fuse: number | undefined;
  readonly date: string | undefined;
  /** Where the run reads the tables, behind a device of a rating. */
  readonly routeBehind: (rating: number) => Route;
  /** Where the whip reads them. */
  readonly whipBehind: (rating: number) => Route;
  readonly whipWiring: WiringOf<F>;
}

/** Checks the whole input. */
export function checkCircuit<F extends RuleFamily>(input: CircuitInput<F>): CheckedCircuit<F> {
  const rules = rulesOf(input);
  const { supply, wiring, installed = {} as InstalledCircuit<F>, date } = input;
  if (date !== undefined) dayOf("date", date);
  const connection = connectionOf(rules, supply, "supply");
  const plate = checkPlate(input, rules);
  checkOptions(input);
  checkInstalled(rules, installed);
  const { fuse } = installed.disconnect ?? {};
  const whipWiring = installed.whip?.wiring ?? wiring;
  const route = (rating: number) => routeOf(rules, wiring, supply.phases, rating);
  const whip = (rating: number) =>
    routeOf(rules, whipWiring, supply.phases, rating, "installed.whip.wiring");
  return {
    input,
    rules,
    connection,
    plate,
    installed,
    fuse: fuse === undefined ? undefined : amperesOf("installed.disconnect.fuse", fuse),
    date,
    routeBehind: route,
    whipBehind: whip,
    whipWiring,
  };
}

const markings: readonly ProtectionMarking[] = [
  "fuse only",
  "fuse or HACR breaker",
  "fuse or breaker",
  "max overcurrent protection",
];

/** The figures of the nameplate, in A; metric rules also take a rated current and a largest fuse. */
function checkPlate(input: CircuitInput, rules: CircuitRules): CheckedPlate {
  const metric = rules.family === "metric";
  const { ratedCurrent, maximumFuse, printedTo, ratedLoadCurrent, protectionMarking } = input;
  const useRated = metric && input.minimumCircuitAmpacity === undefined;
  const marked = useRated ? ratedCurrent : input.minimumCircuitAmpacity;
  const largest = input.maximumOvercurrentProtection ?? (metric ? maximumFuse : undefined);
  const own = amperesOf(
    useRated ? "ratedCurrent" : "minimumCircuitAmpacity",
    marked as Quantity<"current">,
  );
  const unknown = metric && largest === undefined;
  const most = unknown
    ? Infinity
    : maximumOf("maximumOvercurrentProtection", largest as Quantity<"current">, own);
  const whole = Number.isInteger(tidy(own)) ? 1 : 0.1;
  const digit = printedTo === undefined ? whole : amperesOf("printedTo", printedTo);
  const limits = { above: 0, max: own + digit / 2 };
  const shared = checkShared(input);
  return {
    own,
    ampacity: tidy(own + shared.ampacity),
    maximum: Math.min(most, shared.maximum),
    marking: oneOf(
      "protectionMarking",
      protectionMarking ?? "max overcurrent protection",
      markings,
    ),
    rounding: digit / 2,
    statedLoad: ratedLoadCurrent && siOf("ratedLoadCurrent", ratedLoadCurrent, "current", limits),
    shared: shared.count,
    sharedCurrent: shared.current,
  };
}

/**
 * What shares the circuit: ampacities of units as marked, other loads with 125 % where they run for long (210.19(A)),
 * and the smallest of the maximums. Adding marked ampacities counts the 25 % of every unit, on the safe side of 440.33.
 */
function checkShared({ sharedWith = [] }: CircuitInput) {
  const loads = listOf("sharedWith", sharedWith, 100).map((load, i) => {
    const at = `sharedWith[${i}]`;
    const kind = oneOf(`${at}.kind`, objectOf(at, load).kind, ["unit", "other"]);
    const current = amperesOf(`${at}.current`, load.current);
    const { continuous = true, maximumOvercurrentProtection: most } = load;
    flagOf(`${at}.continuous`, continuous);
    return {
      current,
      ampacity: kind === "other" && continuous ? 1.25 * current : current,
      maximum: most ? amperesOf(`${at}.maximumOvercurrentProtection`, most) : Infinity,
    };
  });
  const sum = (of: "current" | "ampacity") => loads.reduce((all, load) => all + load[of], 0);
  return {
    count: loads.length,
    current: sum("current"),
    ampacity: sum("ampacity"),
    maximum: Math.min(Infinity, ...loads.map(({ maximum }) => maximum)),
  };
}

/** The optional figures and words beside nameplate and installation. */
function checkOptions(input: CircuitInput): void {
  const { equipment, occupancy, earthing, powerFactor, powerConversion, nameplateReadAgain } =
    input;
  if (equipment !== undefined) oneOf("equipment", equipment, ["motor-compressor", "other"]);
  if (occupancy !== undefined) oneOf("occupancy", occupancy, ["dwelling", "other"]);
  if (earthing !== undefined) oneOf("earthing", earthing, ["TN", "TT"]);
  if (powerFactor !== undefined) numberOf("powerFactor", powerFactor, { min: 0.01, max: 1 });
  if (powerConversion !== undefined) flagOf("powerConversion", powerConversion);
  if (nameplateReadAgain !== undefined) flagOf("nameplateReadAgain", nameplateReadAgain);
  for (const name of ["lockedRotorCurrent", "largestLoadCurrent"] as const) {
    const current = input[name];
    if (current !== undefined) amperesOf(name, current);
  }
  const { rules, groundFaultText: text } = input;
  const texts = rules.groundFault ? textsOf(rules.groundFault) : [];
  if (text !== undefined) oneOf("groundFaultText", text, texts);
}

/** What is fitted. */
function checkInstalled<F extends RuleFamily>(
  rules: CircuitRules<F>,
  installed: InstalledCircuit<F>,
): void {
  objectOf("installed", installed);
  const { device, disconnect, whip, serviceReceptacle, groundingMaterial, fault } = installed;
  const sizes = sizesOf(rules);
  for (const name of ["conductor", "equipmentGrounding"] as const) {
    const size = installed[name];
    if (size !== undefined) oneOf(`installed.${name}`, size, sizes);
  }
  const flags = ["aluminumTerminals", "groundingByRaceway", "compressionFittings"] as const;
  for (const name of flags) {
    const flag = installed[name];
    if (flag !== undefined) flagOf(`installed.${name}`, flag);
  }
  if (whip !== undefined) {
    oneOf("installed.whip.conductor", objectOf("installed.whip", whip).conductor, sizes);
  }
  if (groundingMaterial !== undefined) materialOf("installed.groundingMaterial", groundingMaterial);
  if (fault !== undefined) energyOf("installed.fault", fault);
  const { residualCurrent } = installed;
  if (residualCurrent) {
    // From the 5 mA of UL 943 to what large switchboards have, by IEC 60755 (both from memory).
    siOf("installed.residualCurrent", residualCurrent, "current", { min: 0.004, max: 1 });
  } else if (residualCurrent !== undefined) flagOf("installed.residualCurrent", residualCurrent);
  if (serviceReceptacle !== undefined) {
    const at = "installed.serviceReceptacle";
    siOf(`${at}.distance`, objectOf(at, serviceReceptacle).distance, "length", { min: 0 });
    const { onLoadSide } = serviceReceptacle;
    if (onLoadSide !== undefined) flagOf(`${at}.onLoadSide`, onLoadSide);
  }
  if (device !== undefined) checkDevice(rules, device);
  if (disconnect !== undefined) checkDisconnect(disconnect);
}

function checkDevice(rules: CircuitRules, device: FittedDevice): void {
  const at = "installed.device";
  amperesOf(`${at}.rating`, objectOf(at, device).rating);
  oneOf(`${at}.kind`, device.kind, ["breaker", "fuse"]);
  const { poles, voltageRating, curve, hacr } = device;
  if (curve !== undefined) oneOf(`${at}.curve`, curve, ["B", "C", "D"]);
  if (hacr !== undefined) flagOf(`${at}.hacr`, hacr);
  if (poles !== undefined) oneOf(`${at}.poles`, poles, [1, 2, 3]);
  const markings = rules.voltageRatings.rows.map(([name]) => name);
  if (voltageRating !== undefined) oneOf(`${at}.voltageRating`, voltageRating, markings);
}

function checkDisconnect(disconnect: FittedDisconnect): void {
  const at = "installed.disconnect";
  amperesOf(`${at}.rating`, objectOf(at, disconnect).rating);
  const { distance, workingSpace: space } = disconnect;
  if (distance !== undefined) siOf(`${at}.distance`, distance, "length", { min: 0 });
  const flags = ["visible", "readilyAccessible", "inTheWay", "lockable", "onUnit"] as const;
  for (const name of flags) {
    const flag = disconnect[name];
    if (flag !== undefined) flagOf(`${at}.${name}`, flag);
  }
  if (space === undefined) return;
  const { condition = 3 } = objectOf(`${at}.workingSpace`, space);
  oneOf(`${at}.workingSpace.condition`, condition, [1, 2, 3]);
  for (const name of ["depth", "width", "height"] as const) {
    siOf(`${at}.workingSpace.${name}`, space[name], "length", { min: 0 });
  }
  const { equipmentWidth } = space;
  if (equipmentWidth !== undefined) {
    siOf(`${at}.workingSpace.equipmentWidth`, equipmentWidth, "length", { min: 0 });
  }
}
