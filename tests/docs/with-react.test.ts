// The components of docs/with-react.md drawn on a server; tests/browser has them typed into.
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { assessFlareTorque } from "hvac-install-math/flare-joint";
import { ft, ftLb, m, psig } from "hvac-install-math/quantity";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { afterAll, expect, it } from "vitest";
import { writeBlocks } from "./page-code.ts";

const generated = join(import.meta.dirname, "../.generated");
mkdirSync(generated, { recursive: true });
const folder = mkdtempSync(join(generated, "with-react-"));
const page = await import(writeBlocks("with-react.md", "tsx", folder));
afterAll(() => rmSync(folder, { recursive: true }));
const drawn = (component: string, props: object) =>
  renderToStaticMarkup(createElement(page[component], props));

it("a verdict has outcome, reason and cautions in words", () => {
  const html = drawn("Verdict", { verdict: assessFlareTorque({ tube: "3/8", torque: ftLb(50) }) });
  expect(html).toContain("<h2>FAIL</h2>");
  expect(html).toContain("Torque 50 ft·lb: outside");
  expect(html.match(/<li>/g)?.length).toBeGreaterThan(2);
  expect(html).not.toMatch(/undefined|NaN|flare-joint\./);
});

it("a field has its menu, and says at its box what a form found", () => {
  const html = drawn("QuantityField", {
    label: "Length",
    kind: "length",
    units: [ft, m],
    problem: "too long",
    onQuantity: () => undefined,
  });
  expect(html).toContain('<option selected="">ft</option><option>m</option>');
  expect(html).toMatch(/aria-invalid="true".*role="alert">too long</);
});

it("a figure shows its unit, and a form the name of its field", () => {
  expect(drawn("Figure", { name: "Suction", value: psig(118) })).toBe("<p>Suction: 118 psig</p>");
  expect(drawn("BendsForm", {})).toContain("<label>number of bends<input");
  expect(page.fieldName("pressureTests[0].readings[1].pressure")).toBe("test pressure");
  expect(page.problemsByField({ version: 9 }).get("version")).toContain("newer version");
});
