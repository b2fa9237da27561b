import * as condensate from "hvac-install-math/condensate";
import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

interface Coil {
  t1: number;
  rh1: number;
  t2: number;
  rh2: number;
  m3PerSecond?: number;
  cfm?: number;
  figure: string;
}
type Figure = "outletDrop" | "seal";

export const evaluators: Evaluators = {
  fall: (i: { ft?: number; m?: number }) =>
    i.ft === undefined
      ? condensate.minimumFall({ run: q.m(i.m ?? Number.NaN) }).in(q.mm)
      : condensate.minimumFall({ run: q.ft(i.ft) }).in(q.inch),
  codeSlope: () => condensate.codeDrainSlope.in(q.percent),
  drainSize: ({ tons }: { tons: number }) =>
    condensate.drainSize({ capacity: q.tonRefrigeration(tons) }).nominal.in(q.inch),
  coil: (i: Coil) => {
    const rate = condensate.condensateRate({
      entering: { dryBulb: q.degC(i.t1), relativeHumidity: q.percent(i.rh1) },
      leaving: { dryBulb: q.degC(i.t2), relativeHumidity: q.percent(i.rh2) },
      airFlow: i.cfm === undefined ? q.m3PerSecond(i.m3PerSecond ?? Number.NaN) : q.cfm(i.cfm),
      atmosphere: q.standardAtmosphere,
    });
    const figures: Record<string, number> = {
      dryAirFlow: rate.dryAirFlow.in(q.kgPerSecond),
      enteringHumidityRatio: rate.enteringHumidityRatio.si,
      leavingHumidityRatio: rate.leavingHumidityRatio.si,
      massFlow: rate.massFlow.in(q.kgPerSecond),
      totalCooling: rate.totalCooling.in(q.kW),
      kgPerHour: rate.massFlow.in(q.kgPerHour),
      lbPerHour: rate.massFlow.in(q.lbPerHour),
      gallonPerHour: rate.volumeFlow.in(q.gallonPerHour),
    };
    return figures[i.figure] ?? "no such figure";
  },
  humidityRatio: ({ t, rh }: { t: number; rh: number }) =>
    condensate.humidityRatio(
      { dryBulb: q.degC(t), relativeHumidity: q.percent(rh) },
      q.standardAtmosphere,
    ).si,
  trap: (i: { inchWater?: number; pascal?: number; figure: Figure }) => {
    const staticPressure =
      i.pascal === undefined ? q.inchWater(i.inchWater ?? Number.NaN) : q.pascal(i.pascal);
    return condensate.condensateTrap({ staticPressure })[i.figure].in(q.inch);
  },
  load: ({ kW, shr }: { kW: number; shr: number }) =>
    condensate
      .condensateFromLoad({ totalCooling: q.kW(kW), sensibleHeatRatio: q.fraction(shr) })
      .massFlow.in(q.kgPerHour),
  thumb: ({ tons, limit }: { tons: number; limit: "low" | "high" }) =>
    condensate.condensateRuleOfThumb(q.tonRefrigeration(tons))[limit].in(q.gallonPerHour),
};
