// Was the test high enough, and not too high? Its readings against manual, markings and the refrigerant itself.
// Follows the saturation pressure of the refrigerants; the limits are the manual's and the plates'.
// Does not cover the drop: see try-pressure-test.ts.
import { verdict } from "../assessment/assessment.ts";
import type { TestReading } from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { requireKind, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import { atmosphereNeed, atmosphereOf, type Job } from "./job.ts";
import { belowOwnPressure } from "./own-pressure.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { PressureTestPart } from "./record-circuit.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

type Gauge = Quantity<"gaugePressure">;

/** The checks of the pressure of a test. */
export function pressureTrials(job: Job, test: Covering<PressureTestPart>): Trial[] {
  const { equipment } = job.record;
  const { part, path } = test;
  const marked = equipment?.lowestMarkedPressure;
  const ofManual = equipment?.manual?.testPressure;
  const required = ofManual ?? part.requirement?.pressure;
  const from =
    ofManual || !required ? "equipment.manual.testPressure" : `${path}.requirement.pressure`;
  const base = { ...atmosphereNeed(job), [`${path}.readings`]: part.readings?.[0] };
  const paths = {
    readings: `${path}.readings`,
    atmosphere: "site.atmosphere",
    altitude: "site.altitude",
  };
  const at = `${path}.readings`;
  // Without a figure of the manual, who asks for it has to be stated.
  const standing = ofManual ? {} : { [`${path}.requirement.standing`]: part.requirement?.standing };
  return [
    {
      name: "marked-pressure",
      path: at,
      needs: { ...base, "equipment.lowestMarkedPressure": marked },
      paths: { ...paths, limit: "equipment.lowestMarkedPressure" },
      run: () => underMarked(gaugesOf(job, part), marked as Gauge),
    },
    {
      name: "test-pressure",
      path: at,
      needs: { ...base, [from]: required, ...(required ? standing : {}) },
      paths: { ...paths, limit: from },
      run: () => aboveRequired(job, part, required as Gauge, !ofManual),
    },
  ];
}

/** The gauge readings in their order. */
function gaugesOf(job: Job, { readings = [] }: PressureTestPart): readonly Gauge[] {
  return readings.map(({ pressure, atmosphere }, i) => {
    if (pressure?.kind === "absolutePressure") {
      return toGauge(pressure as Quantity<"absolutePressure">, atmosphere ?? atmosphereOf(job));
    }
    requireKind(`readings[${i}].pressure`, pressure, "gaugePressure");
    return pressure as Gauge;
  });
}

const higher = (a: Gauge, b: Gauge) => (b.si > a.si ? b : a);

/** The highest reading against the lowest marked pressure. */
function underMarked(gauges: readonly Gauge[], limit: Gauge): OwnVerdict {
  siOf("limit", limit, "gaugePressure", { above: 0 });
  const pressure = gauges.reduce(higher);
  return isAtMost(pressure.si, limit.si)
    ? ownVerdict("pass", say("commissioning.within-marked-pressure", { pressure, limit }))
    : ownVerdict(
        "fail",
        say("commissioning.above-marked-pressure", { pressure, limit }),
        say("commissioning.lower-pressure", { limit }),
      );
}

/** The pressure that was reached against what is asked for, and each reading against the refrigerant's own: what cold takes off afterwards, the drop accounts for. */
function aboveRequired(job: Job, part: PressureTestPart, limit: Gauge, isOwn: boolean): OwnVerdict {
  siOf("limit", limit, "gaugePressure", { above: 0 });
  const gauges = gaugesOf(job, part);
  const pressure = gauges.reduce(higher);
  const found = isAtLeast(pressure.si, limit.si)
    ? ownVerdict("pass", say("commissioning.test-pressure-reached", { pressure, limit }))
    : ownVerdict(
        "inconclusive",
        say("commissioning.test-pressure-too-low", { pressure, limit }),
        say("commissioning.test-higher", { limit }),
      );
  const low = belowOwnPressure(job, whole<TestReading[]>(part.readings ?? []), gauges);
  const { standing } = part.requirement ?? {};
  const assumptions =
    isOwn && standing
      ? [say("commissioning.manual-silent", { standing: `commissioning.standing.${standing}` })]
      : [];
  if (!low) return verdict({ ...found, assumptions });
  return verdict({
    ...found,
    assumptions,
    outcome: "inconclusive",
    reasons: [low, ...found.reasons],
    actions: [say("commissioning.test-higher", { limit: low.values.own })],
  });
}
