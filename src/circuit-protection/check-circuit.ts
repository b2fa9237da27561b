// Is the input what it should be? Every field of a circuit checked once, before anything is worked out.
// Follows the types of circuit-input.ts; the wiring is checked where its tables are read (route.ts).
// Does not cover whether the circuit is right: that is judged afterwards.

import { dayOf, flagOf, listOf, numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { energyOf } from "./adiabatic.ts";
import { amperesOf, materialOf, maximumOf, rulesOf } from "./checks.ts";
import type {
  CircuitInput,
  FittedDevice,
  FittedDisconnect,
  InstalledCircuit,
  ProtectionMarking,
  ServiceReceptacle,
} from "./circuit-input.ts";
import { type Connection, connectionOf } from "./connection.ts";
import { textsOf } from "./ground-fault.ts";
import { type Route, routeOf } from "./route.ts";
import type { CircuitRules, RuleFamily, WiringOf } from "./rules/index.ts";
import { sizesOf } from "./table.ts";
import { checkVerifications } from "./verification.ts";

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
  const connection = connectionOf(rules, supply, "supply");
  fields(optionsOf(rules))("", input);
  const plate = checkPlate(input, rules);
  installedOf(rules)("installed", installed);
  const { wiring: whipWiring = wiring } = installed.whip ?? {};
  const route = (rating: number) => routeOf(rules, wiring, supply.phases, rating);
  const whip = (rating: number) =>
    routeOf(rules, whipWiring, supply.phases, rating, "installed.whip.wiring");
  return {
    input,
    rules,
    connection,
    plate,
    installed,
    fuse: installed.disconnect?.fuse?.si,
    date,
    routeBehind: route,
    whipBehind: whip,
    whipWiring,
  };
}

/** The figures of the nameplate, in A; metric rules also take a rated current and a largest fuse. */
function checkPlate(input: CircuitInput, rules: CircuitRules): CheckedPlate {
  const metric = rules.family === "metric";
  const { ratedLoadCurrent, protectionMarking: marking = "max overcurrent protection" } = input;
  const of = <N extends keyof CircuitInput>(usual: N, printed: N): N =>
    metric && input[usual] === undefined ? printed : usual;
  const rated = of("minimumCircuitAmpacity", "ratedCurrent");
  const largest = of("maximumOvercurrentProtection", "maximumFuse");
  const own = amperesOf(rated, input[rated] as Quantity<"current">);
  const unknown = metric && input[largest] === undefined;
  const most = unknown ? Infinity : maximumOf(largest, input[largest] as Quantity<"current">, own);
  const whole = Number.isInteger(twelveDigits(own)) ? 1 : 0.1;
  const digit = input.printedTo?.si ?? whole;
  const limits = { above: 0, max: own + digit / 2 };
  const shared = checkShared(input);
  return {
    own,
    ampacity: twelveDigits(own + shared.ampacity),
    maximum: Math.min(most, shared.maximum),
    marking,
    rounding: digit / 2,
    statedLoad:
      ratedLoadCurrent === undefined
        ? undefined
        : siOf("ratedLoadCurrent", ratedLoadCurrent, "current", limits),
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
      maximum:
        most === undefined ? Infinity : amperesOf(`${at}.maximumOvercurrentProtection`, most),
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

type Check<T> = (path: string, value: T) => unknown;
type Checks<T> = { readonly [K in keyof T]?: Check<NonNullable<T[K]>> };

/** The check of an object: the fields that are there, and those that have to be. */
const fields =
  <T extends object>(checks: Checks<T>, needed: readonly (keyof T)[] = []): Check<T> =>
  (path, of) => {
    objectOf(path, of);
    for (const name of Object.keys(checks) as (keyof T & string)[]) {
      const value = of[name];
      const isThere = value !== undefined || needed.includes(name);
      if (isThere)
        checks[name]?.(path ? `${path}.${name}` : name, value as NonNullable<typeof value>);
    }
  };

const among =
  <V extends string | number>(...allowed: readonly V[]): Check<V> =>
  (path, value) =>
    oneOf(path, value, allowed);
const lengthOf: Check<Quantity<"length">> = (path, value) =>
  siOf(path, value, "length", { min: 0 });

/** The optional figures and words beside nameplate and installation. */
const optionsOf = ({ groundFault }: CircuitRules): Checks<CircuitInput> => ({
  date: dayOf,
  printedTo: amperesOf,
  protectionMarking: among(
    "fuse only",
    "fuse or HACR breaker",
    "fuse or breaker",
    "max overcurrent protection",
  ),
  equipment: among("motor-compressor", "other"),
  occupancy: among("dwelling", "other"),
  earthing: among("TN", "TT"),
  powerFactor: (path, value) => numberOf(path, value, { min: 0.01, max: 1 }),
  powerConversion: flagOf,
  nameplateReadAgain: flagOf,
  lockedRotorCurrent: amperesOf,
  largestLoadCurrent: amperesOf,
  verifications: checkVerifications,
  groundFaultText: among(...(groundFault ? textsOf(groundFault) : [])),
});

/** What is fitted. */
function installedOf<F extends RuleFamily>(rules: CircuitRules<F>): Check<InstalledCircuit<F>> {
  const size = among(...sizesOf(rules));
  return fields<InstalledCircuit<F>>({
    conductor: size,
    equipmentGrounding: size,
    aluminumTerminals: flagOf,
    groundingByRaceway: flagOf,
    compressionFittings: flagOf,
    whip: fields({ conductor: size }, ["conductor"]),
    groundingMaterial: materialOf,
    fault: energyOf,
    residualCurrent: (path, value) =>
      // From the 5 mA of UL 943 to what large switchboards have, by IEC 60755 (both from memory).
      value ? siOf(path, value, "current", { min: 0.004, max: 1 }) : flagOf(path, value),
    serviceReceptacle: fields<ServiceReceptacle>({ distance: lengthOf, onLoadSide: flagOf }, [
      "distance",
    ]),
    device: fields<FittedDevice>(
      {
        rating: amperesOf,
        kind: among("breaker", "fuse"),
        curve: among("B", "C", "D"),
        hacr: flagOf,
        poles: among(1, 2, 3, 4),
        voltageRating: among(...rules.voltageRatings.rows.map(([name]) => name)),
      },
      ["rating", "kind"],
    ),
    disconnect: fields<FittedDisconnect>(
      {
        rating: amperesOf,
        fuse: amperesOf,
        distance: lengthOf,
        visible: flagOf,
        readilyAccessible: flagOf,
        inTheWay: flagOf,
        lockable: flagOf,
        onUnit: flagOf,
        workingSpace: fields<NonNullable<FittedDisconnect["workingSpace"]>>(
          {
            condition: among(1, 2, 3),
            depth: lengthOf,
            width: lengthOf,
            height: lengthOf,
            equipmentWidth: lengthOf,
          },
          ["depth", "width", "height"],
        ),
      },
      ["rating"],
    ),
  });
}
