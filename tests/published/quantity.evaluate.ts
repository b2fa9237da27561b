import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

const unitNamed = (name: string) => (q as unknown as Record<string, q.Unit<"length">>)[name];

export const evaluators: Evaluators = {
  atmosphere: (input: { ft?: number; m?: number }) =>
    q
      .atmosphereAtAltitude(input.ft === undefined ? q.m(input.m ?? Number.NaN) : q.ft(input.ft))
      .in(q.pascalAbsolute),
  convert: ({ value, from, to }: { value: number; from: string; to: string }) =>
    unitNamed(from)?.(value).in(unitNamed(to) as q.Unit<"length">) ?? `no unit ${from}`,
  vacuumGauge: (input: { inHgVacuum: number; barometerInHg: number }) =>
    q.toAbsolute(q.inHgGauge(-input.inHgVacuum), q.inHgAbsolute(input.barometerInHg)).in(q.micron),
};
