// Each invented installation with five things gone wrong on it, one at a time, as they go wrong on a site: what happened,
// what the record then says, the step or hold point that must not
// pass, and whether it fails or stays open.
import type { HoldName, StepName } from "hvac-install-math/commissioning";
import {
  ampere,
  degC,
  deltaK,
  ft,
  g,
  hour,
  literPerHour,
  MPag,
  m,
  micron,
  mm,
  newtonMeter,
  oz,
  psig,
  type Quantity,
  second,
  volt,
} from "hvac-install-math/quantity";
import type { Change } from "./changed.ts";

/** What went wrong, the fields that change, the step, and what it comes to. */
export type Break = readonly [
  what: string,
  changes: Change,
  step: StepName | HoldName,
  outcome: "fail" | "inconclusive",
];

const fails = (what: string, step: StepName | HoldName, changes: Change): Break => [
  what,
  changes,
  step,
  "fail",
];
const open = (what: string, step: StepName | HoldName, changes: Change): Break => [
  what,
  changes,
  step,
  "inconclusive",
];

const [run, circuit, test] = ["runs[0]", "power.circuits[0]", "pressureTests[0]"];

// Proofs that are missing.
const noTest = open("the test was never done", "pressure-test", { pressureTests: undefined });
const oneReading = open("nobody read the gauge in the morning", "pressure-test", {
  [`${test}.readings[1]`]: undefined,
});
const noVacuumLog = open("the vacuum gauge was looked at, not logged", "evacuation", {
  "evacuations[0].readings": undefined,
});
const noWater = open("no water was poured into the pan", "drain", {
  [`${run}.drain.waterRanOff`]: undefined,
});
const noJoint = (at = `${run}.joints[3]`) =>
  open("a joint that nobody recorded", "joints", { [at]: undefined });
const noRoom = open("nobody measured the room", "room-limit", { [`${run}.room`]: undefined });
const noOperation = open("the unit was never run", "operation", { operation: undefined });
const noAdded = open("what was added was not written down", "charge", {
  "charge.added": undefined,
});
const noSupply = open("the voltage was never measured", "supply", { "power.supply": undefined });
const noConductor = open("nobody looked which conductor is in the wall", "circuit", {
  [`${circuit}.installed.conductor`]: undefined,
});

// Figures that are wrong.
const looseNut = (joint = `${run}.joints[0]`) =>
  fails("a nut turned by hand", "joints", { [`${joint}.torque`]: newtonMeter(5) });
const crushedNut = fails("the torque of the next larger nut", "joints", {
  [`${run}.joints[0].torque`]: newtonMeter(38),
});
const leak = (pressure: Quantity<"gaugePressure">, at = test) =>
  fails("a slow leak overnight", "pressure-test", { [`${at}.readings[1].pressure`]: pressure });
const tooHigh = (pressure: Quantity<"gaugePressure">) =>
  fails("filled above the lowest marked pressure", "pressure-test", {
    [`${test}.readings[0].pressure`]: pressure,
    [`${test}.readings[1].pressure`]: pressure,
  });
const shortHold = open("held for ten minutes", "pressure-test", {
  [`${test}.readings[1].elapsed`]: hour(1 / 6),
});
const wet = fails("water boiling off in the vacuum", "evacuation", {
  "evacuations[0].readings": Array.from({ length: 91 }, (_, i) => ({
    elapsed: second(20 * i),
    pressure: micron(Math.round(300 + 1900 * (1 - Math.exp(-i / 25)) + 2 * Math.sin(1.7 * i))),
  })),
});
const rising = fails("a leak in the vacuum", "evacuation", {
  "evacuations[0].readings": Array.from({ length: 91 }, (_, i) => ({
    elapsed: second(20 * i),
    pressure: micron(Math.round(250 + 30 * i + 2 * Math.sin(1.7 * i))),
  })),
});
const tooMuch = (mass: Quantity<"mass">) =>
  fails("far too much refrigerant", "charge", { "charge.added": mass });
const forgotten = fails("the longer line was forgotten", "charge", { "charge.added": g(0) });
const breaker = (rating: number) =>
  fails("a breaker that is too large", "circuit", {
    [`${circuit}.installed.device.rating`]: ampere(rating),
  });
const conductor = (size: string) =>
  fails("a conductor that is too small", "circuit", { [`${circuit}.installed.conductor`]: size });
const onePole = fails("a breaker of one pole on two live conductors", "circuit", {
  [`${circuit}.installed.device.poles`]: 1,
});
const weakGround = fails("a grounding conductor that is too small", "circuit", {
  [`${circuit}.installed.equipmentGrounding`]: "14 AWG",
});
const overvoltage = fails("the wrong supply at the unit", "supply", {
  "power.supply.readings[0].voltage": volt(277),
});
const uphill = fails("a drain that rises", "drain", { [`${run}.drain.slope.gap`]: mm(-12) });
const tooLong = (length: Quantity<"length">) =>
  fails("a line longer than the manual allows", "line-run", { [`${run}.tubing.length`]: length });
const tooShort = (length: Quantity<"length">) =>
  fails("a line shorter than the manual allows", "line-run", { [`${run}.tubing.length`]: length });
const tooDeep = (lift: Quantity<"length">) =>
  fails("units too far above each other", "line-run", { [`${run}.tubing.lift`]: lift });
const starved = (pressure: Quantity<"gaugePressure">) =>
  fails("a suction pressure far below its window", "operation", {
    "operation[0].pressure": pressure,
  });
const dry = fails("brazed without nitrogen", "joints", {
  [`${run}.joints[0].nitrogenFlowed`]: false,
});

// What was done in the wrong order.
const openedEarly = fails("valves opened before the test", "valves", {
  "valves.openedAt": "2026-05-05T15:00",
});
const remade = open("a flare made again after the test", "pressure-test", {
  [`${run}.joints[0].at`]: "2026-05-06T15:00",
});
const drainMoved = open("the line shortened after the vacuum", "evacuation", {
  [`${run}.tubing.at`]: "2026-05-06T15:00",
});
const liveEarly = fails("switched on before the circuit was inspected", "power-on", {
  "power.energizedAt": "2026-05-06T11:00",
});

/** Five for each, by name. */
export const broken: Readonly<Record<string, readonly Break[]>> = {
  "Heron Cabin": [looseNut(), leak(psig(470)), noWater, breaker(50), openedEarly],
  "Mesa Barn": [leak(psig(440)), wet, forgotten, onePole, noRoom],
  "Three Finches": [
    noJoint("runs[2].joints[3]"),
    open("one head was left out of the tests", "pressure-test", {
      "pressureTests[2]": undefined,
    }),
    leak(psig(470), "pressureTests[1]"),
    tooMuch(oz(40)),
    conductor("14 AWG"),
  ],
  "Birch Lake": [
    leak(MPag(3.6)),
    rising,
    starved(MPag(1.2)),
    breaker(45),
    fails("a drain that rises at the second head", "drain", { "runs[1].drain.slope.gap": mm(-12) }),
  ],
  "Rue Courte": [tooShort(m(2)), crushedNut, shortHold, noSupply, noOperation],
  "Casa Quattro": [
    fails("the office unit set on the floor", "room-limit", { "runs[2].room.place": "floor" }),
    tooMuch(g(1200)),
    noJoint("runs[3].joints[0]"),
    breaker(63),
    fails("water stands in the pan of the hall", "drain", { "runs[3].drain.waterRanOff": false }),
  ],
  "Attic Lark": [tooDeep(m(12)), noVacuumLog, remade, uphill, overvoltage],
  "Red Gum": [leak(MPag(3.3)), tooHigh(MPag(4.6)), overvoltage, tooMuch(g(900)), liveEarly],
  "Quick Wren": [
    fails("a coupling that bubbles", "joints", { [`${run}.joints[1].inspected`]: false }),
    open("nobody looked at a coupling", "joints", { [`${run}.joints[2].inspected`]: undefined }),
    breaker(60),
    open("air that comes out no colder than it went in", "operation", {
      "operation[0].airSide.supplyAir": degC(23),
    }),
    liveEarly,
  ],
  "North Stove": [
    open("the drain was waived by the season", "drain", {
      "waivers[0].reason": undefined,
      "waivers[0].note": "it is winter",
    }),
    open("a conductor of a size that no table has", "circuit", {
      [`${circuit}.installed.conductor`]: "1 mm²",
    }),
    overvoltage,
    open("not run at full speed", "operation", { "operation[0].airSide.fullSpeed": false }),
    fails("a current above the plate", "operation", {
      "operation[0].airSide.current": ampere(19),
    }),
  ],
  "Foundry Loft": [
    dry,
    leak(psig(430)),
    fails("the air handler on the wire of the outdoor unit", "circuit", {
      "power.circuits[1].installed.conductor": "12 AWG",
    }),
    noAdded,
    open("the blend was charged as vapor", "charge", { "charge.fedAs": "vapor" }),
  ],
  "Four Larks": [
    noJoint("runs[4].joints[2]"),
    looseNut("runs[1].joints[1]"),
    openedEarly,
    tooMuch(oz(264)),
    breaker(80),
  ],
  "Short Lines": [tooMuch(oz(12)), looseNut("runs[1].joints[2]"), wet, onePole, drainMoved],
  "Whole Line": [dry, forgotten, tooLong(ft(95)), oneReading, noOperation],
  Cellar: [
    fails("a pump for a smaller unit", "drain", {
      [`${run}.drain.pump.condensate`]: literPerHour(6),
    }),
    noWater,
    noTest,
    noSupply,
    breaker(32),
  ],
  "Cold Attic": [
    tooHigh(MPag(4.4)),
    rising,
    fails("the pressure of the low side", "operation", { "operation[0].pressure": MPag(0.3) }),
    noConductor,
    remade,
  ],
  "Just Enough": [
    fails("a head too many for the outdoor unit", "line-run", {
      "equipment.manual.mostConnected": undefined,
      "equipment.manual.maximumTotalLength": m(25),
    }),
    open("the vacuum of one head is missing", "evacuation", { "evacuations[1]": undefined }),
    forgotten,
    overvoltage,
    noRoom,
  ],
  "Long Feed": [
    weakGround,
    breaker(30),
    crushedNut,
    open("air that changes by nothing", "operation", {
      "operation[0].airSide.supplyAir": degC(24).minus(deltaK(0.5)),
    }),
    noJoint(),
  ],
};
