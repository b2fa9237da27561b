// An installation of invented data with something in every part: two units, braze, pump, log, amendments, photos.
import { amend, type InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  degF,
  deltaF,
  ftLb,
  hour,
  inch,
  liter,
  literPerHour,
  m,
  m3,
  percent,
  psi,
  psig,
  volt,
} from "hvac-install-math/quantity";
import { complete } from "../commissioning/complete-record.ts";

const { instruments, equipment, power, operation } = complete;
const [run] = complete.runs ?? [];

const recorded: InstallationRecord = {
  ...complete,
  name: "Invented house, upper floor",
  site: { name: "Invented street 7, invented town", altitude: m(1520) },
  equipment: {
    ...equipment,
    outdoorUnit: {
      ...equipment?.outdoorUnit,
      model: "invented outdoor unit 24",
      serialNumber: "X-0001",
    },
    lockedRotorCurrent: ampere(46),
    protectionMarking: "fuse or HACR breaker",
  },
  instruments: {
    ...instruments,
    testGauge: { ...instruments?.testGauge, name: "digital test gauge", serialNumber: "G-17" },
    gasThermometer: { ...instruments?.gasThermometer, name: "pipe clamp" },
    scale: { ...instruments?.scale, name: "charging scale" },
    lineThermometer: { name: "pipe clamp", accuracy: deltaF(1), calibrationDue: "2026-03-01" },
  },
  runs: [
    {
      ...run,
      name: "upper floor",
      indoorUnits: [
        { model: "invented indoor unit 12, bedroom", serialNumber: "X-0002" },
        { model: "invented indoor unit 12, study", serialNumber: "X-0003" },
      ],
      tubing: { ...run?.tubing, jointCount: 5, otherVolume: liter(0.62) },
      joints: [
        ...(run?.joints ?? []),
        { name: "elbow at the riser", kind: "brazed", nitrogenFlowed: true, at: "2026-05-04" },
      ],
      room: { volume: m3(60), place: "wall", volumeAccuracy: m3(2) },
      drain: {
        ...run?.drain,
        requiredSlope: percent(1),
        run: m(4.2),
        pump: {
          condensate: literPerHour(3),
          lift: m(1.2),
          curve: [
            { lift: m(0), flow: literPerHour(15) },
            { lift: m(3), flow: literPerHour(6) },
          ],
        },
      },
    },
  ],
  pressureTests: [
    {
      readings: Array.from({ length: 29 }, (_, i) => ({
        elapsed: hour(i / 2),
        temperature: degF(Math.round(10 * (65 + 5 * Math.cos((i * Math.PI) / 28))) / 10),
        pressure: psig(Math.round(10 * (494.6 + 5.35 * Math.cos((i * Math.PI) / 28))) / 10),
      })),
      criterion: { maximumDrop: psi(4) },
      at: "2026-05-05T08:00",
    },
  ],
  power: {
    ...power,
    supply: {
      ...power?.supply,
      readings: [
        { state: "rest", voltage: volt(241.5) },
        { state: "load", voltage: volt(239.8), current: ampere(9.6) },
      ],
    },
  },
  operation: [
    ...(operation ?? []),
    { ...operation?.[0], pressure: psig(121), at: "2026-05-05T15:00" },
  ],
  photos: [
    {
      reference: "photos/plate-outdoor.jpg",
      of: "equipment.outdoorUnit",
      caption: "Plate of the outdoor unit",
      at: "2026-05-04T09:12",
      digest: "sha-256:3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855a",
    },
    { reference: "photos/flare-liquid.jpg", of: "runs[0].joints[0]", at: "2026-05-04T13:40" },
  ],
  signatures: [
    { name: "N. N.", role: "installer", at: "2026-05-05T16:00" },
    { name: "M. M.", role: "owner", at: "2026-05-05T16:10" },
  ],
};

/** Every step passes; two amendments, one of them after the signatures. */
export const rich: InstallationRecord = amend(
  amend(recorded, {
    path: "runs[0].tubing.bends",
    value: 5,
    by: "N. N.",
    at: "2026-05-05T09:00",
    reason: "one bend behind the unit was overlooked",
  }),
  {
    path: "runs[0].drain.run",
    value: m(4.4),
    by: "N. N.",
    at: "2026-05-07",
    reason: "measured again",
  },
);

/** The same house with a torque that is far too low, valves opened before the vacuum, and no voltage read. */
export const failing: InstallationRecord = {
  ...rich,
  runs: (rich.runs ?? []).map((one) => ({
    ...one,
    joints: (one.joints ?? []).map((own, i) => (i === 1 ? { ...own, torque: ftLb(12) } : own)),
  })),
  valves: { openedAt: "2026-05-04T18:00" },
  power: { voltage: volt(240), energizedAt: "2026-05-05T12:45" },
};

/** Half of the work: tubing, joints and a pressure test without a criterion. */
export const half: InstallationRecord = {
  version: 2,
  name: "Invented garage",
  site: { name: "invented garage", altitude: m(300) },
  equipment: { refrigerant: "R-32", lowestMarkedPressure: psig(600) },
  runs: [
    {
      tubing: { length: m(9), liquid: { outsideDiameter: inch(0.25), wall: inch(0.03) } },
      joints: [{ kind: "flare", tube: "1/4", torque: ftLb(12) }, { kind: "flare" }],
    },
  ],
  pressureTests: [
    {
      readings: [
        { pressure: psig(450), temperature: degF(66) },
        { pressure: psig(449), temperature: degF(66) },
      ],
    },
  ],
  photos: [{ reference: "IMG_0001" }],
};
