import { pressureTestPlot, saturationPlot, vacuumDecayPlot } from "hvac-install-math/plots";
import { standardAtmosphere } from "hvac-install-math/quantity";
import { R32, R407C } from "hvac-install-math/refrigerants";
import { describe, expect, it } from "vitest";
import { paintOf, type Role } from "../../src/plots/styles.ts";
import { requireWellFormed } from "./markup.ts";
import { allPlots } from "./samples.ts";

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
    "has plain colours for a %s background when asked",
    (colors) => {
      for (const svg of Object.values(allPlots(colors))) {
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

describe("colours", () => {
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
    const svg = saturationPlot(R32, { id: "a", title });
    requireWellFormed(svg);
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;x&#39;");
    expect(svg).toContain("\ufffd\ufffd\ufffd ]]&gt; \u{1f600} é");
    const named = { ...R407C, designation: 'R"><b>' };
    requireWellFormed(saturationPlot(named));
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
    ["pressureUnit", { pressureUnit: "psig" }],
    ["temperatureUnit", { temperatureUnit: () => standardAtmosphere }],
  ])("%s", (argument, options) => {
    expect(() => saturationPlot(R32, options as never)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });

  it("missing arguments too", () => {
    const refused = expect.objectContaining({ name: "InvalidInputError" });
    for (const wrong of [undefined, null, 7, "text", [], {}]) {
      expect(() => saturationPlot(wrong as never)).toThrow(refused);
      expect(() => pressureTestPlot(wrong as never, {} as never)).toThrow(refused);
      expect(() => vacuumDecayPlot(wrong as never, {} as never)).toThrow(refused);
      if (wrong !== undefined) {
        if (typeof wrong === "object" && wrong !== null && !Array.isArray(wrong)) continue;
        expect(() => saturationPlot(R32, wrong as never)).toThrow(refused);
      }
    }
  });
});

describe("the saturation line", () => {
  it("has two curves for a blend, one for a pure substance, and says the ends in words", () => {
    const blend = saturationPlot(R407C);
    expect(blend).toContain("bubble: liquid begins to boil");
    expect(blend).toContain("dew: vapor begins to condense");
    const pure = saturationPlot(R32, { atmosphere: standardAtmosphere });
    expect(pure).not.toContain("bubble");
    expect(pure).toMatch(/gauge pressure where the air is at 101.325 kPaa: at −40 °C 76.1 kPag/);
  });

  it("refuses a span beyond the refrigerant's range", () => {
    const { max } = R32.range;
    expect(() => saturationPlot(R32, { to: max.plus(max.minus(R32.range.min)) })).toThrow(
      expect.objectContaining({ name: "OutOfRangeError" }),
    );
  });
});
