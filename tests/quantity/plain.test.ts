// What holds quantities passes through structuredClone, a real worker and JSON, and is alive again afterwards.
import { once } from "node:events";
import { Worker } from "node:worker_threads";
import fc from "fast-check";
import {
  degF,
  fromJSON,
  ft,
  inch,
  isQuantity,
  kg,
  psi,
  psig,
  type Quantity,
  revive,
  sameQuantity,
  toPlain,
  unitsOf,
} from "hvac-install-math/quantity";
import { afterAll, expect, it } from "vitest";
import { complete } from "../commissioning/complete-record.ts";
import { thrownBy } from "../wire/thrown-by.ts";

// Echoes what it gets, as the other side of an app would.
const code = `const { parentPort } = require("node:worker_threads");
parentPort.on("message", (data) => parentPort.postMessage(data));`;
const worker = new Worker(code, { eval: true });
afterAll(() => worker.terminate());

async function throughWorker(value: unknown): Promise<unknown> {
  worker.postMessage(value);
  const [back] = await once(worker, "message");
  return back;
}

const bytes = new Uint8Array([1, 2, 3]);
const anything = {
  length: ft(36),
  missing: undefined,
  nothing: null,
  unit: psig,
  when: new Date(0),
  photo: bytes,
  list: [degF(70), "text", 7, [inch(3)]],
  byName: new Map([["drop", psi(2)]]),
  several: new Set([kg(2)]),
};

it("a quantity itself does not pass to a worker, which is why there is a plain form", () => {
  expect(() => worker.postMessage(ft(36))).toThrow();
});

it("passes to a real worker and back", async () => {
  expect(revive(await throughWorker(toPlain(anything)))).toEqual(anything);
  expect(revive(await throughWorker(toPlain(complete)))).toEqual(complete);
});

it("passes through structuredClone and JSON", () => {
  expect(revive(structuredClone(toPlain(anything)))).toEqual(anything);
  expect(revive(JSON.parse(JSON.stringify(toPlain(complete))))).toEqual(complete);
});

it("leaves what it was given as it was, and shares no list or fields with it", () => {
  const given = { list: [ft(1)] };
  const plain = toPlain(given);
  expect(plain).not.toBe(given);
  expect(isQuantity(given.list[0])).toBe(true);
  const back = revive<typeof given>(plain);
  expect(back.list).not.toBe(plain.list);
  expect(plain.list[0]).toEqual({ kind: "length", value: 1, unit: "ft" });
});

it("refuses by its path what no such place carries", () => {
  const ring: Record<string, unknown> = {};
  ring.again = [ring];
  expect(thrownBy(() => toPlain({ a: [() => 1] })).argument).toBe("value.a[0]");
  expect(thrownBy(() => toPlain({ a: Symbol("x") })).argument).toBe("value.a");
  expect(thrownBy(() => toPlain(ring)).argument).toBe("value.again[0]");
  expect(thrownBy(() => revive(ring)).argument).toBe("plain.again[0]");
  const strange = { a: { kind: "length", value: 1, unit: "furlong" } };
  expect(thrownBy(() => revive(strange)).allowed).toContain("ft");
});

it("takes the same part twice: that is no ring", () => {
  const tube = { wall: inch(0.03) };
  expect(revive(toPlain([tube, tube]))).toEqual([tube, tube]);
});

it("a quantity is the same after any way through JSON, in any unit", () => {
  const units = (["length", "temperature", "gaugePressure", "mass"] as const).flatMap((kind) =>
    unitsOf<"length">(kind as "length"),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...units),
      fc.double({ min: 0, max: 1e6, noNaN: true }),
      (unit, value) => {
        const one = unit(value);
        expect(sameQuantity(one, fromJSON(one.toJSON()))).toBe(true);
        for (const other of unitsOf(one.kind)) expect(sameQuantity(one, one.as(other))).toBe(true);
      },
    ),
  );
});

it("another value, another kind, and no quantity at all are not the same", () => {
  expect(sameQuantity(ft(3), ft(3.000000001))).toBe(false);
  expect(sameQuantity(psig(3), psi(3) as unknown as Quantity<"gaugePressure">)).toBe(false);
  for (const other of [undefined, null, 3, "3 ft", ft(3).toJSON(), {}]) {
    expect(sameQuantity(ft(3), other)).toBe(false);
    expect(sameQuantity(other, other)).toBe(false);
  }
});
