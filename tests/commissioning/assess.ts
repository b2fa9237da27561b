// The verdict on a record with every rule set that the library has, as an app passes those that it needs.
import type { CircuitRules } from "hvac-install-math/circuit-protection";
import {
  circuitRules,
  type InstallationAssessment,
  type InstallationRecord,
  assessInstallation as judge,
} from "hvac-install-math/commissioning";

export const rules: readonly CircuitRules[] = Object.values(circuitRules);

export const assessInstallation = (record: InstallationRecord): InstallationAssessment =>
  judge(record, { rules });
