// Every minimum circuit ampacity from 1 to 100 A in steps of 0.1 A with every standard protection from it up,
// against a brute force that knows nothing of the library: its own tables, integers (tenths of an ampere), and
// trial of every device and every conductor.
import {
  type AwgSize,
  type AwgWiring,
  circuitFromNameplate,
  type EquipmentKind,
  iec60364,
  type MetricWiring,
  nec2020,
  nec2023,
  nec2026,
} from "hvac-install-math/circuit-protection";
import { ampere, degC, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const devices = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200];
const names =
  "14 AWG,12 AWG,10 AWG,8 AWG,6 AWG,4 AWG,3 AWG,2 AWG,1 AWG,1/0 AWG,2/0 AWG,3/0 AWG,4/0 AWG,250 kcmil".split(
    ",",
  ) as AwgSize[];
const table: Record<string, number[]> = {
  cu60: [15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195, 215],
  cu75: [20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230, 255],
  cu90: [25, 30, 40, 55, 75, 95, 115, 130, 145, 170, 195, 225, 260, 290],
  al60: [0, 15, 25, 35, 40, 55, 65, 75, 85, 100, 115, 130, 150, 170],
  al75: [0, 20, 30, 40, 50, 65, 75, 90, 100, 120, 135, 155, 180, 205],
};
const groundingCopper = (device: number): AwgSize =>
  device <= 15
    ? "14 AWG"
    : device <= 20
      ? "12 AWG"
      : device <= 60
        ? "10 AWG"
        : device <= 100
          ? "8 AWG"
          : "6 AWG";
const groundingAluminum = (device: number): AwgSize =>
  device <= 15
    ? "12 AWG"
    : device <= 20
      ? "10 AWG"
      : device <= 60
        ? "8 AWG"
        : device <= 100
          ? "6 AWG"
          : "4 AWG";

/** Tenths of an ampere that each size carries, by hand for each way of running it. */
interface Way {
  readonly title: string;
  readonly wiring: AwgWiring;
  readonly equipment?: EquipmentKind;
  readonly tenths: (i: number, device: number) => number;
  readonly metal?: "aluminum";
}
const at = (name: string, i: number) => table[name]?.[i] ?? 0;
const ways: readonly Way[] = [
  {
    title: "copper with unmarked terminations",
    wiring: { material: "copper", insulation: "75 °C" },
    tenths: (i, device) => 10 * at(device > 100 ? "cu75" : "cu60", i),
  },
  {
    title: "copper with 75 °C terminations",
    wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C" },
    tenths: (i) => 10 * at("cu75", i),
  },
  {
    title: "non-metallic cable",
    wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", cable: "NM" },
    tenths: (i) => 10 * at("cu60", i),
  },
  {
    title: "copper at 45 °C with six conductors together",
    wiring: {
      material: "copper",
      insulation: "90 °C",
      terminations: "75 °C",
      ambient: degC(45),
      currentCarryingConductors: 6,
    },
    // 0.87 × 0.80 = 0.696 of the 90 °C column
    tenths: (i) => Math.min(10 * at("cu75", i), (6960 * at("cu90", i)) / 1000),
  },
  {
    title: "aluminum",
    wiring: { material: "aluminum", insulation: "75 °C", terminations: "75 °C" },
    tenths: (i) => 10 * at("al75", i),
    metal: "aluminum",
  },
  {
    title: "a heater, which its device has to protect",
    wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C" },
    equipment: "other",
    tenths: (i) => 10 * at("cu75", i),
  },
];

/** 240.4(B) and (D): the first standard size that reaches the ampacity, small conductors less. */
const generalLimit = (i: number, tenths: number) =>
  Math.min(devices.find((d) => 10 * d >= tenths) ?? 200, [15, 20, 30][i] ?? 1000);

describe("every plate from 1 to 100 A", () => {
  it.each(ways)("gives the brute force's circuit with $title", (way) => {
    let count = 0;
    const wrong: string[] = [];
    for (let tenths = 10; tenths <= 1000; tenths++) {
      for (const maximum of devices) {
        // Above 1.8 MCA and the floors a plate cannot be; a little beyond is swept too.
        if (10 * maximum < tenths || (maximum > 60 && 10 * maximum > 2.5 * tenths)) continue;
        count++;
        const circuit = circuitFromNameplate({
          rules: [nec2020, nec2023, nec2026][count % 3] ?? nec2023,
          minimumCircuitAmpacity: ampere(tenths / 10),
          maximumOvercurrentProtection: ampere(maximum),
          supply: { voltage: volt(240), phases: 1 },
          wiring: way.wiring,
          equipment: way.equipment ?? "motor-compressor",
        });
        let expected = -1;
        for (let i = names.length - 1; i >= 0; i--) {
          const carries = way.tenths(i, maximum);
          const guarded = !way.equipment || generalLimit(i, carries) >= maximum;
          if (carries > 0 && carries >= tenths && guarded) expected = i;
        }
        const ground = (way.metal ? groundingAluminum : groundingCopper)(maximum);
        const groundIndex = Math.min(names.indexOf(ground), expected);
        const { device, conductor, equipmentGrounding: egc, disconnect } = circuit;
        const ok =
          device.rating.si === maximum && // largest standard size, never above the plate
          conductor?.size === names[expected] &&
          10 * (conductor?.usable.si ?? 0) >= tenths - 1e-6 &&
          egc?.tableSize === ground &&
          egc?.size === names[groundIndex] &&
          disconnect.minimumRating.si >= (1.15 * tenths) / 10 - 1e-6 &&
          device.ratings.every(({ si }) => si <= maximum && 10 * si >= tenths && si >= 15) &&
          device.ratings.length ===
            devices.filter((d) => d <= maximum && 10 * d >= tenths).length &&
          circuit.outcome !== "pass"; // nothing fitted was stated
        if (!ok && wrong.length < 5) {
          wrong.push(
            `${tenths / 10} A, ${maximum} A: ${device.rating}, ${conductor?.size}, ${egc?.size}`,
          );
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(count).toBeGreaterThan(5000);
  });

  it("never proposes a device above a maximum that is not a standard size", () => {
    const wrong: string[] = [];
    for (let tenths = 150; tenths <= 2000; tenths++) {
      const { device } = circuitFromNameplate({
        rules: nec2023,
        minimumCircuitAmpacity: ampere(10),
        maximumOvercurrentProtection: ampere(tenths / 10),
        supply: { voltage: volt(240), phases: 1 },
        wiring: { material: "copper", insulation: "75 °C" },
      });
      const best = devices.filter((d) => 10 * d <= tenths).at(-1);
      if (device.rating.si !== best) wrong.push(`${tenths / 10}: ${device.rating}`);
    }
    expect(wrong).toEqual([]);
  });

  it("keeps Ib ≤ In ≤ Iz under the international rules", () => {
    const breakers = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63];
    const sizes = ["1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²"];
    const clipped = [19.5, 27, 36, 46, 63, 85];
    const wiring: MetricWiring = {
      material: "copper",
      insulation: "70 °C",
      method: "C",
      ambient: degC(35),
    };
    const wrong: string[] = [];
    for (let tenths = 10; tenths <= 630; tenths++) {
      for (const maximum of breakers.filter((b) => 10 * b >= tenths)) {
        const {
          device,
          conductor,
          equipmentGrounding: earth,
        } = circuitFromNameplate({
          rules: iec60364,
          minimumCircuitAmpacity: ampere(tenths / 10),
          maximumOvercurrentProtection: ampere(maximum),
          supply: { voltage: volt(230), phases: 1 },
          wiring,
        });
        const rated = breakers.find((b) => 10 * b >= tenths) ?? 0;
        const size = sizes[clipped.findIndex((a) => a * 94 >= rated * 100)];
        if (device.rating.si !== rated || conductor?.size !== size || earth?.size !== size) {
          wrong.push(`${tenths / 10} A, ${maximum} A: ${device.rating}, ${conductor?.size}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
