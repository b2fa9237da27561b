// Where each argument of flare-joint ends: the last value that is taken, the first that is refused, by name.
import {
  assessFlareCone,
  assessFlareDiameter,
  assessFlareTorque,
  assessFlareTurn,
  assessFlareWall,
  type FlareDiameterInput,
  type FlareTorqueInput,
  type FlareTube,
  type FlareWallInput,
  flareDiameterLimits,
  flareNutSize,
  flareTorque,
  flareTube,
  flareTubeOfThread,
  flareTurn,
  servicePortAdapter,
  usualServicePort,
} from "hvac-install-math/flare-joint";
import { degreeAngle, kg, mm, newtonMeter, percent } from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;

const Nm = newtonMeter;
const torque = (more: Partial<FlareTorqueInput>) => () =>
  assessFlareTorque({ tube: "1/4", torque: Nm(16), ...more });
const by = (low: number, high: number) => torque({ manual: { low: Nm(low), high: Nm(high) } });
const ofReading = (value: number) => torque({ wrench: { relativeAccuracy: percent(value) } });
const read = (value: number) =>
  torque({ torque: Nm(value), wrench: { relativeAccuracy: percent(4) } });
const turn = (value: number) => () => assessFlareTurn({ tube: "1/4", turn: degreeAngle(value) });
const diameter = (more: Partial<FlareDiameterInput>) => () =>
  assessFlareDiameter({ tube: "3/8", refrigerant: "R32", diameter: mm(13), ...more });
const between = (low: number, high: number) =>
  diameter({ manual: { low: mm(low), high: mm(high) } });
const wall = (more: Partial<FlareWallInput>) => () =>
  assessFlareWall({ tube: "3/8", refrigerant: "R32", wall: mm(0.9), ...more });
const cone = (value: number) => () => assessFlareCone({ seatAngle: degreeAngle(value) });
const tube = (value: number) => () => flareTube(mm(value));
const thread = (name: Anything) => () => flareTubeOfThread(name);
const spaces = (count: number) => " ".repeat(count);

describe("the arguments of flare-joint", () => {
  test.each([
    ["torque", read(0.01), read(0)],
    ["torque", read(0.01), read(-0.01)],
    ["manual.low", by(0.01, 1), by(0, 1)],
    ["manual.low", by(15, 15), by(15.1, 15)],
    ["manual.high", by(1, 1), by(1, 0)],
    ["manual.low", torque({}), torque({ manual: null as Anything })],
    [
      "manualReadAgain",
      torque({ manualReadAgain: true }),
      torque({ manualReadAgain: "yes" as Anything }),
    ],
    ["wrench.relativeAccuracy", ofReading(0), ofReading(-0.1)],
    ["wrench.relativeAccuracy", ofReading(99.9), ofReading(100)],
    [
      "wrench.resolution",
      torque({ wrench: { resolution: Nm(0) } }),
      torque({ wrench: { resolution: Nm(-1) } }),
    ],
    ["confidence", torque({ confidence: 0.5 }), torque({ confidence: 0.49 })],

    ["turn", turn(0.1), turn(0)],
    ["seatAngle", cone(0.1), cone(0)],
    ["seatAngle", cone(45), () => assessFlareCone({} as Anything)],

    ["diameter", diameter({ diameter: mm(0.1) }), diameter({ diameter: mm(0) })],
    ["manual.low", between(0.1, 1), between(0, 1)],
    ["manual.high", between(1, 1), between(1, 0)],

    // Half of 3/8 in is 4.7625 mm.
    ["wall", wall({ wall: mm(4.76) }), wall({ wall: mm(4.77) })],
    ["wall", wall({ wall: mm(0.01) }), wall({ wall: mm(0) })],
    ["manualMinimum", wall({ manualMinimum: mm(0.01) }), wall({ manualMinimum: mm(0) })],
    [
      "manualMinimum",
      wall({ manualMinimum: undefined }),
      wall({ manualMinimum: kg(1) as Anything }),
    ],

    ["outsideDiameter", tube(5.8), tube(5.79)],
    ["outsideDiameter", tube(6.55), tube(6.56)],
    ["outsideDiameter", tube(18.2), tube(18.21)],
    ["outsideDiameter", tube(19.25), tube(19.26)],

    // 40 characters and 41.
    ["name", thread(`1/2-20${spaces(34)}`), thread(`1/2-20${spaces(35)}`)],
    ["name", thread("1/2-20 UNF"), thread("UNF 1/2-20")],
    ["name", thread("1/2-20 UNF"), thread("1/2-20 UNR")],
    ["name", thread("1/2-20"), thread(undefined)],
    ["name", thread("1/2-20"), thread(["1/2-20"])],
  ] as const)(
    "%s: the last value that is taken, the first that is refused (%#)",
    (argument, taken, refused) => {
      expect(taken).not.toThrow();
      expect(refused).toThrow(expect.objectContaining({ argument }));
    },
  );

  test("a length that is none is told from one that is no tube's", () => {
    expect(tube(0)).toThrow(expect.objectContaining({ allowed: "more than 0 mm" }));
    expect(tube(0.1)).toThrow(expect.objectContaining({ name: "OutOfRangeError" }));
  });

  test("a wrench has its limits of error by torque or by reading", () => {
    const wrench = { accuracy: Nm(1), relativeAccuracy: percent(4) };
    const choices = [{ verbatim: "accuracy" }, { verbatim: "relativeAccuracy" }];
    expect(torque({ wrench })).toThrow(
      expect.objectContaining({
        argument: "wrench",
        value: "both",
        hint: { code: "quantity.enter.one-of", values: { choices } },
      }),
    );
  });

  test("a tube without a figure is refused with those that have one", () => {
    const inches = "1/4, 3/8, 1/2, 5/8, 3/4";
    const joint = { tube: "5/16", refrigerant: "R32" } as const;
    for (const refused of [
      () => flareDiameterLimits(joint),
      () => flareNutSize(joint),
      () => flareTurn("5/16"),
    ]) {
      expect(refused).toThrow(
        expect.objectContaining({
          name: "OutOfRangeError",
          argument: "tube",
          value: "5/16",
          allowed: inches,
          hint: { code: "flare-joint.figure-from-manual", values: {} },
        }),
      );
    }
  });
});

describe("the figures of flare-joint", () => {
  // Manufacturers' manuals for R410A and R32; metric tube by EN 378-2:2016, from memory.
  test.each([
    ["1/4", 0.7, 0.8],
    ["5/16", 0.7, 0.8],
    ["3/8", 0.7, 0.8],
    ["1/2", 0.7, 0.8],
    ["5/8", 0.8, 1],
    ["6 mm", 0.8, 0.8],
    ["8 mm", 0.8, 0.8],
    ["10 mm", 0.8, 0.8],
    ["12 mm", 0.8, 0.8],
    ["15 mm", 0.8, 0.8],
    ["18 mm", 1, 1],
  ] as const)("a wall of %s fails below %f mm and passes from %f mm", (size, lenient, strict) => {
    const at = (value: number) => wall({ tube: size, wall: mm(value) })().outcome;
    expect([at(lenient - 0.01), at(strict)]).toEqual(["fail", "pass"]);
    expect([at(lenient), at(strict - 0.01)]).toEqual(
      lenient < strict ? ["inconclusive", "inconclusive"] : ["pass", "fail"],
    );
  });

  // What two windows share, by the narrower of them. 5/8 in: 68 to 82, 63 to 77, 61.8 to 75.4 N·m share 9 of 14 and 7.4 of
  // 13.6. 3/4 in: 100 to 120, 90 to 110, 97.2 to 118.6 N·m share 10 of 20 and 12.8 of 20; the other pairs more than 0.9.
  test.each([
    [
      "5/8",
      [
        ["jis-type-manuals", "en-378-2", 9 / 14],
        ["jis-type-manuals", "manual-range", 7.4 / 13.6],
      ],
    ],
    [
      "3/4",
      [
        ["jis-type-manuals", "en-378-2", 0.5],
        ["en-378-2", "manual-range", 0.64],
      ],
    ],
  ] as const)(
    "the sources that conflict at %s are named with what they share",
    (size, conflicts) => {
      expect(flareTorque(size).conflicts).toEqual(
        conflicts.map(([first, second, shared]) => ({
          between: [first, second],
          sharedFraction: expect.closeTo(shared, 10),
        })),
      );
    },
  );

  test("a thread is read as the trade writes it", () => {
    const written = ["1/2-20", " 1/2-20 ", "1/2-20UNF", "1/2-20 unf", "1/2-20  UNS", "1/2-20 UN"];
    expect(written.map((name) => flareTubeOfThread(name))).toEqual(
      written.map((): FlareTube => "5/16"),
    );
  });

  // Common practice, no source: 5/16 in at ductless units of the high-pressure refrigerants.
  test.each([
    ["mini-split", "R410A", "5/16"],
    ["mini-split", "R32", "5/16"],
    ["mini-split", "R22", "1/4"],
    ["mini-split", "R134a", "1/4"],
    ["ducted", "R410A", "1/4"],
    ["ducted", "R32", "1/4"],
  ] as const)("a %s unit of %s has a port of %s in", (equipment, refrigerant, port) => {
    expect(usualServicePort({ equipment, refrigerant })).toBe(port);
  });

  test("an adapter names both threads", () => {
    const { port, hose, needed } = servicePortAdapter({ port: "1/4", hose: "5/16" });
    expect([port.name, hose.name, needed]).toEqual(["7/16-20", "1/2-20", true]);
  });
});
