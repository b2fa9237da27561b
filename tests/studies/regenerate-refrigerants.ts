// Makes the data of every refrigerant anew, compares them byte for byte with what is in the repository,
// and measures ten thousand points each. Run: npx tsx tests/studies/regenerate-refrigerants.ts [points]
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { makeSeries } from "../../src/refrigerants/generate/make-series.ts";
import { modelOf } from "../../src/refrigerants/generate/models.ts";
import { referenceOf } from "../../src/refrigerants/generate/reference-curves.ts";
import { render } from "../../src/refrigerants/generate/render.ts";
import { verify } from "../../src/refrigerants/generate/verify.ts";

const points = Number(process.argv[2] ?? 10_000);
let failures = 0;
for (const definition of definitions) {
  const fluid = modelOf(definition);
  const made = makeSeries(definition, fluid, referenceOf(fluid));
  const file = `src/refrigerants/data/${definition.id.toLowerCase()}.ts`;
  const text = execFileSync("npx", ["biome", "format", "--stdin-file-path", file], {
    input: render(definition, made),
    encoding: "utf8",
  });
  const same = text === readFileSync(new URL(`../../${file}`, import.meta.url), "utf8");
  const worst = verify(made.series, referenceOf(fluid), made, points);
  const good = worst.pressure < 1e-9 && worst.density < 1e-8 && worst.temperature < 1e-6;
  if (!same || !good) failures++;
  const figures = [worst.pressure, worst.density, worst.temperature].map((v) => v.toExponential(1));
  console.log(definition.id, same ? "same" : "DIFFERENT", good ? "good" : "BAD", ...figures);
}
process.exitCode = failures > 0 ? 1 : 0;
