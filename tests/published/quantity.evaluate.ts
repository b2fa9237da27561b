import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

const unitNamed = (name: string) => (q as unknown as Record<string, q.Unit<"length">>)[name];

export const evaluators: Evaluators = {
  atmosphere: (input: { ft?: number; m?: number }) =>
    q
      .atmosphereAtAltitude(input.ft === undefined ? q.m(input.m ?? Number.NaN) : q.ft(input.ft))
      .in(q.pascalAbsolute),
  stationPressure: (input: {
    hPa?: number;
    inHg?: number;
    m: number;
    degC?: number;
    reduction: "altimeter-setting" | "mean-sea-level";
  }) =>
    q
      .stationPressure({
        seaLevelPressure: input.inHg ? q.inHgAbsolute(input.inHg) : q.mbara(input.hPa ?? 0),
        altitude: q.m(input.m),
        reduction: input.reduction,
        ...(input.degC !== undefined && { temperature: q.degC(input.degC) }),
      })
      .pressure.in(q.mbara),
  convert: ({ value, from, to }: { value: number; from: string; to: string }) =>
    unitNamed(from)?.(value).in(unitNamed(to) as q.Unit<"length">) ?? `no unit ${from}`,
  vacuumGauge: (input: { inHgVacuum: number; barometerInHg: number }) =>
    q.toAbsolute(q.inHgGauge(-input.inHgVacuum), q.inHgAbsolute(input.barometerInHg)).in(q.micron),
};
