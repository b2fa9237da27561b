import { english, plots } from "hvac-install-math/language/en";
import {
  pressureTestPlot,
  saturationPlot,
  supplyVoltagePlot,
  vacuumDecayPlot,
} from "hvac-install-math/plots";
import { micron, psig, second, standardAtmosphere } from "hvac-install-math/quantity";
import { R32, R407C } from "hvac-install-math/refrigerants";
import { assessSupplyVoltage } from "hvac-install-math/supply-voltage";
import {
  assessVacuumDecay,
  type VacuumDecayAssessment,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { paintOf, type Role } from "../../src/plots/styles.ts";
import { widthOf } from "../../src/plots/svg-text.ts";
import { requireWellFormed } from "./markup.ts";
import { allPlots, decays, metric, reader, supply } from "./samples.ts";

describe("every picture", () => {
  const pictures = Object.entries(allPlots());
  it.each(pictures)("%s is well-formed, scales, and has only finite numbers", (name, svg) => {
    requireWellFormed(svg);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 440 \d+/);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null|<svg[^>]* (width|height)=/);
    expect(svg).toContain(`role="img" aria-labelledby="${name}-title ${name}-desc"`);
    expect(svg).toContain(`<title id="${name}-title">`);
    expect(svg).toMatch(new RegExp(`<desc id="${name}-desc">.{40,}</desc>`));
  });

  it.each(pictures)("%s keeps every line inside its frame", (_, svg) => {
    const [, width = "", height = ""] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
    for (const [, d = ""] of svg.matchAll(/ d="([^"]*)"/g)) {
      for (const [, x = "", y = ""] of d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0);
        expect(Number(x)).toBeLessThanOrEqual(Number(width));
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(Number(height));
      }
    }
  });

  it("is the same on every call, with ids that no two share", () => {
    expect(allPlots()).toEqual(Object.fromEntries(pictures));
    const ids = pictures.flatMap(([, svg]) =>
      [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id),
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBe(2 * pictures.length);
  });

  it.each(["light", "dark"] as const)(
    "has plain colors for a %s background when asked",
    (colors) => {
      for (const svg of Object.values(allPlots({ colors }))) {
        expect(svg).not.toMatch(/var\(|currentColor/);
        expect(svg).toContain(`fill="${paintOf("text", colors)}"`);
      }
    },
  );

  it("asks nothing of the outside and runs nothing", () => {
    for (const [, svg] of pictures) {
      expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(
        /https?:|href|url\(|<style|<script|<image|<foreignObject| on\w+=/,
      );
    }
  });
});

describe("colors", () => {
  const luminance = (color: string) => {
    const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
      const c = Number.parseInt(color.slice(at, at + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; // WCAG 2.2, relative luminance
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (one: string, other: string) => {
    const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  };
  const grounds = { light: ["#ffffff", "#f4f4f2"], dark: ["#000000", "#16191d", "#1e1e1e"] };
  const roles: readonly Role[] = ["model", "limit", "second", "guide"];

  it("stand out 3 : 1 on light and on dark without a theme, and text 4.5 : 1 with one", () => {
    for (const role of roles) {
      const [, fallback = ""] = /, (#\w{6})\)$/.exec(paintOf(role, "page")) ?? [];
      for (const ground of [...grounds.light, ...grounds.dark]) {
        expect(contrast(fallback, ground), `${role} on ${ground}`).toBeGreaterThanOrEqual(3);
      }
    }
    for (const theme of ["light", "dark"] as const) {
      for (const ground of grounds[theme]) {
        for (const role of roles) {
          expect(contrast(paintOf(role, theme), ground), role).toBeGreaterThanOrEqual(3);
        }
        expect(contrast(paintOf("text", theme), ground)).toBeGreaterThanOrEqual(4.5);
      }
    }
    expect(paintOf("text", "page")).toContain("currentColor");
  });
});

describe("words from outside", () => {
  it("are escaped, and characters that XML forbids replaced", () => {
    const title = `<script>alert("1")</script> & 'x' \u0000\u000b\ud800 ]]> \u{1f600} é`;
    const svg = saturationPlot(R32, { ...reader, id: "a", title });
    requireWellFormed(svg);
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;x&#39;");
    expect(svg).toContain("\ufffd\ufffd\ufffd ]]&gt; \u{1f600} é");
    const named = { ...R407C, designation: 'R"><b>' };
    requireWellFormed(saturationPlot(named, reader));
  });
});

describe("options that cannot be used are refused by name:", () => {
  it.each<[string, object]>([
    ["id", { id: "1 2" }],
    ["id", { id: 'a"b' }],
    ["id", { id: 7 }],
    ["title", { title: " " }],
    ["title", { title: 7 }],
    ["width", { width: 20 }],
    ["width", { width: Number.NaN }],
    ["colors", { colors: "red" }],
    ["from", { from: 7 }],
    ["to", { to: null }],
    ["atmosphere", { atmosphere: 7 }],
    ["form", { form: "round" }],
    ["language", { language: undefined }],
    ["language", { language: "en" }],
    ["options.system", { system: "metric" }],
    ["options.locale", { locale: "no such tag!" }],
    ["options.units.temperature", { units: { temperature: psig } }],
  ])("%s", (argument, options) => {
    expect(() => saturationPlot(R32, { ...reader, ...options } as never)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it("missing arguments too", () => {
    const refused = expect.objectContaining({ name: "InvalidInputError" });
    for (const wrong of [undefined, null, 7, "text", [], {}]) {
      expect(() => saturationPlot(wrong as never, reader)).toThrow(refused);
      expect(() => pressureTestPlot(wrong as never, {} as never, reader)).toThrow(refused);
      expect(() => vacuumDecayPlot(wrong as never, {} as never, reader)).toThrow(refused);
      expect(() => saturationPlot(R32, wrong as never)).toThrow(refused);
    }
  });
});

describe("the saturation line", () => {
  it("has two curves for a blend, one for a pure substance, and says the ends in words", () => {
    const blend = saturationPlot(R407C, reader);
    expect(blend).toContain("bubble: liquid begins to boil");
    expect(blend).toContain("dew: vapor begins to condense");
    const pure = saturationPlot(R32, { ...metric, atmosphere: standardAtmosphere });
    expect(pure).not.toContain("bubble");
    expect(pure).toMatch(/gauge pressure where the air is at 101.3 kPaa. At −40 °C: 76 kPag\./);
  });

  it("refuses a span beyond the refrigerant's range", () => {
    const { max } = R32.range;
    expect(() =>
      saturationPlot(R32, { ...reader, to: max.plus(max.minus(R32.range.min)) }),
    ).toThrow(expect.objectContaining({ name: "OutOfRangeError" }));
  });
});

describe("words in a picture", () => {
  /** The boxes of all texts, by the widths that the picture itself reckons with. */
  function boxesOf(svg: string) {
    return [...svg.matchAll(/<text ([^>]*)>(.*?)<\/text>/g)].map(([, given = "", inner = ""]) => {
      const of = (name: string) => new RegExp(`${name}="([^"]*)"`).exec(given)?.[1];
      const words = inner.replace(/<[^>]*>/g, "").replace(/&\w+;|&#39;/g, "x");
      const size = Number(of("font-size") ?? 13);
      const width = widthOf(words, size);
      const x = Number(of("x"));
      const from = { middle: x - width / 2, end: x - width }[of("text-anchor") ?? ""] ?? x;
      const y = Number(of("y"));
      return { words, from, to: from + width, top: y - 0.75 * size, bottom: y + 0.15 * size };
    });
  }

  const widths = [300, 320, 390, 440, 768, 1200];
  it.each(widths)("do not collide, and stay inside, at a width of %s", (width) => {
    for (const system of ["inch-pound", "SI"] as const) {
      for (const [name, svg] of Object.entries(allPlots({ width, system }))) {
        const boxes = boxesOf(svg);
        expect(boxes.length, name).toBeGreaterThan(5);
        for (const [i, one] of boxes.entries()) {
          const at = `${name}, ${width}, ${system}: ${one.words}`;
          expect(one.from, at).toBeGreaterThanOrEqual(-0.5);
          expect(one.to, at).toBeLessThanOrEqual(width + 0.5);
          for (const other of boxes.slice(i + 1)) {
            const apart =
              one.to <= other.from ||
              other.to <= one.from ||
              one.bottom <= other.top ||
              other.bottom <= one.top;
            expect(apart, `${at} | ${other.words}`).toBe(true);
          }
        }
      }
    }
  });

  it("are the language's, without a gap, and every code of the module is drawn", () => {
    const marked = Object.fromEntries(
      Object.entries(plots.messages).map(([code, message]) => [
        code,
        typeof message === "string"
          ? `[${code}] ${message}`
          : { ...message, one: `[${code}] ${message.one}`, other: `[${code}] ${message.other}` },
      ]),
    );
    const language = { locale: "en", messages: { ...english.messages, ...marked } } as never;
    const drawn = [
      ...Object.values(allPlots({ language })),
      ...[
        "dry-and-tight",
        "leak-and-moisture",
        "outgassing",
        "not-determined",
        "moisture-leak-not-excluded",
        "leak",
        "moisture",
      ].map((cause) => {
        const test = decays.leak as VacuumDecayInput;
        const { plateau: _, ...found } = assessVacuumDecay(test);
        return vacuumDecayPlot(test, { ...found, cause } as never, { ...reader, language });
      }),
      vacuumDecayPlot(...set(decays.leak as VacuumDecayInput), { ...reader, language }),
      vacuumDecayPlot(...stepped(), { ...reader, language }),
    ].join("");
    const reached = [...drawn.matchAll(/\[(plots\.[\w.-]+)\]/g)].map(([, code]) => code as string);
    expect([...new Set(reached)].sort()).toEqual(
      Object.keys(marked)
        .filter((code) => code !== "plots.course.leak")
        .sort(),
    );
    expect(Object.values(allPlots()).join("")).not.toMatch(/[{}]/);
  });

  /** A log of which a reading was set aside, with its verdict. */
  function set(test: VacuumDecayInput): [VacuumDecayInput, VacuumDecayAssessment] {
    const readings = [...test.readings];
    readings[60] = { elapsed: second(600), pressure: micron(20) };
    const log = { ...test, readings };
    return [log, assessVacuumDecay(log)];
  }

  /** A verdict that saw a valve moved. */
  function stepped(): [VacuumDecayInput, VacuumDecayAssessment] {
    const test = decays.tight as VacuumDecayInput;
    const steps = [{ elapsed: second(120), from: micron(250), to: micron(300) }];
    return [test, { ...assessVacuumDecay(test), steps } as never];
  }
});

describe("a sparkline", () => {
  it("is the curve alone, small, with the result as its text alternative", () => {
    for (const [name, svg] of Object.entries(allPlots({ form: "sparkline" }))) {
      requireWellFormed(svg);
      expect(svg, name).toContain('viewBox="0 0 120 28"');
      expect(svg, name).not.toContain("<text");
      expect(svg, name).not.toMatch(/NaN|Infinity|undefined/);
    }
    const pass = allPlots({ form: "sparkline" }).two;
    expect(pass).toMatch(/<desc id="two-desc">PASS: drop 0\.37 psi ± 1\.2 psi, limit 4 psi\./);
    expect(pass).toContain("<circle"); // the figure that decides
  });
});

describe("bars", () => {
  const rings = (svg: string) =>
    [...svg.matchAll(/<circle [^>]*cx="([\d.]+)"/g)].map(([, x]) => Number(x));
  const firstBar = (svg: string) => {
    const [, x = "", width = ""] = /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/.exec(svg) ?? [];
    return [Number(x), Number(x) + Number(width)] as const;
  };

  it("show lowest and highest voltage inside the nameplate's range where it passes, outside where it fails", () => {
    for (const [volts, inside] of [
      [238.4, true],
      [204, false],
      [262, false],
    ] as const) {
      const verdict = assessSupplyVoltage(supply(volts));
      const svg = supplyVoltagePlot(verdict, reader);
      const [from, to] = firstBar(svg);
      expect(rings(svg)).toHaveLength(2);
      expect(rings(svg).every((at) => at >= from && at <= to)).toBe(inside);
      expect(verdict.outcome === "pass").toBe(inside);
    }
  });

  it("show the charge below its limit where it passes, beyond it where it fails", () => {
    const { light = "", heavy = "" } = allPlots({ system: "SI" });
    expect(light).toContain(">PASS</tspan>: charge 1.2 kg, limit ");
    expect(heavy).toContain(">FAIL</tspan>: charge 2.4 kg, limit ");
    expect(rings(light)[0]).toBeLessThan(firstBar(light)[1]);
    expect(rings(heavy)[0]).toBeGreaterThan(firstBar(heavy)[1]);
  });
});
