import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { makeSeries } from "../../src/refrigerants/generate/make-series.ts";
import { modelOf } from "../../src/refrigerants/generate/models.ts";
import { referenceOf } from "../../src/refrigerants/generate/reference-curves.ts";
import { render } from "../../src/refrigerants/generate/render.ts";
import { verify } from "../../src/refrigerants/generate/verify.ts";

const data = (id: string) =>
  new URL(`../../src/refrigerants/data/${id.toLowerCase()}.ts`, import.meta.url);

// One of each model; tests/studies/refrigerants.study.test.ts does all.
describe.each(["R32", "R744", "R410A", "R454B"])("the data of %s", (id) => {
  const definition = definitions.find((one) => one.id === id);
  if (definition === undefined) throw new Error(`no definition of ${id}`);
  const fluid = modelOf(definition);
  const made = makeSeries(definition, fluid, referenceOf(fluid));

  test("are what the generator makes, byte for byte", () => {
    const text = execFileSync("npx", ["biome", "format", "--stdin-file-path", `${id}.ts`], {
      input: render(definition, made),
      encoding: "utf8",
    });
    expect(text).toBe(readFileSync(data(id), "utf8"));
  });

  test("follow the model between the nodes: 1e-9 in pressure, 1e-8 in density, 1e-6 K", () => {
    const { pressure, density, temperature } = verify(made.series, referenceOf(fluid), made, 400);
    expect(pressure).toBeLessThan(1e-9);
    expect(density).toBeLessThan(1e-8);
    expect(temperature).toBeLessThan(1e-6);
  });
});
