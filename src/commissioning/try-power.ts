// Circuits and supply: is what feeds the units right?
// Follows circuit-protection and supply-voltage, which decide.
// Does not cover what those leave out: fault levels, surges, permits.
import {
  type CircuitRules,
  type ClauseVerification,
  circuitFromNameplate,
} from "../circuit-protection/index.ts";
import { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { whole } from "../shapes/index.ts";
import { assessSupplyVoltage, type VoltageRange } from "../supply-voltage/index.ts";
import { doubt } from "./doubt.ts";
import { standardOf, voltageStandards } from "./format/index.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import { ownVerdict } from "./own-verdict.ts";
import { doubtsOfPlate } from "./plate-doubts.ts";
import type { Circuit, SupplyPart } from "./record-power.ts";
import { circuitRulesNamed } from "./rule-sets.ts";
import { say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";
import { verbatim } from "./words.ts";

/** Lengths of branch circuits; common practice, no source. */
const cables = [/* @__PURE__ */ m(0.3), /* @__PURE__ */ m(300)] as const;

/** Is each circuit what its plate asks for? */
export function tryCircuit(job: Job): Tried {
  const { circuits = [] } = job.record.power ?? {};
  const own: readonly Circuit[] = circuits.length > 0 ? circuits : [{}];
  // Circuits with plates of their own feed other units: the outdoor unit has one too.
  const outdoor = own.find(({ plate }) => plate === undefined);
  return tryAll(
    "circuit",
    [
      ...own.flatMap((one, i) => [
        ...circuitTrials(job, one, `power.circuits[${i}]`, one === outdoor),
        ...oddFigure(`power.circuits[${i}].wiring.length`, one.wiring?.length, cables),
        ...thickGrounding(job, one, `power.circuits[${i}].installed.equipmentGrounding`),
      ]),
      ...doubtsOfPlate(job),
    ],
    outdoor ? [] : [`power.circuits[${own.length}]`],
  );
}

/** Area of a grounding conductor per line conductor; it need not be the thicker one (250.122(A)), so common practice, no source. */
const thickest = 3;

/** A grounding conductor that is far thicker than what it protects. */
function thickGrounding({ rules: passed }: Job, { rules, installed }: Circuit, path: string) {
  const { conductor, equipmentGrounding: grounding } = installed ?? {};
  const set = rules && circuitRulesNamed(rules, passed);
  if (!set || !conductor || !grounding) return [];
  const { rows, columns } = set.conductors;
  const at = columns.indexOf("area") + 1;
  const area = (size: string) => Number(rows.find(([own]) => own === size)?.[at] ?? 0);
  const [line, ground] = [area(conductor), area(grounding)];
  if (!line || ground <= thickest * line) return [];
  const values = { grounding: verbatim(grounding), conductor: verbatim(conductor) };
  return [doubt(path, say("commissioning.grounding-thick", values))];
}

function circuitTrials(
  { record, rules: passed }: Job,
  circuit: Circuit,
  path: string,
  isOutdoor: boolean,
): Trial[] {
  const { rules } = circuit;
  const set = rules && circuitRulesNamed(rules, passed);
  if (rules && !set) {
    const named = { rules: verbatim(rules) };
    const run = () =>
      ownVerdict(
        "inconclusive",
        say("commissioning.rules-not-passed", named),
        say("commissioning.pass-rules", named),
      );
    return [{ name: "rules", path: `${path}.rules`, needs: {}, run }];
  }
  const { wiring, installed, powerFactor, occupancy, sharedWith, earthing, groundFaultText } =
    circuit;
  const { voltage, phases, system } = record.power ?? {};
  const { equipment = {} } = record;
  // An air handler with a supply of its own has a plate of its own: only one circuit feeds the outdoor unit.
  const [plate, at] = isOutdoor ? [equipment, "equipment"] : [circuit.plate ?? {}, `${path}.plate`];
  const marked = {
    minimumCircuitAmpacity: plate.minimumCircuitAmpacity,
    maximumOvercurrentProtection: plate.maximumOvercurrentProtection,
    ratedCurrent: plate.ratedCurrent,
    maximumFuse: plate.maximumFuse,
    protectionMarking: plate.protectionMarking,
    ratedLoadCurrent: plate.ratedLoadCurrent,
    lockedRotorCurrent: isOutdoor ? equipment.lockedRotorCurrent : undefined,
  };
  // Metric nameplates print a rated current and a largest fuse instead.
  const metric = set?.family === "metric";
  const ampacity =
    metric && !plate.minimumCircuitAmpacity ? "ratedCurrent" : "minimumCircuitAmpacity";
  const largest =
    metric && !plate.maximumOvercurrentProtection ? "maximumFuse" : "maximumOvercurrentProtection";
  const onPlate = Object.keys(marked).map((key) => [key, `${at}.${key}`]);
  return [
    {
      name: "circuit",
      path,
      needs: {
        [`${path}.rules`]: rules,
        [`${path}.wiring`]: wiring,
        [`${path}.sharedWith`]: sharedWith,
        [`${path}.installed.device`]: installed?.device,
        [`${path}.installed.conductor`]: installed?.conductor,
        [`${path}.installed.equipmentGrounding`]: installed?.equipmentGrounding,
        [`${path}.installed.disconnect`]: installed?.disconnect,
        ...demandsOf(set, circuit, path),
        "power.voltage": voltage,
        "power.phases": phases,
        [`${at}.${ampacity}`]: marked[ampacity],
        [`${at}.${largest}`]: marked[largest],
      },
      paths: { ...Object.fromEntries(onPlate), supply: "power" },
      run: () =>
        circuitFromNameplate(
          present({
            ...marked,
            rules: set,
            supply: present({ voltage, phases, system }),
            wiring,
            installed,
            powerFactor,
            occupancy,
            sharedWith: sharedWith?.[0] && sharedWith,
            earthing,
            groundFaultText,
            verifications: circuit.verifications as readonly ClauseVerification[] | undefined,
            equipment: circuit.feeds,
            nameplateReadAgain: circuit.nameplateReadAgain,
            date: circuit.at?.slice(0, 10),
          }),
        ),
    },
  ];
}

/** A distance that is not seen to be kept by the disconnect's being within sight, m: 28-604(5) has 3, 4.19 has 1.25. */
const farthestSeen = 5;

/** What the rules of the place make a duty: that the disconnect is within sight, or near, and a drop that binds. */
function demandsOf(
  set: CircuitRules | undefined,
  { wiring, installed }: Circuit,
  path: string,
): Trial["needs"] {
  const { disconnect } = installed ?? {};
  if (!set || !disconnect) return {};
  const { wants, within = farthestSeen } = set.disconnect;
  const at = `${path}.installed.disconnect`;
  const lockable = wants.includes("visible or lockable") ? disconnect.lockable : undefined;
  return {
    ...(wants.some((one) => one.startsWith("visible")) && {
      [`${at}.visible`]: disconnect.visible ?? lockable,
    }),
    ...(within < farthestSeen && { [`${at}.distance`]: disconnect.distance }),
    ...(set.voltageDrop.mandatory && { [`${path}.wiring.length`]: wiring?.length }),
  };
}

/** Is the supply fit to connect to? */
export function trySupply({ record }: Job): Tried {
  const { power, equipment, instruments } = record;
  const { voltage, phases, system, supply, circuits } = power ?? {};
  const { readings, measuredAt, standard, range: promised, unbalanceLimit } = supply ?? {};
  // The adopted circuit rules name the country where the standard is not recorded. On a 127 V grid 220 V is no 240 V.
  const rules = circuits?.[0]?.rules;
  const isOwnGrid = system === "220Y/127 V";
  const named = standard ?? (rules && !isOwnGrid ? standardOf[rules] : undefined);
  const { ratedVoltages: rated, voltageRange: range } = equipment ?? {};
  const { ratedLoadCurrent, ratedCurrent } = equipment ?? {};
  const voltmeter = instruments?.voltmeter;
  // Power waits for this check, so that a reading with the unit at rest has to be there.
  const rest = readings?.find(({ state }) => state === "rest");
  const unnamed = readings?.findIndex(({ state }) => state === undefined) ?? -1;
  const place = unnamed < 0 ? `[${readings?.length ?? 0}]` : `[${unnamed}].state`;
  const missing = readings?.[0] && !rest ? [`power.supply.readings${place}`] : [];
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
        "supply.range": "power.supply.range",
        supply: "power",
        "nameplate.rated": "equipment.ratedVoltages",
        "nameplate.range": "equipment.voltageRange",
        "nameplate.ratedCurrent": `equipment.${ratedLoadCurrent ? "ratedLoadCurrent" : "ratedCurrent"}`,
        meter: "instruments.voltmeter",
      },
      run: () =>
        assessSupplyVoltage(
          present({
            nameplate: present({ rated, range, ratedCurrent: ratedLoadCurrent ?? ratedCurrent }),
            supply: present({
              voltage,
              phases,
              standard: named && voltageStandards[named],
              range: promised && whole<VoltageRange>(promised),
            }),
            readings,
            measuredAt,
            unbalanceLimit,
            meter: errorsOf(voltmeter),
          }),
        ),
    },
  ];
  return tryAll("supply", [...trials, ...rangeDoubts(voltage, promised)], missing);
}

/** Utilities promise 10 % at most, with a few percent more on site; common practice, no source. */
const widest = 0.15;

/** A promised range that is none: wider than any utility's, or of another voltage. */
function rangeDoubts(
  nominal: Quantity<"voltage"> | undefined,
  promised: SupplyPart["range"],
): Trial[] {
  if (!nominal || !promised) return [];
  const part = (of: number) => new Quantity(of * nominal.si, nominal.unit);
  const at = "power.supply.range";
  return [
    ...oddFigure(`${at}.minimum`, promised.minimum, [part(1 - widest), part(1)]),
    ...oddFigure(`${at}.maximum`, promised.maximum, [part(1), part(1 + widest)]),
  ];
}
