// Was it a test at all? What keeps readings from passing, whatever the drop: hold, fill, instruments.
// Follows UMC's checklist (10 min) for the shortest hold and ANSI/ASHRAE 15 for the fill: at least what the
// system reaches, at most what is marked. Does not cover the drop: decide.ts.

import { listOf, objectOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import type { Doubt } from "./evidence.ts";
import { asTime, shown } from "./figures.ts";
import type { TestErrors } from "./instruments.ts";
import type { MarkedLimit } from "./marked-limit.ts";
import { markedPressure } from "./pressurization-plan.ts";
import type { PressureTestSetup, State } from "./setup.ts";
import { type PressureTestStatement, say } from "./statements.ts";
import type { TestRequirement } from "./test-requirement.ts";

/** What the readings were, in SI. */
export interface Course {
  readonly first: State;
  /** Highest gauge pressure of all readings, Pa. */
  readonly highest: number;
  /** Seconds, 0 when unknown. */
  readonly seconds: number;
  /** In which gauge pressures are told. */
  readonly gauge: Unit<"gaugePressure">;
}

/** The shortest hold in print: mechanical code checklist. */
const SHORTEST = 600;

/** Share of the fill pressure an hour that has to move the gauge by a step; common practice, no source. */
const RATE = 0.01 / 3600;

const gaugeOf = (si: number, unit: Unit<"gaugePressure">) =>
  unit(Number(new Quantity(si, unit).in(unit).toPrecision(4)));

/** Every doubt about a test. */
export function doubtsOf(test: PressureTestSetup, errors: TestErrors, course: Course): Doubt[] {
  const { required: stated = {} } = test;
  const required = objectOf("required", stated);
  const doubts = fillDoubts(test, required, course);
  const { reason, needed } = holdDoubt(required, errors, course);
  if (reason) {
    doubts.push({ reason, action: say("pressure-test.hold-at-least", { hold: asTime(needed) }) });
  }
  if (errors.isGaugeExact) {
    const action = say("pressure-test.state-gauge");
    doubts.push({ reason: say("pressure-test.gauge-without-error"), action });
  }
  if (errors.isThermometerExact) {
    const action = say("pressure-test.state-thermometer");
    doubts.push({ reason: say("pressure-test.thermometer-without-error"), action });
  }
  return doubts;
}

/** Why the hold is too short, and the hold that is needed, s. */
function holdDoubt(
  { hold: required }: TestRequirement,
  errors: TestErrors,
  { first, seconds, gauge }: Course,
): { readonly reason?: PressureTestStatement | undefined; readonly needed: number } {
  const asked =
    required === undefined ? 0 : siOf("required.hold", required, "duration", { above: 0 });
  const fill = first.pressure - first.atmosphere;
  const width = errors.pressure.step * Math.sqrt(12);
  const byStep = fill > 0 ? width / (RATE * fill) : 0;
  const hold = asTime(seconds);
  const reason =
    seconds === 0
      ? say("pressure-test.hold-time-unknown")
      : !isAtLeast(seconds, SHORTEST)
        ? say("pressure-test.short-hold", { hold, shortest: asTime(SHORTEST) })
        : required && !isAtLeast(seconds, asked)
          ? say("pressure-test.hold-below-manual", { hold, required })
          : !isAtLeast(seconds, byStep)
            ? say("pressure-test.hold-below-step", { hold, step: shown(width, gauge.difference) })
            : undefined;
  return { reason, needed: Math.max(SHORTEST, asked, byStep) };
}

function fillDoubts(
  test: PressureTestSetup,
  required: TestRequirement,
  { first, highest, gauge }: Course,
): Doubt[] {
  const { testPressure, marked = [] } = required;
  const fill = first.pressure - first.atmosphere;
  const doubts: Doubt[] = [];
  if (testPressure !== undefined) {
    const asked = siOf("required.testPressure", testPressure, "gaugePressure", { above: 0 });
    if (!isAtLeast(highest, asked, testPressure.unit.scale)) {
      const values = { pressure: gaugeOf(highest, testPressure.unit), required: testPressure };
      doubts.push({
        reason: say("pressure-test.fill-below-manual", values),
        action: say("pressure-test.fill-higher", { required: testPressure }),
      });
    }
  }
  // The refrigerant at rest at 20 °C is the least that the system reaches (ANSI/ASHRAE 15: own charge at 68 °F).
  const { pressure: atRest, gas } = test.refrigerant ?? {};
  const service = Math.max(
    atRest === undefined ? 0 : siOf("refrigerant.pressure", atRest, "absolutePressure"),
    gas?.pressureAtRest?.si ?? 0,
  );
  if (!isAtLeast(first.pressure, service)) {
    const reached = gaugeOf(service - first.atmosphere, gauge);
    doubts.push({
      reason: say("pressure-test.fill-below-service", {
        pressure: gaugeOf(fill, gauge),
        service: reached,
      }),
      action: say("pressure-test.fill-higher", { required: reached }),
    });
  }
  const limits = listOf<MarkedLimit>("required.marked", marked).map((limit, i) => {
    const path = `required.marked[${i}]`;
    return siOf(`${path}.pressure`, markedPressure(path, limit), "gaugePressure", { above: 0 });
  });
  const lowest = limits.reduce((a, b) => Math.min(a, b), Infinity);
  if (!isAtMost(highest, lowest, gauge.scale)) {
    const of = marked[limits.indexOf(lowest)]?.pressure as Quantity<"gaugePressure">;
    const values = { pressure: gaugeOf(highest, of.unit), marked: of };
    doubts.push({
      reason: say("pressure-test.above-marked", values),
      action: say("pressure-test.lower-pressure", { marked: of }),
    });
  }
  return doubts;
}
