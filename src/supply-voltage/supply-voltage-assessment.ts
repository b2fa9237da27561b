// What is asked, and what the verdict on a supply says. Types only.
// Follows JCGM 106:2012 for the outcomes.
// Does not cover how it is decided: assess-supply-voltage.ts.
import type { Assessment, Estimate, Outcome } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { SupplyWeekAssessment } from "./assess-supply-week.ts";
import type { NameplateVoltageRange, VoltageNameplate } from "./nameplate-voltage-range.ts";
import type { VoltageMeasuredAt } from "./standards/index.ts";
import type { SupplyVoltageCause, SupplyVoltageStatement } from "./statements.ts";
import type { NominalSupply, SupplyRange } from "./supply-ranges.ts";
import type { SupplySag } from "./supply-sag.ts";
import type { VoltageLogStatistics } from "./voltage-log.ts";
import type { VoltageMonitorSettings } from "./voltage-monitor-settings.ts";
import type { VoltageReading, Voltmeter } from "./voltage-reading.ts";
import type { PhaseUnbalance, VoltageUnbalance } from "./voltage-unbalance.ts";

/**
 * Nameplate, supply and what was read.
 */
export interface SupplyVoltageInput {
  /** What the unit allows. */
  readonly nameplate: VoltageNameplate;
  /** What feeds it. */
  readonly supply: NominalSupply;
  /** One reading or a log, at rest and under load. */
  readonly readings: readonly VoltageReading[];
  /** At the service entrance or at the unit. */
  readonly measuredAt: VoltageMeasuredAt;
  /** The voltmeter; readings count as exact when left out. */
  readonly meter?: Voltmeter | undefined;
  /** Largest voltage unbalance that the maker allows; 2 % when left out. */
  readonly unbalanceLimit?: Quantity<"ratio"> | undefined;
  /** How sure the verdict has to be, one-sided, 0.5 to below 1; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/**
 * The verdict on a supply, with the figures behind it.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface SupplyVoltageAssessment
  extends Assessment<SupplyVoltageCause, SupplyVoltageStatement> {
  /** The parts, all of which have to hold. */
  readonly parts: {
    /** Against the nameplate. */
    readonly nameplate: Outcome;
    /** Against the standard of the supply; missing where it has no range at that place. */
    readonly supply?: Outcome | undefined;
    /** The voltage to expect at full load, where it can be predicted. */
    readonly sag?: Outcome | undefined;
    /** Voltage unbalance; three phases only. */
    readonly unbalance?: Outcome | undefined;
    /** Current unbalance; three phases with currents only. */
    readonly currentUnbalance?: Outcome | undefined;
  };
  /** What the nameplate allows. */
  readonly nameplateRange: NameplateVoltageRange;
  /** The narrowest range of the standard that all readings keep; missing when they keep none. */
  readonly supplyRange?: SupplyRange | undefined;
  /** Lowest reading, starting aside. */
  readonly lowest: Estimate<"voltage">;
  /** Highest reading, also while starting. */
  readonly highest: Estimate<"voltage">;
  /** From the nameplate's lowest voltage up to the lowest reading; negative when below. */
  readonly marginBelow: Quantity<"voltage">;
  /** From the highest reading up to the nameplate's highest voltage; negative when above. */
  readonly marginAbove: Quantity<"voltage">;
  /** The worst voltage unbalance; three phases only. */
  readonly unbalance?: VoltageUnbalance | undefined;
  /** The worst current unbalance, of readings under load. */
  readonly currentUnbalance?: PhaseUnbalance<"current"> | undefined;
  /** Sag between rest and load, where both were read. */
  readonly sag?: SupplySag | undefined;
  /** What a log saw against the nameplate: of the only voltage, or of the lowest and highest of three lines. */
  readonly log?:
    | {
        /** Of the only voltage, or of the lowest of three at each moment. */
        readonly low: VoltageLogStatistics;
        /** Of the only voltage, or of the highest of three at each moment. */
        readonly high: VoltageLogStatistics;
      }
    | undefined;
  /** EN 50160 on a log of a 230 V or 400 V service, the worst line. */
  readonly week?: SupplyWeekAssessment | undefined;
  /** Voltage monitor settings to suggest; missing when the plate does not fit the supply. */
  readonly monitor?: VoltageMonitorSettings | undefined;
}
