import { expect, it } from "vitest";
import { sizeTables, statedTables } from "./sizes.ts";

const number = /\d+\.\d/g;
const numbersOf = (table: string) => (table.match(number) ?? []).map(Number);

it("ships what the README states, within 2 %", { timeout: 120_000 }, async () => {
  const [stated, measured] = [statedTables(), await sizeTables()];
  const advice = 'the README states other sizes: "npm run sizes" writes the new ones';
  expect(stated.replace(number, "0.0"), advice).toBe(measured.replace(number, "0.0"));
  const theirs = numbersOf(stated);
  const off = numbersOf(measured).filter(
    (ours, i) => Math.abs(ours - (theirs[i] ?? 0)) > Math.max(0.1, 0.02 * ours),
  );
  expect(off, advice).toEqual([]);
});
