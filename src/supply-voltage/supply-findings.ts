// What the parts of the verdict add up in: what was taken in, and what each part found. Internal.
import {
  type Assumption,
  type Caution,
  type Citation,
  type Outcome,
  type Reason,
  type Statement,
  statement,
} from "../assessment/assessment.ts";
import type { NameplateVoltageRange } from "./nameplate-voltage-range.ts";
import type { SupplyVoltageInput } from "./supply-voltage-assessment.ts";
import type { meterErrors, PlainReading } from "./voltage-reading.ts";

/** What the parts look at: readings without those while starting, extremes in volts. */
export interface SupplyEvidence {
  readonly input: SupplyVoltageInput;
  readonly plate: NameplateVoltageRange;
  readonly readings: readonly PlainReading[];
  readonly low: number;
  readonly high: number;
  readonly nominal: number;
  readonly confidence: number;
  readonly errors: ReturnType<typeof meterErrors>;
  /** Whether the readings are a log: two or more, with their times. */
  readonly timed: boolean;
}

/** What the parts found. */
export interface SupplyFindings {
  readonly said: [Outcome, Reason][];
  readonly assumptions: Assumption[];
  readonly cautions: Caution[];
  readonly sources: Citation[];
}

/** Says why, one figure not as a span. The code of the first failing reason is the cause. */
export function say(
  found: SupplyFindings,
  outcome: Outcome,
  code: string,
  text: string,
  values: Statement["values"],
): void {
  const { low, high } = values;
  const said = String(low) === String(high) ? text.replace("{low} to {high}", "{low}") : text;
  found.said.push([outcome, statement(code, said, values)]);
}
