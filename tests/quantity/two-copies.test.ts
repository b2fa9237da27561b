// An app can end up with two copies of the package, one through import and one through require. They
// share no class and no constant, and have to understand each other's quantities all the same.
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";

type Core = typeof import("hvac-install-math/quantity");

let esm: Core;
let cjs: Core;

async function bundle(format: "esm" | "cjs"): Promise<string> {
  const result = await build({
    entryPoints: [new URL("../../src/quantity/index.ts", import.meta.url).pathname],
    bundle: true,
    minify: true,
    format,
    target: "es2022",
    write: false,
  });
  return result.outputFiles[0]?.text ?? "";
}

beforeAll(async () => {
  const [asEsm, asCjs] = await Promise.all([bundle("esm"), bundle("cjs")]);
  esm = await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(asEsm)}`);
  const module = { exports: {} };
  new Function("module", "exports", asCjs)(module, module.exports);
  cjs = module.exports as Core;
});

describe("two copies of the package", () => {
  it("are two copies", () => {
    expect(esm.Quantity).not.toBe(cjs.Quantity);
    expect(esm.psig).not.toBe(cjs.psig);
    expect(esm.psig(1)).not.toBeInstanceOf(cjs.Quantity);
  });

  it("add, subtract and compare each other's quantities", () => {
    expect(esm.psig(118).plus(cjs.psi(2)).toString()).toBe("120 psig");
    expect(cjs.degF(95).minus(esm.degF(75)).toString()).toBe("20 Δ°F");
    expect(cjs.ft(3).dividedBy(esm.ft(2))).toBe(1.5);
    expect(esm.psig(118) > cjs.kPag(800)).toBe(true);
    expect(esm.equals(esm.psig(118), cjs.psig(118), cjs.psi(0))).toBe(true);
  });

  it("read each other's quantities in each other's units", () => {
    expect(esm.psig(118).in(cjs.kPag)).toBeCloseTo(813.581, 3);
    expect(cjs.psig(118).as(esm.kPag).unit).toBe(esm.kPag);
    expect(esm.toAbsolute(cjs.psig(0), cjs.standardAtmosphere).toString(cjs.kPaa)).toBe(
      "101.325 kPaa",
    );
    expect(esm.product(cjs.ozPerFt(0.16), esm.ft(20), cjs.oz).toString()).toBe("3.2 oz");
  });

  it("answer psia to the psig of the other copy", () => {
    expect(esm.toAbsolute(cjs.psig(0), cjs.standardAtmosphere).unit).toBe(esm.psia);
  });

  it("recognise each other's quantities, JSON and errors", () => {
    expect(esm.isQuantity(cjs.psig(118), "gaugePressure")).toBe(true);
    expect(cjs.isQuantity(esm.psig(118))).toBe(true);
    const text = JSON.stringify(esm.psig(118));
    expect(cjs.fromJSON(JSON.parse(text), "gaugePressure").si).toBe(esm.psig(118).si);
    let caught: unknown;
    try {
      cjs.psia(-1);
    } catch (error) {
      caught = error;
    }
    expect(caught).not.toBeInstanceOf(esm.InvalidInputError);
    expect(esm.isInvalidInputError(caught)).toBe(true);
  });

  it("refuse each other's wrong kinds", () => {
    // biome-ignore lint/suspicious/noExplicitAny: a JavaScript caller sees no types.
    const wrong = cjs.psia(14.7) as any;
    expect(() => esm.psig(118).plus(wrong)).toThrow(
      "plus: absolutePressure 14.7 psia is not allowed; allowed: the kind pressureDifference",
    );
  });
});
