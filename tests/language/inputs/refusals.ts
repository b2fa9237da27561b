// What it takes to hear each hint of what goes into a field: sound inputs of the fault tests, spoiled in one place.
import { english } from "hvac-install-math/language/en";
import {
  degC,
  ft,
  type Kind,
  oz,
  ozPerFt,
  psi,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { complete } from "../../commissioning/complete-record.ts";
import { inputs as chargeLimit } from "../../faults/inputs/charge-limit.ts";
import { inputs as circuitProtection } from "../../faults/inputs/circuit-protection.ts";
import { inputs as lineSet } from "../../faults/inputs/line-set.ts";
import { inputs as logs } from "../../faults/inputs/logs.ts";
import { inputs as operatingCheck } from "../../faults/inputs/operating-check.ts";
import { inputs as pressureTest } from "../../faults/inputs/pressure-test.ts";
import type { Further } from "../results.ts";

const kinds = Object.keys(english.messages)
  .filter((code) => code.startsWith("quantity.kind."))
  .map((code) => code.slice("quantity.kind.".length) as Kind);
const length = { kind: "length", value: 1, unit: "ft" };
const mass = { kind: "mass", value: 1, unit: "oz" };

/** The first sound input of a function. */
const first = (calls: readonly unknown[] | undefined) =>
  (calls as readonly (readonly Record<string, never>[])[])[0]?.[0] ?? {};
const circuit = first(circuitProtection.groundFaultProtection);
const rooms = first(chargeLimit.assessRooms);
const log = first(pressureTest.assessPressureLog);
const [text, format] = (logs.readLog as unknown as [string, Record<string, unknown>][])[1] ?? [];
const entry = { path: "name", by: "N. N.", reason: "typing error" };

export const refusals: readonly (readonly [module: string, inputs: Further])[] = [
  [
    "quantity",
    {
      fromJSON: [...kinds.map((kind) => [kind === "length" ? mass : length, kind]), [length, 3]],
      equals: [[1, 2, 3]],
      unitBySymbol: [["length", "furlong"]],
      quotient: [[oz(3), ozPerFt(0), ft]],
    },
  ],
  ["assessment", { normalProbability: [["half"]] }],
  ["line-set", { assessLineRun: [[{ ...first(lineSet.assessLineRun), bends: 1.5 }]] }],
  [
    "circuit-protection",
    {
      groundFaultProtection: [
        [{ ...circuit, powerConversion: "yes" }],
        [{ ...circuit, date: "yesterday" }],
      ],
    },
  ],
  [
    "charge-limit",
    { assessRooms: [[{ ...rooms, rooms: [...(rooms.rooms ?? []), ...(rooms.rooms ?? [])] }]] },
  ],
  [
    "pressure-test",
    {
      testVolume: [[{}]],
      assessPressureLog: [[{ ...log, readings: [log.readings?.[0], log.readings?.[0]] }]],
    },
  ],
  [
    "logs",
    { readLog: [[text, { ...format, time: { ...(format?.time as object), zone: "Nowhere" } }]] },
  ],
  [
    "operating-check",
    {
      assessChargeByGauge: [
        [
          {
            ...first(operatingCheck.assessChargeByGauge),
            meteringDevice: "orifice",
            method: "superheat",
            pressureDrop: psi(3),
          },
        ],
      ],
    },
  ],
  [
    "condensate",
    {
      humidityRatio: [[{ dryBulb: degC(45), wetBulb: degC(2) }, standardAtmosphere]],
    },
  ],
  [
    "commissioning",
    {
      completeRecord: [
        [
          {
            ...complete,
            history: [
              { ...entry, at: "2026-06-02" },
              { ...entry, at: "2026-06-01" },
            ],
          },
        ],
      ],
    },
  ],
];
