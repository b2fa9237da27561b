import * as lineSet from "hvac-install-math/line-set";
import * as properties from "hvac-install-math/property-model";
import * as q from "hvac-install-math/quantity";
import { refrigerantByDesignation, saturatedLiquidDensity } from "hvac-install-math/refrigerants";
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

interface PipeFlow {
  readonly boreM: number;
  readonly lengthM: number;
  readonly speedMps: number;
  readonly kgPerM3: number;
  readonly uPaS: number;
  readonly roughnessM: number;
}

const pipeLoss = (input: PipeFlow) =>
  lineSet.frictionLoss({
    tube: { outsideDiameter: q.m(input.boreM + 0.01), wall: q.m(0.005) },
    length: q.m(input.lengthM),
    massFlow: q.kgPerSecond(input.speedMps * (Math.PI / 4) * input.boreM ** 2 * input.kgPerM3),
    density: q.kgPerM3(input.kgPerM3),
    viscosityMicropascalSecond: input.uPaS,
    roughness: q.m(input.roughnessM),
  });

const { R134a, R22, R404A, R407C } = properties;
const fluids = { R134a, R22, R404A, R407C };

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
  staticHead: ({ ft, kgPerM3 }: { ft: number; kgPerM3: number }) =>
    lineSet.staticHead({ density: q.kgPerM3(kgPerM3), lift: q.ft(ft) }).in(q.psi),
  riserSubcooling: (input: {
    refrigerant: keyof typeof fluids;
    ft: number;
    kgPerM3: number;
    degF: number;
  }) => {
    const fluid = fluids[input.refrigerant];
    return lineSet
      .liquidLineSubcooling({
        liquidPressure: properties.bubblePoint(fluid, { temperature: q.degF(input.degF) }).pressure,
        bubbleTemperature: (pressure) => properties.bubblePoint(fluid, { pressure }).temperature,
        losses: [lineSet.staticHead({ density: q.kgPerM3(input.kgPerM3), lift: q.ft(input.ft) })],
        margin: q.deltaF(0),
      })
      .neededSubcooling.in(q.deltaF);
  },
  frictionFactor: (input: lineSet.FlowCondition) => lineSet.frictionFactor(input),
  frictionLossLbfPerSqft: (input: PipeFlow) => pipeLoss(input).pressureLoss.in(q.psi) * 144,
  reynolds: (input: PipeFlow) => pipeLoss(input).reynolds,
  frictionFactorOf: (input: PipeFlow) => pipeLoss(input).frictionFactor,
  headLossM: (input: PipeFlow) =>
    pipeLoss(input).pressureLoss.in(q.pascal) / (input.kgPerM3 * 9.80665),
  oilCapacityKw: (input: {
    boreMm: number;
    vaporKgPerM3: number;
    oilKgPerM3: number;
    kJPerKg: number;
  }) => {
    const tube = { outsideDiameter: q.mm(input.boreMm + 2), wall: q.mm(1) };
    const speed = lineSet.oilEntrainmentVelocity({
      tube,
      vaporDensity: q.kgPerM3(input.vaporKgPerM3),
      oilDensity: q.kgPerM3(input.oilKgPerM3),
    });
    return speed.si * lineSet.boreArea(tube).si * input.vaporKgPerM3 * input.kJPerKg;
  },
  smallestSleeve: ({ mm }: { mm: number[] }) =>
    lineSet.smallestSleeve(mm.map((d) => ({ label: "", diameter: q.mm(d) }))).in(q.mm),
  speedFpm: ({ mPerS }: { mPerS: number }) => q.mPerSecond(mPerS).in(q.ftPerMinute),
  liftVerdict: ({ maximumM, liftM }: { maximumM: number; liftM: number }) =>
    lineSet.assessLineRun({
      length: q.m(30),
      lift: q.m(liftM),
      outdoorUnit: "above",
      limits: { maximumLift: q.m(maximumM) },
    }).outcome,
  oilTraps: (input: { liftM: number; aboveM: number; spacingM: number }) =>
    lineSet.assessLineRun({
      length: q.m(30),
      lift: q.m(input.liftM),
      outdoorUnit: "above",
      limits: {
        maximumLength: q.m(30),
        oilTraps: { above: q.m(input.aboveM), spacing: q.m(input.spacingM) },
      },
    }).oilTraps,
  extraOilMl: (input: { lengthM: number; beyondM: number; perM: number; mL: number }) =>
    lineSet
      .assessLineRun({
        length: q.m(input.lengthM),
        lift: q.m(0),
        outdoorUnit: "level",
        limits: {
          maximumLength: q.m(30),
          extraOil: { beyond: q.m(input.beyondM), per: q.m(input.perM), volume: q.mL(input.mL) },
        },
      })
      .extraOil.in(q.mL),
  liquidDensity: ({ refrigerant, degF }: { refrigerant: string; degF: number }) =>
    saturatedLiquidDensity(refrigerantByDesignation(refrigerant), q.degF(degF)).in(q.kgPerM3),
  fullLineOf: (input: TubeInput & { refrigerant: string; degF: number; unit: string }) =>
    lineSet
      .fullLineRate({
        tube: tubeOf(input),
        refrigerant: refrigerantByDesignation(input.refrigerant),
        temperature: q.degF(input.degF),
      })
      .in(unitNamed(input.unit)),
};
