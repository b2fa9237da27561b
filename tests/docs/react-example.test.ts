// The React components of docs/app-developers.md do what the page says, rendered by the stand-in.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { micron, type Quantity, second } from "hvac-install-math/quantity";
import { afterAll, expect, it } from "vitest";
import { type Element, render } from "./react/index.ts";

const page = readFileSync(join(import.meta.dirname, "../../docs/app-developers.md"), "utf8");
const code = /^```tsx\n([\s\S]*?)^```/m.exec(page)?.[1] ?? "";
const folder = join(import.meta.dirname, "../.generated", `react-${process.pid}`);
mkdirSync(folder, { recursive: true });
const file = join(folder, "example.tsx");
const withStandIn = code.replace('"react"', '"../../docs/react/index.ts"');
writeFileSync(file, `/** @jsxImportSource ../../docs/react */\n${withStandIn}`);
const { PressureField, useDecay, Verdict } = await import(/* @vite-ignore */ file);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** All elements below one, itself included. */
function all(element: unknown): Element[] {
  if (Array.isArray(element)) return element.flatMap(all);
  if (typeof element !== "object" || element === null) return [];
  const one = element as Element;
  return [one, ...all(one.props.children)];
}
const text = (element: unknown) =>
  all(element)
    .map(({ props }) => props.children)
    .filter((child) => typeof child === "string")
    .join(" ");

it("a field hands over a quantity, and shows a question where the text is not clear", () => {
  const memory: unknown[] = [];
  let value: Quantity<"gaugePressure"> | undefined;
  const onChange = (next: typeof value) => {
    value = next;
  };
  const draw = () => render(memory, () => PressureField({ label: "Suction", onChange }));
  const type = (typed: string) => {
    const input = all(draw()).find((one) => one.type === "input");
    const change = input?.props.onChange as ((event: unknown) => void) | undefined;
    change?.({ target: { value: typed } });
  };
  type("118");
  expect(String(value)).toBe("118 psig");
  type("118 psi");
  expect(value).toBeUndefined();
  expect(text(draw())).toContain("Gauge (psig) or absolute (psia)?");
});

it("a gauge lives as long as its component, and its verdict shows outcome, reasons and cautions", () => {
  const memory: unknown[] = [];
  const draw = () => render(memory, () => useDecay());
  for (let t = 0; t <= 240; t += 2) {
    draw()[1]({ elapsed: second(t), pressure: micron(310 + (t % 3)) });
  }
  const [verdict] = draw();
  const shown = text(Verdict({ verdict }));
  expect(shown).toContain("pass");
  expect(shown).toContain("Dry and tight");
  expect(shown).toContain("only the pressure test does");
});
