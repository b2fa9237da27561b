// Does this drain fall enough? A measured slope against 1/8 in per foot.
// Follows IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1; decision by JCGM 106:2012, 8.3.
// Does not cover sags: water stands in them at any average slope.
import { cite, type Estimate, type Outcome, verdict } from "../assessment/assessment.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import {
  askedSlope,
  flatterThanCode,
  slopeAssumptions,
  slopeCitations,
  slopeOutcome,
  steeperThanUsual,
} from "./arguments.ts";
import { type DrainRoute, drainCautions } from "./drain-cautions.ts";
import { codeDrainSlope, type SlopeReading, slopeOf } from "./drain-slope.ts";
import { type CondensateStatement, say, type Verdict } from "./statements.ts";

/**
 * A drain and its measured slope.
 */
export interface DrainSlopeInput {
  /** The measured slope, positive where it falls in the direction of flow. */
  readonly reading: SlopeReading;
  /** The slope asked for, 0.5 % to 100 %. When left out: 1/8 in per foot passes, less than 1 % fails. */
  readonly required?: Quantity<"ratio"> | undefined;
  /** Horizontal length of the drain; with it the verdict says how much fall is missing. */
  readonly run?: Quantity<"length"> | undefined;
  /** Where it runs, for the cautions. */
  readonly route?: DrainRoute | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong with the slope. Source: see {@link assessDrainSlope}. */
export type DrainSlopeCause = "rises" | "too-flat";

/**
 * The verdict on the slope of a drain.
 *
 * Source: see {@link assessDrainSlope}.
 */
export interface DrainSlopeAssessment extends Verdict<DrainSlopeCause> {
  /** The slope found; positive falls. */
  readonly slope: Estimate<"ratio">;
  /** The slope asked for. */
  readonly required: Quantity<"ratio">;
  /** How much more the drain has to fall over the run; only where a run was given. */
  readonly missingFall?: Quantity<"length"> | undefined;
}

/**
 * Judges the slope of a drain. Codes ask for 1/8 in per foot, which is 1.0417 %, and UPC prints 1 %
 * beside it: between the two the answer is `inconclusive` unless you say which figure applies.
 *
 * @param input - Reading, slope asked for, run.
 * @returns The verdict, with the slope found and the fall that is missing.
 * @throws {@link InvalidInputError} when the reading is none of the four ways, or a kind or range does
 * not fit.
 *
 * Cautions: see {@link drainCautions}.
 *
 * Source: IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessDrainSlope } from "hvac-install-math/condensate";
 * import { ft, inch } from "hvac-install-math/quantity";
 *
 * const reading = { heightAtStart: inch(40), heightAtEnd: inch(38), run: ft(20) };
 * const { outcome, missingFall } = assessDrainSlope({ reading, run: ft(20) });
 * outcome; // => fail
 * missingFall?.toString(inch); // => 0.5 in
 * ```
 */
export function assessDrainSlope(input: DrainSlopeInput): DrainSlopeAssessment {
  objectOf("input", input);
  const { reading, required, run, route, confidence } = input;
  const slope = slopeOf(reading);
  const strict = required === undefined ? codeDrainSlope : required;
  const asked = askedSlope("required", strict);
  const span = run !== undefined ? siOf("run", run, "length", { above: 0 }) : 0;
  const least = required ?? percent(1);
  const against = (limit: Quantity<"ratio">) => slopeOutcome(slope, limit, undefined, confidence);
  const passes = against(strict) === "pass";
  const fails = against(least) === "fail";
  const outcome = passes ? "pass" : fails ? "fail" : "inconclusive";
  const missing = passes ? 0 : Math.max(0, asked - slope.value.si);
  // The codes differ only where the level tells that the slope lies between their figures.
  const missesStrict = against(strict) === "fail";
  const between = missesStrict && against(least) === "pass";
  const near = missesStrict ? least : strict;
  const rises = slope.value.si + slope.expandedUncertainty.si < 0;
  const short = run && { fall: new Quantity(missing * span, run.unit), run };
  return verdict({
    outcome,
    ...(fails && { cause: rises ? ("rises" as const) : ("too-flat" as const) }),
    reasons: [reasonOf(outcome, slope, strict, { between, near, rises })],
    assumptions: slopeAssumptions(slope.standardUncertainty.si === 0, !required),
    cautions: [...steeperThanUsual(slope), ...drainCautions(route), ...flatterThanCode(asked)],
    actions: passes
      ? []
      : [
          fails
            ? short
              ? say("condensate.increase-fall", short)
              : say("condensate.increase-slope", { required: strict })
            : between
              ? say("condensate.ask-code", { required: strict })
              : say("condensate.measure-better"),
        ],
    sources: [...slopeCitations(), cite("jcgm-106-2012", "8.3")],
    slope,
    required: strict,
    ...(short && { missingFall: short.fall }),
  });
}

/**
 * Why the slope is right, wrong, or open: `between` where the codes print two figures and it lies between them for sure,
 * else `near` to one of them.
 */
function reasonOf(
  outcome: Outcome,
  { value, expandedUncertainty }: Estimate<"ratio">,
  required: Quantity<"ratio">,
  {
    between,
    near,
    rises,
  }: { readonly between: boolean; readonly near: Quantity<"ratio">; readonly rises: boolean },
): CondensateStatement {
  const values = { slope: value, uncertainty: expandedUncertainty, required };
  if (outcome === "pass") return say("condensate.falls-enough", values);
  if (outcome === "fail") {
    return rises ? say("condensate.rises", values) : say("condensate.falls-too-little", values);
  }
  return between
    ? say("condensate.codes-differ", { ...values, least: percent(1) })
    : say("condensate.slope-near", { ...values, required: near });
}
