// Writes data/<id>.ts for every refrigerant and the list of all, and prints how near the series are to the model.
// Run: npx tsx src/refrigerants/generate/main.ts [points, 10000 when left out] [id …]
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { definitions } from "./definitions.ts";
import { makeSeries } from "./make-series.ts";
import { modelOf } from "./models.ts";
import { referenceOf } from "./reference-curves.ts";
import { render } from "./render.ts";
import { renderList } from "./render-list.ts";
import { verify } from "./verify.ts";

const folder = fileURLToPath(new URL("../data", import.meta.url));
const [points = "10000", ...wanted] = process.argv.slice(2);
const list = join(folder, "index.ts");
writeFileSync(list, renderList(definitions));
const written = [list];
console.log("| refrigerant | model | range / K | terms | pressure, rel. | density, rel. | T / K |");
console.log("|---|---|---|---|---|---|---|");
for (const definition of definitions) {
  if (wanted.length > 0 && !wanted.includes(definition.id)) continue;
  const fluid = modelOf(definition);
  const made = makeSeries(definition, fluid, referenceOf(fluid));
  const file = join(folder, `${definition.id.toLowerCase()}.ts`);
  writeFileSync(file, render(definition, made));
  written.push(file);
  const { series, min, max } = made;
  const { pressure, density, temperature } = verify(
    series,
    referenceOf(fluid),
    made,
    Number(points),
  );
  const lengths = [
    series.bubble,
    series.dew,
    series.liquid,
    series.vapor,
    series.bubbleInverse.terms,
    series.dewInverse.terms,
  ].map((terms) => terms.length);
  const figures = [pressure, density, temperature].map((value) => value.toExponential(1));
  const cells = [definition.id, definition.model, `${min}-${max}`, lengths.join(" "), ...figures];
  console.log(`| ${cells.join(" | ")} |`);
}
execFileSync("npx", ["biome", "format", "--write", ...written], { stdio: "ignore" });
