// What is sound? The inputs that slips spoil, by name: records of invented installations, and calls of single functions.
// Each one passes, or gives its figure, as it stands. The functions' figures are those of their published examples.
import { type Assessment, type CautionKind, explain } from "hvac-install-math/assessment";
import { assessConcentration, assessRoomCharge } from "hvac-install-math/charge-limit";
import { circuitFromNameplate, nec2023 } from "hvac-install-math/circuit-protection";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { assessDrainSlope } from "hvac-install-math/condensate";
import { assessFlareTurn, assessFlareWall } from "hvac-install-math/flare-joint";
import {
  additionalCharge,
  assessLineRun,
  astmB280Tube,
  liquidChargePlausibility,
} from "hvac-install-math/line-set";
import { findIsolation, guessLog, readLog } from "hvac-install-math/logs";
import { assessChargeByGauge, assessServiceReading } from "hvac-install-math/operating-check";
import {
  assessPressureLog,
  expectedTestPressure,
  pressurizationPlan,
} from "hvac-install-math/pressure-test";
import {
  ampere,
  degC,
  degF,
  degreeAngle,
  deltaF,
  ft,
  g,
  gPerM,
  inch,
  kg,
  kPag,
  lb,
  liter,
  m,
  m2,
  m3,
  micron,
  minute,
  mm,
  oz,
  ozPerFt,
  psi,
  psig,
  second,
  standardAtmosphere,
  volt,
} from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import {
  bubblePressure,
  R22,
  R32,
  R407C,
  R410A,
  refrigerantByDesignation,
  superheat,
} from "hvac-install-math/refrigerants";
import { assessSupplyVoltage, voltageMonitorSettings } from "hvac-install-math/supply-voltage";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { changed } from "../../commissioning/changed.ts";
import { complete } from "../../commissioning/complete-record.ts";
import { threeHeads } from "../../commissioning/three-heads.ts";
import { sound as twelve } from "../../commissioning/twelve.ts";
import { soundLog } from "./logs.ts";

/** The sound records by name. */
export const records: Readonly<Record<string, InstallationRecord>> = {
  workshop: complete,
  "three heads": threeHeads,
  ...twelve,
};

/** What a call says: a verdict, or a figure, which is taken as it is. */
export type Said = Partial<Pick<Assessment, "outcome" | "reasons" | "cautions">> & object;

/** A call of a function: what it is given, and how it is made. */
export interface Call {
  readonly input: object;
  // biome-ignore lint/suspicious/noExplicitAny: the input is spoiled on purpose
  readonly call: (input: any) => Said;
}

const instruments = {
  pressure: { accuracy: psi(2), resolution: psi(0.1) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.7) },
};
const rows = [
  [0, 500, 80],
  [30, 497, 77],
  [60, 494.9, 75],
  [90, 494.8, 75],
  [120, 497.9, 78],
];

/** A watch as a logger wrote it: what the file does not tell, and what was refused, comes first. */
function watchOf({ text }: { readonly text: string }): Said {
  const { format, doubts } = guessLog(text, { pressure: "absolutePressure" });
  if (!format) return { outcome: "fail", reasons: doubts, refused: true } as Said;
  const { rows, refused, notes } = readLog(text, format);
  const { rows: readings } = findIsolation(rows);
  const watch = assessVacuumDecay({
    readings,
    ambient: degC(17),
    policy: acceptancePolicies.splitManualB,
  });
  const named = [...doubts, ...refused, ...notes].map((one) => ({
    kind: "finding" as CautionKind,
    ...one,
  }));
  return { ...watch, cautions: [...named, ...watch.cautions] } as Said;
}

/** The sound calls by name. */
export const calls: Readonly<Record<string, Call>> = {
  assessLineRun: {
    input: {
      length: m(18),
      lift: m(14),
      outdoorUnit: "above",
      limits: { maximumLength: m(25), maximumLift: m(15) },
    },
    call: assessLineRun,
  },
  liquidChargePlausibility: {
    input: {
      rate: gPerM(15),
      tube: { ...astmB280Tube({ size: "1/4", temper: "annealed" }) },
      refrigerant: R410A,
      temperature: degF(105),
      expansionDevice: "outdoor",
    },
    call: liquidChargePlausibility,
  },
  additionalCharge: {
    input: {
      length: ft(60),
      preChargedLength: ft(40),
      rate: ozPerFt(0.16),
      shortLineRule: "add-only",
      factoryCharge: oz(52),
      maximumLength: ft(82),
    },
    call: additionalCharge,
  },
  assessPressureLog: {
    input: {
      readings: rows.map(([min = 0, p = 0, t = 0]) => ({
        elapsed: minute(min),
        pressure: psig(p),
        temperature: degF(t),
      })),
      instruments,
      criterion: { maximumDrop: psi(5) },
      atmosphere: standardAtmosphere,
    },
    call: assessPressureLog,
  },
  expectedTestPressure: {
    input: {
      pressure: psig(500),
      temperature: degF(95),
      laterTemperature: degF(65),
      atmosphere: standardAtmosphere,
    },
    call: expectedTestPressure,
  },
  pressurizationPlan: {
    input: {
      limits: [{ part: "low side", pressure: psig(450) }],
      wanted: psig(400),
      temperature: degF(60),
      warmest: degF(100),
      atmosphere: standardAtmosphere,
    },
    call: pressurizationPlan,
  },
  assessVacuumDecay: {
    input: {
      readings: Array.from({ length: 121 }, (_, i) => ({
        elapsed: second(10 * i),
        pressure: micron(260 + Math.round(40 * (1 - Math.exp(-i / 20)) + 1.5 * Math.sin(1.7 * i))),
      })),
      ambient: degC(20),
      volume: liter(3),
      policy: acceptancePolicies.splitManualB,
    },
    call: assessVacuumDecay,
  },
  assessFlareTurn: { input: { tube: "1/4", turn: degreeAngle(75) }, call: assessFlareTurn },
  assessFlareWall: {
    input: { tube: "3/8", refrigerant: "R410A", wall: mm(0.8) },
    call: assessFlareWall,
  },
  circuitFromNameplate: {
    input: {
      rules: nec2023,
      date: "2026-03-02",
      minimumCircuitAmpacity: ampere(31.4),
      maximumOvercurrentProtection: ampere(50),
      supply: { voltage: volt(240), phases: 1 },
      wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C" },
      installed: { device: { kind: "breaker", rating: ampere(50), poles: 2 }, conductor: "10 AWG" },
    },
    call: circuitFromNameplate,
  },
  assessSupplyVoltage: {
    input: {
      nameplate: { rated: [volt(480)] },
      supply: { voltage: volt(480), phases: 3 },
      readings: [{ lineToLine: [volt(480), volt(481), volt(479)] }],
      measuredAt: "service",
    },
    call: assessSupplyVoltage,
  },
  voltageMonitorSettings: {
    input: {
      nameplate: { rated: [volt(208), volt(230)] },
      supply: { voltage: volt(240), phases: 1 },
    },
    call: voltageMonitorSettings,
  },
  assessDrainSlope: {
    input: {
      reading: { heightAtStart: inch(40), heightAtEnd: inch(34), run: ft(20), accuracy: mm(1) },
      run: ft(20),
    },
    call: assessDrainSlope,
  },
  assessRoomCharge: {
    input: { refrigerant: R32, place: "floor", charge: kg(2.1), floorArea: m2(40) },
    call: assessRoomCharge,
  },
  assessConcentration: {
    input: { refrigerant: R410A, charge: kg(1.5), volume: m3(30) },
    call: assessConcentration,
  },
  assessServiceReading: {
    input: {
      refrigerant: R410A,
      mode: "cooling",
      indoorTemperature: degF(75),
      outdoorTemperature: degF(95),
      evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
      condenserApproach: { low: deltaF(15), high: deltaF(25) },
      atmosphere: standardAtmosphere,
      pressure: psig(118),
    },
    call: assessServiceReading,
  },
  assessChargeByGauge: {
    input: {
      refrigerant: R410A,
      meteringDevice: "thermostatic-valve",
      compressor: "single-speed",
      mode: "cooling",
      pressure: psig(388),
      pressureDrop: psi(33),
      lineTemperature: degF(95),
      atmosphere: standardAtmosphere,
      target: deltaF(12),
      tolerance: deltaF(3),
      instruments: {
        pressure: { accuracy: psi(2) },
        temperature: { accuracy: deltaF(1) },
      },
    },
    call: assessChargeByGauge,
  },
  bubblePressure: {
    input: { temperature: degF(100) },
    call: ({ temperature }) => bubblePressure(R410A, temperature),
  },
  refrigerantByDesignation: {
    input: { designation: "R-454C" },
    call: ({ designation }) => refrigerantByDesignation(designation),
  },
  superheat: {
    input: { pressure: psig(118), lineTemperature: degF(52), atmosphere: standardAtmosphere },
    call: (reading) => superheat(R410A, reading),
  },
  "field of psig and kPag": {
    input: { text: "118 psig" },
    call: ({ text }) => readQuantity(text, { kind: "gaugePressure", units: [psig, kPag] }),
  },
  "field of feet and inches": {
    input: { text: "12' 6\"" },
    call: ({ text }) => readQuantity(text, { kind: "length", units: [ft, inch] }),
  },
  "field of pounds and ounces": {
    input: { text: "2 lb 12 oz" },
    call: ({ text }) => readQuantity(text, { kind: "mass", units: [lb, oz] }),
  },
  "German field of grams": {
    input: { text: "1,25" },
    call: ({ text }) => readQuantity(text, { kind: "mass", units: [g], locale: "de" }),
  },
  "log of a vacuum": { input: { text: soundLog }, call: watchOf },
};

/** Refrigerants by the word that a slip has for them. */
export const refrigerants: Readonly<Record<string, object>> = { R22, R32, R407C, R410A };

export { changed, explain };
