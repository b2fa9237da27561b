import * as operating from "hvac-install-math/operating-check";
import * as q from "hvac-install-math/quantity";
import * as refrigerants from "hvac-install-math/refrigerants";
import type { Evaluators } from "./check.ts";

const named = (name: string) =>
  (refrigerants as unknown as Record<string, refrigerants.Refrigerant>)[
    name
  ] as refrigerants.Refrigerant;
const atmosphere = q.standardAtmosphere;
type Mode = { mode: operating.RunningMode };
type Side = { side: "low" | "high"; psig: number };

const gaugeSet = ({ side, psig }: Side) =>
  operating.assessGaugeSet({
    ...operating.publishedR410AGaugeSet[side],
    highestPressure: q.psig(psig),
  });

export const evaluators: Evaluators = {
  saturation: (i: { refrigerant: string; psig: number; figure: string }) => {
    const bubble = refrigerants.bubbleTemperature(named(i.refrigerant), q.psig(i.psig), atmosphere);
    const dew = refrigerants.dewTemperature(named(i.refrigerant), q.psig(i.psig), atmosphere);
    const mean = (bubble.in(q.degF) + dew.in(q.degF)) / 2;
    return i.figure === "mean" ? mean : (i.figure === "dew" ? dew : bubble).in(q.degF);
  },
  pressure: (i: {
    refrigerant: string;
    degF: number;
    figure: "bubble" | "dew";
    unit: "psig" | "kPaa";
  }) => {
    const saturation = i.figure === "dew" ? refrigerants.dewPressure : refrigerants.bubblePressure;
    const pressure = saturation(named(i.refrigerant), q.degF(i.degF));
    return i.unit === "kPaa" ? pressure.in(q.kPaa) : q.toGauge(pressure, atmosphere).in(q.psig);
  },
  subcooling: ({ figure }: { figure: string }) => {
    const { result, saturationTemperature } = operating.assessChargeByGauge({
      refrigerant: refrigerants.R410A,
      meteringDevice: "thermostatic-valve",
      compressor: "single-speed",
      mode: "cooling",
      pressure: q.psig(388),
      pressureDrop: q.psi(33),
      lineTemperature: q.degF(95),
      atmosphere,
      target: q.deltaF(13),
      tolerance: q.deltaF(3),
      instruments: {
        pressure: { accuracy: q.psi(1) },
        temperature: { accuracy: q.deltaF(1) },
      },
    });
    return (
      (figure === "saturation"
        ? saturationTemperature?.value.in(q.degF)
        : result?.value.in(q.deltaF)) ?? "nothing"
    );
  },
  chart: ({ outdoor, wetBulb }: { outdoor: number; wetBulb: number }) => {
    const answer = operating.targetSuperheat({
      outdoorDryBulb: q.degF(outdoor),
      indoorWetBulb: q.degF(wetBulb),
    });
    return answer.instruction === "charge-to-target"
      ? answer.target.in(q.deltaF)
      : answer.instruction;
  },
  chartTolerance: () => {
    const answer = operating.targetSuperheat({
      outdoorDryBulb: q.degF(75),
      indoorWetBulb: q.degF(66),
    });
    return answer.instruction === "charge-to-target"
      ? answer.tolerance.in(q.deltaF)
      : answer.instruction;
  },
  usual: ({ mode, end }: Mode & { end: "from" | "to" }) =>
    operating.usualPressures({ refrigerant: "R410A", mode })[end].in(q.psig),
  port: (
    i: Mode & {
      expansion: operating.ExpansionPlace;
      port: "vapor" | "liquid" | "commonSuction";
    },
  ) => operating.servicePorts(i)[i.port].side,
  gauge: (i: Side) => gaugeSet(i).outcome,
  gaugeCause: (i: Side) => gaugeSet(i).cause ?? "none",
};
