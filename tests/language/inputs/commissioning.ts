// What else it takes to hear what the verdict on an installation says: sound records, those of the examples, each part
// of the complete one missing or of no use, and one change at a time.
import { readFileSync } from "node:fs";
import type * as commissioning from "hvac-install-math/commissioning";
import { amend, type InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  degC,
  degF,
  degreeAngle,
  deltaF,
  ft,
  ftLb,
  hour,
  inch,
  kPaa,
  kW,
  lb,
  liter,
  literPerHour,
  MPag,
  m,
  m2,
  m3,
  mm,
  newtonMeter,
  oz,
  percent,
  psi,
  psia,
  psig,
  volt,
  watt,
} from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { rules } from "../../commissioning/assess.ts";
import { type Change, changed } from "../../commissioning/changed.ts";
import { complete } from "../../commissioning/complete-record.ts";
import { threeHeads } from "../../commissioning/three-heads.ts";
import { casaQuattroFloor, sound } from "../../commissioning/twelve.ts";
import type { Inputs } from "../../faults/catalogue.ts";

const examples = ["worked", "failing", "half-finished"].map((name) =>
  recordCodec.parse(
    readFileSync(new URL(`../../../examples/${name}-install/record.json`, import.meta.url), "utf8"),
  ),
);
const word = { by: "N. N.", at: "2026-05-04" } as const;
const [test] = complete.pressureTests ?? [];
const [watch] = complete.evacuations ?? [];
const [run] = complete.runs ?? [];
const air = (supply: number, current: number, change: object = {}) => ({
  mode: "cooling",
  indoorTemperature: degF(76),
  outdoorTemperature: degF(90),
  airSide: { supplyAir: degF(supply), current: ampere(current), fullSpeed: true, ...change },
  at: "2026-05-05T14:00",
});
const sensors = {
  "instruments.airThermometer": { accuracy: deltaF(1), resolution: deltaF(0.1) },
  "instruments.clampMeter": { accuracy: ampere(0.2), resolution: ampere(0.1) },
};
const shared = { kind: "other", current: ampere(0.01) };
const measured = (...readings: Parameters<typeof air>) => ({
  ...sensors,
  "operation[0]": air(...readings),
});
const waiver = (step: string, reason?: string, more: object = {}) => ({
  waivers: [{ ...word, step, ...(reason && { reason }), ...more }],
});

/** Changes of the complete record, most of which break it. */
const changes: readonly Change[] = [
  // form
  { "runs[0].tubing.length": ft(-3) },
  { "runs[0].tubing.bends": -1 },
  { "charge.tolerance": oz(30) },
  { "charge.tolerance": oz(50) },
  { "instruments.vacuumGauge.resolution": [] },
  { "power.circuits[0].sharedWith": Array.from({ length: 101 }, () => shared) },
  { "equipment.manual.testHold": hour(0) },
  { "equipment.refrigerant": "R-999" },
  { "equipment.refrigerant": "R-744" },
  { "site.altitude": ft(60_000) },
  { "pressureTests[0].readings": [] },
  { "pressureTests[0].readings": test?.readings?.slice(0, 1) },
  { "evacuations[0].readings": watch?.readings?.slice(0, 2) },
  { "runs[0].drain.slope": { gap: mm(12), levelLength: mm(0) } },
  // waivers
  waiver("joints", "existing-lines"),
  { ...waiver("joints", "existing-lines"), "runs[0].joints": undefined },
  waiver("drain"),
  waiver("drain", "factory-line-set"),
  waiver("drain", "heats-only", { by: "." }),
  { waivers: [0, 1].map(() => waiver("drain", "heats-only").waivers[0]) },
  { ...waiver("room-limit", "no-enclosed-room"), "equipment.refrigerant": "R-32" },
  waiver("line-run", "factory-line-set", { run: "Z" }),
  { ...waiver("room-limit", "no-enclosed-room"), "runs[0].room": undefined },
  { "equipment.construction": "monobloc" },
  { "equipment.construction": "split" },
  { "equipment.construction": "quick-connect" },
  // line run and joints
  { "runs[0].joints[0]": { kind: "flare", tube: "1/4", torque: newtonMeter(5) } },
  { "runs[0].joints[0]": { kind: "flare", tube: "1/4", turn: degreeAngle(70) } },
  {
    "runs[0].joints[0]": {
      kind: "flare",
      tube: "1/4",
      torque: ftLb(11.5),
      flareDiameter: mm(9),
      inspected: false,
    },
  },
  { "runs[0].joints[0]": { kind: "brazed", nitrogenFlowed: true } },
  { "runs[0].joints[0]": { kind: "brazed", nitrogenFlowed: false } },
  { "runs[0].joints[0]": { kind: "pressed", inspected: true } },
  { "runs[0].joints[0].name": "gas, out", "runs[0].joints[1].name": "gas, out" },
  { "runs[0].joints[0]": { kind: "coupling", inspected: true } },
  { "runs[0].joints[3]": undefined },
  {
    "runs[0].joints": run?.joints?.map(({ at: _, ...joint }) => joint),
    "runs[0].tubing.at": undefined,
  },
  { "runs[0].tubing.jointCount": 3 },
  { "runs[0].tubing.jointCount": 1, "runs[0].joints": run?.joints?.slice(0, 1) },
  { "runs[0].tubing.vapor.outsideDiameter": inch(0.5) },
  { "runs[0].tubing.vapor.outsideDiameter": inch(0.5), "runs[0].tubing.jointCount": 5 },
  { "runs[0].tubing.vapor.outsideDiameter": inch(0.875) },
  { "runs[0].tubing.vapor.wall": inch(0.01) },
  { "runs[0].tubing.liquid.outsideDiameter": inch(0.5) },
  { "runs[0].tubing.length": ft(500) },
  { "runs[0].tubing.lift": ft(200) },
  { "runs[0].tubing.otherVolume": liter(600) },
  { "runs[0].indoorUnits[0].capacity": watt(260) },
  { "power.circuits[0].installed.equipmentGrounding": "2 AWG" },
  { "runs[0].port": "A", "runs[1]": { name: "B", port: "A" } },
  { "equipment.manual.preChargedLength": ft(80) },
  { "equipment.manual.run.maximumLength": ft(660) },
  // tests
  { "pressureTests[0].readings[1].pressure": MPag(2.9) },
  { "pressureTests[0].readings[0].elapsed": hour(20) },
  { "pressureTests[0].criterion.maximumDrop": psi(60) },
  { "pressureTests[0].readings[1].pressure": psig(50), "equipment.manual.testPressure": psig(40) },
  {
    "equipment.manual.testPressure": psig(40),
    "pressureTests[0].readings": [0, 14].map((hours) => ({
      pressure: psig(50),
      temperature: degF(77),
      elapsed: hour(hours),
    })),
  },
  ...(["adopted-code", "manufacturer", "common-practice"] as const).map((standing) => ({
    "equipment.manual.testPressure": undefined,
    "equipment.manual.testHold": undefined,
    "pressureTests[0].requirement": { pressure: psig(450), hold: hour(12), standing },
  })),
  { "equipment.manual.testHold": hour(1000) },
  { "equipment.manual.testPressure": psig(900) },
  { "equipment.manual.testPressure": psig(20) },
  { "equipment.lowestMarkedPressure": psig(100) },
  { "equipment.lowestMarkedPressure": MPag(41) },
  { "evacuations[0].ambient": degC(62) },
  { "evacuations[1]": { ...watch, at: "2026-05-05T11:20" } },
  { "pressureTests[1]": { ...test, at: "2026-05-05T10:00" } },
  { "pressureTests[1]": { ...test, at: "2026-05-03T08:00" } },
  { "pressureTests[0].at": "2026-05-03T08:00" },
  { "pressureTests[0].at": "2026-05-04" },
  { "evacuations[0].at": "2026-05-05T07:00" },
  { "evacuations[0].at": "2026-04-05T07:00" },
  // site and room
  { "site.altitude": m(4600) },
  { "site.atmosphere": psia(14.7) },
  { "runs[0].room.floorArea": m2(6) },
  { "runs[0].room.ceilingHeight": m(20) },
  { "runs[0].room.volume": m3(600) },
  { "runs[0].room.installationHeight": m(7) },
  { "equipment.refrigerant": "R-32", "runs[0].room": { floorArea: m2(90), place: "wall" } },
  // charge
  { "charge.added": oz(40) },
  { "charge.added": oz(41.3) },
  { "charge.added": oz(26) },
  { "charge.added": oz(2.2) },
  { "charge.added": oz(20.4), "equipment.manual.chargeRate.mass": oz(1.7) },
  { "charge.fedAs": "vapor", "equipment.refrigerant": "R-407C" },
  { "equipment.maximumCharge": oz(41.3), "instruments.scale.accuracy": oz(0.5) },
  { "equipment.maximumCharge": lb(60) },
  { "equipment.factoryCharge": oz(70) },
  { "equipment.capacity": kW(35) },
  { "power.supply.range": { minimum: volt(100), maximum: volt(300) } },
  { "equipment.capacity": kW(0.5) },
  { "instruments.scale.resolution": undefined },
  // power
  { "equipment.ratedLoadCurrent": ampere(30) },
  { "equipment.ratedLoadCurrent": ampere(12.4) },
  { "equipment.maximumOvercurrentProtection": ampere(200) },
  { "power.circuits[0].rules": "csa-c22.1-2024" },
  { "power.circuits[0].installed.device.rating": ampere(90) },
  { "power.energizedAt": "2026-01-01T11:00" },
  { "power.supply.readings[0].voltage": volt(330) },
  // drain
  { "runs[0].drain.slope": { gap: mm(200), levelLength: mm(600), accuracy: mm(0.5) } },
  { "runs[0].drain.waterRanOff": false },
  {
    "runs[0].drain.pump": {
      condensate: literPerHour(2),
      lift: m(2),
      curve: [
        { lift: m(0), flow: literPerHour(20) },
        { lift: m(6), flow: literPerHour(4) },
      ],
    },
  },
  { "runs[0].drain.vertical": true, "runs[0].drain.slope": undefined },
  // operation
  { "operation[0].outdoorTemperature": degC(85) },
  { "power.circuits[0].rules": "as-nzs-3000-2018-australia" },
  { "site.atmosphere": kPaa(843) },
  { "instruments.scale": { name: "scale" } },
  { "power.circuits[0].at": "2025-09-15T12:00" },
  measured(56, 8.2),
  measured(20, 8.2),
  measured(56, 8.2, { least: deltaF(30) }),
  measured(56, 8.2, { least: deltaF(20.5) }),
  measured(90, 8.2),
  measured(56, 3),
  measured(56, 40),
  measured(56, 0.5),
  measured(56, 12.35),
  {
    ...measured(56, 9),
    "equipment.ratedCurrent": ampere(8.5),
    "power.circuits[0].rules": "iec-60364",
  },
  measured(56, 8.2, { fullSpeed: false }),
  { ...measured(120, 8.2), "operation[0].mode": "heating" },
  {
    "instruments.lineThermometer": { accuracy: deltaF(1) },
    "operation[0].charge": { pressure: psig(118), lineTemperature: degF(50), target: deltaF(10) },
  },
  // dates, signatures, instruments
  { valves: undefined, signatures: undefined, "equipment.outdoorUnit": undefined },
  { "valves.openedAt": "2026-01-01T11:00" },
  { "charge.at": "2026-05-20T11:00", "valves.openedAt": "2026-05-20T11:30" },
  { "valves.openedAt": "2026-05-05T11:30Z" },
  { "runs[0].tubing.at": "2025-01-04" },
  { "signatures[0].at": "2026-05-04T16:00" },
  { "charge.at": undefined, "power.energizedAt": undefined, "valves.openedAt": undefined },
  { "instruments.torqueWrench.relativeAccuracy": percent(0) },
  { "instruments.testGauge.accuracy": psi(60) },
  { "instruments.testGauge.calibrationDue": "2026-02-01" },
  { "instruments.testGauge.calibratedOn": "2026-11-01" },
];
/** Changes of three heads on one outdoor unit. */
const capacities = Object.fromEntries(
  [0, 1, 2].map((i) => [`runs[${i}].indoorUnits`, [{ capacity: kW(2.6) }]]),
);
const changesOfThree: readonly Change[] = [
  {},
  { evacuations: ["A", "B", "C"].map((name) => ({ ...watch, covers: [name] })) },
  { "pressureTests[2]": undefined },
  { "pressureTests[2].covers": ["Z"] },
  { "equipment.manual.maximumTotalLength": ft(91.98), "instruments.tape.accuracy": ft(1) },
  { "equipment.manual.maximumTotalLength": ft(50) },
  { "runs[0].tubing.lift": ft(15), "equipment.manual.maximumIndoorLift": ft(24) },
  { "runs[0].tubing.lift": ft(15), "equipment.manual.maximumIndoorLift": ft(5) },
  {
    "runs[0].tubing.lift": ft(15),
    "equipment.manual.maximumIndoorLift": ft(6.01),
    "instruments.tape.accuracy": ft(1),
  },
  { "runs[0].joints": undefined, ...waiver("joints", "existing-lines", { run: "A" }) },
  {
    ...capacities,
    "equipment.manual.leastConnected": kW(1),
    "equipment.manual.mostConnected": kW(99),
  },
  {
    ...capacities,
    "equipment.manual.leastConnected": kW(90),
    "equipment.manual.mostConnected": kW(99),
  },
  {
    ...capacities,
    "equipment.manual.leastConnected": kW(1),
    "equipment.manual.mostConnected": kW(2),
  },
  { "runs[0].drain.run": ft(20), "runs[0].drain.fall": inch(9) },
  { "runs[0].drain.run": ft(20), "runs[0].drain.fall": inch(1) },
  { "power.circuits[0].wiring.length": ft(4) },
  { "operation[0].mode": "cooling", "operation[0].outdoorTemperature": degF(20) },
];
const without = Object.keys(complete)
  .filter((key) => key !== "version")
  .map((key) => ({ ...complete, [key]: undefined }) as unknown as InstallationRecord);

const amended = amend(complete, {
  path: "runs[0].tubing.length",
  value: ft(38),
  by: "N. N.",
  at: "2026-05-06",
  reason: "measured again",
});

/** The records that are judged. */
export const records: readonly InstallationRecord[] = [
  complete,
  ...Object.values(sound),
  casaQuattroFloor,
  ...examples,
  ...without,
  ...changes.map((change) => changed(change)),
  ...changesOfThree.map((change) => changed(change, threeHeads)),
  amended,
];

/** The first joint made anew, of which no date says when it was made. */
const madeAnew = (at: string) => ({
  ...changed({ "runs[0].joints[0].at": undefined, "runs[0].tubing.at": undefined }),
  history: [
    { path: "runs[0].joints[0].torque", previous: ftLb(5), by: "N. N.", at, reason: "loose" },
  ],
});

export const inputs: Partial<Inputs<typeof commissioning>> = {
  assessInstallation: [
    ...records.map((record) => [record, { rules }] as const),
    [complete, { rules: [] }],
    [madeAnew("2026-05-05"), { rules }],
    [madeAnew("2025-05-04"), { rules }],
  ] as never,
  completeRecord: [[{ version: 2, onFile: { equipment: "x" } } as never, {}]],
};
