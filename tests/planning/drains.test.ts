// The drains of a plan, each line whole: by IMC 2021, 307.2.1, 1/8 in per foot, and the rule of manuals for traps: drop of
// the static pressure and 1 in, seal of half that; blown through, a seal of the pressure and 1 in. Every record is invented.
import type { Drain, Equipment, Run } from "hvac-install-math/commissioning";
import { inchWater, m, mm, percent } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { type Part, partOf } from "./part.ts";

const plan = (run: Run, equipment: Equipment = {}) =>
  partOf("drain", { version: 2, equipment, runs: [run] });
const none = { bring: [], set: [], check: [], ask: [] };
const code = "[imc-2021 307.2.1]";
const traps = "[manufacturer-manuals condensate trap + common-practice]";
const unusable = (field: string, value: string) =>
  `runs[0].drain.${field}: unusable, field field.runs.drain.${field}, value ${value}`;
const asked = (field: string) =>
  `runs[0].drain.${field}: ask-of-runs, changes part.drain, field field.runs.drain.${field}, runs 1`;

it.each<[string, Drain, Partial<Part>]>([
  // 4 m / 96 = 41.67 mm.
  [
    "falls by 1/8 in per foot",
    { run: m(4), fall: mm(100) },
    {
      set: [`runs[0]: drain-fall, fall 0.04167 m, length 4 m, run 1 ${code}`],
      check: [`pass: runs[0]: gravity, available 100 mm, needed 41.67 mm ${code}`],
    },
  ],
  // 2 % of 4 m.
  [
    "falls as the manual asks",
    { run: m(4), fall: mm(100), requiredSlope: percent(2) },
    {
      set: [`runs[0]: drain-fall, fall 0.08 m, length 4 m, run 1 ${code}`],
      check: [`pass: runs[0]: gravity, available 100 mm, needed 80 mm ${code}`],
    },
  ],
  // 41.67 + 300 mm.
  [
    "is lifted by a pump where it has to rise",
    { run: m(4), fall: mm(-300) },
    {
      bring: [`runs[0]: drain-pump, lift 300 mm, run 1 ${code}`],
      check: [`inconclusive: runs[0]: fall-short, point 1, shortfall 341.7 mm ${code}`],
      ask: [asked("pump")],
    },
  ],
  [
    "asks for a slope that can be",
    { run: m(4), fall: mm(100), requiredSlope: percent(0.1) },
    { ask: [unusable("requiredSlope", "0.1 %")] },
  ],
  [
    "asks for a length that can be",
    { run: m(-4), fall: mm(100) },
    { ask: [unusable("run", "-4 m")] },
  ],
  [
    "asks for lift and curve of a pump",
    { pump: {} },
    { ask: [asked("pump.lift"), asked("pump.curve")] },
  ],
  ["needs nothing where it drops straight down", { vertical: true }, {}],
  [
    "has a trap where the fan sucks",
    { vertical: true, panPressure: inchWater(-1) },
    { bring: [`runs[0]: trap, drop 2 in, height 3 in, run 1, seal 1 in ${traps}`] },
  ],
  [
    "has a trap where the fan blows",
    { vertical: true, panPressure: inchWater(1) },
    { bring: [`runs[0]: trap, drop 0 in, height 2 in, run 1, seal 2 in ${traps}`] },
  ],
  ["has no trap without pressure", { vertical: true, panPressure: inchWater(0) }, {}],
  [
    "asks for a pressure that can be",
    { vertical: true, panPressure: inchWater(30) },
    { ask: [unusable("panPressure", "30 inH2O")] },
  ],
])("a drain %s", (_, drain, expected) => {
  expect(plan({ drain })).toEqual({ ...none, ...expected });
});

it("a unit that only heats has no drain, nor has a branch box", () => {
  expect(plan({}, { duty: "heating" })).toEqual(none);
  expect(plan({ serves: "branch-box" })).toEqual(none);
  expect(plan({}).ask).toEqual([asked("run"), asked("fall")]);
});
