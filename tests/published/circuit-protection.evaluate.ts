import {
  type AwgSize,
  type AwgWiring,
  assessNameplate,
  breakerConnection,
  type CircuitRules,
  cec2024,
  circuitFromNameplate,
  compressorProtection,
  conductorResistance,
  conduitImpedance,
  type EquipmentKind,
  equipmentGrounding,
  iec60364,
  type Load,
  largestDeviceOnConductor,
  longestRun,
  type Material,
  type MetricSize,
  type MetricWiring,
  maximumOvercurrentProtection,
  minimumCircuitAmpacity,
  type NameplateMode,
  nameplateFromParts,
  nec2020,
  nec2023,
  nec2026,
  type PrintedTable,
  type SupplySystemName,
  type TripBand,
  type TripCurve,
  tripBand,
  usableAmpacity,
  voltageDrop,
} from "hvac-install-math/circuit-protection";
import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

interface Part {
  readonly kind: Load["kind"];
  readonly amperes: number;
  readonly count?: number;
  readonly selection?: number;
  readonly runsIn?: Load["runsIn"];
}
interface Parts {
  readonly loads: readonly Part[];
}

const loadsOf = ({ loads }: Parts): Load[] =>
  loads.map(({ amperes, selection, ...rest }) => ({
    ...rest,
    current: q.ampere(amperes),
    ...(selection && { branchCircuitSelectionCurrent: q.ampere(selection) }),
  })) as Load[];

const editions: Record<string, CircuitRules<"awg">> = { nec2020, nec2023, nec2026, cec2024 };
const editionOf = (name = "nec2023") => editions[name] ?? nec2023;

interface Wired extends Omit<AwgWiring, "material" | "ambient"> {
  readonly size: AwgSize;
  readonly material?: Material;
  readonly celsius?: number;
  readonly together?: number;
}
const awgWiring = ({ size: _, celsius, together, ...rest }: Wired): AwgWiring => ({
  material: "copper",
  ...rest,
  ...(celsius !== undefined && { ambient: q.degC(celsius) }),
  ...(together !== undefined && { currentCarryingConductors: together }),
});
const ampacity = (input: Wired) =>
  usableAmpacity({ rules: nec2023, size: input.size, wiring: awgWiring(input), phases: 1 });

interface Plate {
  readonly mca: number;
  readonly mop: number;
  readonly volts?: number;
  readonly phases?: 1 | 3;
  readonly system?: SupplySystemName;
  readonly insulation?: AwgWiring["insulation"];
  readonly terminations?: AwgWiring["terminations"];
  readonly edition?: string;
  readonly equipment?: EquipmentKind;
}
const supplyOf = ({ volts = 240, phases = 1, system }: Partial<Plate>) => ({
  voltage: q.volt(volts),
  phases,
  ...(system && { system }),
});
const circuit = (plate: Plate) =>
  circuitFromNameplate({
    rules: editionOf(plate.edition),
    equipment: plate.equipment ?? "motor-compressor",
    minimumCircuitAmpacity: q.ampere(plate.mca),
    maximumOvercurrentProtection: q.ampere(plate.mop),
    supply: supplyOf(plate),
    wiring: {
      material: "copper",
      insulation: plate.insulation ?? "75 °C",
      ...(plate.terminations && { terminations: plate.terminations }),
    },
  });

interface Iec {
  readonly ib: number;
  readonly max: number;
  readonly in: number;
  readonly size: MetricSize;
  readonly method: MetricWiring["method"];
  readonly phases?: 1 | 3;
  readonly celsius: number;
  readonly m: number;
}
const metric = ({ method = "C", celsius = 30 }: Partial<Iec>): MetricWiring => ({
  material: "copper",
  insulation: "70 °C",
  method,
  ambient: q.degC(celsius),
});
const iecUsable = (input: Iec) =>
  usableAmpacity({
    rules: iec60364,
    size: input.size,
    wiring: metric(input),
    phases: input.phases ?? 1,
  });
const iecCircuit = (input: Partial<Iec> & { ib: number }) =>
  circuitFromNameplate({
    rules: iec60364,
    minimumCircuitAmpacity: q.ampere(input.ib),
    maximumOvercurrentProtection: q.ampere(input.max ?? input.in ?? 32),
    earthing: "TN",
    supply: { voltage: q.volt(input.phases === 3 ? 400 : 230), phases: input.phases ?? 1 },
    wiring: { ...metric(input), ...(input.m && { length: q.m(input.m) }) },
    installed: {
      ...(input.in && { device: { kind: "breaker", rating: q.ampere(input.in) } }),
      ...(input.size && { conductor: input.size }),
    },
  });

interface Run {
  readonly volts: number;
  readonly phases: 1 | 3;
  readonly amperes: number;
  readonly size: AwgSize;
  readonly ft?: number;
  readonly m?: number;
  readonly ohmPerKm?: number;
  readonly percent: number;
  readonly stranding?: "solid" | "stranded";
  readonly celsius?: number;
}
const line = (run: Run) => ({
  current: q.ampere(run.amperes),
  voltage: q.volt(run.volts),
  phases: run.phases,
  resistance: run.ohmPerKm
    ? q.ohmPerKm(run.ohmPerKm)
    : conductorResistance({
        rules: nec2023,
        size: run.size,
        material: "copper",
        stranding: run.stranding ?? "stranded",
        temperature: q.degC(run.celsius ?? 75),
      }),
});
const drop = (run: Run) =>
  voltageDrop({ ...line(run), length: run.ft ? q.ft(run.ft) : q.m(run.m ?? Number.NaN) });

const printed = (table: PrintedTable<string> | PrintedTable<number> | undefined, key: unknown) =>
  ((table?.rows ?? []) as readonly (readonly unknown[])[])
    .find(([name]) => name === key)
    ?.slice(1) ?? [];
/** A value of whichever table of a rule set has the column. */
const ampacityIn = (rules: CircuitRules, size: unknown, column: string) => {
  const table = rules.ampacity?.find(({ columns }) => columns.includes(column));
  return Number(printed(table, size)[table?.columns.indexOf(column) ?? -1]);
};
const mostOf = (parts: Parts, of: "calculatedProtection"): number =>
  Math.max(...nameplateFromParts(loadsOf(parts)).modes.map((mode: NameplateMode) => mode[of].si));
const shortSize = (size: string) => size.replace(" AWG", "");

export const evaluators: Evaluators = {
  mca: (parts: Parts) => minimumCircuitAmpacity(loadsOf(parts)).in(q.ampere),
  mop: (parts: Parts) => maximumOvercurrentProtection(loadsOf(parts)).in(q.ampere),
  unitMop: (parts: Parts & { coolingMop: number }) =>
    Math.max(parts.coolingMop, maximumOvercurrentProtection(loadsOf(parts)).in(q.ampere)),
  mopCalculated: (parts: Parts) => mostOf(parts, "calculatedProtection"),
  disconnect: (parts: Parts) => nameplateFromParts(loadsOf(parts)).disconnectRating.in(q.ampere),
  compressorNormal: (parts: Parts) =>
    compressorProtection({ rules: nec2023, loads: loadsOf(parts) }).normal.rating.in(q.ampere),
  compressorNormalCalculated: (parts: Parts) =>
    compressorProtection({ rules: nec2023, loads: loadsOf(parts) }).normal.calculated.in(q.ampere),
  compressorMaximum: (parts: Parts) =>
    compressorProtection({ rules: nec2023, loads: loadsOf(parts) }).ifItWillNotStart?.rating.in(
      q.ampere,
    ) ?? 0,
  cecNormalCalculated: (parts: Parts) =>
    compressorProtection({ rules: cec2024, loads: loadsOf(parts) }).normal.calculated.in(q.ampere),
  nameplateOutcome: (input: Parts & Plate) =>
    assessNameplate({
      loads: loadsOf(input),
      minimumCircuitAmpacity: q.ampere(input.mca),
      maximumOvercurrentProtection: q.ampere(input.mop),
    }).outcome,
  conductor: (plate: Plate) => circuit(plate).conductor?.size ?? "none",
  device: (plate: Plate) => circuit(plate).device.rating.in(q.ampere),
  plateError: (plate: Plate) => {
    try {
      return circuit(plate).outcome;
    } catch (error) {
      return q.isInvalidInputError(error) ? error.hint.slice(0, 13) : "another error";
    }
  },
  derated: (input: Wired) => ampacity(input).derated.in(q.ampere),
  usable: (input: Wired) => ampacity(input).usable.in(q.ampere),
  generalDevice: (input: { size: AwgSize; amperes: number; material?: Material }) =>
    largestDeviceOnConductor({
      rules: nec2023,
      size: input.size,
      material: input.material ?? "copper",
      usable: q.ampere(input.amperes),
    }).in(q.ampere),
  grounding: (input: { amperes: number; minimum: AwgSize; conductor: AwgSize }) =>
    equipmentGrounding({
      rules: nec2023,
      material: "copper",
      deviceRating: q.ampere(input.amperes),
      minimumConductor: input.minimum,
      conductor: input.conductor,
    }).size,
  groundingRow: ({ amperes }: { amperes: number }) =>
    (["copper", "aluminum"] as const)
      .map(
        (material) =>
          equipmentGrounding({
            rules: nec2023,
            material,
            deviceRating: q.ampere(amperes),
            minimumConductor: "250 kcmil",
          }).tableSize,
      )
      .map(shortSize)
      .join(" "),
  dropVolts: (run: Run) => drop(run).drop.in(q.volt),
  dropPercent: (run: Run) => drop(run).ratio.in(q.percent),
  voltsLeft: (run: Run) => drop(run).atUnit.in(q.volt),
  longestRun: (run: Run) => longestRun({ ...line(run), limit: q.percent(run.percent) }).in(q.ft),
  effectiveImpedance: (input: {
    size: AwgSize;
    material: Material;
    conduit: "PVC" | "aluminum" | "steel";
    powerFactor: number;
  }) =>
    // Half of 2·I·Ze·L at 1 A over 1000 ft.
    voltageDrop({
      ...conduitImpedance({ rules: nec2023, ...input }),
      powerFactor: input.powerFactor,
      current: q.ampere(1),
      voltage: q.volt(1000),
      phases: 1,
      length: q.ft(1000),
    }).drop.in(q.volt) / 2,
  tableRow: ({ table, key }: { table: "ampacity" | "ambient"; key: unknown }) =>
    printed(table === "ampacity" ? nec2023.ampacity?.[0] : nec2023.ambient, key)
      .map((v) => (v === null ? "–" : table === "ambient" ? Number(v).toFixed(2) : String(v)))
      .join(" "),
  ambientFactor: (input: { celsius: number; insulation: AwgWiring["insulation"] }) =>
    ampacity({ size: "10 AWG", ...input }).ambientFactor,
  adjustment: ({ together }: { together: number }) =>
    ampacity({ size: "10 AWG", insulation: "75 °C", together }).adjustmentFactor,
  ratings: ({ edition }: { edition: string }) => editionOf(edition).ratings.breaker.join(" "),
  resistance: (input: { size: AwgSize; material: Material; stranding: "solid" | "stranded" }) =>
    conductorResistance({ rules: nec2023, ...input }).in(q.ohmPerKft),
  table9: ({ size, what }: { size: AwgSize; what: "reactance" | Material }) =>
    (["PVC", "aluminum", "steel"] as const)
      .map((conduit) => {
        const material = what === "aluminum" ? "aluminum" : "copper";
        const found = conduitImpedance({ rules: nec2023, size, material, conduit });
        return found[what === "reactance" ? "reactance" : "resistance"].in(q.ohmPerKft);
      })
      .join(" ")
      .replace(/(?<![.\d])(\d+)(?![.\d])/g, "$1.0"),
  area: ({ size }: { size: AwgSize }) => Number(printed(nec2023.conductors, size)[0]),
  iecTable: ({ size, column }: { size: MetricSize; column: string }) =>
    ampacityIn(iec60364, size, column),
  iecAmbient: ({ celsius }: { celsius: number }) =>
    iecUsable({ size: "4 mm²", method: "C", celsius } as Iec).ambientFactor,
  iecGrouping: ({ together }: { together: number }) =>
    usableAmpacity({
      rules: iec60364,
      size: "4 mm²",
      wiring: { ...metric({}), groupedCircuits: together },
      phases: 1,
    }).adjustmentFactor,
  iecUsable: (input: Iec) => iecUsable(input).usable.in(q.ampere),
  iecDevice: (input: Iec) => iecCircuit(input).device.rating.in(q.ampere),
  iecConductor: (input: Iec) => iecCircuit(input).conductor?.size ?? "none",
  iecFits: (input: Iec) => iecCircuit(input).outcome === "pass",
  iecDropWithin: (input: Iec) => {
    const { voltageDrop: found } = iecCircuit({ ...input, in: 25 });
    return found !== undefined && found.running.ratio.si <= found.limit.si;
  },
  iecFuseOn: ({ amperes }: { amperes: number }) =>
    largestDeviceOnConductor({
      rules: iec60364,
      size: "2.5 mm²",
      material: "copper",
      usable: q.ampere(amperes),
      device: "fuse",
    }).in(q.ampere),
  iecResistance: ({ size, celsius }: { size: MetricSize; celsius: number }) =>
    conductorResistance({
      rules: iec60364,
      size,
      material: "copper",
      temperature: q.degC(celsius),
    }).in(q.ohmPerKm),
  iecMillivolts: ({ size }: { size: MetricSize }) =>
    // There and back, per ampere and metre: mΩ/m.
    2 * conductorResistance({ rules: iec60364, size, material: "copper" }).in(q.ohmPerKm),
  tripBand: ({
    rating,
    curve = "C",
    of,
  }: {
    rating: number;
    curve?: TripCurve;
    of: keyof TripBand;
  }) => tripBand({ rules: iec60364, rating: q.ampere(rating), curve })[of].in(q.ampere),
  groundFaultRating: ({ edition }: { edition: string }) =>
    editionOf(edition).groundFault?.rating ?? 0,
  disconnectFactor: ({ edition }: { edition: string }) => editionOf(edition).disconnect.factor,
  poles: (plate: Plate) => {
    const { poles, voltageRating } = breakerConnection({ rules: nec2023, supply: supplyOf(plate) });
    return `${poles} ${voltageRating}`;
  },
  workingDepth: (plate: Plate) =>
    circuit({ ...plate, mca: 20, mop: 30 }).disconnect.workingSpace?.depth.in(q.ft) ?? 0,
  dropLimit: ({ edition }: { edition: string }) =>
    100 * (editionOf(edition).voltageDrop.branch[0]?.[1] ?? 0),
};
