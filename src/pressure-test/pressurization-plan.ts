// How far may the system be filled, and in which stages?
// Follows ANSI/ASHRAE 15 (never above the lower of design pressure and relief setting of a side), the
// stages of makers' manuals and of UFGS 15182, and Span et al. (2000) for the pressure when it warms up.
// Does not cover a strength test, which exceeds the design pressure under its own rules.

import { type Citation, cite } from "../assessment/assessment.ts";
import { type Caution, caution } from "../assessment/caution.ts";
import { heed, type SafetyStatement } from "../assessment/safety.ts";
import { isOfKind, listOf, objectOf, oneOf, refuse } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kPag } from "../quantity/units/pressure.ts";
import { minute } from "../quantity/units/time.ts";
import { dangers } from "./cautions.ts";
import { expected } from "./drop.ts";
import type { MarkedLimit } from "./marked-limit.ts";
import { absoluteSi, atmosphereSi, temperatureSi } from "./reading.ts";
import { type PressureTestStatement, say } from "./statements.ts";

/** Checks a marked limit; its pressure as a quantity. */
export function markedPressure(path: string, limit: MarkedLimit): Quantity<"gaugePressure"> {
  const { part, pressure } = objectOf(path, limit);
  oneOf(`${path}.part`, part, ["low side", "high side", "component", "relief device"]);
  return pressure;
}

/**
 * How the pressure is raised. `three stages`: 0.3 MPa for 3 min, 1.5 MPa for 5 min, test pressure.
 * `ten percent`: 10 psig with bubble solution on every joint, 100 psig, then steps of a tenth of the test
 * pressure.
 *
 * Source: makers' manuals for R410A splits; UFGS 15182 and 15652A.
 */
export type StagePattern = "three stages" | "ten percent";

/** One stage. Source: see {@link StagePattern}. */
export interface Stage {
  /** Pressure to raise to. */
  readonly pressure: Quantity<"gaugePressure">;
  /** How long to hold before the next; the last stage is the test itself and has none. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** What to do there. */
  readonly check: "bubble solution on every joint" | "watch and listen" | "test";
}

/** The plan. */
export interface PressurizationPlan {
  /** The stages in order; the last is the test pressure. */
  readonly stages: readonly Stage[];
  /** Where to stop filling at the present temperature. */
  readonly fillPressure: Quantity<"gaugePressure">;
  /** What that becomes at the warmest. */
  readonly pressureWhenWarm: Quantity<"gaugePressure">;
  /** The lowest marked limit, which governs. */
  readonly lowestLimit: MarkedLimit;
  /** Whether the wanted pressure had to be lowered. */
  readonly lowered: boolean;
  /** Why. */
  readonly reasons: readonly PressureTestStatement[];
  /** What was assumed. */
  readonly assumptions: readonly PressureTestStatement[];
  /** What can hurt someone. */
  readonly cautions: readonly Caution<PressureTestStatement | SafetyStatement>[];
  /** Where the rules come from. */
  readonly sources: readonly Citation[];
}

/**
 * Plans the fill: never above the lowest marked limit, also not when the sun warms the gas.
 *
 * @param plan - `limits` (every marked limit, at least one, `gaugePressure` up to 6 MPa absolute), the
 * `wanted` test pressure (the lowest limit when left out), the gas `temperature` at the fill and the
 * `warmest` that sun and day may bring (−40 °C to 70 °C, `temperature`), `atmosphere`, and the `pattern`
 * of the stages (`three stages` when left out).
 * @returns The stages, where to stop, what that becomes at the warmest, and which limit governs. A wanted
 * pressure that would exceed it is lowered, and the plan says so.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or not above 0.
 *
 * Cautions: dry nitrogen only, regulator and relief device, keep people clear, isolate what is not rated;
 * the plan carries them. Nameplate and maker's instructions govern.
 *
 * Source: ANSI/ASHRAE 15 (field test pressure, from a reproduction); makers' manuals; UFGS 15182.
 *
 * @example
 * ```ts
 * import { pressurizationPlan } from "hvac-install-math/pressure-test";
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const plan = pressurizationPlan({
 *   limits: [
 *     { part: "low side", pressure: psig(450) },
 *     { part: "high side", pressure: psig(600) },
 *   ],
 *   wanted: psig(500),
 *   temperature: degF(60),
 *   warmest: degF(100),
 *   atmosphere: standardAtmosphere,
 * });
 * plan.fillPressure.toString(psig, 0); // => 415 psig
 * plan.pressureWhenWarm.toString(psig, 0); // => 450 psig
 * plan.stages.map(({ pressure }) => pressure.toString(psig, 0)).join(", "); // => 44 psig, 218 psig, 415 psig
 * ```
 */
export function pressurizationPlan(plan: {
  readonly limits: readonly MarkedLimit[];
  readonly wanted?: Quantity<"gaugePressure"> | undefined;
  readonly temperature: Quantity<"temperature">;
  readonly warmest: Quantity<"temperature">;
  readonly atmosphere: Quantity<"absolutePressure">;
  readonly pattern?: StagePattern | undefined;
}): PressurizationPlan {
  const { limits, wanted, pattern = "three stages" } = objectOf("plan", plan);
  oneOf("pattern", pattern, ["three stages", "ten percent"]);
  const air = atmosphereSi("atmosphere", plan.atmosphere);
  const T = temperatureSi("temperature", plan.temperature);
  const warm = Math.max(T, temperatureSi("warmest", plan.warmest));
  const marked = listOf("limits", limits, 1000, 1);
  const bearable = marked.map((one, i) => {
    const path = `limits[${i}]`;
    return aboveAir(`${path}.pressure`, markedPressure(path, one), air);
  });
  const lowest = Math.min(...bearable);
  const governing = marked[bearable.indexOf(lowest)] as MarkedLimit;
  const at = (p1: number, from: number, to: number) =>
    expected({ p1, T1: [from], p2: 0, T2: [to], volumes: [], beta: 0 });
  const most = at(lowest, warm, T);
  const asked = wanted === undefined ? lowest : aboveAir("wanted", wanted, air);
  const fill = Math.min(asked, most);
  const { unit } = wanted ?? governing.pressure;
  const gauge = (absolute: number) => new Quantity(absolute - air, unit);
  // Four digits, rounded down: a sentence must not send anyone above the limit.
  const whole = (q: Quantity<"gaugePressure">) => {
    const value = q.in(unit);
    const step = 10 ** (Math.floor(Math.log10(value)) - 3);
    return unit(Number((Math.floor(value / step + 1e-6) * step).toPrecision(4)));
  };
  const values = {
    part: `pressure-test.marked.${governing.part}` as const,
    limit: governing.pressure,
    fill: whole(gauge(fill)),
    warm: whole(gauge(at(fill, T, warm))),
  };
  const lowered = fill < asked;
  return frozen({
    stages: stagesTo(gauge(fill), pattern),
    fillPressure: gauge(fill),
    pressureWhenWarm: gauge(at(fill, T, warm)),
    lowestLimit: governing,
    lowered,
    reasons: [
      say(lowered ? "pressure-test.lowered-to-limit" : "pressure-test.below-limit", values),
    ],
    assumptions: [say("pressure-test.all-limits-given")],
    cautions: heed<PressureTestStatement | SafetyStatement>([
      caution("finding", say("pressure-test.no-margin")),
      ...dangers,
    ]),
    sources: [
      cite("ashrae-15-2022", "field leak test"),
      pattern === "three stages" ? cite("manufacturer-manuals") : cite("ufgs-15182"),
      cite("span-2000"),
    ],
  });
}

function aboveAir(argument: string, pressure: Quantity<"gaugePressure">, air: number): number {
  if (isOfKind(pressure, "gaugePressure") && pressure.si >= 1)
    return absoluteSi(argument, pressure, air);
  return refuse(argument, pressure, "a gaugePressure of 1 Pa or more", "gaugePressure");
}

function stagesTo(test: Quantity<"gaugePressure">, pattern: StagePattern): Stage[] {
  const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
  const before: [pascals: number, minutes: number, check: Stage["check"]][] = [];
  if (pattern === "three stages") {
    // Makers' manuals: 0.3 MPa for 3 min, 1.5 MPa for 3 min to 5 min.
    before.push([0.3e6, 3, "bubble solution on every joint"], [1.5e6, 5, "watch and listen"]);
  } else {
    // UFGS 15182: 10 psig with bubble solution; above 100 psig in steps of 10 %. The hold is ours.
    before.push(
      [10 * psi, 10, "bubble solution on every joint"],
      [100 * psi, 3, "watch and listen"],
    );
    for (let part = 1; part < 10; part++) {
      const pascals = (test.si * part) / 10;
      if (pascals > 101 * psi) before.push([pascals, 3, "watch and listen"]);
    }
  }
  const stages = before
    .filter(([pascals]) => pascals < test.si)
    .map(
      ([pascals, minutes, check]): Stage => ({
        pressure: kPag(pascals / 1e3).as(test.unit),
        hold: minute(minutes),
        check,
      }),
    );
  return [...stages, { pressure: test, check: "test" }];
}
