import * as lineSet from "hvac-install-math/line-set";
import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

interface TubeInput {
  readonly size: lineSet.AstmB280Size;
  readonly temper: lineSet.AstmB280Temper;
  readonly wallIn?: number;
}

const tubeOf = ({ size, temper, wallIn }: TubeInput) =>
  lineSet.astmB280Tube({ size, temper, ...(wallIn && { wall: q.inch(wallIn) }) });

const unitNamed = (name: string) =>
  (q as unknown as Record<string, q.Unit<"massPerLength">>)[name] as q.Unit<"massPerLength">;

export const evaluators: Evaluators = {
  insideDiameter: (input: TubeInput) => lineSet.insideDiameter(tubeOf(input)).in(q.inch),
  insideDiameterMm: (input: TubeInput) => lineSet.insideDiameter(tubeOf(input)).in(q.mm),
  boreArea: (input: TubeInput) => lineSet.boreArea(tubeOf(input)).in(q.sqin),
  volumePerMetre: (input: TubeInput) => lineSet.tubeVolume(tubeOf(input), q.m(1)).in(q.mL),
  volumePerFoot: (input: TubeInput) => lineSet.tubeVolume(tubeOf(input), q.ft(1)).in(q.mL),
  copperMass: (input: TubeInput) => lineSet.copperMassPerLength(tubeOf(input)).in(q.kgPerM),
  jisWall: ({ size }: { size: lineSet.JisH3300Size }) => lineSet.jisH3300Tube(size).wall.in(q.mm),
  fullLineRate: (input: TubeInput & { kgPerM3: number; unit: string }) =>
    lineSet
      .fullLineRate({ tube: tubeOf(input), density: q.kgPerM3(input.kgPerM3) })
      .in(unitNamed(input.unit)),
  gPerMToOzPerFt: ({ gPerM }: { gPerM: number }) => q.gPerM(gPerM).in(q.ozPerFt),
  additionalChargeOz: (input: {
    lengthFt: number;
    preChargedFt: number;
    ozPerFt?: number;
    oz?: number;
    perFt?: number;
    rule: lineSet.ShortLineRule;
  }) =>
    lineSet
      .additionalCharge({
        length: q.ft(input.lengthFt),
        preChargedLength: q.ft(input.preChargedFt),
        rate:
          input.ozPerFt === undefined
            ? { mass: q.oz(input.oz ?? Number.NaN), per: q.ft(input.perFt ?? Number.NaN) }
            : q.ozPerFt(input.ozPerFt),
        shortLineRule: input.rule,
      })
      .additionalCharge.in(q.oz),
  additionalChargeG: (input: {
    lengthM: number;
    preChargedM: number;
    gPerM: number;
    rule: lineSet.ShortLineRule;
  }) =>
    lineSet
      .additionalCharge({
        length: q.m(input.lengthM),
        preChargedLength: q.m(input.preChargedM),
        rate: q.gPerM(input.gPerM),
        shortLineRule: input.rule,
      })
      .additionalCharge.in(q.g),
  rateVerdict: (
    input: TubeInput & { kgPerM3: number; gPerM: number; device: lineSet.ExpansionDevice },
  ) =>
    lineSet.liquidChargePlausibility({
      rate: q.gPerM(input.gPerM),
      tube: tubeOf(input),
      density: q.kgPerM3(input.kgPerM3),
      expansionDevice: input.device,
    }).outcome,
};
