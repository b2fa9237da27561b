import { explain } from "hvac-install-math/assessment";
import * as circuitProtectionModule from "hvac-install-math/circuit-protection";
import {
  type AwgSize,
  type AwgWiring,
  assessNameplate,
  breakerConnection,
  bs7671,
  type CircuitRules,
  cec2024,
  circuitFromNameplate,
  compressorProtection,
  conductorResistance,
  conduitImpedance,
  type EquipmentKind,
  equipmentGrounding,
  groundFaultProtection,
  heaterCurrent,
  type InstallationMethod,
  iec60364,
  type Load,
  largestDeviceOnConductor,
  longestRun,
  longestRunByFaultLoop,
  type Material,
  type MetricSize,
  type MetricWiring,
  maximumOvercurrentProtection,
  minimumCircuitAmpacity,
  minimumDisconnect,
  type NameplateMode,
  nameplateFromParts,
  nec2020,
  nec2023,
  type PrintedTable,
  type ProtectiveConductor,
  protectiveConductorArea,
  type SupplySystemName,
  type TripBand,
  type TripCurve,
  tripBand,
  usableAmpacity,
  voltageDrop,
} from "hvac-install-math/circuit-protection";
import { circuitProtection } from "hvac-install-math/language/en";
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

/** The rule set that the module exports by this name. */
const setOf = (name: string): CircuitRules => {
  const found = (circuitProtectionModule as unknown as Record<string, CircuitRules>)[name];
  if (!found?.points) throw new Error(`no rule set ${name}`);
  return found;
};
const editionOf = (name = "nec2023") => setOf(name) as CircuitRules<"awg">;

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
      const { hint } = error as q.InvalidInputError;
      return hint ? explain(hint, circuitProtection).slice(0, 13) : "another error";
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
  ampacityColumn: ({ rules, column }: { rules: string; column: string }) => {
    const table = setOf(rules).ampacity?.find(({ columns }) => columns.includes(column));
    const at = (table?.columns.indexOf(column) ?? -2) + 1;
    const values = (table?.rows ?? []).map((row) => row[at]);
    return values.filter((value) => value !== null).join(" ");
  },
  ampacityRow: ({ rules, size }: { rules: string; size: string }) =>
    printed(setOf(rules).ampacity?.[0], size).join(" "),
  iecFactor: (input: Metric) =>
    metricUsable({ rules: "iec60364", size: "4 mm²", ...input }).ambientFactor,
  iecSoil: (input: Metric) =>
    metricUsable({ rules: "iec60364", size: "4 mm²", ...input }).adjustmentFactor,
  iecArrangement: (input: Metric) =>
    metricUsable({ rules: "iec60364", size: "4 mm²", method: "C", ...input }).adjustmentFactor,
  metricUsable: (input: Metric) => metricUsable(input).usable.in(q.ampere),
  metricResistance: ({ size, material }: { size: MetricSize; material: Material }) =>
    conductorResistance({ rules: iec60364, size, material, temperature: q.degC(20) }).in(
      q.ohmPerKm,
    ),
  adiabaticK: (conductor: ProtectiveConductor) =>
    protectiveConductorArea({ fault: { letThrough: 1 }, conductor }).factor,
  adiabaticArea: ({ amperes = 0, seconds = 0, letThrough, ...conductor }: Fault) =>
    protectiveConductorArea({
      fault: letThrough
        ? { letThrough }
        : { current: q.ampere(amperes), clearingTime: q.second(seconds) },
      conductor,
    }).area,
  fuseNeeds: ({ rules, amperes }: { rules: string; amperes: number }) => {
    const margins = setOf(rules).ampacityPerRating?.fuse ?? [];
    return amperes * (margins.find(([upTo]) => amperes <= upTo)?.[1] ?? 0);
  },
  protective: ({ rules, size }: { rules: string; size: MetricSize }) =>
    equipmentGrounding({
      rules: setOf(rules) as CircuitRules<"metric">,
      material: "copper",
      deviceRating: q.ampere(16),
      minimumConductor: size,
    }).size,
  metricDrop: (input: Drop) => {
    const { voltageDrop: found } = metricCircuit(input);
    return found?.running.ratio.in(q.percent) ?? Number.NaN;
  },
  dropLimitAt: ({ rules, m }: { rules: string; m: number }) =>
    metricCircuit({
      rules,
      size: rules === "japan" ? "2.0 mm" : "4 mm²",
      amperes: 5,
      m,
      volts: rules === "japan" ? 200 : 230,
    }).voltageDrop?.limit.in(q.percent) ?? 0,
  metricPoles: ({ rules, volts }: { rules: string; volts: number }) => {
    const supply = { voltage: q.volt(volts), phases: 1 } as const;
    const { poles, voltsToGround } = breakerConnection({ rules: setOf(rules), supply });
    return `${poles} poles, ${voltsToGround} V to ground`;
  },
  cecAmbient: (input: Wired) => cecAmpacity(input).ambientFactor,
  cecGrouping: ({ together }: { together: number }) =>
    cecAmpacity({ size: "12 AWG", insulation: "90 °C", together }).adjustmentFactor,
  cecAmpacity: ({ output, ...input }: Wired & { output: "derated" | "usable" }) =>
    cecAmpacity(input)[output].in(q.ampere),
  cecDevice: ({ amperes }: { amperes: number }) =>
    largestDeviceOnConductor({
      rules: cec2024,
      size: "4/0 AWG",
      material: "copper",
      usable: q.ampere(amperes),
    }).in(q.ampere),
  cecBonding: ({ amperes, material }: { amperes: number; material: Material }) =>
    equipmentGrounding({
      rules: cec2024,
      material,
      deviceRating: q.ampere(amperes),
      minimumConductor: "250 kcmil",
    }).tableSize,
  cecProtection: (i: { rated: number; locked?: number; output: "normal" | "ifItWillNotStart" }) => {
    const load: Load = {
      kind: "compressor",
      current: q.ampere(i.rated),
      ...(i.locked && { lockedRotorCurrent: q.ampere(i.locked) }),
    };
    const found = compressorProtection({ rules: cec2024, loads: [load] })[i.output];
    return found?.rating.in(q.ampere) ?? 0;
  },
  disconnectOf: ({ rules, loads }: { rules: string; loads: [Load["kind"], number][] }) =>
    minimumDisconnect({
      rules: setOf(rules),
      loads: loads.map(([kind, amperes]): Load => ({ kind, current: q.ampere(amperes) })),
    }).in(q.ampere),
  cecEnlarged: (input: Enlarged) => enlarged(cec2024, input),
  necEnlarged: (input: Enlarged) => enlarged(nec2023, input),
  placed: ({ rules, m }: { rules: string; m: number }) => {
    const set = setOf(rules);
    const awg = set.family === "awg";
    const { reasons } = circuitFromNameplate({
      rules: set as CircuitRules<"awg">,
      minimumCircuitAmpacity: q.ampere(15),
      maximumOvercurrentProtection: q.ampere(20),
      supply: { voltage: q.volt(awg ? 240 : 230), phases: 1 },
      wiring: (awg
        ? { material: "copper", insulation: "75 °C" }
        : { material: "copper", insulation: "70 °C", method: "C" }) as AwgWiring,
      installed: { disconnect: { rating: q.ampere(30), distance: q.m(m) } },
    });
    return reasons.some(({ code }) => code === "circuit-protection.disconnect-near");
  },
  cecLongest: ({ size, amperes, volts }: { size: AwgSize; amperes: number; volts: number }) =>
    circuitFromNameplate({
      rules: cec2024,
      minimumCircuitAmpacity: q.ampere(amperes),
      maximumOvercurrentProtection: q.ampere(amperes),
      supply: { voltage: q.volt(volts), phases: 1 },
      wiring: { material: "copper", insulation: "60 °C", length: q.m(1) },
      installed: { conductor: size },
    }).voltageDrop?.longestRun.in(q.m) ?? 0,
  ukMillivolts: ({ size }: { size: MetricSize }) =>
    2 * conductorResistance({ rules: bs7671, size, material: "copper" }).in(q.ohmPerKm),
  ukCarries: ({
    size,
    method,
    amperes,
  }: {
    size: MetricSize;
    method: InstallationMethod;
    amperes: number;
  }) => metricUsable({ rules: "bs7671", size, method }).usable.si >= amperes,
  cpcPasses: (i: { size: MetricSize; cpc: MetricSize; letThrough?: number }) => {
    const { reasons } = circuitFromNameplate({
      rules: bs7671,
      ratedCurrent: q.ampere(12),
      maximumFuse: q.ampere(16),
      supply: { voltage: q.volt(230), phases: 1 },
      wiring: { material: "copper", insulation: "70 °C", method: "C" },
      installed: {
        device: { kind: "breaker", rating: q.ampere(16) },
        conductor: i.size,
        equipmentGrounding: i.cpc,
        ...(i.letThrough && { fault: { letThrough: i.letThrough } }),
      },
    });
    const codes = reasons.map(({ code }) => code);
    if (codes.includes("circuit-protection.grounding-needs-energy")) return "asks for the energy";
    return codes.includes("circuit-protection.grounding-by-energy-met") ? "met" : "short";
  },
  groundFault: (i: {
    edition: string;
    rating: number;
    date: string;
    text?: string;
    volts?: number;
    phases?: 1 | 3;
    occupancy?: "dwelling" | "other";
  }) => {
    const { answer, classC } = groundFaultProtection({
      rules: editionOf(i.edition),
      supply: { voltage: q.volt(i.volts ?? 240), phases: i.phases ?? 1 },
      rating: q.ampere(i.rating),
      date: i.date,
      ...(i.text && { text: i.text }),
      ...(i.occupancy && { occupancy: i.occupancy }),
    });
    return answer === "required" && classC ? "required, or class C" : answer;
  },
  heater: ({ kW, volts }: { kW: number; volts: number }) =>
    heaterCurrent({ power: q.kW(kW), ratedVoltage: q.volt(volts) }).in(q.ampere),
  heaterPlate: (i: { kW: number; volts: number; blower: number; output: "mca" | "mop" }) => {
    const plate = nameplateFromParts([
      { kind: "heater", power: q.kW(i.kW), ratedVoltage: q.volt(i.volts) },
      { kind: "motor", current: q.ampere(i.blower) },
    ]);
    const { minimumCircuitAmpacity: mca, maximumOvercurrentProtection: mop } = plate;
    return (i.output === "mca" ? mca : mop).in(q.ampere);
  },
  roofDerated: ({ inches, ...input }: Wired & { inches: number }) =>
    usableAmpacity({
      rules: nec2020,
      size: input.size,
      wiring: { ...awgWiring(input), aboveRoof: q.inch(inches) },
      phases: 1,
    }).derated.in(q.ampere),
  faultLoop: (i: { curve: TripCurve; amperes: number; line: MetricSize; cpc: MetricSize }) =>
    longestRunByFaultLoop({
      rating: q.ampere(i.amperes),
      curve: i.curve,
      voltageToGround: q.volt(230),
      line: i.line,
      protective: i.cpc,
    }).in(q.m),
  cecTableD3: ({ size, amperes }: { size: AwgSize; amperes: number }) =>
    longestRun({
      current: q.ampere(amperes),
      voltage: q.volt(120),
      phases: 1,
      limit: q.percent(1),
      resistance: conductorResistance({
        rules: cec2024,
        size,
        material: "copper",
        temperature: q.degC(60),
      }),
    }).in(q.m),
  receptacle: ({ feet }: { feet: number }) =>
    circuitFromNameplate({
      rules: nec2023,
      minimumCircuitAmpacity: q.ampere(15),
      maximumOvercurrentProtection: q.ampere(20),
      supply: { voltage: q.volt(240), phases: 1 },
      wiring: { material: "copper", insulation: "75 °C" },
      installed: { serviceReceptacle: { distance: q.ft(feet) } },
    }).reasons.some(({ code }) => code === "circuit-protection.receptacle-met"),
};

interface Metric {
  readonly rules?: string;
  readonly size?: MetricSize;
  readonly material?: Material;
  readonly insulation?: MetricWiring["insulation"];
  readonly method?: InstallationMethod;
  readonly phases?: 1 | 3;
  readonly celsius?: number;
  readonly together?: number;
  readonly grouping?: NonNullable<MetricWiring["grouping"]>;
  readonly resistivity?: number;
}
const metricUsable = (i: Metric) =>
  usableAmpacity({
    rules: setOf(i.rules ?? "iec60364") as CircuitRules<"metric">,
    size: i.size ?? "4 mm²",
    wiring: {
      material: i.material ?? "copper",
      insulation: i.insulation ?? "70 °C",
      method: i.method ?? "C",
      ...(i.celsius !== undefined && { ambient: q.degC(i.celsius) }),
      ...(i.together && { groupedCircuits: i.together }),
      ...(i.grouping && { grouping: i.grouping }),
      ...(i.resistivity && { soilResistivity: i.resistivity }),
    },
    phases: i.phases ?? 1,
  });

interface Fault extends ProtectiveConductor {
  readonly amperes?: number;
  readonly seconds?: number;
  readonly letThrough?: number;
}

interface Drop {
  readonly rules: string;
  readonly size: MetricSize;
  readonly amperes: number;
  readonly m: number;
  readonly volts: number;
  readonly phases?: 1 | 3;
  readonly powerFactor?: number;
}
const metricCircuit = (i: Drop) =>
  circuitFromNameplate({
    rules: setOf(i.rules) as CircuitRules<"metric">,
    ratedCurrent: q.ampere(i.amperes),
    maximumFuse: q.ampere(63),
    ...(i.powerFactor && { powerFactor: i.powerFactor }),
    supply: { voltage: q.volt(i.volts), phases: i.phases ?? 1 },
    wiring: { material: "copper", insulation: "70 °C", method: "C", length: q.m(i.m) },
    installed: { conductor: i.size },
  });

const cecAmpacity = (input: Wired) =>
  usableAmpacity({
    rules: cec2024,
    size: input.size ?? "10 AWG",
    wiring: awgWiring(input),
    phases: 1,
  });

interface Enlarged {
  readonly amperes: number;
  readonly minimum: AwgSize;
  readonly conductor: AwgSize;
}
const enlarged = (rules: CircuitRules<"awg">, i: Enlarged) =>
  equipmentGrounding({
    rules,
    material: "copper",
    deviceRating: q.ampere(i.amperes),
    minimumConductor: i.minimum,
    conductor: i.conductor,
  }).size;
