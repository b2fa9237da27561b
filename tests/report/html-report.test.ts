import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { recordPlots } from "hvac-install-math/plots";
import { isInvalidInputError, newtonMeter, psi } from "hvac-install-math/quantity";
import { type HtmlReportOptions, htmlReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { assessInstallation, rules } from "../commissioning/assess.ts";
import { hostile } from "./hostile.ts";
import { hostileRecord } from "./hostile-record.ts";
import { elementsOf } from "./page-shape.ts";
import { failing, half, rich } from "./rich-record.ts";

/** Control characters but the end of a line, marks of direction, lone surrogates, what has no width. */
const unseen = /[^\n\P{Cc}]|[\u202a-\u202e\u2066-\u2069\u200b\ufeff]|\p{Cs}/u;
const options = {
  rules,
  language: english,
  system: "inch-pound",
  printedAt: "2026-05-08 09:30",
} as const;
const known =
  "html head meta title style body header p h1 ul ol li a main section h2 h3 strong table caption thead tbody tr th td figure figcaption".split(
    " ",
  );
const empty: InstallationRecord = { version: 2 };

const thrownBy = (act: () => unknown): unknown => {
  try {
    act();
  } catch (error) {
    return error;
  }
  return undefined;
};

describe("the page", () => {
  it.each<[string, InstallationRecord, string]>([
    ["pass", rich, "PASS"],
    ["fail", failing, "FAIL"],
    ["inconclusive", half, "INCONCLUSIVE"],
    ["inconclusive", empty, "INCONCLUSIVE"],
  ])(
    "has the outcome %s of the assessment in its title and its first section",
    (outcome, record, word) => {
      expect(assessInstallation(record).outcome).toBe(outcome);
      const page = htmlReport(record, options);
      expect(page).toMatch(new RegExp(`<title>${word}: `));
      expect(page).toMatch(
        new RegExp(`<h2 id="head-verdict">Verdict <strong [^>]*>${word}</strong></h2>`),
      );
      expect(page.indexOf('id="part-verdict"')).toBeLessThan(page.indexOf('id="part-holds"'));
    },
  );

  it("is well formed, of known elements, with unique ids, and every link leads somewhere in it", () => {
    for (const record of [rich, failing, half, empty]) {
      const { elements } = elementsOf(htmlReport(record, options));
      for (const { name } of elements) expect(known).toContain(name);
      const ids = elements.flatMap(({ attributes }) => attributes.get("id") ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      const links = elements.flatMap(({ attributes }) => attributes.get("href") ?? []);
      expect(links.length).toBeGreaterThan(10);
      for (const link of links) expect(ids).toContain(link.replace(/^#/, ""));
      for (const one of elements.filter(({ name }) => name === "th")) {
        expect(["row", "col"]).toContain(one.attributes.get("scope"));
      }
    }
  });

  it("speaks its language whatever the locale of its numbers", () => {
    const german = htmlReport(rich, { ...options, language: english, system: "SI", locale: "de" });
    expect(german).toContain('<html lang="en-US">');
    expect(german).toContain("10,97 m");
  });

  it("shows figures in the system and the units that were asked for", () => {
    const { text } = elementsOf(
      htmlReport(rich, { language: english, system: "SI", rules, units: { torque: newtonMeter } }),
    );
    expect(text).toContain("15.6 N·m");
    expect(text).toContain("3447 kPag");
    expect(text).not.toMatch(/\d psig|\d lb /);
  });
});

describe("pictures", () => {
  const svg = '<svg viewBox="0 0 4 4"><title>A</title><path d="M0 0L4 4"/></svg>';
  const withPlot = (given: unknown): HtmlReportOptions =>
    ({ ...options, plots: () => [{ step: "drain", title: "A", svg: given }] }) as HtmlReportOptions;

  it("stand in the section of their step, as they were drawn", () => {
    const page = htmlReport(rich, { ...options, plots: recordPlots });
    const section = page.slice(
      page.indexOf('id="part-evacuation"'),
      page.indexOf('id="part-room-limit"'),
    );
    expect(section).toContain("<figure><svg ");
    expect(section).toContain("<figcaption>Vacuum decay after isolation</figcaption>");
    expect(htmlReport(rich, withPlot(svg))).toContain(`<figure>${svg}<figcaption>A</figcaption>`);
  });

  it("are asked for with the record, the assessment that the report tells, and its options", () => {
    let given: unknown[] = [];
    const plots = (...args: unknown[]) => {
      given = args;
      return [];
    };
    htmlReport(half, { ...options, plots });
    expect(given).toEqual([half, assessInstallation(half), { ...options, plots }]);
  });

  it.each([
    "<svg><script>alert(1)</script></svg>",
    '<svg onload="alert(1)"></svg>',
    '<svg><a href="javascript:alert(1)"><text>x</text></a></svg>',
    '<svg><path href="#x"/></svg>',
    '<svg><image href="http://203.0.113.1/x.png"/></svg>',
    '<svg><style>@import "x"</style></svg>',
    '<svg><path fill="url(http://203.0.113.1/)"/></svg>',
    "<svg><foreignObject><p>x</p></foreignObject></svg>",
    "<svg></svg></section><p>outside</p>",
    "<svg><g></svg></g>",
    "<svg>",
    "<svg><path d=M0></svg>",
    "<p>no picture</p>",
    "<svg></svg><svg></svg>",
    '<svg style="position:fixed;inset:0"></svg>',
    '<svg><g class="pass"></g></svg>',
    '<svg><path fill="&#117;rl(http://203.0.113.1/)"/></svg>',
    '<svg><path fill="u\\72l(http://203.0.113.1/)"/></svg>',
    "<svg><desc><g/></desc></svg>",
    "<svg><title><title>x</title></title></svg>",
    '<svg><g id="part-verdict"></g></svg>',
    '<svg><g id="a"></g><g id="a"></g></svg>',
    "<svg><!-- x --></svg>",
    "<svg><![CDATA[x]]></svg>",
    "",
    undefined,
    7,
  ])("are refused when they are more than a picture: %s", (wrong) => {
    const error = thrownBy(() => htmlReport(rich, withPlot(wrong)));
    expect(isInvalidInputError(error) && error.argument).toBe("options.plots()[0].svg");
  });
});

describe("hostile text", () => {
  it.each(hostile.map((text) => [text.slice(0, 40), text]))("stays text: %j", (_, text) => {
    const page = htmlReport(hostileRecord(text), options);
    const honest = elementsOf(htmlReport(hostileRecord("honest"), options));
    const { elements } = elementsOf(page);
    expect(elements.map(({ name }) => name)).toEqual(honest.elements.map(({ name }) => name));
    const keys = elements.flatMap(({ attributes }) => [...attributes.keys()]);
    expect(keys.filter((key) => /^on|^src$|^style$/.test(key))).toEqual([]);
    for (const { attributes } of elements) {
      expect(attributes.get("href") ?? "#").toMatch(/^#/);
    }
    expect(page).not.toMatch(unseen);
    const style = /<style>([^<]*)<\/style>/.exec(page)?.[1] ?? "";
    expect(style).not.toMatch(/url\(|@import/);
  });

  it("is cut where nobody would read on, and the page says so", () => {
    const { text } = elementsOf(htmlReport(hostileRecord("x".repeat(10_000)), options));
    expect(text).toContain(`${"x".repeat(500)} … (9500 more characters)`);
    expect(text).not.toContain("x".repeat(501));
  });
});

describe("options and records that are none", () => {
  it.each<[string, unknown, unknown]>([
    ["options", rich, undefined],
    ["options", rich, null],
    ["options.language", rich, {}],
    ["options.system", rich, { language: english, system: "metric" }],
    ["options.locale", rich, { language: english, system: "SI", locale: "no such tag!" }],
    ["options.locale", rich, { language: english, system: "SI", locale: 7 }],
    ["options.printedAt", rich, { language: english, system: "SI", printedAt: "" }],
    ["options.printedAt", rich, { language: english, system: "SI", printedAt: new Date(0) }],
    ["options.units.torque", rich, { language: english, system: "SI", units: { torque: psi } }],
    ["options.plots", rich, { language: english, system: "SI", plots: "all" }],
    ["options.plots()", rich, { language: english, system: "SI", plots: () => "all" }],
    [
      "options.plots()[0].step",
      rich,
      { language: english, system: "SI", plots: () => [{ step: "lunch" }] },
    ],
    [
      "options.plots()[0].title",
      rich,
      { language: english, system: "SI", plots: () => [{ step: "drain" }] },
    ],
    ["record", undefined, options],
    ["version", { version: 3 }, options],
  ])("are refused by name: %s", (argument, record, given) => {
    const error = thrownBy(() => htmlReport(record as never, given as never));
    expect(isInvalidInputError(error) && error.argument).toBe(argument);
  });
});

it("refuses two pictures that share an id, which would lend each other their names", () => {
  const svg = '<svg role="img" aria-labelledby="a"><title id="a">A</title></svg>';
  const plot = { step: "drain", title: "A", svg } as const;
  const error = thrownBy(() => htmlReport(rich, { ...options, plots: () => [plot, plot] }));
  expect(isInvalidInputError(error) && error.argument).toBe("options.plots()[1].svg");
});
