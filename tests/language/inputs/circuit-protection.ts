// What else it takes to hear all that the module says: one sound circuit per family of rules, and one change each.
import type * as circuitProtection from "hvac-install-math/circuit-protection";
import {
  asNzs3000Australia,
  asNzs3000NewZealand,
  bs7671,
  type CircuitInput,
  type CircuitRules,
  cec2024,
  iec60364,
  japan,
  type Load,
  nec2020,
  nec2023,
  nec2026,
  type RulePoint,
} from "hvac-install-math/circuit-protection";
import { ampere, degC, ft, inch, m, volt } from "hvac-install-math/quantity";
import { condenser } from "../../circuit-protection/fixtures.ts";
import type { Inputs } from "../../faults/catalogue.ts";

type Awg = CircuitInput<"awg">;
type Installed = NonNullable<Awg["installed"]>;
type Disconnect = NonNullable<Installed["disconnect"]>;
type Device = NonNullable<Installed["device"]>;

const { installed = {}, wiring } = condenser;
const { device, disconnect } = installed as { device: Device; disconnect: Disconnect };
const fitted = (change: Partial<Installed>): Partial<Awg> => ({
  installed: { ...installed, ...change },
});
const behind = (change: Partial<Device>) => fitted({ device: { ...device, ...change } });
const switched = (change: Partial<Disconnect>) =>
  fitted({ disconnect: { ...disconnect, ...change } });
const space = (depth: number, height = ft(7)) =>
  switched({ workingSpace: { depth: inch(depth), width: inch(40), height } });
const aluminum = { ...wiring, material: "aluminum" } as const;
const canada = { rules: cec2024, supply: { voltage: volt(240), phases: 1 } } as const;

/** A rule set that decides by what is confirmed only, and of which these points (all when left out) are not. */
const unconfirmed = (
  rules: CircuitRules<"awg">,
  points = Object.keys(rules.points) as RulePoint[],
): CircuitRules<"awg"> => ({
  ...rules,
  onlyConfirmed: true,
  points: {
    ...rules.points,
    ...Object.fromEntries(
      points.map((point) => [
        point,
        { clause: rules.points[point]?.clause ?? "", standing: "memory" as const },
      ]),
    ),
  },
});

const changes: readonly Partial<Awg>[] = [
  {},
  // nameplate
  { protectionMarking: undefined },
  { ratedLoadCurrent: undefined },
  { ratedLoadCurrent: ampere(10) },
  { maximumOvercurrentProtection: ampere(70) },
  { maximumOvercurrentProtection: ampere(70), nameplateReadAgain: true },
  { maximumOvercurrentProtection: ampere(32) },
  { maximumOvercurrentProtection: ampere(24) },
  { maximumOvercurrentProtection: ampere(24), nameplateReadAgain: true },
  { maximumOvercurrentProtection: ampere(20) },
  { protectionMarking: "fuse only" },
  {
    sharedWith: [
      { kind: "unit", current: ampere(6), maximumOvercurrentProtection: ampere(25) },
      { kind: "other", current: ampere(2) },
    ],
  },
  { minimumCircuitAmpacity: ampere(900), maximumOvercurrentProtection: ampere(1000) },
  // device
  fitted({ device: undefined }),
  behind({ rating: ampere(60) }),
  behind({ rating: ampere(20) }),
  behind({ rating: ampere(15) }),
  behind({ rating: ampere(33) }),
  behind({ poles: 1 }),
  behind({ kind: "fuse", poles: 1 }),
  {
    minimumCircuitAmpacity: ampere(9.4),
    ratedLoadCurrent: ampere(7),
    maximumOvercurrentProtection: ampere(15),
    sharedWith: [{ kind: "other", current: ampere(9) }],
    ...behind({ rating: ampere(15) }),
  },
  behind({ poles: undefined }),
  behind({ voltageRating: "120 V" as never }),
  behind({ voltageRating: undefined }),
  { ...behind({ voltageRating: undefined }), supply: { voltage: volt(480), phases: 1 } },
  { ...behind({ voltageRating: "120/240 V" }), supply: { voltage: volt(480), phases: 1 } },
  behind({ hacr: false }),
  // conductor
  { wiring: { material: "copper", insulation: "75 °C" } },
  fitted({ conductor: undefined }),
  fitted({ conductor: "14 AWG" }),
  { ...fitted({ conductor: "14 AWG" }), wiring: { ...wiring, ambient: degC(69) } },
  { ...fitted({ conductor: "12 AWG" }), equipment: "other" },
  { ...fitted({ conductor: "12 AWG" }), maximumOvercurrentProtection: ampere(30) },
  {
    ...fitted({ conductor: "12 AWG", device: { ...device, rating: ampere(30) } }),
    maximumOvercurrentProtection: ampere(30),
  },
  { wiring: aluminum },
  { ...fitted({ aluminumTerminals: true }), wiring: aluminum },
  { ...fitted({ aluminumTerminals: false }), wiring: aluminum },
  // grounding
  fitted({ equipmentGrounding: undefined, disconnect: undefined }),
  fitted({ equipmentGrounding: "14 AWG" }),
  fitted({ conductor: "6 AWG" }),
  fitted({ conductor: "4 AWG", equipmentGrounding: "8 AWG" }),
  ...[undefined, true, false].map((compressionFittings) => ({
    ...fitted({ equipmentGrounding: undefined, groundingByRaceway: true, compressionFittings }),
    rules: nec2026,
    wiring: { ...wiring, aboveRoof: inch(12) },
  })),
  // disconnect
  switched({ rating: ampere(20) }),
  switched({ rating: ampere(10) }),
  switched({ fuse: ampere(40) }),
  switched({ fuse: ampere(60) }),
  switched({ fuse: ampere(20) }),
  switched({ visible: false, readilyAccessible: false, inTheWay: true, distance: ft(80) }),
  switched({ lockable: true, onUnit: false, inTheWay: false }),
  switched({ lockable: false, onUnit: true }),
  { rules: nec2023, installed: { disconnect: { rating: ampere(60) } } },
  space(10),
  { ...space(10), rules: nec2020 },
  fitted({ serviceReceptacle: { distance: ft(80), onLoadSide: true } }),
  // voltage drop
  { wiring: { ...wiring, length: ft(400) } },
  { wiring: { ...wiring, length: undefined } },
  // dates
  { date: "2035-01-01" },
  { date: "2026-01-01" },
  ...[undefined, false as const, ampere(0.005), ampere(0.03)].map((residualCurrent) => ({
    ...fitted({ residualCurrent }),
    date: "2035-01-01",
    groundFaultText: "as printed",
  })),
  { date: "2035-01-01", groundFaultText: "not adopted" },
  { rules: nec2026, date: undefined },
  { rules: nec2026, date: "2026-01-01" },
  { rules: nec2020, date: "2020-01-01" },
  // another service
  { supply: { voltage: volt(900), phases: 1 } },
  // rules of which nothing is confirmed
  ...[nec2023, nec2026].flatMap((rules) => [
    { rules: unconfirmed(rules) },
    {
      ...fitted({
        conductor: "4 AWG",
        aluminumTerminals: true,
        groundingByRaceway: true,
        equipmentGrounding: undefined,
        serviceReceptacle: { distance: ft(5) },
      }),
      rules: unconfirmed(rules),
      wiring: {
        ...aluminum,
        cable: "NM",
        ambient: degC(50),
        aboveRoof: inch(2),
        currentCarryingConductors: 9,
      } as const,
    },
    { ...fitted({ conductor: "4 AWG", equipmentGrounding: "6 AWG" }), rules: unconfirmed(rules) },
    {
      ...fitted({ conductor: "12 AWG" }),
      rules: unconfirmed(rules, ["overload"]),
      equipment: "other" as const,
    },
  ]),
  // Canada
  canada,
  { ...canada, ...fitted({ device: { ...device, voltageRating: "120 V" } }) },
  { ...canada, ...switched({ lockable: true, rating: ampere(20) }) },
  { ...canada, ...switched({ lockable: false, onUnit: true, visible: false }) },
  { ...canada, ...switched({ onUnit: false, rating: ampere(24), inTheWay: true }) },
  { ...canada, ...space(10) },
  { ...canada, wiring: { ...wiring, length: ft(400) } },
  {
    ...canada,
    ...fitted({ conductor: "250 kcmil" }),
    wiring: { ...wiring, length: ft(20_000) },
  },
  { ...canada, ...fitted({ conductor: "4 AWG" }) },
  { ...canada, ...fitted({ conductor: "6 AWG" }) },
];

const small = {
  rules: iec60364,
  ratedCurrent: ampere(12),
  maximumFuse: ampere(16),
  earthing: "TT",
  supply: { voltage: volt(230), phases: 1 },
  wiring: { material: "copper", insulation: "70 °C", method: "B2", length: m(15) },
  installed: {
    device: { kind: "breaker", rating: ampere(16), poles: 2, curve: "C" },
    conductor: "2.5 mm²",
    equipmentGrounding: "2.5 mm²",
    residualCurrent: ampere(0.03),
    disconnect: { rating: ampere(20), visible: true, lockable: true },
  },
} as const satisfies CircuitInput<"metric">;
const put = (change: NonNullable<CircuitInput<"metric">["installed"]>) => ({
  installed: { ...small.installed, ...change },
});
const thin = put({ conductor: "6 mm²", equipmentGrounding: "1.5 mm²" });
const metricChanges: readonly Partial<CircuitInput<"metric">>[] = [
  {},
  { maximumFuse: undefined },
  { earthing: undefined },
  put({ residualCurrent: undefined }),
  put({ residualCurrent: false }),
  put({ residualCurrent: ampere(0.3) }),
  put({ device: { kind: "breaker", rating: ampere(16), poles: 2, curve: "B" } }),
  { lockedRotorCurrent: ampere(200) },
  put({ device: undefined, conductor: undefined }),
  {
    ratedCurrent: ampere(3),
    wiring: { ...small.wiring, method: "C" },
    ...put({ device: { kind: "fuse", rating: ampere(4) } }),
  },
  thin,
  put({ conductor: "6 mm²", equipmentGrounding: "1.5 mm²", fault: { letThrough: 900_000 } }),
  put({ conductor: "6 mm²", equipmentGrounding: "1.5 mm²", fault: { letThrough: 15_000 } }),
  put({ conductor: "1.5 mm²" }),
  put({ disconnect: { rating: ampere(20), visible: false, lockable: false } }),
  put({ disconnect: { rating: ampere(20) } }),
  { ...put({ conductor: "16 mm²" }), wiring: { ...small.wiring, length: m(4000) } },
  { ...put({ residualCurrent: undefined }), earthing: undefined },
  put({ disconnect: { rating: ampere(20), onUnit: true } }),
  put({ disconnect: { rating: ampere(20), onUnit: false } }),
];
const word = (clause: string, complies: boolean) =>
  ({ clause, complies, by: "N. Tester", at: "2026-06-15" }) as const;
const metricRules = [iec60364, bs7671, asNzs3000Australia, asNzs3000NewZealand];

const compressor = { kind: "compressor", current: ampere(18) } as const;
const heater = { kind: "heater", current: ampere(20) } as const;
const marked = (mca: number, mop: number, loads: readonly Load[] = [compressor]) =>
  [
    {
      loads,
      minimumCircuitAmpacity: ampere(mca),
      maximumOvercurrentProtection: ampere(mop),
    },
  ] as const;

export const inputs: Partial<Inputs<typeof circuitProtection>> = {
  circuitFromNameplate: [
    ...changes.map((change) => [{ ...condenser, ...change }] as const),
    [
      {
        ...small,
        rules: bs7671,
        verifications: [word("537", true), word("999", true), word("998", false)],
      },
    ],
    [{ ...small, rules: bs7671, verifications: [word("537", false)] }],
    ...metricRules.flatMap((rules) =>
      metricChanges.map((change) => [{ ...small, rules, ...change }] as const),
    ),
    [
      {
        ...small,
        rules: { ...iec60364, onlyConfirmed: true },
        wiring: { ...small.wiring, insulationLength: m(0.1) },
      },
    ],
    [
      {
        ...small,
        rules: japan,
        supply: { voltage: volt(200), phases: 1 },
        installed: { ...put({ conductor: "2.0 mm" }).installed, equipmentGrounding: undefined },
      },
    ],
  ] as never,
  compressorProtection: [[{ rules: nec2023, loads: [heater] }]],
  // 1.25 × 18 A = 22.5 A; 2.25 × 18 A = 40.5 A
  assessNameplate: [
    marked(22.5, 40),
    marked(20, 40),
    marked(22.5, 45),
    marked(30, 40),
    marked(25, 30, [heater]),
    marked(3.8, 15, [{ kind: "compressor", current: ampere(3) }]),
    marked(40, 50, [heater, { kind: "other", current: ampere(12) }]),
    marked(30, 20),
  ],
};
