// The parts that pictures are made of, one by one. Figures are invented, and what is expected of them is arithmetic.
import { english } from "hvac-install-math/language/en";
import {
  degC,
  degF,
  hour,
  kPag,
  micron,
  minute,
  pascalAbsolute,
  psi,
  psia,
  psig,
  second,
  standardAtmosphere,
  torr,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { acceptedOf } from "../../src/plots/accepted-vacuum.ts";
import { axisOf } from "../../src/plots/axis.ts";
import { linePlot, rowOfWords } from "../../src/plots/line-plot.ts";
import { namesInOneRow } from "../../src/plots/panel.ts";
import { frameOf } from "../../src/plots/plot-options.ts";
import { foundOf, pressureLines, temperaturePanel } from "../../src/plots/pressure-test-course.ts";
import { testRowsOf, zoneTemperature } from "../../src/plots/pressure-test-rows.ts";
import { inUnit, readerOf } from "../../src/plots/reader.ts";
import type { LinePlot, Panel } from "../../src/plots/shapes.ts";
import { widthOf } from "../../src/plots/svg-text.ts";
import { argumentOf } from "../argument-of.ts";

const inchPound = { language: english, system: "inch-pound" } as const;
const reader = readerOf(inchPound);

describe("a reader", () => {
  // 3 minutes, 3 hours and 4 days begin the next unit: a span has at least three of it. The library's own.
  it.each([
    [179.9, "s"],
    [180, "min"],
    [3 * 3600 - 1, "min"],
    [3 * 3600, "h"],
    [4 * 86_400 - 1, "h"],
    [4 * 86_400, "d"],
  ])("sees a span of %s s in %s", (seconds, symbol) => {
    expect(reader.timeUnitFor(seconds).symbol).toBe(symbol);
    const own = readerOf({ ...inchPound, units: { duration: minute } });
    expect(own.timeUnitFor(seconds)).toBe(minute);
  });

  it("sees a difference of pressures in the unit chosen for pressures, unless one is chosen for it", () => {
    const of = (units: object) => readerOf({ ...inchPound, units }).unitFor(psi(3)).symbol;
    expect(of({})).toBe("psi");
    expect(of({ gaugePressure: kPag })).toBe("kPa");
    expect(of({ absolutePressure: torr })).toBe("torr");
    expect(of({ gaugePressure: kPag, absolutePressure: torr })).toBe("kPa");
    expect(of({ gaugePressure: kPag, pressureDifference: psi })).toBe("psi");
  });

  // Unicode CLDR through Intl: German writes a comma.
  it("writes numbers by its locale, or by its language", () => {
    expect(readerOf({ ...inchPound, locale: "de" }).number(1234.5, 1)).toBe("1234,5");
    expect(reader.number(1234.5, 1)).toBe("1234.5");
  });

  it("knows the zero of a scale", () => {
    expect(inUnit(300, degC)).toBeCloseTo(26.85, 9); // 300 K less 273.15
    expect(inUnit(6894.757, psi)).toBeCloseTo(1, 6);
  });
});

describe("the lines of a pressure test", () => {
  const temperature = degF(70);
  /** The air of the room does not change, so that nothing is explained but what was read first. */
  const rowAt = (hours: number, pressure: number) => ({
    elapsed: hour(hours),
    pressure: psig(pressure),
    temperature,
  });
  const log = {
    readings: [rowAt(1, 500), rowAt(2, 499.4), rowAt(3, 499.1)],
    atmosphere: standardAtmosphere,
  };
  const found = (limit?: number) => ({
    correctedDrop: { value: psi(1), expandedUncertainty: psi(0.25) },
    ...(limit !== undefined && { limit: psi(limit) }),
    corrected: log.readings.map(({ elapsed, pressure }) => ({ elapsed, pressure })),
  });
  const lines = (test: object, assessment: object) => {
    const rows = testRowsOf(test as never);
    const view = {
      rows,
      found: foundOf(assessment as never),
      time: (s: number) => s / 3600,
      pressureUnit: psig,
      reader,
    };
    return pressureLines(test as never, assessment as never, view as never);
  };
  const rounded = (points: readonly (readonly [number, number])[] = []) =>
    points.map(([x, y]) => [x, Number(y.toFixed(6))]);

  it("begin where the fit does: the mean of what was corrected, each with its part of the drop", () => {
    // (500 + 0 · 1 + 499.4 + 0.5 · 1 + 499.1 + 1 · 1) / 3 = 500
    const [readings, explained, ring, ...more] = lines(log, found());
    expect(more).toEqual([]);
    expect(rounded(readings?.points)).toEqual([
      [1, 500],
      [2, 499.4],
      [3, 499.1],
    ]);
    expect(rounded(explained?.points)).toEqual([
      [1, 500],
      [2, 500],
      [3, 500],
    ]);
    expect(rounded(ring?.points)).toEqual([[3, 499]]);
    expect(ring?.marks).toBe("rings");
    expect(ring?.whisker).toBeCloseTo(0.25, 9);
  });

  it("begin with the first of two readings", () => {
    const two = { ...log, readings: [rowAt(1, 500), rowAt(3, 499.1)] };
    const corrected = [{ elapsed: hour(1), pressure: psig(400) }];
    const [, explained] = lines(two, { ...found(), corrected });
    expect(rounded(explained?.points)).toEqual([
      [1, 500],
      [3, 500],
    ]);
  });

  it.each<[string, object, [number, number][]]>([
    [
      "drop keeps its distance",
      { maximumDrop: psi(2) },
      [
        [1, 498],
        [2, 498],
        [3, 498],
      ],
    ],
    [
      "drop in a time grows",
      { maximumDrop: psi(2), per: hour(2) },
      [
        [1, 500],
        [2, 499],
        [3, 498],
      ],
    ],
    [
      "leak rate grows",
      { maximumLeakRate: {} },
      [
        [1, 500],
        [2, 499],
        [3, 498],
      ],
    ],
  ])("have a limit of which a %s", (_, criterion, expected) => {
    const [, , limit] = lines({ ...log, criterion }, found(2));
    expect(limit?.role).toBe("limit");
    expect(rounded(limit?.points)).toEqual(expected);
  });

  it("have a dot for each reading, up to forty", () => {
    const many = (count: number) => {
      const readings = Array.from({ length: count }, (_, i) => rowAt(i, 500 - (i % 2)));
      return lines({ ...log, readings }, { ...found(), corrected: undefined })[0]?.marks;
    };
    expect([many(40), many(41)]).toEqual(["dotted line", undefined]);
  });

  it("refuse what no verdict says", () => {
    const wrong = (one: object) => argumentOf(() => lines(log, { ...found(), ...one }));
    expect(wrong({ correctedDrop: { value: psi(1), expandedUncertainty: psi(-0.1) } })).toBe(
      "assessment.correctedDrop.expandedUncertainty",
    );
    expect(wrong({ corrected: [null] })).toBe("assessment.corrected[0].elapsed");
    expect(wrong({ corrected: [{ elapsed: hour(1), pressure: psia(500) }] })).toBe(
      "assessment.corrected[0].pressure",
    );
    expect(wrong({ limit: psi(0) })).toBe("assessment.limit");
  });
});

describe("the temperatures of a pressure test", () => {
  const rows = (...temperatures: unknown[]) =>
    testRowsOf({
      readings: temperatures.map((temperature, i) => ({
        pressure: psig(500),
        temperature,
        elapsed: hour(i),
      })),
    } as never);
  const hours = (seconds: number) => seconds / 3600;

  it("have one line without a name, or one for each zone with its number", () => {
    const one = temperaturePanel(rows(degF(70), degF(80)), hours, reader);
    expect(
      one.lines.map(({ label, points }) => [label, points.map(([, y]) => Number(y.toFixed(6)))]),
    ).toEqual([[undefined, [70, 80]]]);
    expect(one).toMatchObject({ bands: [], levels: [], reach: [] });
    // A row with fewer: the last one stands for the rest.
    const two = temperaturePanel(rows([degF(70), degF(72)], degF(80), [degF(60)]), hours, reader);
    expect(two.lines.map(({ points }) => points.map(([, y]) => Number(y.toFixed(6))))).toEqual([
      [70, 80, 60],
      [72, 80, 60],
    ]);
    expect(two.lines.map(({ label }) => /\d/.exec(label ?? "")?.[0])).toEqual(["1", "2"]);
    expect(new Set(two.lines.map(({ role }) => role)).size).toBe(2);
    expect(zoneTemperature({ temperature: [degC(0)] } as never, 3)).toBe(273.15);
  });

  it.each<[string, unknown]>([
    ["a number among them", [degF(70), 80]],
    ["a first one that is none", [psi(70), degF(80)]],
    ["an empty list", []],
  ])("are refused with %s", (_, wrong) => {
    expect(argumentOf(() => rows(degF(70), wrong))).toBe("readings[1].temperature");
  });

  it("stand beside pressures of one kind, that of the first reading", () => {
    const both = [0, 1].map((i) => ({
      pressure: psia(500),
      temperature: degF(70),
      elapsed: hour(i),
    }));
    expect(testRowsOf({ readings: both } as never).kind).toBe("absolutePressure");
    const late = { ...both[1], pressure: psig(500) };
    expect(argumentOf(() => testRowsOf({ readings: [both[0], late] } as never))).toBe(
      "readings[1].pressure",
    );
  });
});

describe("what a policy accepts", () => {
  const of = (...checkpoints: object[]) => acceptedOf({ checkpoints } as never, 10);
  it("is a level, or a rise from the first reading, each until its time", () => {
    const stretches = of(
      { at: minute(5), limit: pascalAbsolute(60) },
      { at: minute(15), rise: psi(0), failAbove: pascalAbsolute(130) },
    );
    expect(stretches).toEqual([
      { since: 0, at: 300, limit: 60, isRise: false, failAbove: 0 },
      { since: 300, at: 900, limit: 10, isRise: true, failAbove: 130 },
    ]);
  });
  it.each<[string, object[]]>([
    ["policy.checkpoints[0].at", [{ at: second(0), limit: micron(500) }]],
    [
      "policy.checkpoints[1].at",
      [
        { at: minute(5), limit: micron(500) },
        { at: minute(5), limit: micron(500) },
      ],
    ],
    ["policy.checkpoints[0].limit", [{ at: minute(5), limit: micron(0) }]],
    ["policy.checkpoints[0].rise", [{ at: minute(5), rise: psi(-1) }]],
  ])("cannot be %s", (argument, checkpoints) => {
    expect(argumentOf(() => of(...checkpoints))).toBe(argument);
  });
});

describe("an axis", () => {
  const of = (values: number[], isRound: boolean, count = 4) =>
    axisOf({ values, between: [0, 100], count, isRound }, (value, decimals) =>
      value.toFixed(decimals),
    );
  it("begins and ends at its values, or at round ones", () => {
    expect(of([3, 97], false).ends).toEqual([3, 97]);
    expect(of([3, 97], true).ends).toEqual([0, 100]);
  });
  it("has as many decimals as its step", () => {
    expect(of([0, 1], false).ticks.map(([, word]) => word)).toEqual([
      "0.0",
      "0.2",
      "0.4",
      "0.6",
      "0.8",
      "1.0",
    ]);
    expect(of([0, 10], false).ticks.map(([, word]) => word)).toEqual([
      "0",
      "2",
      "4",
      "6",
      "8",
      "10",
    ]);
    expect(of([0, 0.1], false, 1).ticks.map(([, word]) => word)).toEqual(["0.0", "0.1"]);
  });
  it("has a value that never changes in its middle, with a millionth of it to both sides", () => {
    expect(of([5, 5], false).at(5)).toBeCloseTo(50, 9);
    const [low, high] = of([-2e6, -2e6], false).ends;
    expect([low, high]).toEqual([-2e6 - 2, -2e6 + 2]);
    // Of 0 and 1 the larger counts: 1e-6 apart is much, of a million it is nothing.
    expect(of([0, 1e-3], false).ends).toEqual([0, 1e-3]);
    expect(of([0, 0], false).ends).toEqual([-1, 1]);
  });
});

describe("words", () => {
  const frame = (width: number) =>
    frameOf(
      { language: english, system: "SI", colors: "light", title: "A heading", width },
      "a",
      undefined as never,
    );
  const level = { role: "limit", from: 0, to: 10, y: 5 } as const;
  const panel = (more: Partial<Panel>): Panel => ({
    name: "left",
    height: 100,
    bands: [],
    levels: [],
    lines: [
      {
        role: "measured",
        points: [
          [0, 0],
          [10, 10],
        ],
      },
    ],
    reach: [],
    ...more,
  });
  const draw = (more: Partial<Panel>, width = 300, xWords?: LinePlot["xWords"]) =>
    linePlot({
      frame: frame(width),
      outcome: "PASS",
      result: "invented result",
      description: "invented",
      xName: "across",
      x: [0, 10],
      xWords,
      panels: [panel(more)],
    });
  const texts = (svg: string) =>
    [...svg.matchAll(/<text x="([^"]*)" y="([^"]*)"([^>]*)>(.*?)<\/text>/g)].map(
      ([, x, y, more = "", words = ""]) => ({
        x: Number(x),
        y: Number(y),
        more,
        words,
      }),
    );

  it("above are a heading, larger and bold, then the outcome in bold with what it rests on", () => {
    const svg = draw({});
    const [heading, outcome] = texts(svg);
    expect(heading).toEqual({
      x: 0,
      y: 19,
      more: ' font-size="15" font-weight="600"',
      words: "A heading",
    });
    expect(outcome).toEqual({
      x: 0,
      y: 37,
      more: "",
      words: '<tspan font-weight="600">PASS</tspan>: invented result',
    });
    // The picture ends 8 units below the name of its lower axis.
    const height = Number(/viewBox="0 0 300 ([\d.]+)"/.exec(svg)?.[1]);
    expect(height).toBe((texts(svg).find(({ words }) => words === "across")?.y ?? 0) + 8);
  });

  it("of a level that find no room stand in the legend, with its stroke before them", () => {
    const short = draw({ levels: [{ ...level, label: "short" }] });
    const y = texts(short).find(({ words }) => words === "short")?.y ?? 0;
    const axis = texts(short).find(({ words }) => words === "left")?.y ?? 0;
    expect(y).toBeGreaterThan(axis); // in the panel, by its level
    const long = "a level with more words than a picture of this width has room for";
    const svg = draw({ levels: [{ ...level, label: long }] });
    const rows = texts(svg).filter(
      ({ words }) => words && long.includes(words) && words !== "left",
    );
    expect(rows.map(({ words }) => words).join(" ")).toBe(long);
    expect(rows.length).toBeGreaterThan(1);
    for (const [i, row] of rows.entries()) {
      expect(row.x).toBe(32);
      expect(row.y - (rows[0]?.y ?? 0)).toBe(16 * i);
    }
    expect(svg).toContain(`d="M0,${(rows[0]?.y ?? 0) - 4.5}h26"`);
    // Two rows are one name: what comes below it begins after the last one.
    expect(texts(svg).find(({ words }) => words === "left")?.y).toBe((rows.at(-1)?.y ?? 0) + 20);
  });

  it("of two axes stand in one row where both have room, with 12 units between them", () => {
    const names = { name: "a".repeat(20), right: { name: "b".repeat(21), factor: 1 } };
    const both = widthOf(names.name, 13) + widthOf(names.right.name, 13);
    expect(namesInOneRow(panel(names), both + 12)).toBe(true);
    expect(namesInOneRow(panel(names), both + 11.9)).toBe(false);
    expect(namesInOneRow(panel({}), 0)).toBe(true);
    for (const [width, apart] of [
      [600, 0],
      [300, 16],
    ] as const) {
      const all = texts(draw(names, width));
      const [one, other] = [names.name, names.right.name].map((name) =>
        all.find(({ words }) => words === name),
      );
      expect((one?.y ?? 0) - (other?.y ?? 0)).toBe(apart);
      expect(other?.x).toBe(width);
    }
  });

  it("along the axis stand in place of its numbers and strokes", () => {
    const svg = draw({}, 300, [
      [0, "start"],
      [10, "end"],
    ]);
    const row = texts(svg).filter(({ words }) => words === "start" || words === "end");
    expect(row.length).toBe(2);
    expect(svg).not.toMatch(/v4/);
    expect(draw({})).toMatch(/v4/);
  });

  it("that would cover the ones before them are left out, and all stay inside", () => {
    const x = { at: (value: number) => value, ends: [0, 300], ticks: [] } as const;
    const wide = widthOf("word", 13);
    const row = (...places: number[]) =>
      rowOfWords(
        places.map((at) => [at, "word"] as const),
        x,
        50,
        300,
      ).map((one) => Number(/x="([^"]*)"/.exec(one)?.[1]));
    const close = (found: number[], expected: number[]) => {
      expect(found.length).toBe(expected.length);
      for (const [i, at] of found.entries()) expect(at).toBeCloseTo(expected[i] as number, 1);
    };
    close(row(100), [100]);
    close(row(0), [wide / 2]);
    close(row(300), [300 - 4 - wide / 2]);
    close(row(100, 100 + wide + 4.01), [100, 100 + wide + 4.01]);
    close(row(100, 100 + wide + 3.99), [100]);
    close(row(100, 110, 200), [100, 200]);
  });

  it("are none in a row of a list, where the course goes from edge to edge", () => {
    const svg = linePlot({
      frame: { ...frame(300), form: "sparkline" },
      outcome: "PASS",
      result: "invented result",
      description: "invented",
      xName: "across",
      x: [0, 10],
      panels: [panel({ levels: [{ ...level, label: "limit", y: 20 }] })],
    });
    expect(svg).not.toContain("<text");
    expect(svg).toContain('viewBox="0 0 120 28"');
    // 0 to 10 between 6 and 114; 0 to 20 between 22 and 6.
    expect(svg).toContain('d="M6,22L114,14"');
    expect(svg).toContain('d="M6,6L114,6"');
    expect(svg).toContain(">PASS: invented result. invented</desc>");
  });
});
