import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { makeSeries } from "../../src/refrigerants/generate/make-series.ts";
import { modelOf } from "../../src/refrigerants/generate/models.ts";
import { referenceOf } from "../../src/refrigerants/generate/reference-curves.ts";
import { render } from "../../src/refrigerants/generate/render.ts";
import { renderList } from "../../src/refrigerants/generate/render-list.ts";
import { verify } from "../../src/refrigerants/generate/verify.ts";

/** What ships in data, and how the formatter leaves what the generator makes of it. */
const shipped = (name: string) =>
  readFileSync(new URL(`../../src/refrigerants/data/${name}.ts`, import.meta.url), "utf8");
const formatted = (input: string) =>
  execFileSync("npx", ["biome", "format", "--stdin-file-path", "data.ts"], {
    input,
    encoding: "utf8",
  });

test("the list of all is what the generator makes, byte for byte", () => {
  expect(formatted(renderList(definitions))).toBe(shipped("index"));
});

// One of each model; tests/studies/refrigerants.study.test.ts does all.
describe.each(["R32", "R744", "R410A", "R454B"])("the data of %s", (id) => {
  const definition = definitions.find((one) => one.id === id);
  if (definition === undefined) throw new Error(`no definition of ${id}`);
  const fluid = modelOf(definition);
  const made = makeSeries(definition, fluid, referenceOf(fluid));

  test("are what the generator makes, byte for byte", () => {
    expect(formatted(render(definition, made))).toBe(shipped(id.toLowerCase()));
  });

  test("follow the model between the nodes: 1e-9 in pressure, 1e-8 in density, 1e-6 K", () => {
    const { pressure, density, temperature } = verify(made.series, referenceOf(fluid), made, 400);
    expect(pressure).toBeLessThan(1e-9);
    expect(density).toBeLessThan(1e-8);
    expect(temperature).toBeLessThan(1e-6);
  });
});
