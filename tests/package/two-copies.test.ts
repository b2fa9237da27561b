// An app can end up with two copies of the package: ESM and CommonJS, or two versions below two
// dependencies. What one copy makes, the other has to understand.
import { execFileSync } from "node:child_process";
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { transformSync } from "esbuild";
import { beforeAll, expect, inject, it } from "vitest";

const consumer = inject("consumer");
const other = join(consumer, "node_modules/other-version");

/** A second version: another name and number, minified, so that no class or function keeps its name. */
beforeAll(() => {
  cpSync(join(consumer, "node_modules/hvac-install-math"), other, { recursive: true });
  const manifest = join(other, "package.json");
  const json = JSON.parse(readFileSync(manifest, "utf8"));
  writeFileSync(manifest, JSON.stringify({ ...json, name: "other-version", version: "99.0.0" }));
  for (const name of readdirSync(join(other, "dist"), { recursive: true, encoding: "utf8" })) {
    if (!/\.[cm]js$/.test(name)) continue;
    const file = join(other, "dist", name);
    writeFileSync(file, transformSync(readFileSync(file, "utf8"), { minify: true }).code);
  }
});

/** What the second copy does with what the first one made; every line has to be true. */
const meeting = `
import { createRequire } from "node:module";
const require = createRequire(import.meta.url);
const open = async (name, kind) => Object.fromEntries(await Promise.all(
  ["quantity", "assessment", "refrigerants", "pressure-test", "circuit-protection", "language/en"].map(async (module) => {
    const path = name + "/" + module;
    return [module, kind === "esm" ? await import(path) : require(path)];
  })));
const [a, b] = [await open(...process.argv[2].split(" ")), await open(...process.argv[3].split(" "))];
const [qa, qb] = [a.quantity, b.quantity];
const error = (run) => { try { run(); } catch (e) { return e; } };
const rise = qb.degF(95).minus(qa.degF(75));
const hold = (q) => ({
  start: { pressure: q.psig(500), temperature: q.degF(64), elapsed: q.hour(0) },
  end: { pressure: q.psig(480.6), temperature: q.degF(46), elapsed: q.hour(10) },
  atmosphere: q.atmosphereAtAltitude(q.ft(5000)),
  instruments: { pressure: { accuracy: q.psi(2.5), resolution: q.psi(0.1) }, temperature: { accuracy: q.deltaF(0.5) } },
  criterion: { maximumDrop: q.psi(4) },
});
const verdict = a["pressure-test"].assessPressureTest(hold(qa));
const across = b["pressure-test"].assessPressureTest(hold(qa));
const refused = error(() => qa.psig(1).plus(qb.psia(1)));
const range = error(() => qa.atmosphereAtAltitude(qa.ft(90000)));
const at = { temperature: qa.degC(20) };
console.log(JSON.stringify({
  "are two copies": qa.psig !== qb.psig && qa.Quantity !== qb.Quantity,
  "knows the other's quantity": qb.isQuantity(qa.psig(1), "gaugePressure"),
  "adds the other's difference": qa.degF(60).plus(rise).in(qb.degF) === 80,
  "converts to the other's unit": Math.abs(qa.psig(118).in(qb.kPag) - 813.581) < 0.001,
  "takes the other's atmosphere": qb.toAbsolute(qa.psig(0), qa.standardAtmosphere).in(qb.kPaa) === 101.325,
  "equals the other's quantity": qb.equals(qa.degC(20), qb.degF(68), qb.deltaC(1e-9)),
  "reads the other's JSON": qb.fromJSON(JSON.parse(JSON.stringify(qa.micron(500)))).in(qb.micron) === 500,
  "knows the other's error": qb.isInvalidInputError(refused) && qa.isInvalidInputError(range),
  "judges the other's readings alike": JSON.stringify(across) === JSON.stringify(verdict),
  "explains the other's verdict": verdict.reasons.every((reason) =>
    b.assessment.explain(reason, b["language/en"].english) === a.assessment.explain(reason, a["language/en"].english)),
  "uses the other's refrigerant": b.refrigerants.bubblePressure(a.refrigerants.R32, qa.degC(20)).in(qb.kPaa)
    === a.refrigerants.bubblePressure(a.refrigerants.R32, qa.degC(20)).in(qa.kPaa),
}));
`;

const copies = ["hvac-install-math", "other-version"].flatMap((name) => [
  `${name} esm`,
  `${name} cjs`,
]);
const pairs = copies.flatMap((a) => copies.filter((b) => a !== b).map((b) => [a, b] as const));

it.each(pairs)("what %s makes, %s understands", (a, b) => {
  writeFileSync(join(consumer, "meeting.mjs"), meeting);
  const answer = execFileSync("node", ["meeting.mjs", a, b], { cwd: consumer, encoding: "utf8" });
  const claims = JSON.parse(answer) as Record<string, boolean>;
  expect(Object.keys(claims)).toHaveLength(11);
  expect(Object.keys(claims).filter((claim) => claims[claim] !== true)).toEqual([]);
});
