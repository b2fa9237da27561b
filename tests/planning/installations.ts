// Twelve invented installations before the work: every name, nameplate and figure of a manual is invented. Plates,
// manuals and instruments are those of the finished records; what is measured is taken out, what a plan rests on is put in.
import type { InstallationRecord, Planned, Run } from "hvac-install-math/commissioning";
import {
  barg,
  degC,
  degF,
  ft,
  hour,
  inch,
  inchWater,
  liter,
  MPag,
  m,
  mm,
  oz,
  paM3PerS,
  psig,
  type Quantity,
} from "hvac-install-math/quantity";
import * as finished from "../commissioning/twelve.ts";

type Length = Quantity<"length">;
type Weather = readonly [
  fill: Quantity<"temperature">,
  later: Quantity<"temperature">,
  warmest: Quantity<"temperature">,
];

/** US stock and metric stock, as the trade sells them. */
const feet = [15, 16, 25, 35, 50].map((one) => ft(one));
const meters = [3, 5, 7.5, 10, 15, 20, 25, 30].map((one) => m(one));
const us: Planned = {
  stock: feet,
  slack: ft(1),
  leakRate: paM3PerS(5e-4),
  cylinder: { waterVolume: liter(4.2), pressure: psig(2000) },
};
const si: Planned = {
  stock: meters,
  slack: m(1),
  leakRate: paM3PerS(5e-4),
  cylinder: { waterVolume: liter(10), pressure: barg(200) },
};

interface Before {
  readonly ways: readonly (Length | undefined)[];
  readonly weather: Weather;
  readonly fill?: Quantity<"gaugePressure">;
  readonly plan?: Planned;
  readonly equipment?: InstallationRecord["equipment"];
  readonly drain?: Run["drain"];
  /** How the cables run, in place of what the finished record says. */
  readonly wiring?: object;
  /** Walls of ASTM B280 by outside diameter in inches. */
  readonly walls?: Readonly<Record<string, number>>;
}

/** A finished record as it was before the work. */
function before(
  record: InstallationRecord,
  { ways, weather, fill, plan, equipment, drain, wiring, walls }: Before,
): InstallationRecord {
  const [fillTemperature, laterTemperature, warmest] = weather;
  const { charge: _, valves: __, pressureTests, evacuations, signatures: ___, ...rest } = record;
  const { supply: ____, energizedAt: _____, ...power } = record.power ?? {};
  return {
    ...rest,
    equipment: {
      ...record.equipment,
      ...equipment,
      manual: { ...record.equipment?.manual, ...equipment?.manual },
    },
    runs: (record.runs ?? []).map(({ joints, ...one }, i) => {
      const { length, at: ______, ...tubing } = one.tubing ?? {};
      const way = ways[i];
      const walled = (tube: (typeof tubing)["liquid"]) => {
        const wall = walls?.[String(tube?.outsideDiameter?.in(inch))];
        return wall ? { ...tube, wall: inch(wall) } : tube;
      };
      const tubes = { ...tubing, liquid: walled(tubing.liquid), vapor: walled(tubing.vapor) };
      const kind = joints?.[0]?.kind;
      return {
        ...one,
        ...(kind && kind !== "flare" && { joints: [{ kind }] }),
        tubing: way ? { ...tubes, way } : { ...tubes, ...(length && { length }) },
        drain: drain ?? {},
      };
    }),
    ...(pressureTests && {
      pressureTests: pressureTests.map(({ covers }) => (covers ? { covers } : {})),
    }),
    ...(evacuations && { evacuations: [{ policy: "splitManualB" as const }] }),
    power: {
      ...power,
      circuits: (power.circuits ?? []).map(({ installed: _______, ...one }) => ({
        ...one,
        wiring: { ...one.wiring, ...wiring } as never,
      })),
    },
    operation: (record.operation ?? []).map(({ pressure: ________, at: _________, ...one }) => one),
    plan: {
      ...(weather[0].unit.symbol === "°F" ? us : si),
      fillTemperature,
      laterTemperature,
      warmest,
      ...(fill && { fillPressure: fill }),
      ...plan,
    },
  };
}

const F = (fill: number, later: number, warmest: number): Weather => [
  degF(fill),
  degF(later),
  degF(warmest),
];
const C = (fill: number, later: number, warmest: number): Weather => [
  degC(fill),
  degC(later),
  degC(warmest),
];

const nm = { cable: "NM" };
const hotNm = { cable: "NM", ambient: degF(104) };

/** The twelve by name. */
export const planned: Readonly<Record<string, InstallationRecord>> = {
  "Heron Cabin": before(finished.heronCabin, {
    ways: [ft(14)],
    weather: F(78, 64, 110),
    fill: psig(500),
    wiring: nm,
    plan: {
      stock: feet.slice(1),
      insulation: inch(0.5),
      drainDiameter: mm(18),
      cableDiameter: mm(9),
    },
    drain: { run: ft(5), fall: ft(1) },
  }),
  "Mesa Barn": before(finished.mesaBarn, {
    ways: [ft(58)],
    weather: F(88, 52, 120),
    fill: psig(500),
    wiring: nm,
    plan: { serviceLoop: ft(2), hold: hour(12) },
  }),
  "Three Finches": before(finished.threeFinches, {
    ways: [undefined, undefined, undefined],
    weather: F(82, 70, 105),
    fill: psig(500),
    wiring: hotNm,
    plan: { hold: hour(15) },
    equipment: {
      portPairs: 4,
      manual: { unusedPortAllowance: oz(-1.61), shortLineRule: "net-add-only" },
    },
  }),
  "Birch Lake": before(finished.birchLake, {
    ways: [undefined, undefined],
    weather: C(-12, -4, 20),
    fill: MPag(3.7),
    wiring: nm,
  }),
  "Rue Courte": before(finished.rueCourte, {
    ways: [m(1.2)],
    weather: C(26, 17, 45),
    fill: MPag(3.8),
    plan: { slack: m(0.3) },
    drain: { run: m(1.5), fall: mm(200) },
  }),
  "Casa Quattro": before(finished.casaQuattroFloor, {
    ways: [undefined, undefined, undefined, undefined],
    weather: C(31, 22, 50),
    fill: MPag(3.8),
  }),
  "Attic Lark": before(finished.atticLark, {
    ways: [m(12)],
    weather: C(14, 6, 25),
    fill: barg(40),
  }),
  "Red Gum": before(finished.redGum, {
    ways: [m(21)],
    weather: C(41, 19, 65),
    fill: MPag(3.7),
    plan: { hold: hour(18) },
  }),
  "Quick Wren": before(finished.quickWren, {
    ways: [ft(16)],
    weather: F(72, 72, 100),
    wiring: nm,
    plan: { stock: feet.slice(1), cuttable: false },
  }),
  "North Stove": before(finished.northStove, { ways: [], weather: C(10, 10, 30) }),
  "Foundry Loft": before(finished.foundryLoft, {
    ways: [undefined],
    weather: F(70, 66, 95),
    fill: psig(450),
    walls: { "0.375": 0.035, "0.75": 0.035 },
    plan: { hold: hour(24) },
    drain: { run: ft(24), fall: ft(2), panPressure: inchWater(-0.9) },
  }),
  "Four Larks": before(finished.fourLarks, {
    ways: [undefined, undefined, undefined, undefined, undefined],
    weather: F(84, 68, 110),
    fill: psig(550),
    wiring: hotNm,
    walls: { "0.25": 0.03, "0.375": 0.032, "0.5": 0.032, "0.625": 0.035 },
    plan: { hold: hour(24) },
  }),
};
