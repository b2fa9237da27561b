// What a picture shows can be read off it with a ruler: its own ticks give the scale, and every shape stands where the
// figures say. The figures are invented; the heights follow from them by the rule of three.
import { english } from "hvac-install-math/language/en";
import { describe, expect, it } from "vitest";
import { barPlot } from "../../src/plots/bar-plot.ts";
import { linePlot } from "../../src/plots/line-plot.ts";
import { frameOf } from "../../src/plots/plot-options.ts";
import type { LinePlot, Panel } from "../../src/plots/shapes.ts";
import { paintOf, strokeOf } from "../../src/plots/styles.ts";

const frameFor = (form: "full" | "sparkline" = "full", width = 440) =>
  frameOf(
    { language: english, system: "SI", colors: "light", title: "invented", form, width },
    "invented",
    undefined as never,
  );

interface Shape {
  readonly name: string;
  readonly words: string;
  readonly [attribute: string]: string;
}

/** The shapes and words of a picture, in the order in which they are drawn. */
const shapesIn = (svg: string): Shape[] =>
  [...svg.matchAll(/<(path|rect|circle|text)([^>]*?)(?:\/>|>(.*?)<\/text>)/g)].map(
    ([, name = "", attributes = "", words = ""]) => ({
      name,
      words,
      ...Object.fromEntries(
        [...attributes.matchAll(/ ([\w-]+)="([^"]*)"/g)].map(([, key = "", value = ""]) => [
          key,
          value,
        ]),
      ),
    }),
  );

/** The numbers of a path. */
const numbersIn = (d = "") => (d.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);

/** Where a value lies, by two ticks and their numbers. */
function scaleOf(ticks: readonly (readonly [value: number, at: number])[]) {
  const [[low, from], [high, to]] = [ticks[0], ticks.at(-1)] as [
    [number, number],
    [number, number],
  ];
  return (value: number) => from + ((value - low) / (high - low)) * (to - from);
}

const close = (found: readonly number[], expected: readonly number[]) => {
  expect(found.length).toBe(expected.length);
  for (const [i, one] of found.entries()) expect(one).toBeCloseTo(expected[i] as number, 1);
};

const panel: Panel = {
  name: "pressure",
  height: 200,
  bands: [
    {
      role: "model",
      label: "band",
      points: [
        [0, 10, 20],
        [100, 30, 50],
      ],
    },
  ],
  levels: [{ role: "limit", label: "limit", from: 0, to: 80, y: 60, stop: true }],
  lines: [
    {
      role: "measured",
      label: "dots",
      marks: "dots",
      points: [
        [0, 12],
        [50, 30],
        [100, 44],
      ],
    },
    {
      role: "model",
      label: "model",
      points: [
        [0, 0],
        [100, 100],
      ],
    },
    { role: "second", label: "rings", marks: "rings", whisker: 8, points: [[20, 70]] },
    {
      role: "guide",
      label: "crosses",
      marks: "crosses",
      points: [
        [10, 90],
        [60, 85],
      ],
    },
    {
      role: "limit",
      label: "dotted",
      marks: "dotted line",
      points: [
        [70, 10],
        [90, 15],
      ],
    },
  ],
  reach: [0, 100],
  right: { name: "twice", factor: 2 },
};
const plot = (form: "full" | "sparkline" = "full", width = 440): LinePlot => ({
  frame: frameFor(form, width),
  outcome: "PASS",
  result: "invented result",
  description: "invented description",
  xName: "time",
  x: [0, 100],
  panels: [panel],
});

describe("a plot of lines", () => {
  const shapes = shapesIn(linePlot(plot()));
  const words = shapes.filter(({ name }) => name === "text");
  const grid = shapes.filter((one) => one["stroke-opacity"] === "0.16");
  const [left, , right] = numbersIn(grid[0]?.d) as [number, number, number];
  const numbers = words.filter((one) => one["text-anchor"] === "end" && /^\d+$/.test(one.words));
  const Y = scaleOf(
    numbers.map((one, i) => [Number(one.words), numbersIn(grid[i]?.d)[1] as number]),
  );
  const ruler = shapes.find(({ d = "" }) => /v4/.test(d));
  const xNumbers = words.filter(
    (one) => one["text-anchor"] === "middle" && /^\d+$/.test(one.words),
  );
  const strokes = [...(ruler?.d ?? "").matchAll(/M([\d.]+),([\d.]+)v4/g)];
  const X = scaleOf(xNumbers.map((one, i) => [Number(one.words), Number(strokes[i]?.[1])]));
  const inPanel = shapes.indexOf(grid.at(-1) as Shape);
  /** What is drawn in the panel in the color of a role; ticks have the same color as what is measured, and are fainter. */
  const of = (role: Panel["lines"][number]["role"]) =>
    shapes
      .slice(inPanel)
      .filter((one) => one.stroke === paintOf(role, "light") && !one["stroke-opacity"]);

  it("has a number beside each line of the grid and each stroke of the ruler", () => {
    expect(numbers.map((one) => one.words)).toEqual(["0", "20", "40", "60", "80", "100"]);
    for (const [i, { d }] of grid.entries()) {
      const [from, y, to] = numbersIn(d) as [number, number, number];
      expect([from, to]).toEqual([left, right]);
      // 13 units high, the words stand in the middle of their line.
      expect(Number(numbers[i]?.y)).toBeCloseTo(y + 4.5, 1);
      expect(Number(numbers[i]?.x)).toBeCloseTo(left - 6, 1);
    }
    expect(Y(0) - Y(100)).toBeCloseTo(panel.height, 1);
    expect(strokes.length).toBe(xNumbers.length);
    for (const [i, [, x = "", y = ""]] of strokes.entries()) {
      expect(Number(xNumbers[i]?.x)).toBeCloseTo(Number(x), 0);
      expect(Number(xNumbers[i]?.y)).toBeCloseTo(Number(y) + 18, 1);
      expect(Number(y)).toBeCloseTo(Y(0), 1);
    }
    close([X(0), X(100)], [left, right]);
    close(numbersIn(/M[^M]*H[\d.]+/.exec(ruler?.d ?? "")?.[0]), [left, Y(0), right]);
  });

  it("has the numbers of the second axis at their heights, outside, with a stroke each", () => {
    const own = words.filter(({ x }) => Number(x) > right && Number(x) < 440);
    expect(own.map((one) => one.words)).toEqual(["0", "50", "100", "150", "200"]);
    const marks = shapes.filter(({ d = "" }) => /h4$/.test(d));
    for (const [i, one] of own.entries()) {
      const y = Y(Number(one.words) / 2);
      close([Number(one.x), Number(one.y)], [right + 7, y + 4.5]);
      close(numbersIn(marks[i]?.d), [right, y, 4]);
    }
  });

  it("names its axes: the vertical ones above, the horizontal one below in the middle", () => {
    const called = (name: string) => words.find((one) => one.words === name);
    close([Number(called("pressure")?.x), Number(called("pressure")?.y)], [0, Y(100) - 12]);
    close([Number(called("twice")?.x), Number(called("twice")?.y)], [440, Y(100) - 12]);
    expect(called("twice")?.["text-anchor"]).toBe("end");
    close([Number(called("time")?.x), Number(called("time")?.y)], [(left + right) / 2, Y(0) + 36]);
    expect(called("time")?.["text-anchor"]).toBe("middle");
  });

  it("draws lines through their points", () => {
    const [line] = of("model").filter((one) => one["stroke-width"] === "2.4");
    close(numbersIn(line?.d), [X(0), Y(0), X(100), Y(100)]);
    const dotted = of("limit").find(({ d = "" }) => numbersIn(d)[3] === Number(Y(15).toFixed(2)));
    close(numbersIn(dotted?.d), [X(70), Y(10), X(90), Y(15)]);
  });

  it("marks points where they are: dots, larger dots on a line, rings, crosses", () => {
    const [dots] = of("measured");
    expect(dots).toMatchObject({ "stroke-width": "3.2", "stroke-linecap": "round" });
    close(numbersIn(dots?.d), [X(0), Y(12), 0, X(50), Y(30), 0, X(100), Y(44), 0]);
    const larger = of("limit").find((one) => one["stroke-linecap"] === "round");
    expect(larger?.["stroke-width"]).toBe("4.4");
    close(numbersIn(larger?.d), [X(70), Y(10), 0, X(90), Y(15), 0]);
    const [whiskers, ring] = of("second");
    close([Number(ring?.cx), Number(ring?.cy), Number(ring?.r)], [X(20), Y(70), 5]);
    // From 8 below to 8 above, with a bar of 8 units at each end.
    const [x, up, down] = [X(20), Y(78), Y(62)];
    close(numbersIn(whiskers?.d), [x - 4, up, x + 4, x, up, down, x - 4, down, x + 4]);
    const [crosses] = of("guide");
    const arms = [6, 6, 0, -6, -6, 6];
    close(numbersIn(crosses?.d), [X(10) - 3, Y(90) - 3, ...arms, X(60) - 3, Y(85) - 3, ...arms]);
    expect(crosses?.fill).toBe("none");
  });

  it("draws a level from where it begins to where it stops, with a stroke there", () => {
    const [level, stop] = of("limit");
    expect(level).toMatchObject({ "stroke-dasharray": "2 3", fill: "none" });
    close(numbersIn(level?.d), [X(0), Y(60), X(80), Y(60)]);
    close(numbersIn(stop?.d), [X(80), Y(60) - 5, 10]);
  });

  it("fills a band between its two lines", () => {
    const band = shapes.find((one) => one.name === "path" && one["fill-opacity"] === "0.18");
    expect(band?.fill).toBe(paintOf("model", "light"));
    const places = numbersIn(band?.d);
    const corners = [0, 2, 4, 6].map((i) =>
      places
        .slice(i, i + 2)
        .map((at) => at.toFixed(0))
        .join(" "),
    );
    const expected = [
      [X(0), Y(10)],
      [X(0), Y(20)],
      [X(100), Y(30)],
      [X(100), Y(50)],
    ].map((place) => place.map((at) => at.toFixed(0)).join(" "));
    expect(corners.sort()).toEqual(expected.sort());
  });

  it("has bands at the bottom, then levels, then lines of which the first lies on top", () => {
    const band = shapes.findIndex((one) => one.name === "path" && one["fill-opacity"] === "0.18");
    const at = (one: Shape | undefined) => shapes.indexOf(one as Shape);
    const order = [
      band,
      at(of("limit")[0]),
      at(of("limit").find((one) => one["stroke-linecap"] === "round")),
      at(of("guide")[0]),
      at(of("second")[0]),
      at(of("model").find((one) => one["stroke-width"] === "2.4")),
      at(of("measured")[0]),
    ];
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(band).toBeGreaterThan(inPanel);
  });
});

describe("a legend", () => {
  it.each([440, 300, 1200])(
    "shows each line as it is drawn, beside its name, at a width of %s",
    (width) => {
      const shapes = shapesIn(linePlot(plot("full", width)));
      const rows = new Map<string, number>();
      for (const { label, role, marks } of panel.lines) {
        const name = shapes.findIndex((one) => one.words === label);
        const words = shapes[name] as Shape;
        // What is drawn just before the name, back to where the sample begins.
        const before = shapes
          .slice(Math.max(0, name - 2), name)
          .filter((one) => one.name !== "text");
        const own = before.filter((one) => one.stroke === paintOf(role, "light"));
        const middle = Number(words.y) - 4.5;
        const from = Number(words.x) - 32; // a sample of 26 units, then 6
        rows.set(label as string, Number(words.y));
        const line = own.find(({ d = "" }) => /h26$/.test(d));
        if (!marks || marks === "dotted line") {
          close(numbersIn(line?.d), [from, middle, 26]);
          expect(line?.["stroke-dasharray"]).toBe(strokeOf(role, "light")["stroke-dasharray"]);
        } else expect(line).toBeUndefined();
        const mark = own.find((one) => one !== line);
        if (marks === "dots")
          close(
            numbersIn(mark?.d),
            [0.1, 0.37, 0.63, 0.9].flatMap((part) => [from + 26 * part, middle, 0]),
          );
        if (marks === "dotted line") close(numbersIn(mark?.d), [from + 13, middle, 0]);
        if (marks === "crosses") close(numbersIn(mark?.d).slice(0, 2), [from + 10, middle - 3]);
        if (marks === "rings") close([Number(mark?.cx), Number(mark?.cy)], [from + 13, middle]);
        expect(from).toBeGreaterThanOrEqual(0);
      }
      const band = shapes.find((one) => one.name === "rect");
      const words = shapes.find((one) => one.words === "band");
      const at = [Number(words?.x) - 32, Number(words?.y) - 4.5] as const;
      close(
        [Number(band?.x), Number(band?.y), Number(band?.width), Number(band?.height)],
        [at[0], at[1] - 5, 26, 10],
      );
      expect(band).toMatchObject({ fill: paintOf("model", "light"), "fill-opacity": "0.18" });
      // Wide enough, all stand in one row; else in rows of 18 units.
      const heights = [...new Set(rows.values())];
      expect(heights.length === 1).toBe(width > 300);
      for (const [i, y] of heights.entries()) expect(y - (heights[0] as number)).toBe(18 * i);
    },
  );
});

describe("a plot of bars", () => {
  const bars = [
    { label: "allowed", role: "model", low: 200, high: 253 },
    { label: "read", role: "measured", low: 238, high: 238, rings: [{ at: 238, uncertainty: 12 }] },
  ] as const;
  const draw = (form: "full" | "sparkline") =>
    shapesIn(
      barPlot({
        frame: frameFor(form),
        outcome: "PASS",
        result: "invented result",
        description: "invented description",
        xName: "voltage",
        reach: [180, 280],
        bars,
      }),
    );
  const barsOn = (shapes: readonly Shape[], X: (value: number) => number) => {
    const [allowed, read] = shapes.filter(({ name }) => name === "rect");
    close([Number(allowed?.x), Number(allowed?.width)], [X(200), X(253) - X(200)]);
    close([Number(read?.x), Number(read?.width)], [X(238), 1]); // as thin as can be seen
    expect(allowed).toMatchObject({ fill: paintOf("model", "light"), "fill-opacity": "0.36" });
    const ring = shapes.find(({ name }) => name === "circle");
    const middle = Number(read?.y) + Number(read?.height) / 2;
    close([Number(ring?.cx), Number(ring?.cy)], [X(238), middle]);
    expect(ring?.stroke).toBe(paintOf("measured", "light"));
    // Twelve volts to each side, with a stroke of 8 units at the ends.
    const [from, to] = [X(226), X(250)];
    const whisker = shapes.find(({ d = "" }) => /v8M/.test(d));
    close(numbersIn(whisker?.d), [from, middle, to, from, middle - 4, 8, to, middle - 4, 8]);
    expect(whisker).toMatchObject({ stroke: paintOf("measured", "light"), fill: "none" });
    return [allowed, read] as [Shape, Shape];
  };

  it("has bars and rings where the numbers below say", () => {
    const shapes = draw("full");
    const grid = shapes.filter((one) => one["stroke-opacity"] === "0.16");
    const numbers = shapes.filter((one) => /^\d+$/.test(one.words));
    expect(numbers.map((one) => one.words)).toEqual(["180", "200", "220", "240", "260", "280"]);
    expect(grid.length).toBe(numbers.length);
    const X = scaleOf(
      numbers.map((one, i) => [Number(one.words), numbersIn(grid[i]?.d)[0] as number]),
    );
    close([X(180), X(280)], [10, 440 - 16]);
    const [allowed, read] = barsOn(shapes, X);
    expect([allowed.height, read.height]).toEqual(["12", "12"]);
    expect(Number(read.y) - Number(allowed.y)).toBe(40);
    const base = shapes.find((one) => one["stroke-opacity"] === "0.7");
    const [from, bottom, to] = numbersIn(base?.d) as [number, number, number];
    close([from, to], [10, 424]);
    for (const { d } of grid) close(numbersIn(d).slice(1), [bottom - 80, bottom]); // two rows of 40
    for (const [label, bar] of [
      ["allowed", allowed],
      ["read", read],
    ] as const) {
      const words = shapes.find((one) => one.words === label);
      close([Number(words?.x), Number(words?.y)], [10, Number(bar.y) - 8]);
    }
    close([Number(allowed.y) + 6], [bottom - 80 + 28]);
    const name = shapes.find((one) => one.words === "voltage");
    close([Number(name?.x), Number(name?.y)], [217, bottom + 36]);
    expect(name?.["text-anchor"]).toBe("middle");
    for (const one of numbers) close([Number(one.y)], [bottom + 18]);
  });

  it("has the same in a row of a list, from edge to edge", () => {
    const shapes = draw("sparkline");
    // 180 to 280 between 6 and 114 units; two bars of 28 units, 14 each, in the middle of their half.
    const [allowed, read] = barsOn(shapes, (value) => 6 + ((value - 180) / 100) * 108);
    close(
      [allowed, read].flatMap(({ y, height }) => [Number(y), Number(height)]),
      [4, 6, 18, 6],
    );
  });

  it("has a scale wide enough for what is uncertain", () => {
    const wide = { ...bars[1], rings: [{ at: 238, uncertainty: 90 }] };
    const svg = barPlot({
      frame: frameFor(),
      outcome: "PASS",
      result: "invented result",
      description: "invented description",
      xName: "voltage",
      reach: [],
      bars: [wide],
    });
    const numbers = shapesIn(svg)
      .filter((one) => /^\d+$/.test(one.words))
      .map((one) => Number(one.words));
    expect(Math.min(...numbers)).toBeLessThanOrEqual(148);
    expect(Math.max(...numbers)).toBeGreaterThanOrEqual(328);
  });
});
