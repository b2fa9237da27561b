// Circuit and supply: is what feeds the unit right?
// Follows circuit-protection and supply-voltage, which decide.
// Does not cover what those leave out: fault levels, surges, permits.
import { circuitFromNameplate } from "../circuit-protection/index.ts";
import { assessSupplyVoltage } from "../supply-voltage/index.ts";
import type { InstallationRecord } from "./record.ts";
import {
  type CircuitRulesName,
  circuitRules,
  type VoltageStandardName,
  voltageStandards,
} from "./rule-names.ts";
import { given, type Trial, type Tried, tryAll } from "./step.ts";
import { errorsOf } from "./try-tightness.ts";

/** Is the circuit what the plate asks for? */
export function tryCircuit({ power, equipment }: InstallationRecord): Tried {
  const { voltage, phases, system, circuit } = power ?? {};
  const { rules, wiring, installed, powerFactor, occupancy, at } = circuit ?? {};
  // A record is of a unit with a compressor; where that is recorded, the circuit feeds one.
  const feeds = equipment?.compressor && "motor-compressor";
  const {
    minimumCircuitAmpacity,
    maximumOvercurrentProtection,
    protectionMarking,
    ratedLoadCurrent,
    lockedRotorCurrent,
  } = equipment ?? {};
  const plate = {
    minimumCircuitAmpacity,
    maximumOvercurrentProtection,
    protectionMarking,
    ratedLoadCurrent,
    lockedRotorCurrent,
  };
  const onPlate = Object.keys(plate).map((key) => [key, `equipment.${key}`]);
  return tryAll("circuit", [
    {
      name: "circuit",
      path: "power.circuit",
      needs: {
        "power.circuit.rules": rules,
        "power.circuit.wiring": wiring,
        "power.circuit.installed.device": installed?.device,
        "power.circuit.installed.conductor": installed?.conductor,
        "power.circuit.installed.equipmentGrounding": installed?.equipmentGrounding,
        "power.circuit.installed.disconnect": installed?.disconnect,
        "power.voltage": voltage,
        "power.phases": phases,
        "equipment.minimumCircuitAmpacity": minimumCircuitAmpacity,
        "equipment.maximumOvercurrentProtection": maximumOvercurrentProtection,
      },
      paths: { ...Object.fromEntries(onPlate), supply: "power" },
      run: () =>
        circuitFromNameplate(
          given({
            ...plate,
            rules: rules && circuitRules[rules],
            supply: given({ voltage, phases, system }),
            wiring,
            installed,
            powerFactor,
            occupancy,
            equipment: feeds,
            date: at?.slice(0, 10),
          }),
        ),
    },
  ]);
}

/** The standard of supply voltage where a set of circuit rules is adopted. */
const standardOf: Readonly<Partial<Record<CircuitRulesName, VoltageStandardName>>> = {
  "nfpa-70-2020": "ansi-c84.1-2020",
  "nfpa-70-2023": "ansi-c84.1-2020",
  "nfpa-70-2026": "ansi-c84.1-2020",
  "iec-60364": "iec-60038",
  "bs-7671-2018": "esqcr-2002",
  "japan-interpretation": "japan-article-38",
};

/** Is the supply fit to connect to? */
export function trySupply({ power, equipment, instruments }: InstallationRecord): Tried {
  const { voltage, phases, supply, circuit } = power ?? {};
  const { readings, measuredAt, standard, unbalanceLimit } = supply ?? {};
  // The adopted circuit rules name the country where the standard is not recorded; Canada has one of its own.
  const named = standard ?? (circuit?.rules && standardOf[circuit.rules]);
  const { ratedVoltages: rated, voltageRange: range, ratedLoadCurrent } = equipment ?? {};
  const voltmeter = instruments?.voltmeter;
  // Power waits for this check, so that a reading with the unit at rest has to be there.
  const rest = readings?.find(({ state }) => state === "rest");
  const unnamed = readings?.findIndex(({ state }) => state === undefined) ?? -1;
  const place = unnamed < 0 ? `[${readings?.length ?? 0}]` : `[${unnamed}].state`;
  const lacks = readings?.[0] && !rest ? [`power.supply.readings${place}`] : [];
  const trials: Trial[] = [
    {
      name: "supply-voltage",
      path: "power.supply",
      needs: {
        "power.supply.readings": readings?.[0],
        "power.supply.measuredAt": measuredAt,
        "power.voltage": voltage,
        "power.phases": phases,
        "equipment.ratedVoltages": rated?.[0],
        "instruments.voltmeter": voltmeter,
      },
      paths: {
        supply: "power",
        "nameplate.rated": "equipment.ratedVoltages",
        "nameplate.range": "equipment.voltageRange",
        "nameplate.ratedCurrent": "equipment.ratedLoadCurrent",
        meter: "instruments.voltmeter",
      },
      run: () =>
        assessSupplyVoltage(
          given({
            nameplate: given({ rated, range, ratedCurrent: ratedLoadCurrent }),
            supply: given({ voltage, phases, standard: named && voltageStandards[named] }),
            readings,
            measuredAt,
            unbalanceLimit,
            meter: errorsOf(voltmeter),
          }),
        ),
    },
  ];
  return tryAll("supply", trials, lacks);
}
