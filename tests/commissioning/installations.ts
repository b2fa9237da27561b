// Twelve invented installations of the kinds that a technician meets, as complete records: every name, nameplate and
// figure of a manual is invented. Pressures of the morning after are those of nitrogen at constant volume, worked out
// with a virial equation of nitrogen outside this library.
import type {
  Circuit,
  Equipment,
  InstallationRecord,
  Instruments,
  Joint,
  Manual,
  OperatingReading,
  Run,
  VoltageStandardName,
} from "hvac-install-math/commissioning";
import {
  ampere,
  deltaC,
  deltaF,
  g,
  hour,
  inch,
  liter,
  m,
  micron,
  mm,
  newtonMeter,
  percent,
  psi,
  type Quantity,
  second,
  volt,
} from "hvac-install-math/quantity";

const held = { calibratedOn: "2026-01-10", calibrationDue: "2027-01-10" } as const;

/** The bag of every job: a gauge of ±0.017 MPa that shows 0.001 MPa, a thermometer of ±0.3 K. */
const instruments: Instruments = {
  testGauge: { ...held, accuracy: psi(2.5), resolution: psi(0.1), drift: psi(0.3) },
  gasThermometer: {
    ...held,
    accuracy: deltaF(0.5),
    resolution: deltaF(0.1),
    followsGasWithin: deltaF(0.9),
  },
  vacuumGauge: { ...held, accuracy: percent(10), resolution: micron(1).minus(micron(0)) },
  scale: { ...held, accuracy: g(5), resolution: g(1) },
  tape: { ...held, accuracy: mm(10) },
  torqueWrench: { ...held, relativeAccuracy: percent(4) },
  voltmeter: { ...held, accuracy: volt(1.2) },
  serviceGauge: { ...held, accuracy: psi(2) },
  level: held,
  airThermometer: { ...held, accuracy: deltaC(0.3) },
  clampMeter: { ...held, accuracy: ampere(0.2) },
};

type Tube = "1/4" | "3/8" | "1/2" | "5/8" | "3/4";
const tubes: Readonly<Record<Tube, readonly [od: number, wall: number, torque: number]>> = {
  "1/4": [0.25, 0.0315, 16],
  "3/8": [0.375, 0.0315, 38],
  "1/2": [0.5, 0.0315, 55],
  "5/8": [0.625, 0.0394, 72],
  "3/4": [0.75, 0.042, 105],
};
const tube = (size: Tube) => ({
  outsideDiameter: inch(tubes[size][0]),
  wall: inch(tubes[size][1]),
});

interface RunOf {
  readonly name?: string;
  readonly length: Quantity<"length">;
  readonly lines: readonly [liquid: Tube, vapor: Tube];
  readonly room?: Run["room"];
  readonly vessel: number;
  readonly joint?: Joint["kind"];
  readonly lift?: Quantity<"length">;
  readonly outdoorUnit?: "above" | "below" | "level";
  readonly drain?: NonNullable<Run["drain"]>;
  readonly more?: Partial<Run>;
}

const slope: NonNullable<Run["drain"]> = {
  slope: { gap: mm(12), levelLength: mm(600), accuracy: mm(0.5) },
  route: { outdoors: false, aboveFinishedSpace: false, pumped: false },
  waterRanOff: true,
  at: "2026-05-05",
};

/** A run with its joints, each at one end of one line. */
export function run({ name, length, lines, room, vessel, joint = "flare", ...own }: RunOf): Run {
  const [liquid, vapor] = lines;
  const joints = (["indoor", "outdoor"] as const).flatMap((end) =>
    (["liquid", "vapor"] as const).map((line): Joint => {
      if (joint === "brazed") return { line, end, kind: joint, nitrogenFlowed: true };
      if (joint === "coupling") return { line, end, kind: joint, inspected: true };
      return {
        line,
        end,
        kind: joint,
        torque: newtonMeter(tubes[line === "liquid" ? liquid : vapor][2]),
      };
    }),
  );
  return {
    ...(name !== undefined && { name }),
    indoorUnits: [{ model: `invented head ${name ?? ""}`.trim(), ports: { liquid, vapor } }],
    tubing: {
      liquid: tube(liquid),
      vapor: tube(vapor),
      length,
      lift: own.lift ?? m(1.8),
      outdoorUnit: own.outdoorUnit ?? "below",
      otherVolume: liter(vessel),
      at: "2026-04-28",
    },
    joints,
    drain: own.drain ?? slope,
    ...(room && { room }),
    ...own.more,
  };
}

interface Job {
  readonly name: string;
  readonly altitude?: Quantity<"length">;
  readonly equipment: Equipment;
  readonly manual: Manual;
  readonly runs: readonly Run[];
  /** Fill, temperature, the morning after, its temperature, hours between. */
  readonly test?: readonly [
    Quantity<"gaugePressure">,
    Quantity<"temperature">,
    Quantity<"gaugePressure">,
    Quantity<"temperature">,
    number,
  ];
  readonly each?: boolean;
  readonly ambient?: Quantity<"temperature">;
  readonly added?: Quantity<"mass">;
  readonly voltage: number;
  readonly phases?: 1 | 3;
  /** The standard of the supply, where the rules of the circuit name none. */
  readonly standard?: VoltageStandardName;
  readonly circuits: readonly Circuit[];
  readonly operation: OperatingReading;
}

/** A watch of a sound system; no two of them rise alike. */
const vacuum = (start: number) =>
  Array.from({ length: 91 }, (_, i) => ({
    elapsed: second(20 * i),
    pressure: micron(
      Math.round(start + (32 + (start % 11)) * (1 - Math.exp(-i / 10)) + 2 * Math.sin(1.7 * i)),
    ),
  }));

/** The complete record of a job. */
export function installation(job: Job): InstallationRecord {
  const { runs, test, added, voltage, circuits } = job;
  const names = job.each ? runs.map((one) => one.name as string) : [undefined];
  const covers = (name: string | undefined) => (name === undefined ? {} : { covers: [name] });
  return {
    version: 2,
    name: `${job.name} (invented)`,
    site: { name: job.name, altitude: job.altitude ?? m(20) },
    equipment: { ...job.equipment, manual: job.manual },
    instruments,
    runs,
    ...(test && {
      pressureTests: names.map((name) => ({
        ...covers(name),
        readings: [
          { pressure: test[0], temperature: test[1], elapsed: hour(0) },
          { pressure: test[2], temperature: test[3], elapsed: hour(test[4]) },
        ],
        criterion: { maximumDrop: psi(4) },
        at: "2026-05-06T08:00",
      })),
      evacuations: names.map((name, i) => ({
        ...covers(name),
        readings: vacuum(240 + 7 * i),
        policy: "splitManualB" as const,
        ambient: job.ambient ?? test[3],
        at: "2026-05-06T11:00",
      })),
      charge: {
        added: added ?? g(0),
        tolerance: g(20),
        fedAs: "liquid" as const,
        at: "2026-05-06T12:00",
      },
    }),
    ...(job.equipment.construction !== "monobloc" && { valves: { openedAt: "2026-05-06T12:10" } }),
    power: {
      voltage: volt(voltage),
      phases: job.phases ?? 1,
      circuits,
      supply: {
        readings: [
          { state: "rest", voltage: volt(voltage + 1.5) },
          { state: "load", voltage: volt(voltage - 0.2) },
        ],
        measuredAt: "unit",
        ...(job.standard && { standard: job.standard }),
        at: "2026-05-06T12:30",
      },
      energizedAt: "2026-05-06T12:45",
    },
    operation: [{ ...job.operation, at: "2026-05-06T14:00" }],
    signatures: [{ name: "N. N.", role: "installer", at: "2026-05-06T16:00" }],
  };
}
