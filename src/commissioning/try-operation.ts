// Drain and operation: does the water get away, and does the unit run as it should?
// Follows condensate and operating-check, which decide.
// Does not cover what a short run cannot show: defrost, the hottest day, the wettest day.
import {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  type CondensatePumpInput,
  type SlopeReading,
} from "../condensate/index.ts";
import {
  assessChargeByGauge,
  assessServiceReading,
  type ChargedSystem,
  chargingMethod,
} from "../operating-check/index.ts";
import type { LineAssessmentInput } from "../refrigerants/index.ts";
import { whole } from "../shapes/index.ts";
import { atmosphereNeed, atmosphereOf, refrigerantOf, stated } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import type { OperatingReading } from "./record-building.ts";
import { given, type Trial, type Tried, tryAll } from "./step.ts";
import { errorsOf } from "./try-tightness.ts";

/** Does the water get away? */
export function tryDrain({ drain }: InstallationRecord): Tried {
  const { slope, requiredSlope, run, route, unitPitch, pump, waterRanOff } = drain ?? {};
  const trials: Trial[] = [];
  if (slope || !pump) {
    trials.push({
      name: "drain-slope",
      path: "drain",
      needs: { "drain.slope": slope },
      paths: { reading: "drain.slope", required: "drain.requiredSlope" },
      run: () => assessDrainSlope(given({ reading: slope, required: requiredSlope, run, route })),
    });
  }
  if (pump) {
    const check = () => assessCondensatePump(whole<CondensatePumpInput>(pump));
    trials.push({ name: "condensate-pump", path: "drain.pump", needs: {}, run: check });
  }
  if (unitPitch) {
    trials.push({
      name: "unit-pitch",
      path: "drain.unitPitch",
      needs: {},
      paths: { reading: "drain.unitPitch" },
      run: () => assessIndoorUnitPitch({ reading: whole<SlopeReading>(unitPitch) }),
    });
  }
  trials.push({
    name: "water-ran-off",
    path: "drain.waterRanOff",
    needs: { "drain.waterRanOff": waterRanOff },
    run: () =>
      stated(
        waterRanOff ? "pass" : "fail",
        "water-ran-off",
        "Water poured into the pan came out where it should: {answer}.",
        { answer: waterRanOff ? "yes" : "no" },
      ),
  });
  return tryAll("drain", trials);
}

/** Does it run as it should? */
export function tryOperation(record: InstallationRecord): Tried {
  const { operation = [] } = record;
  const trials = operation.flatMap((reading, i) => readingTrials(record, reading, i));
  return tryAll("operation", trials, operation.length === 0 ? ["operation[0]"] : []);
}

function readingTrials(record: InstallationRecord, reading: OperatingReading, i: number): Trial[] {
  const { equipment, instruments } = record;
  const { mode, indoorTemperature, outdoorTemperature, pressure, port, charge } = reading;
  const { evaporatorApproach, condenserApproach } = reading;
  const path = `operation[${i}]`;
  const common = {
    "equipment.refrigerant": equipment?.refrigerant,
    ...atmosphereNeed(record),
    [`${path}.mode`]: mode,
  };
  const paths = {
    designation: "equipment.refrigerant",
    refrigerant: "equipment.refrigerant",
    atmosphere: "site.atmosphere",
    altitude: "site.altitude",
    expansion: "equipment.expansion",
    temperature: path, // of a coil: its air and its approach together
    instrument: "instruments.serviceGauge",
  };
  const trials: Trial[] = [
    {
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
          given({
            refrigerant: refrigerantOf(record),
            atmosphere: atmosphereOf(record),
            mode,
            pressure,
            port,
            indoorTemperature,
            outdoorTemperature,
            evaporatorApproach,
            condenserApproach,
            expansion: equipment?.expansion,
            gauge: errorsOf(instruments?.serviceGauge),
          }),
        ),
    },
  ];
  const { meteringDevice, compressor } = equipment ?? {};
  if (!charge) return trials;
  const by = `${path}.charge`;
  trials.push({
    name: "charge-by-gauge",
    path: by,
    needs: {
      ...common,
      "equipment.meteringDevice": meteringDevice,
      "equipment.compressor": compressor,
      "instruments.serviceGauge": instruments?.serviceGauge,
      "instruments.lineThermometer": instruments?.lineThermometer,
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
      const system = given<ChargedSystem>({ meteringDevice, compressor, mode });
      const { method, reason } = chargingMethod(system);
      // A weighed charge is judged by its step; here it only says that the gauge cannot tell.
      if (method === "weigh") return { ...stated("pass", "", ""), reasons: [reason] };
      return assessChargeByGauge(
        given({
          ...system,
          refrigerant: refrigerantOf(record),
          atmosphere: atmosphereOf(record),
          pressure: charge.pressure,
          lineTemperature: charge.lineTemperature,
          pressureDrop: charge.pressureDrop,
          target: charge.target,
          tolerance: charge.tolerance,
          instruments: given<LineAssessmentInput["instruments"]>({
            pressure: instruments?.serviceGauge,
            temperature: instruments?.lineThermometer,
          }),
        }),
      );
    },
  });
  return trials;
}
