// Do the gauges of the running unit show what they should? The pressure, and superheat or subcooling.
// Follows operating-check, which decides. Does not cover a unit on which no gauge belongs: see air-side.ts.
import { type Assessment, verdict } from "../assessment/assessment.ts";
import {
  assessChargeByGauge,
  assessServiceReading,
  type ChargedSystem,
  chargingMethod,
} from "../operating-check/index.ts";
import type { LineAssessmentInput } from "../refrigerants/index.ts";
import { errorsOf } from "./instrument-errors.ts";
import { atmosphereNeed, atmosphereOf, type Job, refrigerantOf } from "./job.ts";
import type { ChargeReading, OperatingReading } from "./record-operation.ts";
import { present, type Trial } from "./step.ts";

const noStatements: Omit<Assessment, "outcome" | "reasons"> = {
  assumptions: [],
  cautions: [],
  actions: [],
  sources: [],
};

/** The checks of a reading on a gauge. */
export function gaugeTrials(job: Job, reading: OperatingReading, path: string): Trial[] {
  const { equipment = {}, instruments = {} } = job.record;
  const { mode, indoorTemperature, outdoorTemperature, pressure, port, charge } = reading;
  const { evaporatorApproach, condenserApproach } = reading;
  const common = {
    "equipment.refrigerant": equipment.refrigerant,
    ...atmosphereNeed(job),
    [`${path}.mode`]: mode,
  };
  const paths = {
    designation: "equipment.refrigerant",
    refrigerant: "equipment.refrigerant",
    atmosphere: "site.atmosphere",
    altitude: "site.altitude",
    expansion: "equipment.expansion",
    temperature: path, // of a coil: its air and its approach together
    gauge: "instruments.serviceGauge",
  };
  const gauge: Trial = {
    name: "service-reading",
    path,
    needs: {
      ...common,
      [`${path}.pressure`]: pressure,
      [`${path}.indoorTemperature`]: indoorTemperature,
      [`${path}.outdoorTemperature`]: outdoorTemperature,
      [`${path}.evaporatorApproach`]: evaporatorApproach,
      [`${path}.condenserApproach`]: condenserApproach,
    },
    paths,
    run: () =>
      assessServiceReading(
        present({
          refrigerant: refrigerantOf(job),
          atmosphere: atmosphereOf(job),
          mode,
          pressure,
          port,
          indoorTemperature,
          outdoorTemperature,
          evaporatorApproach,
          condenserApproach,
          expansion: equipment.expansion,
          gauge: errorsOf(instruments.serviceGauge),
        }),
      ),
  };
  return charge ? [gauge, chargeTrial(job, reading, charge, path, common, paths)] : [gauge];
}

/** Superheat or subcooling. */
function chargeTrial(
  job: Job,
  { mode }: OperatingReading,
  charge: ChargeReading,
  path: string,
  common: Readonly<Record<string, unknown>>,
  paths: Readonly<Record<string, string>>,
): Trial {
  const { equipment = {}, instruments = {} } = job.record;
  const { meteringDevice, compressor } = equipment;
  const by = `${path}.charge`;
  return {
    name: "charge-by-gauge",
    path: by,
    needs: {
      ...common,
      "equipment.meteringDevice": meteringDevice,
      "equipment.compressor": compressor,
      "instruments.serviceGauge": instruments.serviceGauge,
      "instruments.lineThermometer": instruments.lineThermometer,
      [`${by}.pressure`]: charge.pressure,
      [`${by}.lineTemperature`]: charge.lineTemperature,
    },
    paths: {
      ...paths,
      meteringDevice: "equipment.meteringDevice",
      compressor: "equipment.compressor",
      "instruments.pressure": "instruments.serviceGauge",
      "instruments.temperature": "instruments.lineThermometer",
    },
    run: () => {
      const system = present<ChargedSystem>({ meteringDevice, compressor, mode });
      const weigh = chargingMethod(system).method === "weigh";
      // A weighed charge is judged by its step; here it only says that the gauge cannot tell.
      if (weigh) {
        return verdict({
          ...noStatements,
          outcome: "pass",
          reasons: [chargingMethod(system).reason],
        });
      }
      return assessChargeByGauge(
        present({
          ...system,
          refrigerant: refrigerantOf(job),
          atmosphere: atmosphereOf(job),
          pressure: charge.pressure,
          lineTemperature: charge.lineTemperature,
          pressureDrop: charge.pressureDrop,
          target: charge.target,
          tolerance: charge.tolerance,
          instruments: present<LineAssessmentInput["instruments"]>({
            pressure: instruments.serviceGauge,
            temperature: instruments.lineThermometer,
          }),
        }),
      );
    },
  };
}
