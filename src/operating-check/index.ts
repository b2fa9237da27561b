/**
 * Gauge readings on a running unit: which port is which side in which mode, what to expect there, whether
 * the gauge can take it, and whether superheat or subcooling says anything about the charge.
 *
 * @module operating-check
 */
export * from "./assess-charge-by-gauge.ts";
export * from "./assess-gauge-set.ts";
export * from "./assess-service-reading.ts";
export type { GaugeCaution } from "./cautions.ts";
export * from "./charging-method.ts";
export * from "./expected-pressures.ts";
export {
  type ExpansionPlace,
  type RunningMode,
  type ServicePortRole,
  type ServicePorts,
  servicePorts,
} from "./service-ports.ts";
export type {
  OperatingCheckCause,
  OperatingCheckStatement,
  OperatingCheckStatements,
  OperatingCheckWord,
  RunningSide,
} from "./statements.ts";
export * from "./target-superheat.ts";
export * from "./usual-pressures.ts";
