// Makes the data of every refrigerant anew, compares them byte for byte with what ships, and measures the
// series against the model at ten thousand temperatures each.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { makeSeries } from "../../src/refrigerants/generate/make-series.ts";
import { modelOf } from "../../src/refrigerants/generate/models.ts";
import { referenceOf } from "../../src/refrigerants/generate/reference-curves.ts";
import { render } from "../../src/refrigerants/generate/render.ts";
import { verify } from "../../src/refrigerants/generate/verify.ts";

test.each(definitions.map((definition) => [definition.id, definition] as const))(
  "the data of %s are reproducible and follow the model everywhere",
  (id, definition) => {
    const fluid = modelOf(definition);
    const made = makeSeries(definition, fluid, referenceOf(fluid));
    const file = `src/refrigerants/data/${id.toLowerCase()}.ts`;
    const text = execFileSync("npx", ["biome", "format", "--stdin-file-path", file], {
      input: render(definition, made),
      encoding: "utf8",
    });
    expect(text).toBe(readFileSync(new URL(`../../${file}`, import.meta.url), "utf8"));
    const worst = verify(made.series, referenceOf(fluid), made, 10_000);
    expect(worst.pressure).toBeLessThan(1e-9);
    expect(worst.density).toBeLessThan(1e-8);
    expect(worst.temperature).toBeLessThan(1e-6);
  },
);
